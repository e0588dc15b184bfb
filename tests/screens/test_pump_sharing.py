"""One head draws from one jug into one water (common practice, no source)."""

from __future__ import annotations

import itertools

import pytest

from evenwater.screens.pump_sharing import Choice, sharing
from tests.screens.lint import faults

NITRATE = Choice("n", "North frag bay", "nitrate", "brown", "Nitrate, brown bottle")
ALKALINITY = Choice("a", "Anemone table", "alkalinity", "bottle", "Labelled bottle")
LIME = Choice("n", "North frag bay", "alkalinity", "lime", "Limewater")
LIME_TOO = Choice("n", "North frag bay", "calcium", "lime", "Limewater")


@pytest.mark.parametrize("chosen", [(), (NITRATE,), (LIME, LIME_TOO)])
def test_one_jug_into_one_water_is_right_whatever_it_raises(chosen: tuple[Choice, ...]) -> None:
    assert sharing("Head 1", chosen) == ""


def test_two_waters_are_named_with_what_each_is_given() -> None:
    said = sharing("Head 1", (NITRATE, ALKALINITY))
    assert said.startswith(
        "Head 1 is chosen for nitrate in North frag bay (Nitrate, brown bottle) and alkalinity in Anemone table (Labelled bottle)."
    )
    assert not faults(said)


def test_two_jugs_in_one_water_are_named_without_the_water() -> None:
    said = sharing("Head 1", (NITRATE, LIME))
    assert "nitrate (Nitrate, brown bottle) and alkalinity (Limewater)" in said
    assert "North frag bay" not in said


def test_the_order_of_the_choices_decides_nothing() -> None:
    assert all(sharing("Head 1", order) for order in itertools.permutations((NITRATE, ALKALINITY, LIME_TOO)))
