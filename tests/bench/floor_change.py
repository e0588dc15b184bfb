"""The floor of a change: a bare window that shows the same as a sheet of the product, and changes the same at a key.

Its labels, fields, buttons and cells are plain ones of Qt in the usual style, of the same size in the same places with the same words in the
same font; a pyqtgraph view holds the same curves between axes of the library itself; what the product paints by hand is played back from a
recording. No layout moves anything, nothing is read, solved, saved or worded: at the key, what differs is set.

    python -m tests.bench.floor_change SEEN.json TIMES
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import Any

from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFont, QPainter, QPaintEvent, QPicture
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QLabel,
    QLineEdit,
    QMainWindow,
    QPushButton,
    QScrollBar,
    QTableWidget,
    QTableWidgetItem,
    QWidget,
)

from evenwater.card.fonts import load_fonts
from tests.bench.probe import Flushing, PaintWatch, hand_back, resident_mib, settle, time_keys

State = dict[str, dict[str, Any]]


class Recorded(QWidget):
    """Plays recorded strokes back."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._picture = QPicture()

    def set_picture(self, picture: QPicture) -> None:
        """Play these strokes."""
        self._picture = picture
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Play the strokes."""
        with QPainter(self) as painter:
            self._picture.play(painter)


class FloorWindow(Flushing, QMainWindow):
    """Everything in one plain widget; ``show_state`` sets what differs."""

    def __init__(self, states: list[State], size: tuple[int, int]) -> None:
        super().__init__()
        self._page = QWidget(self)
        self.setCentralWidget(self._page)
        self.resize(*size)
        self._states, self._at = states, -1
        self._parts: dict[str, QWidget] = {}
        self._pictures: dict[str, QPicture] = {}
        for state in states:
            for key, each in state.items():
                if key not in self._parts:
                    self._parts[key] = self._make(each)
                if each["kind"] == "strokes":
                    from tests.bench.bare_scene import picture_of

                    self._pictures[each["strokes"]] = picture_of(each["strokes"])
        for key, part in self._parts.items():
            scenes = [state[key]["items"] for state in states if key in state and state[key]["kind"] == "scene"]
            if scenes:
                part.prepare(scenes)  # type: ignore[attr-defined]
        self.show_state(0)

    def part(self, key: str) -> QWidget:
        """Return what stands for a widget of the product."""
        return self._parts[key]

    def _make(self, state: dict[str, Any]) -> QWidget:
        part: QWidget
        kind = state["kind"]
        if kind == "scene":
            # Imported where there is one: a sheet without pyqtgraph is held against a window without it.
            from tests.bench.bare_scene import BareScene

            return BareScene(self._page)
        if kind == "cells":
            part = QTableWidget(self._page)
            part.horizontalHeader().hide()
            part.verticalHeader().hide()
            part.setShowGrid(False)
            part.setEditTriggers(QTableWidget.EditTrigger.NoEditTriggers)
        elif kind == "label":
            part = QLabel(self._page)
            part.setTextFormat(Qt.TextFormat.PlainText)
            part.setWordWrap(state["wraps"])
            part.setAlignment(Qt.AlignmentFlag(state["align"]))
            palette = part.palette()
            palette.setColor(part.foregroundRole(), state["colour"])
            part.setPalette(palette)
        else:
            makers = {"line": QLineEdit, "button": QPushButton, "check": QCheckBox, "choice": QComboBox}
            part = makers.get(kind, QScrollBar if kind == "bar" else Recorded)(self._page)
        if "font" in state:
            font = QFont()
            font.fromString(state["font"])
            part.setFont(font)
        part.hide()
        return part

    def turn(self) -> None:
        """Show the other state."""
        self.show_state(1 - self._at)

    def show_state(self, number: int) -> None:
        """Set whatever differs from what is shown."""
        then = self._states[self._at] if self._at >= 0 else {}
        now = self._states[number]
        for key, each in now.items():
            before = then.get(key, {})
            if before is not each and before != each:
                self._set(self._parts[key], before, each)
        for key in then.keys() - now.keys():
            self._parts[key].hide()
        self._at = number

    def _set(self, part: QWidget, before: dict[str, Any], now: dict[str, Any]) -> None:
        if before.get("rect") != now["rect"]:
            part.setGeometry(QRect(*now["rect"]))
        kind = now["kind"]
        if kind == "scene":
            part.show_state(now["items"])  # type: ignore[attr-defined]
        elif isinstance(part, QTableWidget):
            _set_cells(part, before.get("cells", []), now["cells"])
        elif isinstance(part, QLineEdit):
            # The field that is typed in says already what it is to say.
            if part.text() != now["text"]:
                part.setText(now["text"])
            part.setPlaceholderText(now["hint"])
        elif isinstance(part, QComboBox):
            part.clear()
            part.addItem(now["text"])
        elif isinstance(part, QScrollBar):
            most, page, value = now["range"]
            part.setRange(0, most)
            part.setPageStep(page)
            part.setValue(value)
        elif isinstance(part, Recorded):
            part.set_picture(self._pictures[now["strokes"]])
        elif isinstance(part, QLabel | QPushButton | QCheckBox):
            part.setText(now["text"])
            if isinstance(part, QPushButton):
                part.setEnabled(now["on"])
            elif isinstance(part, QCheckBox):
                part.setChecked(now["on"])
        part.show()


def _set_cells(table: QTableWidget, before: list[list[Any]], now: list[list[Any]]) -> None:
    """Lay cells in rows and columns of the same size, and set the words that differ."""
    rows, columns = sorted({cell[1] for cell in now}), sorted({cell[0] for cell in now})
    if [cell[:4] for cell in before] != [cell[:4] for cell in now]:
        table.setRowCount(len(rows))
        table.setColumnCount(len(columns))
        for left, top, width, height, *_ in now:
            table.setRowHeight(rows.index(top), height)
            table.setColumnWidth(columns.index(left), width)
        before = []
    for number, (left, top, _width, _height, words, chosen) in enumerate(now):
        if number < len(before) and before[number] == now[number]:
            continue
        row, column = rows.index(top), columns.index(left)
        if table.item(row, column) is None:
            table.setItem(row, column, QTableWidgetItem())
        table.item(row, column).setText(words)
        if chosen:
            table.setCurrentCell(row, column)


def main() -> None:
    kept = json.loads(Path(sys.argv[1]).read_text(encoding="utf-8"))
    app = QApplication([])
    app.setCursorFlashTime(0)
    app.setFont(QFont(load_fonts(), 11))
    window = FloorWindow(kept["states"], tuple(kept["size"]))
    window.show()
    settle(300)
    typed_in = window.part(kept["field"])
    typed_in.setFocus()
    watch = window.eye = PaintWatch(typed_in.viewport() if isinstance(typed_in, QTableWidget) else typed_in)
    keys = [Qt.Key(key) for key in kept["keys"]]
    if isinstance(typed_in, QLineEdit):
        typed_in.end(False)
        typed_in.textEdited.connect(window.turn)

    def press(number: int) -> None:
        if isinstance(typed_in, QLineEdit):
            QTest.keyClick(typed_in, keys[number % 2])
        else:
            window.turn()

    taken = time_keys(press, watch, int(sys.argv[2]), pause_ms=20, warm_up=10)
    hand_back(painted=taken.painted, cpu=taken.cpu, memory=resident_mib(), platform=app.platformName())


if __name__ == "__main__":
    main()
