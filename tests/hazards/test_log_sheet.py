"""H7, H14 to H16, H18, H24 and H26 in the real window, with a clock that is set by hand."""

from __future__ import annotations

import json
import random
import subprocess
import sys
import time
import uuid
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from PySide6.QtCore import QSettings, Qt

from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from evenwater.screens.rounds import Duty
from evenwater.screens.upkeep import RULES, evaluate
from evenwater.session import Document, Entry
from evenwater.store import Card, Store
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.engine.asking import known
from tests.engine.upkeeps import item, raw
from tests.ui.log_making import Wall, begin_dose, furnished, hung, kept, lines, living_in, log_of, put, said_below
from tests.ui.stocks_making import ASH, CONTROL, click, document_of, jug_named, press, to_sheet
from tests.ui.window_making import left, opened, reckoned, room_of, sheet_of

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)
BY_HAND = "Bicarbonate, blue jug"


@pytest.fixture
def wall(monkeypatch: pytest.MonkeyPatch) -> Iterator[Wall]:
    with living_in("UTC"):
        yield hung(monkeypatch, NOON)


@pytest.fixture
def file(wall: Wall, tmp_path: Path) -> Path:
    return furnished(tmp_path / "evenwater.sqlite", wall.at)


@pytest.fixture
def window(file: Path, qtbot) -> MainWindow:
    QSettings().remove("who")
    made = opened(file, qtbot)
    reckoned(sheet_of(made), qtbot)
    return made


@pytest.fixture
def log(window: MainWindow) -> LogSheet:
    return log_of(window)


def look_again(window: MainWindow, qtbot) -> None:
    """Come back to the Correct sheet, as on another day."""
    to_sheet("Stocks")
    to_sheet("Correct")
    reckoned(sheet_of(window), qtbot)


def looked(window: MainWindow, qtbot) -> tuple[Duty, ...]:
    """Go to the Rounds sheet and return its lines once it has looked at the whole room."""
    to_sheet("Stocks")
    to_sheet("Rounds")
    sheet = room_of(window).rounds
    qtbot.waitUntil(lambda: not sheet.waiting(), timeout=10_000)
    return sheet.duties


def due_tests(window: MainWindow, qtbot, system: str, subject: str) -> list[str]:
    """Return how urgent the lines of the rounds are that say to test something."""
    found = looked(window, qtbot)
    return [d.urgency for d in found if d.record == system and d.subject == subject and d.what.startswith("Test")]


# H7: a reading grows old


def test_H7_as_the_clock_runs_a_correction_ends_and_a_test_falls_due(window: MainWindow, wall: Wall, qtbot):
    sheet = sheet_of(window)
    system = sheet.records.system
    document = document_of(window)
    document.edit(f"{system}:alkalinity", "measured_at", Typed(NOON.isoformat()))
    reckoned(sheet, qtbot)
    days = known().parameters["alkalinity"].stale_days
    assert days == 3
    assert sheet.answer.view.state == "answered"
    assert sheet._plan is not None
    assert due_tests(window, qtbot, system, "alkalinity") == []
    wall.at = NOON + timedelta(days=1, hours=1)
    assert due_tests(window, qtbot, system, "alkalinity") == ["soon"]
    wall.at = NOON + timedelta(days=3)
    look_again(window, qtbot)
    assert sheet.answer.view.state == "answered", "three days are allowed"
    assert due_tests(window, qtbot, system, "alkalinity") == ["due"]
    wall.at = NOON + timedelta(days=3, minutes=1)
    look_again(window, qtbot)
    view = sheet.answer.view
    assert view.state == "refused"
    assert [(m.code, m.path) for m in view.messages] == [("reading_stale", "change.measured_at")]
    assert sheet._plan is None, "no card, no plan"
    assert view.figure == "", "not the last number either (L27)"
    field = sheet.form.fields["change.measured_at"]
    field.refresh()
    assert field.instant() == NOON
    to_sheet("Upkeep")
    assert room_of(window).upkeep.view.state == "answered", "what keeps the values goes on"


def test_H7_a_new_reading_in_the_log_ends_what_is_due(window: MainWindow, wall: Wall, qtbot):
    system, document = sheet_of(window).records.system, document_of(window)
    wall.at = NOON + timedelta(days=10)
    assert due_tests(window, qtbot, system, "alkalinity") == ["due"]
    log = log_of(window)
    put(log, "value", "8.1")
    click(log.form.log)
    assert document.log.latest(system, "reading", "alkalinity").at == wall.at
    assert due_tests(window, qtbot, system, "alkalinity") == []


def test_H8_a_reading_whose_clock_was_set_back_is_not_a_fresh_one(window: MainWindow, wall: Wall, qtbot):
    sheet = sheet_of(window)
    document_of(window).edit(f"{sheet.records.system}:alkalinity", "measured_at", Typed(NOON.isoformat()))
    wall.at = NOON - timedelta(minutes=6)
    look_again(window, qtbot)
    assert [m.code for m in sheet.answer.view.messages] == ["reading_in_the_future"]
    assert sheet._plan is None


# H14, H15: given once


def test_H18_a_dose_before_midnight_is_asked_about_after_it(log: LogSheet, window: MainWindow, wall: Wall):
    ash = jug_named(window, ASH)
    for at in (datetime(2026, 11, 25, 23, 59, tzinfo=UTC), datetime(2026, 11, 26, 0, 1, tzinfo=UTC)):
        wall.at = at
        begin_dose(log, ash, "20")
        click(log.form.log)
    assert [dose.value for dose in kept(log)] == [20.0]
    (question,) = said_below(log)
    assert "23:59" in question
    assert document_of(window).log.doses_within(log._system, ash, 24, wall.at) == 20.0


@pytest.mark.parametrize("seed", [1, 2])
def test_H15_killed_at_any_moment_what_was_said_to_be_logged_is_there_once(wall: Wall, file: Path, qtbot, seed: int):
    chance = random.Random(seed)
    program = [sys.executable, "-m", "tests.hazards.log_until_killed", str(file), BY_HAND, NOON.isoformat()]
    with subprocess.Popen(program, stdout=subprocess.PIPE, text=True) as running:
        assert running.stdout is not None
        heard = [running.stdout.readline().split() for _ in range(chance.randint(3, 14))]
        time.sleep(chance.uniform(0.0, 0.02))
        running.kill()
        heard += [line.split() for line in running.stdout.read().splitlines()]
    assert running.returncode == -9, "it must have been killed, not have ended"
    said = [float(words[1]) for words in heard if len(words) == 2 and words[0] == "logged"]
    tried = [float(words[1]) for words in heard if len(words) == 2 and words[0] == "trying"]
    assert said
    with Store.open(file) as store:
        amounts = [entry.value for entry in store.entries(Document(store).records("system")[0], ("dose",))]
    assert len(amounts) == len(set(amounts)), "none is there twice"
    assert set(said) <= set(amounts) <= set(tried)
    window = opened(file, qtbot)
    log = log_of(window)
    shown = [amount for _, amount in lines(log)]
    assert sorted(shown) == sorted(f"{amount:g} mL" for amount in amounts)
    # The same dose once more, by somebody who saw the program end: asked about, not logged.
    last = kept(log)[-1]
    wall.at = last.at + timedelta(minutes=5)
    begin_dose(log, last.subject, f"{last.value:g}")
    click(log.form.log)
    assert len(kept(log)) == len(amounts)
    assert said_below(log)
    left(window)


# H16: nothing is made up


@pytest.mark.parametrize("gap", [1, 6, 25, 71, 24 * 14], ids="{} h".format)
def test_H16_after_a_power_cut_nothing_proposes_more_than_the_ordinary_day(
    window: MainWindow, wall: Wall, qtbot, gap: int
):
    room, document, sheet = room_of(window), document_of(window), sheet_of(window)
    system, ash = sheet.records.system, jug_named(window, ASH)
    document.edit(f"{system}:alkalinity", "measured_at", Typed(NOON.isoformat()))
    reckoned(sheet, qtbot)
    assert sheet._plan is not None
    ordinary = sheet._plan.answer.doses
    to_sheet("Upkeep")
    rows = room.upkeep.view.rows
    assert rows
    doses = [
        Entry(uuid.uuid4().hex, system, "dose", ash, NOON - timedelta(hours=n), "", {"amount": Typed("2.2", "mL")}, 2.2)
        for n in range(48, 0, -1)
    ]
    assert document.log.log(doses)
    wall.on(hours=gap)
    for name in ("Rounds", "Upkeep"):
        to_sheet(name)
    after = room.upkeep.view
    assert [(r.per_hour, r.dose, r.in_24_hours) for r in after.rows] == [
        (r.per_hour, r.dose, r.in_24_hours) for r in rows
    ]
    assert RULES[0] in after.rules
    assert "never made up" in RULES[0]
    look_again(window, qtbot)
    if sheet._plan is None:
        assert gap > 24, "a reading of a day ago is one to correct from"
        assert sheet.answer.view.state == "refused"
        return
    plan = sheet._plan.answer
    assert plan.doses.dose_ml <= ordinary.dose_ml
    assert plan.doses.in_24_hours_ml <= ordinary.in_24_hours_ml
    assert plan.doses.total_ml <= ordinary.total_ml
    assert "Never make up missed doses." in sheet._plan.card(wall.at, "", "").stop


# H24: the jug runs dry


@pytest.mark.parametrize(
    ("zone", "empty"),
    [
        ("UTC", "Mon 14 Dec 2026"),
        ("Asia/Kathmandu", "Mon 14 Dec 2026"),
        ("Pacific/Honolulu", "Sun 13 Dec 2026"),
        ("Europe/Berlin", "Mon 14 Dec 2026"),
    ],
)
def test_H24_the_jug_is_empty_on_the_keepers_day(zone: str, empty: str):
    # 2.2 mL every hour from 1 L: 454 doses, the last one 18 days and 22 hours from now, at 07:00 in UTC.
    question = raw(item("alkalinity", step="0.1 mL"), item("calcium", step="0.1 mL"))
    now = datetime(2026, 11, 25, 9, 0, tzinfo=UTC).astimezone(ZoneInfo(zone))
    found = evaluate(question, known(), now)
    assert found.answer is not None
    assert found.answer.doses[0].dose_ml == pytest.approx(2.2)
    assert found.answer.doses[0].empty_at == datetime(2026, 12, 14, 7, 0, tzinfo=UTC)
    assert found.view.rows[0].jug_empty == empty


def test_H24_days_are_elapsed_days_over_a_change_of_clocks():
    question = raw(item("alkalinity", step="0.1 mL"), item("calcium", step="0.1 mL"))
    # 454 hours from 04:30 in Berlin's summer: 02:30 by the clock of summer, half past one by that of winter. From 02:30 it is
    # half past eleven of the evening before.
    for now, empty in (
        (datetime(2026, 10, 16, 4, 30, tzinfo=ZoneInfo("Europe/Berlin")), "Wed 4 Nov 2026"),
        (datetime(2026, 10, 16, 2, 30, tzinfo=ZoneInfo("Europe/Berlin")), "Tue 3 Nov 2026"),
    ):
        found = evaluate(question, known(), now)
        assert found.answer is not None
        assert found.answer.doses[0].empty_at.timestamp() == now.timestamp() + 454 * 3600.0
        assert found.view.rows[0].jug_empty == empty


# H26: the old card on the stand


def test_H26_an_old_card_stands_in_the_rounds_until_somebody_took_it_down(
    window: MainWindow, wall: Wall, file: Path, qtbot
):
    document, records = document_of(window), sheet_of(window).records
    body = json.dumps(correct.question_text(records.raw()))
    for number in (1, 2):
        until, batch = wall.at + timedelta(days=20), records.id_of("batch")
        card = Card(f"ABCD-{number}", number, records.system, "alkalinity", wall.at, until, body, batch_id=batch)
        assert document.add_card(card)
        wall.on(hours=1)

    def wrong(shown: MainWindow) -> list[str]:
        return [d.what for d in looked(shown, qtbot) if d.urgency == "wrong" and "card" in d.what.casefold()]

    assert wrong(window) == ["Take down card ABCD-1"]
    left(window)
    again = opened(file, qtbot)
    assert wrong(again) == ["Take down card ABCD-1"], "a restart takes no card down"
    assert document_of(again).set_card_state("ABCD-1", "removed")
    assert wrong(again) == []
    press(Qt.Key.Key_Z, CONTROL)
    assert {card.plan_id: card.state for card in document_of(again).cards()} == {
        "ABCD-1": "removed",
        "ABCD-2": "in use",
    }
    left(again)
