"""H10, H11 and H33: look-alike names, the wrong hydrate, and whoever mixes the stock.

Tall-man pairs and full names: the error-prone abbreviation lists of medicine labelling. Hazard statements: the
sources beside each chemical in chemicals.toml.
"""

from __future__ import annotations

import itertools
import re

import pytest

from evenwater.engine import intake
from evenwater.engine.catalogue import Chemical
from evenwater.engine.correction import Answer
from evenwater.engine.formula import molar_mass
from evenwater.screens import answer_json
from evenwater.screens.answer import view
from evenwater.screens.dose_card import card
from tests.engine.asking import NOW, answered, ask, known, worked
from tests.engine.reckoning import BOUNDS, SALTS

CHEMICALS = tuple(known().chemicals.values())
CAPITALS = re.compile(r"[A-Z]{2,}")
HYDRATES = {"anhydrous": 0, "monohydrate": 1, "dihydrate": 2, "hexahydrate": 6, "heptahydrate": 7, "decahydrate": 10}
LOOK_ALIKE = [
    ("sodium bicarbonate", "sodium carbonate anhydrous"),
    ("calcium chloride dihydrate", "calcium hydroxide"),
    ("magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"),
    ("potassium nitrate", "potassium iodide"),
    ("potassium chloride", "potassium nitrate"),
    ("potassium chloride", "potassium dihydrogen phosphate"),
    ("sodium nitrate", "sodium bicarbonate"),
    ("sodium hydroxide", "sodium chloride"),
]


def _capitals(chemical: Chemical) -> str:
    return "".join(CAPITALS.findall(chemical.tall_man))


def _hydrate(name: str) -> str:
    return next((word for word in HYDRATES if name.endswith(f" {word}")), "")


@pytest.mark.parametrize(("one", "other"), LOOK_ALIKE)
def test_H10_look_alikes_differ_in_the_capitals(one: str, other: str) -> None:
    a, b = known().chemicals[one], known().chemicals[other]
    assert _capitals(a)
    assert _capitals(b)
    assert _capitals(a) != _capitals(b)


def test_H10_every_pair_that_begins_alike_differs_in_the_capitals_or_the_hydrate() -> None:
    for a, b in itertools.combinations(CHEMICALS, 2):
        if a.name.split()[0] == b.name.split()[0]:
            assert (_capitals(a), _hydrate(a.name)) != (_capitals(b), _hydrate(b.name)), f"{a.name}, {b.name}"


@pytest.mark.parametrize("chemical", CHEMICALS, ids=lambda c: c.name)
def test_H10_capitals_change_nothing_but_the_case(chemical: Chemical) -> None:
    assert chemical.tall_man.casefold() == chemical.name
    assert CAPITALS.search(chemical.tall_man)


def test_H10_no_other_name_belongs_to_two_chemicals() -> None:
    words = [word.casefold() for c in CHEMICALS for word in (c.name, *c.also_called)]
    assert len(words) == len(set(words))


@pytest.mark.parametrize("chemical", CHEMICALS, ids=lambda c: c.name)
def test_H11_the_name_says_the_water_that_the_formula_has(chemical: Chemical) -> None:
    found = re.search(r"\(H2O\)(\d*)$", chemical.formula)
    waters = int(found.group(1) or "1") if found else 0
    assert HYDRATES.get(_hydrate(chemical.name), 0) == waters
    # Where a salt is sold with several waters, the dry one says so too.
    stem = chemical.name.removesuffix(_hydrate(chemical.name)).strip()
    siblings = [c for c in CHEMICALS if c is not chemical and c.name.startswith(f"{stem} ")]
    assert not siblings or _hydrate(chemical.name)


@pytest.mark.parametrize("chemical", [c for c in CHEMICALS if c.name in SALTS], ids=lambda c: c.name)
def test_H11_each_entry_has_its_own_strength(chemical: Chemical) -> None:
    salt = SALTS[chemical.name]
    assert molar_mass(chemical.formula) == pytest.approx(float(salt.molar), rel=1e-9)
    for name, amount in {**salt.raises, **salt.along}.items():
        assert chemical.per_gram(name) == pytest.approx(float(amount / salt.molar), rel=1e-9)


# Pairs that differ by less than two, so that no limit can see them: both have an entry where both are sold.
BELOW_TWO = [
    ("sodium carbonate anhydrous", "sodium bicarbonate", "alkalinity", 1.585),
    ("sodium carbonate anhydrous", "sodium carbonate monohydrate", "alkalinity", 1.170),
    ("calcium chloride anhydrous", "calcium chloride dihydrate", "calcium", 1.325),
    ("calcium chloride dihydrate", "calcium chloride hexahydrate", "calcium", 1.490),
]


@pytest.mark.parametrize(("strong", "weak", "name", "factor"), BELOW_TWO)
def test_H11_each_factor_below_two_has_a_distinct_entry(strong: str, weak: str, name: str, factor: float) -> None:
    ratio = known().chemicals[strong].per_gram(name) / known().chemicals[weak].per_gram(name)
    assert ratio == pytest.approx(factor, abs=0.001)


BARE = [
    "calcium chloride", "sodium carbonate", "magnesium chloride", "magnesium sulfate", "strontium chloride",
    "sodium tetraborate", "Calcium Chloride", "CALCIUM CHLORIDE",
]  # fmt: skip


@pytest.mark.parametrize("bare", BARE)
def test_H11_a_bare_salt_is_refused_with_its_hydrates(bare: str) -> None:
    unread = intake.correction(worked(additive__chemical=bare), known(), NOW)
    assert isinstance(unread, intake.Unread)
    (reason,) = unread.wrong
    assert reason.code == "which_hydrate"
    expected = {name for name in known().chemicals if name.startswith(bare.casefold())}
    assert expected
    assert set(reason.params["choices"]) == expected  # type: ignore[call-overload]


@pytest.mark.parametrize(
    ("word", "meant"),
    [
        ("soda ash", "sodium carbonate anhydrous"),
        ("Baking Soda", "sodium bicarbonate"),
        ("borax", "sodium tetraborate decahydrate"),
        ("Epsom salt", "magnesium sulfate heptahydrate"),
        ("common salt", "sodium chloride"),
    ],
)
def test_H11_a_word_of_the_trade_is_asked_about_and_never_taken(word: str, meant: str) -> None:
    unread = intake.correction(worked(additive__chemical=word), known(), NOW)
    assert isinstance(unread, intake.Unread)
    (reason,) = unread.wrong
    assert (reason.code, reason.path) == ("which_hydrate", "additive.chemical")
    assert meant in reason.params["choices"]  # type: ignore[operator]


@pytest.mark.parametrize("word", ["CaCl2", "Na2CO3", "MgSO4", "chloride", "Part A", "two-part", "x"])
def test_H11_a_formula_or_part_name_is_no_name(word: str) -> None:
    assert ask(worked(additive__chemical=word)) == ("unknown_chemical",)


def _plan(chemical: Chemical) -> Answer:
    """Return some plan with a chemical: a weak stock, half a day's rise."""
    name = chemical.raises[0]
    bounds = BOUNDS[name]
    low, high = (float(v) for v in bounds.targets)
    start = low + 0.4 * (high - low)
    raw = worked(
        change__parameter=name, change__measured=f"{start:.5f} {bounds.unit}", change__daily_use=None,
        change__target=f"{start + float(bounds.recommended) / 2.0:.5f} {bounds.unit}", change__fastest_rise=None,
        additive__chemical=chemical.name, additive__dissolved="1.2 g", pump__flow="2000 mL/min",
    )  # fmt: skip
    return answered(raw)


RAISING = [c for c in CHEMICALS if c.raises]
EYES = re.compile(r"H31[4589]\b")


@pytest.mark.parametrize("chemical", CHEMICALS, ids=lambda c: c.name)
def test_H33_a_hazard_statement_comes_with_a_word_and_cautions(chemical: Chemical) -> None:
    assert chemical.cautions
    assert all(caution.endswith(".") for caution in chemical.cautions)
    assert bool(chemical.statements) == bool(chemical.signal_word)
    assert chemical.signal_word in ("", "Warning", "Danger")
    for statement in chemical.statements:
        assert re.fullmatch(r"H\d{3}[A-Z]{0,2} [a-z].+", statement), statement
    joined = " ".join(chemical.cautions).casefold()
    if any(EYES.match(statement) for statement in chemical.statements):
        assert "goggles" in joined
        assert "rinse for at least 15 minutes" in joined
    if chemical.statements:
        assert re.search(r"goggles|gloves|spectacles", joined)
    if any(statement.startswith("H272") for statement in chemical.statements):
        assert "oxidiser" in joined


@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("calcium chloride anhydrous", ["heats strongly", "never water onto the salt"]),
        ("calcium chloride dihydrate", ["heats strongly", "never water onto the salt"]),
        ("sodium carbonate anhydrous", ["never water onto the salt", "acids"]),
        ("calcium hydroxide", ["mandatory", "never stir slurry", "do not induce vomiting"]),
        ("sodium hydroxide", ["face shield", "never water onto the solid"]),
        ("potassium nitrate", ["oxidiser"]),
        ("potassium iodide", ["gloves", "dilute"]),
        ("strontium chloride hexahydrate", ["goggles"]),
    ],
)
def test_H33_the_telling_caution_is_there(name: str, words: list[str]) -> None:
    joined = " ".join(known().chemicals[name].cautions).casefold()
    for word in words:
        assert word in joined, f"{name}: {word}"


@pytest.mark.parametrize("one", ["calcium", "carbonate"])
def test_H33_concentrates_are_never_mixed(one: str) -> None:
    other = {"calcium": "carbonate", "carbonate": "calcium"}[one]
    for chemical in CHEMICALS:
        if one in chemical.name and "raises" not in chemical.name:
            joined = " ".join(chemical.cautions)
            assert f"Never mix it with a concentrate of {other}" in joined, chemical.name


@pytest.mark.parametrize("chemical", RAISING, ids=lambda c: c.name)
def test_H33_cautions_stand_before_the_numbers(chemical: Chemical) -> None:
    answer = _plan(chemical)
    shown = view(answer, NOW)
    assert shown.cautions[-len(chemical.cautions) :] == chemical.cautions
    text = answer_json.text(answer_json.answered(answer), answer, NOW)
    figure_at = text.index(f"{shown.figure} {shown.figure_unit}")
    for caution in chemical.cautions:
        assert text.index(caution) < figure_at
    assert list(chemical.cautions) == [c for c in answer_json.answered(answer)["cautions"] if c in chemical.cautions]
    on_card = card(answer, NOW).cautions
    for statement in chemical.statements:
        assert any(statement in line and line.startswith(chemical.signal_word) for line in on_card)
    assert set(chemical.cautions) <= set(on_card)


def test_H33_the_restricted_chemical_is_remarked_on() -> None:
    restricted = [c for c in CHEMICALS if c.restricted]
    assert [c.name for c in restricted] == ["sodium hydroxide"]
    assert "restricted" in {r.code for r in _plan(restricted[0]).remarks}
    assert "restricted" not in {r.code for r in _plan(known().chemicals["sodium bicarbonate"]).remarks}


def test_H33_a_bottle_known_by_its_label_has_cautions_too() -> None:
    raw = worked()
    raw["additive"] = {"label": {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}}
    answer = answered(raw)
    assert view(answer, NOW).cautions
    assert card(answer, NOW).cautions
