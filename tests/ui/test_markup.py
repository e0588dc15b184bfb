"""Whatever a keeper writes is shown as it stands, on every sheet: never taken for markup, a path, a pattern or a shortcut.

Common practice, no source: what somebody typed is data. It may have come out of a file from somewhere else.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import PurePath, PureWindowsPath

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import Qt as Gui
from PySide6.QtGui import QTextDocument
from PySide6.QtWidgets import QAbstractButton, QAbstractItemView, QApplication, QLabel, QTextEdit, QWidget

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.ui.correct_sheet import CorrectSheet
from evenwater.ui.field_shell import NoteLine
from evenwater.ui.room import Room
from evenwater.ui.sheet_list import SHEETS
from tests.ui.stocks_making import click
from tests.ui.test_backups_window import document_of
from tests.ui.window_making import opened, reckoned, room_of, type_into

pytestmark = pytest.mark.usefixtures("young_demo")

MARKUP = "<b>N</b>"
NAME = f"{MARKUP}&amp;<img src=x>%s%n{{0}}../../x\u202e"
# What is no number, date or choice: fields that take any words.
WORDS = ("name", "mixed_by", "who", "reason", "note")
KINDS = ("system", "stock", "pump", "batch", "calibration", "food", "correction", "level")


def _tips(widget: QWidget) -> Iterator[str]:
    yield widget.toolTip()
    if isinstance(widget, QAbstractItemView) and widget.model() is not None:
        model = widget.model()
        for row in range(min(model.rowCount(), 30)):
            index = model.index(row, 0)
            while index.isValid():
                yield str(model.data(index, Qt.ItemDataRole.ToolTipRole) or "")
                index = index.siblingAtColumn(index.column() + 1)


def interpreted(page: QWidget) -> list[str]:
    """Return what is shown in another way than it was written."""
    wrong = []
    for widget in (page, *page.findChildren(QWidget)):
        where = f"{type(widget.parent()).__name__}.{type(widget).__name__}"
        if isinstance(widget, QLabel) and MARKUP in widget.text() and widget.textFormat() != Qt.TextFormat.PlainText:
            wrong.append(f"{where}: {widget.text()[:80]}")
        if isinstance(widget, QTextEdit):
            wrong.append(f"{where} takes rich text")
        # One ampersand before a letter is a shortcut, and is not shown.
        if isinstance(widget, QAbstractButton) and MARKUP in widget.text() and "&&amp;" not in widget.text():
            wrong.append(f"{where}: {widget.text()[:80]}")
        for tip in _tips(widget):
            if "N</b>" in tip or "N&lt;/b" in tip:
                shown = QTextDocument()
                shown.setHtml(tip) if Gui.mightBeRichText(tip) else shown.setPlainText(tip)
                if MARKUP not in shown.toPlainText():
                    wrong.append(f"tip of {where}: {tip[:80]}")
    return wrong


FILE_NAMES = (NAME, "..", "/etc/passwd", "C:\\x", "a\0b", ".hidden", "x" * 400, "\u202egnp.exe", "a\nb", "")


def test_what_was_written_is_shown_as_it_stands_on_every_sheet(qtbot, monkeypatch: pytest.MonkeyPatch):
    window = opened(None, qtbot, demo=True)
    document, room = document_of(window), room_of(window)
    named = {
        record: {field: Typed(NAME) for field in WORDS if field == "name" or field in document.values(record)}
        for kind in KINDS
        for record in document.records(kind)
    }
    assert len(named) > 20
    document.edit_records({record: fields for record, fields in named.items() if fields})
    seen = set()
    for number, name in enumerate(SHEETS):
        room.sheets.choose(number)
        sheet = room.by_name(name)
        QApplication.processEvents()
        assert interpreted(sheet) == [], name
        if any(MARKUP in label.text() for label in sheet.findChildren(QLabel)):
            seen.add(name)
    assert seen >= {"Correct", "Upkeep", "Exchange", "Foods", "Timetable", "Pumps", "Jugs", "Stocks", "Log", "Recovery"}
    assert interpreted(window) == [], "the lists beside the sheets"
    _quoted_as_it_stands(room.sheet, room, qtbot)
    _proposed_within_the_folder(document, room, monkeypatch)


def _quoted_as_it_stands(sheet: CorrectSheet, room: Room, qtbot) -> None:
    """What is no number is quoted in the tip of the line below the field, where it does not fit."""
    room.sheets.choose(SHEETS.index("Correct"))
    typed = f"{MARKUP} &lt; {'8' * 30} and so on"
    type_into(sheet, "change.target", typed)
    reckoned(sheet, qtbot)
    assert sheet.form.fields["change.target"].typed().text == typed
    tips = [tip for line in sheet.findChildren(NoteLine) for tip in _tips(line) if "N" in tip]
    assert any("is not a number" in tip for tip in tips)
    assert interpreted(sheet) == []


def _proposed_within_the_folder(document: Document, room: Room, monkeypatch: pytest.MonkeyPatch) -> None:
    """No name of a system leads a file that is proposed out of its folder, or dresses it as another kind of file."""
    room.sheets.choose(SHEETS.index("Log"))
    asked: list[str] = []
    monkeypatch.setattr(room.log.transfer.dialogs, "save_csv", lambda name, _then: asked.append(name))
    for name in FILE_NAMES:
        document.edit(room.systems.current(), "name", Typed(name))
        click(room.log.transfer.saving)
        proposed = asked[-1]
        assert PurePath(proposed).name == PureWindowsPath(proposed).name == proposed, name
        assert proposed.endswith("readings.csv")
        assert not proposed.startswith((".", " "))
        assert len(proposed.encode()) <= 255, name
        assert not any(sign in proposed for sign in '\0\n\u202e<>:"|?*'), name
    assert len(asked) == len(FILE_NAMES)
