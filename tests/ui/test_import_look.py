"""What the import of a spreadsheet looks like: nothing cut off in a narrow window or in large letters, the order of Tab."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QComboBox, QPushButton

from evenwater.ui.theme import apply_theme
from tests.ui.clipping import clipped
from tests.ui.import_making import CLEAR, UNCLEAR, Desk, desk
from tests.ui.window_making import focus_walk

SIZES = [(11.0, 1240, 720), (16.5, 1366, 768), (11.0, 1000, 620)]
FAULTY = (*CLEAR, "soon,8,x,,,", "2025-11-23 08:00,2.1,-5,,,")


@pytest.fixture(params=SIZES, ids=["usual", "large letters", "narrow"])
def at(request: pytest.FixtureRequest, qapp: QApplication, qtbot, tmp_path: Path) -> Iterator[Desk]:
    points, width, height = request.param
    font = qapp.font()
    font.setPointSizeF(points)
    qapp.setFont(font)
    for made in desk(qtbot, tmp_path):
        made.size = (width, height)
        yield made
    font.setPointSizeF(11.0)
    qapp.setFont(font)
    apply_theme(qapp, font.family(), base_points=11.0)


def test_nothing_is_cut_off(at: Desk, qtbot) -> None:
    for lines in (UNCLEAR, CLEAR, FAULTY, ("Date;KH (dKH)",)):
        page = at.opened(*lines)
        page.resize(*at.size)
        qtbot.waitUntil(lambda page=page: not clipped(page), timeout=3000)
        for kind in (QComboBox, QPushButton):
            small = [part for part in page.findChildren(kind) if part.isVisible() and part.height() < 32]
            assert not small, "what is pressed is 32 px high or more"
    assert not clipped(at.window)


def test_tab_goes_from_above_to_below_and_from_left_to_right(at: Desk) -> None:
    page = at.opened(*UNCLEAR)
    page.resize(*at.size)
    page.other.setFocus()
    walked = focus_walk(page)
    rows = [row.choice.combo for row in page.points.in_order()]
    assert walked == [page.other, *rows, page.table, page.leave]
    assert page.importing not in walked, "what cannot be pressed is passed over"
