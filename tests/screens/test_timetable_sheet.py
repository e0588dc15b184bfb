"""The Timetable sheet in words: every dose once, in order of time, the sums those of the upkeep, refusals beside their wish."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from decimal import Decimal
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.timetable import TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_question import DAY_MIN, TimedPump
from evenwater.engine.timetable_water import fullest_hour
from evenwater.screens import timetable_card, timetable_rows, timetable_wishes, upkeep
from evenwater.screens.clock_change import clock_words, next_change
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.timetable_sheet import evaluate
from evenwater.screens.timetable_wishes import clock_minute, usual_doses
from evenwater.screens.views import Message
from tests.engine.asking import NOW, known
from tests.engine.upkeeps import jug, raw
from tests.screens.lint import faults, millilitres, strings
from tests.screens.timetable_asking import (
    PLAN,
    THREE,
    TWO_PART,
    asked,
    doses_of,
    followed,
    minute_of,
    pumped,
    seconds_of,
    timetabled,
)

QUIET = {"quiet_from": "22:00", "quiet_to": "07:00"}
WISHES = {
    "none": {},
    "quiet": {"system": QUIET},
    "quiet by day": {"system": {"quiet_from": "12:00", "quiet_to": "13:30"}},
    "one at a time": {"system": {"one_at_a_time": "yes", **QUIET}},
    "far apart": {"system": {"apart": "60"}},
    "ten": {"pumps": {name: {"doses_wanted": "10"} for name in ("alkalinity", "calcium", "nitrate")}},
    "late": {"pumps": {"nitrate": {"first_at": "9:00"}}, "system": QUIET},
    "some": {"pumps": {"alkalinity": {"doses_wanted": "8", "doses_fewest": "4", "doses_most": "12"}}},
    "plan": {"plans": (followed(),)},
}
over_wishes = pytest.mark.parametrize("name", WISHES)


@over_wishes
def test_rows_are_in_order_of_time_and_merged_ones_leave_nothing_out(name: str) -> None:
    """The doses that merged rows stand for, spelled out again, are those of the whole list."""
    view = timetabled(*THREE, **WISHES[name]).view
    assert view.state == "answered", view.messages
    for rows in (view.rows, view.every):
        assert [row.minute for row in rows] == sorted(row.minute for row in rows)
    assert sum(row.count for row in view.rows) == len(view.every)
    for row in view.rows:
        assert minute_of(row.when) == row.minute
        alike = [
            one.minute for one in doses_of(view.every, row.pump) if one.dose == row.dose and one.minute >= row.minute
        ]
        steps = [later - earlier for earlier, later in pairwise(alike[: row.count])]
        assert len(alike) >= row.count
        assert max(steps, default=0) - min(steps, default=0) <= 1
        if " to " in row.when:
            assert row.when.split(" to ")[1].startswith(
                f"{alike[row.count - 1] // 60:02d}:{alike[row.count - 1] % 60:02d}"
            )


@pytest.mark.parametrize("name", [name for name, wishes in WISHES.items() if "plans" not in wishes])
def test_what_a_pump_gives_in_the_list_is_what_the_upkeep_asks_for(name: str) -> None:
    kept = upkeep.evaluate(raw(*THREE), known(), NOW)
    assert kept.answer is not None
    view = timetabled(*THREE, **WISHES[name]).view
    for row, told in zip(kept.view.rows, view.pumps, strict=True):
        given = doses_of(view.every, told.pump)
        assert told.in_24_hours == row.in_24_hours
        assert sum(millilitres(one.dose) for one in given) == millilitres(row.in_24_hours)
        assert told.doses.startswith(f"{len(given)} doses a day") or len(given) == 1
        # 24 mL in a minute, told downwards to a tenth of a second.
        for one in given:
            assert 0 <= millilitres(one.dose) * 60 / 24 - seconds_of(one.runs) < Decimal("0.1")


@over_wishes
def test_nothing_is_given_in_quiet_hours_nor_before_the_first_hour_wished_for(name: str) -> None:
    wishes = WISHES[name]
    view = timetabled(*THREE, **wishes).view
    begin, end = (clock_minute(wishes.get("system", {}).get(f"quiet_{which}", "")) for which in ("from", "to"))
    for row in view.every:
        last = Decimal(row.minute) + seconds_of(row.runs) / 60
        if isinstance(begin, int) and isinstance(end, int):
            assert (row.minute - end) % DAY_MIN + (last - row.minute) <= (begin - end) % DAY_MIN, row
    if name == "late":
        assert min(row.minute for row in doses_of(view.every, "Rack pump")) >= 540


@over_wishes
def test_words_keep_the_rules_of_expression(name: str) -> None:
    view = timetabled(*THREE, **WISHES[name]).view
    # Clock times have zeros at their end, and no decimals.
    said = list(strings(view))
    assert not [fault for text in said for fault in faults(text, dose=True)]
    assert all(
        row.additive in {"sodium CARBonate anhydrous", "calcium CHLORide dihydrate", "potassium NITRate"}
        for row in view.every
    )


def test_cautions_and_rules_are_always_there() -> None:
    view = timetabled(*THREE).view
    assert view.hazards
    assert view.cautions
    assert "Missed doses are never made up: go on with the next one." in view.rules


@pytest.mark.parametrize(
    ("system", "pumps", "path", "said"),
    [
        ({"quiet_from": "22"}, {}, "quiet_from", "“22” is not a clock time"),
        ({"quiet_from": "22:00", "quiet_to": "25:00"}, {}, "quiet_to", "“25:00” is not a clock time"),
        ({"quiet_from": "22:00"}, {}, "quiet_to", "Write when the quiet hours end as well."),
        ({"quiet_to": "07:00"}, {}, "quiet_from", "Write when the quiet hours begin as well."),
        ({"quiet_from": "07:00", "quiet_to": "07:00"}, {}, "quiet_to", "leave nothing of the day"),
        ({"apart": "half"}, {}, "apart", ""),
        ({"apart": "5"}, {}, "apart", "15"),
        ({}, {"nitrate": {"first_at": "noon"}}, "nitrate.first_at", "“noon” is not a clock time"),
        ({}, {"calcium": {"doses_wanted": "2.5"}}, "calcium.doses_wanted", ""),
        (
            {},
            {"calcium": {"doses_wanted": "4", "doses_fewest": "6"}},
            "calcium.doses_wanted",
            "Correct one of the three",
        ),
        ({}, {"calcium": {"doses_most": "1000"}}, "calcium.doses_most", ""),
        ({}, {"alkalinity": {"doses_wanted": "288"}}, "alkalinity.doses_wanted", "below the"),
    ],
)
def test_a_wish_that_cannot_be_is_told_at_its_field(
    system: dict[str, str], pumps: dict[str, dict[str, str]], path: str, said: str
) -> None:
    found = timetabled(*THREE, system=system, pumps=pumps)
    assert found.view.state == "refused"
    assert found.answer is None
    assert not found.view.rows
    by_path = {message.path: message for message in found.view.beside}
    assert said in by_path[path].text.replace("\u00a0", " ")
    assert found.view.messages


def test_what_is_in_the_way_stands_at_every_wish_with_what_would_do() -> None:
    """Each offer, taken, leads to a timetable."""
    many, far = {name: {"doses_wanted": "24"} for name in ("alkalinity", "calcium")}, {"apart": "45"}
    found = timetabled(*THREE, system=far, pumps=many)
    assert found.view.state == "refused"
    by_path = {message.path: message for message in found.view.beside}
    assert set(by_path) == {"apart", "alkalinity.doses_wanted", "calcium.doses_wanted"}
    (nearer,) = by_path["apart"].offers
    assert 15 <= int(nearer.text) < 45
    assert timetabled(*THREE, system={"apart": nearer.text}, pumps=many).answer is not None
    (fewer,) = by_path["calcium.doses_wanted"].offers
    assert by_path["alkalinity.doses_wanted"].offers == (fewer,)
    assert (
        timetabled(*THREE, system=far, pumps={name: {"doses_wanted": fewer.text} for name in many}).answer is not None
    )


def test_quiet_hours_that_leave_too_little_are_told_and_nothing_dangerous_is_offered() -> None:
    """In ten minutes opposing doses have no room; that they might come closer than a quarter of an hour is no way out."""
    found = timetabled(*TWO_PART, system={"quiet_from": "07:10", "quiet_to": "07:00"})
    assert found.view.state == "refused"
    by_path = {message.path: message for message in found.view.beside}
    assert "10\u00a0min" in by_path["quiet_from"].text
    assert not [offer for message in found.view.beside for offer in message.offers]


def test_a_message_of_the_upkeep_names_its_value() -> None:
    broken = pumped("calcium", "Head 2")
    del broken["additive"]["dissolved"]
    found = timetabled(TWO_PART[0], broken)
    assert found.view.state == "empty"
    assert [message.text.split(":")[0] for message in found.view.messages] == ["Calcium"]


def test_nothing_kept_is_no_timetable() -> None:
    assert timetabled().view.state == "empty"


def test_one_pump_cannot_give_from_two_jugs() -> None:
    twice = timetabled(TWO_PART[0], pumped("calcium", "head 1"))
    assert twice.view.state == "answered", "two records may have one name"
    assert len({told.pump for told in twice.view.pumps}) == 2
    question = asked(TWO_PART[0], pumped("calcium", "Head 1"))
    same = {**question.corrections, "calcium": question.corrections["alkalinity"]}
    found = evaluate(replace(question, corrections=same), known(), NOW).view
    assert found.state == "refused"
    assert "A pump head gives from one jug" in found.messages[0].text


def test_what_is_left_of_a_step_is_said_plainly() -> None:
    """7.25 mL in steps of 0.1 mL: every other day the first dose has a step more, and the sum is exact."""
    pump = TimedPump("Head 1", 7.25, 24.0, step_ml=0.1, doses=6, fewest=6, most=6)
    answer = solve(TimetableQuestion((pump,)))
    assert isinstance(answer, TimetableAnswer)
    given = timetabled(TWO_PART[0]).given
    (told,) = timetable_rows.summaries(answer, given)
    assert told.carried.replace("\u00a0", " ") == "on 1 of 2 days the first dose is 0.1 mL more; then the sum is exact"
    assert told.in_24_hours == "7.2\u00a0mL"
    first, *others = timetable_rows.every_dose(answer, given)
    assert first.amount.replace("\u00a0", " ") == "1.2 mL, on some days 0.1 mL more"
    assert not [row for row in others if row.more]
    assert first.count == next(row for row in timetable_rows.merged(answer, given) if row.more).count == 1
    page = timetable_card.page(answer, given, {}, NOW)
    assert "7.3\u00a0mL" in page.maxima[0], "the fullest day bounds what may be given"
    assert told.carried in page.rows[0].setting.replace("On", "on")
    rare = solve(TimetableQuestion((replace(pump, per_day_ml=7.2501),)))
    assert isinstance(rare, TimetableAnswer)
    assert "carried into the next day" in timetable_rows.summaries(rare, given)[0].carried


# Plans


def test_a_plan_stands_in_the_place_of_the_upkeep_of_its_value() -> None:
    plan = followed()
    assert plan.kept is not None
    course = plan.kept.course
    view = timetabled(*THREE, plans=(plan,)).view
    (told,) = [one for one in view.pumps if one.parameter == "Alkalinity"]
    given = doses_of(view.every, told.pump)
    assert told.plan == f"Plan {PLAN}"
    assert len(given) == course.per_day
    assert {float(millilitres(row.dose)) for row in given} == {course.dose_ml}
    assert not [one.plan for one in view.pumps if one.parameter != "Alkalinity" and one.plan]


def test_what_stands_for_empty_wishes_is_said_of_a_refusal_too() -> None:
    plain, ramp = timetabled(*THREE).view, timetabled(*THREE, plans=(followed(),), system={"apart": "5"}).view
    assert (plain.usual.apart_min, plain.usual.fixed) == (30, ())
    assert plain.usual.doses == {"alkalinity": 12, "calcium": 12, "nitrate": 24}
    assert ramp.state == "refused"
    assert (ramp.usual.apart_min, ramp.usual.fixed) == (15, ("alkalinity",))
    assert ramp.usual.doses["alkalinity"] == 24


def test_a_plan_alone_has_a_timetable() -> None:
    view = timetabled(plans=(followed(),)).view
    assert view.state == "answered"
    assert [one.plan for one in view.pumps] == [f"Plan {PLAN}"]


@pytest.mark.parametrize(
    ("plan", "said"),
    [(followed("stop"), "must not be followed on"), (FollowedPlan(PLAN, "alkalinity", None), "cannot be read")],
)
def test_a_plan_that_must_not_be_followed_has_no_timetable(plan: FollowedPlan, said: str) -> None:
    found = timetabled(*THREE, plans=(plan,))
    assert found.view.state == "refused"
    assert found.answer is None
    assert said in found.view.messages[0].text
    assert PLAN in found.view.messages[0].text


def test_after_the_ramp_the_upkeep_is_given_again() -> None:
    plan = followed("ended")
    assert plan.kept is not None
    for when, state in ((NOW, "ended"), (plan.kept.course.ends_at, "inside")):
        view = timetabled(*THREE, plans=(replace(plan, state=state),), now=when).view
        assert not [one.plan for one in view.pumps if one.plan]


# What the water may stand


def test_doses_pressed_together_by_quiet_hours_are_held_against_the_water() -> None:
    """One hour open: all of the alkalinity of a day would come in it, and lift pH too far."""
    strong = pumped(
        "alkalinity", "Head 1", use="2 dKH per day", measured="8 dKH", additive=jug("sodium carbonate anhydrous", 106.0)
    )
    assert timetabled(strong).view.state == "answered"
    pressed = timetabled(
        strong, system={"quiet_from": "08:00", "quiet_to": "07:00"}, pumps={"alkalinity": {"doses_wanted": "8"}}
    )
    assert pressed.view.state == "refused"
    assert pressed.answer is None
    assert {message.code for message in pressed.view.messages} & {
        "upkeep_ph_rise",
        "upkeep_ph_ceiling",
        "upkeep_saturation",
    }


@pytest.mark.parametrize(
    ("minutes", "most"),
    [([0], 1), ([0, 59], 2), ([0, 60], 1), ([0, 30, 60, 90], 2), ([5, 1430], 2), ([0, 10, 20, 30, 700], 4)],
)
def test_the_fullest_hour_is_counted_round_the_clock(minutes: list[int], most: int) -> None:
    assert fullest_hour(minutes) == most


# Wishes


@pytest.mark.parametrize(
    ("text", "minute"), [("22:00", 1320), ("7:05", 425), ("00:00", 0), ("24:00", 1440), (" 08:30 ", 510), ("", None)]
)
def test_a_clock_time_is_read_strictly(text: str, minute: int | None) -> None:
    assert clock_minute(text) == minute


@pytest.mark.parametrize("text", ["7", "7.30", "24:01", "7:5", "12:60", "8 am", "٧:٠٠", "-1:00"])
def test_anything_else_is_no_clock_time(text: str) -> None:
    assert isinstance(clock_minute(text), Message)


@pytest.mark.parametrize(
    ("pump", "opposed", "open_min", "count"),
    [(24, False, 1440, 24), (24, True, 1440, 12), (8, True, 1440, 8), (24, True, 900, 12), (24, False, 900, 12), (24, True, 60, 1), (17, False, 1440, 17)],
)  # fmt: skip
def test_a_plain_number_of_doses_where_nobody_wished(pump: int, opposed: bool, open_min: int, count: int) -> None:
    assert usual_doses(pump, opposed, open_min) == count


def test_every_path_of_the_question_has_its_field_or_none() -> None:
    wishes = timetable_wishes.read({}, {})
    names = ("alkalinity", "calcium")
    for path, field in (
        ("keep_apart", "apart"), ("apart.1.at_least", "apart"), ("quiet", "quiet_from"), ("one_at_a_time", "one_at_a_time"),
        ("pump.2.doses_per_day", "calcium.doses_wanted"), ("pump.1.fewest_doses", "alkalinity.doses_fewest"),
        ("pump.2.most_doses", "calcium.doses_most"), ("pump.1.quiet", "quiet_from"), ("pump.1.flow", ""), ("pump", ""),
    ):  # fmt: skip
        assert timetable_wishes.placed(path, names, wishes) == field


# The clocks


@pytest.mark.parametrize(
    ("zone", "now", "at", "hours"),
    [
        ("Europe/Berlin", NOW, datetime(2027, 3, 28, 1, tzinfo=UTC), 1.0),
        ("Europe/Berlin", datetime(2026, 6, 1, tzinfo=UTC), datetime(2026, 10, 25, 1, tzinfo=UTC), -1.0),
        ("America/New_York", NOW, datetime(2027, 3, 14, 7, tzinfo=UTC), 1.0),
        ("Australia/Lord_Howe", NOW, datetime(2027, 4, 3, 15, tzinfo=UTC), -0.5),
    ],
)
def test_H17_the_next_change_of_clocks_is_found_to_the_minute(
    zone: str, now: datetime, at: datetime, hours: float
) -> None:
    found = next_change(now.astimezone(ZoneInfo(zone)))
    assert found is not None
    assert found.at.timestamp() == at.timestamp()
    assert found.by == timedelta(hours=hours)
    said = clock_words(found)
    assert ("later" if hours > 0 else "earlier") in said
    assert ("twice" in said.split("by the wall")[-1]) == (hours < 0), "only in autumn is there an hour to wait out"
    assert not faults(said)


def test_H17_no_change_is_told_where_there_is_none() -> None:
    assert next_change(NOW.astimezone(ZoneInfo("Asia/Kathmandu"))) is None
    assert clock_words(None) == ""
