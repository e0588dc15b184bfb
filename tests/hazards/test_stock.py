"""H13: a stock that cannot dissolve in its coolest hour is blocked, and remarked on within a tenth of its limit.

Solubility and density: the rows of chemicals.toml, whose sources stand beside them, read and reckoned here anew.
"""

from __future__ import annotations

import tomllib
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine.correction import Answer
from tests.engine.asking import answered, ask, known, worked
from tests.engine.reckoning import BOUNDS, SALTS

ROWS: dict[str, Any] = tomllib.loads((resources() / "chemicals.toml").read_text(encoding="utf-8"))
RAISING = [name for name in ROWS if name in SALTS]


def _at(rows: list[list[float]], celsius: float) -> float:
    """Return the mass of dry salt in 100 g of solution, on the chord between the two nearest rows."""
    exact = [percent for at, percent in rows if at == celsius]
    if exact:
        return exact[0]
    below = max(row for row in rows if row[0] < celsius)
    above = min(row for row in rows if row[0] > celsius)
    return below[1] + (above[1] - below[1]) * (celsius - below[0]) / (above[0] - below[0])


def most_per_litre(name: str, celsius: float = 20.0) -> float:
    """Return the chemical as weighed that a litre holds at a temperature [g].

    The volume of the solution per mass is taken as linear in the mass fraction, from 1 L/kg to the density given.
    """
    entry, salt = ROWS[name], SALTS[name]
    percent = _at(entry["solubility"], celsius)
    at, density = entry["density"]
    litres_per_kg = 1.0 + (1.0 / density - 1.0) * percent / at
    dry_per_litre = 10.0 * percent / litres_per_kg
    return dry_per_litre * float(salt.molar / salt.dry)


def _raw(
    name: str, grams: float, litres: float = 2.0, purity: str = "100 %", coolest: str | None = None
) -> dict[str, Any]:
    parameter = next(iter(SALTS[name].raises))
    bounds = BOUNDS[parameter]
    low, high = (float(v) for v in bounds.targets)
    start = low + 0.4 * (high - low)
    # A tank and a pump that suit any strength: ten thousand litres.
    return worked(
        system__net_volume="10000 L",
        change__parameter=parameter, change__measured=f"{start:.5f} {bounds.unit}", change__daily_use=None,
        change__target=f"{start + 0.4 * float(bounds.recommended):.5f} {bounds.unit}", change__fastest_rise=None,
        additive__chemical=name, additive__dissolved=f"{grams:.6f} g", additive__made_up_to=f"{litres:.1f} L",
        additive__purity=purity, additive__temperature=coolest, pump__flow="90000 mL/min", pump__step="0.0001 mL",
    )  # fmt: skip


@pytest.mark.parametrize("name", RAISING)
def test_H13_above_the_solubility_is_blocked_and_below_is_not(name: str) -> None:
    most = most_per_litre(name)
    assert isinstance(ask(_raw(name, 2.0 * most * 0.9999)), Answer)
    assert ask(_raw(name, 2.0 * most * 1.0001)) == ("does_not_dissolve",)
    assert ask(_raw(name, 2.0 * most * 10.0)) == ("does_not_dissolve",)


@pytest.mark.parametrize("name", RAISING)
def test_H13_within_a_tenth_of_the_limit_is_remarked_on(name: str) -> None:
    most = most_per_litre(name)
    for share, near in ((0.5, False), (0.8999, False), (0.9001, True), (0.99, True)):
        remarks = {r.code for r in answered(_raw(name, 2.0 * most * share)).remarks}
        assert ("nearly_saturated" in remarks) == near, f"{share} of the limit"


@pytest.mark.parametrize("name", RAISING)
def test_H13_how_near_the_limit_is_stands_in_the_answer(name: str) -> None:
    most = most_per_litre(name)
    limit = next(item for item in answered(_raw(name, most)).limits if item.code == "solubility")
    assert limit.unit == "g/L"
    assert limit.value == pytest.approx(most / 2.0, rel=1e-6)
    assert limit.bound == pytest.approx(most, rel=1e-9)
    assert limit.share == pytest.approx(0.5, rel=1e-6)


@pytest.mark.parametrize("celsius", [10.0, 15.0, 28.0])
@pytest.mark.parametrize("name", RAISING)
def test_H13_the_coolest_hour_of_the_jug_decides(name: str, celsius: float) -> None:
    most, coolest = most_per_litre(name, celsius), f"{celsius} degC"
    assert ask(_raw(name, 2.0 * most * 1.0001, coolest=coolest)) == ("does_not_dissolve",)
    for share, near in ((0.8999, False), (0.9001, True), (0.9999, True)):
        plan = answered(_raw(name, 2.0 * most * share, coolest=coolest))
        assert ("nearly_saturated" in {r.code for r in plan.remarks}) == near, share
        limit = next(item for item in plan.limits if item.code == "solubility")
        assert limit.bound == pytest.approx(most, rel=1e-9)


def test_H13_a_cool_room_changes_the_verdict() -> None:
    """Soda ash: 214 g in a litre at 20 degC, 120 g at 10 degC."""
    raw = _raw("sodium carbonate anhydrous", 260.0)
    assert "nearly_saturated" not in {r.code for r in answered(raw).remarks}
    raw["additive"]["temperature"] = "50 degF"
    assert ask(raw) == ("does_not_dissolve",)
    # Within a tenth of the limit it is planned, with a remark to keep it warm.
    raw["additive"]["dissolved"] = "230 g"
    remark = next(r for r in answered(raw).remarks if r.code == "nearly_saturated")
    assert remark.params["better_warm"] is True
    assert remark.params["most"] == pytest.approx(most_per_litre("sodium carbonate anhydrous", 10.0), rel=1e-9)


def test_H13_lime_is_better_kept_cool() -> None:
    raw = _raw("calcium hydroxide", 2.9)
    remark = next(r for r in answered(raw).remarks if r.code == "nearly_saturated")
    assert remark.params["better_warm"] is False
    raw["additive"] |= {"dissolved": "3.2 g", "temperature": "10 degC"}
    assert isinstance(ask(raw), Answer)
    raw["additive"]["temperature"] = "25 degC"
    assert ask(raw) == ("does_not_dissolve",)


def test_H13_what_is_not_the_chemical_need_not_dissolve() -> None:
    most = most_per_litre("calcium chloride dihydrate")
    weighed = 2.0 * most * 1.2
    assert ask(_raw("calcium chloride dihydrate", weighed)) == ("does_not_dissolve",)
    assert isinstance(ask(_raw("calcium chloride dihydrate", weighed, purity="78 %")), Answer)


@pytest.mark.parametrize("name", ROWS)
def test_H13_every_chemical_has_rows_around_a_cool_room(name: str) -> None:
    temperatures = [at for at, _ in ROWS[name]["solubility"]]
    assert temperatures == sorted(set(temperatures))
    assert temperatures[0] <= 10.0
    assert temperatures[-1] >= 25.0
    assert all(0.0 < percent < 100.0 for _, percent in ROWS[name]["solubility"])
    chemical = known().chemicals[name]
    for at, percent in ROWS[name]["solubility"]:
        assert chemical.solubility_at(at) == percent
