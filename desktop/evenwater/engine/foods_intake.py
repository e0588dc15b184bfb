"""Turns what was typed of a food into one; or says what is missing or wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any

from evenwater.engine import fields, intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.foods_question import (
    PROTEIN_PER_NITROGEN,
    Food,
    nitrate_per_nitrogen,
    phosphate_per_phosphorus,
)
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Water
from evenwater.engine.reader import Field
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Labelled, strength

PER_DAY = Field("per_day", "volume per day", "mL per day", 0.0, 1_000_000.0, above_low=True)
NITROGEN = Field("nitrogen", "mass per volume", "mg/mL", 0.0, 1_000.0)
PHOSPHORUS = replace(NITROGEN, path="phosphorus")
PROTEIN = Field("protein", "share", "%", 0.0, 100.0)
NITROGEN_SHARE = replace(PROTEIN, path="nitrogen_share")
PHOSPHORUS_SHARE = replace(PROTEIN, path="phosphorus_share")
DENSITY = Field("density", "density", "g/mL", 0.5, 3.0)
# As heavy as water, where nobody weighed it.
DENSITY_G_PER_ML = 1.0
_MG_PER_G = 1000.0
_SHARES = ("protein", "nitrogen_share", "phosphorus_share")


def foods(raw: Raw, catalogue: Catalogue, water: Water | None = None) -> tuple[Food, ...] | Unread:
    """Read a list of foods.

    Parameters
    ----------
    raw : mapping
        A list ``food`` of tables and perhaps a table ``system``, as in a question file; values are ``Typed`` or plain text.
    catalogue : Catalogue
        Parameters.
    water : Water or None
        The tank's water, for labels that count per kilogram; what ``system`` says where it is not given.

    Returns
    -------
    tuple of Food or Unread
        The foods, or every field that is missing or wrong.
    """
    rows = raw.get("food", ())
    numbered = rows if isinstance(rows, Sequence) and not isinstance(rows, str) else ()
    r = Form({**raw, "food": {str(number): row for number, row in enumerate(numbered, start=1)}})
    found = tuple(read_foods(r, catalogue, water or intake.water_of(raw)))
    return r.unread if r.missing or r.wrong else found


def read_foods(r: Form, catalogue: Catalogue, water: Water) -> Iterator[Food]:
    """Yield the foods of a form whose list ``food`` is a table by number; notes what is missing or wrong.

    Parameters
    ----------
    r : Form
        The form.
    catalogue : Catalogue
        Parameters.
    water : Water
        The tank's water, for labels that count per kilogram.

    Yields
    ------
    Food
        Those that can be read.
    """
    rows: Mapping[str, Any] = r.raw["food"]
    for number in rows:
        food = _food(r, catalogue, water, f"food.{number}")
        if food is not None:
            yield food


def _food(r: Form, catalogue: Catalogue, water: Water, here: str) -> Food | None:
    per_day = _needed(r, PER_DAY, here)
    carried = _carried(r, catalogue, water, here)
    if per_day is None or carried is None:
        return None
    return replace(carried, name=r.text(f"{here}.name"), per_day_ml=1000.0 * per_day, salts=r.flag(f"{here}.salts"))


def _carried(r: Form, catalogue: Catalogue, water: Water, here: str) -> Food | None:
    """Return a food by what its label says, still without name and amount."""
    if r.value(f"{here}.label") is not None:
        return _by_label(r, catalogue, water, here)
    if any(r.value(f"{here}.{name}") is not None for name in _SHARES):
        return _by_shares(r, here)
    nitrogen = _needed(r, NITROGEN, here)
    phosphorus = _number(r, PHOSPHORUS, here)
    return None if nitrogen is None else Food("", 0.0, nitrogen, phosphorus)


def _by_shares(r: Form, here: str) -> Food | None:
    """Return a food whose label says percent by mass; nitrogen itself goes before protein."""
    before = len(r.wrong)
    density = _number(r, DENSITY, here)
    mg_per_ml = _MG_PER_G * (DENSITY_G_PER_ML if density is None else density)
    nitrogen, phosphorus = _number(r, NITROGEN_SHARE, here), _number(r, PHOSPHORUS_SHARE, here)
    protein = _number(r, PROTEIN, here)
    if len(r.wrong) > before:
        return None
    if nitrogen is None and protein is None:
        _missing(r, PROTEIN, here)
        return None
    share = nitrogen if nitrogen is not None else (protein or 0.0) / PROTEIN_PER_NITROGEN
    if share + (phosphorus or 0.0) > 100.0:
        r.wrong.append(Reason("food_more_than_all", {}, f"{here}.{PHOSPHORUS_SHARE.path}"))
        return None
    return Food(
        "",
        0.0,
        mg_per_ml * share / 100.0,
        None if phosphorus is None else mg_per_ml * phosphorus / 100.0,
    )


def _by_label(r: Form, catalogue: Catalogue, water: Water, here: str) -> Food | None:
    """Return a food whose label says "so many millilitres raise so much water by so much"."""
    p = _parameter(r, catalogue, f"{here}.label.parameter")
    dose = _needed(r, replace(fields.LABEL_DOSE, path="label.dose"), here)
    litres = _needed(r, replace(fields.LABEL_WATER, path="label.water"), here)
    if p is None:
        return None
    raises = _needed(r, replace(fields.label_raises(p), path="label.raises"), here, water)
    if dose is None or litres is None or raises is None:
        return None
    per_ml = strength(Labelled(1000.0 * dose, litres, raises, p.kind), p.name, p.kind, water)
    if p.name == "nitrate":
        return Food("", 0.0, per_ml / nitrate_per_nitrogen(), None)
    if p.name == "phosphate":
        return Food("", 0.0, 0.0, per_ml / phosphate_per_phosphorus())
    return Food("", 0.0, 0.0, 0.0, (p, per_ml))


def _parameter(r: Form, catalogue: Catalogue, path: str) -> Parameter | None:
    name = r.text(path)
    found = catalogue.parameters.get(name)
    if found is None and name:
        r.wrong.append(Reason("unknown_parameter", {"text": name, "choices": tuple(catalogue.parameters)}, path))
    elif found is None:
        r.missing.append(Reason("missing", {}, path))
    return found


def _number(r: Form, spec: Field, here: str, water: Water | None = None) -> float | None:
    return r.number(replace(spec, path=f"{here}.{spec.path}"), water)


def _needed(r: Form, spec: Field, here: str, water: Water | None = None) -> float | None:
    before = len(r.wrong)
    value = _number(r, spec, here, water)
    if value is None and len(r.wrong) == before:
        _missing(r, spec, here)
    return value


def _missing(r: Form, spec: Field, here: str) -> None:
    r.missing.append(Reason("missing", {}, f"{here}.{spec.path}"))
