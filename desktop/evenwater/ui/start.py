"""Starts the window: paints it first, then loads what it needs."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from dataclasses import dataclass
from getopt import GetoptError, getopt
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QApplication

from evenwater.assets import resources
from evenwater.card.fonts import REGULAR, load_fonts
from evenwater.ui.look import Look
from evenwater.ui.main_window import MainWindow
from evenwater.ui.preferences import preferences_file


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
    options = asked(arguments)
    if isinstance(options, int):
        return options
    app, look = application(options)
    look.prepare(load_fonts([REGULAR]))
    window = MainWindow(demo=options.demo, log=options.log, look=look)
    window.appear()
    if options.close_after is not None:
        QTimer.singleShot(round(1000 * options.close_after), window.close)
    return app.exec()


def asked(arguments: Sequence[str]) -> Options | int:
    """Return the options, or the exit status when there is nothing to open; what is wrong is said on the terminal."""
    try:
        return options_of(arguments)
    except ValueError as error:
        out = sys.stderr if str(error) else sys.stdout
        out.write(f"evenwater: {error}\n{USAGE}\n" if str(error) else f"{USAGE}\n")
        return 2 if str(error) else 0


def application(options: Options) -> tuple[QApplication, Look]:
    """Make the application under its names and icon, and the look that the keeper chose for it."""
    QCoreApplication.setApplicationName("Evenwater")
    QCoreApplication.setOrganizationName("Evenwater")
    app = QApplication([sys.argv[0]])
    # The name of the desktop entry, so that a desktop finds the window's icon.
    app.setDesktopFileName("page.evenwater.Evenwater")
    app.setWindowIcon(QIcon(str(resources() / "icons" / "evenwater-64.png")))
    look = Look(app, preferences_file(), options.font)
    look.speak()
    return app, look


USAGE = """usage: evenwater [QUESTION] [--demo] [--log FILE] [--font PERCENT] [--close-after SECONDS]

  --demo                 open an invented fish room; your own data is not touched
  --log FILE             keep the log in this file instead of the usual place
  --log postgresql://NAME@SERVER/DATABASE    one log for several laptops; no password in it
  --font PERCENT         size of all letters, 80 to 200, for this time
  --close-after SECONDS  close the window by itself

With a question file before the options: its answer, in a window of its own.
Without a window: evenwater answer QUESTION.toml, evenwater question KIND, evenwater log-copy FROM TO, evenwater --version, evenwater --licences."""


@dataclass(frozen=True)
class Options:
    """What was asked for on the command line."""

    demo: bool = False
    log: Path | str | None = None
    """A file, or the address of a server as it was given."""
    font: int | None = None
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
    font = numbers["--font"]
    if font is not None and not 80.0 <= font <= 200.0:
        raise ValueError("--font takes 80 to 200")
    return Options(
        "--demo" in given,
        _log(given["--log"]) if "--log" in given else None,
        None if font is None else round(font),
        numbers["--close-after"],
    )


def _log(given: str) -> Path | str:
    # An address is no path: that would take its slashes for one.
    return given if "://" in given else Path(given)
