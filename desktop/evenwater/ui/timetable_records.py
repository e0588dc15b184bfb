"""The records behind the Timetable sheet: the upkeep of a system, the plans followed in it, and the wishes about when."""

from __future__ import annotations

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed
from evenwater.screens.local_zone import present
from evenwater.screens.timetable_given import FollowedPlan
from evenwater.screens.timetable_sheet import Asked
from evenwater.session import Document, Plan
from evenwater.ui.learning import Learning
from evenwater.ui.plans import Plans
from evenwater.ui.shared_pump import shared
from evenwater.ui.upkeep_records import UpkeepRecords


class TimetableRecords:
    """Reads the upkeep and the followed plans of one system; keeps the wishes as fields of the system and of its corrections."""

    def __init__(self, document: Document, catalogue: Catalogue, learning: Learning, plans: Plans) -> None:
        """Start without a system."""
        self._document, self._catalogue, self._plans = document, catalogue, plans
        self._upkeep = UpkeepRecords(document, catalogue, learning, plans)

    @property
    def system(self) -> str:
        """Id of the system, or empty."""
        return self._upkeep.system

    @system.setter
    def system(self, system_id: str) -> None:
        self._upkeep.system = system_id

    def dosed(self) -> tuple[str, ...]:
        """Return the parameters that are kept or followed, in the order of the data file."""
        followed = {plan.parameter for plan in self._live()}
        kept = self._upkeep.kept()
        return tuple(name for name in self._catalogue.parameters if name in kept or name in followed)

    def shared(self) -> tuple[str, ...]:
        """Return what is wrong with the choice of each pump that is to draw from two jugs, or to dose into two waters."""
        pumps = dict.fromkeys(self._document.value(f"{self.system}:{name}", "pump").text for name in self.dosed())
        return tuple(filter(None, (shared(self._document, pump) for pump in pumps)))

    def asked(self) -> Asked:
        """Return what the timetable is asked for."""
        raw = self._upkeep.raw()
        corrections = {name: self._document.values(f"{self.system}:{name}") for name in self.dosed()}
        return Asked(raw, self._document.values(self.system), corrections, tuple(map(self._followed, self._live())))

    def _live(self) -> list[Plan]:
        return [plan for plan in self._plans.live() if plan.system_id == self.system]

    def _followed(self, plan: Plan) -> FollowedPlan:
        judged = self._plans.judged(plan, present())
        kept = self._plans.kept(plan)
        if judged is None or kept is None:
            return FollowedPlan(plan.plan_id, plan.parameter, None)
        return FollowedPlan(plan.plan_id, plan.parameter, kept, judged.state, judged.said)

    def record_of(self, path: str) -> tuple[str, str]:
        """Return the record and the field that a wish is kept in: ``quiet_from``, or ``alkalinity.first_at``."""
        parameter, _, name = path.rpartition(".")
        return (f"{self.system}:{parameter}", name) if parameter else (self.system, name)

    def wish(self, path: str) -> Typed:
        """Return a wish as typed."""
        return self._document.value(*self.record_of(path)) if self.system else Typed("")

    def edit(self, path: str, typed: Typed, initiator: object) -> None:
        """Save a wish."""
        if self.system:
            self._document.edit(*self.record_of(path), typed, initiator, merge=True)
