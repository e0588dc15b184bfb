"""Starts the window: paints it first, then loads what it needs."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTimer
from PySide6.QtWidgets import QApplication

from evenwater.card.fonts import load_fonts
from evenwater.ui.main_window import MainWindow
from evenwater.ui.theme import BASE_POINTS, apply_theme


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
    options = _options(arguments)
    QCoreApplication.setApplicationName("Evenwater")
    QCoreApplication.setOrganizationName("Evenwater")
    app = QApplication([sys.argv[0]])
    app.setDesktopFileName("evenwater")
    apply_theme(app, load_fonts(), base_points=BASE_POINTS * options.font / 100.0)
    window = MainWindow(demo=options.demo, log=options.log)
    window.show()
    if options.close_after is not None:
        QTimer.singleShot(round(1000 * options.close_after), window.close)
    return app.exec()


def _options(arguments: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="evenwater", description="Plan slow, safe corrections for coral reef tanks.")
    parser.add_argument("--demo", action="store_true", help="open an invented fish room; your own data is not touched")
    parser.add_argument("--log", type=Path, help="keep the log in this file instead of the usual place")
    parser.add_argument("--font", type=int, default=100, metavar="PERCENT", help="size of all letters, 100 to 200")
    parser.add_argument("--close-after", type=float, metavar="SECONDS", help="close the window by itself")
    parser.epilog = "Without a window: evenwater answer QUESTION.toml, evenwater question KIND."
    found = parser.parse_args(arguments)
    if not 80 <= found.font <= 200:
        parser.error("--font takes 80 to 200")
    return found
