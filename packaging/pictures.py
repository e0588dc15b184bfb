"""Takes pictures of the real window in its states, of the card and the jug label on every paper, to be looked at.

    xvfb-run -a -s "-screen 0 1920x1080x24" .venv/bin/python packaging/pictures.py OUT_FOLDER
    xvfb-run -a -s "-screen 0 1920x1080x24" .venv/bin/python packaging/pictures.py --readme

The second form renews the pictures of the README.
"""

from __future__ import annotations

import sys
import tempfile
import time
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt
from PySide6.QtWidgets import QApplication

from evenwater.card.fonts import load_fonts
from evenwater.card.label_paper import LABEL_PAPERS, LabelPaper
from evenwater.card.output import lay_out, to_image
from evenwater.card.paper import PAPERS, Paper
from evenwater.engine.quantities import Typed
from evenwater.screens.jug_label import JugLabel
from evenwater.screens.views import CardView
from evenwater.ui.main_window import MainWindow
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from evenwater.ui.theme import BASE_POINTS, apply_theme

SIZES = {"1366x768": (1366, 768, 100), "1920x1080": (1920, 1080, 100), "1366x768 at 150": (1366, 768, 150)}
HERE = Path(__file__).resolve().parent / "pictures"
State = Callable[[MainWindow], None]


def settle(app: QApplication, seconds: float = 0.4) -> None:
    """Let timers run and everything be painted."""
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        app.processEvents()
        time.sleep(0.01)


def full(_window: MainWindow) -> None:
    """Leave the demo's first correction as it is."""


def room_of(window: MainWindow) -> Room:
    """Return the open room."""
    opening = window.opening()
    assert opening is not None
    room = opening.room()
    assert room is not None
    return room


def edit(window: MainWindow, path: str, typed: Typed) -> None:
    """Enter something as the form does."""
    room_of(window).sheet.records.edit(path, typed, None)


def refused(window: MainWindow) -> None:
    """Type a reading in the wrong unit."""
    edit(window, "change.measured", Typed("140", "dKH"))


def stale(window: MainWindow) -> None:
    """Leave a number half typed."""
    edit(window, "change.target", Typed("8.", "dKH"))


def old(window: MainWindow) -> None:
    """Say that the reading is a week old."""
    edit(window, "change.measured_at", Typed("2026-01-05T08:00:00+00:00"))


def worked_out(window: MainWindow) -> None:
    """Open the arithmetic."""
    room_of(window).sheet.answer.how.click()


def unfilled(window: MainWindow) -> None:
    """Add a system with nothing in it."""
    room_of(window).systems.add.click()


def besides(window: MainWindow) -> None:
    """Open what else the correction does."""
    room_of(window).sheet.answer.besides.click()


def to_sheet(window: MainWindow, name: str) -> None:
    """Show a sheet."""
    room_of(window).sheets.choose(SHEETS.index(name))


def stocks(window: MainWindow) -> None:
    """Show the shelf."""
    to_sheet(window, "Stocks")


def jug(window: MainWindow, name: str) -> None:
    """Show a jug of the shelf."""
    stocks(window)
    room_of(window).jugs.choose(_jug_named(window, name))


def _jug_named(window: MainWindow, name: str) -> str:
    document = window.opening().document()  # type: ignore[union-attr]
    assert document is not None
    return next(stock for stock in document.records("stock") if document.value(stock, "name").text == name)


def rounds(window: MainWindow) -> None:
    """Show what is due."""
    to_sheet(window, "Rounds")


def upkeep(window: MainWindow) -> None:
    """Show what keeps the values."""
    to_sheet(window, "Upkeep")


def together(window: MainWindow) -> None:
    """Unfold what all plans do together."""
    upkeep(window)
    settle(QApplication.instance(), 1.5)  # type: ignore[arg-type]
    room_of(window).upkeep.plans_together.turn.click()


def exchange(window: MainWindow) -> None:
    """Show the pair of pumps."""
    to_sheet(window, "Exchange")


def foods(window: MainWindow) -> None:
    """Show what is fed."""
    to_sheet(window, "Foods")


def timetable(window: MainWindow) -> None:
    """Show when every pump doses."""
    to_sheet(window, "Timetable")


def pumps(window: MainWindow) -> None:
    """Show a pump with its calibrations."""
    to_sheet(window, "Pumps")


def levels(window: MainWindow) -> None:
    """Show what is left in the jugs."""
    to_sheet(window, "Jugs")


def log(window: MainWindow) -> None:
    """Show the log."""
    to_sheet(window, "Log")


def recovery(window: MainWindow) -> None:
    """Let a whole jug of soda ash run in."""
    to_sheet(window, "Recovery")
    room = room_of(window)
    fields = {"stock": Typed(_jug_named(window, "Soda ash, white jug")), "ran_in": Typed("1", "L")}
    window.opening().document().edit_fields(f"{room.systems.current()}:recovery", fields)  # type: ignore[union-attr]
    settle(QApplication.instance(), 2.0)  # type: ignore[arg-type]


def new_batch(window: MainWindow) -> None:
    """Save a card, then weigh a stronger batch for its jug."""
    room = room_of(window)
    with tempfile.TemporaryDirectory() as folder:
        room.sheet.buttons.cards.write(Path(folder) / "card.pdf")
    stocks(window)
    room.stocks.form.again.click()
    room.stocks.records.edit("batch.dissolved", Typed("150", "g"), None)


def swapped(window: MainWindow) -> None:
    """Put the stronger batch in the jug and go back to the correction."""
    new_batch(window)
    settle(QApplication.instance())  # type: ignore[arg-type]
    room_of(window).stocks.put.click()
    room_of(window).sheets.choose(SHEETS.index("Correct"))


def mixed(window: MainWindow) -> None:
    """Show the two magnesium salts in one jug."""
    jug(window, "Magnesium, tall jug")


def limewater(window: MainWindow) -> None:
    """Show the limewater."""
    jug(window, "Limewater, grey barrel")


STATES: dict[str, State] = {
    "full": full, "refused": refused, "stale": stale, "old reading": old, "worked out": worked_out, "unfilled": unfilled,
    "what else it does": besides, "stocks": stocks, "new batch": new_batch, "batch swapped": swapped, "mix": mixed,
    "limewater": limewater, "rounds": rounds, "upkeep": upkeep, "all plans together": together, "exchange": exchange, "foods": foods,
    "timetable": timetable, "pumps": pumps, "jugs": levels, "log": log, "recovery": recovery,
}  # fmt: skip


def window_picture(app: QApplication, state: State, size: tuple[int, int, int], demo: bool = True) -> MainWindow:
    """Open a window in a state; the caller grabs and closes it."""
    width, height, percent = size
    apply_theme(app, load_fonts(), base_points=BASE_POINTS * percent / 100.0)
    log = None if demo else Path(tempfile.mkdtemp()) / "log.sqlite"
    window = MainWindow(demo=demo, log=log)
    window.setWindowState(Qt.WindowState.WindowNoState)
    window.resize(width, height)
    window.show()
    while window.opening() is None:
        settle(app, 0.1)
    settle(app, 0.5)
    state(window)
    settle(app)
    return window


def pages(out: Path, name: str, sheet: CardView | JugLabel, paper: Paper | LabelPaper) -> None:
    """Write every page of a card or a label, in grey and in one bit."""
    for page in range(len(lay_out(sheet, paper))):
        for mono in (False, True):
            kind = "one bit" if mono else "grey"
            file = out / f"{name} {paper.name} page {page + 1} {kind}.png"
            to_image(sheet, paper, page, 110.0, mono).save(str(file))


def main(arguments: list[str]) -> int:
    """Take the pictures."""
    if len(arguments) != 1:
        print(__doc__)
        return 2
    QCoreApplication.setApplicationName("Evenwater pictures")
    app = QApplication([])
    if arguments[0] == "--readme":
        HERE.mkdir(exist_ok=True)
        window = window_picture(app, full, SIZES["1366x768"])
        window.grab().save(str(HERE / "window.png"))
        card = room_of(window).sheet.buttons.cards.card()
        assert card is not None
        to_image(card, PAPERS["A5"], 0, 110.0).save(str(HERE / "card.png"))
        stocks(window)
        settle(app)
        window.grab().save(str(HERE / "stocks.png"))
        recovery(window)
        window.grab().save(str(HERE / "recovery.png"))
        window.close()
        return 0
    out = Path(arguments[0])
    out.mkdir(parents=True, exist_ok=True)
    for name, state in STATES.items():
        for size_name, size in SIZES.items():
            window = window_picture(app, state, size)
            window.grab().save(str(out / f"{name}, {size_name}.png"))
            window.close()
    window = window_picture(app, full, SIZES["1366x768"], demo=False)
    window.grab().save(str(out / "first start.png"))
    window.close()
    window = window_picture(app, full, SIZES["1366x768"])
    card = room_of(window).sheet.buttons.cards.card()
    stocks(window)
    settle(app)
    label = room_of(window).stocks.label_actions.label
    assert card is not None
    assert label is not None
    for paper in PAPERS.values():
        pages(out, "card", card, paper)
    for small in LABEL_PAPERS.values():
        pages(out, "label", label, small)
    window.close()
    print(f"{len(list(out.glob('*.png')))} pictures in {out} at {datetime.now(UTC):%H:%M} UTC")
    return 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
