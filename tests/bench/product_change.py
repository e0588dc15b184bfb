"""A keystroke in the product: from the key in a field to the painted sheet (read, saved, solved, worded, drawn).

The key adds a digit to the figure that is typed most on the sheet, and takes it away again. What can be seen before and after it is
written to a file, for a bare window that does the same to the eye (``floor_change``).

    python -m tests.bench.product_change SHEET TIMES SEEN.json
"""

from __future__ import annotations

import itertools
import json
import sys
from pathlib import Path

from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractItemView, QApplication

from evenwater.ui.sheet_list import CORRECT
from tests.bench import inventory
from tests.bench.probe import SIZE, PaintWatch, hand_back, never, resident_mib, settle, time_keys, until_quiet
from tests.bench.product import Look, watch
from tests.bench.sheet_keys import bring_into_sight, open_sheet

# The longest that anything waits on purpose is a field, which says what is wrong with it so long after the last key [ms].
QUIET_MS = 1100
LATE = 4


def seen(look: Look) -> None:
    name, times, file = sys.argv[1], int(sys.argv[2]), Path(sys.argv[3])
    QApplication.setCursorFlashTime(0)  # a blinking cursor is work for ever
    look.window.showNormal()
    look.window.resize(*SIZE)  # a screen in memory is smaller
    settle(500)
    opening = look.window.opening()
    assert opening is not None
    room = opening.room()
    typed_in, keys = open_sheet(room, name)
    until_quiet(QUIET_MS)
    bring_into_sight(typed_in)
    until_quiet(QUIET_MS)
    sheet = room.by_name(name)
    painted_on = typed_in.viewport() if isinstance(typed_in, QAbstractItemView) else typed_in
    look.window.eye = paints = PaintWatch(painted_on)
    waiting = getattr(sheet, "waiting", never)

    turns = itertools.cycle(keys)

    def press(_number: int) -> None:
        QTest.keyClick(typed_in, next(turns))

    worked, held, states, late = [], [], [], set()
    for _ in range(LATE):
        before = inventory.take(look.window)
        states.append(before)
        time_keys(press, paints, 1, pause_ms=0, warm_up=0, waiting=waiting)
        soon = inventory.take(look.window)
        for kept, figure in zip((worked, held), until_quiet(QUIET_MS), strict=True):
            kept.append(figure)
        late |= inventory.differences(soon, inventory.take(look.window)).keys()
    changed = inventory.differences(states[0], states[1])
    back = inventory.differences(states[0], states[2])
    kept = {
        "size": [look.window.width(), look.window.height()],
        "field": inventory.key_of(typed_in),
        "keys": [int(key) for key in keys],
        "states": states[:2],
    }
    file.write_text(json.dumps(kept), encoding="utf-8")
    taken = time_keys(press, paints, 2 * -(-times // 2), pause_ms=80, warm_up=10, waiting=waiting)
    height = room.sheet.chart.picture.view.viewport().height() if name == CORRECT else 0
    hand_back(
        echo=taken.echo, echo_cpu=taken.echo_cpu, painted=taken.painted, answered=taken.answered, cpu=taken.cpu, worked=worked, held=held,
        shown=len(states[0]), changed=len(changed), late=len(late), back=len(back), memory=resident_mib(), chart_height=height,
        platform=QApplication.platformName(),
    )  # fmt: skip


if __name__ == "__main__":
    watch(seen)
