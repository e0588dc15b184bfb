"""A page to put fields on, and fields on it with the focus in them."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QVBoxLayout, QWidget

from evenwater.engine.reader import Field
from evenwater.ui.quantity_field import QuantityField
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
