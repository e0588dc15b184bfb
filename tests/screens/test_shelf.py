"""The shelf: what is chosen becomes fields and back, batches in words, and cards made for another strength (H12)."""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, datetime, timedelta, timezone
from itertools import product

import pytest

from evenwater.engine.quantities import Typed
from evenwater.screens import shelf
from tests.screens.asked import catalogue
from tests.screens.batches import (
    CALCIUM,
    SODA,
    SULFATE,
    batch,
    body_of,
    bottle,
    carries,
    limewater,
    mixed,
    weighed,
)  # fmt: skip
from tests.screens.lint import NBSP, faults

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
OPTIONS = shelf.contents_options(catalogue())
ALKALINE_BOTTLE = bottle("5", "100", ("1", "dKH"))


def plain(text: str) -> str:
    return text.replace(NBSP, " ")


def outdated(made: Mapping[str, Typed], now: Mapping[str, Typed], parameter: str = "alkalinity") -> str:
    """Return what is said of a card that was made for one batch while another is in the jug."""
    return plain(shelf.card_outdated(body_of(made, parameter), parameter, now, catalogue()))


def row(made: Mapping[str, Typed], in_use: bool = False) -> str:
    return plain(shelf.batch_row("jug:1", made, in_use, NOW, catalogue()).words)


# What is in it


@pytest.mark.parametrize("choice", [choice for choice, _ in OPTIONS])
def test_a_choice_of_contents_is_read_back_from_the_fields_that_it_sets(choice: str) -> None:
    for before in (mixed(300, 417.8), limewater(), ALKALINE_BOTTLE, weighed(SODA, 106), {}):
        assert shelf.contents_of({**before, **shelf.contents_fields(choice)}) == choice


def test_every_chemical_is_offered_once_and_the_special_ones_stand_with_their_kin() -> None:
    ids = [choice for choice, _ in OPTIONS]
    assert set(ids) == {*catalogue().chemicals, shelf.MIX, shelf.LIMEWATER, shelf.BOTTLE}
    assert len(ids) == len(set(ids))
    assert ids[-1] == shelf.BOTTLE
    assert ids.index(shelf.LIMEWATER) + 1 == ids.index("calcium hydroxide")
    assert ids.index(SULFATE) + 1 == ids.index(shelf.MIX)
    assert len({words for _, words in OPTIONS}) == len(OPTIONS), "two entries must never read alike"


@pytest.mark.parametrize("parameter", list(catalogue().parameters))
def test_what_raises_the_parameter_is_offered_first(parameter: str) -> None:
    ids = [choice for choice, _ in shelf.contents_options(catalogue(), parameter)]
    chemicals = [choice for choice in ids if choice in catalogue().chemicals]
    fitting = [c.name for c in catalogue().raising(parameter)]
    assert chemicals[: len(fitting)] == fitting
    assert sorted(ids) == sorted(choice for choice, _ in OPTIONS)


def test_a_bottle_of_an_older_log_has_no_word_for_what_it_is() -> None:
    old = {name: typed for name, typed in ALKALINE_BOTTLE.items() if name != "chemical"}
    assert shelf.contents_of(old) == shelf.BOTTLE
    assert shelf.contents_of(batch(label_parameter="alkalinity")) == ""
    assert shelf.contents_of({}) == ""


def test_what_was_typed_for_other_contents_stays_but_is_not_asked() -> None:
    """Choosing by mistake loses nothing, and no number of another chemical goes into the question."""
    before = {**mixed(300, 417.8), **batch(label_dose=("5", "mL"), purity=("98", "%"), temperature=("15", "degC"))}
    tables = {
        choice: shelf.additive_table({**before, **shelf.contents_fields(choice)})
        for choice in (SODA, shelf.MIX, shelf.LIMEWATER, shelf.BOTTLE)
    }
    assert tables[SODA].keys() == {"chemical", "dissolved", "made_up_to", "purity", "temperature"}
    assert tables[shelf.MIX]["also"] == {"chemical": Typed(SULFATE), "dissolved": Typed("417.8", "g")}
    assert tables[shelf.LIMEWATER].keys() - {"purity"} == {"chemical", "saturated", "made_up_to", "temperature"}
    assert tables[shelf.BOTTLE] == {"label": {"dose": Typed("5", "mL")}}


def test_fields_without_anything_in_them_are_left_out() -> None:
    assert shelf.additive_table(weighed(SODA, "  ")).keys() == {"chemical", "made_up_to"}


# Strength


@pytest.mark.parametrize(
    ("chemical", "parameter"), [(SODA, "alkalinity"), (CALCIUM, "calcium"), (SULFATE, "magnesium")]
)
def test_what_a_batch_carries_is_that_of_its_atoms(chemical: str, parameter: str) -> None:
    answer = shelf.answer_of(weighed(chemical, 80, 1.6), catalogue())
    assert answer is not None
    per_litre = {item.name: item.per_litre for item in answer.carries}
    assert per_litre[parameter] == pytest.approx(1000.0 * carries(chemical, parameter, 80, 1.6), rel=2e-5)


@pytest.mark.parametrize(
    ("made", "said"),
    [
        (weighed(SODA, 106), "dissolved 106 g per 1 L"),
        (weighed(SODA, 53, 0.5, purity=("98", "%")), "dissolved 106 g per 1 L, 98 % pure"),
        (limewater(), "saturated, 1.56 g per 1 L at 20 °C"),
        (
            mixed(300, 417.8),
            "dissolved 150 g magnesium CHLORide hexahydrate and 208.9 g magnesium SULFate heptahydrate per 1 L",
        ),
    ],
)
def test_strength_is_said_per_litre(made: Mapping[str, Typed], said: str) -> None:
    answer = shelf.answer_of(made, catalogue())
    assert answer is not None
    assert plain(shelf.strength_line(answer)) == said


def test_two_bottles_of_another_strength_do_not_read_alike() -> None:
    lines = set()
    for raises in ("1", "1.2"):
        answer = shelf.answer_of(bottle("5", "100", (raises, "dKH")), catalogue())
        assert answer is not None
        lines.add(shelf.strength_line(answer))
    assert len(lines) == 2


@pytest.mark.parametrize(
    ("grams", "same"), [(106.0, True), (107.0, True), (105.0, True), (107.06, True), (107.08, False), (104.93, False)]
)
def test_a_hundredth_of_the_strength_makes_no_difference(grams: float, same: bool) -> None:
    one, other = (shelf.answer_of(weighed(SODA, mass), catalogue()) for mass in (106.0, grams))
    assert one is not None
    assert other is not None
    assert shelf.same_strength(one, other) == shelf.same_strength(other, one) == same


def test_the_same_strength_of_something_else_is_not_the_same() -> None:
    batches = (weighed(SODA, 106), weighed("sodium bicarbonate", 60), weighed("sodium nitrate", 12), ALKALINE_BOTTLE)
    answers = [shelf.answer_of(made, catalogue()) for made in batches]
    for one, other in product(answers, repeat=2):
        assert one is not None
        assert other is not None
        assert shelf.same_strength(one, other) == (one is other)


# Cards


def test_H12_a_card_made_for_another_strength_is_out_of_date_and_says_both() -> None:
    said = outdated(weighed(SODA, 106), weighed(SODA, 150))
    assert "dissolved 106 g per 1 L" in said
    assert "dissolved 150 g per 1 L" in said
    assert said.index("106 g") < said.index("150 g")
    assert outdated(weighed(SODA, 106), weighed(SODA, 106.5)) == ""


SAME = {
    "soda ash": weighed(SODA, 106),
    "with a comma": weighed(SODA, "106,5"),
    "in another unit": batch(chemical=SODA, dissolved=("0,106", "kg"), made_up_to=("1000", "mL")),
    "with its own unit": batch(chemical=SODA, dissolved=("106 g", "kg"), made_up_to=("1", "L")),
    "impure": weighed(SODA, 106, purity=("96.5", "%")),
    "mix": mixed(300, 417.8),
    "limewater": limewater(),
    "limewater in a cool shed": limewater(temperature=("10", "degC")),
    "kept warm": weighed(SODA, 260, temperature=("28", "degC")),
    "bottle": ALKALINE_BOTTLE,
}


@pytest.mark.parametrize("name", SAME)
def test_H12_a_card_fits_the_batch_it_was_made_for(name: str) -> None:
    assert shelf.made_for(body_of(SAME[name]), catalogue()) is not None
    assert outdated(SAME[name], SAME[name]) == ""


@pytest.mark.parametrize("name", SAME)
def test_H12_any_other_batch_is_noticed(name: str) -> None:
    other = weighed("sodium bicarbonate", 40)
    assert outdated(SAME[name], other) != ""
    assert outdated(other, SAME[name]) != ""


def test_H12_a_label_that_fits_several_parameters_is_read_for_what_the_card_raises() -> None:
    strong = bottle("5", "100", ("10", "mg/L"))
    assert outdated(strong, strong, "calcium") == ""
    assert outdated(strong, bottle("5", "100", ("12", "mg/L")), "calcium") != ""
    assert outdated(strong, {**strong, "label_parameter": Typed("magnesium")}, "calcium") != ""


@pytest.mark.parametrize(
    "body", ["", "{}", "[]", "null", '{"additive": 3}', "not json", '{"additive": {"chemical": "x"}}']
)
def test_H12_a_card_whose_batch_cannot_be_reckoned_any_more_is_out_of_date(body: str) -> None:
    """What cannot be compared must not be followed."""
    assert shelf.made_for(body, catalogue()) is None
    assert shelf.card_outdated(body, "alkalinity", weighed(SODA, 106), catalogue()) != ""


def test_H12_nothing_is_said_in_the_middle_of_a_number() -> None:
    for half in ("", "106.", "1,06,"):
        assert outdated(weighed(SODA, 106), weighed(SODA, half)) == ""


def test_H12_a_card_keeps_the_question_as_text() -> None:
    kept = json.loads(body_of(weighed(SODA, "106,5", purity=("98", "%"))))
    assert kept["additive"] == {"chemical": SODA, "dissolved": "106,5 g", "made_up_to": "1 L", "purity": "98 %"}
    assert kept["change"] == {"parameter": "alkalinity"}


# The list of batches


def test_a_row_says_state_date_and_strength() -> None:
    made = weighed(SODA, 106, mixed_on="2026-11-21", in_use_from="2026-11-21T08:00:00+00:00", use_by="2026-11-25")
    assert row(made, in_use=True) == "In the jug · mixed Sat 21 Nov 2026 · dissolved 106 g per 1 L"
    assert row(made).startswith("Used before · ")
    fresh = weighed(SODA, 106)
    assert row(fresh) == "Not in the jug yet · dissolved 106 g per 1 L"
    assert row({}) == "Not in the jug yet · not complete"
    assert row(weighed(SODA, 300)) == "Not in the jug yet · not complete", "what cannot dissolve is no batch"
    assert row(weighed(SODA, 106, mixed_on="last week")).split(" · ")[1] == "mixed last week"


def test_a_row_says_when_it_is_past_its_date() -> None:
    made = weighed(SODA, 106, use_by="2026-11-24")
    assert row(made) == "Not in the jug yet · dissolved 106 g per 1 L · use by Tue 24 Nov 2026"


@pytest.mark.parametrize(("use_by", "past"), [
    ("2026-11-24", True), ("2026-11-25", False), ("2026-11-26", False), ("", False), ("soon", False), (" 2026-11-24 ", True),
])  # fmt: skip
def test_a_batch_is_past_its_date_from_the_day_after_on(use_by: str, past: bool) -> None:
    made = batch(use_by=use_by)
    assert shelf.past(made, NOW) == past
    assert shelf.past(made, NOW.replace(hour=23, minute=59)) == past


def test_the_day_is_that_of_the_keepers_zone() -> None:
    late = datetime(2026, 11, 25, 23, 30, tzinfo=UTC)
    assert not shelf.past(batch(use_by="2026-11-25"), late)
    assert shelf.past(batch(use_by="2026-11-25"), late.astimezone(timezone(timedelta(hours=1))))


@pytest.mark.parametrize("recipe", [shelf.WANTED, shelf.PAIR])
def test_only_a_fresh_weighed_batch_can_still_be_weighed(recipe: str) -> None:
    asked = weighed(SODA, 106, recipe=recipe)
    assert shelf.to_be_weighed(asked)
    assert row(asked) == "Not in the jug yet · to be weighed"
    assert not shelf.to_be_weighed({**asked, "in_use_from": Typed("2026-11-21T08:00:00+00:00")})
    assert not shelf.to_be_weighed({**asked, **shelf.contents_fields(shelf.LIMEWATER)})
    assert not shelf.to_be_weighed({**asked, **shelf.contents_fields(shelf.BOTTLE)})
    assert not shelf.to_be_weighed(weighed(SODA, 106, recipe=shelf.WEIGHED))


@pytest.mark.parametrize("name", SAME)
def test_every_row_is_safe_to_read(name: str) -> None:
    found = shelf.batch_row(
        "jug:1", {**SAME[name], **batch(mixed_on="2026-11-21", use_by="2026-11-22")}, True, NOW, catalogue()
    )
    assert faults(found.words) == []


# Hazards


def test_H33_hazards_are_those_of_everything_in_the_jug_with_who_says_so() -> None:
    soda = catalogue().chemicals[SODA]
    (said,) = shelf.hazards(weighed(SODA, 106), catalogue())
    assert said == f"H319 causes serious eye irritation ({soda.statements_source})."
    assert len(shelf.hazards(mixed(300, 417.8), catalogue())) == 2
    assert all(line.startswith("No hazard statement (") for line in shelf.hazards(mixed(300, 417.8), catalogue()))
    (lime,) = shelf.hazards(limewater(), catalogue())
    assert "H318" in lime
    assert shelf.hazards(ALKALINE_BOTTLE, catalogue()) == ()
    assert shelf.hazards({}, catalogue()) == ()
