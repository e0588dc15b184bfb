"""Smoke test of what is handed out: build the wheel, install it alone, answer a question, open and close the window.

Run by .ci/run with the Python of .venv, after `newcomer.py check` has put the build tools there:

    .venv/bin/python packaging/smoke.py

The wheel is built from the source archive, so both are tried. The product then runs from another folder, with an empty
home and without the checkout on any path.
"""

from __future__ import annotations

import json
import os
import subprocess
import sys
import tarfile
import tempfile
import zipfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
IN_WHEEL = (
    "evenwater/__main__.py",
    "evenwater/engine/units.txt",
    "evenwater/resources/chemicals.toml",
    "evenwater/resources/icons/evenwater-64.png",
    "evenwater/resources/licences.md",
    "evenwater/resources/parameters.toml",
)
IN_ARCHIVE = (
    "LICENSE", "README.md", "packaging/constraints.txt", "packaging/freeze.py", "pyproject.toml", "tests/conftest.py",
)  # fmt: skip


def run(*words: object, cwd: Path, env: dict[str, str] | None = None) -> str:
    """Run a command and return what it printed; stop the smoke test when it fails."""
    command = [str(word) for word in words]
    done = subprocess.run(command, check=False, cwd=cwd, env=env, capture_output=True, timeout=600)
    if done.returncode != 0:
        said = (done.stdout + done.stderr).decode(errors="replace")
        sys.exit(f"smoke test: exit status {done.returncode} of {' '.join(command)}\n{said}")
    return done.stdout.decode()


def need(condition: bool, what: str) -> None:
    if not condition:
        sys.exit(f"smoke test: {what}")
    print(f"  {what}", flush=True)


def build(folder: Path) -> Path:
    """Build both archives into a folder, look into them, and return the wheel."""
    run(sys.executable, "-m", "build", "--no-isolation", "--outdir", folder, ROOT, cwd=folder)
    wheel = next(folder.glob("evenwater-*-py3-none-any.whl"))
    names = set(zipfile.ZipFile(wheel).namelist())
    need(names.issuperset(IN_WHEEL), "the wheel holds the product and its data")
    need(not any(name.startswith(("tests/", "packaging/")) for name in names), "the wheel holds nothing else")
    with tarfile.open(next(folder.glob("evenwater-*.tar.gz"))) as archive:
        inside = {name.split("/", 1)[1] for name in archive.getnames() if "/" in name}
    need(inside.issuperset(IN_ARCHIVE), "the source archive holds the tests and the pins")
    return wheel


def install(wheel: Path, venv: Path) -> Path:
    """Install a wheel and its pinned dependencies into a fresh environment; return the folder of its commands."""
    run(sys.executable, "-m", "venv", venv, cwd=ROOT)
    commands = venv / ("Scripts" if os.name == "nt" else "bin")
    pip = (commands / "python", "-m", "pip", "--quiet", "--disable-pip-version-check")
    locked = ROOT / "packaging" / "locked" / "run.txt"
    run(*pip, "install", "--no-deps", "--only-binary=:all:", "--require-hashes", "-r", locked, cwd=ROOT)
    run(*pip, "install", "--no-deps", wheel, cwd=ROOT)
    run(*pip, "check", cwd=ROOT)
    print("  the wheel installs, and its dependencies agree with the pins", flush=True)
    return commands


def use(commands: Path, place: Path, wheel_version: str) -> None:
    """Do the main job with an installed Evenwater, in an empty home and from another folder."""
    leads_to_checkout = {"PYTHONPATH", "PYTHONHOME", "VIRTUAL_ENV"}
    env = {name: value for name, value in os.environ.items() if name not in leads_to_checkout}
    env = {name: value for name, value in env.items() if not name.startswith("XDG_")}
    env |= {"HOME": str(place), "USERPROFILE": str(place), "PYTHONUTF8": "1", "QT_QPA_PLATFORM": "offscreen"}
    evenwater = commands / "evenwater"
    where = run(commands / "python", "-c", "import evenwater; print(evenwater.__file__)", cwd=place, env=env)
    need(str(ROOT / "desktop") not in where, "the installed package is used, not the checkout")

    version = run(evenwater, "--version", cwd=place, env=env).split()
    need(wheel_version in version, "its version is the wheel's")
    question, card = place / "question.toml", place / "card.pdf"
    question.write_text(run(evenwater, "question", "correction", cwd=place, env=env), encoding="utf-8")
    answer = json.loads(run(evenwater, "answer", question, cwd=place, env=env))
    need(answer["status"] == "answered", "`evenwater answer` answers the example question")
    # The worked example that `evenwater question correction` prints: 115.19 mL in 24 h.
    need(
        abs(answer["dose_per_hour"]["value"] - 4.7994) < 1e-3, "its dose is the one worked by hand: 4.7994 mL per hour"
    )
    run(evenwater, "answer", question, "--card", card, cwd=place, env=env)
    need(card.read_bytes().startswith(b"%PDF"), "`--card` writes a PDF without a display")
    run(evenwater, "--demo", "--close-after", "2", cwd=place, env=env)
    print("  the window opens on the demo and closes, offscreen", flush=True)
    if env.get("DISPLAY"):
        run(evenwater, "--demo", "--close-after", "2", cwd=place, env=env | {"QT_QPA_PLATFORM": "xcb"})
        print("  and on a display", flush=True)


def main() -> None:
    print("Smoke test of the wheel:", flush=True)
    with tempfile.TemporaryDirectory() as scratch:
        folders = [Path(scratch) / name for name in ("dist", "home")]
        for folder in folders:
            folder.mkdir()
        wheel = build(folders[0])
        use(install(wheel, Path(scratch) / "venv"), folders[1], wheel.name.split("-")[1])
    print("Smoke test passed.")


if __name__ == "__main__":
    main()
