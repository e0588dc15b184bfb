"""H20 on the timetable: alkalinity and calcium never meet, in what is shown, in what is painted and in what is printed; H17 beside it."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime, time, timedelta
from decimal import Decimal
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.timetable_instants import instants
from evenwater.engine.timetable_question import DAY_MIN
from evenwater.screens import timetable_card
from evenwater.screens.timetable_sheet import Timetabled
from tests.engine.asking import NOW
from tests.engine.upkeeps import jug
from tests.screens.timetable_asking import THREE, doses_of, followed, pumped, seconds_of, timetabled

QUIET = {"quiet_from": "21:00", "quiet_to": "08:00"}
MAGNESIUM = pumped("magnesium", "Head 3")
ASKED: dict[str, tuple[tuple[dict[str, object], ...], Mapping[str, object], int]] = {
    "usual": (THREE, {}, 30),
    "quiet": (THREE, {"system": QUIET}, 30),
    "many doses": (THREE, {"pumps": {name: {"doses_wanted": "20"} for name in ("alkalinity", "calcium")}}, 30),
    "as near as may be": (THREE, {"system": {"apart": "15"}, "pumps": {name: {"doses_wanted": "24"} for name in ("alkalinity", "calcium")}}, 15),
    "far": (THREE, {"system": {"apart": "120"}}, 120),
    "a plan": (THREE, {"plans": (followed(),)}, 15),
    "a plan in quiet hours": (THREE, {"plans": (followed(),), "system": QUIET}, 15),
    "long doses": ((pumped("alkalinity", "Head 1", flow="0.5 mL/min", measured="8 dKH"), pumped("calcium", "Head 2", flow="0.5 mL/min")), {}, 30),
}  # fmt: skip
every_question = pytest.mark.parametrize("name", ASKED)


def found(name: str) -> tuple[Timetabled, int]:
    items, wishes, minutes = ASKED[name]
    timetable = timetabled(*items, **wishes)  # type: ignore[arg-type]
    assert timetable.answer is not None, timetable.view.messages
    return timetable, minutes


def spans(timetable: Timetabled, parameter: str) -> list[tuple[Decimal, Decimal]]:
    """Return when each dose begins and ends [min], read from the words of the list."""
    (pump,) = [told.pump for told in timetable.view.pumps if told.parameter == parameter]
    return [
        (Decimal(row.minute), row.minute + seconds_of(row.runs) / 60) for row in doses_of(timetable.view.every, pump)
    ]


def apart(one: tuple[Decimal, Decimal], other: tuple[Decimal, Decimal]) -> Decimal:
    """Return how long nothing runs between two doses, the shorter way round the clock [min]."""
    # The remainder of a decimal keeps its sign.
    return min((other[0] - one[1] + DAY_MIN) % DAY_MIN, (one[0] - other[1] + DAY_MIN) % DAY_MIN)


@every_question
def test_H20_no_dose_of_alkalinity_is_near_one_of_calcium(name: str) -> None:
    """By construction, from the end of each dose to the start of the other, over midnight too."""
    timetable, minutes = found(name)
    # Running times are told downwards to a tenth of a second.
    slack = Decimal("0.1") / 60
    for one in spans(timetable, "Alkalinity"):
        for other in spans(timetable, "Calcium"):
            assert apart(one, other) >= minutes - slack, (one, other)


@every_question
def test_H20_what_is_painted_and_what_is_printed_are_the_same_doses(name: str) -> None:
    timetable, _ = found(name)
    view, answer = timetable.view, timetable.answer
    assert answer is not None
    printed = timetable_card.page(answer, timetable.given, {}, NOW)
    assert printed.every == view.every
    for lane in view.lanes:
        assert [mark.minute for mark in lane.marks] == [row.minute for row in doses_of(view.every, lane.pump)]
    assert {lane.kind for lane in view.lanes} >= {"alkalinity", "calcium"}, "told from each other by their shape"


@every_question
def test_H20_the_sheet_says_what_must_not_meet_and_how_long_to_wait(name: str) -> None:
    timetable, _ = found(name)
    assert timetable.answer is not None
    printed = timetable_card.page(timetable.answer, timetable.given, {}, NOW)
    said = " ".join(printed.separation)
    assert "sodium CARBonate anhydrous" in said
    assert "calcium CHLORide dihydrate" in said
    assert "min" in said
    assert "Use another outlet for each" in said
    assert "Never mix the concentrates" in said


def test_H20_less_than_a_quarter_of_an_hour_is_refused() -> None:
    for minutes in ("0", "1", "14.9"):
        timetable = timetabled(*THREE, system={"apart": minutes})
        assert timetable.answer is None
        assert [message.path for message in timetable.view.beside] == ["apart"]


def test_H20_magnesium_stays_apart_from_alkalinity_as_its_dose_card_says() -> None:
    timetable = timetabled(*THREE[:2], MAGNESIUM)
    assert timetable.answer is not None
    for one in spans(timetable, "Alkalinity"):
        for other in spans(timetable, "Magnesium"):
            assert apart(one, other) >= Decimal("29.99")


def test_H20_limewater_and_chloride_never_meet_soda() -> None:
    """Whatever the jugs hold: the value that a pump is kept for decides."""
    potassium = pumped("potassium", "Head 4")
    other = pumped("calcium", "Head 2", additive=jug("calcium chloride anhydrous", 100.0), measured="420 mg/L")
    timetable = timetabled(THREE[0], other, potassium)
    assert timetable.answer is not None
    near = [apart(one, two) for one in spans(timetable, "Alkalinity") for two in spans(timetable, "Calcium")]
    assert min(near) >= Decimal("29.99")


@pytest.mark.parametrize(
    ("zone", "day"),
    [
        ("Europe/Berlin", date(2027, 3, 28)),
        ("Europe/Berlin", date(2027, 10, 31)),
        ("Australia/Lord_Howe", date(2027, 4, 4)),
    ],
)
def test_H17_H20_on_the_night_of_a_change_doses_stay_apart_and_none_is_lost(zone: str, day: date) -> None:
    """By the instants of the world, not by the clock on the wall."""
    timetable, minutes = found("usual")
    answer = timetable.answer
    assert answer is not None
    here = ZoneInfo(zone)
    set_at = datetime(2027, 1, 1, 12, tzinfo=here)
    doses = [dose for shift in (-1, 0, 1) for dose in instants(answer, day + timedelta(days=shift), here, set_at)]
    kinds = [one.parameter for one in timetable.given]
    for one in doses:
        for other in doses:
            if {kinds[one.pump], kinds[other.pump]} == {"alkalinity", "calcium"} and one.at <= other.at:
                assert (other.at - one.at).total_seconds() >= 60 * minutes + one.run_time_s
    begin, end = (datetime.combine(day + timedelta(days=shift), time.min, here) for shift in (-1, 2))
    hours = (end.timestamp() - begin.timestamp()) / 3600
    per_hour = len(answer.rows) / 24
    assert abs(len(doses) - hours * per_hour) <= 2
