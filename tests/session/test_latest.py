"""Background work: only the newest result arrives, in the window's thread, and never after closing."""

from __future__ import annotations

import gc
import threading
import weakref
from collections.abc import Iterator

import pytest
from PySide6.QtCore import QThread
from pytestqt.qtbot import QtBot

from evenwater.session import Done, Failed, LatestOnly

WAIT_MS = 5000


class _Gate:
    """A task that ends when it is told to."""

    def __init__(self, result: object) -> None:
        self.result = result
        self.started = threading.Event()
        self.open = threading.Event()
        self.thread: QThread | None = None

    def __call__(self) -> object:
        self.thread = QThread.currentThread()
        self.started.set()
        assert self.open.wait(10)
        return self.result


class _Ears:
    def __init__(self, latest: LatestOnly) -> None:
        self.heard: list[Done | Failed] = []
        self.threads: list[QThread] = []
        latest.done.connect(self._hear)
        latest.failed.connect(self._hear)

    def _hear(self, outcome: Done | Failed) -> None:
        self.heard.append(outcome)
        self.threads.append(QThread.currentThread())


@pytest.fixture
def latest(qapp: object) -> Iterator[LatestOnly]:
    runner = LatestOnly()
    yield runner
    assert runner.close(10_000)


def test_a_result_arrives_with_its_key_in_the_windows_thread(qtbot: QtBot, latest: LatestOnly) -> None:
    ears, task = _Ears(latest), _Gate(42)
    task.open.set()
    with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
        latest.submit(task, "key")
    assert ears.heard == [Done("key", 42)]
    assert ears.threads == [QThread.currentThread()]
    assert task.thread != QThread.currentThread()
    assert not latest.busy()


def test_the_result_is_handed_over_itself_and_not_a_copy(qtbot: QtBot, latest: LatestOnly) -> None:
    ears, result = _Ears(latest), {"a": [1.0]}
    with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
        latest.submit(_opened(result), "key")
    done = ears.heard[0]
    assert isinstance(done, Done)
    assert done.result is result


def _opened(result: object) -> _Gate:
    gate = _Gate(result)
    gate.open.set()
    return gate


def test_only_the_newest_is_delivered_and_what_was_overtaken_is_never_started(qtbot: QtBot, latest: LatestOnly) -> None:
    ears = _Ears(latest)
    first, second, third = _Gate(1), _Gate(2), _Gate(3)
    latest.submit(first, 1)
    assert first.started.wait(5)
    latest.submit(second, 2)
    latest.submit(third, 3)
    assert latest.busy()
    with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
        first.open.set()
        third.open.set()
    assert ears.heard == [Done(3, 3)]
    assert not second.started.is_set()


def test_fifty_in_a_row_deliver_the_last(qtbot: QtBot, latest: LatestOnly) -> None:
    ears = _Ears(latest)
    for number in range(50):
        latest.submit(_opened(number), number)
    qtbot.waitUntil(lambda: not latest.busy(), timeout=WAIT_MS)
    assert ears.heard[-1] == Done(49, 49)
    assert len(ears.heard) == 1


def test_fifty_one_after_the_other_are_all_delivered(qtbot: QtBot, latest: LatestOnly) -> None:
    ears = _Ears(latest)
    for number in range(50):
        with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
            latest.submit(_opened(number), number)
    assert ears.heard == [Done(number, number) for number in range(50)]


def test_nothing_of_a_task_is_kept_once_it_is_over(qtbot: QtBot, latest: LatestOnly) -> None:
    kept = []
    for number in range(5):
        task = _opened(number)
        kept.append(weakref.ref(task))
        with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
            latest.submit(task, number)
        del task
    gc.collect()
    assert [reference() for reference in kept] == [None] * 5


class _Fails:
    def __init__(self, error: BaseException) -> None:
        self.error = error

    def __call__(self) -> object:
        raise self.error


def test_H60_no_garbage_is_looked_for_outside_the_windows_thread(qtbot: QtBot, latest: LatestOnly) -> None:
    """Widgets found as garbage in another thread would be destroyed there, which ends the program."""
    other = LatestOnly()
    first, second = _Gate(1), _Gate(2)
    assert gc.isenabled()
    latest.submit(first, 1)
    other.submit(second, 2)
    assert not gc.isenabled()
    with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
        first.open.set()
    assert not gc.isenabled(), "the other one still works"
    second.open.set()
    assert other.close(10_000)
    assert gc.isenabled()


@pytest.mark.parametrize("error", [ValueError("no"), SystemExit(3)])
def test_an_exception_is_delivered_and_the_next_task_runs(
    qtbot: QtBot, latest: LatestOnly, error: BaseException
) -> None:
    ears = _Ears(latest)
    with qtbot.waitSignal(latest.failed, timeout=WAIT_MS):
        latest.submit(_Fails(error), "bad")
    assert ears.heard == [Failed("bad", error)]
    with qtbot.waitSignal(latest.done, timeout=WAIT_MS):
        latest.submit(_opened(1), "good")
    assert ears.heard[1:] == [Done("good", 1)]


def test_the_failure_of_an_overtaken_task_is_not_news(qtbot: QtBot, latest: LatestOnly) -> None:
    ears = _Ears(latest)
    latest.submit(_Fails(ValueError("old")), "old")
    latest.submit(_opened(1), "new")
    qtbot.waitUntil(lambda: not latest.busy(), timeout=WAIT_MS)
    assert ears.heard == [Done("new", 1)]


def test_nothing_is_delivered_after_closing(qtbot: QtBot) -> None:
    latest = LatestOnly()
    ears, running, waiting = _Ears(latest), _Gate(1), _Gate(2)
    latest.submit(running, 1)
    assert running.started.wait(5)
    latest.submit(waiting, 2)
    running.open.set()
    assert latest.close(10_000)
    latest.submit(_opened(3), 3)
    qtbot.wait(60)
    assert ears.heard == []
    assert not waiting.started.is_set()


def test_closing_does_not_wait_for_ever(qtbot: QtBot) -> None:
    latest = LatestOnly()
    ears, stuck = _Ears(latest), _Gate(1)
    latest.submit(stuck, 1)
    assert stuck.started.wait(5)
    assert not latest.close(20)
    stuck.open.set()
    assert latest.close(10_000)
    qtbot.wait(60)
    assert ears.heard == []
