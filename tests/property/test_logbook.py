"""The log for any text: reading what was typed never raises, what was taken is shown as typed, what a dose carried is read back."""

from __future__ import annotations

import math
from datetime import UTC, datetime, timedelta
from typing import Any

import numpy as np
import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Typed, Water, from_canonical, to_canonical
from evenwater.engine.recipe import Carried, StockAnswer
from evenwater.engine.units import KINDS
from evenwater.screens import logbook, shelf, words
from evenwater.screens.logbook import Taken, carried, carries_text, history, row, take
from evenwater.screens.when import AHEAD_ALLOWED
from evenwater.store import Entry
from evenwater.store.entries import fields_of, text_of
from tests.engine.asking import known

NOW = datetime(2026, 11, 25, 9, 0, tzinfo=UTC)
WATER = Water(35.0, 25.0)
PARAMETERS = tuple(known().parameters.values())
# A specific gravity is judged as the salinity it stands for; its readings are in the tests of the reader.
UNITS = [(p, u.id) for p in PARAMETERS for u in KINDS[p.kind].units if not u.id.startswith("SG")]
CHEMICALS = tuple(known().chemicals)


def jug_of(chemical: str) -> StockAnswer:
    """Return a litre with a gram of a chemical in it."""
    batch = {"chemical": Typed(chemical), "dissolved": Typed("1", "g"), "made_up_to": Typed("1", "L")}
    found = shelf.answer_of(batch, known())
    assert isinstance(found, StockAnswer), chemical
    return found


JUG = jug_of("sodium carbonate anhydrous")
_pieces = st.sampled_from(
    [
        "8.1", "7,9", "1,250", "420", "0", "-3", "1e3", "nan", "inf", "١٢", "dKH", "mg/L", "mg/L as N", "meq/L", "mL", "L", "US gal",
        "gal", " ", "\u00a0", ":", "-", "T", "Z", "+02:00", "+23:59", "now", "today", "yesterday", "08:00", "23:50", "8 am", "2026-11-25",
        "2026-11-26", "0001-01-01", "9999-12-31", "1969-12-31", "2026-02-30", "25/11/2026", "alkalinity", "calcium", "<b>", "\x00", "\u202e", "🐠",
    ]
)  # fmt: skip
anything = st.one_of(
    st.text(max_size=30), st.lists(_pieces, max_size=5).map("".join), st.lists(_pieces, max_size=4).map(" ".join)
)
units = st.sampled_from(["", "dKH", "mg/L", "mg/L as N", "mL", "L", "US gal", "SG 25/25 degC", "no such unit"])
typed = st.builds(Typed, anything, units)
said_of = {
    kind: st.fixed_dictionaries({}, optional=dict.fromkeys(names, typed)) for kind, names in logbook.FIELDS.items()
}
noted = st.sampled_from(list(logbook.FIELDS)).flatmap(lambda kind: st.tuples(st.just(kind), said_of[kind]))


def judged(kind: str, said: dict[str, Typed], jug: StockAnswer | None) -> Taken | None:
    """Hold what ``take`` makes of a form against what the sheet relies on."""
    found = take(kind, said, known(), NOW, WATER, jug)
    if not isinstance(found, Taken):
        assert found, "nothing is refused without a word"
        for message in found:
            assert message.text
            assert message.path.removeprefix("log.") in logbook.FIELDS[kind], message
            assert message.code
        return None
    assert found.at <= NOW + AHEAD_ALLOWED
    assert (found.value is None) == (kind == "note")
    assert set(found.fields) - {"carries"} <= set(logbook.FIELDS[kind]) - {"at"}
    for name, given_text in found.fields.items():
        assert name == "carries" or given_text == said[name], "kept as typed"
    # Whatever is taken can be logged and shown.
    entry = Entry("x", "a", found.kind, found.subject, found.at, found.who, found.fields, found.value)  # type: ignore[arg-type]
    assert fields_of(text_of(entry.fields)) == dict(entry.fields)
    line = row("x", found, known(), {})
    assert line.when
    assert line.what
    return found


@settings(max_examples=600)
@given(noted, st.booleans())
@example(("note", {"text": Typed("x"), "at": Typed("0001-01-01 00:00")}), False)
@example(("note", {"text": Typed("x"), "at": Typed("0001-01-01T00:00:00+23:59")}), False)
@example(("note", {"text": Typed("x"), "at": Typed("9999-12-31T23:59:59-23:59")}), False)
@example(("note", {"text": Typed("x"), "at": Typed("9999-12-31 23:59")}), False)
@example(("note", {"text": Typed("x"), "at": Typed("08:0٠")}), False)
@example(("reading", {"parameter": Typed("alkalinity"), "value": Typed("8.1", "no such unit")}), False)
@example(("reading", {"parameter": Typed("salinity"), "value": Typed("1.0264", "SG 25/25 degC")}), False)
def test_whatever_stands_in_the_form_is_taken_or_refused_in_words(
    form: tuple[str, dict[str, Typed]], jug: bool
) -> None:
    judged(*form, JUG if jug else None)


@settings(max_examples=200)
@given(value=st.text("0123456789.,-+eE \u00a0", max_size=9), parameter=st.sampled_from(PARAMETERS), at=anything)
def test_a_reading_that_is_taken_is_a_likely_one(value: str, parameter: Parameter, at: str) -> None:
    form = {"parameter": Typed(parameter.name), "value": Typed(value, parameter.display_unit), "at": Typed(at)}
    found = judged("reading", form, None)
    if found is not None:
        assert found.value is not None
        low, high = (parameter.canonical(v) for v in parameter.plausible)
        assert low <= found.value <= high


@settings(max_examples=300)
@given(
    which=st.sampled_from(UNITS), share=st.floats(0.0, 1.0), decimals=st.integers(0, 6), mark=st.sampled_from(".,"),
    beside=st.booleans(), blanks=st.sampled_from(["", " "]),
)  # fmt: skip
def test_a_reading_is_shown_as_typed_and_kept_as_meant(
    which: tuple[Parameter, str], share: float, decimals: int, mark: str, beside: bool, blanks: str
) -> None:
    parameter, unit = which
    low, high = (from_canonical(parameter.canonical(v), parameter.kind, unit, WATER) for v in parameter.plausible)
    number = f"{low + share * (high - low):.{decimals}f}"
    meant = to_canonical(float(number), parameter.kind, unit, WATER)
    assume(parameter.canonical(parameter.plausible[0]) <= meant <= parameter.canonical(parameter.plausible[1]))
    written = number.replace(".", mark)
    value = Typed(blanks + written, unit) if beside else Typed(f"{written} {unit}", parameter.display_unit)
    found = take("reading", {"parameter": Typed(parameter.name), "value": value}, known(), NOW, WATER)
    if not isinstance(found, Taken):
        # The one figure that a strict reader asks about: three decimals may be thousands.
        assert decimals == 3, found
        return
    assert found.value == pytest.approx(meant, rel=1e-12, abs=1e-300)
    assert found.fields["value"] == value
    shown = row("x", found, known(), {})
    assert shown.amount == f"{written}\u00a0{words.unit_words(unit)}"
    # An entry is changed from what the disk has: it must be read as it was the first time.
    again = take(
        "reading", {**fields_of(text_of(found.fields)), "parameter": Typed(found.subject)}, known(), NOW, WATER
    )
    assert isinstance(again, Taken)
    assert again.value == found.value


@settings(max_examples=200)
@given(ml=st.integers(1, 10**9).map(lambda n: n / 1000.0), mark=st.sampled_from(".,"))
def test_a_dose_is_counted_as_typed(ml: float, mark: str) -> None:
    text = f"{ml:.3f}0".replace(".", mark)
    found = take("dose", {"stock": Typed("jug"), "amount": Typed(text, "mL")}, known(), NOW, WATER, JUG)
    assert isinstance(found, Taken)
    assert found.value == ml
    assert found.fields["amount"] == Typed(text, "mL")


# What a dose carried


carries = st.lists(
    st.builds(
        Carried,
        # Salt is carried by its mass and told in thousandths of seawater; the jugs themselves are held to that below.
        st.sampled_from(
            [p.name for p in PARAMETERS if p.name != "salinity"] + ["sodium", "chloride", "sulfate", "dic", "boron"]
        ),
        st.floats(0.0, 1e9, allow_subnormal=True),
        st.sampled_from(["meq/L", "mg/L", "mmol/L", "g/L"]),
    ),
    max_size=8,
    unique_by=lambda item: item.name,
)


@given(carries)
def test_what_a_dose_carried_is_read_back_to_the_last_bit(items: list[Carried]) -> None:
    jug = StockAnswer(JUG.batch, 25.0, tuple(items), (), None, ())
    text = carries_text(jug, Water())
    # A litre of seawater at 35 and 25 degC weighs 1.02334 kg (TEOS-10, from memory); salinity counts by the kilogram.
    litres = {"salinity": 1.02334}
    wanted = {item.name: item.per_litre / 1000.0 / litres.get(item.name, 1.0) for item in items}
    assert carried(text) == {
        name: pytest.approx(v, rel=1e-5 if name in litres else 0.0, abs=0.0) for name, v in wanted.items()
    }
    # And through the file.
    assert fields_of(text_of({"carries": Typed(text)}))["carries"].text == text


@pytest.mark.parametrize("chemical", CHEMICALS)
def test_what_a_jug_carries_is_what_it_raises(chemical: str) -> None:
    jug = jug_of(chemical)
    found = carried(carries_text(jug, Water()))
    assert len(found) == len(jug.carries), "every name is told from every other"
    for parameter, rise in jug.rises:
        # A millilitre into a hundred litres: what it carries, over the volume.
        assert found[parameter.name] / 100.0 == pytest.approx(rise, rel=1e-9), parameter.name


@given(
    st.one_of(
        st.text(max_size=60),
        st.lists(st.sampled_from(["alkalinity", " ", "; ", "2.0", "nan", "inf", "meq/mL"]), max_size=8).map("".join),
    )
)
@example("alkalinity nan meq/mL")
@example("alkalinity inf meq/mL")
def test_a_damaged_text_carries_only_finite_amounts(text: str) -> None:
    assert all(math.isfinite(amount) for amount in carried(text).values())


# The chart


@settings(max_examples=100)
@given(
    parameter=st.sampled_from(PARAMETERS),
    shares=st.lists(st.floats(0.0, 1.0), max_size=30),
    gaps=st.lists(st.integers(0, 10**6), max_size=30),
)
def test_the_chart_shows_every_reading_in_the_unit_of_the_parameter(
    parameter: Parameter, shares: list[float], gaps: list[int]
) -> None:
    low, high = parameter.plausible
    shown = np.array([low + share * (high - low) for share in shares])
    at = NOW.timestamp() - np.cumsum([0, *gaps, *[60] * len(shares)])[: len(shares)][::-1].astype(np.float64)
    nothing: Any = (np.array([]), np.array([]))
    view = history(parameter, at, np.array([parameter.canonical(v) for v in shown]), nothing, np.array([]))
    assert view.times.tolist() == at.tolist()
    assert view.values.tolist() == pytest.approx(shown.tolist(), rel=1e-9, abs=1e-12)
    assert view.unit == words.unit_words(parameter.display_unit)
    assert view.kept == parameter.range_kept
    # As many decimals as a kit has: half of its accuracy is seen.
    assert 10.0**-view.decimals <= parameter.kit_accuracy
    assert timedelta(seconds=float(at[-1] - at[0])) >= timedelta(0) if at.size else True
