"""The collector of cycles rests while another thread than the window's works."""

from __future__ import annotations

import gc
from typing import ClassVar
from weakref import WeakSet


class CollectorRest:
    """Who is at work beside the window.

    The collector runs in the thread that has just allocated something, and widgets that it found there would be destroyed
    outside the window's thread, which Qt does not survive. Both methods are called by the window's thread only.
    """

    # One that is destroyed at work leaves this set by itself.
    _at_work: ClassVar[WeakSet[object]] = WeakSet()

    @classmethod
    def begin(cls, worker: object) -> None:
        """Let the collector rest because ``worker`` has begun."""
        cls._at_work.add(worker)
        gc.disable()

    @classmethod
    def end(cls, worker: object) -> None:
        """Let it go on when ``worker`` was the last at work; more than once does nothing."""
        cls._at_work.discard(worker)
        if not cls._at_work:
            gc.enable()
