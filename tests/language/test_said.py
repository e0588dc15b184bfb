"""What is said: in English what stands in the code, in another language its words, numbers and dates, and nothing left behind."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import UTC, datetime

import pytest

from evenwater import wording
from evenwater.engine.fields import MADE_UP_TO
from evenwater.engine.reader import Ok, read
from evenwater.screens import answer as answer_view
from evenwater.screens import dose_card, shown
from evenwater.screens.answer_json import answered
from evenwater.screens.terms import capitalized, inside, listed, term
from evenwater.screens.when import age_words, read_when, written
from evenwater.wording import Style, marked, say, say_all, say_many
from tests.language.pseudo import STYLE, pseudo, unsaid
from tests.screens import recovering, timetable_asking, together_asking
from tests.screens.asked import NOW, answer, outcome, shown_for
from tests.screens.lint import NBSP, strings

GERMAN = {
    "Give {dose} a day": "Täglich {dose} geben",
    "{n} doses": ("{n} Dosis", "{n} Dosen"),
    "alkalinity": "Alkalinität",
    "now": "jetzt", "today": "heute", "yesterday": "gestern",
    "{weekday} {day} {month} {year}": "{weekday}, {day}. {month} {year}",
    "Wed": "Mi", "Nov": "November",
    "{first} and {last}": "{first} und {last}",
    "Daily rise": "Anstieg am Tag",
}  # fmt: skip


def german(text: str, _about: str, count: int) -> str:
    found = GERMAN.get(text, text)
    return found if isinstance(found, str) else found[count != 1]


@pytest.fixture
def speaking() -> Iterator[None]:
    wording.use(german, Style(decimal=",", capital_nouns=True))
    yield
    wording.use(None)


@pytest.fixture
def disguised() -> Iterator[None]:
    wording.use(pseudo, STYLE)
    yield
    wording.use(None)


def test_english_is_what_stands_in_the_code() -> None:
    assert say("Give {dose} a day", dose="2 mL") == "Give 2 mL a day"
    assert [say_many("{n} dose", "{n} doses", n) for n in (0, 1, 2)] == ["0 doses", "1 dose", "2 doses"]
    assert say("{braces} without parts") == "{braces} without parts"
    assert shown.significant(1.25, 3) == "1.25"


@pytest.mark.usefixtures("speaking")
def test_another_language_has_its_words_and_forms() -> None:
    assert say("Give {dose} a day", dose="{n}") == "Täglich {n} geben"
    assert [say_many("{n} dose", "{n} doses", n) for n in (1, 2)] == ["1 Dosis", "2 Dosen"]
    # What it has no words for is English, in the right number.
    assert [say_many("{n} jug", "{n} jugs", n) for n in (1, 2)] == ["1 jug", "2 jugs"]


@dataclass(frozen=True)
class Row:
    """A row of a table, for the test."""

    name: str
    words: str


@pytest.mark.usefixtures("speaking")
def test_of_a_table_only_what_is_marked_is_said() -> None:
    table = {"today": (marked("today"), "today", 3), "row": Row("now", marked("now"))}
    assert say_all(table) == {"today": ("heute", "today", 3), "row": Row("now", "jetzt")}
    assert say_all(marked("now")) == "jetzt"


@pytest.mark.usefixtures("speaking")
def test_a_noun_keeps_its_capital() -> None:
    assert capitalized("alkalinity") == "Alkalinität"
    assert capitalized("die Alkalinität") == "Die Alkalinität"
    assert inside("Anstieg") == "Anstieg"
    assert term("a word of the keeper's own") == "a word of the keeper's own"
    assert listed(["a", "b", "c"]) == "a, b und c"


def test_english_sets_a_term_in_small_letters() -> None:
    assert (capitalized("alkalinity"), inside("Daily rise"), listed(["a"]), listed([])) == (
        "Alkalinity",
        "daily rise",
        "a",
        "",
    )


@pytest.mark.usefixtures("speaking")
def test_numbers_have_a_comma_and_never_a_group_or_a_trailing_zero() -> None:
    assert shown.significant(1234567.0, 3) == "1234567"
    assert (shown.significant(0.5, 2), shown.figure(2.50, 2), shown.dose(12.5)) == ("0,5", "2,5", "12,5\u00a0mL")
    assert shown.about(1250.0) == "1,25\u00a0L (litres)"
    # What is put into a field is read back as it was meant.
    read_back = read(shown.figure(2.5, 2), MADE_UP_TO, "L")
    assert isinstance(read_back, Ok)
    assert float(read_back.entered.number) == 2.5


@pytest.mark.usefixtures("speaking")
def test_dates_come_in_the_order_of_the_language() -> None:
    assert shown.date_words(datetime(2026, 11, 25, 9, 0, tzinfo=UTC)) == "Mi, 25. November 2026"


@pytest.mark.usefixtures("speaking")
@pytest.mark.parametrize(
    ("typed", "hour"), [("jetzt", 9), ("heute 08:00", 8), ("today 08:00", 8), ("08:00", 8), ("Gestern, 18:30", 18)]
)
def test_a_day_is_read_in_both_languages(typed: str, hour: int) -> None:
    now = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
    found = read_when(typed, now)
    assert isinstance(found, datetime)
    assert found.hour == hour
    assert read_when(written(found, now), now) == found
    assert age_words(found, now)


@pytest.mark.usefixtures("disguised")
def test_figures_of_the_answer_for_programs_are_the_same_in_every_language() -> None:
    found = answered(answer())
    wording.use(None)
    english = answered(answer())
    assert {name: found[name] for name in english if name not in ("reasons", "cautions")} == {
        name: english[name] for name in english if name not in ("reasons", "cautions")
    }


# What these questions have of the keeper's own.
OWN = {"North", "frag"}


@pytest.mark.usefixtures("disguised")
def test_nothing_of_an_answer_is_left_in_english() -> None:
    changes = {"change.measured": "9", "pump.flow": None}
    views = (
        answer_view.view(answer(), NOW),
        answer_view.view(outcome(changes), NOW, shown_for({})),
        replace(dose_card.card(answer(), NOW), plan_id=""),
        timetable_asking.timetabled(
            timetable_asking.pumped("alkalinity", "1"), timetable_asking.pumped("calcium", "2")
        ).view,
        together_asking.shown(),
        recovering.shown().view,
    )
    # Single words are states and codes, which nobody reads.
    sentences = [text for view in views for text in strings(view) if " " in text or NBSP in text]
    left = {text: found for text in sentences if (found := set(unsaid(text)) - OWN)}
    assert len(sentences) > 100
    assert left == {}
