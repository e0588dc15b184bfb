"""The first question in an empty room, key by key: none is lost (H5), and Enter goes on to what is still missing."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from tests.ui.window_making import choose, left, opened, reckoned, sheet_of, type_into

FIRST = {
    "pump.flow": "24", "additive.dissolved": "106", "additive.made_up_to": "12", "change.measured": "6.8", "change.target": "8.4",
    "system.net_volume": "340",
}  # fmt: skip


def test_H5_every_first_key_in_an_empty_room_is_kept(tmp_path: Path, qtbot):
    window = opened(tmp_path / "evenwater.sqlite", qtbot)
    QTest.keyClick(window.centralWidget().empty, Qt.Key.Key_Return)
    sheet = sheet_of(window)
    for path, text in FIRST.items():
        type_into(sheet, path, text)
    reckoned(sheet, qtbot)
    kept = sheet.records.by_path()
    assert {path: kept[path].text for path in FIRST} == FIRST
    assert {path: sheet.form.fields[path].typed().text for path in FIRST} == FIRST
    assert {path: sheet.form.fields[path].line.text() for path in FIRST} == FIRST
    left(window)


def test_a_first_question_is_type_and_enter(tmp_path: Path, qtbot):
    window = opened(tmp_path / "evenwater.sqlite", qtbot)
    QTest.keyClick(window.centralWidget().empty, Qt.Key.Key_Return)
    sheet = sheet_of(window)
    visited = []
    for text in ("6.8", "340", "8.4", "", "106", "1", "24"):
        here = QApplication.focusWidget()
        visited.append(next(path for path, field in sheet.form.fields.items() if field.isAncestorOf(here)))
        if text:
            QTest.keyClicks(here, text)
            QTest.keyClick(here, Qt.Key.Key_Return)
        else:
            choose(sheet, "additive.chemical", "sodium CARBonate anhydrous")
            qtbot.waitUntil(sheet.form.fields["additive.dissolved"].line.hasFocus)
    assert visited == [
        "change.measured", "system.net_volume", "change.target", "additive.chemical", "additive.dissolved", "additive.made_up_to",
        "pump.flow",
    ]  # fmt: skip
    assert sheet.answer.view.state == "answered"
    assert sheet.form.fields["pump.flow"].line.hasFocus(), "with nothing missing Enter stays where it is"
    left(window)
