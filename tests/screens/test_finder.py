"""Finding what can be done by its words: in any order, without accents, by what else the trade calls it; best first."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.screens import finder
from evenwater.screens.finder import ACTION, MOST, Doing, find, folded

PRINT, SAVE = Doing(ACTION, "1", "Print card", "Alt+P"), Doing(ACTION, "2", "Save card as PDF", "Alt+S")
GREY = Doing(ACTION, "3", "Print label", why_not="There is no label yet.")
FRENCH = Doing(finder.SYSTEM, "4", "Bac à étage, côté fenêtre")
SHEETS = finder.sheets(("Correct", "Jugs", "Stocks", "Recovery"), ("Ctrl+2", "Ctrl+8", "Ctrl+9", "Ctrl+R"))
ALL = (PRINT, SAVE, GREY, FRENCH, *SHEETS, finder.term("limewater", "Limewater"))

WORDS = st.lists(st.sampled_from(["print", "card", "pdf", "save", "label", "etage", "cote", "jug", "zzz"]), max_size=4)


@pytest.mark.parametrize(
    ("typed", "wanted"),
    [
        ("print", ["Print card", "Print label"]),
        ("card pri", ["Print card"]),
        ("PDF", ["Save card as PDF"]),
        ("cote etage", ["Bac à étage, côté fenêtre"]),
        ("CÔTÉ", ["Bac à étage, côté fenêtre"]),
        ("kalk", ["Stocks", "Limewater"]),
        ("lime", ["Limewater", "Stocks"]),
        ("overdose", ["Recovery"]),
        ("too high", ["Recovery"]),
        ("sheet correct", ["Correct"]),
        ("onfront", []),
        ("ecover", ["Recovery"]),
        ("ec", []),
        ("!?", [doing.words for doing in ALL if doing is not GREY] + ["Print label"]),
        ("", [doing.words for doing in ALL if doing is not GREY] + ["Print label"]),
    ],
)
def test_words_find_what_has_them(typed: str, wanted: list[str]):
    assert [doing.words for doing in find(ALL, typed)][: len(wanted) or None] == wanted


def test_what_can_be_done_comes_before_what_cannot():
    assert find((GREY, PRINT), "print") == (PRINT, GREY)
    assert find((Doing(ACTION, "a", "Look at card"), Doing(ACTION, "b", "Card")), "card")[0].key == "a", (
        "else the order stays"
    )


def test_a_word_in_the_name_comes_before_one_beside_it():
    beside = Doing(ACTION, "b", "Something else", besides="card")
    assert find((beside, PRINT), "card") == (PRINT, beside)


def test_a_line_says_keys_kind_place_and_why_not():
    assert PRINT.line() == "Print card  ·  Alt+P"
    assert GREY.line() == "Print label  ·  There is no label yet."
    assert SHEETS[0].line() == "Correct  ·  Sheet  ·  Ctrl+2"
    there = Doing(ACTION, "x", "Print label", place="on the Stocks sheet")
    assert there.line() == "Print label  ·  on the Stocks sheet"


def test_never_more_than_can_be_looked_through():
    assert len(find([Doing(ACTION, str(n), f"Print {n}") for n in range(500)], "print")) == MOST


@given(WORDS, st.randoms(use_true_random=False))
def test_the_order_of_the_words_does_not_matter(words: list[str], chance):
    mixed = list(words)
    chance.shuffle(mixed)
    assert find(ALL, " ".join(mixed)) == find(ALL, "  ".join(words))


@given(WORDS, st.sampled_from(["print", "card", "zzz"]))
def test_another_word_never_finds_more(words: list[str], another: str):
    assert set(find(ALL, " ".join([*words, another]))) <= set(find(ALL, " ".join(words)))


@given(st.text(max_size=30))
def test_nothing_that_is_typed_raises_and_case_never_matters(typed: str):
    assert find(ALL, typed) == find(ALL, folded(typed))
    assert all(doing in ALL for doing in find(ALL, typed))


@given(st.sampled_from(ALL))
def test_everything_is_found_by_its_own_name_first(doing: Doing):
    assert find(ALL, doing.words)[0] == doing
