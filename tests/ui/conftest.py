"""A page to put fields on, and fields on it with the focus in them; a chart on a page of its own."""

from __future__ import annotations

from collections.abc import Iterator
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine.reader import Field
from evenwater.ui.chart import RampChart
from evenwater.ui.quantity_field import QuantityField
from evenwater.ui.theme import LIGHT, palette_for
from tests.ui.quantity_making import ALKALINITY, Make


@pytest.fixture
def page(qtbot) -> QWidget:
    window = QWidget()
    window.resize(640, 480)
    QVBoxLayout(window)
    qtbot.addWidget(window)
    return window


@pytest.fixture
def make(page: QWidget, qtbot) -> Make:
    def build(spec: Field = ALKALINITY, label: str = "Measured") -> QuantityField:
        field = QuantityField(label, spec, parent=page)
        page.layout().addWidget(field)
        page.show()
        page.activateWindow()
        field.line.setFocus()
        qtbot.waitUntil(field.line.hasFocus)
        return field

    return build


@pytest.fixture
def chart(qtbot) -> Iterator[RampChart]:
    page = QWidget()
    qtbot.addWidget(page)
    page.setPalette(palette_for(LIGHT))
    column = QVBoxLayout(page)
    column.setContentsMargins(0, 0, 0, 0)
    made = RampChart(zone=ZoneInfo("UTC"))
    column.addWidget(made)
    page.resize(1190, 300)
    page.show()
    page.activateWindow()
    made.setFocus()
    qtbot.waitUntil(made.hasFocus)
    yield made
    page.close()
