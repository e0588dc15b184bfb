"""The focus is seen: a line of 2 px at least that stands out 3 to 1, on every kind of thing that takes it, in every theme."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QStringListModel
from PySide6.QtWidgets import (
    QCheckBox,
    QGridLayout,
    QLabel,
    QLineEdit,
    QListView,
    QPushButton,
    QTableView,
    QToolButton,
    QWidget,
)

from evenwater.screens.jugs_sheet import JugRow
from evenwater.screens.rounds_room import Duty
from evenwater.ui.chart import RampChart
from evenwater.ui.choice import Combo
from evenwater.ui.duty_list import DutyList
from evenwater.ui.exchange_chart import ExchangeChart
from evenwater.ui.field_shell import FieldFrame
from evenwater.ui.form_column import Column
from evenwater.ui.jug_list import JugList
from evenwater.ui.line_entry import LineEntry
from evenwater.ui.log_chart import LogChart
from evenwater.ui.paper_style import PaperStyle
from evenwater.ui.theme import DARK, HIGH_CONTRAST, LIGHT, Tokens, palette_for, set_role, stylesheet
from evenwater.ui.timetable_strip import TimetableStrip
from evenwater.ui.together_chart import TogetherChart
from evenwater.ui.wear_chart import WearChart
from tests.access.rings import LEAST_PX, ring_width

_BUTTONS = ("", "main", "large", "quiet", "stop")
_CHARTS = (RampChart, ExchangeChart, WearChart, LogChart, TogetherChart, TimetableStrip)
_SIZE = 300, 120


def _takers(page: QWidget) -> Iterator[tuple[QWidget, QWidget]]:
    """Make one of each kind of thing that takes the focus, and yield it with what its ring is drawn on."""
    for role in _BUTTONS:
        button = QPushButton("Print card", page)
        set_role(button, role)
        yield button, button
    bare = QToolButton(page)
    set_role(bare, "bare")
    check = QCheckBox("The water is cloudy", page)
    framed, unit = Combo(page), Combo(page, framed=False)
    for each in (framed, unit):
        each.set_options((("a", "mg per L"), ("b", "dKH")))
        each.set_current("a")
    yield from ((each, each) for each in (bare, check, framed, unit, QLineEdit("free", page)))
    frame = FieldFrame(page)
    line = LineEntry(frame)
    frame.row.addWidget(line)
    # What the field does when the focus comes to it; a frame by itself does not hear of it.
    line.arrived.connect(lambda: _turn(frame, active=True))
    line.left.connect(lambda: _turn(frame, active=False))
    yield line, frame
    for role in ("nav", "rows", ""):
        names = QListView(page)
        set_role(names, role)
        names.setModel(QStringListModel(["North frag bay", "Anemone table"], names))
        yield names, names
    table = QTableView(page)
    set_role(table, "plain")
    yield table, table
    duties, jugs = DutyList(page), JugList(page)
    duties.show_duties(
        (Duty("due", datetime(2026, 11, 26, tzinfo=UTC), "Rack", "Calibrate it", "It is old.", "Pumps", "1"),)
    )
    jugs.show_rows((JugRow("1", "White jug", "soda ash", "1 L", "read", "14 days", "refill"),), "1")
    answer = Column(QLabel("4.7 mL per hour"), page)
    yield from ((each, each) for each in (duties, jugs, answer, *(chart(page) for chart in _CHARTS)))


def _turn(frame: FieldFrame, *, active: bool) -> None:
    frame.active = active
    frame.update()


@pytest.mark.parametrize("tokens", [LIGHT, DARK, HIGH_CONTRAST], ids=lambda tokens: tokens.name)
def test_everything_that_takes_the_focus_shows_it(qtbot, tokens: Tokens, monkeypatch: pytest.MonkeyPatch, qapp):
    page = QWidget()
    qtbot.addWidget(page)
    set_role(page, "page")
    style = PaperStyle()
    style.setParent(page)
    page.setStyle(style)
    before = qapp.palette()
    qapp.setPalette(palette_for(tokens))
    page.setStyleSheet(stylesheet(tokens) + f'QWidget[role="page"] {{ background: {tokens.paper}; }}')
    elsewhere = QLineEdit(page)
    grid = QGridLayout(page)
    grid.addWidget(elsewhere, 0, 0)
    takers = list(_takers(page))
    for number, (_, shown) in enumerate(takers, start=1):
        shown.setMaximumSize(*_SIZE)
        grid.addWidget(shown, number // 4, number % 4)
    page.show()
    page.activateWindow()
    try:
        widths = {
            f"{type(taker).__name__} {taker.property('role') or ''}": ring_width(page, taker, shown, elsewhere)
            for taker, shown in takers
        }
    finally:
        qapp.setPalette(before)
    assert {name: width for name, width in widths.items() if width < LEAST_PX} == {}
    assert len(widths) > 20
