"""The invented log of the demonstration: the same every time, and its water adds up."""

from __future__ import annotations

import copy
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.engine.quantities import Typed, Water, from_canonical
from evenwater.screens import correct, logbook, shelf
from evenwater.screens.learned import LOOKS_BACK, Noted, learn
from evenwater.session import Document, Entry
from evenwater.session.demo import HISTORY, demo_records, fill_from, fresh_ids
from evenwater.session.demo_history import demo_entries
from evenwater.store import Store

NOW = datetime(2026, 11, 25, 9, 0, 12, 345678, tzinfo=UTC)
DEMO = resources() / "demo.toml"
CATALOGUE = catalogue.load(resources())
DAY = 86400.0


def _read(file: Path) -> dict[str, Any]:
    return tomllib.loads(file.read_text(encoding="utf-8"))


ROOM, TOLD = _read(DEMO), _read(DEMO.with_name(HISTORY))
IDS = fresh_ids(ROOM)
ENTRIES = sorted(demo_entries(TOLD, ROOM, IDS, NOW), key=lambda entry: entry.at)


def of(system: str, kind: str, subject: str = "") -> list[Entry]:
    return [e for e in ENTRIES if (e.system_id, e.kind) == (IDS[system], kind) and subject in ("", e.subject)]


def carries(dose: Entry, parameter: str) -> float:
    return logbook.carried(dose.fields["carries"].text).get(parameter, 0.0)


def test_it_is_the_same_every_time() -> None:
    again = sorted(demo_entries(copy.deepcopy(TOLD), copy.deepcopy(ROOM), dict(IDS), NOW), key=lambda entry: entry.at)
    assert again == ENTRIES
    assert len({entry.id for entry in ENTRIES}) == len(ENTRIES)


def test_another_room_never_has_the_same_ids() -> None:
    other = demo_entries(TOLD, ROOM, fresh_ids(ROOM), NOW)
    assert not {entry.id for entry in other} & {entry.id for entry in ENTRIES}


@pytest.mark.parametrize("zone", [UTC, timezone(timedelta(hours=13)), timezone(timedelta(hours=-11))])
@pytest.mark.parametrize("hour", [0, 5, 12, 23])
def test_nothing_is_still_to_come_and_three_years_are_told(zone: timezone, hour: int) -> None:
    now = datetime(2026, 3, 1, hour, 0, 1, tzinfo=zone)
    instants = [entry.at for entry in demo_entries(TOLD, ROOM, IDS, now)]
    assert max(instants) <= now
    assert timedelta(days=1085) < now - min(instants) < timedelta(days=1100)
    assert 3000 < len(instants) < 6000


def test_the_newest_readings_are_those_that_are_corrected() -> None:
    for correction in ROOM["correction"]:
        newest = of(correction["system"], "reading", correction["parameter"])[-1]
        assert newest.fields["value"] == Typed(**correction["measured"])
        age = NOW.replace(microsecond=0) - newest.at
        assert age == timedelta(hours=correction["measured_hours_ago"])


def test_a_dose_carries_what_its_batch_carried() -> None:
    batches: dict[str, list[tuple[float, dict[str, float]]]] = {}
    keys = {stock_id: key for key, stock_id in IDS.items()}
    for record in demo_records(ROOM, NOW, IDS):
        answer = shelf.answer_of(record.fields, CATALOGUE) if record.kind == "batch" else None
        if answer is not None:
            began = datetime.fromisoformat(record.fields["in_use_from"].text).timestamp()
            carried = logbook.carried(logbook.carries_text(answer, Water()))
            batches.setdefault(keys[record.record_id.split(":")[0]], []).append((began, carried))
    doses = [entry for entry in ENTRIES if entry.kind == "dose"]
    assert len({dose.subject for dose in doses}) == 7
    for dose in doses:
        known = sorted(batches[keys[dose.subject]], key=lambda batch: batch[0])
        inside = [carried for began, carried in known if began <= dose.at.timestamp()] or [known[0][1]]
        assert logbook.carried(dose.fields["carries"].text) == pytest.approx(inside[-1], rel=1e-5)
        assert dose.fields["stock"] == Typed(dose.subject)
        assert f"{dose.value:g}" == dose.fields["amount"].text


def test_every_entry_is_what_the_log_sheet_would_have_noted() -> None:
    """Read what was typed again, by the reader of the form."""
    systems = {r.record_id: r.fields for r in demo_records(ROOM, NOW, IDS) if r.kind == "system"}
    batches = {r.record_id.split(":")[0]: r.fields for r in demo_records(ROOM, NOW, IDS) if r.kind == "batch"}
    for entry in ENTRIES:
        said = {**entry.fields, "at": Typed(entry.at.isoformat())}
        jug = shelf.answer_of(batches[entry.subject], CATALOGUE) if entry.kind == "dose" else None
        water = correct.water(systems[entry.system_id])
        taken = logbook.take(entry.kind, said, CATALOGUE, NOW, water, jug)
        assert isinstance(taken, logbook.Taken), (entry, taken)
        assert (taken.subject, taken.at, taken.who) == (entry.subject, entry.at, entry.who)
        assert taken.value == (None if entry.value is None else pytest.approx(entry.value, rel=1e-9))
        assert taken.fields.keys() == entry.fields.keys()


@dataclass
class Told:
    """What the history file and the room say of one dosed parameter."""

    volume_l: float
    use: float
    shares: np.ndarray
    table: Mapping[str, Any]


def told(system: str, parameter: str) -> Told:
    (tank,) = (each for each in TOLD["system"] if each["key"] == system)
    (room,) = (each for each in ROOM["system"] if each["key"] == system)
    (correction,) = (c for c in ROOM["correction"] if (c["system"], c["parameter"]) == (system, parameter))
    (table,) = (each for each in tank["parameter"] if each["name"] == parameter)
    litres = {"L": 1.0, "US gal": 3.785411784, "imperial gal": 4.54609}
    volume = float(room["net_volume"]["text"]) * litres[room["net_volume"]["unit"]]
    return Told(volume, float(correction["daily_use"]["text"]), np.array(tank["use"], dtype=float), table)


DOSED = [(c["system"], c["parameter"]) for c in ROOM["correction"]]


@pytest.mark.parametrize(("system", "parameter"), DOSED)
def test_the_water_adds_up(system: str, parameter: str) -> None:
    """Go forward from day to day, in the display unit, and meet every reading within the scatter of its kit."""
    about, known = told(system, parameter), CATALOGUE.parameters[parameter]
    factor = from_canonical(1.0, known.kind, known.display_unit)
    since = NOW - timedelta(days=TOLD["doses_noted_days"] - 1)
    readings = [(r.at, float(r.fields["value"].text)) for r in of(system, "reading", parameter) if r.at > since]
    doses = [(d.at, d.value * carries(d, parameter) * factor / about.volume_l) for d in of(system, "dose")]
    exchanges = [(e.at, e.value / about.volume_l) for e in of(system, "exchange")]
    bad = [b for b in TOLD["bad_test"] if (b["system"], b["parameter"]) == (system, parameter)]

    def used(start: datetime, end: datetime) -> float:
        hours = np.linspace(start.timestamp(), end.timestamp(), 200)
        shares = np.interp((NOW.timestamp() - hours) / DAY, about.shares[::-1, 0], about.shares[::-1, 1])
        return float(about.use * np.trapezoid(shares, hours) / DAY)

    moves = [(t, "dose", by) for t, by in doses] + [(t, "exchange", by) for t, by in exchanges]
    moves += [(t, "reading", shown) for t, shown in readings]

    def off(begun: float) -> np.ndarray:
        """Return by how much each reading lies off water that began at this level."""
        value, at, found = begun, readings[0][0], []
        for moment, what, by in sorted(moves):
            if moment >= readings[0][0]:
                value, at = value - used(at, moment), moment
                if what == "reading":
                    found.append(by - value)
                value = (
                    value + by
                    if what == "dose"
                    else value * (1.0 - by) + by * known.natural
                    if what == "exchange"
                    else value
                )
        return np.array(found)

    # Where it began is the one thing that nobody noted: the newest reading, which is exact, tells it.
    of_nothing, left_of_one = off(0.0), off(0.0) - off(1.0)
    rest = of_nothing - left_of_one * of_nothing[-1] / left_of_one[-1]
    wrong = np.abs(rest) > 4.0 * about.table["scatter"] + about.table["step"] / 2.0
    assert int(wrong.sum()) == len(bad)
    good = rest[~wrong]
    assert len(good) > 20
    spread = np.hypot(about.table["scatter"], about.table["step"] / np.sqrt(12.0))
    assert abs(float(good.mean())) < 4.0 * spread / np.sqrt(len(good))
    assert 0.5 * spread < float(good.std()) < 1.4 * spread


@pytest.mark.parametrize(("system", "parameter"), DOSED)
def test_the_use_is_learned_from_it(system: str, parameter: str) -> None:
    about, since = told(system, parameter), NOW - LOOKS_BACK
    fields = next(r.fields for r in demo_records(ROOM, NOW, IDS) if r.record_id == IDS[system])
    noted = Noted(
        [(e.at, e.value or 0.0) for e in of(system, "reading", parameter) if e.at > since],
        [(e.at, e.value or 0.0, carries(e, parameter)) for e in of(system, "dose") if carries(e, parameter) > 0.0],
        [(e.at, e.value or 0.0) for e in of(system, "exchange")],
    )
    found = learn(CATALOGUE.parameters[parameter], noted, correct.volume_l(fields), correct.water(fields), NOW)
    assert found.use is not None
    assert float(found.use.text) == pytest.approx(about.use, rel=0.1)
    low, high = (
        float(part.split()[0]) for part in found.lines[0].replace("(from ", "|").replace(" to ", "|").split("|")[1:]
    )
    within = 0.0 if system == "north" else 0.05 * about.use
    assert low - within <= about.use <= high + within
    assert len(found.odd_at) == sum((b["system"], b["parameter"]) == (system, parameter) for b in TOLD["bad_test"])
    assert not any("at once" in line for line in found.lines), "nothing is missing from the log"


def test_nobody_tests_for_two_weeks_and_the_pumps_go_on() -> None:
    gone, back = (NOW - timedelta(days=days) for days in TOLD["away"])
    away = [entry for entry in ENTRIES if gone < entry.at < back]
    assert {entry.kind for entry in away} == {"dose"}
    assert back - gone == timedelta(days=14)
    around = [
        e for e in of("north", "reading", "alkalinity") if gone - timedelta(days=4) < e.at < back + timedelta(days=4)
    ]
    assert len(around) >= 2


def test_use_falls_after_the_frags_are_cut() -> None:
    (cut,) = (note for note in of("north", "note") if note.fields["text"].text.startswith("Frag day"))
    ash = of("north", "dose", IDS["ash"])
    before = [d.value * carries(d, "alkalinity") for d in ash if 0 < (cut.at - d.at).days < 20]
    after = [d.value * carries(d, "alkalinity") for d in ash if 20 < (d.at - cut.at).days < 40]
    assert np.mean(after) < 0.85 * np.mean(before)


def test_the_log_of_the_demonstration_holds_it_and_it_cannot_be_undone(qapp: object) -> None:
    document = Document(Store.open_memory())
    assert fill_from(document, DEMO, NOW)
    north = document.records("system")[0]
    assert document.log.count(north, "reading") == len(of("north", "reading"))
    assert document.log.count(north, "dose") == len(of("north", "dose"))
    newest = document.log.latest(north, "reading", "alkalinity")
    assert newest is not None
    assert newest.fields["value"] == Typed("6.8", "dKH")
    assert not document.undo()
    document.close()


def test_a_dosed_parameter_needs_a_newest_reading() -> None:
    room = copy.deepcopy(ROOM)
    room["correction"] = [c for c in room["correction"] if c["parameter"] != "nitrate"]
    with pytest.raises(KeyError, match="nitrate"):
        list(demo_entries(TOLD, room, IDS, NOW))


def test_a_stock_that_does_not_carry_it_is_an_error() -> None:
    history = copy.deepcopy(TOLD)
    history["system"][0]["parameter"][0]["stock"] = "calcium"
    with pytest.raises(KeyError, match="alkalinity"):
        list(demo_entries(history, ROOM, IDS, NOW))
