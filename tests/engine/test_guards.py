"""What stands at the edge of what can be asked: lists that are none, nothing to reckon with, plans shorter than a day."""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta
from statistics import NormalDist

import pytest

from evenwater.engine import consumption_log, foods, foods_intake, jug, jug_siphon, side_effects
from evenwater.engine.catalogue import ION_OF
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.jug import JugQuestion
from evenwater.engine.recovery_check import after_overdose
from evenwater.engine.student import quantile
from evenwater.engine.timetable_check import Told, look
from evenwater.engine.timetable_question import Quiet, TimedPump, TimetableQuestion
from tests.engine import recoveries
from tests.engine.asking import NOW, answered, known, worked
from tests.engine.foods import food, question
from tests.engine.test_intakes import READERS, example, put, reasons

NAN = math.nan
Row = tuple[float, ...]


@pytest.mark.parametrize(
    ("kind", "table", "code"),
    [
        ("exchange", "value", "missing"), ("jug", "pump", "missing"), ("upkeep", "item", "upkeep_nothing_kept"),
        ("timetable", "pump", "timetable_no_pumps"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("rows", ["much", []])
def test_a_list_that_is_none_has_no_rows(kind: str, table: str, code: str, rows: object) -> None:
    assert (code, table) in reasons(kind, put(example(kind), table, rows))


def test_levels_and_runs_that_are_no_list_are_none() -> None:
    read = READERS["jug"](put(example("jug"), "level", "much"))
    assert isinstance(read, JugQuestion)
    found = jug.solve(read)
    assert isinstance(found, Refused)
    assert ("no_level", "level") in [(r.code, r.path) for r in found.reasons]
    assert READERS["calibration"](put(example("calibration"), "run", "much")).runs == ()
    assert READERS["consumption"](put(example("consumption"), "reading", "much")).record.readings == ()


@pytest.mark.parametrize(("freedom", "share"), [(1, 0.05), (1, 0.5), (1, 0.95), (2, 0.1), (2, 0.9), (10**9, 0.95)])
def test_students_factor_is_exact_where_it_has_a_closed_form(freedom: int, share: float) -> None:
    """One degree: t = tan(pi p / 2). Two: t = p sqrt(2 / (1 - p^2)). Very many: the normal distribution's."""
    closed = {1: math.tan(math.pi * share / 2.0), 2: share * math.sqrt(2.0 / (1.0 - share**2))}
    wanted = closed.get(freedom, NormalDist().inv_cdf((1.0 + share) / 2.0))
    assert quantile(share, freedom) == pytest.approx(wanted, rel=1e-9)


def test_a_plan_shorter_than_a_day_rises_by_all_its_doses() -> None:
    plan = answered(worked(change__measured="8.2 dKH", change__daily_use=None))
    assert plan.doses.count < plan.doses.per_day
    assert plan.seen.highest_rise_in_24_hours == pytest.approx(plan.doses.total_ml * plan.per_ml)
    assert plan.seen.most_ml_in_24_hours == pytest.approx(plan.doses.total_ml)


def test_foods_into_an_exchange_that_floods_are_refused_as_the_exchange_is() -> None:
    # More comes in than goes out and evaporates.
    system = {"net_volume": "340 L", "evaporation": "4 L per day"}
    flooding = question(food(), system=system, exchange={"out": "1 L per day", "in": "6 L per day", "days": 56})
    found = foods.solve(flooding)
    assert isinstance(found, Refused)
    assert ("exchange_floods", "exchange.in") in [(r.code, r.path) for r in found.reasons]


def test_no_jug_is_too_large_where_nothing_is_raised() -> None:
    assert jug_siphon.largest_ml(()) is None


def jug_reasons(**changes: str) -> list[tuple[str, str]]:
    """Return code and field of all that is said against the example's jug of 5 L with some fields changed."""
    raw = example("jug")
    for path, text in changes.items():
        raw = put(raw, path.replace("__", "."), text)
    read = READERS["jug"](raw)
    assert isinstance(read, JugQuestion)
    found = jug.solve(read)
    return [(r.code, r.path) for r in (found.reasons if isinstance(found, Refused) else found.remarks)]


@pytest.mark.parametrize(("ml", "above"), [("5200 mL", False), ("5300 mL", True)])
def test_a_refill_may_be_a_twentieth_more_than_the_jug_is_said_to_hold(ml: str, above: bool) -> None:
    assert (("refill_above_full", "refill.1.added") in jug_reasons(refill__1__added=ml)) is above


@pytest.mark.parametrize(("ml", "above"), [("5270 mL", False), ("5280 mL", True)])
def test_a_level_may_be_off_by_its_accuracy_besides(ml: str, above: bool) -> None:
    """5 L and a twentieth, and the 25 mL that a level of this jug is read to."""
    assert (("level_above_full", "level.1.level") in jug_reasons(level__1__level=ml)) is above


def test_an_overdose_of_each_counted_ion_comes_back_from_moles() -> None:
    """One gram of each into 100 L: 10 mg/L times the ion's share of the salt's mass (conventional atomic weights)."""
    salts = {
        "potassium iodide": ("iodide", 126.904 / 166.003), "strontium chloride hexahydrate": ("strontium", 87.62 / 266.62),
        "potassium nitrate": ("nitrate", 62.005 / 101.103), "potassium dihydrogen phosphate": ("phosphate", 94.971 / 136.086),
        "calcium chloride dihydrate": ("calcium", 40.078 / 147.01), "magnesium chloride hexahydrate": ("magnesium", 24.305 / 203.30),
    }  # fmt: skip
    for chemical, (name, share) in salts.items():
        additive = {"chemical": chemical, "dissolved": "1 g", "made_up_to": "1 L"}
        now = known().parameters[name]
        raw = recoveries.worked(
            additive=additive, change__target=None, overdose__volume="1 L", system__net_volume="100 L"
        )
        raw["system"][name] = f"{now.range_kept[1]} {now.display_unit}"
        question = recoveries.read(raw)
        came = after_overdose(question, 100.0)[name] - question.before[name]
        assert came == pytest.approx(10.0 * share, rel=1e-3), name


def test_a_level_that_falls_on_its_own_leads_to_the_levels() -> None:
    """48 mL a day are dosed, half a litre a day is gone."""
    begin = datetime(2026, 11, 19, 8, tzinfo=UTC)
    levels = [{"at": begin + timedelta(days=day), "level": f"{4800 - 500 * day} mL"} for day in range(6)]
    raw = put(put(example("jug"), "level", levels), "refill", [])
    del raw["retest"]
    read = READERS["jug"](raw)
    found = jug.solve(read)
    assert isinstance(found, jug.JugAnswer), found
    assert ("siphon_possible", "level") in [(r.code, r.path) for r in found.remarks]


@pytest.mark.parametrize(
    ("readings", "doses", "exchanges", "expected"),
    [
        ([(0, 8.0, NAN), (1, 8.0, 0.1)], [], [], ("figure_unusable", "reading.1.value")),
        ([(0, 8.0, 0.1), (1, 8.0, 0.0)], [], [], ("figure_unusable", "reading.2.value")),
        ([(0, 8.0, 0.1), (1, 8.0, 0.1)], [(0.2, 1.0), (0.5, NAN)], [], ("figure_unusable", "dose.2.raises")),
        ([(0, 8.0, 0.1), (1, 8.0, 0.1)], [(3.0, 1.0)], [], ("entry_in_the_future", "dose.1.at")),
        ([(0, 8.0, 0.1), (1, 8.0, 0.1)], [], [(0.5, 1.1, 8.0)], ("figure_unusable", "exchange.1.share")),
        (
            [(0, 8.0, 0.1), (1, 8.0, 0.1)],
            [],
            [(0.2, 0.1, 8.0), (0.5, 0.1, NAN)],
            ("figure_unusable", "exchange.2.share"),
        ),
        ([(0, 8.0, 0.1), (1, 8.0, 0.1)], [], [(3.0, 0.1, 8.0)], ("entry_in_the_future", "exchange.1.at")),
    ],
)
def test_an_entry_that_cannot_be_counted_is_named_by_its_row(
    readings: list[Row], doses: list[Row], exchanges: list[Row], expected: tuple[str, str]
) -> None:
    """The record is looked at on the second day."""

    def at(day: float) -> datetime:
        return NOW + timedelta(days=day)

    record = Record(
        tuple(Reading(at(day), value, sd) for day, value, sd in readings),
        tuple(Dose(at(day), rise) for day, rise in doses),
        tuple(Exchange(at(day), share, value) for day, share, value in exchanges),
    )
    assert expected in [(r.code, r.path) for r in consumption_log.objections(record, at(2.0))]


def test_a_food_in_mg_per_kg_counts_the_water_of_its_system() -> None:
    """10 mg/kg of water of salinity 10 at 25 degC are 10.045 mg/L (EOS-80), of seawater they would be 10.23; here 5 mL to 100 L."""
    label = {"parameter": "calcium", "dose": "5 mL", "water": "100 L", "raises": "10 mg/kg"}
    row = {"name": "Mix", "per_day": "5 mL per day", "label": label}
    read = foods_intake.foods({"system": {"salinity": "10", "temperature": "25 degC"}, "food": [row]}, known())
    assert not isinstance(read, Unread), read
    assert read[0].per_ml("calcium") == pytest.approx(10.045 * 100.0 / 5.0, rel=2e-3)


@pytest.mark.parametrize(
    ("minute", "inside"), [(7, False), (8, True), (9, True), (19, True), (20, False), (1439, False)]
)
def test_a_dose_that_lasts_into_quiet_hours_is_in_them(minute: int, inside: bool) -> None:
    """2.2 mL at 1 mL per min run for 2 min 12 s: begun at 0:08 they end after 0:10."""
    pump = TimedPump("Soda", 2.2, 1.0, doses=1, fewest=1, most=1)
    question = TimetableQuestion((pump,), quiet=(Quiet(10, 20),))
    assert ("the hour of Soda" in look(question, [Told(minute, 0, 2.2, 0.0)]).faults) is inside


def test_signs_of_precipitation_lead_to_where_they_were_ticked() -> None:
    found = recoveries.answer(signs__cloudy=True)
    assert ("recovery_precipitation_seen", "signs") in [(r.code, r.path) for r in found.remarks]


@pytest.mark.parametrize(("said", "so"), [("yes", True), ("true", True), ("no", False), ("false", False), ("", None)])
def test_what_is_said_of_a_jug_may_be_said_in_words(said: str, so: bool | None) -> None:
    read = READERS["jug"](put(example("jug"), "setting.outlet_above_water", said))
    assert read.setting.outlet_above_water is so


@pytest.mark.parametrize(("share", "fits"), [("0 %", False), ("0.5 %", True), ("99 %", True), ("99.5 %", False)])
def test_a_change_that_an_exchange_may_equal_is_neither_none_nor_all(share: str, fits: bool) -> None:
    found = reasons("exchange", put(example("exchange"), "exchange", {"as_much_as": share}))
    assert (("out_of_range", "exchange.as_much_as") not in found) is fits


def test_what_a_stock_leaves_is_called_as_the_value_is() -> None:
    assert {name for name, *_ in side_effects._IONS.values()} >= ION_OF.keys()
