"""Tries a frozen program: as a stranger would run it, from another folder, with an empty home and next to no environment."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path

# Until a window closes by itself: it must have loaded everything by then, also on a busy machine.
SECONDS = "10"
# What Qt says where there is no real display.
HARMLESS = ("This plugin does not support ",)
KINDS = sorted(file.stem for file in (Path(__file__).resolve().parents[2] / "resources" / "questions").glob("*.toml"))


def need(condition: bool, what: str) -> None:
    if not condition:
        sys.exit(f"frozen program: NOT {what}")
    print(f"  {what}", flush=True)


class Program:
    """A program in a folder, run in a home of its own."""

    def __init__(self, command: Path | str, home: Path, wrapped: Iterable[str] = ()) -> None:
        """Run ``command`` with ``home``; ``wrapped`` goes before it."""
        self.command, self.home = [*wrapped, str(command)], home
        home.mkdir(parents=True, exist_ok=True)
        kept = {"PATH", "SYSTEMROOT", "TEMP", "TMP", "TMPDIR"}
        self.environment = {name: value for name, value in os.environ.items() if name.upper() in kept}
        self.environment |= {"HOME": str(home), "USERPROFILE": str(home), "LANG": "C.UTF-8"}

    def run(self, *words: object, **environment: str) -> str:
        """Return what it printed; stop when it fails, or says what a whole program would not say."""
        command = [*self.command, *(str(word) for word in words)]
        done = subprocess.run(
            command, check=False, cwd=self.home, env=self.environment | environment, capture_output=True, timeout=120
        )
        said = done.stderr.decode(errors="replace")
        strange = [line for line in said.splitlines() if line.strip() and not line.startswith(HARMLESS)]
        if done.returncode != 0 or strange:
            sys.exit(f"frozen program: exit status {done.returncode} of {' '.join(command)}\n{said}")
        return done.stdout.decode()


def windows(program: Program, *words: object) -> None:
    """Open and close its window without a display, and on one where there is one or can be."""
    program.run(*words, "--close-after", SECONDS, QT_QPA_PLATFORM="offscreen")
    print("  the window opens and closes, offscreen", flush=True)
    if sys.platform == "linux" and shutil.which("xvfb-run"):
        screen = ["xvfb-run", "-a", "-s", "-screen 0 1366x768x24"]
        shown = Program(program.command[-1], program.home, [*screen, *program.command[:-1]])
        shown.run(*words, "--close-after", SECONDS, QT_QPA_PLATFORM="xcb")
        print("  and on an X display", flush=True)


def of_program(folder: Path, scratch: Path) -> None:
    """Do the main job with the frozen program."""
    print(f"Trying {folder.name}:", flush=True)
    program = Program(folder / ("evenwater.exe" if os.name == "nt" else "evenwater"), scratch / "home")
    use(program)
    need((folder / "licences" / "licences.md").is_file(), "the licences' texts are beside the program")


def use(program: Program, kinds: Sequence[str] = KINDS) -> None:
    """Ask for the version, answer the example questions of some kinds, write a card and open the window."""
    need(program.run("--version").startswith("evenwater "), "--version answers")
    need("LGPL-3.0-only" in program.run("--licences"), "--licences prints the list")
    for kind in kinds:
        question = program.home / f"{kind}.ewq"
        question.write_text(program.run("question", kind), encoding="utf-8")
        answer = json.loads(program.run("answer", question))
        if answer["status"] != "answered":
            sys.exit(f"frozen program: its example of {kind} is {answer['status']}")
    print(f"  the examples are answered: {', '.join(kinds)}", flush=True)
    card = program.home / "card.pdf"
    answer = json.loads(program.run("answer", program.home / "correction.ewq", "--card", card))
    # The worked example that `evenwater question correction` prints: 115.19 mL in 24 h.
    need(
        abs(answer["dose_per_hour"]["value"] - 4.7994) < 1e-3, "the dose is the one worked by hand, 4.7994 mL per hour"
    )
    data = card.read_bytes()
    need(data.startswith(b"%PDF") and b"AtkinsonHyperlegible" in data, "the card is a PDF in its own typeface")
    windows(program, "--demo")
    log = program.home / "log.sqlite"
    program.run("--log", log, "--close-after", SECONDS, QT_QPA_PLATFORM="offscreen")
    need(log.is_file(), "the window had time to load, and keeps a log")
    program.run(program.home / "correction.ewq", "--close-after", "2", QT_QPA_PLATFORM="offscreen")
    print("  a question file opens in a window", flush=True)


def of_floor(folder: Path, scratch: Path) -> None:
    """Open and close the bare window."""
    print("Trying the bare window:", flush=True)
    windows(Program(folder / ("floor.exe" if os.name == "nt" else "floor"), scratch / "home"))
