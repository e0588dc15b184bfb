"""Turns the fields of a stock, as typed, into a question; or says what is missing or wrong."""

from __future__ import annotations

from dataclasses import replace

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Chemical, Parameter
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Typed
from evenwater.engine.reader import Ask, Ok, read
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import Bottle, StockQuestion, Strength, Unweighed
from evenwater.engine.stock import ROOM_C, Dissolved, Labelled, Portion, better_warm, limewater


def stock(raw: Raw, catalogue: Catalogue) -> StockQuestion | Unread:
    """Read a question about a stock.

    Parameters
    ----------
    raw : mapping
        Tables ``additive`` and perhaps ``wanted``, and ``temperature``, as in a question file; values are ``Typed`` or
        plain text.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    StockQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form(raw)
    batch: Dissolved | Bottle | Unweighed | None
    temperature = r.number(fields.STOCK_TEMPERATURE)
    if r.value("additive.label") is not None:
        batch = _bottle(r, catalogue)
    elif r.value("wanted") is not None:
        batch = _unweighed(r, catalogue)
    else:
        batch = dissolved(r, catalogue)
    if batch is None or r.missing or r.wrong:
        return r.unread
    parameters = tuple(catalogue.parameters.values())
    return StockQuestion(batch, parameters, ROOM_C if temperature is None else temperature)


def dissolved(r: Form, catalogue: Catalogue, table: str = "additive") -> Dissolved | None:
    """Return a batch of a weighed chemical, or None and a note of what is missing or wrong.

    Parameters
    ----------
    r : Form
        The form.
    catalogue : Catalogue
        The chemicals known.
    table : str
        Path of the table that holds the batch.

    Returns
    -------
    Dissolved or None
        The batch.
    """
    chemical = r.chemical(catalogue, f"{table}.chemical")
    made_up_l = r.needed(replace(fields.MADE_UP_TO, path=f"{table}.made_up_to"))
    coolest = r.number(replace(fields.BATCH_TEMPERATURE, path=f"{table}.temperature"))
    coolest_c = ROOM_C if coolest is None else coolest
    if r.flag(f"{table}.saturated"):
        return _limewater(r, chemical, made_up_l, coolest_c, table)
    first = _portion(r, chemical, table)
    also: tuple[Portion, ...] = ()
    if r.value(f"{table}.also") is not None:
        second = _portion(r, r.chemical(catalogue, f"{table}.also.chemical"), f"{table}.also")
        if second is None:
            return None
        also = (second,)
        if chemical is not None and chemical.name == second.chemical.name:
            r.wrong.append(Reason("same_chemical", {"chemical": chemical.name}, f"{table}.also.chemical"))
            return None
    if first is None or made_up_l is None:
        return None
    return Dissolved(first.chemical, first.grams, made_up_l, first.purity, also, coolest_c)


def _portion(r: Form, chemical: Chemical | None, table: str) -> Portion | None:
    grams = r.needed(replace(fields.DISSOLVED, path=f"{table}.dissolved"))
    purity = r.number(replace(fields.PURITY, path=f"{table}.purity"))
    if chemical is None or grams is None:
        return None
    return Portion(chemical, grams, 1.0 if purity is None else purity / 100.0)


def _limewater(
    r: Form, chemical: Chemical | None, made_up_l: float | None, coolest_c: float, table: str
) -> Dissolved | None:
    """Return a jug of limewater: it holds as much as dissolves, whatever lies on its ground."""
    if chemical is None or made_up_l is None:
        return None
    if better_warm(Dissolved(chemical, 1.0, 1.0)):
        # Of anything else a saturated jug would crystallise with every cooler night, in the line and the pump.
        r.wrong.append(Reason("not_limewater", {"chemical": chemical.name}, f"{table}.saturated"))
        return None
    return limewater(chemical, made_up_l, coolest_c)


def _unweighed(r: Form, catalogue: Catalogue) -> Unweighed | None:
    chemical = r.chemical(catalogue, "additive.chemical")
    made_up_l = r.needed(fields.MADE_UP_TO)
    purity = r.number(fields.PURITY)
    if r.value("wanted.partner") is not None:
        wanted: Strength | Dissolved | None = dissolved(r, catalogue, "wanted.partner")
    else:
        wanted = None if chemical is None else _strength(r, catalogue, chemical)
    also = _also_unweighed(r, catalogue) if r.value("additive.also") is not None else None
    if chemical is None or made_up_l is None or wanted is None:
        return None
    return Unweighed(chemical, made_up_l, 1.0 if purity is None else purity / 100.0, wanted, also)


def _also_unweighed(r: Form, catalogue: Catalogue) -> Portion | None:
    """Return the second salt of a mix, its mass still to be found."""
    chemical = r.chemical(catalogue, "additive.also.chemical")
    purity = r.number(replace(fields.PURITY, path="additive.also.purity"))
    return None if chemical is None else Portion(chemical, 0.0, 1.0 if purity is None else purity / 100.0)


def _strength(r: Form, catalogue: Catalogue, chemical: Chemical) -> Strength | None:
    # What a chemical is mostly used for need not be said.
    parameter = _named(r, catalogue, "wanted.parameter", catalogue.parameters.get(next(iter(chemical.raises), "")))
    if parameter is None:
        return None
    if r.value("wanted.strength") is not None:
        per_litre = _per_litre(r, catalogue, parameter)
        return None if per_litre is None else Strength(parameter, per_litre / 1000.0)
    dose_l = r.needed(replace(fields.LABEL_DOSE, path="wanted.dose"))
    water_l = r.needed(replace(fields.LABEL_WATER, path="wanted.water"))
    raises = r.needed(replace(fields.label_raises(parameter), path="wanted.raises"))
    if dose_l is None or water_l is None or raises is None:
        return None
    return Strength(parameter, raises * water_l / (dose_l * 1000.0))


def _per_litre(r: Form, catalogue: Catalogue, parameter: Parameter) -> float | None:
    """Return a wanted strength in the canonical unit of the parameter, as long as that is one per litre."""
    spec = fields.stock_strength(parameter)
    if parameter.kind == "salinity":
        # The units of salinity are those of a tank, not of a jug: "1 mL raises 100 L by" says it.
        choices = tuple(p.name for p in catalogue.parameters.values() if p.kind != "salinity")
        r.wrong.append(Reason("unknown_choice", {"text": parameter.name, "choices": choices}, "wanted.parameter"))
        return None
    found = r.entered_needed(spec)
    if found is not None and found[1].startswith("mg/kg"):
        # A kilogram of what the stock will be is not known before it is made.
        choices = tuple(u.id for u in spec.units.units if u.id != found[1])
        r.wrong.append(Reason("unknown_unit", {"unit": found[1], "choices": choices}, spec.path))
        return None
    return None if found is None else r.number(spec)


def _bottle(r: Form, catalogue: Catalogue) -> Bottle | None:
    parameter = _named(r, catalogue, "additive.label.parameter", _spoken_of(r, catalogue))
    dose_l = r.needed(fields.LABEL_DOSE)
    water_l = r.needed(fields.LABEL_WATER)
    raises = None if parameter is None else r.needed(fields.label_raises(parameter))
    if parameter is None or dose_l is None or water_l is None or raises is None:
        return None
    return Bottle(Labelled(dose_l * 1000.0, water_l, raises, parameter.kind), parameter)


def _spoken_of(r: Form, catalogue: Catalogue) -> Parameter | None:
    """Return the one parameter that has the unit on the label; milligrams per litre fit too many."""
    value = r.value("additive.label.raises")
    typed = value if isinstance(value, Typed) else Typed(str(value or ""))
    fitting = [
        p
        for p in catalogue.parameters.values()
        if isinstance(read(typed.text, fields.label_raises(p), typed.unit), Ok | Ask)
    ]
    return fitting[0] if len(fitting) == 1 else None


def _named(r: Form, catalogue: Catalogue, path: str, unsaid: Parameter | None) -> Parameter | None:
    name = r.text(path)
    if not name:
        if unsaid is None:
            r.missing.append(Reason("missing", {"path": path}, path))
        return unsaid
    if name not in catalogue.parameters:
        choices = tuple(catalogue.parameters)
        r.wrong.append(Reason("unknown_parameter", {"text": name, "choices": choices}, path))
    return catalogue.parameters.get(name)
