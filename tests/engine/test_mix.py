"""Two chemicals in one jug: masses, strengths and solubility reckoned again by hand.

Sources: moles of magnesium and sulfate in a kilogram of seawater at salinity 35, Millero et al. 2008, Deep-Sea Res. I 55,
50, table 4; atomic weights of the hand reckoning. That the shares of a mix's solubility are added is common practice, no
source.
"""

from __future__ import annotations

import tomllib
from dataclasses import replace
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.assets import resources
from evenwater.engine import mix, recipe, stock, stock_intake
from evenwater.engine.catalogue import Chemical
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.recipe import StockAnswer, StockQuestion
from evenwater.engine.stock import Dissolved, Portion
from tests.engine.asking import answered, ask, known, worked
from tests.engine.reckoning import ATOMS, SALTS, mass

BALANCE = 0.0282352 / 0.0528171
CHLORIDE, SULFATE = "magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"
MG, SO4 = float(ATOMS["Mg"]), float(mass(S=1, O=4))
MOLAR = {name: float(SALTS[name].molar) for name in (CHLORIDE, SULFATE)}
CHEMICALS = known().chemicals


def asked(**tables: Any) -> StockAnswer:
    question = stock_intake.stock(tables, known())
    assert isinstance(question, StockQuestion), question
    result = recipe.solve(question)
    assert isinstance(result, StockAnswer), result
    return result


def refused(**tables: Any) -> list[tuple[str, str]]:
    question = stock_intake.stock(tables, known())
    if isinstance(question, StockQuestion):
        result = recipe.solve(question)
        assert isinstance(result, Refused), result
        return [(reason.code, reason.path) for reason in result.reasons]
    return [(reason.code, reason.path) for reason in question.reasons]


def jug(first: str = CHLORIDE, second: str = SULFATE, litres: str = "2 L", **more: Any) -> dict[str, Any]:
    purity = {"purity": more.pop("second_purity")} if "second_purity" in more else {}
    return {"chemical": first, "made_up_to": litres, "also": {"chemical": second, **purity}, **more}


def carried(answer: StockAnswer, name: str) -> float:
    return next(item.per_litre for item in answer.carries if item.name == name)


def batch_of(answer: StockAnswer) -> Dissolved:
    assert isinstance(answer.batch, Dissolved)
    return answer.batch


@settings(max_examples=60)
@given(
    per_ml=st.floats(0.5, 30.0),
    litres=st.floats(0.1, 50.0),
    pure=st.floats(0.5, 1.0),
    other_pure=st.floats(0.5, 1.0),
    turned=st.booleans(),
)
def test_two_magnesium_salts_keep_the_balance_of_seawater(
    per_ml: float, litres: float, pure: float, other_pure: float, turned: bool
) -> None:
    names = (SULFATE, CHLORIDE) if turned else (CHLORIDE, SULFATE)
    first, second = Portion(CHEMICALS[names[0]], 0.0, pure), Portion(CHEMICALS[names[1]], 0.0, other_pure)
    batch = mix.balanced(first, second, per_ml, litres)
    assert isinstance(batch, Dissolved)
    bags = {batch.chemical.name: (batch.grams, batch.purity)}
    bags |= {bag.chemical.name: (bag.grams, bag.purity) for bag in batch.also}
    assert list(bags) == list(names), "the first is the one that was named first"
    assert [bags[name][1] for name in names] == [pure, other_pure]
    moles = {name: grams * purity / MOLAR[name] for name, (grams, purity) in bags.items()}
    magnesium = moles[CHLORIDE] + moles[SULFATE]
    assert moles[SULFATE] / magnesium == pytest.approx(BALANCE, rel=1e-12)
    assert mix.sulfate_per_magnesium(batch) == pytest.approx(BALANCE, rel=1e-12)
    assert magnesium * MG == pytest.approx(per_ml * litres, rel=1e-12)
    assert batch.made_up_l == litres
    # What is carried, by the engine's own sums.
    assert stock.carried_per_ml(batch, "magnesium") == pytest.approx(per_ml, rel=1e-12)
    assert stock.moles_per_ml(batch, "SO4") / stock.moles_per_ml(batch, "Mg") == pytest.approx(BALANCE, rel=1e-12)
    assert stock.made_per_litre(batch) == pytest.approx(sum(g * p for g, p in bags.values()) / litres, rel=1e-12)


@pytest.mark.parametrize("turned", [False, True])
def test_masses_to_strength_to_masses(turned: bool) -> None:
    names = (SULFATE, CHLORIDE) if turned else (CHLORIDE, SULFATE)
    moles = {CHLORIDE: 1.0 - BALANCE, SULFATE: BALANCE}
    purities = {CHLORIDE: 0.98, SULFATE: 0.995}
    grams = {name: moles[name] * MOLAR[name] / purities[name] for name in names}
    pures = {name: f"{100.0 * purities[name]:.1f} %" for name in names}
    table = jug(*names, dissolved=f"{grams[names[0]]:.13f} g", purity=pures[names[0]], second_purity=pures[names[1]])
    table["also"]["dissolved"] = f"{grams[names[1]]:.13f} g"
    there = asked(additive=table)
    # A mole of magnesium in two litres.
    assert carried(there, "magnesium") == pytest.approx(1000.0 * MG / 2.0, rel=1e-9)
    assert carried(there, "sulfate") == pytest.approx(1000.0 * BALANCE * SO4 / 2.0, rel=1e-9)
    wanted = {"strength": f"{carried(there, 'magnesium'):.10f} mg/L"}
    back = asked(wanted=wanted, additive=jug(*names, purity=pures[names[0]], second_purity=pures[names[1]]))
    batch = batch_of(back)
    assert [part.chemical.name for part in batch.portions] == list(names)
    for part in batch.portions:
        assert part.grams == pytest.approx(grams[part.chemical.name], rel=1e-9)
        assert part.purity == pytest.approx(purities[part.chemical.name])
    # And said as a rise: a millilitre raises 100 L by a hundredth of what it carries.
    rise = {"dose": "1 mL", "water": "100 L", "raises": f"{carried(there, 'magnesium') / 1e5:.12f} mg/L"}
    assert batch_of(
        asked(wanted=rise, additive=jug(*names, purity=pures[names[0]], second_purity=pures[names[1]]))
    ).grams == (pytest.approx(batch.grams, rel=1e-9))


def test_a_mix_carries_the_sum_of_its_bags() -> None:
    table = {"chemical": "potassium nitrate", "dissolved": "20 g", "made_up_to": "2 L", "purity": "97 %",
             "also": {"chemical": "potassium chloride", "dissolved": "30 g", "purity": "99 %"}}  # fmt: skip
    answer = asked(additive=table)
    nitrate = 20.0 * 0.97 / float(SALTS["potassium nitrate"].molar)
    chloride = 30.0 * 0.99 / float(SALTS["potassium chloride"].molar)
    assert carried(answer, "potassium") == pytest.approx(
        (nitrate + chloride) * float(ATOMS["K"]) * 1000.0 / 2.0, rel=1e-9
    )
    assert carried(answer, "nitrate") == pytest.approx(nitrate * float(mass(N=1, O=3)) * 1000.0 / 2.0, rel=1e-9)
    assert carried(answer, "chloride") == pytest.approx(chloride * float(ATOMS["Cl"]) * 1000.0 / 2.0, rel=1e-9)
    assert [item.name for item in answer.carries].count("potassium") == 1


def test_a_correction_with_a_mix_doses_what_both_bags_carry() -> None:
    raw = worked(
        change__parameter="magnesium", change__measured="1200 mg/L", change__target="1300 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__chemical=CHLORIDE, additive__dissolved="150 g", additive__purity="98 %",
        additive__also={"chemical": SULFATE, "dissolved": "200 g"},
    )  # fmt: skip
    plan = answered(raw)
    mg = (150.0 * 0.98 / MOLAR[CHLORIDE] + 200.0 / MOLAR[SULFATE]) * MG
    assert plan.strength == pytest.approx(mg, rel=1e-9)
    assert plan.total_ml == pytest.approx(100.0 * 340.0 / mg, rel=1e-9)
    assert plan.whole_jug == pytest.approx(1200.0 + 1000.0 * mg / 340.0, rel=1e-9)
    # Each bag alone raises less, by exactly its part.
    alone = [answered({**raw, "additive": part}).per_ml for part in (
        {"chemical": CHLORIDE, "dissolved": "150 g", "made_up_to": "1 L", "purity": "98 %"},
        {"chemical": SULFATE, "dissolved": "200 g", "made_up_to": "1 L"},
    )]  # fmt: skip
    assert sum(alone) == pytest.approx(plan.per_ml, rel=1e-12)


def _most(name: str, celsius: float) -> float:
    """Return what a litre holds of a salt as weighed [g], from the rows of the data file read anew."""
    entry = tomllib.loads((resources() / "chemicals.toml").read_text(encoding="utf-8"))[name]
    rows = entry["solubility"]
    below = max(row for row in rows if row[0] <= celsius)
    above = min((row for row in rows if row[0] > celsius), default=below)
    percent = below[1] + (above[1] - below[1]) * (celsius - below[0]) / ((above[0] - below[0]) or 1.0)
    at, density = entry["density"]
    litres_per_kg = 1.0 + (1.0 / density - 1.0) * percent / at
    return 10.0 * percent / litres_per_kg * float(SALTS[name].molar / SALTS[name].dry)


@pytest.mark.parametrize("celsius", [5.0, 20.0, 27.0])
@pytest.mark.parametrize("share", [0.2, 0.5, 0.8])
def test_solubility_of_a_mix_adds_the_shares(share: float, celsius: float) -> None:
    most = {name: _most(name, celsius) for name in (CHLORIDE, SULFATE)}

    def made(whole: float) -> dict[str, Any]:
        grams = {CHLORIDE: share * whole * most[CHLORIDE] * 3.0, SULFATE: (1.0 - share) * whole * most[SULFATE] * 3.0}
        table = jug(litres="3 L", dissolved=f"{grams[CHLORIDE]:.9f} g")
        table["also"]["dissolved"] = f"{grams[SULFATE]:.9f} g"
        return {"temperature": f"{celsius} degC", "additive": table}

    assert refused(**made(1.0001)) == [("does_not_dissolve", "additive.dissolved")]
    full = asked(**made(0.9999))
    assert [reason.code for reason in full.remarks] == ["nearly_saturated"]
    half = asked(**made(0.5))
    assert half.remarks == ()
    # What a litre can hold of the two together, in this proportion.
    together = share * most[CHLORIDE] + (1.0 - share) * most[SULFATE]
    for answer in (full, half):
        assert answer.most_g_per_l == pytest.approx(together, rel=1e-9)
    assert [r.code for r in asked(**made(0.8999)).remarks] == []
    assert [r.code for r in asked(**made(0.9001)).remarks] == ["nearly_saturated"]


def test_a_wanted_mix_that_cannot_dissolve_is_refused() -> None:
    assert refused(wanted={"strength": "90000 mg/L"}, additive=jug()) == [("does_not_dissolve", "wanted")]
    assert carried(asked(wanted={"strength": "40000 mg/L"}, additive=jug()), "magnesium") == pytest.approx(
        40000.0, rel=1e-9
    )


@pytest.mark.parametrize(
    ("first", "second", "code"),
    [
        (CHLORIDE, "potassium chloride", ("no_balance", "additive.also.chemical")),
        (SULFATE, "sodium chloride", ("no_balance", "additive.also.chemical")),
        (CHLORIDE, CHLORIDE, ("no_balance", "additive.also.chemical")),
        (SULFATE, SULFATE, ("no_balance", "additive.also.chemical")),
        ("potassium chloride", SULFATE, ("does_not_raise", "additive.chemical")),
    ],
)
def test_what_has_no_balance_is_refused(first: str, second: str, code: tuple[str, str]) -> None:
    wanted = {"parameter": "magnesium", "strength": "10000 mg/L"}
    assert refused(wanted=wanted, additive=jug(first, second)) == [code]


def _salt(magnesium: float, sulfate: float) -> Chemical:
    """Return a magnesium salt that nobody sells, of one formula and whatever ions are wanted."""
    return replace(CHEMICALS[CHLORIDE], carries=(("Mg", magnesium), ("SO4", sulfate)))


def test_salts_with_more_magnesium_to_a_mole_are_balanced_too() -> None:
    first, second = Portion(_salt(2.0, 0.2), 0.0), Portion(_salt(3.0, 3.0), 0.0)
    batch = mix.balanced(first, second, 12.0, 4.0)
    assert isinstance(batch, Dissolved)
    one, other = (part.grams / MOLAR[CHLORIDE] for part in batch.portions)
    assert (0.2 * one + 3.0 * other) / (2.0 * one + 3.0 * other) == pytest.approx(BALANCE, rel=1e-12)
    assert (2.0 * one + 3.0 * other) * MG == pytest.approx(12.0 * 4.0, rel=1e-12)


@pytest.mark.parametrize(
    ("one", "other"),
    [((1.0, 0.1), (1.0, 0.3)), ((1.0, 0.7), (1.0, 0.9)), ((1.0, 0.3), (1.0, 0.3)), ((0.0, 1.0), (1.0, 0.0)), ((1.0, 0.0), (0.0, 1.0))],
)  # fmt: skip
def test_salts_on_one_side_of_the_balance_have_none(one: tuple[float, float], other: tuple[float, float]) -> None:
    for pair in ((one, other), (other, one)):
        first, second = (Portion(_salt(*ions), 0.0) for ions in pair)
        reason = mix.balanced(first, second, 12.0, 4.0)
        assert not isinstance(reason, Dissolved)
        assert (reason.code, reason.path) == ("no_balance", "additive.also.chemical")


def test_a_salt_that_has_the_balance_itself_needs_no_other() -> None:
    first, second = Portion(_salt(1.0, mix.SULFATE_PER_MAGNESIUM), 0.0), Portion(CHEMICALS[SULFATE], 0.0)
    for pair, alone in (((first, second), 0), ((second, first), 1)):
        batch = mix.balanced(*pair, 12.0, 4.0)
        assert isinstance(batch, Dissolved)
        assert batch.portions[alone].grams == pytest.approx(48.0 / MG * MOLAR[CHLORIDE], rel=1e-12)
        assert batch.portions[1 - alone].grams == pytest.approx(0.0, abs=1e-12)


def test_only_magnesium_is_balanced() -> None:
    table = jug("potassium nitrate", "potassium chloride")
    assert refused(wanted={"parameter": "nitrate", "strength": "10000 mg/L as NO3"}, additive=table) == [
        ("no_balance", "wanted.parameter")
    ]
    partner = {"chemical": "calcium chloride dihydrate", "dissolved": "147 g", "made_up_to": "1 L"}
    table = jug("sodium carbonate anhydrous", "sodium bicarbonate")
    assert refused(wanted={"partner": partner}, additive=table) == [("no_balance", "wanted.parameter")]


def test_a_mix_is_no_half_of_a_pair() -> None:
    mixed = Dissolved(CHEMICALS["calcium chloride dihydrate"], 147.0, 1.0, also=(Portion(CHEMICALS[CHLORIDE], 10.0),))
    found = recipe.matching(CHEMICALS["sodium carbonate anhydrous"], mixed)
    assert not isinstance(found, tuple)
    assert found.code == "no_pair"


def test_balance_of_a_batch_without_magnesium_is_not_known() -> None:
    assert mix.sulfate_per_magnesium(Dissolved(CHEMICALS["potassium chloride"], 10.0, 1.0)) is None
    assert mix.sulfate_per_magnesium(Dissolved(CHEMICALS[CHLORIDE], 10.0, 1.0)) == 0.0
    assert mix.sulfate_per_magnesium(Dissolved(CHEMICALS[SULFATE], 10.0, 1.0)) == 1.0


def test_words_of_a_mix_are_those_of_both() -> None:
    batch = Dissolved(
        CHEMICALS["potassium chloride"], 10.0, 1.0, also=(Portion(CHEMICALS["strontium chloride hexahydrate"], 1.0),)
    )
    assert batch.name == "potassium chloride and strontium chloride hexahydrate"
    assert batch.tall_man == "potassium CHLORide and strontium CHLORide hexahydrate"
    assert batch.signal_word == "Danger"
    assert "H318 causes serious eye damage" in batch.statements
    assert set(batch.cautions) == {
        *CHEMICALS["potassium chloride"].cautions,
        *CHEMICALS["strontium chloride hexahydrate"].cautions,
    }
    # Said once, although both say it.
    both = Dissolved(CHEMICALS[CHLORIDE], 1.0, 1.0, also=(Portion(CHEMICALS[SULFATE], 1.0),))
    assert both.cautions.count("Wear spectacles.") == 1
    assert both.signal_word == ""
    assert not both.restricted
    assert Dissolved(
        CHEMICALS["sodium chloride"], 1.0, 1.0, also=(Portion(CHEMICALS["sodium hydroxide"], 1.0),)
    ).restricted
    warned = Dissolved(
        CHEMICALS["sodium bicarbonate"], 1.0, 1.0, also=(Portion(CHEMICALS["sodium carbonate anhydrous"], 1.0),)
    )
    assert warned.signal_word == "Warning"


def test_purity_of_the_second_bag_counts() -> None:
    def rise(purity: str) -> float:
        also = {"chemical": "sodium bicarbonate", "dissolved": "20 g", "purity": purity}
        plan = ask(worked(additive__also=also))
        assert isinstance(plan, Answer), plan
        return plan.strength

    soda = 2.0 * 106.0 / float(SALTS["sodium carbonate anhydrous"].molar)
    bicarbonate = 20.0 / float(SALTS["sodium bicarbonate"].molar)
    assert rise("100 %") == pytest.approx(soda + bicarbonate, rel=1e-9)
    assert rise("50 %") == pytest.approx(soda + 0.5 * bicarbonate, rel=1e-9)


@pytest.mark.parametrize(
    ("also", "code", "path"),
    [
        ({"chemical": "moon dust", "dissolved": "1 g"}, "unknown_chemical", "additive.also.chemical"),
        ({"dissolved": "1 g"}, "missing", "additive.also.chemical"),
        ({"chemical": SULFATE}, "missing", "additive.also.dissolved"),
        ({"chemical": SULFATE, "dissolved": "1"}, "unit_missing", "additive.also.dissolved"),
        ({"chemical": SULFATE, "dissolved": "1 g", "purity": "0 %"}, "out_of_range", "additive.also.purity"),
        ({"chemical": SULFATE, "dissolved": "1 g", "purity": "101 %"}, "out_of_range", "additive.also.purity"),
    ],
)
def test_second_chemical_that_cannot_be_taken(also: dict[str, str], code: str, path: str) -> None:
    table = {"chemical": CHLORIDE, "dissolved": "10 g", "made_up_to": "1 L", "also": also}
    assert refused(additive=table) == [(code, path)]


def test_in_a_jug_meant_for_salinity_every_salt_counts() -> None:
    # Both are free of water, so what is weighed is what salinity counts: 133.588 g in 1302.4 mL.
    other = Portion(CHEMICALS["potassium chloride"], 55.89, 1.0)
    two = Dissolved(CHEMICALS["sodium chloride"], 77.698, 1.3024, also=(other,))
    one = replace(two, also=())
    per_ml = [stock.strength(batch, "salinity", "salinity") for batch in (one, two)]
    assert per_ml[1] / per_ml[0] == pytest.approx(133.588 / 77.698, rel=1e-12)
    # Potassium alone is a jug for potassium, whatever it does to salinity.
    alone = Dissolved(CHEMICALS["potassium chloride"], 55.89, 1.3024)
    assert stock.strength(alone, "salinity", "salinity") == 0.0
