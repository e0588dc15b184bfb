"""H1, H2, H3 and the table of mix-ups: the wrong scale is blocked, asked about, or cannot be said at all.

Limits and plausible ranges: common practice, no source. Sizes of mix-ups: CIAAW 2021 atomic weights and legal
definitions.
"""

from __future__ import annotations

import re

import pytest

from evenwater.engine import correction, fields
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import to_canonical
from evenwater.engine.reader import Field, Ok, Wrong, read
from evenwater.engine.units import KINDS
from evenwater.screens.answer import view
from evenwater.screens.answer_json import answered as as_json
from tests.engine.asking import NOW, answered, ask, known, worked
from tests.engine.asking import read as question_of
from tests.engine.reckoning import ATOMS, CA_PER_MEQ, DEGREE, FACTORS, NO3, PO4, SALTS, WATER, canonical, mass, written

ALKALINITY = ("dKH", "meq/L", "mmol/L", "ppm as CaCO3")
# 7.0 to 11.0 dKH, the range usually kept.
ORDINARY = [f"{tenths / 10} dKH" for tenths in range(70, 111)]
# One equivalent of alkalinity is one mole of it, so these two say the same.
PAIRS = [(a, b) for a in ALKALINITY for b in ALKALINITY if a != b and {a, b} != {"meq/L", "mmol/L"}]
BLOCKED = {"implausible", "out_of_range", "two_readings", "target_outside"}


def _in_wrong_unit(reading: str, true_unit: str, typed_unit: str) -> str:
    """Return the figure that stands on the kit in its own unit, with another unit written after it."""
    number = float(canonical(reading) / FACTORS[true_unit])
    return f"{number:.4g} {typed_unit}"


@pytest.mark.parametrize(("true_unit", "typed_unit"), PAIRS)
def test_H1_every_ordinary_reading_in_a_wrong_unit_is_blocked(true_unit: str, typed_unit: str) -> None:
    for reading in ORDINARY:
        typed = _in_wrong_unit(reading, true_unit, typed_unit)
        result = ask(worked(change__measured=typed, change__target="11.5 dKH"))
        assert isinstance(result, tuple), f"{reading} read as {typed} was answered"
        assert set(result) & BLOCKED, f"{typed}: {result}"


@pytest.mark.parametrize(("true_unit", "typed_unit"), PAIRS)
def test_H1_every_ordinary_target_in_a_wrong_unit_is_blocked(true_unit: str, typed_unit: str) -> None:
    for target in ORDINARY:
        typed = _in_wrong_unit(target, true_unit, typed_unit)
        result = ask(worked(change__measured="6.9 dKH", change__target=typed))
        assert isinstance(result, tuple), f"{target} as {typed} was answered"
        assert set(result) & BLOCKED, f"{typed}: {result}"


@pytest.mark.parametrize("reading", ORDINARY)
def test_H1_parts_per_million_typed_as_degrees_are_offered_back(reading: str) -> None:
    ppm = float(canonical(reading) / FACTORS["ppm as CaCO3"])
    result = correction.solve(question_of(worked(change__measured=f"{ppm:.1f} dKH")))
    assert isinstance(result, Refused)
    (reason,) = (r for r in result.reasons if r.code == "implausible")
    offered = {unit: value for _, unit, value in reason.params["instead"]}  # type: ignore[attr-defined]
    assert set(offered) == {"ppm as CaCO3"}
    assert offered["ppm as CaCO3"] == pytest.approx(float(canonical(f"{ppm:.1f} ppm as CaCO3")), rel=1e-9)


def _all_fields() -> list[Field]:
    plain = [value for value in vars(fields).values() if isinstance(value, Field)]
    for p in known().parameters.values():
        plain += [
            fields.concentration("change.measured", p),
            fields.rise("change.daily_use", p),
            fields.label_raises(p),
        ]
    return plain


TIME = re.compile(r"\b(s|sec|second|min|minute|h|hr|hour|day|d|week)\b")


def test_H2_no_field_takes_a_rate_in_two_time_bases() -> None:
    # How long a run or a head lasts is a length of time, not a rate.
    taken = [field for field in _all_fields() if field.kind != "time"]
    assert len(taken) > 35
    for field in taken:
        bases = {tuple(sorted(set(TIME.findall(unit.definition)))) for unit in field.units.units}
        assert len(bases) == 1, f"{field.path} mixes {bases}"
    rates = {field.kind: next(iter(TIME.findall(field.units.canonical.definition)), "") for field in taken}
    assert {base for base in rates.values() if base} == {"day", "minute"}
    # Rises and uses are per day, the pump's flow is per minute; nothing is entered per hour.
    assert [kind for kind, base in rates.items() if base == "minute"] == ["flow"]


@pytest.mark.parametrize("tail", [" per hour", "/h", " per h", "/hour", " per week", "/min", " per minute", ""])
def test_H2_a_use_in_another_time_base_is_refused(tail: str) -> None:
    field = fields.rise("change.daily_use", known().parameters["alkalinity"])
    assert isinstance(read(f"0.9 dKH{tail}", field), Wrong)
    assert isinstance(read("0.9 dKH per day", field), Ok)
    assert isinstance(read("0.9 dKH/day", field), Ok)


@pytest.mark.parametrize("text", ["24 mL/h", "24 mL per hour", "24 mL/day", "24 L/min", "24 mL", "24 mL/s"])
def test_H2_a_flow_in_another_time_base_is_refused(text: str) -> None:
    assert isinstance(read(text, fields.FLOW), Wrong)


def test_H2_one_headline_rate() -> None:
    answer = answered(worked())
    shown = view(answer, NOW)
    assert shown.figure_unit == "mL per hour"
    # What else is said of a day is an amount within 24 hours, never a rate that could be set by mistake.
    rates = re.findall(r"mL(?: per |/)(\w+)", " ".join([shown.figure_unit, shown.second, shown.third, *shown.remarks]))
    assert set(rates) == {"hour"}

    def units(node: object) -> set[str]:
        if isinstance(node, dict):
            own = {str(node["unit"])} if "unit" in node else set()
            return own.union(*(units(v) for v in node.values()))
        return set().union(*(units(v) for v in node)) if isinstance(node, list) else set()

    assert {u for u in units(as_json(answer)) if u.startswith(("mL/", "mL per"))} == {"mL/h"}


BARE = ["gal", "Gal", "GAL", "gal.", "gals", "gallon", "gallons", "Gallon", "GALLONS", "gal US", "g", "us", "imp"]


@pytest.mark.parametrize("unit", BARE)
def test_H3_a_bare_gallon_is_refused(unit: str) -> None:
    result = read(f"90 {unit}", fields.NET_VOLUME)
    assert isinstance(result, Wrong)
    if unit.casefold().startswith("gal") and unit != "gal US":
        assert result.reason.code == "bare_gallon"
        assert {"US gal", "imperial gal"} <= set(result.reason.params["choices"])  # type: ignore[call-overload]


def test_H3_each_gallon_by_its_full_name_is_its_own() -> None:
    litres = {}
    for unit in ("US gal", "imperial gal", "US gallons", "imperial gallon", "us gal", "Imperial Gal"):
        result = read(f"90 {unit}", fields.NET_VOLUME)
        assert isinstance(result, Ok), unit
        litres[unit] = to_canonical(float(result.entered.number), "volume", result.entered.unit)
    for unit, volume in litres.items():
        exact = 90 * 3.785411784 if unit.lower().startswith("us") else 90 * 4.54609
        assert volume == pytest.approx(exact, rel=1e-12), unit
    assert not any(u.casefold() in {"gal", "gallon"} for kind in KINDS.values() for unit in kind.units
                   for u in (unit.id, unit.shown, *unit.spellings))  # fmt: skip


def _per_gram(chemical: str, parameter: str) -> float:
    salt = SALTS[chemical]
    return float(salt.raises[parameter] / salt.molar)


MGCL2, MGSO4, SRCL2 = mass(Mg=1, Cl=2), mass(Mg=1, S=1, O=4), mass(Sr=1, Cl=2)
# Mix-up: its printed size, and the same reckoned here.
SIZES = {
    "hour for day": (24.0, 24.0),
    "ppm as CaCO3 for dKH": (17.85, float(DEGREE / FACTORS["ppm as CaCO3"])),
    "dKH for meq per L": (2.80, float(1 / DEGREE)),
    "calcium as CaCO3": (2.50, float(mass(Ca=1, C=1, O=3) / ATOMS["Ca"])),
    "NO3 for N": (4.43, float(NO3 / ATOMS["N"])),
    "PO4 for P": (3.07, float(PO4 / ATOMS["P"])),
    "MgCl2 hydrate": (2.14, float((MGCL2 + 6 * WATER) / MGCL2)),
    "MgSO4 hydrate": (2.05, float((MGSO4 + 7 * WATER) / MGSO4)),
    "SrCl2 hydrate": (1.68, float((SRCL2 + 6 * WATER) / SRCL2)),
    "carbonate for bicarbonate": (
        1.59, _per_gram("sodium carbonate anhydrous", "alkalinity") / _per_gram("sodium bicarbonate", "alkalinity"),
    ),
    "CaCl2 hydrate": (
        1.32, _per_gram("calcium chloride anhydrous", "calcium") / _per_gram("calcium chloride dihydrate", "calcium"),
    ),
    "KI for I": (1.31, float(mass(K=1, I=1) / ATOMS["I"])),
    "gallon": (1.20, float(FACTORS["imperial gal"] / FACTORS["US gal"])),
}  # fmt: skip
# What cannot be said: the text, and the field it would be typed into.
UNSAYABLE = {
    "hour for day": ("0.9 dKH per hour", fields.rise("x", known().parameters["alkalinity"])),
    "ppm as CaCO3 for dKH": ("150 ppm", fields.concentration("x", known().parameters["alkalinity"])),
    "dKH for meq per L": ("8.4 KH", fields.concentration("x", known().parameters["alkalinity"])),
    "calcium as CaCO3": ("1050 mg/L as CaCO3", fields.concentration("x", known().parameters["calcium"])),
    "NO3 for N": ("5 mg/L", fields.concentration("x", known().parameters["nitrate"])),
    "PO4 for P": ("0.05 ppm", fields.concentration("x", known().parameters["phosphate"])),
    "gallon": ("90 gal", fields.NET_VOLUME),
}
# Salts that are refused by a bare name.
BARE_SALTS = {
    "MgCl2 hydrate": "magnesium chloride",
    "MgSO4 hydrate": "magnesium sulfate",
    "SrCl2 hydrate": "strontium chloride",
    "carbonate for bicarbonate": "sodium carbonate",
    "CaCl2 hydrate": "calcium chloride",
}


@pytest.mark.parametrize("mix_up", SIZES)
def test_mixed_factors_are_as_large_as_the_table_says(mix_up: str) -> None:
    printed, reckoned = SIZES[mix_up]
    assert reckoned == pytest.approx(printed, abs=0.006)


@pytest.mark.parametrize("mix_up", SIZES)
def test_mixed_factors_are_designed_out(mix_up: str) -> None:
    """Every mix-up of the table, caught by a limit or not, is refused for want of a word, or has no ambiguous word."""
    if mix_up in UNSAYABLE:
        text, field = UNSAYABLE[mix_up]
        assert isinstance(read(text, field), Wrong)
    elif mix_up in BARE_SALTS:
        assert "which_hydrate" in ask(worked(additive__chemical=BARE_SALTS[mix_up]))
    else:
        # A weighed salt is named as the salt; "iodide" alone is not a chemical on the list.
        assert "unknown_chemical" in ask(worked(additive__chemical="iodide"))


def test_mixed_factors_below_two_pass_every_limit() -> None:
    """The reason for closed lists: a plan with the wrong hydrate or gallon is answered, as no limit can see it."""
    base = answered(worked(additive__dissolved="60 g"))
    wrong = {
        "gallon": worked(additive__dissolved="60 g", system__net_volume=written(340 * FACTORS["imperial gal"] / FACTORS["US gal"], "L")),
        "carbonate for bicarbonate": worked(additive__chemical="sodium bicarbonate", additive__dissolved="60 g"),
    }  # fmt: skip
    for mix_up, raw in wrong.items():
        plan = answered(raw)
        assert plan.total_ml / base.total_ml == pytest.approx(SIZES[mix_up][1], rel=1e-6)
        assert plan.set_by == base.set_by == "daily_rise"


@pytest.mark.parametrize("factor", [10.0, 100.0, 0.1])
def test_mixed_factors_of_a_decimal_slip_are_blocked(factor: float) -> None:
    for reading in ("6.8", "7.5", "8.2", "9.9"):
        slipped = f"{float(reading) * factor:g} dKH"
        result = ask(worked(change__measured=slipped, change__target="10.5 dKH"))
        assert isinstance(result, tuple), slipped
        assert set(result) & BLOCKED
    for target in ("7.5", "8.4", "11"):
        result = ask(worked(change__target=f"{float(target) * factor:g} dKH"))
        assert isinstance(result, tuple), target
        assert set(result) & BLOCKED


def test_mixed_factors_of_calcium_and_alkalinity_are_told_apart_by_their_unit() -> None:
    assert float(CA_PER_MEQ) == pytest.approx(20.04, abs=0.005)
    for name in ("calcium", "alkalinity"):
        other = "mg/L" if name == "alkalinity" else "dKH"
        field = fields.concentration("x", known().parameters[name])
        assert isinstance(read(f"8 {other}", field), Wrong)
