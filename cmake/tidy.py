#!/usr/bin/env python3
"""Runs clang-tidy on every source file of ours, and remembers what passed.

Most of its time goes into the headers of Qt, Eigen and GoogleTest, so files of one folder are looked
at in batches: one unit that includes them all. Where files do not go together (two of them use one
name in their unnamed namespaces), they are looked at alone.
A batch is looked at again when a file of it, a header of ours, the flags, the rules or clang-tidy
changed. Usage: cmake/tidy.py BUILD_DIR JOBS
"""
import concurrent.futures
import hashlib
import json
import pathlib
import re
import shlex
import subprocess
import sys

PROJECT = pathlib.Path(__file__).resolve().parent.parent
WORK = PROJECT / "build" / "tidy"
BATCH = 12
# The compiler's own warnings are gcc's business here; clang does not know all of its flags.
EXTRA = ["-Wno-error", "-Wno-unknown-warning-option"]
PLACE = re.compile(r"^/\S+?:\d+:\d+: (?:warning|error): ", re.MULTILINE)


def flags_of(entry):
    """The entry's compiler flags, without compiler, source, output and record of includes."""
    words = shlex.split(entry["command"])
    words = words[next(i for i, word in enumerate(words) if word.startswith("-")):]
    flags, skip = [], False
    for word in words:
        takes_next = word in ("-o", "-c", "-MF", "-MT")
        if not skip and not takes_next and word != "-MD":
            flags.append(word)
        skip = takes_next
    return tuple(flags)


def unnamed_names(text):
    """Names that a file defines in its unnamed namespaces, which lie at column 0."""
    names = set()
    for block in re.findall(r"^namespace \{$(.*?)^\}  // namespace$", text, re.M | re.S):
        for line in block.splitlines():
            head = re.split(r"[({=;\[:]", line, maxsplit=1)[0]
            if re.match(r"[A-Za-z]", line) and (found := re.search(r"(\w+)\s*$", head)):
                names.add(found.group(1))
    return names


def batches_of(entries):
    """Lists of files that can be looked at together, each with their common flags."""
    batches = []
    for file, flags in sorted(entries.items()):
        names = unnamed_names(file.read_text())
        for batch in batches:
            if (batch["flags"] == flags and batch["files"][0].parent == file.parent
                    and len(batch["files"]) < BATCH and not names & batch["names"]):
                batch["files"].append(file)
                batch["names"] |= names
                break
        else:
            batches.append({"flags": flags, "files": [file], "names": names})
    return batches


def tidy(source, flags):
    return subprocess.run(
        ["clang-tidy", "--quiet", "--checks=-bugprone-suspicious-include", source, "--",
         *flags, *EXTRA], capture_output=True, text=True, check=False)


def look_at(batch, mark):
    """Whether the batch passes; what clang-tidy complains about, once each."""
    unit = WORK / batch["files"][0].parent.relative_to(PROJECT) / f"{mark.name}.cpp"
    unit.parent.mkdir(parents=True, exist_ok=True)
    unit.write_text("".join(f'#include "{file}"\n' for file in batch["files"]))
    run = tidy(unit, batch["flags"])
    unit.unlink()
    words, good = run.stdout, run.returncode == 0
    if not good and len(batch["files"]) > 1 and "clang-diagnostic-error" in words:
        runs = [tidy(file, batch["flags"]) for file in batch["files"]]
        words, good = "".join(run.stdout for run in runs), not any(run.returncode for run in runs)
    if good:
        mark.touch()
    return good, words or run.stderr


def copy_rules():
    """Puts each folder's .clang-tidy where the folder's batches lie; all their text."""
    text = b""
    for top in ("app", "core", "tests"):
        for rules in sorted((PROJECT / top).rglob(".clang-tidy")):
            copy = WORK / rules.relative_to(PROJECT)
            copy.parent.mkdir(parents=True, exist_ok=True)
            copy.write_bytes(rules.read_bytes())
            text += rules.read_bytes()
    return text + (PROJECT / ".clang-tidy").read_bytes()


def fingerprint(batch, common):
    parts = [common, repr(batch["flags"]).encode()]
    for file in batch["files"]:
        parts += [str(file).encode(), file.read_bytes()]
    return hashlib.sha256(b"\0".join(parts)).hexdigest()


def main():
    build, jobs = pathlib.Path(sys.argv[1]).resolve(), int(sys.argv[2])
    WORK.mkdir(parents=True, exist_ok=True)
    entries = {}
    for entry in json.loads((build / "compile_commands.json").read_text()):
        file = pathlib.Path(entry["file"])
        if build not in file.parents:  # not what Qt generates
            entries[file] = flags_of(entry)

    common = subprocess.run(["clang-tidy", "--version"], capture_output=True, check=True).stdout
    for header in sorted(h for top in ("app", "core", "tests") for h in (PROJECT / top).rglob("*.h")):
        common += str(header).encode() + header.read_bytes()
    common += copy_rules()
    todo, unchanged = [], 0
    for batch in batches_of(entries):
        mark = WORK / fingerprint(batch, common)
        if mark.exists():
            unchanged += len(batch["files"])
        else:
            todo.append((batch, mark))
    print(f"clang-tidy: {len(entries) - unchanged} files to look at in {len(todo)} batches, "
          f"{unchanged} unchanged", flush=True)

    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        results = list(pool.map(lambda item: look_at(*item), todo))
    seen = set()
    for good, words in results:
        starts = [m.start() for m in PLACE.finditer(words)] or [0]
        for start, end in zip(starts, starts[1:] + [len(words)]):
            complaint = words[start:end].rstrip()
            if not good and complaint and complaint not in seen:
                seen.add(complaint)
                print(complaint, flush=True)
    if not all(good for good, _ in results):
        sys.exit(f"clang-tidy has {len(seen)} complaints; they are above, with place and rule")


if __name__ == "__main__":
    main()
