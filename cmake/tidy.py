#!/usr/bin/env python3
"""Runs clang-tidy on every source file of ours, in parallel, and remembers which ones passed.

A file is looked at again when it, a header of ours that it includes, its compiler flags, the rules
or clang-tidy itself changed. Usage: cmake/tidy.py BUILD_DIR JOBS   (the build must be up to date,
because ninja's record of includes is what tells the headers).
"""
import concurrent.futures
import hashlib
import json
import pathlib
import subprocess
import sys

PROJECT = pathlib.Path(__file__).resolve().parent.parent
# The compiler's own warnings are gcc's business here; clang does not know all of its flags.
EXTRA = ["--extra-arg=-Wno-error", "--extra-arg=-Wno-unknown-warning-option"]


def included_headers(build):
    """Object file -> files of ours that it was compiled from, as ninja recorded them."""
    text = subprocess.run(["ninja", "-C", build, "-t", "deps"], capture_output=True, text=True,
                          check=True).stdout
    headers, current = {}, None
    for line in text.splitlines():
        if line.startswith("    ") and current is not None:
            path = (build / line.strip()).resolve()
            if PROJECT in path.parents:
                current.append(path)
        elif ": #deps" in line:
            current = headers.setdefault(line.split(": #deps")[0], [])
    return headers


def fingerprint(entry, headers, rules):
    parts = [rules, entry["command"].encode()]
    for path in sorted({pathlib.Path(entry["file"]), *headers.get(entry["output"], [])}):
        parts += [str(path).encode(), path.read_bytes()]
    return hashlib.sha256(b"\0".join(parts)).hexdigest()


def main():
    build, jobs = pathlib.Path(sys.argv[1]).resolve(), int(sys.argv[2])
    passed = PROJECT / "build" / "tidy"
    passed.mkdir(parents=True, exist_ok=True)
    rules = subprocess.run(["clang-tidy", "--version"], capture_output=True, check=True).stdout
    rules += b"".join(p.read_bytes() for p in sorted(PROJECT.glob("**/.clang-tidy")))

    headers, todo = included_headers(build), {}
    for entry in json.loads((build / "compile_commands.json").read_text()):
        if build not in pathlib.Path(entry["file"]).parents:  # not what Qt generates
            todo[entry["file"]] = passed / fingerprint(entry, headers, rules)
    changed = [file for file, mark in todo.items() if not mark.exists()]
    print(f"clang-tidy: {len(changed)} files to look at, {len(todo) - len(changed)} unchanged",
          flush=True)

    def look_at(file):
        run = subprocess.run(["clang-tidy", "-p", build, "--quiet", *EXTRA, file],
                             capture_output=True, text=True, check=False)
        if run.returncode == 0:
            todo[file].touch()
        else:
            print(run.stdout or run.stderr, flush=True)
        return run.returncode == 0

    with concurrent.futures.ThreadPoolExecutor(jobs) as pool:
        bad = list(pool.map(look_at, changed)).count(False)
    if bad:
        sys.exit(f"clang-tidy complains about {bad} files; its words are above, with place and rule")


if __name__ == "__main__":
    main()
