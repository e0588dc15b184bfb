"""Cards, labels and sheets for the wall in every language: the same figures, one by one, the same codes, and the rules for figures."""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator
from functools import cache, partial, reduce
from itertools import combinations
from typing import Any

import pytest
from PySide6.QtWidgets import QApplication

from evenwater import wording
from evenwater.card.items import DESCENT, MM_PER_POINT, Text
from evenwater.card.label_paper import LABEL_PAPERS
from evenwater.card.output import lay_out
from evenwater.card.paper import ROUND_PAPERS
from evenwater.screens import dose_card
from evenwater.screens.contingency import contingencies
from evenwater.screens.contingency_views import ContingencySet
from evenwater.screens.jug_label import JugLabel
from evenwater.screens.round_page import RoundPage
from evenwater.ui import language
from tests.card import test_contingency as contingency
from tests.card import test_emergency as emergency
from tests.card import test_timetable_sheet as timetable
from tests.card import test_together as together
from tests.card.labels import LABELS
from tests.language.making import translations
from tests.language.pseudo import STYLE, pseudo, unsaid
from tests.screens.asked import MORE, NOW, answer
from tests.screens.jugs import LONG
from tests.screens.lint import RULES, strings

# Every kind of sheet, and of the dose cards every kind of answer: each is made anew in each language.
MAKE: dict[str, Callable[[], Any]] = {
    **{f"card, {name}": partial(lambda changes: dose_card.card(answer(changes), NOW), MORE[name]) for name in MORE},
    **{
        f"contingency, {name}": partial(
            lambda changes: ContingencySet(contingencies(answer(changes), NOW, "soda:1234abcd", "2026-11-24")), changes
        )
        for name, changes in contingency.SETS.items()
    },
    **{f"label, {name}": made for name, made in LABELS.items()},
    "emergency": emergency.made,
    "emergency, no way": partial(emergency.made, "", use=None),
    "rounds, nothing due": partial(RoundPage, "", "", "", ()),
    "timetable": timetable.sheet,
    "timetable, quiet": partial(timetable.sheet, system={"quiet_from": "22:00", "quiet_to": "07:00"}),
    "together": partial(together.sheet, system=together.WATER_OF),
    "together, plan": partial(together.sheet, plans=(together.followed(),)),
}
ON_PAPER = (
    "card, label", "card, mixed magnesium", "contingency, ash", "label, mix", "label, caustic", "emergency", "timetable", "together, plan",
)  # fmt: skip
# What these sheets have of the keeper's own.
OWN = (
    "North frag bay", "frags leave on Friday", "Soda ash, white jug", "Rack pump", "Shelf pump", "Head 1", "Head 2", "Rotifer mash",
    LONG.name, LONG.mixed_on, LONG.mixed_by, LONG.use_by,
)  # fmt: skip
# A number, a time of day or a date in figures, whichever mark it has.
FIGURE = re.compile(r"\d+(?:[.,:-]\d+)*")
# Names of chemicals hold numbers that are no figures, and so do hydrometer scales.
FORMULA = re.compile(r"(?!H\d{3})[A-Z][A-Za-z]*\d[A-Za-z0-9()·]*")
BESIDES = re.compile(r"\d+ \w+ \d+|[\d.,]+")
ENGLISH_ONLY = {"L7 decimal comma", "L6 group separator"}
DECIMAL_POINT = re.compile(r"\d\.\d")
GROUP = re.compile(r"\d[.' \u2009\u202f\u00a0]\d{3}(?![0-9])|\d,\d{3},\d{3}")


def figures(text: str, mark: str) -> Counter[str]:
    """Return the figures of a text as English writes them, each as often as it stands there."""
    return Counter(figure.replace(mark, ".") for figure in FIGURE.findall(FORMULA.sub("x", text)))


def texts(sheet: Any) -> list[str]:
    return [text for text in strings(sheet) if text]


def pages(sheet: Any) -> list[list[Text]]:
    """Return what is written on each page of the smallest paper that a sheet goes on."""
    labels, papers = list(LABEL_PAPERS.values()), list(ROUND_PAPERS.values())
    paper = labels[0] if isinstance(sheet, JugLabel) else papers[-1]
    return [[item for item in page.items if isinstance(item, Text)] for page in lay_out(sheet, paper)]


def set_on(sheet: list[list[Text]]) -> frozenset[str]:
    """Return the figures that a sheet has on paper."""
    # Another language may need more pages, or leave the chart less room for the figures of its axes.
    lines = [item.words for page in sheet for item in page if not BESIDES.fullmatch(item.words)]
    return frozenset(figure for line in lines for figure in FIGURE.findall(FORMULA.sub("x", line)))


def laid_over(page: list[Text]) -> Iterator[str]:
    """Yield words that are written over others."""
    for one, other in combinations(page, 2):
        across = min(one.box[2], other.box[2]) - max(one.box[0], other.box[0])
        down = min(one.box[3], other.box[3]) - max(one.box[1], other.box[1])
        if across > 0.05 and down > 0.05 + DESCENT * one.points * MM_PER_POINT:
            yield f"{one.words!r} over {other.words!r}"


@pytest.fixture(params=translations.LANGUAGES)
def speak(request: pytest.FixtureRequest, qapp: QApplication) -> Iterator[Callable[[bool], str]]:
    """Return a function that speaks another language, or English again."""

    def to(other: bool) -> str:
        return language.apply(qapp, request.param if other else language.ENGLISH)

    yield to
    to(False)


@cache
def english(name: str) -> tuple[str, tuple[str, ...]]:
    """Return the code and the texts of a sheet in English, which must be spoken when it is asked for first."""
    assert wording.english()
    sheet = MAKE[name]()
    return code_of(sheet), tuple(texts(sheet))


def test_every_sheet_has_the_same_code_and_figures_and_keeps_the_rules_for_them(speak: Callable[[bool], str]) -> None:
    for name in MAKE:
        english(name)
    mark = language.STYLES[speak(True)].decimal
    wrong, seen = [], 0
    for name, make in MAKE.items():
        sheet, (code, said) = make(), english(name)
        assert code_of(sheet) == code, name
        its = texts(sheet)
        assert len(its) == len(said), name
        for one, other in zip(said, its, strict=True):
            seen += sum(figures(one, ".").values())
            if figures(one, ".") != figures(other, mark):
                wrong.append(f"{name}: {one!r} became {other!r}")
            wrong += [f"{name}: {fault}: {other!r}" for fault in faults(other)]
    assert seen > 1000
    assert not wrong, "\n".join(wrong)
    assert len({english(name)[0] for name in MAKE} - {""}) > 10


def test_paper_has_the_figures_of_the_english_one_and_nothing_over_other_words(speak: Callable[[bool], str]) -> None:
    first = {name: set_on(pages(MAKE[name]())) for name in ON_PAPER}
    mark = language.STYLES[speak(True)].decimal
    over = []
    for name in ON_PAPER:
        laid = pages(MAKE[name]())
        assert {figure.replace(mark, ".") for figure in set_on(laid)} == first[name], name
        assert len(first[name]) > 5
        over += [f"{name}: {words}" for page in laid for words in laid_over(page)]
    assert not over, "\n".join(over)


def test_nothing_on_paper_is_left_in_english(qapp: QApplication) -> None:
    wording.use(pseudo, STYLE)
    try:
        said = {text for make in MAKE.values() for text in texts(make())}
    finally:
        wording.use(None)
    left = {text: words for text in said if (words := unsaid(reduce(_without, OWN, text)))}
    assert not left, "\n".join(f"{words} in {text!r}" for text, words in left.items())


def _without(text: str, name: str) -> str:
    return text.replace(name, "")


def code_of(sheet: Any) -> str:
    """Return the code that a sheet is told by, or an empty string."""
    return str(getattr(sheet, "plan_id", "") or getattr(sheet, "code", ""))


def faults(text: str) -> list[str]:
    """Return the rules that a text breaks, of those that hold with a decimal comma."""
    bare = re.sub(
        "[„“«][^„“”«»]*[“”»]", "x", FORMULA.sub("x", re.sub(r"SG (?:25/25|20/20|60/60)[ \u00a0]°[CF]", "SG", text))
    )
    # An article before a vowel is no litre, and letters with accents are letters.
    bare = re.sub(r"[^\W\d_]", lambda letter: letter[0] if letter[0].isascii() else "a", re.sub(r"\bl['’]", "", bare))
    found = [name for name, rule in RULES.items() if name not in ENGLISH_ONLY and rule.search(bare)]
    return found + ["a group"] * bool(GROUP.search(bare)) + ["a decimal point"] * bool(DECIMAL_POINT.search(bare))
