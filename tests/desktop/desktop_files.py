"""Desktop entry, file type and software metadata as the desktop's own tools judge them.
Argument: the project's folder."""
import os
import pathlib
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as xml

resources = pathlib.Path(sys.argv[1]) / "resources"
name = "org.gazewright.Gazewright"
faults = []


def run(*command, **options):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True,
                          **options)
    if done.returncode != 0:
        faults.append(f"{command[0]}: {done.stdout}{done.stderr}")
    return done


said = run("desktop-file-validate", resources / f"{name}.desktop")
faults.extend((said.stdout + said.stderr).splitlines() if said.returncode == 0 else [])
run("appstreamcli", "validate", "--no-net", resources / f"{name}.metainfo.xml")

entry = (resources / f"{name}.desktop").read_text(encoding="utf-8")
fields = dict(line.split("=", 1) for line in entry.splitlines() if "=" in line)
kinds = fields["MimeType"].strip(";").split(";")
metainfo = xml.parse(resources / f"{name}.metainfo.xml").getroot()
if [kind.text for kind in metainfo.iter("mediatype")] != kinds:
    faults.append("desktop entry and metadata name different file types")
if fields["Comment"] != metainfo.findtext("summary"):
    faults.append("desktop entry and metadata describe the program differently")
LANGUAGE = "{http://www.w3.org/XML/1998/namespace}lang"


def spoken(root, tag, language):
    """The texts of an element in German ("de") or English (None), releases left out."""
    return [at.text for top in root if top.tag != "releases" for at in top.iter(tag)
            if at.get(LANGUAGE) == language]


for key in ("Name", "GenericName", "Comment", "Keywords"):
    if f"{key}[de]" not in fields:
        faults.append(f"the desktop entry has no German {key}")
if [fields.get("Comment[de]")] != spoken(metainfo, "summary", "de"):
    faults.append("desktop entry and metadata describe the program differently in German")
types = xml.parse(resources / f"{name}.mime.xml").getroot()
for root, tags in ((metainfo, ("summary", "p", "li")), (types, ("comment",))):
    for tag in tags:
        if len(spoken(root, tag, None)) != len(spoken(root, tag, "de")):
            faults.append(f"not every {tag} of {root.tag} is there in German")
for icon in (fields["Icon"], f"{name}-symbolic", kinds[0].replace("/", "-")):
    root = xml.parse(resources / "icons" / f"{icon}.svg").getroot()
    if root.get("width") != root.get("height"):
        faults.append(f"the icon {icon} is not square")

# The type database that the file makes, and what a program that asks it is told.
with tempfile.TemporaryDirectory() as folder:
    packages = pathlib.Path(folder) / "mime" / "packages"
    packages.mkdir(parents=True)
    (packages / f"{name}.xml").write_bytes((resources / f"{name}.mime.xml").read_bytes())
    said = run("update-mime-database", packages.parent,
               env={**os.environ, "PKGSYSTEM_ENABLE_FSYNC": "0", "XDG_DATA_HOME": folder})
    faults.extend(said.stderr.splitlines() if said.returncode == 0 else [])
    globs = (packages.parent / "globs2").read_text(encoding="utf-8")
    if f"60:{kinds[0]}:*.rig.yaml" not in globs:
        faults.append(f"*.rig.yaml is not of the type {kinds[0]}: {globs}")
    magic = (packages.parent / "magic").read_bytes()
    if f"[60:{kinds[0]}]".encode() not in magic or b"\nrig: 1\n" not in magic:
        faults.append("the type is not known by its first line")
for sample in sorted((pathlib.Path(sys.argv[1]) / "sample-rigs").glob("*.rig.yaml")):
    start = sample.read_bytes()[:2048]
    if not start.startswith(b"rig: 1\n") and b"\nrig: 1\n" not in start:
        faults.append(f"{sample.name} would not be known by its first lines")
print("\n".join(faults) or "the desktop's tools find no fault")
sys.exit(1 if faults else 0)
