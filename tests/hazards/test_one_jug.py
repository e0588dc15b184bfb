"""H20: what falls out is never in one jug. And H11 for the second chemical of a mix.

Solubility rules: any handbook of general chemistry, from memory. Carbonates, phosphates and borates of calcium,
magnesium and strontium fall out, and so do their hydroxides when a strong base meets their salts; of the sulfates those
of calcium and strontium. Everything of sodium and potassium stays in solution, and so do chlorides, nitrates and iodides.
"""

from __future__ import annotations

import itertools
from typing import Any

import pytest

from evenwater.engine import intake, judge, mix, stock_intake
from evenwater.engine.correction import Answer
from evenwater.engine.stock import Dissolved, Portion
from tests.engine.asking import NOW, ask, known, worked

# What each chemical of the file gives off in water; written out, so that a new one must be thought about.
IONS: dict[str, set[str]] = {
    "sodium carbonate anhydrous": {"Na", "carbonate"},
    "sodium carbonate monohydrate": {"Na", "carbonate"},
    "sodium carbonate decahydrate": {"Na", "carbonate"},
    "sodium bicarbonate": {"Na", "carbonate"},
    "sodium hydroxide": {"Na", "hydroxide"},
    "calcium hydroxide": {"Ca", "hydroxide"},
    "calcium chloride anhydrous": {"Ca", "chloride"},
    "calcium chloride dihydrate": {"Ca", "chloride"},
    "calcium chloride hexahydrate": {"Ca", "chloride"},
    "magnesium chloride hexahydrate": {"Mg", "chloride"},
    "magnesium sulfate heptahydrate": {"Mg", "sulfate"},
    "potassium chloride": {"K", "chloride"},
    "strontium chloride hexahydrate": {"Sr", "chloride"},
    "potassium iodide": {"K", "iodide"},
    "sodium nitrate": {"Na", "nitrate"},
    "potassium nitrate": {"K", "nitrate"},
    "potassium dihydrogen phosphate": {"K", "phosphate"},
    "sodium chloride": {"Na", "chloride"},
    "boric acid": {"boric acid"},
    "sodium tetraborate decahydrate": {"Na", "borate"},
}
FALLS_OUT = {
    "carbonate": {"Ca", "Mg", "Sr"}, "phosphate": {"Ca", "Mg", "Sr"}, "borate": {"Ca", "Mg", "Sr"},
    "hydroxide": {"Ca", "Mg", "Sr"}, "sulfate": {"Ca", "Sr"},
}  # fmt: skip
PAIRS = list(itertools.combinations(IONS, 2))


def clash(one: str, other: str) -> bool:
    """Return whether two chemicals fall out with each other, by the rules above."""
    both = [IONS[one] | ({"borate"} if _made_borate(one, other) else set()), IONS[other]]
    both[1] = both[1] | ({"borate"} if _made_borate(other, one) else set())
    return any(
        anion in first and second & metals
        for first, second in itertools.permutations(both, 2)
        for anion, metals in FALLS_OUT.items()
    )


def _made_borate(acid: str, base: str) -> bool:
    """Boric acid becomes borate in a strong base."""
    return "boric acid" in IONS[acid] and "hydroxide" in IONS[base]


def together(one: str, other: str) -> Dissolved:
    chemicals = known().chemicals
    return Dissolved(chemicals[one], 0.1, 10.0, also=(Portion(chemicals[other], 0.1),))


def test_H20_every_chemical_of_the_file_is_in_the_list() -> None:
    assert set(IONS) == set(known().chemicals)
    assert sum(clash(*pair) for pair in PAIRS) >= 50


@pytest.mark.parametrize("one", IONS)
def test_H20_what_falls_out_is_refused_and_nothing_else(one: str) -> None:
    for other in IONS:
        if other == one:
            continue
        for first, second in ((one, other), (other, one)):
            batch = together(first, second)
            reason = mix.incompatible(batch, "additive.also.chemical")
            assert (reason is not None) == clash(first, second), f"{first} with {second}"
            if reason is not None:
                assert reason.code == "never_in_one_jug"
                assert reason.path == "additive.also.chemical"
                assert {reason.params["first"], reason.params["second"]} == {first, second}
                # It is said before anything about solubility.
                assert [r.code for r in judge.undissolved(batch, "additive.dissolved")] == ["never_in_one_jug"]
                assert [r.path for r in judge.undissolved(batch, "additive.dissolved")] == ["additive.also.chemical"]


def test_H20_one_chemical_alone_does_not_fall_out_with_itself() -> None:
    for chemical in known().chemicals.values():
        assert mix.incompatible(Dissolved(chemical, 0.1, 10.0), "additive.also.chemical") is None


def _also(chemical: str, dissolved: str = "1 g", **fields: str) -> dict[str, Any]:
    return {"chemical": chemical, "dissolved": dissolved, **fields}


CARBONATES = [name for name, ions in IONS.items() if "carbonate" in ions]
CALCIUM = [name for name, ions in IONS.items() if "Ca" in ions]


@pytest.mark.parametrize("carbonate", CARBONATES)
@pytest.mark.parametrize("calcium", CALCIUM)
def test_H20_calcium_and_carbonate_never_in_one_jug(carbonate: str, calcium: str) -> None:
    assert ask(worked(additive__chemical=carbonate, additive__also=_also(calcium))) == ("never_in_one_jug",)
    assert ask(
        worked(additive__chemical=carbonate, additive__dissolved="1 g", additive__also=_also(calcium, "500 g"))
    ) == ("never_in_one_jug",)


@pytest.mark.parametrize("calcium", CALCIUM)
def test_H20_gypsum_falls_out_of_calcium_and_magnesium_sulfate(calcium: str) -> None:
    sulfate, chloride = "magnesium sulfate heptahydrate", "magnesium chloride hexahydrate"
    for raw in (
        _magnesium(additive__chemical=sulfate, additive__also=_also(calcium)),
        _magnesium(additive__chemical=chloride, additive__also=_also(calcium)),
    ):
        refused = ask(raw) == ("never_in_one_jug",)
        # With the chloride of magnesium only lime falls out, as magnesium hydroxide.
        assert refused == (raw["additive"]["chemical"] == sulfate or calcium == "calcium hydroxide")


def _magnesium(**changes: Any) -> dict[str, Any]:
    return worked(
        change__parameter="magnesium", change__measured="1250 mg/L", change__target="1300 mg/L", change__daily_use=None,
        change__fastest_rise=None, additive__dissolved="100 g", **changes,
    )  # fmt: skip


def test_H20_a_mix_that_stays_in_solution_is_planned() -> None:
    raw = worked(additive__also=_also("potassium chloride", "10 g"))
    assert isinstance(ask(raw), Answer)
    # Chalk falls out with calcium, whatever is said of solubility; without it the same jug is fine.
    assert ask(worked(additive__also=_also("sodium bicarbonate", "40 g"))) != ("never_in_one_jug",)


@pytest.mark.parametrize(
    ("bare", "hydrates"), [("calcium chloride", 3), ("sodium carbonate", 3), ("Magnesium Sulfate", 1)]
)
def test_H11_a_bare_second_chemical_is_asked_about(bare: str, hydrates: int) -> None:
    question = intake.correction(worked(additive__also=_also(bare)), known(), NOW)
    assert isinstance(question, intake.Unread)
    (reason,) = question.reasons
    assert (reason.code, reason.path) == ("which_hydrate", "additive.also.chemical")
    choices = reason.params["choices"]
    assert isinstance(choices, tuple)
    assert len(choices) == hydrates
    assert all(name.startswith(f"{bare.casefold()} ") for name in choices)


@pytest.mark.parametrize("bare", ["calcium chloride", "sodium carbonate"])
def test_H11_a_bare_partner_of_a_pair_is_asked_about(bare: str) -> None:
    partner = {"chemical": bare, "dissolved": "100 g", "made_up_to": "1 L"}
    raw = {"additive": {"chemical": "sodium hydroxide", "made_up_to": "1 L"}, "wanted": {"partner": partner}}
    question = stock_intake.stock(raw, known())
    assert isinstance(question, intake.Unread)
    (reason,) = question.reasons
    assert (reason.code, reason.path) == ("which_hydrate", "wanted.partner.chemical")
    assert len(reason.params["choices"]) == 3  # type: ignore[arg-type]


def test_H11_a_bare_second_salt_of_a_wanted_mix_is_asked_about() -> None:
    jug = {
        "chemical": "magnesium sulfate heptahydrate",
        "made_up_to": "1 L",
        "also": {"chemical": "magnesium chloride"},
    }
    question = stock_intake.stock({"additive": jug, "wanted": {"strength": "10000 mg/L"}}, known())
    assert isinstance(question, intake.Unread)
    assert [(r.code, r.path) for r in question.reasons] == [("which_hydrate", "additive.also.chemical")]


def test_H11_the_same_chemical_twice_is_no_mix() -> None:
    assert ask(worked(additive__also=_also("sodium carbonate anhydrous"))) == ("same_chemical",)
    # Another hydrate of the same salt is another bag.
    assert isinstance(ask(worked(additive__also=_also("sodium carbonate decahydrate", "10 g"))), Answer)
