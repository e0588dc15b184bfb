"""The floor of a first chart: a bare window that imports the libraries the product has loaded by then and draws the same chart.

    python -m tests.bench.floor_start SEEN

Libraries are everything that is not Evenwater's own: PySide6, pyqtgraph, numpy, the database, whatever of the standard library they and
Evenwater use. The chart is the one that stands on the Correct sheet: ramp, band, doses, pH and saturation, every axis and name, of the
same size; axes are the library's own, what Evenwater paints by hand is played back. The window has nothing else in it.
"""

from __future__ import annotations

import pickle
import sys
from contextlib import suppress
from importlib import import_module
from pathlib import Path

from PySide6.QtWidgets import QApplication, QMainWindow

from evenwater.card.fonts import load_fonts
from tests.bench.probe import FirstPaint, hand_back, resident_mib, settle


def main() -> None:
    kept = pickle.loads(Path(sys.argv[1]).read_bytes())  # noqa: S301  (written by the product a moment ago)
    app = QApplication([])
    load_fonts()
    for name in kept["libraries"]:
        if name not in sys.modules:
            # Some are made while another is loaded, and cannot be asked for by their names.
            with suppress(ImportError):
                import_module(name)
    from tests.bench.bare_scene import BareScene

    (state,) = (each["items"] for each in kept["scene"].values() if each["kind"] == "scene")
    window = QMainWindow()
    scene = BareScene(window)
    window.setCentralWidget(scene)
    window.resize(*kept["size"])
    scene.prepare([state])
    scene.show_state(state)
    first: list[float] = []
    first_paint = FirstPaint(first.append, app)
    window.show()
    settle(300)
    del first_paint
    missing = [name for name in kept["libraries"] if name not in sys.modules]
    hand_back(first_chart=first[0], memory=resident_mib(), missing=missing)


if __name__ == "__main__":
    main()
