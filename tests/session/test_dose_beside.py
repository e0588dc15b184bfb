"""Two people log the dose that is due at once: the second one is asked, whatever both had seen before."""

from __future__ import annotations

from pathlib import Path

from evenwater.session import Document, Logged
from evenwater.store import Store
from tests.session.listening import Listener
from tests.store.logged import dose, later
from tests.store.writing import Times, added


def _windows(file: Path, times: Times) -> tuple[Document, Document]:
    first = Store.open(file, times.clock())
    first.fill(added("a", name="North frag bay"))
    return Document(first), Document(Store.open(file, times.clock()))


def test_H14_the_second_of_two_who_log_one_dose_is_asked_and_sees_the_first(
    qapp: object, file: Path, times: Times
) -> None:
    one, other = _windows(file, times)
    mine, theirs = dose("mine"), dose("theirs", at=later(4))
    heard = Listener(other)
    looked, also = one.log.look(mine), other.log.look(theirs)
    assert one.log.log([mine], looked=looked) is Logged.NEW
    assert other.log.log([theirs], looked=also) is Logged.ASK
    assert [entry.id for entry in other.log.entries("a")] == ["mine"]
    assert [reason.code for reason in heard.take("failed")] == ["store.dose_beside"]  # type: ignore[attr-defined]
    assert other.unsaved() == 0
    # Whoever has seen it may say that theirs is another.
    assert other.log.log([theirs], looked=other.log.look(theirs)) is Logged.NEW
    for document in (one, other):
        document.close()


def test_H14_a_dose_from_another_jug_within_a_day_asks_as_well(qapp: object, file: Path, times: Times) -> None:
    """Together they may be too much for a day, which only who sees both can be asked about."""
    one, other = _windows(file, times)
    theirs = dose("theirs", pump="right", at=later(hours=20))
    also = other.log.look(theirs)
    one.log.log([dose("mine")], looked=one.log.look(dose("mine")))
    assert other.log.log([theirs], looked=also) is Logged.ASK
    tomorrow = dose("tomorrow", at=later(hours=48))
    also = other.log.look(tomorrow)
    one.log.log([dose("third", at=later(hours=1))])
    assert other.log.log([tomorrow], looked=also) is Logged.NEW, "a dose more than a day apart changes no answer"
    for document in (one, other):
        document.close()


def test_a_dose_that_is_logged_already_is_not_asked_about_again(qapp: object, file: Path, times: Times) -> None:
    one, other = _windows(file, times)
    mine = dose("mine")
    looked = one.log.look(mine)
    assert one.log.log([mine], looked=looked) is Logged.NEW
    other.log.log([dose("theirs", at=later(4))])
    assert one.log.log([mine], looked=looked) is Logged.ALREADY
    for document in (one, other):
        document.close()
