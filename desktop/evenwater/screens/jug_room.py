"""A jug as the room knows it: what is in it, what is taken from it and by whom, what was read of it."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.fields import HEAD_HOURS
from evenwater.engine.intake import DOSES_PER_DAY
from evenwater.engine.jug_level import Draw
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.recipe import StockAnswer
from evenwater.screens import shelf
from evenwater.screens.jug_levels import Level, holds_ml
from evenwater.screens.pump_sheet import quantity, text_of
from evenwater.screens.rounds_room import Contents
from evenwater.screens.shown import significant, with_unit
from evenwater.screens.when import instant_of

Values = Mapping[str, Typed]

_COUNT = Field("pump.doses_per_day", "number", "", 1.0, 1440.0, bare=True, whole=True)
_LITRES_FROM_ML = 1000.0


@dataclass(frozen=True)
class Drawer:
    """A system that takes from a jug: so much in a day [mL], by these pumps (fields by id), to raise these parameters.

    ``tested`` are its newest readings by parameter [canonical unit], ``logged`` the doses from this jug in its log as instants [s since
    the start of 1970, UTC] and volumes [mL], since the first level that counts.
    """

    system_id: str
    name: str
    system: Values
    per_day_ml: float
    parameters: tuple[str, ...] = ()
    pumps: Mapping[str, Values] = field(default_factory=dict)
    tested: Mapping[str, float] = field(default_factory=dict)
    logged: tuple[tuple[float, float], ...] = ()

    @property
    def doses_per_day(self) -> int:
        """How many doses its pump gives in a day; as many as usual when it does not say."""
        for pump in self.pumps.values():
            found = read(pump.get("doses_per_day", Typed("")).text, _COUNT)
            if isinstance(found, Ok):
                return int(found.entered.number)
        return DOSES_PER_DAY

    def draw(self, first: datetime, scale: float = 1.0) -> Draw:
        """Return what it takes as doses, the first of them at an instant, ``scale`` [1] times what it is set to."""
        return Draw(self.name, scale * self.per_day_ml / self.doses_per_day, self.doses_per_day, first)


@dataclass(frozen=True)
class Jug:
    """One jug: fields of the jug and of the batch in it, its levels, and who takes from it (None while that is not known).

    ``head_hours`` [h] are the running hours of the head of the one pump that draws from it, None where they are not known.
    """

    contents: Contents
    stock: Values
    batch_id: str
    batch: Values
    levels: tuple[Level, ...]
    drawers: tuple[Drawer, ...] | None
    head_hours: float | None = None

    @property
    def stock_id(self) -> str:
        """Id of its record."""
        return self.contents.stock_id

    @property
    def name(self) -> str:
        """Its name."""
        return self.contents.name

    @property
    def holds_ml(self) -> float | None:
        """Its full volume [mL], if known."""
        return holds_ml(self.stock, self.batch, self.levels)

    @property
    def pumps(self) -> Mapping[str, Values]:
        """The pumps that draw from it, by id."""
        return {pump_id: pump for drawer in self.drawers or () for pump_id, pump in drawer.pumps.items()}

    @property
    def per_day_ml(self) -> float:
        """What is taken from it in a day [mL], as far as that is known."""
        return sum(drawer.per_day_ml for drawer in self.drawers or ())


def stock_answer(jug: Jug, catalogue: Catalogue) -> StockAnswer | None:
    """Return what is in a jug, or None while it cannot be reckoned.

    Parameters
    ----------
    jug : Jug
        The jug; a bottle whose label does not say what it raises raises what it is used for.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    StockAnswer or None
        What its batch carries.
    """
    batch = jug.batch
    named = next((name for drawer in jug.drawers or () for name in drawer.parameters), "")
    if shelf.contents_of(batch) == shelf.BOTTLE and named and not batch.get("label_parameter", Typed("")).text:
        batch = {**batch, "label_parameter": Typed(named)}
    return shelf.answer_of(batch, catalogue) if batch else None


def head_hours(pump: Values, calibrations: Iterable[Values]) -> float | None:
    """Return the running hours of a pump's head, as its newest calibration has them.

    Parameters
    ----------
    pump : mapping of str to Typed
        The pump's fields; hours from before its head was fitted are those of another head.
    calibrations : iterable of mapping
        The fields of its calibrations.

    Returns
    -------
    float or None
        Hours [h], rather too few than too many; None where nothing is said.
    """
    fitted = pump.get("head_fitted", Typed("")).text.strip()
    newest, hours = -math.inf, None
    for each in calibrations:
        at, said = instant_of(text_of(each, "at")), quantity(each, HEAD_HOURS)
        if at is not None and said is not None and at.timestamp() > newest and at.date().isoformat() >= fitted:
            newest, hours = at.timestamp(), said / 3600.0
    return hours


def volume(ml: float) -> str:
    """Write what is in a jug, in litres from one on.

    Parameters
    ----------
    ml : float
        Volume [mL].

    Returns
    -------
    str
        Three digits and the unit.
    """
    ml = max(ml, 0.0)
    if ml >= _LITRES_FROM_ML:
        return with_unit(significant(ml / 1000.0, 3), "L")
    return with_unit(significant(ml, 3), "mL")
