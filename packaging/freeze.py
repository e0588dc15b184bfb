"""Freeze Evenwater into a folder that needs no Python, try it, and hold its size against the bare window it could be at least.

    python packaging/freeze.py                        freeze in a scratch folder, try, print sizes, throw away
    python packaging/freeze.py --out FOLDER           the same, and keep what was made in FOLDER
    python packaging/freeze.py --out FOLDER --packages  and make the Debian package and the archive from it (Linux)

A fresh environment is made from packaging/locked (hashes checked) with the Python that runs this script; Evenwater goes into it from its
wheel. Not part of CI: it takes some minutes. The Linux folder runs on systems whose C library is as new as the one it was made on.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from datetime import UTC, datetime
from pathlib import Path

import facts
import licences
from frozen import trial

ROOT = Path(__file__).resolve().parent.parent
SPEC = ROOT / "packaging" / "frozen" / "evenwater.spec"
LOCKED = ROOT / "packaging" / "locked"
AT_MOST = 1.25
# Parts that are named when sizes are printed, by where they stand; the first that fits counts.
PARTS = (
    ("the licences' texts", "licences/"),
    ("Qt's own libraries and plugins", "_internal/PySide6/Qt/"),
    ("Qt for Python", "_internal/PySide6/"),
    ("Qt for Python", "_internal/shiboken6/"),
    ("numpy", "_internal/numpy"),
    ("gsw", "_internal/gsw/"),
    ("Evenwater's data", "_internal/evenwater/"),
    ("Python's extensions", "_internal/python3"),
    ("Python", "_internal/libpython"),
    ("Python", "_internal/base_library.zip"),
    ("libraries of the system", "_internal/lib"),
    ("data of the libraries", "_internal/"),
)


def run(*words: object, cwd: Path = ROOT, **environment: str) -> None:
    """Run a command; show what it said only when it fails, and stop then."""
    command = [str(word) for word in words]
    leads_away = {"PYTHONHOME", "PYTHONPATH", "PIP_USER", "PIP_TARGET", "PIP_PREFIX"}
    env = {name: value for name, value in os.environ.items() if name not in leads_away} | environment
    done = subprocess.run(command, check=False, cwd=cwd, env=env, capture_output=True)
    if done.returncode != 0:
        sys.exit(f"{' '.join(command)}\n{(done.stdout + done.stderr).decode(errors='replace')[-8000:]}")


def environment(place: Path) -> Path:
    """Make an environment with Evenwater and PyInstaller in it; return its Python."""
    run(sys.executable, "-m", "venv", place)
    python = place / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
    pip = (python, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-deps")
    files = [word for group in ("run", "build", "package") for word in ("-r", LOCKED / f"{group}.txt")]
    run(*pip, "--require-hashes", "--only-binary=:all:", *files)
    run(*pip, "--no-build-isolation", ROOT)
    return python


def site_of(python: Path) -> Path:
    """Return the site-packages of an environment."""
    asked = [str(python), "-c", "import sysconfig; print(sysconfig.get_paths()['purelib'])"]
    return Path(subprocess.run(asked, check=True, capture_output=True, text=True).stdout.strip())


def epoch() -> str:
    """Return the second that all files of a build bear, the release's midnight UTC, so that two builds are alike."""
    return str(int(datetime.fromisoformat(facts.released()[0]).replace(tzinfo=UTC).timestamp()))


def freeze(python: Path, scratch: Path, floor: bool) -> Path:
    """Freeze the program, or the bare window; return the folder."""
    words = ["--floor"] if floor else []
    if sys.platform != "linux":
        extras = scratch / "extras"
        run(python, ROOT / "packaging" / "icons.py", extras, QT_QPA_PLATFORM="offscreen")
        shutil.copyfile(ROOT / "packaging" / "windows" / "version.txt", extras / "version.txt")
        words += ["--extras", str(extras)]
    made = scratch / "made"
    places = ("--noconfirm", "--distpath", made, "--workpath", scratch / "work")
    fixed = {"SOURCE_DATE_EPOCH": epoch(), "PYTHONHASHSEED": "1", "PYINSTALLER_CONFIG_DIR": str(scratch / "kept")}
    run(python, "-m", "PyInstaller", *places, SPEC, "--", *words, cwd=scratch, **fixed)
    folder = made / ("floor" if floor else "evenwater")
    if sys.platform == "linux":
        strip(folder)
    return folder


def strip(folder: Path) -> None:
    """Take the symbols out of Python and its extensions.

    What stands in numpy.libs has been moved about after it was linked and would not load any more; Qt stays as its makers built it.
    """
    for file in sorted((folder / "_internal").rglob("*.so*")):
        inside = file.relative_to(folder / "_internal").parts[0]
        if not file.is_symlink() and inside not in ("numpy.libs", "PySide6", "shiboken6"):
            run("strip", "--strip-unneeded", file)
            forget_place(file)


def forget_place(library: Path) -> None:
    """Take out of a library of Python where it was built: nobody else's folder of that name shall be searched."""
    place = b"\0" + os.fsencode(Path(sys.base_prefix, "lib")) + b"\0"
    data = library.read_bytes()
    if data.count(place) == 1:
        # An empty way is no way (ld.so ignores it).
        library.write_bytes(data.replace(place, bytes(len(place))))


def sizes(folder: Path) -> Counter[str]:
    """Return how many bytes each part of a frozen folder takes; links count nothing."""
    found: Counter[str] = Counter()
    for file in folder.rglob("*"):
        if file.is_file() and not file.is_symlink():
            place = file.relative_to(folder).as_posix()
            name = next((name for name, start in PARTS if place.startswith(start)), "the program and all Python code")
            found[name] += file.stat().st_size
    return found


def compare(folder: Path, floor: Path) -> float:
    """Print both sizes, part by part, and return their ratio."""
    ours, least = sizes(folder), sizes(floor)
    print(f"{'MB':>32}{'Evenwater':>12}{'bare window':>14}")
    for name in sorted(ours, key=lambda part: -ours[part]):
        print(f"{name:>32}{ours[name] / 1e6:12.1f}{least[name] / 1e6:14.1f}")
    ratio = ours.total() / least.total()
    print(f"{'all':>32}{ours.total() / 1e6:12.1f}{least.total() / 1e6:14.1f}   ratio {ratio:.3f}, at most {AT_MOST}")
    return ratio


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--out", type=Path, help="keep the frozen folder (and packages) here; made when missing")
    parser.add_argument("--no-floor", action="store_true", help="leave out the bare window and the comparison")
    parser.add_argument("--packages", action="store_true", help="make the Debian package and the archive")
    given = parser.parse_args()
    if given.packages and (given.out is None or sys.platform != "linux"):
        parser.error("--packages goes with --out, and only on Linux")
    with tempfile.TemporaryDirectory(prefix="evenwater-freeze-") as name:
        scratch = Path(name)
        print("An environment for it ...", flush=True)
        python = environment(scratch / "venv")
        print("Freezing ...", flush=True)
        folder = freeze(python, scratch, floor=False)
        licences.collect(site_of(python), folder, folder / "licences")
        trial.of_program(folder, scratch)
        if not given.no_floor:
            floor = freeze(python, scratch, floor=True)
            trial.of_floor(floor, scratch)
            if compare(folder, floor) > AT_MOST:
                sys.exit(f"The frozen folder is more than {AT_MOST} times the bare window.")
        if given.out:
            given.out.mkdir(parents=True, exist_ok=True)
            kept = given.out / "evenwater"
            if kept.exists():
                shutil.rmtree(kept)
            shutil.copytree(folder, kept, symlinks=True)
            for app in (scratch / "made").glob("*.app"):
                shutil.copytree(app, given.out / app.name, symlinks=True, dirs_exist_ok=True)
            if given.packages:
                import linux  # noqa: PLC0415  (only where it can be used)

                linux.package(kept, given.out, int(epoch()))


if __name__ == "__main__":
    main()
