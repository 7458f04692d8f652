#!/usr/bin/env python3
"""Says which source files can be compiled as one unit.

Most of a compiler's time goes into the headers of Qt, Eigen and GoogleTest, so files are taken
together that do not use one name in their unnamed namespaces.
Usage: cmake/batches.py FILE...   prints a line "NUMBER FILE" for each; one that has a name there which
a header of ours has too stays alone.
"""
import pathlib
import re
import sys

PROJECT = pathlib.Path(__file__).resolve().parent.parent
MOST = 12


def names_in(text):
    """What is defined or declared in lines that begin at column 0."""
    names = set()
    for line in text.splitlines():
        head = re.split(r"[({=;\[]|(?<!:):(?!:)", line, maxsplit=1)[0]
        found = re.match(r"(?!using|TEST|INSTANTIATE)[A-Za-z].*?(\w+)\s*$", head)
        if found:
            names.add(found.group(1))
        if line.startswith(("constexpr", "inline constexpr")):  # further ones of the line
            names.update(re.findall(r"\b(k[A-Z]\w*)(?=\s*[={\[])", line))
        names.update(re.findall(r"^(?:struct|class|enum|enum class|using) (\w+)(?= [={:])", line))
    return names


def unnamed_names(text):
    """Names that a file defines in its unnamed namespaces, which lie at column 0."""
    blocks = re.findall(r"^namespace \{$(.*?)^\}  // namespace$", text, re.M | re.S)
    return set().union(*map(names_in, blocks))


def header_names():
    headers = [file for top in ("app", "core", "tests") for file in (PROJECT / top).rglob("*.h")]
    return set().union(*(names_in(file.read_text()) for file in headers))


def batches_of(files, kind=lambda file: None, in_headers=frozenset()):
    """Lists of files that can go together; `kind` tells apart those that may not. With one of the
    names `in_headers` in its unnamed namespace a file stays alone."""
    batches = []
    for file in sorted(files):
        names = unnamed_names(file.read_text())
        most = 1 if names & in_headers else MOST
        for batch in batches:
            if (batch["kind"] == kind(file) and len(batch["files"]) < min(most, batch["most"])
                    and not names & batch["names"]):
                batch["files"].append(file)
                batch["names"] |= names
                break
        else:
            batches.append({"kind": kind(file), "files": [file], "names": names, "most": most})
    return batches


def main():
    files = [pathlib.Path(name) for name in sys.argv[1:]]
    for number, batch in enumerate(batches_of(files, in_headers=header_names())):
        for file in batch["files"]:
            print(number, file)


if __name__ == "__main__":
    main()
