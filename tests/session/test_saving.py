"""A disk that refuses: nothing raises, nothing typed is lost, and the keeper is told."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.engine.reasons import Reason
from evenwater.session import Document, RecordsChange
from evenwater.store import Card, Label, RemoveRecord, Step, Store, StoreError
from tests.session.listening import Listener
from tests.store.writing import Times


@contextmanager
def _locked(file: Path) -> Iterator[None]:
    """Hold the file as another program might."""
    other = sqlite3.connect(file, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    try:
        yield
    finally:
        other.execute("ROLLBACK")
        other.close()


def _codes(reasons: list[object]) -> list[str]:
    return [reason.code for reason in reasons if isinstance(reason, Reason)]


def _system(document: Document) -> str:
    return document.add_record("system", {"name": Typed("North frag bay")})


def test_what_cannot_be_saved_is_kept_shown_and_saved_with_the_next_edit(
    document: Document, heard: Listener, file: Path, store: Store
) -> None:
    record = _system(document)
    heard.take()
    with _locked(file):
        document.edit(record, "ph", Typed("8"), merge=True)
        document.edit(record, "ph", Typed("8.1"), merge=True)
        document.edit(record, "name", Typed("South"))
        assert document.value(record, "ph") == Typed("8.1")
        assert document.unsaved() == 2
        assert store.values(record) == {"name": Typed("North frag bay")}
        assert _codes(heard.take("failed")) == ["store.locked"] * 3
    document.edit(record, "net_volume", Typed("340", "L"))
    assert document.unsaved() == 0
    assert heard.take("restored", "failed") == [3]
    assert store.values(record) == {
        "name": Typed("South"),
        "ph": Typed("8.1"),
        "net_volume": Typed("340", "L"),
    }
    assert document.undo_text() == Label("edit", "system", "net_volume", record)


def test_a_record_that_cannot_be_saved_can_be_filled_in(document: Document, heard: Listener, file: Path) -> None:
    with _locked(file):
        record = _system(document)
        document.edit(record, "ph", Typed("8"))
        assert document.records("system") == (record,)
        assert RecordsChange(frozenset({"system"})) in heard.take("records")
    assert document.save()
    fresh = Document(Store.open(file))
    assert fresh.value(record, "ph") == Typed("8")
    fresh.close()


def test_typing_after_a_commit_point_is_a_step_of_its_own_even_unsaved(
    document: Document, file: Path, times: Times
) -> None:
    record = _system(document)
    with _locked(file):
        document.edit(record, "ph", Typed("8"), merge=True)
        document.commit_point()
        document.edit(record, "ph", Typed("9"), merge=True)
    assert document.save()
    document.undo()
    assert document.value(record, "ph") == Typed("8")


def test_undo_waits_until_everything_is_saved(document: Document, heard: Listener, file: Path) -> None:
    record = _system(document)
    with _locked(file):
        document.edit(record, "ph", Typed("8"))
        heard.take()
        assert not document.undo()
        assert _codes(heard.take("failed")) == ["store.locked"]
        assert document.value(record, "ph") == Typed("8")
    assert document.undo()
    assert document.value(record, "ph") == Typed("")
    assert document.records("system") == (record,)


def test_undo_on_a_locked_log_changes_nothing(document: Document, heard: Listener, file: Path) -> None:
    record = _system(document)
    heard.take()
    with _locked(file):
        assert not document.undo()
        assert _codes(heard.take("failed")) == ["store.locked"]
    assert document.records("system") == (record,)


def test_what_is_waiting_survives_the_other_windows_news(
    document: Document, heard: Listener, file: Path, store: Store
) -> None:
    record = _system(document)
    other = Document(Store.open(file))
    with _locked(file):
        document.edit(record, "ph", Typed("8"))
    other.edit(record, "name", Typed("theirs"))
    document.refresh()
    assert document.unsaved() == 1
    assert document.value(record, "ph") == Typed("8")
    assert document.value(record, "name") == Typed("theirs")
    assert document.save()
    other.refresh()
    assert other.value(record, "ph") == Typed("8")
    other.close()


def test_a_record_removed_in_the_other_window_takes_no_edit_and_blocks_none(
    document: Document, heard: Listener, file: Path, store: Store
) -> None:
    gone, kept = _system(document), _system(document)
    with _locked(file):
        document.edit(gone, "ph", Typed("8"))
        document.edit(kept, "ph", Typed("8"))
        heard.take()
    with Store.open(file) as other:
        other.apply(Step("remove", (RemoveRecord(gone),)))
    assert document.save()
    assert _codes(heard.take("failed")) == ["store.record_gone"]
    assert document.records("system") == (kept,)
    assert store.values(kept)["ph"] == Typed("8")
    assert document.unsaved() == 0


def test_what_was_lost_is_not_shown_any_longer_though_more_is_waiting(
    document: Document, heard: Listener, file: Path, store: Store, monkeypatch
) -> None:
    gone, kept = _system(document), _system(document)
    with _locked(file):
        document.edit(gone, "ph", Typed("8"))
        document.edit(kept, "ph", Typed("8"))
    with Store.open(file) as other:
        other.apply(Step("remove", (RemoveRecord(gone),)))
    save = store.apply

    def full_at_the_second(step: Step, merge: bool = False) -> Step | None:
        if step.edits[0].record_id == kept:
            raise StoreError(Reason("store.full", {}))
        return save(step, merge)

    monkeypatch.setattr(store, "apply", full_at_the_second)
    heard.take()
    assert not document.save()
    assert _codes(heard.take("failed")) == ["store.record_gone", "store.full"]
    assert document.records("system") == (kept,)
    assert document.value(kept, "ph") == Typed("8")
    assert document.unsaved() == 1


def test_closing_saves_what_is_waiting_or_says_that_it_is_lost(document: Document, heard: Listener, file: Path) -> None:
    record = _system(document)
    with _locked(file):
        document.edit(record, "ph", Typed("8"))
    assert document.close()
    with Store.open(file) as store:
        assert store.values(record)["ph"] == Typed("8")


def test_closing_on_a_locked_log_says_so(document: Document, heard: Listener, file: Path) -> None:
    record = _system(document)
    with _locked(file):
        document.edit(record, "ph", Typed("8"))
        heard.take()
        assert not document.close()
        assert _codes(heard.take("failed")) == ["store.locked"]


def test_no_method_raises_on_a_log_that_is_closed(document: Document, heard: Listener, store: Store) -> None:
    record = _system(document)
    store.close()
    heard.take()
    document.edit(record, "ph", Typed("8"))
    document.refresh()
    document.remove_record(record)
    assert not document.undo()
    assert not document.redo()
    assert not document.fill([])
    assert document.cards() == []
    assert not document.set_card_state("A1", "void")
    assert not document.add_card(_card(record, "A1"))
    assert document.void_cards_of(record, []) == []
    assert not document.put_in_use(f"{record}:1", datetime(2026, 11, 25, tzinfo=UTC), ["A1"])
    assert document.add_batch(record, {}) == ""
    assert not document.close()
    assert len(heard.take("failed")) >= 12


# Cards


def _card(system: str, plan_id: str, version: int = 1) -> Card:
    issued = datetime(2026, 11, 25, 9, version, tzinfo=UTC)
    return Card(plan_id, version, system, "alkalinity", issued, issued + timedelta(days=2), "{}")


def test_a_card_is_registered_before_it_may_be_printed(document: Document, heard: Listener, file: Path) -> None:
    system = _system(document)
    heard.take()
    with _locked(file):
        assert not document.add_card(_card(system, "A1"), "button")
        assert _codes(heard.take("failed", "cards")) == ["store.locked"]
    assert document.add_card(_card(system, "A1"), "button")
    assert heard.take("cards", "failed") == ["button"]
    assert [card.plan_id for card in document.cards("in use")] == ["A1"]


def test_what_a_card_is_about_is_saved_before_it(document: Document, heard: Listener, file: Path) -> None:
    with _locked(file):
        system = _system(document)
    assert document.add_card(_card(system, "A1"))
    assert document.unsaved() == 0


def test_a_new_card_makes_the_old_one_void_until_it_is_taken_down(document: Document, heard: Listener) -> None:
    system = _system(document)
    assert document.add_card(_card(system, "A1"))
    assert document.add_card(_card(system, "A2", 2))
    assert [card.plan_id for card in document.cards("void")] == ["A1"]
    heard.take()
    assert document.set_card_state("A1", "removed", "tick")
    assert heard.take("cards") == ["tick"]
    assert document.cards("void") == []
    assert not document.set_card_state("A1", "in use")
    assert _codes(heard.take("failed")) == ["store.card_state"]


def test_cards_of_the_other_window_are_announced(document: Document, heard: Listener, file: Path) -> None:
    system = _system(document)
    other = Document(Store.open(file))
    assert other.add_card(_card(system, "A1"))
    heard.take()
    document.refresh()
    assert heard.take("cards") == [None]
    other.close()


def test_typing_reaches_the_disk_by_itself_soon_after_the_key(file: Path, qtbot) -> None:
    document = Document(Store.open(file), typing_ms=20)
    record = _system(document)
    document.edit(record, "ph", Typed("8"), merge=True)
    document.edit(record, "ph", Typed("8.1"), merge=True)
    assert document.unsaved() == 1
    assert document.undo_text() is not None
    qtbot.waitUntil(lambda: document.unsaved() == 0)
    # The other window, and the same one after a power cut, read it without anything more being done here.
    with Store.open(file) as other:
        assert other.values(record)["ph"] == Typed("8.1")
    document.close()


def test_the_end_of_typing_saves_at_once(file: Path, qtbot) -> None:
    document = Document(Store.open(file), typing_ms=60_000)
    record = _system(document)
    for finish in (document.commit_point, document.save):
        document.edit(record, "ph", Typed(f"8.{document.unsaved()}{finish.__name__}"), merge=True)
        assert document.unsaved() == 1
        finish()
        assert document.unsaved() == 0
    document.edit(record, "ph", Typed("7"), merge=True)
    assert document.undo()
    assert document.value(record, "ph") != Typed("7")
    document.edit(record, "ph", Typed("6"), merge=True)
    document.close()
    with Store.open(file) as other:
        assert other.values(record)["ph"] == Typed("6")
