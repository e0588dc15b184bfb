"""The document of a log on a server: what waits while it is away, what is read then, and that nothing comes twice."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Document
from evenwater.session.acts import ChangeEntry, LogEntries, RemoveEntries
from evenwater.session.waiting_text import text_of_act, text_of_step, waiting_from
from evenwater.store import AddRecord, Logged, Looked, RemoveRecord, SetField, Step, Store, StoreError
from tests.postgres import Server
from tests.session.listening import Listener
from tests.store.facility import FishRoom, fish_room, stranded, until
from tests.store.logged import NOON, dose, later, note, reading
from tests.store.writing import Times


def _crash(store: Store) -> None:
    """Let go of a log as a program does that is killed: nothing is saved, kept or said any more."""
    assert store.spool is not None
    store.spool._opened.close()
    store._database.close()


def _codes(heard: Listener) -> list[str]:
    return [reason.code for reason in heard.take("failed") if isinstance(reason, Reason)]


# Without a server


def test_H68_what_is_logged_while_the_server_is_away_is_shown_kept_on_the_disk_and_outlives_the_program(
    qapp: object, tmp_path: Path, times: Times
) -> None:
    store = stranded(tmp_path, times)
    document = Document(store)
    heard = Listener(document)
    assert document.log.log([dose("during", at=later(60))]) is Logged.WAITING
    document.edit("a", "ph", Typed("8,1"))
    assert _codes(heard) == ["store.waits"] * 2
    assert [entry.id for entry in document.log.entries("a")] == ["d", "during"]
    assert document.unsaved() == 2
    assert document.kept(), "so that the window may be closed"
    _crash(store)
    again = Document(stranded(tmp_path, times))
    assert [entry.id for entry in again.log.entries("a")] == ["d", "during"]
    assert again.value("a", "ph") == Typed("8,1")
    assert again.unsaved() == 2
    assert again.close()


def test_H69_what_is_read_from_the_copy_is_said_to_be_so_with_its_time(
    qapp: object, tmp_path: Path, times: Times
) -> None:
    document = Document(stranded(tmp_path, times))
    fault = document.backup_fault()
    assert fault == Reason("store.from_copy", {"at": times.instant})
    assert document.value("a", "name") == Typed("North frag bay")
    # What depends on nothing else having happened is refused, and nothing of it waits.
    heard = Listener(document)
    assert not document.put_in_use("nothing", NOON, [])
    assert document.unsaved() == 0
    document.edit("a", "ph", Typed("8"))
    assert not document.put_in_use("nothing", NOON, [])
    assert _codes(heard) == ["store.away", "store.waits", "store.waits", "store.away"]
    assert document.unsaved() == 1
    assert (document.undo_text(), document.undo()) == (None, False)
    document.close()


def test_what_waits_is_the_same_after_it_was_written_and_read() -> None:
    looked = Looked("a", later(hours=-1), later(hours=1), frozenset(["x", "y"]))
    acts = [
        LogEntries((dose("d"), reading("r", None)), looked),
        LogEntries((note("n", "ä\U0001f41f"),)),
        ChangeEntry(dose("d", 1), None, "Ada", dose("d", 2)),
        RemoveEntries(("d", "e"), (dose("d"),), "Bo"),
    ]
    for act in acts:
        assert waiting_from(text_of_act(act)) == act
    value = SetField("b", "ph", Typed(" 8,1 ", "x", "y"), Typed("8"), "system")
    step = Step("edit", (AddRecord("b", "system"), value, RemoveRecord("c", "pump")))
    assert waiting_from(text_of_step(step, True)) == (step, True)
    with pytest.raises(StoreError) as refusal:
        waiting_from("{}")
    assert refusal.value.reason.code == "store.unreadable"


def test_typing_goes_on_behind_what_a_server_may_have_got(qapp: object, tmp_path: Path, times: Times) -> None:
    """A step that was tried is not lengthened: the server might know its token from the shorter one."""
    store = stranded(tmp_path, times)
    document = Document(store)
    for text in ("8", "8.", "8.1"):
        document.edit("a", "ph", Typed(text), merge=True)
    assert store.spool is not None
    tokens = [token for token, _ in store.spool.waiting()]
    assert len(set(tokens)) == 3
    document.close()


# With one


@pytest.fixture
def room(server: Server, tmp_path: Path, times: Times, monkeypatch: pytest.MonkeyPatch) -> Iterator[FishRoom]:
    with fish_room(server, tmp_path / "laptops", times, monkeypatch) as made:
        yield made


def test_what_waited_is_delivered_once_and_others_news_is_shown(qapp: object, room: FishRoom) -> None:
    store = room.laptop("one")
    document = Document(store)
    heard = Listener(document)
    with room.away():
        document.log.log([dose("during", at=later(60))])
        document.edit("a", "ph", Typed("8"), merge=True)
        document.edit("a", "ph", Typed("8.1"), merge=True)
        assert "store.waits" in _codes(heard)
        _crash(store)
        again = Document(room.laptop("one"))
    other = room.laptop("other")
    other.log([note("news")])
    heard = Listener(again)
    until(lambda: again._look_for_news() or again.unsaved() == 0)
    assert heard.take("restored") == [3]
    assert again.backup_fault() is None
    assert sorted(entry.id for entry in again.log.entries("a")) == ["during", "news"]
    assert other.values("a")["ph"] == Typed("8.1")
    # What a laptop delivers a second time, having crashed before it knew, is there once.
    ((token, kept),) = [("again", text_of_act(LogEntries((dose("during", at=later(60)),))))]
    again.close()
    store = room.laptop("one")
    assert store.spool is not None
    store.spool.keep([(token, kept)])
    third = Document(store)
    third._look_for_news()
    assert third.unsaved() == 0
    assert len(third.log.entries("a", ("dose",))) == 1


def test_a_dose_that_waited_is_logged_beside_anothers_and_that_is_said(qapp: object, room: FishRoom) -> None:
    document, other = Document(room.laptop("one")), Document(room.laptop("other"))
    mine, theirs = dose("mine"), dose("theirs", at=later(3))
    heard = Listener(document)
    looked = document.log.look(mine)
    with room.away():
        assert document.log.log([note("first in the line")]) is Logged.WAITING
        assert document.log.log([mine], looked=looked) is Logged.WAITING
    until(lambda: other.refresh() or other.backup_fault() is None)
    assert other.log.log([theirs], looked=other.log.look(theirs)) is Logged.NEW
    heard.take()
    until(lambda: document._look_for_news() or document.unsaved() == 0)
    assert _codes(heard) == ["store.dose_doubted"]
    assert {entry.id for entry in document.log.entries("a", ("dose",))} == {"mine", "theirs"}


def test_a_laptop_that_crashed_right_after_it_was_delivered_still_says_what_lies_beside(
    qapp: object, room: FishRoom
) -> None:
    store, other = room.laptop("one"), room.laptop("other")
    looked = Looked("a", later(hours=-24), later(hours=24), frozenset())
    other.log([dose("theirs", at=later(3))])
    store.delivery = "mine, sent"
    store.log([dose("mine")])
    assert store.spool is not None
    store.spool.keep([("mine, sent", text_of_act(LogEntries((dose("mine"),), looked)))])
    _crash(store)
    document = Document(room.laptop("one"))
    heard = Listener(document)
    document._look_for_news()
    assert _codes(heard) == ["store.dose_doubted"]
    assert document.unsaved() == 0
    assert len(document.log.entries("a", ("dose",))) == 2


def test_two_laptops_show_each_others_edits_by_themselves(qapp: object, room: FishRoom, qtbot: object) -> None:
    document, other = Document(room.laptop("one")), Document(room.laptop("other"))
    assert document._news.isActive()
    document._news.setInterval(10)
    other.edit("a", "name", Typed("East"))
    with qtbot.waitSignal(document.changed, timeout=5000):  # type: ignore[attr-defined]
        pass
    assert document.value("a", "name") == Typed("East")


def test_clocks_of_laptops_may_differ(qapp: object, room: FishRoom) -> None:
    """The order in the log is that of what was given, not that of whose clock is ahead."""
    document = Document(room.laptop("one"))
    document.log.log([dose("ahead", at=NOON + timedelta(days=1))])
    document.log.log([dose("now", at=NOON)])
    assert [entry.id for entry in document.log.entries("a", ("dose",))] == ["now", "ahead"]
