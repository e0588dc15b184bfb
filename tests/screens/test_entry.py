"""One field without its widget: judging, converting for show, relabelling."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from evenwater.engine import fields
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field
from evenwater.screens import entry
from evenwater.screens.words import sentence

ALKALINITY = Field("change.measured", "alkalinity", "dKH", 0.0, 150.0)
CALCIUM = Field("change.measured", "ion", "mg/L", 0.0, 6000.0)


@pytest.mark.parametrize(
    ("text", "state"), [("", "empty"), ("6,8", "ok"), ("6.8 dKH", "ok"), ("abc", "error"), ("999", "error")]
)
def test_states(text: str, state: str) -> None:
    judged = entry.judge(Typed(text, "dKH"), ALKALINITY)
    assert judged.state == state
    assert bool(judged.message) == (state == "error")


def test_two_readings_become_two_offers_that_say_what_they_enter() -> None:
    judged = entry.judge(Typed("1.250", "mg/L"), CALCIUM)
    assert judged.state == "ask"
    assert [(o.words, o.text, o.unit) for o in judged.offers] == [
        ("1.25\u00a0mg per L", "1.25", "mg/L"),
        ("1250\u00a0mg per L", "1250", "mg/L"),
    ]


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        (Typed("6,8", "dKH"), "6,8"),
        (Typed("6.80 dKH", "dKH"), "6.80"),
        (Typed("2.4 meq/L", "dKH", "meq/L"), "2.4"),
        (Typed("2.4 meq/L", "dKH"), "6.729"),
        (Typed("abc", "dKH"), "abc"),
        (Typed("1,250,0", "dKH", "meq/L"), "1,250,0"),
    ],
)
def test_what_the_field_shows(typed: Typed, shown: str) -> None:
    assert entry.display(typed, ALKALINITY) == shown


def test_converting_there_and_back_shows_what_was_typed() -> None:
    typed = Typed("75", "US gal")
    litres = entry.converted(typed, fields.NET_VOLUME, "L")
    assert litres == Typed("75", "US gal", "L")
    # 75 US gal of 3.785411784 L each (NIST SP 811, appendix B).
    assert entry.display(litres, fields.NET_VOLUME) == "283.9"
    assert entry.conversion_words(litres, fields.NET_VOLUME) == "Typed as 75\u00a0US gal, shown as 283.9\u00a0L."
    assert entry.converted(litres, fields.NET_VOLUME, "US gal") == typed


def test_what_has_no_one_meaning_is_not_converted() -> None:
    for text in ("abc", "999", "1.2.3"):
        assert entry.converted(Typed(text, "dKH"), ALKALINITY, "meq/L") is None
    assert entry.converted(Typed("1,250", "mg/L"), CALCIUM, "mg/kg") is None


def test_an_empty_field_only_changes_its_unit() -> None:
    assert entry.converted(Typed("", "dKH"), ALKALINITY, "meq/L") == Typed("", "meq/L")


def test_relabelling_says_before_and_after_for_every_other_unit() -> None:
    offers = entry.relabels(Typed("75", "L"), fields.NET_VOLUME)
    assert [(o.text, o.unit) for o in offers] == [("75", "mL"), ("75", "US gal"), ("75", "imperial gal")]
    assert offers[1].words == "Relabel: 75\u00a0L becomes 75\u00a0US gal"


def test_a_number_out_of_range_can_be_relabelled_and_words_cannot() -> None:
    assert {o.unit for o in entry.relabels(Typed("999", "dKH"), ALKALINITY)} == {"meq/L", "mmol/L", "ppm as CaCO3"}
    assert entry.relabels(Typed("abc", "dKH"), ALKALINITY) == ()


def test_the_unit_in_the_text_is_followed_once() -> None:
    followed = entry.with_unit_followed(Typed("2.4 meq/L", "dKH"), ALKALINITY)
    assert followed == Typed("2.4 meq/L", "dKH", "meq/L")
    kept = Typed("2.4 meq/L", "dKH", "ppm as CaCO3")
    assert entry.with_unit_followed(kept, ALKALINITY) == kept


def test_a_plain_number_has_no_units_to_choose() -> None:
    assert entry.unit_choices(fields.DOSES_PER_DAY) == ()


@given(st.floats(0.001, 140.0), st.sampled_from(["meq/L", "dKH", "mmol/L", "ppm as CaCO3"]))
def test_H28_showing_another_unit_never_touches_the_typed_text(value: float, unit: str) -> None:
    typed = Typed(f"{value:.4f}", "dKH")
    shown = typed
    for _ in range(5):
        again = entry.converted(shown, ALKALINITY, unit)
        if again is None:  # 1.234 may be asked about
            return
        shown = entry.converted(again, ALKALINITY, "dKH") or again
        entry.display(shown, ALKALINITY)
    assert (shown.text, shown.unit) == (typed.text, typed.unit)


def test_a_reading_that_is_chosen_is_not_asked_about_again() -> None:
    """Three digits after a point could be thousands; the offer that is taken has one meaning only."""
    judged = entry.judge(Typed("4.125", "mg/L"), CALCIUM, sentence)
    assert judged.state == "ask"
    assert len(judged.offers) == 2
    for offer in judged.offers:
        assert entry.judge(Typed(offer.text, offer.unit), CALCIUM, sentence).state == "ok", offer
