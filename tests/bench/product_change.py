"""A keystroke in the product: from the key in the field to the painted sheet (read, saved, solved, worded, drawn).

The key adds a 5 to the measured value and takes it away again; both questions are answered.
"""

from __future__ import annotations

import sys

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from evenwater.screens.views import ChartView
from tests.bench.probe import hand_back, resident_mib, settle, time_changes
from tests.bench.product import Look, watch


def seen(look: Look) -> None:
    settle(500)
    opening = look.window.opening()
    sheet = opening.room().sheet
    field = sheet.form.fields["change.measured"]
    editor = field if isinstance(field, QLineEdit) else field.findChild(QLineEdit)
    editor.setFocus()
    editor.end(False)
    paints, render = look.chart_paints, sheet.chart.render
    drawn = None  # the chart's paint events until it was given its new curves; None before that

    def render_and_note(view: ChartView) -> None:
        nonlocal drawn
        render(view)
        drawn = paints.count

    sheet.chart.render = render_and_note

    def change(number: int) -> None:
        nonlocal drawn
        drawn = None
        QTest.keyClick(editor, Qt.Key.Key_5 if number % 2 == 0 else Qt.Key.Key_Backspace)

    def painted() -> bool:
        if drawn is None or paints.count == drawn:
            return False
        QApplication.processEvents()  # what the new sentences moved is laid out and painted as well
        return True

    taken = time_changes(change, painted, int(sys.argv[1]), warm_up=10)
    height = sheet.chart.picture.view.viewport().height()
    hand_back(changes=taken, memory=resident_mib(), chart_height=height, platform=QApplication.platformName())


if __name__ == "__main__":
    watch(seen)
