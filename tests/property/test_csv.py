"""What is written comes back exactly, whatever it is; and no bytes whatever make the reader fail or take half of them."""

from __future__ import annotations

import random
from collections import Counter
from datetime import UTC, datetime, timedelta, timezone, tzinfo
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.quantities import Typed, from_canonical, to_canonical
from evenwater.engine.units import KINDS
from evenwater.screens.csv_choices import DECIMALS, ORDERS, Guess, ReadRow, Refusal
from evenwater.screens.csv_guess import sniff
from evenwater.screens.csv_preview import Preview, preview
from evenwater.screens.csv_reading import readings
from evenwater.screens.csv_writing import Columns, row_of, write_csv
from tests.engine.asking import known
from tests.screens.csv_files import BERLIN, NOW, sheet, taken

UNITS = [(p.name, unit.id) for p in known().parameters.values() for unit in KINDS[p.kind].units]
NAMES = (
    "",
    "Ana",
    "Žofie Müller",
    "李小龙",
    "عبد الله",
    "Ελένη",
    "𓆛 and 🐠",
    'a "b", c;d',
    "tab\there",
    "two\r\nlines",
    "=1+1",
    "'quoted'",
    " spaces ",
    "x" * 300,
)
ZONES = (UTC, BERLIN, ZoneInfo("Australia/Lord_Howe"), timezone(timedelta(hours=-9, minutes=-30)))


def _figure(draw: random.Random, parameter: str, unit: str) -> str:
    p = known().parameters[parameter]
    low, high = (from_canonical(to_canonical(end, p.kind, p.display_unit), p.kind, unit) for end in p.plausible)
    value = draw.uniform(low, high) if draw.random() < 0.7 else draw.uniform(low, low + (high - low) * 0.01)
    # Three digits may be read in two ways; that is another test.
    return f"{max(value, 0.0):.{4 if unit.startswith('SG') else draw.choice((1, 2, 4, 5))}f}"


def many(count: int) -> list[ReadRow]:
    """Return so many readings of all parameters and units, no two alike."""
    draw = random.Random("readings to be written")
    found: dict[object, ReadRow] = {}
    start = datetime(2010, 1, 1, tzinfo=UTC)
    while len(found) < count:
        parameter, unit = UNITS[len(found) % len(UNITS)]
        at = start + timedelta(seconds=draw.randrange(500_000_000), microseconds=draw.choice((0, 0, 7, 250_000)))
        if draw.random() < 0.3 and found:
            at = next(reversed(found.values())).at
        kit, who, note = (draw.choice(NAMES) for _ in range(3))
        row = row_of(at, parameter, Typed(_figure(draw, parameter, unit), unit), known(), None, kit, who, note)
        found.setdefault(row.key, row)
    return list(found.values())


@pytest.mark.parametrize(("wide", "count"), [(False, 2000), (True, 500)])
def test_two_thousand_readings_come_back_exactly(wide: bool, count: int) -> None:
    rows = many(count)
    assert {(row.parameter, row.typed.unit) for row in rows} == set(UNITS)
    assert {row.note for row in rows} == set(NAMES)
    again = [row._replace(line=0) for row in taken(write_csv(rows, Columns(wide=wide, zone=BERLIN)))]
    assert (Counter(again) if wide else again) == (Counter(rows) if wide else rows)
    assert all(one.at.utcoffset() == timedelta(0) for one in again)


_TEXT = st.text(st.characters(exclude_categories=["Cs"], exclude_characters="\0"), max_size=12).map(
    str.strip
) | st.sampled_from(NAMES)


@settings(max_examples=80)
@given(
    one=st.sampled_from(UNITS),
    number=st.decimals("0.001", "99", places=3) | st.decimals("0.01", "2000", places=2),
    comma=st.booleans(),
    at=st.datetimes(datetime(1970, 1, 2), datetime(2026, 11, 1)),  # noqa: DTZ001  (hypothesis adds the zone)
    zone=st.sampled_from(ZONES),
    beside=st.tuples(_TEXT, _TEXT, _TEXT),
    wide=st.booleans(),
)
def test_any_reading_comes_back(
    one: tuple[str, str],
    number: Decimal,
    comma: bool,
    at: datetime,
    zone: tzinfo,
    beside: tuple[str, str, str],
    wide: bool,
) -> None:
    parameter, unit = one
    value = to_canonical(float(number), known().parameters[parameter].kind, unit)
    row = row_of(
        at.replace(tzinfo=UTC),
        parameter,
        Typed(f"{number}".replace(".", "," if comma else "."), unit),
        known(),
        value,
        *beside,
    )
    data = write_csv([row], Columns(wide=wide, zone=zone))
    guess = sniff(data, known())
    assert isinstance(guess, Guess)
    assert not guess.asked
    found = preview(data, guess.choices, known(), BERLIN, NOW)
    # Only what the strict reader does not admit in a field is not taken.
    assert found.ready == (row.value == pytest.approx(value))
    if found.ready:
        (again,) = readings(data, guess.choices, known(), BERLIN, NOW)
        assert again.key == row.key
        assert (again.kit, again.who, again.note) == beside
        assert again.value == row.value
    else:
        assert "outside" in found.rows[0].cells[0].sentence


SHEETS = (
    sheet(
        "Date;KH (dKH);Ca mg/l;Note", "25.11.2025 08:00;8,3;420;x", '26.11.2025;8,1;1.250;"a;b"', "27.11.2025 09:00;;;"
    ),
    sheet("Date,Time,Alk,NO3", "03/04/2025,8:00 am,8.3,5", "04/05/2025,9:00 pm,2.9 meq/L,n/a", end="\n"),
    sheet("when|what|value|unit", "2025-10-26 02:30|KH|8.3|dKH", "2025-11-02T08:00:00+01:00|Ca|420|mg/L", end="\r"),
    sheet("Datum\tSalzgehalt\tWer", "2025-11-25 08:00\t35\tÄnne", "2025-11-26 08:00\t1,026\tÖ", encoding="utf-16"),
    sheet("Fecha;Alcalinidad;PO4 (ppb)", "25/11/2025;8,3;30", "26/11/2025;8,1;é", encoding="cp1252"),
    write_csv(many(6), Columns()),
    write_csv(many(6), Columns(wide=True)),
)
SPLICES = (b"\0", b'"', b'""', b";", b",", b"\t", b"|", b"\r", b"\n", b"\r\n", b"\xff", b"\xef\xbb\xbf", b"\xff\xfe", b"'", b"=", b"8,3", b"1.250",
           b"2025-11-25", b"99/99/9999", b"\xe2\x80\x8b", b"\xd8\x00", b" " * 50, b"9" * 60, b"NaN", b"-", b"(", b"\x1a", b"\x85", b";" * 300)  # fmt: skip
# Twenty thousand were run by hand; some run each time.
MUTATIONS = 800
RULINGS = (
    {}, {"decimal": "both", "order": "dmy", "clock": "24", "hour": "12:00"}, {"order": "mdy", "decimal": ",", "unit 2": "dKH", "twice": "first"},
    {"separator": ";", "heading": "0", "column 1": "date", "column 2": "calcium", "unit 2": "mg/L", "order": "dmy", "decimal": "."},
    {"column 2": "parameter", "column 3": "value", "column 4": "unit", "encoding": "cp1252"}, {"heading": "3", "column 1": "note", "series 1": "calcium"},
)  # fmt: skip


def mutated(draw: random.Random) -> bytes:
    data = draw.choice(SHEETS)
    for _ in range(draw.choice((1, 1, 2, 4, 12))):
        at = draw.randrange(len(data) + 1)
        match draw.randrange(6):
            case 0:
                data = data[:at] + draw.choice(SPLICES) + data[at:]
            case 1:
                data = data[:at] + data[at + draw.randrange(1, 9) :]
            case 2:
                data = data[:at] + draw.randbytes(draw.randrange(1, 5)) + data[at + draw.randrange(3) :]
            case 3:
                data = data[:at]
            case 4:
                end = draw.randrange(at, len(data) + 1)
                data = data[:at] + data[at:end] * 2 + data[end:]
            case _:
                data = data.replace(draw.choice(SPLICES), draw.choice(SPLICES), draw.choice((1, -1)))[:4000]
    return data


def looked_at(data: bytes, rulings: dict[str, str]) -> str:
    """Read a file the whole way, check that what is shown and what is taken agree, and return what became of it."""
    guess = sniff(data, known(), rulings)
    if isinstance(guess, Refusal):
        assert guess.words
        return "refused"
    found: Preview = preview(data, guess.choices, known(), BERLIN, NOW)
    assert found.messages
    assert found.ready <= (not guess.asked and not guess.choices.nothing and found.counts.readings > 0)
    assert guess.asked or guess.choices.decimal in DECIMALS
    assert guess.asked or guess.choices.order in ORDERS
    if not found.ready:
        return "asked" if guess.asked else "nothing"
    rows = list(readings(data, guess.choices, known(), BERLIN, NOW))
    assert len(rows) == found.counts.readings == len({row.key for row in rows})
    assert all(row.value >= 0.0 and row.at <= NOW + timedelta(minutes=5) for row in rows)
    shown = [cell for row in found.rows for cell in row.cells]
    assert sum(cell.state in ("taken", "unlikely") for cell in shown) == len(rows)
    assert all(cell.sentence for cell in shown if cell.state in ("refused", "unlikely", "duplicate"))
    return "taken"


def test_mutated_files_are_taken_as_shown_or_refused_in_words() -> None:
    draw = random.Random("mutated sheets")
    became = Counter(looked_at(mutated(draw), draw.choice(RULINGS)) for _ in range(MUTATIONS))
    assert became.keys() == {"refused", "asked", "nothing", "taken"}
    assert min(became.values()) > MUTATIONS // 20, became


@pytest.mark.parametrize(
    "data",
    [b"x" * 10_000_000, b";" * 10_000_000, b"2025-11-25;" * 900_000, b'"' * 10_000_001, b" " * 10_000_000 + b"a;b", b"\r\n" * 5_000_000 + b"a;b\n1;2",
     b"a;b\n" + b"\xff" * 1_000_000, b"2025-11-25;8.3\n" + b"( " * 400_000 + b";1", b"a;b\n" * 200 + b"2025-11-25;" + b" /" * 60_000],
    ids=range(9),
)  # fmt: skip
def test_monsters_are_answered(data: bytes) -> None:
    assert looked_at(data, {}) in ("refused", "asked", "nothing")


def test_a_thousand_columns_and_random_bytes() -> None:
    assert looked_at(("Date" + ";KH" * 1000 + "\n2025-11-25" + ";8" * 1000).encode(), {}) == "refused"
    wide = ("Date" + ";KH (dKH)" * 199 + "\n2025-11-25" + "".join(f";{8 + at / 1000}" for at in range(199))).encode()
    assert looked_at(wide, {}) == "taken"
    draw = random.Random("bytes")
    assert {looked_at(draw.randbytes(draw.randrange(200)), {}) for _ in range(200)} <= {"refused", "asked", "nothing"}
