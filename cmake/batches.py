#!/usr/bin/env python3
"""Says which source files can be compiled as one unit.

Most of a compiler's time goes into the headers of Qt, Eigen and GoogleTest, so files are taken
together that do not use one name in their unnamed namespaces.
Usage: cmake/batches.py FILE...   prints a line "NUMBER FILE" for each.
"""
import functools
import pathlib
import re
import sys

PROJECT = pathlib.Path(__file__).resolve().parent.parent


def names_in(text):
    """What is defined or declared in lines that begin at column 0."""
    names = set()
    for line in text.splitlines():
        head = re.split(r"[({=;\[]|(?<!:):(?!:)", line, maxsplit=1)[0]
        found = re.match(r"(?!using|template|TEST|INSTANTIATE|BENCHMARK)(?:[A-Za-z].*?)?\b(\w+)\s*$", head)
        if found:
            names.add(found.group(1))
        names.update(re.findall(r"^(?:struct|class|enum|enum class|using) (\w+)(?= [={:])", line))
    for constants in re.findall(r"^(?:inline |static )*const(?:expr)?\b[^;]*;", text, re.M):
        names.update(re.findall(r"\b(k[A-Z]\w*)(?=\s*[={]|\[\w*\]\s*[={])", constants))
    return names


def unnamed_names(text):
    """Names that a file defines in its unnamed namespaces, which lie at column 0."""
    blocks = re.findall(r"^namespace \{$(.*?)^\}  // namespace$", text, re.M | re.S)
    blocks += re.findall(r"^namespace \{\n(.*)\n\}$", text, re.M)  # a single line has no end mark
    return set().union(*map(names_in, blocks))


@functools.cache
def read_header(header):
    text = header.read_text()
    return names_in(text), our_includes(text)


def our_includes(text):
    found = re.findall(r'^#include "([^"]+)"', text, re.M)
    return [PROJECT / name for name in found if (PROJECT / name).exists()]


def header_names(text):
    """Names that come from headers of ours, also by way of other headers; each with its header."""
    names, seen, todo = {}, set(), our_includes(text)
    while todo:
        header = todo.pop()
        if header not in seen:
            seen.add(header)
            given, includes = read_header(header)
            names |= dict.fromkeys(given, header)
            todo += includes
    return names


def go_together(names, headers, batch):
    """No unnamed name of one is a name of the other, and no constant is in two headers."""
    both = headers.keys() & batch["headers"].keys()
    return not (names & (batch["names"] | batch["headers"].keys())
                or headers.keys() & batch["names"]
                or any(headers[name] != batch["headers"][name]
                       for name in both if re.match("k[A-Z]", name)))


def batches_of(files, kind=lambda file: None, most=12, sure=True):
    """Lists of files that can go together; `kind` tells apart those that may not. To be `sure`, a file
    that has a name of its own headers in its unnamed namespaces stays alone: others could mean either."""
    batches = []
    for file in sorted(files):
        text = file.read_text()
        names, headers = unnamed_names(text), header_names(text)
        room = 1 if sure and names & headers.keys() else most
        for batch in batches:
            if (batch["kind"] == kind(file) and len(batch["files"]) < min(room, batch["room"])
                    and go_together(names, headers, batch)):
                batch["files"].append(file)
                batch["names"] |= names
                batch["headers"] |= headers
                break
        else:
            batches.append({"kind": kind(file), "files": [file], "names": names,
                            "headers": dict(headers), "room": room})
    return batches


def main():
    files = [pathlib.Path(name) for name in sys.argv[1:]]
    for number, batch in enumerate(batches_of(files)):
        for file in batch["files"]:
            print(number, file)


if __name__ == "__main__":
    main()
