"""The chart's row of pH and aragonite: there when the additive takes part, named, read out, true to the engine."""

from __future__ import annotations

import re

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QMouseEvent
from PySide6.QtTest import QTest

from evenwater.engine.correction import Answer
from evenwater.engine.projection import project
from evenwater.screens.ramp import chart as chart_of
from evenwater.screens.views import WaterRow
from evenwater.ui.chart import RampChart
from tests.screens.asked import MORE, answer, shown_for
from tests.ui.chart_view import FASTEST_H, START, drag, handle, mouse, ramp, water
from tests.ui.window_making import choose, opened, reckoned, sheet_of

pytestmark = pytest.mark.usefixtures("young_demo")

NAMES = {"pH 8.2", "aragonite 3.7"}


def boxes(chart: RampChart) -> dict[str, QRectF]:
    return {label.text: label.box for label in chart.picture.labels.placed}


def is_there(chart: RampChart) -> bool:
    items = {item.isVisible() for item in (chart.picture.water, chart.picture.ph_axis, chart.picture.saturation_axis)}
    assert len(items) == 1, "lines and axes come and go together"
    there = items.pop()
    assert there == any(text.startswith("aragonite") for text in boxes(chart))
    return there


def test_the_row_goes_and_comes_back_with_its_room(chart: RampChart) -> None:
    chart.render(ramp())
    assert not is_there(chart)
    alone = chart.picture.scale.rect.height()
    items = len(chart.picture.view.scene().items())
    for _ in range(2):
        chart.render(ramp(water=water()))
        assert is_there(chart)
        assert chart.picture.scale.rect.height() < alone
        chart.render(ramp())
        assert not is_there(chart)
        assert chart.picture.scale.rect.height() == alone
    assert len(chart.picture.view.scene().items()) == items, "items are made once"


@pytest.mark.parametrize("width", [1190, 620])
@pytest.mark.parametrize(
    "changes",
    [
        {},
        {"ph_name": "pH 8.2, assumed"},
        {"ph": np.full(12, 8.1), "ph_after": np.full(12, 8.1), "saturation": np.full(12, 3.0)},
        {"ph": np.linspace(8.3, 7.9, 12), "saturation": np.linspace(5.0, 1.0, 12)},
        {"ph": np.linspace(7.9, 8.3, 12), "saturation": np.linspace(5.0, 1.0, 12)},
    ],
    ids=["plain", "assumed", "level", "falling", "apart"],
)
def test_names_stand_whole_beside_the_row_and_cover_nothing(
    chart: RampChart, changes: dict[str, object], width: int, qtbot
) -> None:
    chart.window().resize(width, 320)
    qtbot.waitUntil(lambda: chart.width() == width)
    for letters in (1.0, 1.5):
        font = chart.font()
        font.setPointSizeF(11.0 * letters)
        chart.setFont(font)
        row = water(**changes)
        chart.render(ramp(water=row))
        placed, view, plot = boxes(chart), chart.picture.view.rect(), chart.picture.scale.rect
        area = chart.picture.water._area
        for name in (row.ph_name, row.saturation_name):
            box = placed[name]
            assert box.left() > plot.right(), name
            assert box.left() + chart.picture._metrics.horizontalAdvance(name) <= view.width(), name
            assert area.top() - box.height() <= box.top() <= box.bottom() <= view.bottom(), name
        assert placed[row.ph_name].top() < placed[row.saturation_name].top()
        found = list(placed.items())
        covered = [(a, b) for n, (a, one) in enumerate(found) for b, other in found[:n] if one.intersects(other)]
        assert not covered


def test_the_row_stands_between_the_doses_and_the_time(chart: RampChart) -> None:
    chart.render(ramp(water=water()))
    picture = chart.picture
    area = picture.water._area
    assert area.top() >= max(bar.bottom() for bar in picture.bars._bars) - 0.5
    assert area.bottom() <= picture.time_axis._rect.top() + 1.5
    assert picture.water._ph.first().x() == pytest.approx(picture.scale.x(START))
    assert [line for _, line in picture.ph_axis._title] == ["pH"]
    assert [line for _, line in picture.saturation_axis._title] == ["aragonite"]
    for axis in (picture.ph_axis, picture.saturation_axis):
        assert axis._texts, "a line without a number says nothing"


@pytest.mark.parametrize(
    ("hours", "said"),
    [
        (0.0, "pH 8.10, after a dose 8.14    aragonite 2.9"),
        (FASTEST_H / 2.0, "pH 8.15, after a dose 8.19    aragonite 3.3"),
        (FASTEST_H, "pH 8.20, after a dose 8.24    aragonite 3.7"),
        (FASTEST_H + 5.0, "pH 8.20, after a dose 8.24    aragonite 3.7"),
    ],
)
def test_the_reading_under_the_cursor_gives_both(chart: RampChart, hours: float, said: str) -> None:
    chart.render(ramp(water=water()))
    mouse(chart, QMouseEvent.Type.MouseMove, QPointF(chart.picture.scale.x(START + hours * 3600.0), 100.0))
    assert said in chart.readout
    assert chart.accessibleDescription() == chart.readout


def test_the_cursor_reaches_through_the_row_and_keys_read_it_too(chart: RampChart) -> None:
    chart.render(ramp(water=water()))
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert re.search(r"pH 8\.1\d, after a dose 8\.1\d    aragonite 2\.\d", chart.readout)
    area = chart.picture.water._area
    assert chart.picture.cursor.boundingRect().bottom() >= area.bottom() - 1.0
    chart.render(ramp())
    assert "aragonite" not in chart.readout


def test_the_plan_in_words_names_both(chart: RampChart) -> None:
    chart.render(ramp(water=water()))
    spoken = chart.accessibleDescription()
    assert all(name in spoken for name in NAMES)
    chart.render(ramp())
    assert not any(name in chart.accessibleDescription() for name in NAMES)


def dark_columns(image: QImage, scale: float, left: float, right: float, height: float) -> float:
    """Return the share of columns with something dark at a height [px], in a picture without colours."""
    columns = range(round(left * scale), round(right * scale))
    heights = range(round((height - 2) * scale), round((height + 3) * scale))
    dark = [any(QColor(image.pixel(x, y)).value() < 110 for y in heights) for x in columns]
    return sum(dark) / len(dark)


def test_without_colours_one_line_is_solid_and_the_other_dashed(chart: RampChart) -> None:
    level = {"ph": np.full(12, 8.1), "ph_after": np.full(12, 8.12), "saturation": np.full(12, 3.0)}
    chart.render(ramp(water=water(**level)))
    picture = chart.picture
    grey = picture.view.grab().toImage().convertToFormat(QImage.Format.Format_Grayscale8)
    scale = grey.width() / picture.view.width()
    left, right = picture.scale.x(START) + 4, picture.scale.x(START + FASTEST_H * 3600.0) - 4
    solid = dark_columns(grey, scale, left, right, picture.water._ph.first().y())
    dashed = dark_columns(grey, scale, left, right, picture.water._saturation.first().y())
    assert solid > 0.97
    assert 0.3 < dashed < 0.75


# True to the engine


TAKING_PART = {
    "alkalinity": {"system.ph": "8.1"},
    "calcium": {
        "change.parameter": "calcium", "change.measured": "395 mg/L", "change.target": "425 mg/L",
        "change.daily_use": "6 mg/L per day", "additive.chemical": "calcium chloride dihydrate", "additive.dissolved": "147 g",
    },
    "limewater": MORE["evaporation sets"],
}  # fmt: skip
APART = {
    "nitrate": {
        "change.parameter": "nitrate", "change.measured": "1 mg/L as NO3", "change.target": "5 mg/L as NO3",
        "change.daily_use": None, "additive.chemical": "sodium nitrate", "additive.dissolved": "6.85 g",
    },
    "magnesium": {
        "change.parameter": "magnesium", "change.measured": "1210 mg/L", "change.target": "1300 mg/L",
        "change.daily_use": None, "additive.chemical": "magnesium chloride hexahydrate", "additive.dissolved": "300 g",
    },
}  # fmt: skip


def drawn(changes: dict[str, object]) -> tuple[Answer, WaterRow | None]:
    found = answer(changes)
    return found, chart_of(found, shown_for(changes)).water


@pytest.mark.parametrize("name", TAKING_PART)
def test_the_row_is_the_engines_projection(name: str) -> None:
    found, row = drawn(TAKING_PART[name])
    along = project(found).water
    assert row is not None
    assert along is not None
    for mine, engines in ((row.ph, along.ph), (row.ph_after, along.ph_after), (row.saturation, along.saturation)):
        assert np.array_equal(mine, engines)
    start = found.question.now.timestamp()
    assert row.times == pytest.approx(start + along.days * 86400.0)
    assert row.times[0] == start
    at_target = int(np.argmin(np.abs(row.times - found.ends_at.timestamp())))
    number = float(re.findall(r"[\d.]+", row.ph_name)[0])
    assert number == pytest.approx(row.ph[at_target], abs=0.0051)
    assert float(re.findall(r"[\d.]+", row.saturation_name)[0]) == pytest.approx(row.saturation[at_target], abs=0.051)
    measured = "system.ph" in TAKING_PART[name]
    assert row.ph_name.endswith("assumed") != measured


@pytest.mark.parametrize("name", APART)
def test_what_takes_no_part_has_no_row(name: str) -> None:
    found, row = drawn(APART[name])
    assert row is None
    assert project(found).water is None


# In the window


def test_the_row_follows_parameter_and_hand(qtbot) -> None:
    window = opened(None, qtbot, demo=True)
    sheet = sheet_of(window)
    reckoned(sheet, qtbot)
    for parameter, there in (("Nitrate", False), ("Calcium", True), ("Alkalinity", True)):
        choose(sheet, "change.parameter", parameter)
        reckoned(sheet, qtbot)
        assert is_there(sheet.chart) == there, parameter
    picture = sheet.chart.picture
    before = sheet.chart.view
    drag(sheet.chart, 60.0, release=False)
    reckoned(sheet, qtbot)
    during = sheet.chart.view
    assert during.ramp_end > before.ramp_end
    # The ground stands still, and the row bends under the hand as the ramp does.
    bend = during.water.times[-2]
    assert bend == pytest.approx(during.ramp_end, abs=1.0)
    assert picture.water._ph[picture.water._ph.count() - 2].x() == pytest.approx(picture.scale.x(bend), abs=0.01)
    assert handle(sheet.chart).x() == pytest.approx(picture.scale.x(sheet.chart.ramp_end), abs=0.01)
    mouse(sheet.chart, QMouseEvent.Type.MouseButtonRelease, handle(sheet.chart))
    reckoned(sheet, qtbot)
    after = sheet.chart.view
    plan = sheet.buttons.cards.plan
    along = project(plan.answer).water
    assert np.array_equal(after.water.ph_after, along.ph_after)
    assert np.array_equal(after.water.saturation, along.saturation)
    assert after.water.ph_after[0] < before.water.ph_after[0], "a slower pace has smaller doses"
