"""Any chart is saved as a drawing, a picture or its figures: on white, in letters that read elsewhere, whole or not at all."""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree as ET

import numpy as np
import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMenu, QWidget

from evenwater.screens.foods_chart import Panel
from evenwater.screens.together_views import Course
from evenwater.ui.chart import RampChart
from evenwater.ui.chart_export import CSV, PNG, SVG
from evenwater.ui.foods_chart import FoodsChart
from evenwater.ui.theme import DARK, LIGHT, palette_for
from evenwater.ui.together_chart import TogetherChart
from tests.ui.chart_view import START, ramp, water

SPACE = "{http://www.w3.org/2000/svg}"


def share(image: QImage, colour: str) -> float:
    """Return the share of pixels [1] that have a colour, looking at every third of every third line."""
    wanted = QColor(colour).rgb()
    places = [(x, y) for x in range(0, image.width(), 3) for y in range(0, image.height(), 3)]
    return sum(image.pixel(x, y) == wanted for x, y in places) / len(places)


@pytest.fixture
def shown(chart: RampChart) -> RampChart:
    chart.window().setPalette(palette_for(DARK))
    chart.render(ramp(water=water()))
    return chart


def test_a_drawing_has_no_letters_that_could_be_missing_elsewhere(shown: RampChart, tmp_path: Path) -> None:
    assert shown.saving.save(tmp_path / "ramp.svg", SVG)
    root = ET.fromstring((tmp_path / "ramp.svg").read_bytes())  # noqa: S314  (our own)
    kinds = {element.tag.removeprefix(SPACE) for element in root.iter()}
    assert "text" not in kinds
    assert "image" not in kinds, "lines stay lines, however large it is printed"
    assert root.find(f"{SPACE}title").text == "Alkalinity"
    assert "Alkalinity from 6.8 to 8.4 dKH" in root.find(f"{SPACE}desc").text
    said = {element.get("aria-label") for element in root.iter(f"{SPACE}path")}
    assert {"plan", "target 8.4", "if uptake stops now", "if nothing is dosed"} <= said
    assert [f.name for f in tmp_path.iterdir()] == ["ramp.svg"], "nothing is left of the writing"


def test_a_picture_is_on_white_and_sharp_whatever_the_window_wears(shown: RampChart, tmp_path: Path) -> None:
    assert shown.saving.save(tmp_path / "ramp.png", PNG)
    image = QImage(str(tmp_path / "ramp.png"))
    assert image.size() == QSize(2400, 1280)
    assert round(image.dotsPerMeterX() * 0.0254) == 192
    assert share(image, LIGHT.leaf) > 0.6
    assert share(image, DARK.leaf) == share(image, DARK.paper) == 0.0
    assert share(image, LIGHT.blue) > 0.0003


def test_the_figures_are_those_of_the_lines(shown: RampChart, tmp_path: Path) -> None:
    assert shown.saving.save(tmp_path / "ramp.csv", CSV)
    lines = (tmp_path / "ramp.csv").read_text(encoding="utf-8-sig").splitlines()
    assert lines[0].startswith('Date and time,plan (dKH),"plan, low end (dKH)"')
    assert any(",6.8," in line for line in lines[1:3])


def test_what_cannot_be_written_leaves_nothing(shown: RampChart, tmp_path: Path) -> None:
    for kind in (SVG, PNG, CSV):
        assert not shown.saving.save(tmp_path / "no such folder" / f"ramp.{kind}", kind)
    assert list(tmp_path.iterdir()) == []


def test_nothing_is_offered_while_nothing_is_shown(chart: RampChart, tmp_path: Path) -> None:
    assert not chart.saving.button.isVisible()
    assert not chart.saving.save(tmp_path / "ramp.csv", CSV)
    chart.render(ramp())
    assert chart.saving.button.isVisible()
    assert chart.rect().contains(chart.saving.button.geometry())


def test_keys_and_the_button_open_the_same_choice(chart: RampChart) -> None:
    chart.render(ramp())
    assert chart.saving.button.accessibleName()
    QTest.keyClick(chart, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier)
    (menu,) = chart.findChildren(QMenu)
    assert menu.isVisible()
    menu.close()
    QTest.mouseClick(chart.saving.button, Qt.MouseButton.LeftButton)
    assert menu.isVisible()
    menu.close()


def test_other_charts_are_saved_by_the_same_means(qtbot, tmp_path: Path) -> None:
    series = np.linspace(6.8, 8.4, 40)
    together = TogetherChart()
    together.render(
        Course(
            "Alkalinity",
            "dKH",
            START + 3600.0 * np.arange(40.0),
            series,
            series - 0.1,
            series + 0.1,
            series,
            (7.0, 11.0),
            True,
            2,
            "Said.",
        )
    )
    foods = FoodsChart()
    foods.set_panels((Panel("Nitrate, mg per L", (0.0, 56.0), (1.0, 8.0), (1.0, 0.2), 15.0, "Said."),))
    for number, chart in enumerate((together, foods)):
        qtbot.addWidget(chart)
        for kind in (SVG, PNG, CSV):
            file = tmp_path / f"{number}.{kind}"
            assert chart.saving.save(file, kind)
            assert file.stat().st_size > 50


def test_without_colours_the_lines_of_a_ramp_are_still_told_apart(shown: RampChart) -> None:
    pens = {name: curve.opts["pen"] for name, curve in shown.picture.curves.items()}
    looks = {name: (pen.widthF(), tuple(pen.dashPattern())) for name, pen in pens.items()}
    assert len(set(looks.values())) == len(looks), "width or dashes differ"
    named = {label.text for label in shown.picture.labels.placed}
    assert {"plan", "if uptake stops now", "if nothing is dosed"} <= named, "and each has its name at its end"
    grey = {name: QColor(getattr(LIGHT, name)).lightness() for name in ("leaf", "wash", "rule", "blue")}
    assert grey["leaf"] > grey["wash"] > grey["rule"] > grey["blue"], "band, bars and plan are steps of grey"


def test_a_twin_is_not_left_behind(shown: RampChart, tmp_path: Path, qtbot) -> None:
    before = len(shown.window().findChildren(QWidget))
    shown.saving.save(tmp_path / "ramp.svg", SVG)
    assert len(shown.window().findChildren(QWidget)) == before
