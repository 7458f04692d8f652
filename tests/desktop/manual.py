"""Every option that a program's help names is in its manual page, and the page renders cleanly.
Arguments: the page, the program, then verbs that have a help of their own."""
import re
import shutil
import subprocess
import sys


def help_of(*command):
    return subprocess.run([*command, "--help"], capture_output=True, text=True, check=True).stdout


page, program, *verbs = sys.argv[1:]
text = help_of(program) + "".join(help_of(program, verb) for verb in verbs)
options = set(re.findall(r"(?<![\w-])--[a-z][a-z-]*", text))
with open(page, encoding="utf-8") as file:
    source = file.read()
written = set(re.findall(r"(?<![\w-])--[a-z][a-z-]*", source.replace("\\-", "-")))
faults = []
if len(options) < 5:
    faults.append(f"the help of {program} names only {sorted(options)}")
faults += [f"{option} is in the help and not in {page}" for option in sorted(options - written)]
faults += [f"{option} is in {page} and not in the help" for option in sorted(written - options)]
faults += [f"the verb {verb} is not in {page}" for verb in verbs if f"\n.SS {verb} " not in source]

groff = shutil.which("groff")
if groff:
    # As man(1) sets it; every warning counts.
    shown = subprocess.run([groff, "-man", "-Tutf8", "-ww", "-rLL=80n", page],
                           capture_output=True, text=True)
    faults += shown.stderr.splitlines()
    if shown.returncode != 0 or "EXIT STATUS" not in re.sub(r".\x08|\x1b\[[0-9;]*m", "", shown.stdout):
        faults.append(f"groff does not render {page}")
print("\n".join(faults) or f"{len(options)} options, {'rendered' if groff else 'not rendered'}")
sys.exit(1 if faults else 0)
