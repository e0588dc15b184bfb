"""A followed plan as it is kept and as it is shown."""

from __future__ import annotations

import json
from datetime import timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest

from evenwater.engine import following as course_of
from evenwater.screens import correct, following, following_view
from evenwater.screens.following import Kept
from evenwater.screens.outstanding import Given, Outstanding, Ran, outstanding
from evenwater.screens.when import instant_of
from tests.engine.asking import NOW, answered, known, worked
from tests.screens.lint import faults

BERLIN = ZoneInfo("Europe/Berlin")
RAW = worked(system__volume_uncertainty="3 %", system__volume_known="measured by filling")


def kept(batch: str = "jug:abc") -> Kept:
    found = following.kept(following.body(answered(RAW), correct.question_text(RAW), batch), known())
    assert found is not None
    return found


def view(readings: list[tuple[float, float]], hours: float = 30.0) -> following_view.FollowView:
    """Return what is shown after so many hours, of readings (hours after the start, dKH)."""
    plan = kept()
    one = plan.course.measured / 6.8
    now = (NOW + timedelta(hours=hours)).astimezone(BERLIN)
    found = following.follow(plan, [(NOW + timedelta(hours=h), v * one) for h, v in readings], now)
    return following_view.view(plan, "ABCDEF-12", found, now)


def test_a_plan_comes_back_as_it_was_kept() -> None:
    plan = kept()
    assert plan.course == course_of.course(answered(RAW))
    assert (plan.parameter.name, plan.unit, plan.volume_l, plan.batch_id) == ("alkalinity", "dKH", 340.0, "jug:abc")
    assert plan.question == correct.question_text(RAW)


@pytest.mark.parametrize(
    "spoil",
    [
        lambda body: body[:-1],
        lambda body: "[]",
        lambda body: "null",
        lambda body: body.replace('"form": 1', '"form": 2'),
        lambda body: body.replace('"alkalinity"', '"hardness"'),
        lambda body: body.replace('"dose_ml"', '"dose"'),
        lambda body: body.replace('"spread": {', '"spread": {"more": 1, '),
        lambda body: json.dumps({k: v for k, v in json.loads(body).items() if k != "course"}),
    ],
)
def test_a_plan_of_another_form_is_not_followed(spoil: object) -> None:
    body = following.body(answered(RAW), correct.question_text(RAW), "")
    assert following.kept(spoil(body), known()) is None  # type: ignore[operator]


def test_what_is_shown_without_a_reading_says_when_to_test() -> None:
    shown = view([], hours=2.0)
    assert shown.state == "waiting"
    assert shown.answer.figure == "4.7"
    assert shown.answer.figure_unit == "mL per hour"
    assert "2 of 39 doses are due, 9.4 mL" in shown.answer.third.replace("\u00a0", " ")
    assert "Test alkalinity by Thu 26 Nov" in shown.strip
    assert "is due now" in view([], hours=30.0).strip


def test_a_reading_inside_is_said_with_the_band() -> None:
    shown = view([(20.0, 7.6)])
    assert shown.state == "inside"
    assert shown.chart.retests[0].place == "inside"
    assert shown.chart.retests[0].value == pytest.approx(7.6)
    line, volume = shown.answer.working
    assert "7.6" in line.how
    assert line.gives == "inside the band"
    assert "340\u00a0L was reckoned with" in volume.how
    assert volume.gives.startswith("3")


def test_above_asks_for_another_test_and_the_second_stops() -> None:
    once = view([(6.0, 7.9)], hours=7.0)
    assert once.state == "above"
    assert not once.stop
    assert any("second reading" in text for text in once.answer.remarks)
    twice = view([(6.0, 7.9), (12.0, 8.2)], hours=13.0)
    assert twice.stop
    assert twice.answer.state == "stop"
    assert twice.answer.figure == "Stop"
    assert "Two readings in a row" in twice.answer.messages[0].text
    assert "mL" not in twice.answer.messages[0].text, "who is to stop needs no dose"


def test_below_never_says_to_make_up_what_is_missing() -> None:
    shown = view([(20.0, 6.6)])
    assert shown.state == "below"
    assert "Never make up" in shown.answer.remarks[0]


def test_every_sentence_keeps_the_rules() -> None:
    for shown in (
        view([], 2.0), view([], 30.0), view([(20.0, 7.6)]), view([(6.0, 7.9)], 7.0), view([(6.0, 7.9), (12.0, 8.2)], 13.0),
        view([(20.0, 6.6)]), view([(30.0, 9.5)]), view([], 24.0 * 40.0), view([(40.0, 8.4)], 50.0),
    ):  # fmt: skip
        answer = shown.answer
        for text in (shown.strip, answer.second, answer.third, *answer.remarks, *(m.text for m in answer.messages)):
            assert not faults(text), (text, faults(text))


def test_the_what_ifs_leave_the_plan_now() -> None:
    shown = view([(20.0, 7.6)], hours=24.0)
    chart = shown.chart
    assert chart.now is not None
    before = chart.times <= chart.now
    assert chart.uptake_stops[before] == pytest.approx(chart.plan[before])
    assert chart.nothing[before] == pytest.approx(chart.plan[before])
    assert np.all(np.diff(chart.uptake_stops[~before]) >= 0.0)
    assert np.all(np.diff(chart.nothing[~before]) <= 0.0)
    assert chart.nothing[-1] < chart.plan[-1] < chart.uptake_stops[-1]


def test_the_what_ifs_leave_from_a_reading_outside_the_band() -> None:
    inside, above = view([(20.0, 7.6)], 24.0).chart, view([(20.0, 8.4)], 24.0).chart
    assert above.uptake_stops[-1] - inside.uptake_stops[-1] == pytest.approx(8.4 - 7.6, abs=0.15)


def test_the_reading_goes_back_into_the_form_in_the_keepers_unit() -> None:
    plan = kept()
    fields = following.reading_fields(plan, 7.6 * plan.course.measured / 6.8, NOW.astimezone(BERLIN))
    assert (fields["measured"].text, fields["measured"].unit) == ("7.6", "dKH")
    assert instant_of(fields["measured_at"].text) == NOW


# What is outstanding


def test_doses_of_a_plan_since_the_reading_are_untested_less_what_was_used() -> None:
    plan = kept()
    now = NOW + timedelta(hours=10)
    found = outstanding([Ran(plan)], (), NOW - timedelta(hours=1), now)
    c = plan.course
    assert found.untested == pytest.approx(10 * c.dose_ml * c.per_ml - c.use * 10.0 / 24.0)
    later = outstanding([Ran(plan)], (), NOW + timedelta(hours=9, minutes=30), now)
    assert 0.0 < later.untested < found.untested / 5.0
    assert outstanding([Ran(plan)], (), now, now) == Outstanding()


def test_a_plan_that_ended_counts_until_its_end() -> None:
    plan = kept()
    ended = NOW + timedelta(hours=5)
    early = outstanding([Ran(plan, ended)], (), NOW, ended)
    late = outstanding([Ran(plan, ended)], (), NOW, NOW + timedelta(hours=10))
    assert late.untested == early.untested > 0.0
    assert outstanding([Ran(plan, ended)], (), ended, NOW + timedelta(hours=10)).untested == 0.0


def test_a_reading_of_unknown_time_counts_every_dose_of_the_plan() -> None:
    plan = kept()
    now = NOW + timedelta(hours=10)
    assert outstanding([Ran(plan)], (), None, now) == outstanding([Ran(plan)], (), NOW, now)


def test_doses_by_hand_count_once_whether_tested_or_not() -> None:
    now = NOW + timedelta(hours=30)
    by_hand = [Given(NOW + timedelta(hours=h), 0.1, "jug") for h in (1, 10, 20, 31)]
    found = outstanding([], by_hand, NOW + timedelta(hours=15), now)
    assert found.untested == pytest.approx(0.1), "of the three in the past, two were before the reading"
    assert found.lately == pytest.approx(0.2), "two within the last 24 hours"


def test_H18_a_dose_by_hand_before_the_reading_and_a_plan_after_it_lie_in_one_day() -> None:
    plan = kept()
    now = NOW + timedelta(hours=10)
    by_hand = [Given(NOW - timedelta(hours=2), 0.3, "jug")]
    found = outstanding([Ran(plan)], by_hand, NOW - timedelta(hours=1), now)
    c = plan.course
    by_plan = 10 * c.dose_ml * c.per_ml - c.use * 10.0 / 24.0
    assert found.untested == pytest.approx(by_plan), "the reading showed the dose by hand"
    assert found.lately == pytest.approx(0.3 + by_plan), "both are within 24 hours"
    # A day later the dose by hand is of yesterday.
    assert outstanding([Ran(plan)], by_hand, NOW - timedelta(hours=1), NOW + timedelta(hours=23)).lately == 0.0


def test_a_logged_dose_of_the_plans_own_jug_is_not_counted_twice() -> None:
    plan = kept("jug:abc")
    now = NOW + timedelta(hours=10)
    alone = outstanding([Ran(plan)], (), NOW, now)
    both = outstanding([Ran(plan)], [Given(NOW + timedelta(hours=2), 0.1, "jug")], NOW, now)
    other = outstanding([Ran(plan)], [Given(NOW + timedelta(hours=2), 0.1, "bottle")], NOW, now)
    assert both == alone
    assert other.untested == pytest.approx(alone.untested + 0.1)


def test_upkeep_alone_leaves_nothing_untested() -> None:
    plan = kept()
    end = plan.course.ends_at
    found = outstanding([Ran(plan)], (), end + timedelta(days=1), end + timedelta(days=3))
    assert found.untested == pytest.approx(0.0, abs=1e-3)


def test_outstanding_becomes_fields_that_are_read_back() -> None:
    p = known().parameters["alkalinity"]
    fields = Outstanding(0.123456, 0.0).fields(p)
    assert set(fields) == {"untested"}
    answer = answered(worked(change__untested=fields["untested"]))
    assert answer.question.untested == pytest.approx(0.123456, rel=1e-6)
    assert Outstanding().fields(p) == {}
    huge = Outstanding(1e9, 1e9).fields(p)
    assert set(huge) == {"untested", "raised_lately"}


# What the use is learned from, and what is drawn in the log


def test_what_a_plan_gave_is_handed_on_whole() -> None:
    plan = kept()
    until = NOW + timedelta(hours=50)
    doses = following.given(plan, until)
    assert sum(ml for _, ml, _ in doses) == pytest.approx(course_of.doses_until(plan.course, until)[1])
    assert all(NOW < at <= until for at, _, _ in doses)
    # 106 g of soda ash (105.99 g/mol) in a litre: 2.0002 meq in a millilitre.
    assert {round(carries, 3) for _, _, carries in doses} == {2.0}
    assert following.given(plan, NOW) == []


def test_what_a_plan_expected_is_drawn_until_it_ended() -> None:
    plan = kept()
    ended = NOW + timedelta(hours=20)
    whole, cut = following_view.projected(plan, None, "dKH"), following_view.projected(plan, ended, "dKH")
    assert cut.times[-1] == pytest.approx(ended.timestamp())
    assert whole.times[-1] == pytest.approx(plan.course.valid_until.timestamp())
    assert cut.plan[0] == pytest.approx(6.8)
    assert np.all(cut.low <= cut.plan)
    assert np.all(cut.plan <= cut.high)


def test_what_is_left_of_a_ramp_goes_into_the_upkeep() -> None:
    plan = kept()
    left = following.planned(plan, NOW + timedelta(hours=15))
    assert left is not None
    assert float(left["days_left"].text) == pytest.approx(1.0)
    course = plan.course
    assert float(left["rise_per_day"].text) == pytest.approx(24 * course.dose_ml * course.per_ml - course.use, rel=1e-6)
    assert following.planned(plan, course.ends_at) is None


def test_a_plan_in_short_says_when_it_is_to_be_tested_next() -> None:
    plan = kept()
    course = plan.course

    def due(hours: list[float]) -> object:
        now = course.ends_at + timedelta(hours=5)
        line = course_of.expected(course, np.array(hours) / 24.0).plan if hours else []
        readings = [(NOW + timedelta(hours=h), float(v)) for h, v in zip(hours, line, strict=True)]
        return following_view.judged(plan, following.follow(plan, readings, now), now.astimezone(BERLIN)).retest_at

    assert due([]) == course.retest_at
    assert due([5.0]) == course.retest_at
    assert due([5.0, 25.0]) == course.ends_at
    assert due([5.0, 25.0, 40.0]) is None
