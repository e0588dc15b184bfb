"""What holds of any upkeep: masses and charges balance, uses are made good together, nothing is ever given beyond them.

Conservation laws; hazards H16 (missed doses are never summed), H18 (any 24 hours, not the calendar's), H27 (rounding down)
and H30 (whatever is asked is refused or answered).
"""

from __future__ import annotations

import json
import math
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from evenwater import headless_upkeep
from evenwater.engine.correction import Refused
from evenwater.engine.upkeep import Outstanding, UpkeepAnswer, UpkeepQuestion, solve
from evenwater.engine.upkeep_intake import upkeep as read_upkeep
from tests.engine.asking import NOW, known
from tests.engine.reckoning import SALTS
from tests.engine.upkeeps import JUGS, LITRES, MEQ_PER_DKH, SYSTEM, ask, item, jug, limewater, raw, read
from tests.property.test_side_effects import SOLUTES, mass, water_in

Raw = dict[str, Any]
# Ordinary uses per day from nothing much to a crowded tank, in the canonical unit.
MOST = {
    "alkalinity": 0.6, "calcium": 14.0, "magnesium": 3.0, "potassium": 3.0, "strontium": 0.1, "iodide": 0.005, "nitrate": 3.0,
    "phosphate": 0.05, "salinity": 0.2,
}  # fmt: skip
UNIT = {"alkalinity": "meq/L", "nitrate": "mg/L as NO3", "phosphate": "mg/L as PO4", "salinity": "ppt"}
GRAMS = {"sodium tetraborate decahydrate": 20.0, "potassium iodide": 0.1, "potassium dihydrogen phosphate": 1.0}
CHOICES = {
    name: [chemical for chemical in SALTS if name in SALTS[chemical].raises and chemical != "calcium hydroxide"]
    for name in JUGS
}


@st.composite
def questions(draw: st.DrawFn) -> Raw:
    """Return an upkeep of one to five values, as somebody would write it."""
    names = draw(st.lists(st.sampled_from(list(JUGS)), min_size=1, max_size=5, unique=True))
    items = []
    for name in names:
        use = MOST[name] * draw(st.floats(0.05, 1.0))
        if name in ("alkalinity", "calcium") and draw(st.integers(0, 4)) == 0:
            additive = limewater()
        else:
            chemical = draw(st.sampled_from(CHOICES[name]))
            additive = jug(chemical, round(GRAMS.get(chemical, 50.0) * draw(st.floats(0.2, 1.0)), 4))
        pump: Raw = {"flow": "200 mL/min", "doses_per_day": draw(st.sampled_from([4, 8, 12, 24, 25, 48, 96]))}
        step = draw(st.sampled_from(["0.000001 mL", "0.001 mL", "0.01 mL", None]))
        items.append(item(name, f"{use:.12f} {UNIT.get(name, 'mg/L')} per day", additive, **{**pump, "step": step}))
    tables: Raw = {}
    if draw(st.booleans()):
        tables["exchange"] = {"per_day": f"{draw(st.floats(0.1, 60.0)):.3f} L per day"}
    return raw(*items, **tables)


@st.composite
def plans(draw: st.DrawFn) -> UpkeepAnswer:
    """Return an upkeep that has a plan."""
    answer = ask(draw(questions()))
    assume(isinstance(answer, UpkeepAnswer))
    assert isinstance(answer, UpkeepAnswer)
    return answer


def given_moles(answer: UpkeepAnswer, ml: list[float]) -> dict[str, float]:
    """Return what so many millilitres of each additive bring, from the mole ratios of the chemicals [mmol per litre]."""
    out: dict[str, float] = {}
    for dose, each in zip(answer.doses, ml, strict=True):
        batch = dose.item.additive
        for portion in batch.portions:  # type: ignore[union-attr]
            mmol = portion.grams / mass(portion.chemical.formula) / batch.made_up_l * each / LITRES  # type: ignore[union-attr]
            for what, count in portion.chemical.carries:
                out[what] = out.get(what, 0.0) + mmol * count
    return out


BY_WORD = {name: short for name, (short, _, _) in SOLUTES.items()} | {"alkalinity": "alkalinity"}
CHARGE = {short: charge for short, _, charge in SOLUTES.values()} | {"alkalinity": -1}
FORM = {short: form for short, form, _ in SOLUTES.values()} | {"alkalinity": "HCO3"}
COUNTED = {short: counted for counted, _, _ in SOLUTES.values() for short in (counted,)}


def left_moles(answer: UpkeepAnswer) -> dict[str, float]:
    """Return what a day leaves [mmol and meq per litre], read off the answer's own changes."""
    out = {}
    for drift in answer.drifts:
        if drift.name in BY_WORD:
            short = BY_WORD[drift.name]
            out[short] = drift.gain / (1.0 if short == "alkalinity" else mass(COUNTED[short]))
    return out


def uses(answer: UpkeepAnswer) -> dict[str, float]:
    """Return the uses that were asked about [canonical unit per day]."""
    return {dose.item.parameter.name: dose.item.use or 0.0 for dose in answer.doses}


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans())
def test_the_joint_doses_make_good_every_use_exactly(answer: UpkeepAnswer) -> None:
    come = given_moles(answer, [dose.needed_ml_per_day for dose in answer.doses])
    for name, use in uses(answer).items():
        if name != "salinity":
            short = BY_WORD[name]
            brought = come.get(short, 0.0) * (1.0 if short == "alkalinity" else mass(COUNTED[short]))
            assert brought == pytest.approx(use, rel=1e-9)
    for dose in answer.doses:
        assert dose.needed_ml_per_day >= 0.0
        assert 0.0 <= dose.own_share <= 1.0 + 1e-9


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans())
def test_rounding_is_down_once_and_never_above_the_need(answer: UpkeepAnswer) -> None:
    for dose in answer.doses:
        single = dose.needed_ml_per_day / dose.per_day
        assert dose.dose_ml <= single * (1.0 + 1e-11)
        assert dose.dose_ml > single * (1.0 - 1e-11) - dose.step_ml
        assert abs(dose.dose_ml / dose.step_ml - round(dose.dose_ml / dose.step_ml)) < 1e-4
        assert dose.shortfall >= 0.0
    come = given_moles(answer, [dose.in_24_hours_ml for dose in answer.doses])
    for dose in answer.doses:
        name = dose.item.parameter.name
        if name != "salinity":
            short = BY_WORD[name]
            brought = come.get(short, 0.0) * (1.0 if short == "alkalinity" else mass(COUNTED[short]))
            assert dose.shortfall == pytest.approx(
                max(uses(answer)[name] - brought, 0.0), rel=1e-6, abs=1e-9 * uses(answer)[name]
            )


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans())
def test_every_gram_that_is_poured_in_is_somewhere(answer: UpkeepAnswer) -> None:
    ml = [dose.in_24_hours_ml for dose in answer.doses]
    come, left = given_moles(answer, ml), left_moles(answer)
    poured = water = 0.0
    for dose, each in zip(answer.doses, ml, strict=True):
        batch = dose.item.additive
        for portion in batch.portions:  # type: ignore[union-attr]
            grams = portion.grams / 1000.0 / batch.made_up_l * each  # type: ignore[union-attr]
            poured += grams
            water += grams / mass(portion.chemical.formula) * water_in(portion.chemical.name) * mass("H2O")
    # An equivalent of alkalinity is one of hydroxide, and carbon comes as its dioxide.
    forms = {**FORM, "alkalinity": "OH", "DIC": "CO2", "B": "B(OH)3"}
    dissolved = sum(moles * mass(forms[what]) for what, moles in come.items()) * LITRES / 1000.0
    assert dissolved + water == pytest.approx(poured, rel=1e-9)
    charges = [moles * CHARGE[what] for what, moles in come.items() if what != "DIC"]
    assert abs(math.fsum(charges)) <= 1e-9 * sum(map(abs, charges))
    # What is left is what came less what is used, solute by solute, and weighs what salinity rises by.
    for what, moles in come.items():
        if what != "DIC":
            used = moles - left.get(what, 0.0)
            assert used >= -1e-9 * moles or what == "alkalinity"
            if what in ("SO4", "B"):
                assert used == pytest.approx(0.0, abs=1e-9 * moles)
    salinity = next(drift.gain for drift in answer.drifts if drift.name == "salinity")
    weighed = math.fsum(moles * mass(FORM[what]) for what, moles in left.items())
    size = math.fsum(abs(moles) * mass(FORM[what]) for what, moles in left.items())
    assert salinity * 1000.0 * 1.0233360 == pytest.approx(weighed, rel=1e-5, abs=1e-5 * size + 1e-9)


@settings(max_examples=40, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans(), factor=st.sampled_from([0.25, 0.5, 2.0, 10.0]))
def test_so_many_times_the_water_needs_so_many_times_the_doses(answer: UpkeepAnswer, factor: float) -> None:
    q = answer.question
    # Rounded so finely that rounding decides nothing.
    pumps = [replace(i.pump, step_ml=1e-9, flow_ml_per_min=i.pump.flow_ml_per_min * factor) for i in q.items]
    items = tuple(replace(i, pump=pump) for i, pump in zip(q.items, pumps, strict=True))
    other = solve(replace(q, system=replace(q.system, volume_l=factor * q.system.volume_l), items=items))
    assume(all(dose.step_ml <= 1e-3 * dose.dose_ml for dose in answer.doses))
    assert isinstance(other, UpkeepAnswer)
    for one, two in zip(answer.doses, other.doses, strict=True):
        assert two.needed_ml_per_day == pytest.approx(factor * one.needed_ml_per_day, rel=1e-9)
    assert (other.pair.of_skeleton, other.pair.of_use) == (answer.pair.of_skeleton, answer.pair.of_use)


IN_OTHER_UNITS = {
    "alkalinity": [("dKH", MEQ_PER_DKH), ("mmol/L", 1.0), ("ppm as CaCO3", 2.0 / 100.086)],
    "nitrate": [("mg/L as N", 62.004 / 14.007)],
    "phosphate": [("mg/L as P", 94.97 / 30.973762)],
    "calcium": [("mg/kg", 1.0233360)],
}


@settings(max_examples=40, suppress_health_check=[HealthCheck.filter_too_much])
@given(question=questions(), pick=st.randoms(use_true_random=False))
def test_the_same_in_other_units_is_the_same(question: Raw, pick: Any) -> None:
    first = ask(question)
    other = json.loads(json.dumps(question))
    other["system"]["net_volume"] = f"{340.0 / 3.785411784:.12f} US gal"
    for each in other["item"]:
        if each["parameter"] in IN_OTHER_UNITS:
            unit, factor = pick.choice(IN_OTHER_UNITS[each["parameter"]])
            each["daily_use"] = f"{float(each['daily_use'].split()[0]) / factor:.12f} {unit} per day"
        if "dissolved" in each["additive"]:
            each["additive"]["dissolved"] = f"{float(each['additive']['dissolved'].split()[0]) / 453.59237:.14f} lb"
    second = ask(other)
    if not isinstance(first, UpkeepAnswer) or not isinstance(second, UpkeepAnswer):
        assert first == second
        return
    for one, two in zip(first.doses, second.doses, strict=True):
        # Atomic weights above are given to five digits.
        assert two.needed_ml_per_day == pytest.approx(one.needed_ml_per_day, rel=3e-5 / max(one.own_share, 1e-3))


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans(), tighter=st.floats(0.01, 0.99), which=st.integers(0, 4))
def test_a_tighter_limit_never_gives_more(answer: UpkeepAnswer, tighter: float, which: int) -> None:
    q = answer.question

    def pumps(**changes: Any) -> UpkeepQuestion:
        return replace(q, items=tuple(replace(i, pump=replace(i.pump, **changes)) for i in q.items))

    hard = tuple(
        replace(p, rise_hard=p.rise_hard * tighter, dose_rise_recommended=p.dose_rise_recommended * tighter)
        for p in q.others
    )
    in_day = sum(dose.in_24_hours_ml for dose in answer.doses) / 1000.0
    changed = [
        pumps(largest_share=answer.question.items[0].pump.largest_share * tighter * 0.1),
        pumps(smallest_ml=answer.doses[0].dose_ml * 2.0 * tighter),
        replace(q, others=hard),
        replace(q, system=replace(q.system, evaporation_l=2.0 * tighter * in_day)),
        replace(q, outstanding=tuple(Outstanding(i.parameter, tighter * (i.use or 0.0), 2.0) for i in q.items)),
    ][which]
    other = solve(changed)
    if isinstance(other, Refused):
        assert other.reasons
        return
    for one, two in zip(answer.doses, other.doses, strict=True):
        assert two.in_24_hours_ml <= one.in_24_hours_ml
    assert all(limit.share <= 1.0 + 1e-9 for limit in other.limits if not limit.code.startswith("solubility"))


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans(), gap_hours=st.integers(1, 14 * 24), start=st.floats(0.0, 1.0))
def test_H16_H18_no_24_hours_hold_more_than_a_day_of_doses_even_after_a_gap(
    answer: UpkeepAnswer, gap_hours: int, start: float
) -> None:
    for dose in answer.doses:
        # The pump stands still for the gap, then goes on with the next dose: nothing is summed up.
        hours = [n * 24.0 / dose.per_day for n in range(1, 40 * dose.per_day)]
        given_at = [at for at in hours if not 24.0 * start <= at < 24.0 * start + gap_hours]
        fullest, begin = 0, 0
        for end, at in enumerate(given_at):
            while at - given_at[begin] >= 24.0 - 1e-9:
                begin += 1
            fullest = max(fullest, end - begin + 1)
        assert fullest * dose.dose_ml <= dose.in_24_hours_ml + 1e-9
        assert dose.in_24_hours_ml <= dose.needed_ml_per_day * (1.0 + 1e-11)


@settings(max_examples=60, suppress_health_check=[HealthCheck.filter_too_much])
@given(answer=plans())
def test_a_year_with_exchange_lies_between_now_and_where_it_settles(answer: UpkeepAnswer) -> None:
    for drift in answer.drifts:
        if drift.exchanged is None or drift.steady is None:
            continue
        off = 0.0 if drift.start is None or drift.new_water is None else drift.start - drift.new_water
        ends = sorted((0.0, drift.steady - off))
        assert all(ends[0] - 1e-9 <= change <= ends[1] + 1e-9 for change in drift.exchanged)
        sizes = [abs(change) for change in drift.exchanged]
        assert sizes == sorted(sizes)


WILD = st.one_of(
    st.floats(),
    st.sampled_from([0.0, -0.0, math.nan, math.inf, -math.inf, 5e-324, -1.0, 1e-300, 1e-9, 1e9, 1.7e308]),
)
BASE = read(raw(
    item("alkalinity", measured="8 dKH"), item("calcium", measured="420 mg/L", smallest_dose="0.1 mL"), item("nitrate"),
    system={"evaporation": "4 L per day"}, exchange={"per_day": "3 L per day", "calcium": "400 mg/L"},
    planned=[{"parameter": "alkalinity", "rise_per_day": "0.3 dKH per day", "days_left": "3"}],
))  # fmt: skip
PLACES = [
    ("system", "volume_l"), ("system", "ph"), ("system", "evaporation_l"), ("system", "calcium"), ("water", "salinity"),
    ("water", "temperature_c"), ("item", "value"), ("item", "use"), ("pump", "flow_ml_per_min"), ("pump", "smallest_ml"),
    ("pump", "step_ml"), ("pump", "largest_share"), ("batch", "grams"), ("batch", "made_up_l"), ("batch", "purity"),
    ("", "exchange_fraction"), ("new", ""), ("planned", "rise"), ("planned", "days_left"),
]  # fmt: skip


def put(q: UpkeepQuestion, holder: str, field: str, value: float) -> UpkeepQuestion:
    """Return the question with one figure replaced, of the first item where there are several."""
    first, rest = q.items[0], q.items[1:]
    match holder:
        case "system":
            return replace(q, system=replace(q.system, **{field: value}))
        case "water":
            return replace(q, system=replace(q.system, water=replace(q.system.water, **{field: value})))
        case "item":
            return replace(q, items=(replace(first, **{field: value}), *rest))
        case "pump":
            return replace(q, items=(replace(first, pump=replace(first.pump, **{field: value})), *rest))
        case "batch":
            return replace(q, items=(replace(first, additive=replace(first.additive, **{field: value})), *rest))
        case "new":
            return replace(q, new_water=(("calcium", value),))
        case "planned":
            return replace(q, outstanding=(replace(q.outstanding[0], **{field: value}),))
    return replace(q, **{field: value})


def holds(question: UpkeepQuestion) -> None:
    result = solve(question)
    if isinstance(result, Refused):
        assert result.reasons
        return
    json.dumps(headless_upkeep.as_json(result), allow_nan=False)
    assert all(dose.dose_ml >= 0.0 for dose in result.doses)


@settings(max_examples=250, suppress_health_check=[HealthCheck.too_slow])
@given(changes=st.lists(st.tuples(st.sampled_from(PLACES), WILD), min_size=1, max_size=3))
def test_H30_any_figure_is_refused_or_answered(changes: list[tuple[tuple[str, str], float]]) -> None:
    question = BASE
    for (holder, field), value in changes:
        question = put(question, holder, field, value)
    holds(question)


@pytest.mark.parametrize(("holder", "field"), PLACES)
def test_H30_what_is_no_number_is_refused(holder: str, field: str) -> None:
    for value in (math.nan, math.inf, -math.inf):
        result = solve(put(BASE, holder, field, value))
        assert isinstance(result, Refused)
        assert {reason.code for reason in result.reasons} <= {"not_a_number", "out_of_range"}


TEXTS = st.one_of(
    st.text(max_size=8), st.builds("{} {}".format, st.floats().map(repr), st.sampled_from(["dKH per day", "mL", "L", "g", "%", ""])),
    st.none(), st.booleans(), st.integers(), st.floats(), st.just([]), st.just({}), st.sampled_from(["salinity", "nitrate"]),
)  # fmt: skip
PATHS = [
    "now", "system", "system.net_volume", "system.ph", "item", "item.0", "item.0.parameter", "item.0.measured", "item.0.daily_use",
    "item.0.additive", "item.0.additive.chemical", "item.0.additive.dissolved", "item.0.pump", "item.0.pump.flow",
    "item.0.pump.doses_per_day", "exchange", "exchange.per_day", "exchange.calcium", "planned", "planned.0", "planned.0.parameter",
    "planned.0.rise_per_day", "planned.0.days_left", "planned.0.doses_per_day",
]  # fmt: skip


@settings(max_examples=250, suppress_health_check=[HealthCheck.too_slow])
@given(changes=st.dictionaries(st.sampled_from(PATHS), TEXTS, min_size=1, max_size=3))
def test_H30_anything_in_any_field_is_refused_or_answered(changes: dict[str, Any]) -> None:
    question = raw(
        item("alkalinity"), item("calcium"), exchange={"per_day": "3 L per day"},
        planned=[{"parameter": "magnesium", "rise_per_day": "9 mg/L per day", "days_left": "2"}], system=dict(SYSTEM),
    )  # fmt: skip
    for path, value in changes.items():
        *steps, last = path.split(".")
        node: Any = question
        for step in steps:
            if isinstance(node, dict):
                node = node.get(step)
            elif isinstance(node, list):
                node = node[int(step)] if step.isdigit() and int(step) < len(node) else None
        if isinstance(node, dict):
            node[last] = value
        elif isinstance(node, list) and node and last.isdigit():
            node[int(last)] = value
    found = read_upkeep(question, known(), NOW)
    if isinstance(found, UpkeepQuestion):
        holds(found)
    else:
        assert found.reasons
