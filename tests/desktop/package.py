"""Installs into an empty root and runs the programs from there; makes the Debian package and looks
into it. Arguments: the build folder, the cmake and the cpack to use."""
import os
import pathlib
import re
import subprocess
import sys
import tempfile

build, cmake, cpack = sys.argv[1:]
faults = []
PROGRAMS = ["usr/bin/gazewright", "usr/bin/gazewright-batch"]
EXPECTED = PROGRAMS + [
    "usr/share/applications/org.gazewright.Gazewright.desktop",
    "usr/share/doc/gazewright/copyright",
    "usr/share/gazewright/data/materials.yaml",
    "usr/share/gazewright/handbook/index.md",
    "usr/share/gazewright/sample-rigs/quick-newt.rig.yaml",
    "usr/share/icons/hicolor/scalable/apps/org.gazewright.Gazewright.svg",
    "usr/share/icons/hicolor/scalable/mimetypes/application-x-gazewright-rig.svg",
    "usr/share/icons/hicolor/symbolic/apps/org.gazewright.Gazewright-symbolic.svg",
    "usr/share/man/man1/gazewright-batch.1",
    "usr/share/man/man1/gazewright.1",
    "usr/share/metainfo/org.gazewright.Gazewright.metainfo.xml",
    "usr/share/mime/packages/org.gazewright.Gazewright.mime.xml",
]
# Filesystem Hierarchy Standard 3.0, chapter 4: where a package may put files below /usr.
ALLOWED = ("usr/bin/", "usr/share/")


def run(*command, **options):
    done = subprocess.run([str(word) for word in command], capture_output=True, text=True,
                          **options)
    if done.returncode != 0:
        faults.append(f"{' '.join(map(str, command))}: {done.stdout[-2000:]}{done.stderr[-2000:]}")
    return done.stdout


def check_files(files, where):
    faults.extend(f"{where} lacks {name}" for name in EXPECTED if name not in files)
    faults.extend(f"{where} has {name}, which is no place for it" for name in files
                  if not name.startswith(ALLOWED))


def check_installed(root):
    run(cmake, "--install", build, "--prefix", "/usr", env={**os.environ, "DESTDIR": root})
    files = [path.relative_to(root).as_posix() for path in pathlib.Path(root).rglob("*")
             if path.is_file()]
    check_files(files, "the installed root")
    window, batch = (pathlib.Path(root) / name for name in PROGRAMS)
    newt = pathlib.Path(root) / "usr/share/gazewright/sample-rigs/quick-newt.rig.yaml"
    shot = pathlib.Path(root) / "newt.png"
    away = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": root, "XDG_STATE_HOME": ""}
    for program in (window, batch):
        said = run(program, "--version", env=away, cwd=root)
        if not re.fullmatch(rf"{program.name} \d+\.\d+\.\d+\n", said):
            faults.append(f"{program} says its version as {said!r}")
    run(window, "--picture", shot, newt, env=away, cwd=root)
    if not shot.is_file() or not shot.read_bytes().startswith(b"\x89PNG"):
        faults.append("the installed window makes no picture")
    if "pan.step.settle_time" not in run(batch, "figures", "--csv", newt, env=away, cwd=root):
        faults.append("the installed batch program gives no figures")
    left = sorted(path.name for path in pathlib.Path(root).iterdir())
    if not set(left) <= {"usr", "newt.png", ".cache"}:
        faults.append(f"--picture leaves something in the home folder: {left}")


def check_package(folder):
    run(cpack, "--config", f"{build}/CPackConfig.cmake", "-B", folder, cwd=build)
    packages = list(pathlib.Path(folder).glob("*.deb"))
    if len(packages) != 1:
        return faults.append(f"cpack made {packages}")
    said = run("dpkg-deb", "--info", packages[0])
    control = dict(re.findall(r"^ ([A-Z][\w-]*): (.*)$", said, re.MULTILINE))
    version = run(f"{build}/bin/gazewright-batch", "--version").split()[-1]
    architecture = run("dpkg", "--print-architecture").strip()
    wanted = {"Package": "gazewright", "Version": version, "Architecture": architecture,
              "Section": "science", "Priority": "optional"}
    faults.extend(f"the package's {key} is {control.get(key)}, not {value}"
                  for key, value in wanted.items() if control.get(key) != value)
    for needed in ("libqt6widgets6", "libqt6svg6", "libyaml-cpp", "libudunits2-0", "libc6 (>= "):
        if needed not in control.get("Depends", ""):
            faults.append(f"the package does not depend on {needed}: {control.get('Depends')}")
    if packages[0].name != f"gazewright_{version}_{architecture}.deb":
        faults.append(f"the package is called {packages[0].name}")
    rows = [row.split(maxsplit=5) for row in run("dpkg-deb", "--contents", packages[0]).splitlines()]
    check_files([row[5].removeprefix("./") for row in rows if not row[0].startswith("d")],
                "the package")
    for mode, owner, *_, name in rows:
        right = "-rwxr-xr-x" if name[2:] in PROGRAMS else "-rw-r--r--"
        if owner != "root/root" or mode != (right if mode.startswith("-") else "drwxr-xr-x"):
            faults.append(f"{name} belongs to {owner} with {mode}")


with tempfile.TemporaryDirectory() as place:
    check_installed(place)
with tempfile.TemporaryDirectory() as place:
    check_package(place)
print("\n".join(faults) or "installs, runs and packs")
sys.exit(1 if faults else 0)
