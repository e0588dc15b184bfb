"""Goes from the first start to a first card as somebody does who has never seen the window, with real keys or a real mouse, and times it.

    xvfb-run -a -s "-screen 0 1366x768x24" .venv/bin/python packaging/first_card.py [--mouse] [--fast | --slow] [OUT_FOLDER]

Pace of a person, who knows the tank's figures and has never seen the sheet: 0.2 s for a key, 1.2 s to find and hit something with the
mouse, or to read what comes next before typing, 3 s to read the answer. With ``--slow`` everything takes two and a half times as long;
with ``--fast`` nobody waits: that is only to see that the way still leads there. With a folder a picture is kept of every step. Needs xdotool.
"""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

STARTED = time.monotonic()

from PySide6.QtCore import QCoreApplication, QPoint, Qt  # noqa: E402  (the clock runs from the start)
from PySide6.QtWidgets import QAbstractItemView, QApplication, QFileDialog, QPushButton, QWidget  # noqa: E402

from evenwater.card.fonts import REGULAR, load_fonts  # noqa: E402
from evenwater.ui.choice import Choice  # noqa: E402
from evenwater.ui.main_window import MainWindow  # noqa: E402
from evenwater.ui.theme import BASE_POINTS, apply_ground  # noqa: E402

KEY_S, HIT_S, READ_S, SLOW = 0.2, 1.2, 3.0, 2.5
LIMIT_S = 60.0
# What is typed, in the order of the sheet; the chemical is chosen from its list.
FIGURES = (
    ("change.measured", "6.8"), ("system.net_volume", "340"), ("change.target", "8.4"), ("additive.chemical", ""),
    ("additive.dissolved", "106"), ("additive.made_up_to", "1"), ("pump.flow", "24"),
)  # fmt: skip
CHEMICAL = "sodium CARBonate anhydrous"


@dataclass
class Person:
    """Somebody at the window: keys and clicks go to the X server, as from any keyboard and mouse."""

    app: QApplication
    slowness: float
    out: Path | None
    lines: list[str] = field(default_factory=list)
    keys: int = 0
    hits: int = 0

    def wait(self, seconds: float) -> None:
        """Let time pass as it does for a person."""
        until = time.monotonic() + self.slowness * seconds
        while True:
            self.app.processEvents()
            if time.monotonic() >= until:
                return
            time.sleep(0.005)

    def until(self, true: Callable[[], bool], what: str) -> None:
        """Wait for the window."""
        end = time.monotonic() + 20.0
        while not true():
            if time.monotonic() > end:
                raise SystemExit(f"not there after 20 s: {what}")
            self.app.processEvents()
            time.sleep(0.005)

    def press(self, *keys: str) -> None:
        """Press keys one after the other; each has come through before the next."""
        for key in keys:
            subprocess.run(["xdotool", "key", "--clearmodifiers", key], check=True)
            self.keys += 1
            self.wait(KEY_S)
            settle(self.app)

    def type(self, text: str) -> None:
        """Type a text."""
        self.press(*({".": "period"}.get(letter, letter) for letter in text))

    def hit(self, widget: QWidget, place: QPoint | None = None) -> None:
        """Find something with the eyes and click on it."""
        spot = widget.mapToGlobal(place or widget.rect().center())
        self.wait(HIT_S)
        subprocess.run(["xdotool", "mousemove", str(spot.x()), str(spot.y()), "click", "1"], check=True)
        self.hits += 1
        settle(self.app)

    def done(self, what: str, window: QWidget) -> None:
        """Note how far the person is."""
        at = time.monotonic() - STARTED
        self.lines.append(f"| {what} | {at:.1f} |")
        if self.out is not None:
            window.grab().save(str(self.out / f"{len(self.lines):02d}.png"))


def settle(app: QApplication, seconds: float = 0.06) -> None:
    """Let what was pressed arrive."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        app.processEvents()
        time.sleep(0.005)


def focused(person: Person, window: QWidget) -> None:
    """Give a window the keys; without a window manager nobody else does."""
    subprocess.run(["xdotool", "windowfocus", str(int(window.winId()))], check=True)
    person.until(window.isActiveWindow, "the keys go to the window")


def by_keyboard(person: Person, window: MainWindow) -> None:
    """Press nothing but keys."""
    person.wait(HIT_S)
    person.press("Return")
    person.done("own tank (Enter)", window)
    sheet = window.opening().room().sheet  # type: ignore[union-attr]
    for path, text in FIGURES:
        person.wait(HIT_S)
        here = sheet.form.fields[path]
        person.until(lambda here=here: here.isAncestorOf(QApplication.focusWidget()), f"the cursor in {path}")
        if text:
            person.type(text)
            person.press("Return")
        else:
            _choose(person, here)
        person.done(f"{here.label.text()}: {text or CHEMICAL}", window)
    person.wait(READ_S)
    person.press("alt+s")
    person.until(lambda: bool(_dialog()), "the dialog")
    dialog = _dialog()
    focused(person, dialog)  # type: ignore[arg-type]
    person.done("answer read, Save card (Alt and S)", window)
    person.wait(HIT_S)
    person.press("Return")


def _choose(person: Person, here: Choice) -> None:
    person.press("space")
    view = here.combo.view()
    person.until(view.isVisible, "the list")
    wanted = here.combo.findText(CHEMICAL)
    person.wait(HIT_S)
    while view.currentIndex().row() < wanted:
        person.press("Down")
    person.press("Return")


def by_mouse(person: Person, window: MainWindow) -> None:
    """Click on everything; only figures are typed."""
    person.hit(window.centralWidget().empty)  # type: ignore[attr-defined]
    person.done("own tank", window)
    sheet = window.opening().room().sheet  # type: ignore[union-attr]
    for path, text in FIGURES:
        here = sheet.form.fields[path]
        person.until(here.isVisible, path)
        sheet._scroll.ensureWidgetVisible(here)  # noqa: SLF001  (the wheel, which costs a person no more than the pace above)
        settle(person.app)
        if text:
            person.hit(here.line)
            person.type(text)
        else:
            person.hit(here.combo)
            view: QAbstractItemView = here.combo.view()
            person.until(view.isVisible, "the list")
            entry = view.visualRect(view.model().index(here.combo.findText(CHEMICAL), 0))
            person.hit(view.viewport(), entry.center())
        person.done(f"{here.label.text()}: {text or CHEMICAL}", window)
    person.wait(READ_S)
    person.hit(sheet.buttons.cards.save)
    person.until(lambda: bool(_dialog()), "the dialog")
    person.done("answer read, Save card", window)
    dialog = _dialog()
    assert dialog is not None
    save = next(button for button in dialog.findChildren(QPushButton) if "Save" in button.text().replace("&", ""))
    person.hit(save)


def _dialog() -> QFileDialog | None:
    found = [w for w in QApplication.topLevelWidgets() if isinstance(w, QFileDialog) and w.isVisible()]
    return found[0] if found else None


def main(arguments: list[str]) -> int:
    """Do it once and print the times as a table."""
    options = {word for word in arguments if word.startswith("--")}
    if options - {"--mouse", "--fast", "--slow"}:
        print(__doc__)
        return 2
    folders = [Path(word) for word in arguments if not word.startswith("--")]
    for folder in folders:
        folder.mkdir(parents=True, exist_ok=True)
    # A machine of its own: no settings, no log, an empty folder for documents.
    home = Path(tempfile.mkdtemp(prefix="first-card-"))
    documents = home / "Documents"
    documents.mkdir()
    os.environ["HOME"] = str(home)
    for name in [name for name in os.environ if name.startswith("XDG_")]:
        del os.environ[name]
    QCoreApplication.setApplicationName("Evenwater first card")
    app = QApplication([])
    apply_ground(app, load_fonts([REGULAR]), base_points=BASE_POINTS)
    window = MainWindow()
    window.setWindowState(Qt.WindowState.WindowNoState)
    window.resize(1366, 768)
    window.show()
    person = Person(
        app, 0.0 if "--fast" in options else SLOW if "--slow" in options else 1.0, folders[0] if folders else None
    )
    person.until(lambda: window.opening() is not None, "the welcome")
    focused(person, window)
    person.done("started", window)
    (by_mouse if "--mouse" in options else by_keyboard)(person, window)
    person.until(lambda: bool(list(documents.glob("dose card *.pdf"))), "the card")
    person.done("the card is there", window)
    seconds = time.monotonic() - STARTED
    window.close()
    shutil.rmtree(home)
    print("| step | s since the start |\n|---|---|")
    print("\n".join(person.lines))
    print(f"\n{seconds:.1f} s, {person.keys} keys, {person.hits} clicks")
    return 0 if person.slowness != 1.0 or seconds < LIMIT_S else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
