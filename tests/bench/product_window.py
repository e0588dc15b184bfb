"""The product's start: its first paint and its first chart, on the demonstration or on a log that is there already.

    python -m tests.bench.product_window (--demo | --log FILE) [SEEN]

With a third word what the chart shows, and what was loaded until it was painted, is written to a file, for a bare window that
draws the same (``floor_start``).
"""

from __future__ import annotations

import pickle
import sys
from pathlib import Path

from tests.bench.probe import hand_back, resident_mib, settle
from tests.bench.product import Look, watch

OURS = ("evenwater", "tests", "__main__", "__mp_main__")


def seen(look: Look) -> None:
    libraries = [name for name in sys.modules if name.split(".")[0] not in OURS]
    settle(300)
    memory = resident_mib()
    opening = look.window.opening()
    assert opening is not None
    room = opening.room()
    assert room is not None
    if file:
        from tests.bench import inventory  # which loads more than the product does

        kept = {
            "libraries": libraries,
            "size": (look.window.width(), look.window.height()),
            "scene": inventory.take(room.sheet.chart.picture.view),
        }
        Path(file[0]).write_bytes(pickle.dumps(kept))
    hand_back(first_paint=look.first_paint, first_chart=look.first_chart, memory=memory)


if __name__ == "__main__":
    start, file = (sys.argv[1:2], sys.argv[2:]) if sys.argv[1] == "--demo" else (sys.argv[1:3], sys.argv[3:])
    watch(seen, start)
