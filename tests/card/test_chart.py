"""The small ramp: lines told apart without colour, a band without grey, names that do not run into each other."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest

from evenwater.card import words
from evenwater.card.chart import HATCH, ramp
from evenwater.card.items import Block, Stroke, Text
from evenwater.card.paper import A4, A6, PAPERS
from tests.card import sample


def texts(block: Block) -> list[Text]:
    return [item for item in block.items if isinstance(item, Text)]


def curves(block: Block) -> list[Stroke]:
    return [item for item in block.items if isinstance(item, Stroke) and len(item.points) > 20]


def test_lines_differ_in_dash_and_thickness() -> None:
    plan, uptake_stops, nothing = curves(ramp(sample.chart(), A4, 100.0))
    assert plan.dash == ()
    assert plan.width > uptake_stops.width
    assert len({plan.dash, uptake_stops.dash, nothing.dash}) == 3


def test_plan_is_drawn_to_scale() -> None:
    """The plan rises by as much of the axis as its numbers say."""
    block = ramp(sample.chart(), A4, 100.0)
    plan = curves(block)[0]
    # Marks on the value axis: their heights by their numbers.
    marks = {float(text.words): text.baseline for text in texts(block) if text.words in {"6", "8"}}
    per_unit = (marks[6.0] - marks[8.0]) / 2.0
    assert plan.points[0][1] - plan.points[-1][1] == pytest.approx(1.6 * per_unit, rel=1e-6)


def test_target_line_lies_at_the_target() -> None:
    block = ramp(sample.chart(), A4, 100.0)
    plan = curves(block)[0]
    level = [item for item in block.items if isinstance(item, Stroke) and len(item.points) == 2 and item.width == 0.3]
    assert any(item.points[0][1] == item.points[1][1] == pytest.approx(plan.points[-1][1]) for item in level)


def test_band_is_hatched_between_its_edges() -> None:
    chart = sample.chart()
    block = ramp(chart, A4, 100.0)
    hatch = [item for item in block.items if isinstance(item, Stroke) and item.width == 0.15]
    assert len(hatch) > 30
    gaps = [b.points[0][0] - a.points[0][0] for a, b in pairwise(hatch)]
    assert gaps == pytest.approx([HATCH] * len(gaps))
    plan = curves(block)[0]
    x, y = np.array(plan.points).T
    for stroke in hatch:
        (place, low), (_, high) = stroke.points
        assert high < np.interp(place, x, y) < low  # y grows downwards


@pytest.mark.parametrize("paper", list(PAPERS.values()), ids=lambda paper: paper.name)
def test_every_line_has_its_name_at_its_end(paper) -> None:
    chart = sample.chart()
    block = ramp(chart, paper, paper.content_width)
    names = {chart.labels["plan"], chart.labels["uptake_stops"], chart.labels["nothing"], "target 8.4"}
    named = [text for text in texts(block) if text.words in names]
    assert {text.words for text in named} == names
    assert len({text.x for text in named}) == 1
    for one, other in pairwise(sorted(named, key=lambda text: text.baseline)):
        assert other.box[1] >= one.box[3] - 0.01
    assert all(text.x + text.width <= paper.content_width + 0.01 for text in named)


def test_names_of_lines_that_end_together_stand_apart() -> None:
    chart = sample.chart()
    level = np.full_like(chart.plan, 8.4)
    block = ramp(replace(chart, uptake_stops=level, nothing=level, plan=level), A6, A6.content_width)
    names = {*chart.labels.values(), "target 8.4"}
    named = sorted(text.baseline for text in texts(block) if text.words in names)
    assert len(named) == 4
    assert min(b - a for a, b in pairwise(named)) >= 10.5 * 25.4 / 72


def test_name_too_long_for_its_column_is_broken_not_cut() -> None:
    chart = sample.chart()
    long = "if the animals stop taking up anything at all from tonight on"
    block = ramp(replace(chart, labels={"uptake_stops": long}), A6, A6.content_width)
    assert long.replace(" ", "") in "".join(text.words for text in texts(block)).replace(" ", "")


def test_missing_values_leave_a_gap() -> None:
    chart = sample.chart()
    holed = chart.nothing.copy()
    holed[100:120] = np.nan
    whole = ramp(chart, A4, 100.0)
    block = ramp(replace(chart, nothing=holed), A4, 100.0)
    assert len(curves(block)) == len(curves(whole)) + 1
    assert all(np.isfinite(item.points).all() for item in block.items if isinstance(item, Stroke))


def test_reading_before_the_plan_is_on_the_chart() -> None:
    chart = replace(sample.chart(), measured_at=sample.READ_AT - 6 * 3600)
    block = ramp(chart, A4, 100.0)
    axis = min(x for item in block.items if isinstance(item, Stroke) and item.width == 0.3 for x, _ in item.points)
    dot = next(item for item in block.items if not isinstance(item, Text | Stroke))
    middle = np.mean([x for x, _ in dot.points[:-1]])
    assert middle >= axis
    assert middle < curves(block)[0].points[0][0]


@pytest.mark.parametrize(("stretch", "unit"), [(1.0, words.HOURS), (4.0, words.DAYS)])
def test_time_is_counted_in_hours_or_days(stretch: float, unit: str) -> None:
    chart = sample.chart()
    times = sample.READ_AT + (chart.times - sample.READ_AT) * stretch
    said = [text.words for text in texts(ramp(replace(chart, times=times), A4, 100.0))]
    assert unit in said
    assert "0" in said


def test_flat_chart_can_be_drawn() -> None:
    chart = sample.chart()
    level = np.full_like(chart.plan, 420.0)
    flat = replace(
        chart, plan=level, low=level, high=level, uptake_stops=level, nothing=level, target=420.0, measured=420.0
    )
    points = [item.points for item in ramp(flat, A4, 100.0).items if isinstance(item, Stroke)]
    assert all(np.isfinite(np.array(each)).all() for each in points)


@pytest.mark.parametrize(
    ("target", "decimals", "said"), [(8.4, 2, "8.4"), (8.0, 2, "8"), (420.0, 0, "420"), (0.05, 3, "0.05")]
)
def test_target_is_named_with_its_value(target: float, decimals: int, said: str) -> None:
    chart = replace(sample.chart(), target=target, decimals=decimals)
    assert f"target {said}" in {text.words for text in texts(ramp(chart, A4, 170.0))}
