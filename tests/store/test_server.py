"""A log on a server: several laptops at once, the server going away, what can be read then, and copies both ways."""

from __future__ import annotations

import os
import signal
import sqlite3
import threading
import time
from collections.abc import Iterator
from contextlib import closing
from dataclasses import replace
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.store import Entry, Logged, Looked, RemoveRecord, Step, Store, link, log_copy
from evenwater.store.address import VARIABLE
from evenwater.store.log_copy import TABLES, contents, copy_log
from tests.postgres import Server
from tests.store.facility import FishRoom, code, fish_room, until
from tests.store.logged import NOON, dose, everything, later, note, plan, reading
from tests.store.writing import Times, added, card_for, typed


@pytest.fixture
def room(server: Server, tmp_path: Path, times: Times, monkeypatch: pytest.MonkeyPatch) -> Iterator[FishRoom]:
    with fish_room(server, tmp_path / "laptops", times, monkeypatch) as made:
        yield made


def test_what_one_laptop_saves_the_others_read_and_are_told_of(room: FishRoom) -> None:
    one, other = room.laptop("one"), room.laptop("other")
    assert not other.changed_elsewhere()
    one.log([dose("d")])
    one.apply(typed("a", "ph", " 8,1 "))
    assert not one.changed_elsewhere(), "its own work is no news"
    assert other.changed_elsewhere()
    assert other.snapshot().values["a"] == {"name": Typed("North frag bay"), "ph": Typed(" 8,1 ")}
    assert list(everything(other)) == ["d"]
    assert not other.changed_elsewhere()


def test_a_dose_that_nobody_had_seen_refuses_the_second_one(room: FishRoom) -> None:
    """Two people look, both see none, and both log the dose that is due: one of them is asked."""
    one, other = room.laptop("one"), room.laptop("other")
    looked = Looked("a", later(hours=-24), later(hours=24), frozenset())
    assert one.log([dose("one's")], looked) is Logged.NEW
    assert code(lambda: other.log([dose("other's", at=later(5))], looked)) == "store.dose_beside"
    assert list(everything(other)) == ["one's"]
    assert one.log([dose("one's")], looked) is Logged.ALREADY, "the same again is no second one"
    seen = replace(looked, seen=frozenset(["one's"]))
    assert other.log([dose("other's", at=later(5))], seen) is Logged.NEW, "who has seen it may say that it is another"


def test_of_many_who_log_one_dose_at_once_one_does(room: FishRoom) -> None:
    looked = Looked("a", later(hours=-1), later(hours=1), frozenset())
    stores = [room.laptop(f"laptop {number}") for number in range(5)]
    gate, said = threading.Barrier(len(stores)), dict[int, str]()

    def log(number: int, store: Store) -> None:
        gate.wait()
        try:
            said[number] = store.log([dose(f"dose {number}", at=later(number))], looked).value
        except Exception as error:  # noqa: BLE001  (what it is, is looked at below)
            said[number] = str(error)

    threads = [threading.Thread(target=log, args=each) for each in enumerate(stores)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert sorted(said.values()) == ["new", *["store.dose_beside"] * 4]
    assert len(everything(stores[0])) == 1


def test_nobody_takes_back_what_another_laptop_has_done(room: FishRoom) -> None:
    one, other = room.laptop("one"), room.laptop("other")
    one.log([dose("d")])
    assert (other.can_undo(), other.undo()) == (None, None)
    assert one.undo() is not None
    assert (other.can_redo(), other.redo()) == (None, None)
    one.close()
    again = room.laptop("one")
    assert again.redo() is not None, "the same laptop, opened again"
    assert list(everything(other)) == ["d"]


def test_a_write_while_the_server_is_away_is_refused_and_saved_once_it_is_back(room: FishRoom) -> None:
    store = room.laptop("one")
    store.log([dose("before")])
    with room.away():
        assert code(lambda: store.log([dose("during", at=later(15))])) == "store.away"
        assert code(lambda: store.apply(typed("a", "ph", "8"))) == "store.away"
        assert code(lambda: store.start_plan(plan("P1"), card_for("P1", ""), note("n"))) == "store.away"
    until(lambda: room.answers(store))
    assert store.log([dose("during", at=later(15))]) is Logged.NEW
    assert store.log([dose("before")]) is Logged.ALREADY
    assert sorted(everything(store)) == ["before", "during"]


def test_while_the_server_is_away_the_last_state_is_read_and_said_to_be_one(room: FishRoom) -> None:
    store, other = room.laptop("one"), room.laptop("other")
    other.log([dose("d"), reading("r"), note("gone")])
    other.start_plan(plan("P1"), card_for("P1", ""), note("started"))
    other.remove_entries(["gone"])
    other.apply(typed("a", "ph", "8"))
    other.apply(typed("a", "ph", ""))
    store.log([dose("own", at=later(60))])
    assert store.backup_fault is None
    before = (everything(store), store.snapshot(), store.plans(), store.cards(), store.latest_of_all("reading"))
    seen = room.times.instant
    with room.away():
        room.times.pass_by(3600)
        assert (
            everything(store),
            store.snapshot(),
            store.plans(),
            store.cards(),
            store.latest_of_all("reading"),
        ) == before
        assert store.backup_fault is not None
        assert store.backup_fault.code == "store.from_copy"
        assert store.backup_fault.params["at"] == seen
        assert store.can_undo() is None
        store.close()
        # The program is started anew, and the server still does not answer.
        again = room.laptop("one")
        assert (everything(again), again.snapshot(), again.plans(), again.cards()) == before[:4]
        assert again.backup_fault is not None
        assert again.backup_fault.params["at"] == seen
    other_again = room.laptop("other")
    other_again.log([dose("news", at=later(120))])
    until(again.changed_elsewhere)
    assert "news" in everything(again)
    assert again.backup_fault is None


def test_a_laptop_that_never_saw_the_log_says_that_the_server_is_away(room: FishRoom) -> None:
    with room.away():
        assert code(lambda: room.laptop("new")) == "store.away"
        assert code(lambda: room.laptop("newer", wait=False)) == "store.away"


def test_a_transaction_that_loses_the_server_is_nowhere(room: FishRoom) -> None:
    store = room.laptop("one")

    def lines() -> Iterator[Entry]:
        for number in range(30):
            if number == 20:
                room.server.kill()
            yield note(f"n{number}")

    assert code(lambda: store.import_entries(lines(), lambda _: True)) == "store.away"
    room.server.start()
    until(lambda: room.answers(store))
    assert everything(store) == {}


def test_a_server_that_hangs_lets_no_window_hang(room: FishRoom, monkeypatch: pytest.MonkeyPatch) -> None:
    """It takes what it is sent and says nothing: no network knows that it is not there."""
    store = room.laptop("one")
    store.log([dose("d")])
    monkeypatch.setattr(link, "_HUNG_SECONDS", 0.3)
    ((backend,),) = store._database.sql("SELECT pg_backend_pid()")
    os.kill(backend, signal.SIGSTOP)
    try:
        begun = time.monotonic()
        assert code(lambda: store.log([dose("e", at=later(60))])) == "store.away"
        assert time.monotonic() - begun < 5.0
        assert list(everything(store)) == ["d"]
    finally:
        os.kill(backend, signal.SIGCONT)
    monkeypatch.undo()
    until(lambda: room.answers(store))
    assert store.log([dose("e", at=later(60))]) is Logged.NEW


def test_a_token_is_delivered_once_whatever_it_carries(room: FishRoom) -> None:
    store = room.laptop("one")
    store.delivery = "edit 1"
    store.apply(typed("a", "ph", "8"))
    store.delivery = ""
    store.apply(typed("a", "ph", "8.2"))
    store.delivery = "edit 1"
    assert code(lambda: store.apply(typed("a", "ph", "8"))) == "store.delivered"
    assert store.values("a")["ph"] == Typed("8.2")


def test_a_copy_that_could_not_be_written_is_not_called_new(room: FishRoom) -> None:
    store, other = room.laptop("one"), room.laptop("other")
    seen = room.times.instant
    room.times.pass_by(60)
    with closing(sqlite3.connect(room.folder / "one" / "last state.sqlite", isolation_level=None)) as window:
        window.execute("BEGIN IMMEDIATE")
        other.log([dose("d")])
        assert store.changed_elsewhere()
        window.execute("ROLLBACK")
    with room.away():
        assert everything(store) == {}
        assert store.backup_fault is not None
        assert store.backup_fault.params["at"] == seen


def test_the_last_state_begins_again_when_another_log_stands_there(room: FishRoom) -> None:
    store = room.laptop("one")
    store.log([dose("old")])
    store.close()
    room.server.ask(
        room.database,
        "SET search_path = evenwater; TRUNCATE record, value, journal, entry, entry_history, journal_entry, card, plan; "
        "UPDATE log_state SET log_id = 'another', changes = 1",
    )
    other = room.laptop("other")
    other.fill(added("b"))
    store = room.laptop("one")
    with room.away():
        assert everything(store) == {}
        assert store.records("system") == ("b",)


def test_only_who_may_opens_it(room: FishRoom, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv(VARIABLE, raising=False)
    monkeypatch.delenv("PGPASSWORD", raising=False)
    room.server.ask(
        "postgres",
        "DO $$ BEGIN CREATE ROLE guarded LOGIN PASSWORD 'secret'; EXCEPTION WHEN duplicate_object THEN NULL; END $$",
    )
    guarded = replace(room.address, user="guarded")
    assert code(lambda: Store.open_server(guarded, room.folder / "g")) == "store.password"
    assert code(lambda: Store.open_server(guarded, room.folder / "g", password="wrong")) == "store.password"  # noqa: S106
    # The name is let in, but the log belongs to another.
    monkeypatch.setenv(VARIABLE, "secret")
    assert code(lambda: Store.open_server(guarded, room.folder / "g")) == "store.no_right"
    nowhere = replace(room.address, database="nowhere")
    assert code(lambda: Store.open_server(nowhere, room.folder / "g")) == "store.no_database"


@pytest.mark.parametrize(
    ("change", "refused"),
    [("UPDATE log_state SET version = 99", "store.newer"), ("ALTER TABLE log_state RENAME TO other", "store.foreign")],
)
def test_what_is_newer_or_anothers_is_refused_untouched(
    server: Server, tmp_path: Path, change: str, refused: str
) -> None:
    name = f"strange_{refused.partition('.')[2]}"
    server.ask("postgres", f"CREATE DATABASE {name}")
    Store.open_server(server.address(name), tmp_path / "one").close()
    server.ask(name, f"SET search_path = evenwater; {change}")
    assert code(lambda: Store.open_server(server.address(name), tmp_path / "two")) == refused


def test_a_character_that_the_server_cannot_keep_is_refused_for_good(room: FishRoom) -> None:
    store = room.laptop("one")
    assert code(lambda: store.apply(typed("a", "name", "a\x00b"))) == "store.text_refused"
    assert store.values("a")["name"] == Typed("North frag bay")


def test_the_tables_have_the_columns_of_the_file(room: FishRoom, file: Path) -> None:
    Store.open(file).close()
    with closing(sqlite3.connect(file)) as plain:
        for table, (columns, _) in TABLES.items():
            names = {row[1] for row in plain.execute(f"PRAGMA table_info({table})")}
            assert names == set(columns.split(", "))
            there = room.server.ask(
                room.database,
                "SELECT column_name FROM information_schema.columns "  # noqa: S608  (our own names)
                f"WHERE table_schema = 'evenwater' AND table_name = '{table}'",
            )
            assert {name for (name,) in there} - {"stamp", "laptop"} == names
        tables = {name for (name,) in plain.execute("SELECT name FROM sqlite_master WHERE type = 'table'")}
        assert tables == set(TABLES)


# Copies


def _filled(store: Store) -> None:
    store.log([dose("d", 0.1 + 0.2), reading("r", None), note("n", "ä\u2009\U0001f41f\n'?%s")])
    store.change_entry(dose("d", 13.0))
    store.remove_entries(["n"])
    store.apply(typed("a", "ph", " 8,1 ", "x", "y"))
    store.start_plan(plan("P1"), card_for("P1", ""), note("s"))
    store.end_plan("P1", NOON, "enough", note("e"))
    store.apply(Step("remove", (RemoveRecord("b"),)))
    store.undo()


def test_a_log_goes_to_a_server_and_back_row_by_row(room: FishRoom, file: Path, tmp_path: Path, server: Server) -> None:
    with Store.open(file) as store:
        store.fill(added("a", name="North"))
        store.apply(added("b"))
        _filled(store)
        history, whole = store.history("d"), everything(store)
    with server.empty() as take:
        address = f"postgresql://keeper@/{take()}?host={server.folder}"
        there = copy_log(str(file), address, tmp_path)
        assert dict(there.rows)["entry"] == 5
        back = tmp_path / "back.sqlite"
        assert copy_log(address, str(back), tmp_path) == there == contents(str(file), tmp_path)
        with Store.open(back) as store:
            assert (store.history("d"), everything(store)) == (history, whole)
            assert store.redo() is not None, "the way back is copied too"
        assert code(lambda: copy_log(str(file), address, tmp_path)) == "store.not_empty"
        assert code(lambda: copy_log(address, str(back), tmp_path)) == "store.not_empty"
        assert contents(address, tmp_path) == there


def test_a_copy_that_breaks_off_leaves_nothing(room: FishRoom, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    store = room.laptop("one")
    _filled(store)
    address = f"postgresql://keeper@/{room.database}?host={room.server.folder}"
    target = tmp_path / "copy.sqlite"
    fill = log_copy._fill
    monkeypatch.setattr(log_copy, "_fill", lambda *given: given[2] == "plan" or fill(*given))
    assert code(lambda: copy_log(address, str(target), tmp_path)) == "store.copy_differs"
    assert not target.exists()
    assert not list(tmp_path.glob(".*.part*"))
