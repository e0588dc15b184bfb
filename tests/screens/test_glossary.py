"""The glossary: in the order of the alphabet, every link leads somewhere, every definition says where it is from."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from evenwater import wording
from evenwater.engine import catalogue
from evenwater.screens import glossary

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
TERMS = glossary.load(RESOURCES)


def test_terms_stand_in_the_order_of_the_alphabet() -> None:
    names = [term.name.casefold() for term in TERMS.terms]
    assert names == sorted(names)
    keys = list(tomllib.loads((RESOURCES / glossary.FILE).read_text(encoding="utf-8")))
    assert [term.key for term in TERMS.terms] == keys, "so does the file, for whoever looks into it"


def test_order_follows_the_language() -> None:
    backwards = {term.name: term.name[::-1] for term in TERMS.terms}
    wording.use(lambda text, _about, _count: backwards.get(text, text))
    try:
        there = glossary.load(RESOURCES)
    finally:
        wording.use(None)
    names = [term.name.casefold() for term in there.terms]
    assert names == sorted(names)
    assert [term.key for term in there.terms] != [term.key for term in TERMS.terms]


@pytest.mark.parametrize("term", TERMS.terms, ids=lambda term: term.key)
def test_a_term_is_defined_and_its_links_lead_somewhere(term: glossary.Term) -> None:
    assert term.text.endswith(".")
    assert len(term.text.split()) <= 40
    assert term.source == "Common practice, no source." or term.source.startswith("Source: ")
    assert term.see
    assert not [key for key in term.see if TERMS.find(key) is None or key == term.key]


def test_every_term_is_reached_from_another() -> None:
    linked = {key for term in TERMS.terms for key in term.see}
    assert {term.key for term in TERMS.terms} == linked


def test_words_are_found_in_names_first_and_without_accents() -> None:
    found = TERMS.matching("SALIN")
    assert found[0].key == "salinity"
    assert {"natural seawater", "top-off"} <= {term.key for term in found}
    assert TERMS.matching("sálinity")[0].key == "salinity"
    assert TERMS.matching("dragon") == ()


def test_days_after_which_a_reading_is_stale_are_the_catalogues() -> None:
    known = catalogue.load(RESOURCES).parameters
    stale = TERMS.find("stale reading")
    assert stale is not None
    days = (known["alkalinity"].stale_days, known["calcium"].stale_days, known["magnesium"].stale_days)
    assert "alkalinity after {:g} days, calcium after {:g}, magnesium after {:g}".format(*days) in stale.text
