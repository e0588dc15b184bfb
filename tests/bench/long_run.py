"""A long day in the real window: edits through fields, charts repainted, sheets and windows opened and closed; memory must not grow.

One window stays open all day. After the first tenth everything has been made that is made once, and from there on memory, top-level
widgets and living objects are compared; then the window itself is opened and closed, with all its sheets. Qt's warnings, exceptions in slots and widgets left behind are faults.
"""

from __future__ import annotations

import argparse
import ctypes
import gc
import random
import sys
import time
from collections import Counter
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QCoreApplication, QEvent, QMessageLogContext, Qt, QtMsgType, qInstallMessageHandler
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QComboBox, QGraphicsView, QLineEdit, QPushButton, QWidget

from evenwater.card.fonts import load_fonts
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import LOG, SHEETS
from evenwater.ui.theme import BASE_POINTS, apply_ground
from tests.bench.kill_programs import spreadsheet
from tests.bench.probe import resident_mib

EDITS, REPAINTS, OPENINGS = 50_000, 20_000, 2_000
ROUNDS = 200
# The share of visits to a sheet on which its windows are opened: backups, cards and labels to look at, the import.
WINDOWS = 0.2
MOST_GROWTH = 0.05
# What a keystroke may wait for [s].
_PATIENCE_S = 10.0
# The offscreen platform says so for every window that is shown or raised.
_NO_NEWS = "This plugin does not support "


@dataclass
class Ear:
    """Hears what must not be said: warnings of Qt, exceptions in slots."""

    heard: Counter[str] = field(default_factory=Counter)

    def listen(self) -> None:
        """Hear all from now on."""
        qInstallMessageHandler(self._qt)
        sys.excepthook = self._raised

    def _qt(self, kind: QtMsgType, _where: QMessageLogContext, words: str | None) -> None:
        if kind is not QtMsgType.QtDebugMsg and not (words or "").startswith(_NO_NEWS):
            self.heard[f"Qt: {words}"] += 1

    def _raised(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        sys.__excepthook__(kind, error, trace)
        self.heard[f"{kind.__name__}: {error}"] += 1


@dataclass
class Done:
    """How much was done so far."""

    edits: int = 0
    repaints: int = 0
    sheets: int = 0
    windows: int = 0


def breathe(seconds: float = 0.0) -> None:
    """Let the window live until nothing waits, at least so long."""
    until = time.monotonic() + seconds
    while True:
        QApplication.processEvents()
        QCoreApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        if time.monotonic() >= until:
            return


def until(happened: Callable[[], bool]) -> None:
    """Let the window live until something has happened."""
    end = time.monotonic() + _PATIENCE_S
    while not happened():
        breathe(0.005)
        if time.monotonic() > end:
            raise TimeoutError(f"{happened} did not happen")


class Day:
    """Works in a window as a keeper does."""

    def __init__(self, folder: Path, seed: int) -> None:
        """Open the demonstration."""
        self._chance, self._folder = random.Random(seed), folder
        self._sheet = folder / "readings.csv"
        self._sheet.write_bytes(spreadsheet("file 0-1"))
        self.done = Done()
        self.window = self._opened()

    def _opened(self) -> MainWindow:
        window = MainWindow(demo=True)
        window.setWindowState(Qt.WindowState.WindowNoState)
        window.resize(1366, 768)
        window.show()
        window.activateWindow()
        until(lambda: window.opening() is not None and window.opening().room() is not None)
        breathe(0.1)
        return window

    @property
    def room(self) -> Room:
        """The open room."""
        opening = self.window.opening()
        assert opening is not None
        room = opening.room()
        assert room is not None
        return room

    def round(self, edits: int, repaints: int, openings: int, all_windows: bool = False) -> None:
        """Visit so many sheets; edit and repaint on each, and open the windows that it has, all or now and then."""
        for number in range(openings):
            place = (self.done.sheets + number) % len(SHEETS)
            self.room.sheets.choose(place)
            breathe()
            self._edit(edits // openings + (number < edits % openings))
            self._repaint(repaints // openings + (number < repaints % openings))
            if all_windows or self._chance.random() < WINDOWS:
                self._windows(place)
        self.done.sheets += openings

    def _edit(self, count: int) -> None:
        lines = [line for line in self.room.findChildren(QLineEdit) if _is_a_field(line)]
        if not lines:
            # A sheet without fields: nothing can be typed there, so somewhere else.
            self.room.sheets.choose(SHEETS.index("Correct"))
            breathe()
            lines = [line for line in self.room.findChildren(QLineEdit) if _is_a_field(line)]
        while count > 0:
            line = self._chance.choice(lines)
            if not _is_a_field(line):
                lines = [line for line in self.room.findChildren(QLineEdit) if _is_a_field(line)]
                continue
            line.setFocus(Qt.FocusReason.TabFocusReason)
            line.end(False)
            for key in (Qt.Key.Key_5, Qt.Key.Key_Backspace)[:count]:
                QTest.keyClick(line, key)
                breathe()
                count -= 1
                self.done.edits += 1
            QTest.keyClick(line, Qt.Key.Key_Tab)
            breathe()

    def _repaint(self, count: int) -> None:
        charts = [view for view in self.room.findChildren(QGraphicsView) if view.isVisible()]
        if not charts:
            self.room.sheets.choose(SHEETS.index("Correct"))
            breathe(0.02)
            charts = [view for view in self.room.findChildren(QGraphicsView) if view.isVisible()]
        for number in range(count if charts else 0):
            view = charts[number % len(charts)]
            view.resetCachedContent()
            view.viewport().repaint()
            self.done.repaints += 1

    def _windows(self, place: int) -> None:
        """Open each window of the sheet that is shown, let it be painted, and close it."""
        for button in self.room.findChildren(QPushButton):
            if _opens_a_window(button):
                self._seen_and_closed(button.click)
        if SHEETS[place] == LOG:
            self._seen_and_closed(lambda: self.room.log.transfer._import(self._sheet))

    def _seen_and_closed(self, opens: Callable[[], object]) -> None:
        before = {id(widget) for widget in _shown()}
        opens()
        breathe(0.03)
        for widget in _shown():
            if id(widget) not in before:
                widget.close()
                self.done.windows += 1
        breathe()

    def tour(self) -> None:
        """Visit every sheet once, with all that it has."""
        self.round(4 * len(SHEETS), 4 * len(SHEETS), len(SHEETS), all_windows=True)

    def again(self) -> None:
        """Close the window with all that is in it, and open another one."""
        if not self.window.close():
            raise AssertionError("the window did not close")
        self.window.deleteLater()
        del self.window
        breathe(0.05)
        gc.collect()
        self.window = self._opened()

    def end(self) -> None:
        """Close the window."""
        self.window.close()
        self.window.deleteLater()
        del self.window
        breathe(0.05)


def _shown() -> Iterator[QWidget]:
    return (widget for widget in QApplication.topLevelWidgets() if widget.isVisible() and widget.isWindow())


def _is_a_field(line: QLineEdit) -> bool:
    return line.isVisible() and line.isEnabled() and not line.isReadOnly() and not isinstance(line.parent(), QComboBox)


def _opens_a_window(button: QAbstractButton) -> bool:
    words = button.text().replace("&", "").casefold()
    return button.isVisible() and button.isEnabled() and (words.startswith("look at") or words == "backups")


@dataclass(frozen=True)
class Held:
    """What is held: memory [MiB], living objects by type, top-level widgets by type."""

    mib: float
    objects: Counter[str]
    widgets: Counter[str]

    @classmethod
    def now(cls) -> Held:
        """Look once all is freed that can be."""
        for _ in range(2):
            breathe(0.05)
            gc.collect()
        # What the C library keeps for later is no leak.
        ctypes.CDLL(None).malloc_trim(0)
        living = Counter(f"{type(each).__module__}.{type(each).__qualname__}" for each in gc.get_objects())
        return cls(resident_mib(), living, Counter(type(widget).__name__ for widget in QApplication.topLevelWidgets()))


def run(folder: Path, edits: int, windows: int) -> list[str]:
    """Live through the day, then open and close the window so many times; return what is wrong."""
    share = edits / EDITS
    rounds = max(round(ROUNDS * share), 20)
    repaints, openings = round(REPAINTS * share), max(round(OPENINGS * share), rounds)
    ear, began = Ear(), time.monotonic()
    ear.listen()
    day = Day(folder, 20261126)
    for _ in range(2):
        day.tour()
    held: list[Held] = []
    for number in range(1, rounds + 1):
        day.round(*(_part(whole, number, rounds) for whole in (edits, repaints, openings)))
        if number % max(rounds // 20, 1) == 0:
            held.append(Held.now())
            print(f"{held[-1].mib:7.1f} MiB, {day.done}, {time.monotonic() - began:.0f} s", flush=True)
    faults = _grown("one window all day", _middle(held[1:4]), _middle(held[-3:]))
    held = []
    for _ in range(windows):
        day.again()
        day.tour()
        held.append(Held.now())
        print(f"{held[-1].mib:7.1f} MiB with another window, {time.monotonic() - began:.0f} s", flush=True)
    # The first ones leave behind what is made once.
    faults += _grown(f"{windows - 3} windows opened and closed", held[2], held[-1]) if windows > 3 else []
    day.end()
    return faults + [f"{count} times {words}" for words, count in ear.heard.items()]


def _middle(looks: list[Held]) -> Held:
    """Return the look between the other two: one alone is some MiB off, by what a thread or a picture has just asked for."""
    return sorted(looks, key=_mib)[1]


def _mib(look: Held) -> float:
    return look.mib


def _grown(when: str, before: Held, after: Held) -> list[str]:
    """Say what has grown; return what has grown too much."""
    growth = after.mib / before.mib - 1
    print(f"{when}: {before.mib:.1f} MiB, then {after.mib:.1f} MiB: {100 * growth:+.1f} %")
    more = (after.objects - before.objects).most_common(12)
    print("more objects than before:", ", ".join(f"{name} {count:+}" for name, count in more))
    faults = [f"{when}: memory grew by {100 * growth:.1f} %"] if growth > MOST_GROWTH else []
    left = after.widgets - before.widgets
    return faults + ([f"{when}: top-level widgets left behind: {dict(left)}"] if left else [])


def _part(whole: int, number: int, rounds: int) -> int:
    """Return the share of one round in a whole."""
    return whole * number // rounds - whole * (number - 1) // rounds


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--edits", type=int, default=EDITS, help="the rest is scaled with them")
    parser.add_argument("--windows", type=int, default=20, help="opened and closed after that")
    chosen = parser.parse_args()
    app = QApplication([sys.argv[0]])
    QCoreApplication.setApplicationName("Evenwater")
    QCoreApplication.setOrganizationName("Evenwater")
    apply_ground(app, load_fonts(), base_points=BASE_POINTS)
    faults = run(Path.home(), chosen.edits, chosen.windows)
    print(*faults, sep="\n", end="\n" if faults else "")
    sys.exit(1 if faults else 0)


if __name__ == "__main__":
    main()
