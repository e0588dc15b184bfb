"""The fields of the Foods sheet that take a quantity, by their path: ``food.per_day``."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache

from evenwater.engine import fields, foods_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Field, Ok, read

FEEDINGS = Field("feedings", "number", "", 1.0, 1_440.0, bare=True, whole=True)
JUG_VOLUME = Field("jug_volume", "volume", "mL", 0.0, 1_000_000.0, above_low=True)
KEEPS_DAYS = Field("keeps_days", "number", "", 0.0, 3_650.0, above_low=True, bare=True)
# The bounds of a label without a parameter yet are those of the first one chosen.
_LABEL_FIRST = "nitrate"

_SPECS = (
    foods_intake.PER_DAY,
    foods_intake.NITROGEN,
    foods_intake.PHOSPHORUS,
    foods_intake.PROTEIN,
    foods_intake.NITROGEN_SHARE,
    foods_intake.PHOSPHORUS_SHARE,
    foods_intake.DENSITY,
    FEEDINGS,
    JUG_VOLUME,
    KEEPS_DAYS,
    replace(fields.LABEL_DOSE, path="label_dose"),
    replace(fields.LABEL_WATER, path="label_water"),
    replace(fields.LINE_BORE, path="line_bore"),
    replace(fields.LINE_LENGTH, path="line_length"),
)
FOOD_FIELDS: dict[str, Field] = {f"food.{spec.path}": replace(spec, path=f"food.{spec.path}") for spec in _SPECS}


def label_raises(catalogue: Catalogue, parameter: str) -> Field:
    """Return the field for what a label says its dose raises a parameter by; of nitrate while none is chosen."""
    known = catalogue.parameters
    return replace(fields.label_raises(known.get(parameter) or known[_LABEL_FIRST]), path="food.label_raises")


def number(values: Mapping[str, Typed], name: str) -> float | None:
    """Return a quantity of a food [canonical unit of its field]; None where nothing stands there that can be read."""
    return _number(name, values.get(name, Typed("")))


@lru_cache(maxsize=512)
def _number(name: str, typed: Typed) -> float | None:
    spec = FOOD_FIELDS[f"food.{name}"]
    found = read(typed.text, spec, typed.unit)
    return to_canonical(float(found.entered.number), spec.kind, found.entered.unit) if isinstance(found, Ok) else None
