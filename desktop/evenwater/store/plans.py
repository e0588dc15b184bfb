"""The plans that are followed: started with their card, ended, and never two for one purpose."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import datetime

from evenwater.store.database import Database, Row
from evenwater.store.errors import of_row, refused
from evenwater.store.steps import PlanChange, PlanState, instant_from, instant_text
from evenwater.store.tables import PlanRow, Record

# Why a plan ended that gave way to a newer one; whatever else a reason says is the keeper's own words.
REPLACED = "replaced"

_LIVE = PlanState()
_UNDONE = PlanState(undone=True)


@dataclass(frozen=True)
class Plan:
    """A plan: the id that its card carries, what it is for, and its question as JSON text in ``body``.

    ``started`` and ``ended`` are instants with a zone and come back in UTC; it is live while
    ``ended`` is None. ``reason`` is why it ended: the keeper's words, or ``REPLACED``.
    """

    plan_id: str
    system_id: str
    parameter: str
    started: datetime
    body: str
    ended: datetime | None = None
    reason: str = ""

    def __post_init__(self) -> None:
        # Kept in UTC, so that a plan read back is the plan that was started.
        object.__setattr__(self, "started", instant_from(instant_text(self.started)))
        if self.ended is not None:
            object.__setattr__(self, "ended", instant_from(instant_text(self.ended)))


class Plans:
    """Reads and writes the table of plans; the caller holds the transaction."""

    def __init__(self, database: Database) -> None:
        self._database = database

    def all(self, system_id: str = "", live: bool = True) -> list[Plan]:
        """Return the plans of a system, or of all present ones, oldest first; with ``live`` those not ended."""
        present = (PlanRow.undone == False) & (Record.removed == False)  # noqa: E712  (SQL, not Python)
        query = PlanRow.select(*_COLUMNS).join(Record, on=(PlanRow.system_id == Record.id)).where(present)
        if system_id:
            query = query.where(PlanRow.system_id == system_id)
        if live:
            query = query.where(PlanRow.ended_utc.is_null())
        return [_plan(row) for row in self._database.rows(query.order_by(PlanRow.started_utc, PlanRow.plan_id))]

    def start(self, plan: Plan) -> list[PlanChange]:
        """Write a plan down as live and end the live one for the same purpose; nothing when it is live already.

        Raises
        ------
        StoreError
            ``"store.record_gone"`` when the system is not there; ``"store.plan_id_taken"`` when the
            id belongs to another plan, or to this one after it ended or was undone.
        """
        here = (Record.id == plan.system_id) & (Record.kind == "system") & (Record.removed == False)  # noqa: E712  (SQL)
        if not self._database.rows(Record.select(Record.id).where(here)):
            raise refused("store.record_gone", record=plan.system_id)
        if self._database.rows(PlanRow.select(PlanRow.plan_id).where(PlanRow.plan_id == plan.plan_id)):
            if replace(plan, ended=None, reason="") in self.all(plan.system_id):
                return []
            raise refused("store.plan_id_taken", plan_id=plan.plan_id)
        row = {
            "plan_id": plan.plan_id,
            "system_id": plan.system_id,
            "parameter": plan.parameter,
            "started_utc": instant_text(plan.started),
            "ended_utc": None,
            "reason": "",
            "body": plan.body,
            "undone": False,
        }
        older = [p for p in self.all(plan.system_id) if p.parameter == plan.parameter]
        self._database.run(PlanRow.insert(row))
        started = PlanChange(plan.plan_id, plan.system_id, plan.parameter, _UNDONE, _LIVE)
        return [started, *(self._end(p, plan.started, REPLACED) for p in older)]

    def end(self, plan_id: str, ended: datetime, reason: str) -> list[PlanChange]:
        """End a live plan; nothing when it has ended already.

        Raises
        ------
        StoreError
            ``"store.plan_unknown"`` when there is no such plan, or its start was undone.
        """
        found = [plan for plan in self.all(live=False) if plan.plan_id == plan_id]
        if not found:
            raise refused("store.plan_unknown", plan_id=plan_id)
        return [self._end(plan, ended, reason) for plan in found if plan.ended is None]

    def put(self, plan_id: str, state: PlanState) -> None:
        """Bring a plan into the state before or after a change."""
        change = {"ended_utc": state.ended_utc or None, "reason": state.reason, "undone": state.undone}
        self._database.run(PlanRow.update(change).where(PlanRow.plan_id == plan_id))

    def _end(self, plan: Plan, ended: datetime, reason: str) -> PlanChange:
        state = PlanState(instant_text(ended), reason)
        self.put(plan.plan_id, state)
        return PlanChange(plan.plan_id, plan.system_id, plan.parameter, _LIVE, state)


def out_of_force(states: Iterable[tuple[str, PlanState]]) -> list[str]:
    """Return the ids of the plans that are not live in these states; their cards must not be followed."""
    return [plan_id for plan_id, state in states if state != _LIVE]


_COLUMNS = (
    PlanRow.plan_id,
    PlanRow.system_id,
    PlanRow.parameter,
    PlanRow.started_utc,
    PlanRow.body,
    PlanRow.ended_utc,
    PlanRow.reason,
)


@of_row
def _plan(row: Row) -> Plan:
    plan_id, system_id, parameter, started, body, ended, reason = row
    return Plan(
        plan_id, system_id, parameter, instant_from(started), body, instant_from(ended) if ended else None, reason
    )
