"""Heavy work beside the window: one task at a time, and only the newest answer counts."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject, QRunnable, QThreadPool, QTimer, Signal, Slot

from evenwater.store.collector import CollectorRest

# How often [ms] the window's thread looks for a result while one is expected.
_LOOK_MS = 10


@dataclass(frozen=True)
class Done:
    """The result of the newest task; ``key`` is what it was submitted with."""

    key: object
    result: object


@dataclass(frozen=True)
class Failed:
    """The exception that the newest task ended with."""

    key: object
    error: BaseException


@dataclass(frozen=True)
class _Job:
    task: Callable[[], object]
    key: object


class _Worker(QRunnable):
    """Runs one job after the other and leaves each outcome in a list that both threads may touch.

    There is one for all of them, since PySide never lets go of a runnable that a pool has started, nor of what it holds.
    """

    def __init__(self, outcomes: deque[Done | Failed]) -> None:
        super().__init__()
        # Its owner keeps it; the pool must not delete it.
        self.setAutoDelete(False)
        self._outcomes = outcomes
        self.job: _Job | None = None
        """What is run next; to be set while nothing runs."""

    def run(self) -> None:
        """Run the job. Called by the pool."""
        job, self.job = self.job, None
        if job is None:
            return
        try:
            outcome: Done | Failed = Done(job.key, job.task())
        except BaseException as error:  # noqa: BLE001  (whatever it is, the window must hear of it)
            outcome = Failed(job.key, error)
        del job
        # With this the next job may be given: nothing is touched any more.
        self._outcomes.append(outcome)


class LatestOnly(QObject):
    """Runs tasks on a thread of its own and delivers the newest result in the window's thread.

    A task submitted while another runs waits; a newer one takes its place; what a running task
    finds after a newer one was submitted is dropped. The worker never touches a QObject: it leaves
    its outcome in a deque and a timer of this object fetches it. A signal sent from the pool's
    thread is lost, or worse, when its sender or receiver is destroyed at that moment.

    While any of them works the collector of cycles rests (``CollectorRest``).
    """

    done = Signal(object)
    """Carries a ``Done``."""
    failed = Signal(object)
    """Carries a ``Failed``."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._pool = QThreadPool(self)
        self._pool.setMaxThreadCount(1)
        self._outcomes: deque[Done | Failed] = deque()
        self._worker = _Worker(self._outcomes)
        self._running = False
        self._next: _Job | None = None
        self._closed = False
        self._timer = QTimer(self)
        self._timer.setInterval(_LOOK_MS)
        self._timer.timeout.connect(self._look)

    def submit(self, task: Callable[[], object], key: object) -> None:
        """Run ``task`` as soon as possible; after ``close`` nothing happens.

        ``task`` is called in another thread: it must be a pure function of what it holds.
        """
        if self._closed:
            return
        self._next = _Job(task, key)
        if not self._running:
            self._start_next()

    def busy(self) -> bool:
        """Say whether a result is still to come."""
        return self._running

    def close(self, timeout_ms: int = 2000) -> bool:
        """Deliver nothing any more and wait for the running task; False when it did not end in time."""
        self._closed = True
        self._timer.stop()
        ended = self._pool.waitForDone(timeout_ms)
        if ended:
            self._rest()
        return ended

    @Slot()
    def _look(self) -> None:
        """Fetch the outcome of the running task and start what is waiting."""
        if not self._outcomes:
            return
        outcome = self._outcomes.popleft()
        self._timer.stop()
        self._rest()
        if self._next is not None:
            self._start_next()
        elif isinstance(outcome, Done):
            self.done.emit(outcome)
        else:
            self.failed.emit(outcome)

    def _start_next(self) -> None:
        job, self._next = self._next, None
        if job is not None:
            self._running, self._worker.job = True, job
            CollectorRest.begin(self)
            self._pool.start(self._worker)
            self._timer.start()

    def _rest(self) -> None:
        """Note that nothing is running any more."""
        if self._running:
            self._running = False
            CollectorRest.end(self)
