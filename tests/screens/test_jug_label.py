"""What a jug's label says, held against the data file as it stands and against sums done by hand."""

from __future__ import annotations

import re
import tomllib
from dataclasses import replace
from itertools import combinations, product
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine.mix import incompatible
from evenwater.engine.stock import Dissolved, Portion
from evenwater.screens import plan_id
from evenwater.screens.jug_label import JugLabel, LabelFacts, label
from tests.screens.asked import answer, catalogue
from tests.screens.jugs import BARE, FACTS, LONG, NO_SEPARATION, bottle, jugs, labelled, lime, mix, weighed
from tests.screens.lint import NBSP, faults, strings

DATA: dict[str, Any] = tomllib.loads((resources() / "chemicals.toml").read_text(encoding="utf-8"))
every_jug = pytest.mark.parametrize("name", list(jugs()))
every_chemical = pytest.mark.parametrize("name", list(DATA))
# What stands in the line of what must never meet, by what a chemical carries.
NAMED = {"alkalinity": "alkalinity", "Ca": "calcium", "Mg": "magnesium", "Sr": "strontium", "SO4": "sulfate",
         "PO4": "phosphate", "B": "boron"}  # fmt: skip


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


def texts(view: JugLabel) -> dict[str, str]:
    return {entry.label: plain(entry.text) for entry in view.entries}


@every_jug
def test_every_string_of_a_label_is_safe(name: str) -> None:
    # The batch's code is letters and digits by chance.
    view = labelled(name, replace(FACTS, batch_id=""))
    bad = [fault for text in strings(view) for fault in faults(text)]
    bad += [fault for text in (view.strength, *view.does) for fault in faults(text, dose=True)]
    assert not bad


@every_chemical
def test_H11_the_label_names_the_exact_hydrate(name: str) -> None:
    (held,) = labelled(name).contents
    assert held.name == DATA[name]["tall_man"]
    assert held.name.casefold() == name
    assert re.sub(r"·(\d*)H2O", r"(H2O)\1", held.formula) == DATA[name]["formula"]
    assert ("hydrate" in held.name) == ("·" in held.formula)


def test_H11_no_two_chemicals_have_the_same_name_or_formula_on_a_label() -> None:
    held = [labelled(name).contents[0] for name in DATA]
    assert all(a.name != b.name and a.formula != b.formula for a, b in combinations(held, 2))


@every_chemical
def test_H33_hazards_are_those_of_the_data(name: str) -> None:
    view = labelled(name)
    assert view.signal_word == DATA[name]["signal_word"]
    assert view.statements == tuple(f"{text}." for text in DATA[name]["statements"])
    assert all(re.match(r"H\d{3}[A-Z]* [a-z]", text) for text in view.statements), "code and text"


@every_chemical
def test_H33_every_caution_of_the_data_is_said(name: str) -> None:
    """Word for word, but for what the first aid and the line of what must never meet say more fully."""
    view = labelled(name)
    for caution in DATA[name]["cautions"]:
        if caution in view.handling:
            continue
        if "eyes" in caution:
            assert {"eyes", "rinse", "15", "minutes", "medical", "help"} <= set(re.findall(r"\w+", view.first_aid))
            continue
        never = re.fullmatch(r"Never mix it with a concentrate of ([^:.]+)(?::.*)?\.?", caution)
        assert never, f"lost: {caution}"
        assert all(word in view.separation for word in re.split(r", | or ", never[1]))
    assert view.handling[-1] == "The bag's own safety sheet and local rules come first."


def test_a_caution_that_names_something_else_is_kept() -> None:
    """Only what the line of what must never meet names as well is left to it."""
    found = weighed("sodium bicarbonate")
    assert isinstance(found.batch, Dissolved)
    caution = "Never mix it with a concentrate of vinegar."
    odd = replace(found.batch.chemical, cautions=(*found.batch.chemical.cautions, caution))
    assert caution in label(replace(found, batch=replace(found.batch, chemical=odd)), FACTS).handling


@every_jug
def test_H20_the_label_says_what_it_must_never_be_mixed_with(name: str) -> None:
    view = labelled(name)
    harmless = NO_SEPARATION | {
        f"a bottle of {p}" for p in catalogue().parameters if p in {"potassium", "iodide", "nitrate", "salinity"}
    }
    assert (view.separation == "") == (name in harmless)
    if "alkalinity" in name or "carbonate" in name:
        assert "calcium, magnesium or strontium concentrate" in view.separation
    if "calcium" in name or "magnesium" in name:
        assert "carbonate, bicarbonate or other alkalinity concentrate" in view.separation


def test_H20_the_line_agrees_with_what_may_not_be_mixed_in_one_jug() -> None:
    """Of any two chemicals the planner refuses in one jug each label names something that the other carries."""
    for one, other in product(DATA, DATA):
        chemicals = catalogue().chemicals
        batch = Dissolved(chemicals[one], 1.0, 1.0, also=(Portion(chemicals[other], 1.0),))
        carried = {NAMED[what] for what in DATA[other]["carries"] if what in NAMED}
        named = any(word in labelled(one).separation for word in carried)
        if incompatible(batch, "") is not None:
            assert named, (one, other)
        elif "boric acid" not in (one, other):
            # Boric acid falls out with lime only, but a label cannot say how strong a base the other jug holds: it
            # keeps boron apart from every metal that borate falls out with.
            assert not named or one == other, (one, other)


@pytest.mark.parametrize(
    ("name", "grams", "carries", "raises"),
    [
        # Molar masses 105.99, 147.01, 101.10 g; 1 meq per L is 2.804 dKH.
        ("sodium carbonate anhydrous", 106.0, "2 meq of alkalinity", "alkalinity by 0.0561 dKH"),
        ("calcium chloride dihydrate", 147.0, "40.1 mg of calcium", "calcium by 0.401 mg per L"),
        ("potassium nitrate", 101.1, "39.1 mg of potassium and 62 mg of nitrate as NO3",
         "potassium by 0.391 mg per L and nitrate by 0.62 mg per L as NO3"),
    ],
)  # fmt: skip
def test_what_a_millilitre_carries_and_does_by_hand(name: str, grams: float, carries: str, raises: str) -> None:
    view = label(weighed(name, grams), FACTS)
    said = [plain(text) for text in view.does]
    assert carries in said[0]
    assert said[0].startswith("1 mL carries ")
    assert said[1] == f"1 mL in 100 L raises {raises}."
    assert plain(view.strength) == f"Strength: dissolved {grams:g} g per 1 L."


def test_purity_is_part_of_the_strength() -> None:
    assert "78 % pure" in plain(label(weighed("calcium chloride dihydrate", 100.0, 0.78), FACTS).strength)


def test_a_chemical_that_raises_nothing_says_what_it_carries() -> None:
    (only,) = labelled("boric acid").does
    assert "boron" in only


def test_mix_names_both_salts_and_both_masses() -> None:
    view = label(mix(), FACTS)
    names = ["magnesium CHLORide hexahydrate", "magnesium SULFate heptahydrate"]
    assert [held.name for held in view.contents] == [names[0], f"and {names[1]}"]
    assert re.search(rf"dissolved [\d.]+ g {names[0]} and [\d.]+ g {names[1]} per 1 L", plain(view.strength))
    assert "40 mg of magnesium" in plain(view.does[0])


def test_limewater_is_dosed_clear() -> None:
    view = label(lime(), FACTS)
    assert "aturated limewater" in view.strength
    assert "dose the clear water only" in view.strength
    assert re.search(r"1\.5\d g per 1 L at 18 °C", plain(view.strength))
    assert view.contents[0].name == "calcium HYDROXide"
    assert view.signal_word == "Danger"


def test_bottle_is_known_by_its_label_only() -> None:
    view = label(bottle(), FACTS)
    assert [(held.name, held.formula) for held in view.contents] == [("Bottle, by its label", "")]
    assert plain(view.strength) == "Strength by its label: 5 mL raise 100 L by 2.8 dKH."
    assert plain(view.does[1]) == "1 mL in 100 L raises alkalinity by 0.561 dKH."
    assert (view.signal_word, view.statements) == ("", ())
    assert "safety sheet" in view.handling[0]
    # Nobody mixed it, and nobody knows in what cold its salts fall out.
    assert texts(view)["Filled on"] == "Tue 24 Nov 2026"
    assert texts(view)["Not colder than"] == ""


def test_large_volumes_are_said_in_litres() -> None:
    found = bottle()
    large = replace(found.batch, label=replace(found.batch.label, dose_ml=2500.0))
    assert "2.5 L raise 100 L" in plain(label(replace(found, batch=large), FACTS).strength)


def test_dates_are_in_words_and_cannot_be_turned_round() -> None:
    entries = texts(labelled("sodium bicarbonate"))
    assert entries["Mixed on"] == "Tue 24 Nov 2026"
    assert entries["Use by"] == "Sat 20 Feb 2027"
    assert entries["Mixed by"] == "K. L."
    assert entries["Not colder than"] == "18 °C"
    assert texts(labelled("sodium bicarbonate", LONG))["Mixed on"] == LONG.mixed_on


@every_jug
def test_what_is_not_known_is_left_empty_and_never_invented(name: str) -> None:
    view = labelled(name, BARE)
    assert view.name == view.batch == ""
    known = {entry.label for entry in view.entries if entry.text}
    assert known == (set() if name.startswith("a bottle") else {"Not colder than"})
    assert len(view.entries) == 5


@every_jug
def test_what_every_label_says(name: str) -> None:
    view = labelled(name)
    assert view.name == FACTS.name
    assert view.keep_away == "Keep away from children. Not for drinking."
    said = "In the eyes: rinse for at least 15 minutes and get medical help. Poison centre:"
    assert plain(view.first_aid) == said
    assert view.strength.endswith(".")
    assert view.handling


def test_batch_code_is_checked_and_always_the_same() -> None:
    assert plan_id.batch_code(FACTS.batch_id) == "E3HPBC-76"
    view = labelled("sodium bicarbonate")
    assert view.batch == texts(view)["Batch"] == plan_id.batch_code(FACTS.batch_id)
    codes = {plan_id.batch_code(f"jug:{number:08x}") for number in range(500)}
    assert len(codes) == 500
    assert all(plan_id.valid(code) for code in codes)


def test_batch_code_misread_by_one_character_is_found() -> None:
    code = plan_id.batch_code("jug:00000001")
    alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
    wrong = [code[:p] + c + code[p + 1 :] for p in range(6) for c in alphabet if c != code[p]]
    assert not any(plan_id.valid(text) for text in wrong)


def test_batch_and_plan_do_not_share_their_codes() -> None:
    q = answer().question
    assert plan_id.batch_code(repr(q)) != plan_id.make(q)


def test_blank_facts_are_no_facts() -> None:
    assert label(mix(), LabelFacts("  ", "", " ", " ", " ")).name == ""
    assert {e.text for e in label(mix(), LabelFacts("", "", " ", " ", " ")).entries} == {"", f"18{NBSP}°C"}
