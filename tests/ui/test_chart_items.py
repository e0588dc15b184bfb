"""Thinning that cannot be seen, bars that stay in the plot, names that do not collide."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import QPointF, QRectF

from evenwater.ui.chart_items import DoseBars, Edge, Marks, Scale, cut_to_width, visible_points
from evenwater.ui.chart_labels import free_spot, spread

PLOT = Scale(QRectF(100, 10, 900, 160), 0.0, 9000.0, 4.0, 12.0)


def test_scale_goes_there_and_back() -> None:
    assert (PLOT.x(0.0), PLOT.x(9000.0)) == (100.0, 1000.0)
    assert (PLOT.y(4.0), PLOT.y(12.0)) == (170.0, 10.0)
    assert PLOT.at(PLOT.x(1234.0)) == pytest.approx(1234.0)
    assert PLOT.xs(np.array([0.0, 9000.0])).tolist() == [100.0, 1000.0]
    assert PLOT.ys(np.array([4.0, 12.0])).tolist() == [170.0, 10.0]


def test_straight_pieces_need_their_bends_only() -> None:
    x = np.linspace(0.0, 900.0, 200)
    bent = np.where(x < 600.0, 100.0 - x / 10.0, 40.0)
    assert visible_points(x, bent).size <= 6


@given(st.integers(0, 2**32 - 1), st.sampled_from(["walk", "wave", "steps"]))
def test_thinned_lines_stay_within_a_third_of_a_pixel(seed: int, kind: str) -> None:
    draw = np.random.default_rng(seed)
    x = np.sort(draw.uniform(0.0, 900.0, 200))
    x[0], x[-1] = 0.0, 900.0
    y = {
        "walk": np.cumsum(draw.normal(0.0, 2.0, 200)),
        "wave": 60.0 * np.sin(x / 90.0),
        "steps": np.round(draw.uniform(0.0, 5.0, 200)) * 20.0,
    }[kind]
    keep = visible_points(x, y)
    assert np.abs(np.interp(x, x[keep], y[keep]) - y).max() <= 0.3 + 1e-9


def test_a_long_curve_is_cut_to_the_width_and_keeps_its_peaks() -> None:
    x = np.arange(20_000, dtype=float)
    y = np.zeros(20_000)
    y[12_345], y[777] = 5.0, -3.0
    cut_x, cut_y = cut_to_width(x, y, 900)
    assert cut_x.size <= 2 * 900 + 2
    assert (cut_y.max(), cut_y.min()) == (5.0, -3.0)
    assert (cut_x[0], cut_x[-1]) == (0.0, 19_999.0)
    assert (np.diff(cut_x) > 0).all()


def test_a_short_curve_is_left_alone() -> None:
    x = np.linspace(0.0, 1.0, 365)
    assert cut_to_width(x, x, 900)[0] is x


@pytest.mark.parametrize("count", [0, 1, 6, 38, 900, 4800])
def test_bars_stand_in_the_plot_and_are_as_high_as_their_dose(count: int) -> None:
    scale = Scale(QRectF(100, 200, 900, 60), 0.0, 9000.0, 0.0, 6.0)
    bars = DoseBars()
    at = np.linspace(0.0, 8990.0, count)
    bars.set_data(scale, at, np.full(count, 3.0))
    assert all(scale.rect.contains(bar) for bar in bars._bars)
    assert all(bar.height() == pytest.approx(30.0, abs=0.6) for bar in bars._bars)
    assert len(bars._bars) <= min(count, 900)
    assert bool(bars._bars) == bool(count)


@pytest.mark.parametrize(("end", "forbidden_above"), [(8.4, True), (5.0, False)])
def test_ticks_of_the_fastest_slope_stand_on_the_forbidden_side(end: float, forbidden_above: bool) -> None:
    edge = Edge()
    edge.set_data(PLOT, np.array([0.0, 6000.0]), np.array([6.8, end]))
    assert len(edge._ticks) > 20
    for tick in edge._ticks:
        assert (tick.y2() < tick.y1()) == forbidden_above
    assert (edge._line.y1() < PLOT.y(6.8)) == forbidden_above, "beside the slope, so that a plan on it stays blue"


def test_the_handle_can_be_hit_with_a_wet_finger() -> None:
    marks = Marks()
    marks.set_data(PLOT.rect, None, QPointF(700.0, 80.0))
    assert marks.over_handle(QPointF(717.0, 63.0))
    assert not marks.over_handle(QPointF(720.0, 80.0))
    assert marks.handle_target_px >= 32


@given(st.lists(st.floats(0.0, 200.0), min_size=1, max_size=7))
def test_names_are_pushed_apart_and_keep_their_order(wanted: list[float]) -> None:
    placed = spread(wanted, 17.0, 0.0, 200.0)
    in_order = sorted(placed)
    assert all(b - a >= 17.0 - 1e-6 for a, b in pairwise(in_order))
    assert in_order[0] >= 0.0
    assert in_order[-1] <= 200.0 + 1e-6
    for i, a in enumerate(wanted):
        for j, b in enumerate(wanted):
            if round(a) < round(b):
                assert placed[i] < placed[j]


def test_names_with_room_stay_at_their_lines() -> None:
    assert spread([10.0, 60.0, 150.0], 17.0, 0.0, 200.0) == [10.0, 60.0, 150.0]


def test_a_name_inside_the_plot_avoids_lines_and_other_names() -> None:
    size = QRectF(0, 0, 80, 16)
    line = np.column_stack((np.linspace(100.0, 1000.0, 300), np.full(300, 90.0)))
    anchors = [QPointF(300, 85), QPointF(300, 60), QPointF(300, 110)]
    box, covers = free_spot(size, anchors, line, [], PLOT.rect)
    assert (box.topLeft(), covers) == (QPointF(300, 60), False)
    box, covers = free_spot(size, anchors, line, [box], PLOT.rect)
    assert (box.topLeft(), covers) == (QPointF(300, 110), False)
    assert free_spot(size, anchors[:1], line, [], PLOT.rect)[1], "with nowhere to go it covers the line, and says so"
