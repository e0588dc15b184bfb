"""H9, H14, H17 and H18 before an entry is logged: copied readings, a dose that was given already, too much within 24 hours."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st
from PySide6.QtCore import QSettings

from evenwater.engine.quantities import Typed, Water
from evenwater.screens.before_logging import AGAIN, FLAT, IN_A_ROW, TOO_MUCH, Rises, questions
from evenwater.screens.logbook import Taken
from evenwater.screens.shown import Shown
from evenwater.session import Document
from evenwater.store import Store
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.engine.asking import known
from tests.ui.log_making import (
    Wall,
    begin_dose,
    furnished,
    hung,
    kept,
    lines,
    living_in,
    log_of,
    pick,
    put,
    said_below,
)
from tests.ui.stocks_making import ASH, click, document_of, jug_named, to_sheet
from tests.ui.window_making import opened, reckoned, sheet_of

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
ALKALINITY = known().parameters["alkalinity"]
SHOWN = Shown(ALKALINITY, "dKH", Water(35.0, 25.0))
HARD = ALKALINITY.canonical(ALKALINITY.rise_hard)
NOTHING: Sequence[tuple[Taken, str]] = ()


def read(value: float, at: datetime, kit: str = "") -> Taken:
    fields = {"value": Typed(f"{value}", "dKH"), **({"kit": Typed(kit)} if kit else {})}
    return Taken("reading", "alkalinity", at, "", fields, value)


def dose(ml: float, at: datetime, who: str = "") -> Taken:
    return Taken("dose", "jug", at, who, {"amount": Typed(f"{ml:g}", "mL")}, ml)


def codes(*args: object) -> list[str]:
    return [message.code for message in questions(*args)]  # type: ignore[arg-type]


# H9: a figure that was copied


@pytest.mark.parametrize(
    ("before", "asked"),
    [
        ([], False),
        ([8.0], False),
        ([8.0, 8.0], True),
        ([8.0, 8.0, 7.0], True),
        ([8.0, 7.9], False),
        ([7.9, 8.0, 8.0], False),
        ([8.0, 8.0, 8.0, 8.0], True),
    ],
)
def test_H9_the_third_reading_alike_in_a_row_is_asked_about(before: list[float], asked: bool) -> None:
    earlier = [
        (read(value, NOON - timedelta(days=n + 1)), f"Alkalinity, {value} dKH") for n, value in enumerate(before)
    ]
    assert IN_A_ROW == 3
    assert codes(read(8.0, NOON), earlier) == ([FLAT] if asked else [])


def test_H9_the_question_names_both_readings_and_offers_to_log_it_all_the_same() -> None:
    earlier = [(read(8.0, NOON - timedelta(days=n)), "Alkalinity, 8 dKH") for n in (1, 2)]
    (asked,) = questions(read(8.0, NOON), earlier)
    for word in ("8 dKH", "Tue 24 Nov", "Mon 23 Nov", "tested again"):
        assert word in asked.text.replace("\u00a0", " ")
    assert len(asked.offers) == 1


def test_H9_a_reading_that_is_filled_in_later_is_held_against_those_before_it() -> None:
    after = [(read(8.0, NOON + timedelta(days=n)), "") for n in (2, 1)]
    assert codes(read(8.0, NOON), after) == [], "what came later cannot have been copied"
    both = [*after, *[(read(8.0, NOON - timedelta(days=n)), "") for n in (1, 2)]]
    assert codes(read(8.0, NOON), both) == [FLAT]


def test_H9_doses_alike_are_no_copied_readings() -> None:
    earlier = [(dose(8.0, NOON - timedelta(days=n)), "") for n in (1, 2, 3)]
    assert codes(dose(8.0, NOON), earlier) == []


# H14: given already


@pytest.mark.parametrize("zone", ["UTC", "Europe/Berlin", "Australia/Lord_Howe", "Asia/Kathmandu"])
@pytest.mark.parametrize(("apart", "asked"), [(0, True), (53, True), (54, False), (55, False), (1440, False)])
def test_H14_a_dose_is_asked_about_while_the_next_one_is_not_planned(zone: str, apart: int, asked: bool) -> None:
    there, interval = ZoneInfo(zone), timedelta(minutes=54)
    given_at = NOON.astimezone(there)
    for later in (apart, -apart):
        at = given_at + timedelta(minutes=later)
        found = questions(dose(3.0, at), [(dose(12.5, given_at, "Ada"), "Dose: jug, 12.5 mL")], (), interval)
        assert bool(found) is asked
        for message in found:
            assert message.code == AGAIN
            assert "12.5 mL" in message.text
            assert "by Ada" in message.text
            assert f"{given_at:%H:%M}" in message.text


def test_H14_the_day_is_said_when_it_is_another_one() -> None:
    before = datetime(2026, 11, 24, 23, 59, tzinfo=UTC)
    after = before + timedelta(minutes=2)
    (asked,) = questions(dose(3.0, after), [(dose(12.5, before), "Dose")], (), timedelta(hours=1))
    assert "Tue 24 Nov" in asked.text


@pytest.mark.parametrize(
    ("first", "second"),
    [
        # Two minutes apart over the gap of the spring night, twenty over the hour that comes twice.
        ("2026-03-29T00:59:00+00:00", "2026-03-29T01:01:00+00:00"),
        ("2026-10-25T00:50:00+00:00", "2026-10-25T01:10:00+00:00"),
    ],
)
def test_H17_two_doses_are_as_far_apart_as_time_is_and_not_as_the_wall_says(first: str, second: str) -> None:
    there = ZoneInfo("Europe/Berlin")
    one, two = (datetime.fromisoformat(text).astimezone(there) for text in (first, second))
    interval = timedelta(minutes=30)
    assert codes(dose(3.0, two), [(dose(12.5, one), "Dose")], (), interval) == [AGAIN]
    assert codes(dose(3.0, one), [(dose(12.5, two), "Dose")], (), interval) == [AGAIN]


def test_H17_doses_an_hour_apart_at_the_same_hour_of_the_wall_are_two() -> None:
    there = ZoneInfo("Europe/Berlin")
    first, second = (datetime(2026, 10, 25, 2, 30, tzinfo=there, fold=fold) for fold in (0, 1))
    assert codes(dose(3.0, second), [(dose(3.0, first), "Dose")], (), timedelta(minutes=54)) == []


# H18: too much within 24 hours


def test_H18_a_dose_at_one_minute_to_midnight_counts_at_one_past() -> None:
    before, after = datetime(2026, 11, 25, 23, 59, tzinfo=UTC), datetime(2026, 11, 26, 0, 1, tzinfo=UTC)
    for share, asked in ((0.51, True), (0.5, False)):
        rises = Rises(SHOWN, share * HARD, [(before, share * HARD)])
        assert codes(dose(10.0, after), NOTHING, [rises]) == ([TOO_MUCH] if asked else [])
        late = Rises(SHOWN, share * HARD, [(after, share * HARD)])
        assert codes(dose(10.0, before), NOTHING, [late]) == ([TOO_MUCH] if asked else []), "in whatever order"


@settings(max_examples=200)
@given(
    this=st.floats(0.001, 1.5),
    others=st.lists(st.tuples(st.integers(-1439, 1439), st.floats(0.0, 0.8)), max_size=8, unique_by=lambda pair: pair[0]),
    planned=st.sampled_from([0.0, 0.3]),
    use=st.sampled_from([0.0, 0.2]),
    zone=st.sampled_from(["UTC", "Europe/Berlin", "Australia/Lord_Howe", "America/New_York"]),
    day=st.sampled_from([datetime(2026, 11, 25, tzinfo=UTC), datetime(2026, 3, 29, tzinfo=UTC), datetime(2026, 10, 25, tzinfo=UTC), datetime(2026, 11, 1, 5, tzinfo=UTC)]),
)  # fmt: skip
@example(0.5, [(-1410, 0.6)], 0.0, 0.0, "Europe/Berlin", datetime(2026, 3, 29, tzinfo=UTC))
@example(0.5, [(1410, 0.6)], 0.0, 0.0, "Europe/Berlin", datetime(2026, 3, 28, tzinfo=UTC))
def test_H17_H18_every_24_hours_of_elapsed_time_around_a_dose_are_asked_about(
    this: float, others: list[tuple[int, float]], planned: float, use: float, zone: str, day: datetime
) -> None:
    at = day + timedelta(hours=12)
    near = [(at + timedelta(minutes=n), share * HARD) for n, share in others if n]
    rises = Rises(SHOWN, this * HARD, near, planned * HARD, use * HARD)
    # By brute force: every window of 1,440 minutes that holds the dose.
    most = max(this + sum(share for n, share in others if n and start <= n < start + 1440) for start in range(-1439, 1))
    expected = most + planned - use
    if abs(expected - 1.0) < 1e-6:
        return
    found = codes(dose(10.0, at.astimezone(ZoneInfo(zone))), NOTHING, [rises])
    assert found == ([TOO_MUCH] if expected > 1.0 else [])


def test_H18_the_question_says_how_much_it_would_be_and_forbids_nothing() -> None:
    rises = Rises(SHOWN, HARD, [(NOON - timedelta(hours=3), 0.5 * HARD)], planned=0.25 * HARD)
    (asked,) = questions(dose(10.0, NOON), NOTHING, [rises])
    text = asked.text.replace("\u00a0", " ")
    assert "rises by 2.45 dKH" in text
    assert "the most is 1.4 dKH" in text
    assert "plan" in text
    assert len(asked.offers) == 1


# In the window


@pytest.fixture
def wall(monkeypatch: pytest.MonkeyPatch) -> Iterator[Wall]:
    with living_in("UTC"):
        yield hung(monkeypatch, NOON)


@pytest.fixture
def window(wall: Wall, tmp_path: Path, qtbot) -> MainWindow:
    QSettings().remove("who")
    return opened(furnished(tmp_path / "evenwater.sqlite"), qtbot)


@pytest.fixture
def log(window: MainWindow) -> LogSheet:
    return log_of(window)


def yes(log: LogSheet) -> None:
    """Say yes to what is asked."""
    (row,) = [row for row in log.form.messages._rows if row.isVisibleTo(log)]
    click(row.buttons()[0])


def test_H9_a_copied_reading_is_asked_about_before_it_is_logged(log: LogSheet, wall: Wall):
    for _ in range(2):
        put(log, "value", "8,1")
        click(log.form.log)
        wall.on(days=1)
    put(log, "value", "8.10")
    click(log.form.log)
    assert len(kept(log)) == 2
    assert "tested again" in said_below(log)[0]
    put(log, "value", "8.2")
    assert said_below(log) == [], "it was about another figure"
    put(log, "value", "8.1")
    click(log.form.log)
    yes(log)
    assert len(kept(log)) == 3
    wall.on(minutes=1)
    pick(log.form.fields["parameter"], "calcium")
    put(log, "value", "420")
    click(log.form.log)
    assert lines(log)[0] == ("Calcium", "420 mg per L")


def test_H18_a_slip_of_ten_in_a_dose_by_hand_is_asked_about(log: LogSheet, window: MainWindow, wall: Wall):
    # 2 meq per mL into 340 L: 240 mL raise 1.41 meq per L, which is 4 dKH; the most in a day is 1.4 dKH.
    begin_dose(log, jug_named(window, ASH), "240")
    click(log.form.log)
    assert kept(log) == []
    assert "within 24 hours" in said_below(log)[0]
    put(log, "amount", "24")
    click(log.form.log)
    assert [entry.value for entry in kept(log)] == [24.0]


def test_H18_many_small_doses_by_hand_add_up(log: LogSheet, window: MainWindow, wall: Wall):
    ash, given = jug_named(window, ASH), 0
    for _ in range(12):
        begin_dose(log, ash, "20")
        click(log.form.log)
        if said_below(log):
            break
        given += 1
        wall.on(hours=1)
    assert "within 24 hours" in said_below(log)[0]
    # By hand: 20 mL * 2.00024 meq per mL / 340 L * 2.8039 = 0.330 dKH each; 1.4 dKH and the 0.9 used in a day allow six.
    assert given == 6
    wall.on(hours=25)
    click(log.form.log)
    assert len(kept(log)) == 7, "a day later it is a dose like any other"


def test_H14_both_questions_are_asked_one_after_the_other(log: LogSheet, window: MainWindow, wall: Wall):
    ash = jug_named(window, ASH)
    begin_dose(log, ash, "100")
    click(log.form.log)
    wall.on(minutes=5)
    begin_dose(log, ash, "100")
    click(log.form.log)
    assert "another one" in said_below(log)[0]
    yes(log)
    assert "within 24 hours" in said_below(log)[0], "one yes is no yes to the other question"
    assert len(kept(log)) == 1
    yes(log)
    assert len(kept(log)) == 2


def test_H18_a_slip_of_ten_from_the_jug_of_a_plan_that_is_followed_is_asked_about(
    log: LogSheet, window: MainWindow, wall: Wall, qtbot
):
    document, ash = document_of(window), jug_named(window, ASH)
    to_sheet("Correct")
    sheet = sheet_of(window)
    document.edit(f"{log._system}:alkalinity", "measured_at", Typed(NOON.isoformat()))
    reckoned(sheet, qtbot)
    assert sheet._plan is not None
    ordinary = sheet._plan.answer.doses.dose_ml
    click(sheet.buttons.plans.start)
    assert [plan.parameter for plan in document.log.plans(log._system)] == ["alkalinity"]
    wall.on(hours=1)
    log_of(window)
    begin_dose(log, ash, f"{ordinary:g}")
    click(log.form.log)
    assert said_below(log) == [], "the dose of the plan itself"
    assert [entry.value for entry in kept(log) if entry.kind == "dose"] == [ordinary]
    wall.on(hours=1)
    begin_dose(log, ash, f"{100 * ordinary:g}")
    click(log.form.log)
    assert [entry.value for entry in kept(log) if entry.kind == "dose"] == [ordinary], "two decimals slipped"
    assert "within 24 hours" in said_below(log)[0]


def test_H14_what_was_taken_out_by_another_window_was_not_given(
    log: LogSheet, window: MainWindow, wall: Wall, tmp_path: Path
):
    ash = jug_named(window, ASH)
    begin_dose(log, ash, "100")
    click(log.form.log)
    other = Document(Store.open(tmp_path / "evenwater.sqlite"))
    (given_here,) = other.log.entries(log._system, ("dose",))
    assert other.log.remove_entries((given_here.id,))
    other.close()
    begin_dose(log, ash, "100")
    click(log.form.log)
    assert said_below(log) == []
    assert len(document_of(window).log.entries(log._system, ("dose",))) == 1
