"""The files of translations: exactly the texts of the program, with the parts of each, compiled as they stand, and units spelt right."""

from __future__ import annotations

from pathlib import Path

import pytest

from evenwater.engine.reader import Field, Ok, named_unit, read
from evenwater.engine.units import KINDS, Unit
from tests.language.making import translations

LANGUAGES = translations.LANGUAGES
# Every text of these is translated; any other falls back to English, text by text.
FINISHED = ("de", "es", "fr")
AGAIN = "run packaging/translations.py"


@pytest.fixture(scope="module")
def texts() -> translations.Texts:
    return translations.extract()


def test_texts_are_found_with_what_they_need(tmp_path: Path) -> None:
    file = tmp_path / "some.py"
    file.write_text(
        "A = marked('Stop')\n"
        "def f(n):\n    return say('Give {dose}', dose=n), say_many('{n} day', '{n} days', n), say('May', about='month'), say(A)\n",
        encoding="utf-8",
    )
    found = [(text.source, text.one, text.about, place) for text, place in translations.said_in(file)]
    assert found == [
        ("Stop", "", "", ""),
        ("Give {dose}", "", "", "f"),
        ("{n} days", "{n} day", "", "f"),
        ("May", "", "month", "f"),
    ]


def test_a_text_of_say_many_must_be_there_to_be_found(tmp_path: Path) -> None:
    file = tmp_path / "some.py"
    file.write_text("def f(n, day):\n    return say_many(day, '{n} days', n)\n", encoding="utf-8")
    with pytest.raises(ValueError, match="literals"):
        list(translations.said_in(file))


def test_data_gives_its_words(texts: translations.Texts) -> None:
    sources = {source for source, _ in texts}
    assert {
        "alkalinity",
        "sodium CARBonate anhydrous",
        "Wear goggles and gloves.",
        "Warning",
        "WARNING",
        "mL per hour",
    } <= sources
    assert not {"mL", "dKH", "Na2CO3"} & sources


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_file_holds_exactly_the_texts_of_the_program(language: str, texts: translations.Texts) -> None:
    file = translations.file_of(language)
    assert file.read_text(encoding="utf-8") == translations.written(language, texts, translations.read(file)), AGAIN


@pytest.mark.parametrize("language", LANGUAGES)
def test_translations_have_the_parts_of_their_texts(language: str, texts: translations.Texts) -> None:
    assert list(translations.faults(texts, translations.read(translations.file_of(language)))) == []


@pytest.mark.parametrize(
    ("form", "fault"),
    [
        ("{doze} am Tag", True),
        ("am Tag", True),
        ("{dose am Tag", True),
        ("{dose} am Tag", False),
        ("", False),
    ],
)
def test_a_wrong_part_is_seen(form: str, fault: bool) -> None:
    text = translations.Text("{dose} a day")
    made = {text.key: translations.Done((form,), finished=True)}
    assert bool(list(translations.faults({text.key: text}, made))) is fault


@pytest.mark.parametrize(
    ("forms", "faults"),
    [
        (("ein Tag", "{n} Tage"), 0),
        (("{n} Tag", "{n} Tage"), 0),
        (("ein Tag", "Tage"), 1),
        (("{m} Tag", "{n} Tage"), 1),
    ],
)
def test_only_the_form_for_one_may_leave_the_number_out(forms: tuple[str, str], faults: int) -> None:
    text = translations.Text("{n} days", "{n} day")
    assert len(list(translations.faults({text.key: text}, {text.key: translations.Done(forms, True)}))) == faults


def test_what_was_translated_stays_and_what_is_gone_goes(tmp_path: Path) -> None:
    kept, gone, counted = (
        translations.Text("Stop"), translations.Text("Go"), translations.Text("{n} days", "{n} day"),
    )  # fmt: skip
    file = tmp_path / "x.ts"
    first = {each.key: each for each in (kept, gone)}
    made = {kept.key: translations.Done(("Halt\u00a0<&>",), True), gone.key: translations.Done(("Los",), True)}
    file.write_text(translations.written("de", first, made), encoding="utf-8")
    assert translations.read(file) == made
    second = {each.key: each for each in (kept, counted)}
    file.write_text(translations.written("de", second, translations.read(file)), encoding="utf-8")
    found = translations.read(file)
    assert found == {kept.key: made[kept.key], counted.key: translations.Done(("", ""), False)}
    assert translations.missing(second, found) == ["{n} days"]


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_is_compiled_is_current(language: str, tmp_path: Path) -> None:
    file, out = translations.file_of(language), tmp_path / "now.qm"
    translations.compiled(file, out)
    assert out.read_bytes() == file.with_suffix(".qm").read_bytes(), AGAIN


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_finished_language_says_everything(language: str, texts: translations.Texts) -> None:
    left = translations.missing(texts, translations.read(translations.file_of(language)))
    # One that has become complete is named above from then on, so that it stays so.
    assert (left == []) is (language in FINISHED), left[:5]


@pytest.mark.parametrize("language", LANGUAGES)
def test_units_are_spelt_in_every_language(language: str) -> None:
    # L4: mL, never ml or cc, and never a micro sign.
    from tests.arch.test_words import ERROR_PRONE

    made = translations.read(translations.file_of(language)).values()
    assert not [form for done in made for form in done.forms if ERROR_PRONE.search(form)]


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_unit_is_read_as_it_is_shown(language: str) -> None:
    # What a sentence advises to write, and what stands beside a field, the strict reader takes in every language.
    made = translations.read(translations.file_of(language))
    units = [(kind, unit) for kind in KINDS.values() for unit in kind.units if unit.shown]
    assert sum((unit.shown, "") in made for _, unit in units) > 30
    for kind, unit in units:
        beside = Field("some", kind.name, unit.id, -1e9, 1e9)
        shown = made[unit.shown, ""].forms[0] if (unit.shown, "") in made else unit.shown
        for said in (shown, unit.shown):
            found = named_unit(said, beside)
            assert isinstance(found, Unit), said
            assert found.id == unit.id
            # With the decimal mark of the language, and the space that no line breaks at.
            if said.startswith("SG"):
                continue  # A hydrometer's scale ends somewhere, and this range does not.
            whole = read(f"1,02\u00a0{said}", beside, unit.id)
            assert isinstance(whole, Ok), said
            assert (str(whole.entered.number), whole.entered.unit) == ("1.02", unit.id)
