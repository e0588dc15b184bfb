"""The newcomer's door: sets up .venv beside the sources and runs the demo, the tests or the checks.

    python3 packaging/newcomer.py demo        open the window on the invented demo fish room
    python3 packaging/newcomer.py test        run the tests (further words go to pytest)
    python3 packaging/newcomer.py check       run the linters and the type checker
    python3 packaging/newcomer.py tools       only install what the checks and the wheel need
    python3 packaging/newcomer.py libraries   print the Debian packages that a window still needs here

Only the standard library is used. Everything is installed from packaging/locked/, hashes checked, into .venv only.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036  (this is the script that must say so)
    sys.exit("Evenwater needs Python 3.11 or newer; this is Python %d.%d." % sys.version_info[:2])  # noqa: UP031

import argparse
import ctypes
import hashlib
import importlib.util
import json
import os
import platform
import subprocess
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
STAMP = VENV / "evenwater-setup.json"
LOCKED = ROOT / "packaging" / "locked"
GROUPS = {"demo": ("run", "build"), "test": ("run", "build", "test"), "check": ("run", "build", "test", "dev")}

# What Qt's wheel takes from the system, by Debian package: without a display, and for a window.
BASE_LIBRARIES = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libX11.so.6": "libx11-6",
    "libdbus-1.so.3": "libdbus-1-3",
    "libfontconfig.so.1": "libfontconfig1",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libxkbcommon.so.0": "libxkbcommon0",
}
WINDOW_LIBRARIES = {
    "libX11-xcb.so.1": "libx11-xcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-render.so.0": "libxcb-render0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-shm.so.0": "libxcb-shm0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-util.so.1": "libxcb-util1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
}


def missing_libraries(for_window: bool) -> dict[str, str]:
    """Return library -> Debian package of what Qt would not find here; empty on Windows and macOS."""
    if not sys.platform.startswith("linux"):
        return {}
    missing = {}
    for library, package in (BASE_LIBRARIES | (WINDOW_LIBRARIES if for_window else {})).items():
        try:
            ctypes.CDLL(library)
        except OSError:
            missing[library] = package
    return missing


def require_libraries(for_window: bool) -> None:
    missing = missing_libraries(for_window)
    if missing:
        sys.exit(
            f"Qt needs libraries that this machine lacks: {', '.join(missing)}.\n"
            f"On Debian and Ubuntu: sudo apt install {' '.join(missing.values())}"
        )


def require_venv() -> None:
    if importlib.util.find_spec("venv") is None or importlib.util.find_spec("ensurepip") is None:
        sys.exit(
            "This Python cannot make virtual environments (venv or ensurepip is missing).\n"
            "On Debian and Ubuntu: sudo apt install python3-venv"
        )


def clean_environment() -> dict[str, str]:
    """Return the environment without what would lead Python or pip away from .venv, or let every process compile everything again."""
    leads_away = {"PYTHONHOME", "PYTHONPATH", "PIP_USER", "PIP_TARGET", "PIP_PREFIX", "PIP_REQUIRE_VIRTUALENV"}
    return {name: value for name, value in os.environ.items() if name not in leads_away | {"PYTHONDONTWRITEBYTECODE"}}


def venv_python(venv: Path) -> Path:
    return venv / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def run(*words: object, **environment: str) -> int:
    """Run a command in the checkout, showing what it prints; return its exit status."""
    return subprocess.run(
        [str(word) for word in words], check=False, cwd=ROOT, env=clean_environment() | environment
    ).returncode


def pip(python: Path, *words: object) -> None:
    # What is imported is compiled when it first is; most of what is installed never is, and took twenty seconds.
    quick = ("--quiet", "--disable-pip-version-check", "--no-deps", "--no-compile")
    command = [python, "-m", "pip", "install", *quick, *words]
    if run(*command) != 0:
        sys.exit("Setting up stopped: pip could not install what it was asked for (its message is above).")


def install_locked(python: Path, groups: tuple[str, ...]) -> None:
    """Install the pinned wheels of some groups, each checked against its hash."""
    files = [word for group in groups for word in ("-r", LOCKED / f"{group}.txt")]
    pip(python, "--require-hashes", "--only-binary=:all:", *files)


def set_up(groups: tuple[str, ...]) -> Path:
    """Bring .venv to what the groups need; does nothing when it is there already. Returns its Python."""
    if sys.version_info >= (3, 15):
        print("Evenwater's pinned versions were made for Python 3.11 to 3.14; on a newer one they may not install.")
    sources = [*(LOCKED / f"{group}.txt" for group in groups), ROOT / "pyproject.toml"]
    state = {file.name: hashlib.sha256(file.read_bytes()).hexdigest() for file in sources}
    state |= {"python": platform.python_version(), "folder": str(ROOT)}
    done = json.loads(STAMP.read_text(encoding="utf-8")) if STAMP.is_file() else {}
    python = venv_python(VENV)
    if state.items() <= done.items() and python.exists():
        return python
    same_python = done.get("python") == state["python"] and done.get("folder") == state["folder"]
    if VENV.exists() and not same_python and not STAMP.is_file():
        sys.exit(f"{VENV} was not made by this script. Rename or remove it, then run this again.")
    print(f"Setting up {VENV} (some 300 MB; a minute or two the first time) ...", flush=True)
    if not same_python and run(sys.executable, "-m", "venv", "--clear", VENV) != 0:
        sys.exit("The virtual environment could not be made (the message is above).")
    STAMP.write_text(json.dumps({"python": state["python"], "folder": state["folder"]}), encoding="utf-8")
    install_locked(python, groups)
    pip(python, "--no-build-isolation", "--editable", ROOT)
    STAMP.write_text(json.dumps(done | state if same_python else state), encoding="utf-8")
    return python


def window_opens(python: Path) -> bool:
    """Return whether Qt can open a window here (a display may be named and yet not answer)."""
    if sys.platform.startswith("linux"):
        if not any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")):
            return False
        probe = "from PySide6.QtGui import QGuiApplication; QGuiApplication([])"
        command = [str(python), "-c", probe]
        return subprocess.run(command, check=False, capture_output=True, env=clean_environment()).returncode == 0
    return True


def demo(words: list[str]) -> int:
    displayed = any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY"))
    require_libraries(for_window=displayed)
    python = set_up(GROUPS["demo"])
    if window_opens(python):
        print("Opening Evenwater on the demo fish room ...", flush=True)
        return run(python, "-m", "evenwater", "--demo", *words)
    card = ROOT / "demo-card.pdf"
    with tempfile.TemporaryDirectory() as scratch:
        question = Path(scratch) / "question.toml"
        asked = subprocess.run(
            [str(python), "-m", "evenwater", "question", "correction"],
            check=True,
            capture_output=True,
            env=clean_environment() | {"PYTHONUTF8": "1"},
        )
        question.write_bytes(asked.stdout)
        print("No display here, so no window. The demo question, answered:\n", flush=True)
        offscreen = {"QT_QPA_PLATFORM": "offscreen"}
        status = run(python, "-m", "evenwater", "answer", question, "--text", "--card", card, **offscreen)
    if status == 0:
        print(f"\nIts card for the stand: {card}")
    return status


def test(words: list[str]) -> int:
    require_libraries(for_window=False)
    python = set_up(GROUPS["test"])
    # One process per core, four at most; a later -n among the words wins. Each begins at another end of the tests, so that what
    # a file prepares for its tests is prepared once.
    workers = ("-n", min(4, os.cpu_count() or 1), "--dist", "worksteal")
    return run(python, "-m", "pytest", *workers, *words, QT_QPA_PLATFORM=os.environ.get("QT_QPA_PLATFORM", "offscreen"))


def side_by_side(commands: dict[str, tuple[object, ...]]) -> dict[str, int]:
    """Run commands in the checkout at the same time; show what each prints when it has ended, and return their exit statuses by name."""
    started = {
        name: subprocess.Popen(
            [str(word) for word in words],
            cwd=ROOT,
            env=clean_environment(),
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
        )
        for name, words in commands.items()
    }
    statuses = {}
    for name, process in started.items():
        said, _ = process.communicate()
        print(said.decode(errors="replace"), end="", flush=True)
        statuses[name] = process.returncode
    return statuses


def tools(_words: list[str]) -> int:
    set_up(GROUPS["check"])
    return 0


def check(words: list[str]) -> int:
    python = set_up(GROUPS["check"])
    scripts = python.parent
    commands = {
        "ruff check": (python, "-m", "ruff", "check", *words),
        "ruff format": (python, "-m", "ruff", "format", "--check"),
        "mypy": (python, "-m", "mypy"),
        "lint-imports": (scripts / "lint-imports", "--no-cache"),
    }
    failed = [name for name, status in side_by_side(commands).items() if status != 0]
    print(f"Failed: {', '.join(failed)}" if failed else "All checks passed.")
    return 1 if failed else 0


def libraries(_words: list[str]) -> int:
    print(" ".join(missing_libraries(for_window=True).values()))
    return 0


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    jobs = {"demo": demo, "test": test, "check": check, "tools": tools, "libraries": libraries}
    parser.add_argument("job", choices=jobs)
    parser.add_argument("words", nargs=argparse.REMAINDER, help="handed on to the window, to pytest or to ruff check")
    chosen = parser.parse_args()
    if chosen.job != "libraries":
        require_venv()
    return jobs[chosen.job](chosen.words)


if __name__ == "__main__":
    sys.exit(main())
