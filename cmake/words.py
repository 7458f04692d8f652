#!/usr/bin/env python3
"""Keeps the translations in resources/words/*.ts in step with the texts of the program.

Texts are found where they stand: in app the literals of tr() and its relatives, in core those of
words() and every literal of a table that reads like words. All are in one context, as one English
text has one translation. Usage:

  cmake/words.py          adds new texts (unfinished) and drops those that are gone
  cmake/words.py --check  changes nothing; fails where a text has no translation, or one that does not
                          fit: other holes, other spaces at its ends, no or two keys of a menu
"""
import pathlib
import re
import sys
import xml.etree.ElementTree as xml
from xml.sax.saxutils import escape

PROJECT = pathlib.Path(__file__).resolve().parent.parent
CONTEXT = "gazewright"
LITERAL = r'"(?:[^"\\\n]|\\.)*"'
CALLS = re.compile(r"\b(?:(?:tr|translated|TEXT|QT_TR_NOOP)\(\s*"
                   r'|(?:translate|QT_TRANSLATE_NOOP)\(\s*"\w+",\s*)'
                   rf"((?:{LITERAL}\s*)+)")
WORDS = re.compile(rf"\b(?:words|begins_as|for_words)\(\s*((?:{LITERAL}\s*)+)")
LIKE_WORDS = re.compile(r"[A-Za-z]{2,}[,;:.)]* | [a-z]{2,}|^[A-Z][a-z]{2,}[-a-z]*$")
WRITES_FILES = ("laid_out.cpp", "pieces.cpp", "quantity_text.cpp", "journal.cpp")


def text_of(literals):
    """What one or more adjacent literals of C++ say."""
    text = "".join(part[1:-1] for part in re.findall(LITERAL, literals))
    text = re.sub(r"\\u([0-9a-f]{4})", lambda found: chr(int(found[1], 16)), text)
    return text.replace('\\"', '"').replace("\\n", "\n").replace("\\\\", "\\")


def sources(folder):
    for file in sorted((PROJECT / folder).rglob("*")):
        if file.suffix in (".cpp", ".h") and "batch" not in file.parts:
            text = re.sub(r"^\s*(?://|#(?!define)).*|static_assert\([^;]*;|\s//.*$", "",
                          file.read_text(), flags=re.M)
            yield file.name, text


def texts():
    """Every text for people, each once, in a steady order."""
    found = {}
    for name, code in sources("core"):
        for call in WORDS.finditer(code):
            found[text_of(call[1])] = None
        if name not in WRITES_FILES:
            for literals in re.findall(rf"(?:{LITERAL}\s*)+", code):
                if LIKE_WORDS.search(text_of(literals)):
                    found[text_of(literals)] = None
    for _, code in sources("app"):
        for call in CALLS.finditer(code):
            found[text_of(call[1])] = None
    return [text for text in found if text.strip()]


def read(file):
    """English text -> its translation, a list of forms for a count."""
    known = {}
    for message in xml.parse(file).getroot().iter("message"):
        forms = [form.text or "" for form in message.iter("numerusform")]
        known[message.find("source").text] = forms or message.find("translation").text or ""
    return known


def write(file, language, known):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">', "<context>",
             f"    <name>{CONTEXT}</name>"]
    for text in texts():
        translation = known.get(text, "")
        counts = "%n" in text or "%Ln" in text
        forms = (translation or ["", ""]) if counts else [translation]
        mark = "" if all(forms) else ' type="unfinished"'
        body = "".join(f"<numerusform>{escape(form)}</numerusform>" for form in forms)
        lines += ['    <message numerus="yes">' if counts else "    <message>",
                  f"        <source>{escape(text)}</source>",
                  f"        <translation{mark}>{body if counts else escape(forms[0])}</translation>",
                  "    </message>"]
    file.write_text("\n".join([*lines, "</context>", "</TS>", ""]))


def faults(text, translation):
    forms = translation if isinstance(translation, list) else [translation]
    if not all(forms):
        yield "no translation"
        return
    holes = set(re.findall(r"%L?[\dn]", text))
    for place, form in enumerate(forms):
        one = len(forms) > 1 and place == 0  # "a row" needs no number
        other = set(re.findall(r"%L?[\dn]", form)) ^ holes
        if other - ({"%n", "%Ln"} if one else set()):
            yield "other holes"
        if text[0].isspace() != form[0].isspace() or text[-1].isspace() != form[-1].isspace():
            yield "other spaces at its ends"
        if len(re.findall(r"&\w", text)) != len(re.findall(r"&\w", form)):
            yield "other keys of a menu"


def main():
    only_check, bad = sys.argv[1:] == ["--check"], 0
    for file in sorted((PROJECT / "resources/words").glob("*.ts")):
        known = read(file)
        if not only_check:
            write(file, file.stem.rpartition("_")[2], known)
            continue
        for text in texts():
            for fault in faults(text, known.get(text, "")):
                print(f"{file.relative_to(PROJECT)}: {fault}: {text!r}")
                bad += 1
    if bad:
        sys.exit(f"{bad} texts to mend; cmake/words.py adds the new ones")


if __name__ == "__main__":
    main()
