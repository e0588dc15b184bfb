"""The chart of a correction: one time axis, names at the ends of lines, an end that can be led by hand and by keys."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QContextMenuEvent, QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from evenwater.ui.chart import RampChart
from evenwater.ui.theme import LIGHT
from tests.ui.chart_view import FASTEST_H, START, drag, handle, mouse, ramp

FASTEST_END = START + FASTEST_H * 3600.0


class Heard:
    def __init__(self, chart: RampChart) -> None:
        self.dragged: list[float] = []
        self.committed: list[float] = []
        self.cancelled = 0
        chart.paceDragged.connect(self._drag)
        chart.paceCommitted.connect(self._commit)
        chart.paceCancelled.connect(self._cancel)

    def _drag(self, end: float) -> None:
        self.dragged.append(end)

    def _commit(self, end: float) -> None:
        self.committed.append(end)

    def _cancel(self) -> None:
        self.cancelled += 1


def test_the_module_of_the_chart_loads_without_pyqtgraph() -> None:
    code = "import sys, evenwater.ui.chart; sys.exit('pyqtgraph' in sys.modules)"
    assert subprocess.run([sys.executable, "-c", code], check=False).returncode == 0


def test_an_empty_chart_is_a_calm_sentence(chart: RampChart) -> None:
    chart.clear_view("Fill in the water and the change.")
    assert chart._empty.isVisible()
    assert chart.picture is None, "no picture is built for nothing"
    chart.render(ramp())
    assert not chart._empty.isVisible()
    chart.clear_view("Nothing to show.")
    assert not chart.picture.view.isVisible()
    assert chart.accessibleDescription() == "Nothing to show."


def test_every_line_has_its_name_and_no_name_is_clipped_or_covered(chart: RampChart) -> None:
    for hours, size in ((38.4, (1190, 300)), (60.0, (1190, 300)), (38.4, (640, 280)), (24.0 * 60, (900, 400))):
        chart.window().resize(*size)
        chart.render(ramp(hours))
        boxes = {label.text: label.box for label in chart.picture.labels.placed}
        assert set(boxes) == {
            "plan",
            "target 8.4",
            "if uptake stops now",
            "if nothing is dosed",
            "fastest allowed",
            "reading 6.8",
        }
        view = chart.picture.view.rect()
        for text, box in boxes.items():
            width = chart.picture._metrics.horizontalAdvance(text)
            assert box.left() >= 0, text
            assert box.left() + width <= view.width(), text
            assert view.top() <= box.top() <= box.bottom() <= view.bottom(), text
        placed = list(boxes.values())
        assert not any(a.intersects(b) for n, a in enumerate(placed) for b in placed[:n])


def test_doses_and_values_share_one_time_axis(chart: RampChart) -> None:
    chart.render(ramp())
    picture = chart.picture
    assert len([t for _, t, _ in picture.time_axis._texts]) >= 5
    first, bars = picture.scale.x(START), picture.bars._bars
    assert bars[0].left() == pytest.approx(first, abs=1.0)
    assert picture.time_axis._rect.top() >= max(bar.bottom() for bar in bars) - 0.5
    assert [line for _, line in picture.dose_axis._title] == ["mL each dose"]


def test_the_target_rule_ends_before_its_name(chart: RampChart) -> None:
    chart.render(ramp())
    (box,) = [label.box for label in chart.picture.labels.placed if label.text.startswith("target")]
    assert chart.picture.grid._target.x2() <= chart.picture.scale.rect.right() < box.left()


def test_plan_solid_blue_what_ifs_dashed_and_dotted_ink(chart: RampChart) -> None:
    chart.render(ramp())
    pens = {name: line.opts["pen"] for name, line in chart.picture.curves.items()}
    assert (pens["plan"].style(), pens["plan"].width()) == (Qt.PenStyle.SolidLine, 2)
    assert pens["plan"].color() == QColor(LIGHT.blue)
    for name in ("uptake_stops", "nothing"):
        assert pens[name].style() == Qt.PenStyle.CustomDashLine
        assert pens[name].color() == QColor(LIGHT.ink)
        assert pens[name].width() == 1
    assert pens["uptake_stops"].dashPattern() != pens["nothing"].dashPattern()


def test_items_are_made_once_and_fed(chart: RampChart) -> None:
    chart.render(ramp())
    before = list(chart.picture.view.scene().items())
    for hours in (40.0, 60.0, 500.0):
        chart.render(ramp(hours, points=500))
    after = chart.picture.view.scene().items()
    assert len(after) == len(before)


def test_dragging_leads_the_end_and_says_so_all_the_way(chart: RampChart) -> None:
    chart.render(ramp())
    heard = Heard(chart)
    scale = chart.picture.scale
    drag(chart, 100.0)
    expected = FASTEST_END + 100.0 / scale.rect.width() * (scale.end - scale.start)
    assert len(heard.dragged) == 3
    assert heard.dragged == sorted(heard.dragged)
    assert heard.committed == [pytest.approx(expected, abs=1.0)]
    assert heard.committed[0] == heard.dragged[-1]


def test_the_ground_stays_still_while_the_end_is_in_hand(chart: RampChart) -> None:
    chart.render(ramp())
    before = chart.picture.scale
    drag(chart, 120.0, release=False)
    held = handle(chart)
    chart.render(ramp(50.0))
    assert (chart.picture.scale.start, chart.picture.scale.end) == (before.start, before.end)
    assert handle(chart).x() == pytest.approx(held.x())
    mouse(chart, QMouseEvent.Type.MouseButtonRelease, held)
    chart.render(ramp(50.0))
    assert chart.picture.scale.end > before.end


def test_never_faster_than_allowed_and_the_handle_shows_it(chart: RampChart) -> None:
    chart.render(ramp(60.0))
    heard = Heard(chart)
    drag(chart, -600.0, release=False)
    assert min(heard.dragged) >= FASTEST_END
    assert heard.dragged[-1] == FASTEST_END
    assert chart.picture.marks._held_back
    assert chart.readout.startswith("This is the fastest allowed.")
    mouse(chart, QMouseEvent.Type.MouseButtonRelease, handle(chart))
    assert heard.committed == [FASTEST_END]


def test_a_click_that_leads_nowhere_commits_nothing(chart: RampChart) -> None:
    chart.render(ramp())
    heard = Heard(chart)
    mouse(chart, QMouseEvent.Type.MouseButtonPress, handle(chart))
    mouse(chart, QMouseEvent.Type.MouseButtonRelease, handle(chart))
    assert (heard.dragged, heard.committed) == ([], [])


def test_keys_do_what_the_mouse_does(chart: RampChart, qtbot) -> None:
    chart.render(ramp())
    heard = Heard(chart)
    QTest.keyClick(chart, Qt.Key.Key_Right, Qt.KeyboardModifier.ShiftModifier)
    QTest.keyClick(chart, Qt.Key.Key_PageUp)
    assert len(heard.dragged) == 2
    assert FASTEST_END < heard.dragged[0] < heard.dragged[1]
    assert "Reaches 8.4 dKH on" in chart.readout
    assert heard.committed == []
    QTest.keyClick(chart, Qt.Key.Key_Return)
    assert heard.committed == [heard.dragged[1]]
    chart.render(ramp(60.0))
    QTest.keyClick(chart, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    qtbot.waitUntil(lambda: len(heard.committed) == 2, timeout=3000)
    assert heard.committed[1] < START + 60.0 * 3600.0


def test_escape_takes_the_end_back(chart: RampChart) -> None:
    chart.render(ramp(60.0))
    heard = Heard(chart)
    before = handle(chart).x()
    QTest.keyClick(chart, Qt.Key.Key_PageUp)
    chart.render(ramp(70.0))  # the sheet follows the hand
    QTest.keyClick(chart, Qt.Key.Key_Escape)
    assert (heard.cancelled, heard.committed) == (1, [])
    assert chart.ramp_end == START + 60.0 * 3600.0
    chart.render(ramp(60.0))
    assert handle(chart).x() == pytest.approx(before)


def test_leaving_the_chart_settles_the_pace(chart: RampChart) -> None:
    chart.render(ramp())
    heard = Heard(chart)
    QTest.keyClick(chart, Qt.Key.Key_PageUp)
    chart.clearFocus()
    assert len(heard.committed) == 1


def test_the_readout_follows_mouse_and_arrow_keys(chart: RampChart) -> None:
    chart.render(ramp())
    place = QPointF(chart.picture.scale.x(START + 12 * 3600.0), 100.0)
    mouse(chart, QMouseEvent.Type.MouseMove, place)
    assert chart.readout.startswith("Wed 25 Nov 21:00    plan 7.30 dKH (7.13 to 7.47)")
    assert "if uptake stops now 7.75" in chart.readout
    assert "if nothing is dosed 6.35" in chart.readout
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert chart.readout.startswith("Wed 25 Nov 22:00")
    assert chart.accessibleDescription() == chart.readout
    for _ in range(400):
        QTest.keyClick(chart, Qt.Key.Key_Left)
    assert chart.readout.startswith("Wed 25 Nov 09:00"), "it stops at the first moment of the plan"


def test_a_narrow_chart_reads_out_whole_phrases_only(chart: RampChart) -> None:
    chart.window().resize(400, 300)
    chart.render(ramp())
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert chart._readout.fontMetrics().horizontalAdvance(chart.readout) <= chart.width()


def test_H29_wheel_and_right_click_do_nothing(chart: RampChart) -> None:
    chart.render(ramp())
    viewport = chart.picture.view.viewport()
    before = chart.picture.box.viewRange()
    place = QPointF(500, 100)
    wheel = QWheelEvent(
        place,
        viewport.mapToGlobal(place),
        QPoint(),
        QPoint(0, 120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(viewport, wheel)
    assert not wheel.isAccepted(), "the page may scroll"
    QApplication.sendEvent(
        viewport, QContextMenuEvent(QContextMenuEvent.Reason.Mouse, QPoint(500, 100), QPoint(500, 100))
    )
    assert chart.picture.box.viewRange() == before
    menus = chart.findChildren(QMenu)
    assert [action.data() for menu in menus for action in menu.actions()] == ["svg", "png", "csv"], (
        "saving changes nothing"
    )
    for menu in menus:
        menu.close()


def test_a_stale_chart_is_veiled_and_says_so(chart: RampChart) -> None:
    chart.render(ramp())
    chart.set_stale(True)
    assert chart.picture.veil.isVisible()
    assert chart.readout == "The question has changed"
    chart.render(ramp())
    assert not chart.picture.veil.isVisible()
    assert chart.readout == ""


def test_the_plan_is_told_in_words(chart: RampChart) -> None:
    chart.render(ramp())
    assert chart.accessibleName() == "Chart of the correction"
    spoken = chart.accessibleDescription()
    assert "Alkalinity from 6.8 to 8.4 dKH, reached on Thu 26 Nov 23:24" in spoken
    assert "if uptake stops now" in spoken


def test_a_what_if_that_runs_far_away_does_not_flatten_the_plan(chart: RampChart) -> None:
    chart.render(ramp(24.0 * 60))
    scale = chart.picture.scale
    assert scale.y(6.8) - scale.y(8.4) > 0.15 * scale.rect.height()


@pytest.mark.parametrize(
    "changes",
    [
        {"doses_at": np.array([]), "doses_ml": np.array([])},
        {"measured_at": START - 40 * 86400.0},
        {"low": np.full(200, 8.4), "high": np.full(200, 8.4), "plan": np.full(200, 8.4), "measured": 8.4},
        {"labels": {"plan": "plan 8.4", "nothing": "without dosing"}},
    ],
    ids=["no doses", "old reading", "nothing to raise", "own names"],
)
def test_odd_plans_are_drawn_too(chart: RampChart, changes: dict[str, object]) -> None:
    chart.render(replace(ramp(), **changes))
    image = chart.grab().toImage()
    blue = QColor(LIGHT.blue)
    assert any(image.pixelColor(x, y) == blue for x in range(150, 1100, 7) for y in range(30, 230))


def test_everything_grows_with_the_font(chart: RampChart) -> None:
    chart.render(ramp())
    before = chart.picture.scale.rect
    font = chart.font()
    font.setPointSizeF(font.pointSizeF() * 1.5)
    chart.setFont(font)
    after = chart.picture.scale.rect
    assert after.left() > before.left()
    assert after.right() < before.right()
