"""Nothing moves by itself, so nothing has to be switched off when the system asks for less motion."""

from __future__ import annotations

import re

import pytest
from PySide6.QtWidgets import QComboBox, QLineEdit, QListView, QScrollBar, QStyle, QTableView, QWidget

from evenwater.ui.paper_style import PaperStyle
from evenwater.ui.theme import LIGHT, stylesheet
from tests.arch.tree import python_files

# What Qt moves with, in words of its own.
MOVES = re.compile(
    r"Q(Property|Variant|Pause|SequentialGroup|ParallelGroup|Abstract)Animation|QTimeLine|QScroller|QMovie|setAnimated\(True|"
    r"QGraphics(Opacity|Blur)Effect|animateClick|StandardKey\.Animate"
)
HINT = QStyle.StyleHint.SH_Widget_Animation_Duration


def test_no_window_asks_for_motion():
    sources = python_files("ui", "card")
    assert len(sources) > 100
    assert [file.name for file in sources if MOVES.search(file.read_text(encoding="utf-8"))] == []


@pytest.mark.parametrize("kind", [QLineEdit, QComboBox, QListView, QTableView, QScrollBar])
def test_what_qt_would_move_stands_still(qtbot, kind: type[QWidget]):
    """Text fields, lists, menus and scroll bars would fade and slide for a fifth of a second."""
    page = QWidget()
    qtbot.addWidget(page)
    style = PaperStyle()
    style.setParent(page)
    page.setStyle(style)
    assert style.styleHint(HINT) > 0, "the style below ours moves"
    page.setStyleSheet(stylesheet(LIGHT))
    widget = kind(page)
    widget.ensurePolished()
    assert widget.style().styleHint(HINT, None, widget) == 0
