"""Starts the window: paints it first, then loads what it needs."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from dataclasses import dataclass
from getopt import GetoptError, getopt
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtWidgets import QApplication

from evenwater.card.fonts import REGULAR, load_fonts
from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import BASE_POINTS, apply_ground


def run(arguments: Sequence[str]) -> int:
    """Open the window and stay until it is closed.

    Parameters
    ----------
    arguments : sequence of str
        Options after the program's name.

    Returns
    -------
    int
        Exit status; 2 for an option that is not known.
    """
    try:
        options = options_of(arguments)
    except ValueError as error:
        out = sys.stderr if str(error) else sys.stdout
        out.write(f"evenwater: {error}\n{USAGE}\n" if str(error) else f"{USAGE}\n")
        return 2 if str(error) else 0
    QCoreApplication.setApplicationName("Evenwater")
    QCoreApplication.setOrganizationName("Evenwater")
    app = QApplication([sys.argv[0]])
    app.setDesktopFileName("evenwater")
    apply_ground(app, load_fonts([REGULAR]), base_points=BASE_POINTS * options.font / 100.0)
    window = MainWindow(demo=options.demo, log=options.log)
    window.appear()
    if options.close_after is not None:
        QTimer.singleShot(round(1000 * options.close_after), window.close)
    return app.exec()


USAGE = """usage: evenwater [--demo] [--log FILE] [--font PERCENT] [--close-after SECONDS]

  --demo                 open an invented fish room; your own data is not touched
  --log FILE             keep the log in this file instead of the usual place
  --font PERCENT         size of all letters, 80 to 200
  --close-after SECONDS  close the window by itself

Without a window: evenwater answer QUESTION.toml, evenwater question KIND."""


@dataclass(frozen=True)
class Options:
    """What was asked for on the command line."""

    demo: bool = False
    log: Path | None = None
    font: float = 100.0
    close_after: float | None = None


def options_of(arguments: Sequence[str]) -> Options:
    """Read the options; getopt, since a larger parser would cost a tenth of the first paint.

    Raises
    ------
    ValueError
        With a sentence for the person at the keyboard.
    """
    try:
        found, rest = getopt(list(arguments), "h", ["help", "demo", "log=", "font=", "close-after="])
    except GetoptError as error:
        raise ValueError(str(error)) from error
    if rest:
        raise ValueError(f"{rest[0]} is not an option or a command")
    given = dict(found)
    if "-h" in given or "--help" in given:
        raise ValueError("")
    numbers = {}
    for name in ("--font", "--close-after"):
        try:
            numbers[name] = float(given[name]) if name in given else None
        except ValueError:
            raise ValueError(f"{name} takes a number, not {given[name]}") from None
    font = 100.0 if numbers["--font"] is None else numbers["--font"]
    if not 80.0 <= font <= 200.0:
        raise ValueError("--font takes 80 to 200")
    return Options(
        "--demo" in given, Path(given["--log"]) if "--log" in given else None, font, numbers["--close-after"]
    )
