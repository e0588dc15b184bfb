"""All plans of a system in one balance, from what the window knows: the start of every value, what runs, what is left out, the words."""

from __future__ import annotations

from datetime import timedelta

import numpy as np
import pytest

from evenwater.engine import following
from evenwater.engine.following import ENDED, STOP, WAITING
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason
from evenwater.engine.together_answer import EXCHANGE, LOSS, USE, Outlook
from evenwater.engine.together_question import CORRECTION, FOOD, UPKEEP
from evenwater.screens import words
from evenwater.screens.exchange_given import LOG, Newest
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.together import Together
from evenwater.screens.together_words import SENTENCES
from tests.engine.asking import NOW, known
from tests.engine.upkeeps import item, jug, limewater
from tests.screens.lint import faults, strings
from tests.screens.timetable_asking import followed
from tests.screens.together_asking import correction, noted, read, shown, together

DKH = known().parameters["alkalinity"].canonical(1.0)
DAY = timedelta(days=1)
TWO = (item("alkalinity", step="0.1 mL"), item("calcium", step="0.1 mL"))
TESTED = {"alkalinity": read("6.8 dKH"), "calcium": read("420 mg/L")}
USED = {"alkalinity": "0.9 dKH per day", "calcium": "6.4 mg/L per day"}


def outlook(found: Together, name: str) -> Outlook:
    assert found.answer is not None, found.left_out
    each = found.answer.outlook(name)
    assert each is not None, name
    return each


def parts(found: Together, name: str) -> dict[tuple[str, str], float]:
    return {(part.sort, part.name): part.per_day for part in outlook(found, name).budget if part.runs_now}


def at(found: Together, name: str, days: np.ndarray) -> np.ndarray:
    assert found.answer is not None
    return np.interp(days, found.answer.times, outlook(found, name).points)


# The start, and a correction alone


def test_with_nothing_but_one_correction_the_projection_is_its_own_ramp() -> None:
    answer = correction()
    course = following.course(answer)
    found = together({"alkalinity": read("6.8 dKH")}, {"alkalinity": "0.9 dKH per day"}, standing=answer)
    instants = np.arange(1, course.count + 1) * course.interval_days
    ramp = following.expected(course, instants).plan
    # The line has a point at each quarter of a day; between them it is straight, as the ramp is.
    assert at(found, "alkalinity", instants) == pytest.approx(ramp, rel=1e-9)
    tail = np.array([course.lasts_days + 3.0, 20.0])
    assert at(found, "alkalinity", tail) == pytest.approx(following.expected(course, tail).plan, rel=1e-9)
    assert outlook(found, "alkalinity").rise == pytest.approx(
        course.per_day * course.dose_ml * course.per_ml - course.use, rel=1e-9
    )


def test_a_followed_plan_goes_on_from_where_its_ramp_is() -> None:
    """Ten hours after its start, with the reading that it began with: the plan's own line, whatever the reading's age."""
    plan = followed()
    assert plan.kept is not None
    course, later = plan.kept.course, NOW + timedelta(hours=10)
    found = together({"alkalinity": read("6.8 dKH", timedelta(hours=2))}, USED, plans=(plan,), now=later)
    days = np.array([0.0, 0.25, 0.75])
    ramp = following.expected(course, days + 10.0 / 24.0).plan
    assert at(found, "alkalinity", days) == pytest.approx(ramp, rel=1e-9)


def test_a_reading_within_a_plan_counts_and_the_plan_goes_on_from_it() -> None:
    plan = followed()
    assert plan.kept is not None
    course, later = plan.kept.course, NOW + DAY
    readings = {"alkalinity": Newest(read("7.5 dKH").typed, NOW + timedelta(hours=18), LOG)}
    found = together(readings, {"alkalinity": "0.9 dKH per day"}, plans=(plan,), now=later)
    net = course.per_day * course.dose_ml * course.per_ml - course.use
    assert outlook(found, "alkalinity").moved.now == pytest.approx(7.5 * DKH + net / 4.0, rel=1e-9)


def test_the_correction_on_the_sheet_takes_the_place_of_the_plan_for_the_same_value() -> None:
    one = together(TESTED, USED, plans=(followed(),), standing=correction())
    assert [key for key in parts(one, "alkalinity") if key[0] == CORRECTION] == [(CORRECTION, "alkalinity")]
    assert parts(one, "alkalinity")[CORRECTION, "alkalinity"] == pytest.approx(
        parts(together(TESTED, USED, standing=correction()), "alkalinity")[CORRECTION, "alkalinity"]
    )


def test_upkeep_rests_while_the_correction_of_its_value_runs() -> None:
    """The doses of a correction make good the daily use as well; then the upkeep goes on."""
    found = together(TESTED, USED, *TWO, standing=correction())
    said = {(p.sort, p.name): (p.begins, p.ends) for p in outlook(found, "alkalinity").budget}
    lasts = following.course(correction()).lasts_days
    assert said[CORRECTION, "alkalinity"] == (0.0, pytest.approx(lasts))
    assert said[UPKEEP, "alkalinity"] == (pytest.approx(lasts), np.inf)
    assert (UPKEEP, "calcium") in parts(found, "calcium")
    # It stays at the target but for what rounding leaves of the use.
    assert outlook(found, "alkalinity").month == pytest.approx(8.4 * DKH, abs=0.9 * DKH)


def test_a_value_is_carried_forward_by_upkeep_and_use_since_its_reading() -> None:
    old = {"alkalinity": read("8 dKH", 2 * DAY), "calcium": read("420 mg/L", 2 * DAY)}
    without = together(old, USED)
    assert outlook(without, "alkalinity").moved.now == pytest.approx(8.0 * DKH - 2 * 0.9 * DKH, rel=1e-9)
    kept = together(old, USED, *TWO)
    dosed = parts(kept, "alkalinity")[UPKEEP, "alkalinity"]
    assert outlook(kept, "alkalinity").moved.now == pytest.approx(8.0 * DKH + 2 * (dosed - 0.9 * DKH), rel=1e-9)


def test_doses_noted_since_the_reading_count_and_those_of_upkeep_not_twice() -> None:
    old = {"alkalinity": read("8 dKH", 2 * DAY), "calcium": read("420 mg/L")}
    before = noted("jug", 3 * DAY, alkalinity=5.0)
    by_hand = noted("bottle", DAY, alkalinity=0.1)
    plain = outlook(together(old, USED, *TWO), "alkalinity").moved.now
    more = outlook(together(old, USED, *TWO, noted=(before, by_hand)), "alkalinity").moved.now
    assert more == pytest.approx(plain + 0.1, rel=1e-9)
    stocks = {"alkalinity": "jug"}
    dosed = parts(together(old, USED, *TWO), "alkalinity")[UPKEEP, "alkalinity"]
    less = outlook(together(old, USED, *TWO, stocks=stocks, noted=(noted("jug", DAY, alkalinity=dosed),)), "alkalinity")
    assert less.moved.now == pytest.approx(plain, rel=1e-9), "that was upkeep's own"
    beyond = noted("jug", DAY, alkalinity=2 * dosed + 0.2)
    extra = outlook(together(old, USED, *TWO, stocks=stocks, noted=(beyond,)), "alkalinity")
    assert extra.moved.now == pytest.approx(plain + 0.2, rel=1e-9)


# What runs


def test_limewater_raises_both() -> None:
    """Calcium hydroxide: 20.04 mg of calcium with each milliequivalent."""
    found = together(
        TESTED, {"alkalinity": "0.9 dKH per day"}, item("alkalinity", additive=limewater(), flow="50 mL/min")
    )
    brings = parts(found, "calcium")[UPKEEP, "alkalinity"]
    assert brings == pytest.approx(20.039 * parts(found, "alkalinity")[UPKEEP, "alkalinity"], rel=1e-3)
    # Nobody typed a use of calcium: the skeleton takes it with the alkalinity.
    assert parts(found, "calcium")[USE, ""] == pytest.approx(-20.039 * 0.9 * DKH, rel=1e-3)


def test_potassium_nitrate_raises_potassium_which_nobody_has_tested() -> None:
    found = together({"nitrate": read("4 mg/L as NO3")}, {"nitrate": "0.5 mg/L as NO3 per day"}, item("nitrate"))
    potassium = outlook(found, "potassium")
    # One mole each: 39.098 g of potassium with 62.004 g of nitrate.
    assert parts(found, "potassium")[UPKEEP, "nitrate"] == pytest.approx(
        39.098 / 62.004 * parts(found, "nitrate")[UPKEEP, "nitrate"], rel=1e-3
    )
    assert not potassium.known
    assert any("Potassium: no reading" in each.text for each in found.left_out)


def test_exchange_and_losses_of_the_water_record_count() -> None:
    found = together({"nitrate": read("10 mg/L as NO3")}, {}, system={"exchanged": "17 L per day"},
                     water={"nitrate_loss": "2 %", "nitrate": "1 mg/L as NO3"})  # fmt: skip
    assert parts(found, "nitrate") == {
        (EXCHANGE, ""): pytest.approx(0.05 * (1.0 - 10.0), rel=0.01),
        (LOSS, ""): pytest.approx(-0.2, rel=0.01),
    }


MASH = {
    "name": "Rotifer mash",
    "per_day": "2 mL per day",
    "says": "per_ml",
    "nitrogen": "10 mg/mL",
    "phosphorus": "1 mg/mL",
}


def test_foods_count_where_nobody_found_a_use() -> None:
    fed = together({"nitrate": read("5 mg/L as NO3"), "alkalinity": read("8 dKH")}, {}, foods=(MASH,))
    # 20 mg of nitrogen in 340 L, as nitrate; and one equivalent of alkalinity for each mole.
    assert parts(fed, "nitrate")[FOOD, "Rotifer mash"] == pytest.approx(20.0 * 62.004 / 14.007 / 340.0, rel=1e-3)
    assert parts(fed, "alkalinity")[FOOD, "nitrification of Rotifer mash"] < 0.0
    found_by_test = together({"nitrate": read("5 mg/L as NO3")}, {"nitrate": "0.2 mg/L as NO3 per day"}, foods=(MASH,))
    assert parts(found_by_test, "nitrate") == {(USE, ""): pytest.approx(-0.2)}
    assert any("foods do to nitrate" in each.text and not each.unread for each in found_by_test.left_out)
    learned = together(
        {"nitrate": read("5 mg/L as NO3")}, learned={"nitrate": "0.3 mg/L as NO3 per day"}, foods=(MASH,)
    )
    assert parts(learned, "nitrate") == {(USE, ""): pytest.approx(-0.3)}


def test_two_corrections_that_keep_the_limit_alone_are_stopped_together() -> None:
    """Soda ash raises alkalinity by 1 dKH a day, limewater for calcium by 1.1 besides: of 1.4 dKH at the most."""
    lime = correction(
        change__parameter="calcium", change__measured="400 mg/L", change__target="430 mg/L", change__daily_use=None,
        change__fastest_rise="8 mg/L per day", additive__chemical="calcium hydroxide", additive__dissolved="15 g",
        additive__made_up_to="10 L", pump__flow="50 mL/min",
    )  # fmt: skip
    tested = {"alkalinity": read("6.8 dKH"), "calcium": read("400 mg/L")}
    alone = shown(tested, {"alkalinity": "0.9 dKH per day"}, standing=lime)
    assert alone.state == "answered", alone.stops
    assert shown(tested, {"alkalinity": "0.9 dKH per day"}, plans=(followed(),)).state == "answered"
    both = shown(tested, {"alkalinity": "0.9 dKH per day"}, plans=(followed(),), standing=lime)
    assert both.state == "stop"
    said = both.stops[0].replace("\u00a0", " ")
    assert "All together alkalinity would rise" in said
    assert "the correction of alkalinity and the correction of calcium" in said or (
        "the correction of calcium and the correction of alkalinity" in said
    )
    assert [line.parameter for line in both.lines if line.stop] == ["Alkalinity"]


def test_a_dose_by_hand_counts_beside_the_plan_and_one_from_upkeeps_jug_as_upkeep() -> None:
    by_hand = (noted("bottle", timedelta(hours=2), alkalinity=0.4 * DKH),)
    plan = {"plans": (followed(),), "now": NOW}
    alone = outlook(together({"alkalinity": read("6.8 dKH")}, USED, **plan), "alkalinity").rise
    beside = outlook(together({"alkalinity": read("6.8 dKH")}, USED, noted=by_hand, **plan), "alkalinity").rise
    assert beside == pytest.approx(alone * 22.0 / 24.0 + 0.4 * DKH, rel=1e-3)
    own = together({"alkalinity": read("6.8 dKH")}, USED, noted=by_hand, stocks={"alkalinity": "bottle"}, **plan)
    assert outlook(own, "alkalinity").rise == pytest.approx(alone)


# What is left out


def test_without_a_net_volume_nothing_is_said() -> None:
    found = together(TESTED, USED, system={"net_volume": ""})
    assert found.answer is None
    assert [each.unread for each in found.left_out] == [True]
    assert "net volume" in found.left_out[0].text


@pytest.mark.parametrize(
    ("changes", "said"),
    [
        ({"system": {"exchanged": "10 bananas"}}, "bananas"),
        ({"water": {"nitrate": "lots"}, "system": {"exchanged": "10 L per day"}, "readings": {"nitrate": read("5 mg/L as NO3"), **TESTED}}, "Nitrate: “lots”"),
        ({"plans": (FollowedPlan("ABCDEF-12", "calcium", None),)}, "Plan ABCDEF-12 for calcium cannot be read."),
        ({"foods": ({"name": "Mash", "per_day": "2 apples"},)}, "“Mash” cannot be read"),
    ],
)  # fmt: skip
def test_what_cannot_be_read_is_left_out_and_said(changes: dict, said: str) -> None:
    found = together(changes.pop("readings", TESTED), USED, **changes)
    assert outlook(found, "calcium").known
    assert any(said in each.text and each.unread for each in found.left_out), found.left_out


def test_an_upkeep_that_cannot_be_read_is_said_with_its_value() -> None:
    found = together(TESTED, USED, item("alkalinity"), item("calcium", additive=jug("calcium chloride dihydrate", 0.0)))
    assert (UPKEEP, "alkalinity") not in parts(found, "alkalinity")
    assert any(each.text.startswith("The upkeep is not counted. Calcium:") and each.unread for each in found.left_out)


def test_old_readings_are_said_and_very_old_ones_tell_the_change_only() -> None:
    found = together({"alkalinity": read("8 dKH", 4 * DAY), "calcium": read("420 mg/L", 61 * DAY)}, USED)
    said = [each.text.replace("\u00a0", " ") for each in found.left_out]
    assert "Alkalinity: the reading is 4 days old. Test it again." in said
    assert "Calcium: the reading is 61 days old. Only its change is known until it is tested." in said
    assert outlook(found, "alkalinity").known
    assert not outlook(found, "calcium").known
    assert not any(each.unread for each in found.left_out)


def test_a_reading_without_a_time_is_taken_for_todays() -> None:
    found = together({"calcium": Newest(read("420 mg/L").typed, None, LOG)}, {})
    assert outlook(found, "calcium").moved.now == pytest.approx(420.0)
    assert any("nobody said when it was tested" in each.text for each in found.left_out)


def test_a_plan_that_must_not_go_on_is_a_stop_and_one_that_is_over_is_unread() -> None:
    stopped = shown(TESTED, USED, plans=(followed(STOP),))
    assert stopped.state == "stop"
    assert "must not be followed on" in stopped.stops[0]
    over = together(TESTED, USED, plans=(followed(ENDED),))
    assert any("is over" in each.text and each.unread for each in over.left_out)
    assert not together(TESTED, USED, plans=(followed(WAITING),)).left_out


# Words


def test_lines_and_budget_say_it_in_the_keepers_unit() -> None:
    found = shown({**TESTED, "magnesium": read("1300 mg/L")}, USED, *TWO, standing=correction())
    assert found.state == "answered", found.stops
    assert [line.parameter for line in found.lines][:2] == ["Alkalinity", "Calcium"]
    line = found.lines[0]
    assert line.now == "6.8\u00a0dKH"
    assert (line.unit, line.figures[0]) == ("dKH", "6.8")
    budget = {each.what: (each.per_day, each.when) for each in line.budget}
    assert budget["Used"] == ("down 0.9\u00a0dKH", "")
    assert budget["The correction of alkalinity"][1].startswith("until Fri 27 Nov\u00a0")
    assert budget["The upkeep of alkalinity"][1].startswith("from Fri 27 Nov\u00a0")
    assert list(budget)[-1] == "Together now"
    assert [(each.what, each.when) for each in line.limits] == [
        ("Largest rise in 24 hours", "of 1.4\u00a0dKH at the most"),
        ("Largest fall in 24 hours", "of 1.4\u00a0dKH at the most"),
    ]
    assert found.summary[0].startswith("All plans together, in a week: alkalinity ")
    assert f"and {len(found.lines) - 1} more." in found.summary[-3]
    lengths = [len(words) for words in found.summary]
    assert lengths == sorted(lengths, reverse=True), "the longest first, so that the first that fits says the most"
    assert "magnesium" in found.still
    assert line.course.times[0] == NOW.timestamp()
    assert line.course.plan[0] == pytest.approx(6.8)
    assert line.course.usual == pytest.approx((7.0, 11.0))


def test_a_value_that_nobody_tested_shows_its_change() -> None:
    line = next(line for line in shown({}, {"calcium": "6 mg/L per day"}).lines if line.parameter == "Calcium")
    assert (line.now, line.week, line.then) == ("not known", "down 42\u00a0mg\u00a0per\u00a0L", "")
    assert (line.unit, *line.figures) == ("mg\u00a0per\u00a0L", "not known", "down 42", "down 180")


def test_what_becomes_of_a_value() -> None:
    then = {
        line.parameter: line.then
        for line in shown(
            {"calcium": read("400 mg/L"), "nitrate": read("1 mg/L as NO3"), "magnesium": read("1010 mg/L")},
            {"calcium": "2 mg/L per day", "nitrate": "0.1 mg/L as NO3 per day", "magnesium": "1 mg/L per day"},
        ).lines
    }  # fmt: skip
    assert then["Calcium"] == "below the usual 380\u00a0mg\u00a0per\u00a0L on Sat 5 Dec 2026"
    assert then["Nitrate"].startswith("used up on ")
    assert then["Magnesium"].startswith("below 1000\u00a0mg\u00a0per\u00a0L on ")
    (line,) = shown(
        {"potassium": read("400 mg/L")}, system={"exchanged": "5 L per day"}, water={"potassium": "390 mg/L"}
    ).lines
    assert line.then == "settles at 390\u00a0mg\u00a0per\u00a0L"


def test_nothing_known_shows_nothing() -> None:
    found = shown({}, {}, system={"net_volume": ""})
    assert (found.state, found.lines) == ("empty", ())
    assert found.summary == ("All plans together: nothing can be said yet.",)


SAID = {
    "together_rises_too_fast": "All together alkalinity would rise 1.7\u00a0dKH",
    "together_one_rises_too_fast": "Calcium would rise",
    "together_falls_too_fast": "Calcium would fall",
    "together_leaves_hard": "Calcium goes below",
    "together_leaves_hard_later": "Test it before",
    "together_leaves_usual": "out of what is usually kept",
    "together_used_up": "would be used up in",
    "together_raised_by_both": "is raised by",
    "together_overshoots": "not to the target of",
    "together_disagrees": "Two ways to reckon",
}


@pytest.mark.parametrize("code", sorted(SAID))
def test_every_sentence_holds_its_figures(code: str) -> None:
    name = "alkalinity" if "rises_too_fast" in code and "one" not in code else "calcium"
    p = known().parameters[name]
    params = {
        "parameter": name, "kind": p.kind, "unit": p.display_unit, "water": Water(), "plans": ((UPKEEP, "calcium"), (CORRECTION, "alkalinity")),
        "day": 3.0, "side": "below", "what": (name,),
        **{key: p.canonical(1.7 if name == "alkalinity" else 60.0) for key in ("rise", "fall", "most", "low", "high", "comes_to", "target")},
    }  # fmt: skip
    said = words.sentence(Reason(code, params))
    assert SAID[code] in said
    assert not faults(said)
    for plans in ((), ((FOOD, "mash"),)):
        assert not faults(
            words.sentence(Reason(code, {**params, "plans": plans or params["plans"], "day": 0.0, "side": "above"}))
        )


def test_no_code_is_without_its_test() -> None:
    assert SAID.keys() == SENTENCES.keys()


def test_a_rise_that_nothing_dosed_makes_names_the_water() -> None:
    found = shown({"calcium": read("380 mg/L")}, system={"exchanged": "100 L per day"}, water={"calcium": "800 mg/L"})
    assert any("by the new water. Bring it nearer, or exchange more slowly." in text for text in found.stops)


def test_all_words_keep_the_rules_of_the_house() -> None:
    views = [
        shown(TESTED, USED, *TWO, standing=correction()),
        shown({"calcium": read("305 mg/L", 8 * DAY)}, {"calcium": "9 mg/L per day"}, foods=(MASH,)),
        shown({"nitrate": read("4 mg/L as NO3")}, {"nitrate": "0.5 mg/L as NO3 per day"}, item("nitrate")),
        shown(TESTED, USED, plans=(followed(STOP),)),
    ]
    for each in views:
        for text in strings(each):
            assert not faults(text), text
