"""The plan id: the same for the same question, another for another, and a misread one is found."""

from __future__ import annotations

from dataclasses import replace
from functools import cache

import pytest

from evenwater.screens import plan_id
from tests.screens.asked import answer, grid

ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"


@cache
def ids() -> list[str]:
    return sorted({plan_id.make(a.question) for a in grid().values()})


def test_every_plan_has_an_id_of_its_own() -> None:
    assert len(ids()) == len({repr(a.question) for a in grid().values()})
    assert all(plan_id.valid(one) for one in ids())
    assert all(len(one) == 9 for one in ids())


def test_the_same_question_has_the_same_id_and_any_change_another() -> None:
    q = answer().question
    assert plan_id.make(q) == plan_id.make(answer().question)
    others = [
        replace(q, target=q.target + 1e-9),
        replace(q, use=0.0),
        replace(q, unit="meq/L"),
        replace(q, pump=replace(q.pump, doses_per_day=12)),
        replace(q, system=replace(q.system, volume_l=341.0)),
        replace(q, reason="moving"),
    ]
    assert len({plan_id.make(other) for other in (q, *others)}) == len(others) + 1


@pytest.mark.parametrize("turn", range(12))
def test_a_misread_character_is_found(turn: int) -> None:
    body, check = ids()[turn * 10].split("-")
    for place in range(len(body)):
        for character in ALPHABET:
            if character != body[place]:
                assert not plan_id.valid(f"{body[:place]}{character}{body[place + 1 :]}-{check}")
    for place in range(2):
        for digit in "0123456789":
            if digit != check[place]:
                assert not plan_id.valid(f"{body}-{check[:place]}{digit}{check[place + 1 :]}")


def test_swapped_neighbours_are_found() -> None:
    for one in ids():
        body, check = one.split("-")
        for place in range(len(body) - 1):
            if body[place] != body[place + 1]:
                swapped = body[:place] + body[place + 1] + body[place] + body[place + 2 :]
                assert not plan_id.valid(f"{swapped}-{check}")


def test_a_typed_id_may_be_small_and_have_spaces_around() -> None:
    assert plan_id.valid(f"  {ids()[0].lower()} ")


@pytest.mark.parametrize("text", ["", "-", "ABCDEF", "ABCDEF-", "ABC-12", "I0L0U0-12", "ABCDEFG-12"])
def test_what_is_no_id(text: str) -> None:
    assert not plan_id.valid(text)


def test_an_id_cut_short_or_run_on_is_none() -> None:
    one = ids()[0]
    assert not plan_id.valid(one[:-1])
    assert not plan_id.valid(f"{one}0")


def test_the_alphabet_has_no_look_alikes() -> None:
    assert not set("ILOU") & set("".join(ids()))
    assert set("".join(ids())) <= {*ALPHABET, "-"}
