"""The Rounds sheet of a room of 500 systems and of one of five: opened, opened again, and until all is known.

`python -m tests.bench.product_rounds FOLDER TIMES`
"""

from __future__ import annotations

import json
import random
import sys
import time
from datetime import UTC, datetime, timedelta
from pathlib import Path

from PySide6.QtCore import QEvent, QObject
from PySide6.QtWidgets import QApplication

from evenwater.assets import resources
from evenwater.card.fonts import load_fonts
from evenwater.engine.catalogue import load
from evenwater.engine.quantities import Typed
from evenwater.session import Document, Entry, NewRecord
from evenwater.store import Store
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.rounds_sheet import RoundsSheet
from evenwater.ui.theme import apply_theme

FEW, MANY = 5, 500
READINGS = 20
KEPT = {
    "alkalinity": (Typed("7.9", "dKH"), Typed("0.5", "dKH per day"), "sodium carbonate anhydrous"),
    "calcium": (Typed("410", "mg/L"), Typed("4", "mg/L per day"), "calcium chloride dihydrate"),
}
TESTED = {"magnesium": Typed("1300", "mg/L"), "nitrate": Typed("2", "mg/L as NO3"), "salinity": Typed("35", "ppt")}


def fill(file: Path, systems: int) -> Document:
    """Return a room in which two values are kept in each system, each jug shared by ten, and five are tested."""
    draw, now = random.Random(systems), datetime.now(UTC)
    pump = {"flow": Typed("24", "mL/min"), "smallest_dose": Typed("0.5", "mL"), "step": Typed("0.1", "mL")}
    records, entries = [NewRecord("pump", pump, "pump")], []
    for shelf in range(-(-systems // 10)):
        for name, (_, _, chemical) in KEPT.items():
            stock = f"{name}{shelf}"
            records.append(NewRecord("stock", {"name": Typed(stock)}, stock))
            batch = {"chemical": Typed(chemical), "dissolved": Typed("100", "g"), "made_up_to": Typed("5", "L")}
            batch["in_use_from"] = Typed((now - timedelta(days=4)).isoformat())
            records.append(NewRecord("batch", batch, f"{stock}:00000001"))
    for number in range(systems):
        system = f"{number:032x}"
        tank = {"name": Typed(f"Rack {number}"), "net_volume": Typed("340", "L")}
        records.append(NewRecord("system", tank, system))
        for name, (value, use, _) in KEPT.items():
            kept = {"parameter": Typed(name), "measured": value, "daily_use": use, "pump": Typed("pump")}
            kept["stock"] = Typed(f"{name}{number // 10}")
            records.append(NewRecord("correction", kept, f"{system}:{name}"))
        for name, typed in ({n: v for n, (v, _, _) in KEPT.items()} | TESTED).items():
            for line in range(READINGS):
                at = now - timedelta(days=line + draw.uniform(0, 6))
                key = f"{draw.getrandbits(128):032x}"
                entries.append(Entry(key, system, "reading", name, at, "", {"value": typed}, float(typed.text)))
    document = Document(Store.open(file))
    assert document.fill(records, entries=entries)
    return document


class Eye(QObject):
    """Notes when the list is painted."""

    def __init__(self) -> None:
        super().__init__()
        self.at = 0.0

    def eventFilter(self, _watched: QObject, event: QEvent) -> bool:
        """Note the first paint event."""
        if event.type() == QEvent.Type.Paint and not self.at:
            self.at = time.perf_counter()
        return False


def until_painted(sheet: RoundsSheet) -> float:
    """Show a sheet and return how long it took until its lines were being painted [ms]."""
    eye = Eye()
    sheet.list.viewport().installEventFilter(eye)
    began = time.perf_counter()
    sheet.show()
    while not eye.at:
        QApplication.processEvents()
    sheet.list.viewport().removeEventFilter(eye)
    return (eye.at - began) * 1000


def longest_hold(sheet: RoundsSheet) -> tuple[float, float]:
    """Wait until all of the room is known; return how long that took, and the longest the window was held [ms]."""
    began, held = time.perf_counter(), 0.0
    while sheet.waiting():
        before = time.perf_counter()
        QApplication.processEvents()
        held = max(held, time.perf_counter() - before)
    return (time.perf_counter() - began) * 1000, held * 1000


def main() -> None:
    folder, times = Path(sys.argv[1]), int(sys.argv[2])
    app = QApplication([])
    apply_theme(app, load_fonts())
    catalogue = load(resources())
    rooms = {"few": fill(folder / "few.sqlite", FEW), "many": fill(folder / "many.sqlite", MANY)}
    taken: dict[str, list[float]] = {}
    for round_ in range(times + 1):
        for size, document in rooms.items():
            plans = Plans(document, catalogue, document)
            learning = Learning(document, catalogue, plans, document)
            sheet = RoundsSheet(document, catalogue, learning, plans)
            sheet.resize(1366, 768)
            figures = {"open": until_painted(sheet)}
            figures["all"], figures["held"] = longest_hold(sheet)
            sheet.hide()
            figures["again"] = until_painted(sheet)
            sheet.hide()
            learning.close()
            sheet.deleteLater()
            QApplication.processEvents()
            for name, figure in figures.items():
                if round_:  # the first one loads what is loaded late
                    taken.setdefault(f"{size}_{name}", []).append(figure)
    print(json.dumps(taken))


if __name__ == "__main__":
    main()
