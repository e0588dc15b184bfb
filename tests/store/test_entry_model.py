"""Entries, edits of records and plans in any order: undo, redo and restarts do what a list of states would do."""

from __future__ import annotations

import tempfile
from dataclasses import dataclass, field, replace
from pathlib import Path

from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from evenwater.store import ENTRY_KINDS, Entry, Logged, Plan, Store
from evenwater.store.entries import entry_of
from tests.store.logged import dose, everything, later, note, plan, reading, two_systems
from tests.store.writing import Times, card_for, hasty, typed

_ROW = "SELECT system_id, kind, subject, at_us, id, who, fields, value, logged_us FROM entry WHERE id = ?"
IDS = [f"e{number}" for number in range(6)]


@dataclass(frozen=True)
class State:
    """What the log holds at one point of its history."""

    entries: dict[str, Entry] = field(default_factory=dict)
    ph: str = ""
    plans: dict[str, Plan] = field(default_factory=dict)


def _entry(entry_id: str, what: int, minutes: int, amount: int) -> Entry:
    makers = (
        lambda: reading(entry_id, amount, later(minutes)),
        lambda: dose(entry_id, amount, later(minutes)),
        lambda: dose(entry_id, amount, later(minutes), "right", "b"),
        lambda: note(entry_id, f"{amount}", later(minutes)),
    )
    return makers[what]()


Entries = st.builds(_entry, st.sampled_from(IDS), st.integers(0, 3), st.integers(-3, 3), st.integers(0, 3))


class Log(RuleBasedStateMachine):
    """The model: every state there was, in a list, and where in it we are."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = tempfile.TemporaryDirectory()
        self.file = Path(self.folder.name) / "log.sqlite"
        self.times = Times()
        self.store = hasty(two_systems(self.file, self.times))
        self.states = [State()]
        self.at = 0
        # What each id ever said: every version of it must stay on the disk.
        self.said: dict[str, list[Entry]] = {}
        self.plans = 0

    def teardown(self) -> None:
        self.store.close()
        self.folder.cleanup()

    @property
    def now(self) -> State:
        return self.states[self.at]

    def _go_on(self, state: State) -> None:
        self.states = [*self.states[: self.at + 1], state]
        self.at += 1
        for entry in state.entries.values():
            versions = self.said.setdefault(entry.id, [])
            if entry not in versions:
                versions.append(entry)

    @rule(entries=st.lists(Entries, max_size=3, unique_by=lambda entry: entry.id))
    def log(self, entries: list[Entry]) -> None:
        here = self.now.entries
        new = {entry.id: entry for entry in entries if entry.id not in here}
        # An id in force is given again as it is: what a caller does who does not know whether it was saved.
        given = [here.get(entry.id, entry) for entry in entries]
        assert self.store.log(given) is (Logged.NEW if new else Logged.ALREADY)
        if new:
            self._go_on(replace(self.now, entries={**here, **new}))

    @rule(entries=st.lists(Entries, max_size=4))
    def bring_in(self, entries: list[Entry]) -> None:
        new: dict[str, Entry] = {}
        for entry in entries:
            if entry.id not in self.now.entries:
                new.setdefault(entry.id, entry)
        assert self.store.import_entries(iter(entries), lambda _: True) == len(new)
        if new:
            self._go_on(replace(self.now, entries={**self.now.entries, **new}))

    @rule(entry=Entries)
    def change(self, entry: Entry) -> None:
        before = self.now.entries.get(entry.id)
        if before is None:
            return
        assert self.store.change_entry(entry, seen=before) == (entry != before)
        if entry != before:
            self._go_on(replace(self.now, entries={**self.now.entries, entry.id: entry}))

    @rule(ids=st.sets(st.sampled_from(IDS), max_size=3))
    def remove(self, ids: set[str]) -> None:
        known = ids & self.said.keys()
        gone = known & self.now.entries.keys()
        assert self.store.remove_entries(known) == bool(gone)
        if gone:
            left = {entry_id: entry for entry_id, entry in self.now.entries.items() if entry_id not in gone}
            self._go_on(replace(self.now, entries=left))

    @rule(text=st.sampled_from(["8", "8,1"]), merge=st.booleans())
    def edit(self, text: str, merge: bool) -> None:
        self.store.commit_point()
        if self.store.apply(typed("a", "ph", text), merge=merge) is not None:
            self._go_on(replace(self.now, ph=text))

    @rule(parameter=st.sampled_from(["alkalinity", "calcium"]))
    def start_plan(self, parameter: str) -> None:
        self.plans += 1
        new = plan(f"P{self.plans}", self.times.instant, parameter=parameter)
        self.store.start_plan(new, card_for(new.plan_id, "", parameter=parameter), note(f"p{self.plans}"))
        live = {i: p for i, p in self.now.plans.items() if p.parameter != parameter}
        noted = {**self.now.entries, f"p{self.plans}": note(f"p{self.plans}")}
        self._go_on(replace(self.now, plans={**live, new.plan_id: new}, entries=noted))

    @rule(pick=st.integers(0, 1))
    def end_plan(self, pick: int) -> None:
        if len(self.now.plans) <= pick:
            return
        self.plans += 1
        plan_id = list(self.now.plans)[pick]
        self.store.end_plan(plan_id, self.times.instant, "tested", note(f"p{self.plans}"))
        live = {i: p for i, p in self.now.plans.items() if i != plan_id}
        noted = {**self.now.entries, f"p{self.plans}": note(f"p{self.plans}")}
        self._go_on(replace(self.now, plans=live, entries=noted))

    @rule(times=st.integers(1, 3))
    def undo(self, times: int) -> None:
        for _ in range(min(times, self.at)):
            assert self.store.undo() is not None
            self.at -= 1

    @rule(times=st.integers(1, 3))
    def redo(self, times: int) -> None:
        for _ in range(times):
            possible = self.at + 1 < len(self.states)
            assert (self.store.redo() is not None) == possible
            self.at += possible

    @rule()
    def restart(self) -> None:
        self.times.pass_by(60)
        self.store.close()
        self.store = hasty(Store.open(self.file, self.times.clock()))

    @invariant()
    def the_log_is_the_model(self) -> None:
        found = everything(self.store)
        assert found == self.now.entries
        ph = self.store.values("a").get("ph")
        assert (ph.text if ph else "") == self.now.ph
        assert {p.plan_id: p for p in self.store.plans()} == self.now.plans

    @invariant()
    def every_question_has_the_same_answer(self) -> None:
        entries = self.now.entries.values()
        for kind in ENTRY_KINDS:
            series: dict[tuple[str, str], list[Entry]] = {}
            for entry in sorted((e for e in entries if e.kind == kind), key=lambda e: (e.at, e.id)):
                series.setdefault((entry.system_id, entry.subject), []).append(entry)
            newest = {key: each[-1] for key, each in series.items()}
            assert {(e.system_id, e.subject): e for e in self.store.latest_of_all(kind)} == newest
            assert self.store.count("a", kind) == sum(len(s) for (system, _), s in series.items() if system == "a")
            for (system, subject), each in series.items():
                values = [e.value for e in each if e.value is not None]
                assert self.store.columns(system, subject, kind)[1].tolist() == values

    @invariant()
    def nothing_that_was_ever_said_is_lost(self) -> None:
        for entry_id, versions in self.said.items():
            kept = [version.entry for version in self.store.history(entry_id)]
            # An entry that is out keeps its last words in its own row.
            kept += map(entry_of, self.store._database.sql(_ROW, entry_id))
            assert all(said in kept for said in versions)

    @invariant()
    def a_card_is_in_use_only_for_a_live_plan(self) -> None:
        assert {card.plan_id for card in self.store.cards("in use")} <= self.now.plans.keys()

    @invariant()
    def what_can_be_done_is_known(self) -> None:
        # Before everything that the model knows, the second system was added.
        label = self.store.can_undo()
        assert label is not None
        assert (label.code == "add") == (self.at == 0)
        assert (self.store.can_redo() is not None) == (self.at + 1 < len(self.states))


TestLog = Log.TestCase
TestLog.settings = settings(
    max_examples=25,
    stateful_step_count=30,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow],
)
