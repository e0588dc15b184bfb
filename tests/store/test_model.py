"""Edits, undo and redo in any order do what a list of remembered states would do."""

from __future__ import annotations

import tempfile
from pathlib import Path

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, RemoveRecord, SetField, Step, Store
from evenwater.store.log import MERGE_SECONDS
from tests.store.writing import Times, typed

State = dict[str, dict[str, str]]
Names = st.sampled_from(["a", "b", "c"])
Fields = st.sampled_from(["ph", "name"])
Texts = st.sampled_from(["", "8", "8,1", "0", " "])


class Log(RuleBasedStateMachine):
    """The model: every state there was, in a list, and where in it we are."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.times = Times()
        self.store = self._open()
        self.states: list[State] = [{}]
        self.at = 0
        # The record and field of the last step, while typing may still join it.
        self.typing: tuple[str, str] | None = None

    def teardown(self) -> None:
        self.store.close()
        self.folder.cleanup()

    def _open(self) -> Store:
        return Store.open(Path(self.folder.name) / "log.sqlite", self.times.clock())

    def _now(self) -> State:
        return {record: dict(fields) for record, fields in self.states[self.at].items()}

    def _go_on(self, state: State) -> None:
        self.states = [*self.states[: self.at + 1], state]
        self.at += 1

    @rule(record=Names, text=Texts)
    def add(self, record: str, text: str) -> None:
        state = self._now()
        if record in state:
            return
        state[record] = {"ph": text} if text else {}
        self.store.apply(Step("add", (AddRecord(record, "system"), SetField(record, "ph", Typed(text)))))
        self._go_on(state)
        self.typing = None

    @rule(record=Names)
    def remove(self, record: str) -> None:
        state = self._now()
        if record not in state:
            return
        del state[record]
        self.store.apply(Step("remove", (RemoveRecord(record),)))
        self._go_on(state)
        self.typing = None

    @rule(record=Names, field=Fields, text=Texts, merge=st.booleans())
    def edit(self, record: str, field: str, text: str, merge: bool) -> None:
        state = self._now()
        if record not in state or state[record].get(field, "") == text:
            return
        state[record][field] = text
        if not text:
            del state[record][field]
        self.store.apply(typed(record, field, text), merge=merge)
        if not merge or self.typing != (record, field):
            self._go_on(state)
            self.typing = (record, field)
            return
        self.states[self.at] = state
        if state == self.states[self.at - 1]:
            # Typed back to where it began: no step, and nothing that more typing could join.
            del self.states[self.at]
            self.at -= 1
            self.typing = None

    @rule()
    def commit_point(self) -> None:
        self.store.commit_point()
        self.typing = None

    @rule()
    def pause(self) -> None:
        self.times.pass_by(MERGE_SECONDS + 1)
        self.typing = None

    @rule()
    def undo(self) -> None:
        assert (self.store.undo() is not None) == (self.at > 0)
        self.at = max(0, self.at - 1)
        self.typing = None

    @rule()
    def redo(self) -> None:
        possible = self.at + 1 < len(self.states)
        assert (self.store.redo() is not None) == possible
        self.at += possible
        self.typing = None

    @precondition(lambda self: self.at > 0)
    @rule()
    def restart(self) -> None:
        self.store.close()
        self.store = self._open()
        self.typing = None

    @invariant()
    def the_log_is_the_model(self) -> None:
        found = self.store.snapshot().values
        assert {r: {f: t.text for f, t in fields.items()} for r, fields in found.items()} == self.states[self.at]

    @invariant()
    def what_can_be_done_is_known(self) -> None:
        assert (self.store.can_undo() is not None) == (self.at > 0)
        assert (self.store.can_redo() is not None) == (self.at + 1 < len(self.states))


TestLog = Log.TestCase
TestLog.settings = settings(
    max_examples=20,
    stateful_step_count=30,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)
