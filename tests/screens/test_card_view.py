"""What the card says, held against the model: limits, stop rule, dates, names, strength; over everything that can be asked."""

from __future__ import annotations

import re
from datetime import UTC, datetime, timedelta, tzinfo
from decimal import Decimal
from functools import cache
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.correction import Answer
from evenwater.engine.quantities import from_canonical
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.screens.dose_card import card
from evenwater.screens.shown import date_words, dose
from evenwater.screens.views import CardView
from tests.screens.asked import NOW, answer, catalogue, grid, over_everything
from tests.screens.lint import NBSP, faults, millilitres, strings
from tests.screens.reckoned import canonical, emptied, floor_to, most_in_a_day, parameters, per_ml

MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


@cache
def made(name: str) -> tuple[Answer, CardView]:
    plan = grid()[name]
    return plan, card(plan, NOW, mixed_on="24 Nov 2026")


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


@over_everything
def test_every_string_of_a_card_is_safe(name: str) -> None:
    _, view = made(name)
    bad = [fault for text in strings(view) for fault in faults(text)]
    lines = [text for row in view.rows for text in (row.when, row.dose, row.setting)]
    bad += [fault for text in (*lines, view.maximum, view.totals) for fault in faults(text, dose=True)]
    assert not bad


@over_everything
def test_maximum_line_is_the_hard_limit_of_the_model(name: str) -> None:
    plan, view = made(name)
    # The step is what the pump can be set to, and the last rounding of the figure.
    expected = floor_to(most_in_a_day(plan), plan.doses.step_ml)
    assert float(millilitres(view.maximum)) == pytest.approx(expected, rel=1e-5, abs=1.01 * plan.doses.step_ml)
    assert float(millilitres(view.maximum)) <= most_in_a_day(plan) * (1 + 1e-5)
    assert millilitres(view.maximum) >= millilitres(view.totals), "the plan itself keeps to it"
    assert "all doses together" in view.maximum
    assert "in 24 hours" in view.maximum


@over_everything
def test_stop_rule_is_the_target_and_the_kit_in_the_keepers_unit(name: str) -> None:
    plan, view = made(name)
    q = plan.question
    above = q.target + canonical(q.parameter.name, parameters()[q.parameter.name]["kit_accuracy"])
    exact = from_canonical(above, q.parameter.kind, q.unit, q.system.water)
    said = re.search(rf"reads above ([\d.]+){NBSP}", view.stop)
    assert said
    digits = 5.1e-5 if q.unit.startswith("SG") else 5.1e-3
    assert float(said.group(1)) == pytest.approx(exact, rel=digits)
    unit = KINDS[q.parameter.kind].unit(q.unit)
    assert f"{said.group(1)}{NBSP}{unit.shown}." in view.stop
    assert "Never make up missed doses." in view.stop
    assert q.parameter.name in view.stop


def ends_of(plan: Answer) -> dict[str, datetime]:
    """Return what a card can end by: the next test that is due, the month, the empty jug."""
    q = plan.question
    last = q.now + timedelta(days=1) * plan.doses.count / plan.doses.per_day
    found = {
        "test": last + timedelta(days=parameters()[q.parameter.name]["stale_days"]),
        "month": q.now + timedelta(days=30),
    }
    empty = emptied(plan, 31.0)
    return found if empty is None else {**found, "jug": empty}


@over_everything
def test_valid_until_the_first_of_test_jug_and_thirty_days(name: str) -> None:
    plan, view = made(name)
    assert view.valid_until == f"Valid until {date_words(min(ends_of(plan).values()))}"


def test_each_of_the_three_ends_a_card_of_the_grid() -> None:
    first = {min(ends, key=ends.__getitem__) for ends in map(ends_of, grid().values())}
    assert first == {"test", "month", "jug"}


@over_everything
def test_refill_is_said_before_the_jug_is_empty(name: str) -> None:
    plan, view = made(name)
    empty = emptied(plan, 60.0)
    if empty is not None:
        assert date_words(empty) in view.refill
    else:
        assert "jug" in view.refill


@over_everything
def test_rows_are_one_dose_each_with_their_own_time_and_setting(name: str) -> None:
    plan, view = made(name)
    assert len(view.rows) == (2 if plan.doses.upkeep_ml > 0.0 else 1)
    for row, ml in zip(view.rows, (plan.doses.dose_ml, plan.doses.upkeep_ml), strict=False):
        assert row.dose == dose(ml)
        assert "mL" not in row.when, "dose and time are apart"
        assert not re.search(r"\d\s*[x×]", row.when)
        assert row.when.startswith("From ")
        assert "Pump runs" in row.setting
    assert f", {plan.doses.count} dose" in view.rows[0].when
    assert "×" not in view.totals
    day, total = view.totals.split(", ")
    assert millilitres(day) == Decimal(repr(plan.doses.dose_ml)) * plan.doses.per_day
    assert millilitres(total) == Decimal(repr(plan.doses.dose_ml)) * plan.doses.count


@over_everything
def test_no_dose_below_what_the_pump_gives_is_ordered(name: str) -> None:
    plan, view = made(name)
    smallest = plan.question.pump.smallest_ml or 0.0
    assert all(float(millilitres(row.dose)) >= smallest for row in view.rows)


@over_everything
def test_additive_is_named_in_full_and_never_by_its_formula_alone(name: str) -> None:
    plan, view = made(name)
    additive = plan.question.additive
    if not isinstance(additive, Dissolved):
        assert view.formula == ""
        assert "label" in view.additive
        assert "label" in view.strength
        return
    chemicals = [additive.chemical, *(part.chemical for part in additive.also)]
    assert view.additive == " and ".join(chemical.tall_man for chemical in chemicals)
    assert view.additive.casefold() == " and ".join(chemical.name for chemical in chemicals)
    assert re.sub(r"·(\d*)H2O", r"(H2O)\1", view.formula) == " and ".join(chemical.formula for chemical in chemicals)
    others = [text for text in strings(view) if text != view.formula]
    assert not any(view.formula in text for text in others)
    assert all(row.additive == view.additive for row in view.rows)


@over_everything
def test_strength_is_a_quantity_in_a_volume_with_its_date(name: str) -> None:
    plan, view = made(name)
    additive = plan.question.additive
    text = plain(view.strength)
    assert not re.search(r"\d:\d|strength x|\dx", text)
    if isinstance(additive, Dissolved):
        bags = [(additive.chemical.tall_man, additive.grams, additive.purity)]
        bags += [(bag.chemical.tall_man, bag.grams, bag.purity) for bag in additive.also]
        assert text.endswith("mixed 24 Nov 2026.")
        assert ("at 20 °C" in text) == additive.saturated
        first = "saturated," if additive.saturated else "dissolved"
        said = re.search(rf"{first} ((?:[\d.]+ g.*)) per 1 L", text)
        assert said
        parts = said.group(1).split(" and ")
        for part, (tall_man, grams, purity) in zip(parts, bags, strict=True):
            number = re.match(r"([\d.]+) g", part)
            assert number
            # Of limewater three digits are said, of what was weighed four.
            digits = 5.1e-3 if additive.saturated else 5.1e-4
            assert float(number.group(1)) == pytest.approx(grams / additive.made_up_l, rel=digits)
            assert (tall_man in part) == (len(bags) > 1), "a mix says which is which"
            if len(bags) > 1:
                assert (f"{100.0 * purity:g} % pure" in part) == (purity != 1.0)
        assert ("% pure" in text) == any(purity != 1.0 for _, _, purity in bags)
    else:
        assert re.search(r"by its label: [\d.]+ mL raise [\d.]+ L by [\d.]+ ", text)


def test_a_batch_without_a_date_says_where_to_look() -> None:
    assert "date mixed" in card(answer(), NOW).strength


@over_everything
def test_whole_jug_is_what_the_jug_holds(name: str) -> None:
    plan, view = made(name)
    additive = plan.question.additive
    if not isinstance(additive, Dissolved):
        assert view.whole_jug == ""
        return
    q = plan.question
    value = q.measured + additive.made_up_l * 1000.0 * per_ml(plan)
    assert plan.whole_jug == pytest.approx(value, rel=1e-5)
    assert "If the whole jug ran in" in view.whole_jug


@over_everything
def test_identity_block(name: str) -> None:
    plan, view = made(name)
    q = plan.question
    assert view.system == (q.system.name or "Unnamed system")
    assert plain(view.volume).startswith("Net volume ")
    assert "within" in view.volume
    assert plain(view.issued) == "Issued Wed 25 Nov 2026 09:00"
    assert "plan id" in view.replace
    assert q.parameter.name in view.title
    assert view.write_in >= 14
    assert view.emergency
    assert view.draft == ""
    chemical = q.additive.chemical if isinstance(q.additive, Dissolved) else None
    assert set(chemical.cautions if chemical else ()) <= set(view.cautions)
    for statement in chemical.statements if chemical else ():
        assert any(statement in caution for caution in view.cautions)


@over_everything
def test_what_must_be_kept_apart(name: str) -> None:
    plan, view = made(name)
    kept = plan.question.parameter.name in ("alkalinity", "calcium", "magnesium", "strontium")
    assert ("minutes" in view.separation) == kept
    if plan.question.parameter.name == "alkalinity":
        assert "calcium" in view.separation
    elif kept:
        assert "alkalinity" in view.separation


@pytest.mark.parametrize("words", ["NOT A PLAN", "changed since"])
def test_draft_words_are_passed_on(words: str) -> None:
    assert card(answer(), NOW, draft=words).draft == words


def test_volume_says_how_it_is_known() -> None:
    assert "measured by filling" in card(grid()["measured by filling"], NOW).volume
    assert "low end" in card(grid()["unknown volume"], NOW).volume
    nobody_said = plain(card(answer(), NOW).volume)
    assert nobody_said.startswith("Net volume 340 L, within 3 %. Reading 6.8 dKH, measured Wed 25 Nov 08:00")


def test_remarks_that_matter_at_the_stand_are_printed() -> None:
    assert any("moving" in r or "Friday" in r for r in card(grid()["with a reason"], NOW).remarks)
    assert any("One jug" in r for r in card(grid()["small jug"], NOW).remarks)
    assert any("range usually kept" in r for r in card(grid()["above the range"], NOW).remarks)
    assert any("calcium" in r for r in card(grid()["slaked lime"], NOW).remarks)


def test_names_of_look_alikes_differ_in_capitals() -> None:
    capitals = {}
    for chemical in catalogue().chemicals.values():
        runs = re.findall(r"[A-Z]{3,}", chemical.tall_man)
        assert len(runs) == 1, chemical.name
        capitals[chemical.name] = runs[0]
    for one, run in capitals.items():
        for other, other_run in capitals.items():
            salt, other_salt = one.split()[:2], other.split()[:2]
            if salt[0] == other_salt[0] and salt != other_salt:
                assert run != other_run, (one, other)


def when(text: str, now: datetime) -> datetime:
    """Read the time of the next test back from its line."""
    day, month, hour, minute = re.search(r"on \w{3} (\d+) (\w{3}) (\d\d):(\d\d)", plain(text)).groups()
    number = MONTHS.index(month) + 1
    year = now.year + (1 if number < now.month else 0)
    return datetime(year, number, int(day), int(hour), int(minute), tzinfo=now.tzinfo)


@pytest.mark.parametrize("zone", [UTC, ZoneInfo("Pacific/Auckland"), ZoneInfo("America/New_York")], ids=str)
@pytest.mark.parametrize("hour", range(0, 24, 3))
@pytest.mark.parametrize("rise", ["1.4", "0.9", "0.37", "0.11"])
def test_next_test_is_by_half_way_and_never_at_night(zone: tzinfo, hour: int, rise: str) -> None:
    now = NOW.replace(hour=hour)
    plan = answer({"now": now, "change.measured_at": now - timedelta(hours=1), "change.fastest_rise": f"{rise} dKH per day",
                   "change.reason": "trial"})  # fmt: skip
    local = now.astimezone(zone)
    due = when(card(plan, local).retest, local)
    half_way = now + timedelta(days=1) * plan.doses.count / plan.doses.per_day / 2
    stale = now - timedelta(hours=1) + timedelta(days=parameters()["alkalinity"]["stale_days"])
    assert local <= due <= half_way
    assert due <= stale
    # Whoever makes a plan at night is awake; everybody else is not asked to be.
    assert 7 <= due.hour < 22 or due == local


def test_next_test_is_not_moved_without_need() -> None:
    plan = answer()
    assert when(card(plan, NOW).retest, NOW) == datetime(2026, 11, 25, 21, 0, tzinfo=UTC), "half-way is 04:30 at night"
    assert when(card(plan, NOW.astimezone(ZoneInfo("Asia/Kathmandu"))).retest, NOW).hour == 10
