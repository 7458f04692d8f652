#!/usr/bin/env python3
"""Runs clang-tidy on every source file of ours, and remembers what passed.

Most of its time goes into headers, so files with the same flags and rules are looked at in batches:
one unit that includes them all (see batches.py).
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

from batches import batches_of

PROJECT = pathlib.Path(__file__).resolve().parent.parent
WORK = PROJECT / "build" / "tidy"
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


def rules_of(file):
    return next(folder for folder in file.parents if (folder / ".clang-tidy").exists())


def tidy(source, flags):
    return subprocess.run(
        ["clang-tidy", "--quiet", "--checks=-bugprone-suspicious-include", source, "--",
         *flags, *EXTRA], capture_output=True, text=True, check=False)


def look_at(files, batch, mark):
    """Whether files of the batch pass, and what clang-tidy complains about."""
    if len(files) == 1:
        run = tidy(files[0], batch["kind"][0])
        return run.returncode == 0, run.stdout or run.stderr
    unit = WORK / batch["kind"][1].relative_to(PROJECT) / f"{mark.name}.cpp"
    unit.parent.mkdir(parents=True, exist_ok=True)
    unit.write_text("".join(f'#include "{file}"\n' for file in files))
    run = tidy(unit, batch["kind"][0])
    unit.unlink()
    if "clang-diagnostic-error" not in run.stdout:
        return run.returncode == 0, run.stdout or run.stderr
    half = len(files) // 2  # they do not go together: see which do
    first, second = (look_at(part, batch, mark) for part in (files[:half], files[half:]))
    return first[0] and second[0], first[1] + second[1]


def look_at_batch(batch, mark):
    good, words = look_at(batch["files"], batch, mark)
    if good:
        mark.touch()
    return good, words


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
    parts = [common, repr(batch["kind"][0]).encode()]
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
    # Not sure to go together: look_at() parts those that do not.
    for batch in batches_of(entries, lambda file: (entries[file], rules_of(file)), most=36, sure=False):
        mark = WORK / fingerprint(batch, common)
        if mark.exists():
            unchanged += len(batch["files"])
        else:
            todo.append((batch, mark))
    print(f"clang-tidy: {len(entries) - unchanged} files to look at in {len(todo)} batches, "
          f"{unchanged} unchanged", flush=True)

    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        results = list(pool.map(lambda item: look_at_batch(*item), todo))
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
