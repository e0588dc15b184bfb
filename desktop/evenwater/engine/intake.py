"""Turns the fields of a correction, as typed, into a question; or says what is missing or wrong.

The window's form and the question file hand over the same nested mapping, so both read alike.
"""

from __future__ import annotations

from datetime import UTC, datetime

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.engine.question import VOLUME_UNCERTAINTY, CorrectionQuestion, Pump, System
from evenwater.engine.reasons import Reason
from evenwater.engine.stock import Additive, Labelled
from evenwater.engine.stock_intake import dissolved

__all__ = ["DOSES_PER_DAY", "LARGEST_SHARE", "Raw", "Unread", "correction", "water_of"]

# Common practice, no source: a metering pump rests at least half the time, and doses hourly.
LARGEST_SHARE = 0.5
DOSES_PER_DAY = 24


def correction(raw: Raw, catalogue: Catalogue, now: datetime) -> CorrectionQuestion | Unread:
    """Read a correction.

    Parameters
    ----------
    raw : mapping
        Tables ``system``, ``change``, ``additive`` and ``pump`` as in a question file; values are
        ``Typed``, plain text, whole numbers or instants.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone; a ``now`` in ``raw`` wins.

    Returns
    -------
    CorrectionQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form(raw)
    moment = r.instant("now") or now.astimezone(UTC)
    system = _system(r, catalogue)
    water = system.water if system is not None else Water()
    pump = _pump(r)
    parameter = _parameter(r, catalogue)
    if parameter is None:
        return r.unread
    measured_field = fields.concentration("change.measured", parameter)
    measured_as = r.entered_needed(measured_field, water)
    target = r.needed(fields.concentration("change.target", parameter), water)
    use = r.number(fields.rise("change.daily_use", parameter), water)
    fastest = r.number(fields.rise("change.fastest_rise", parameter), water)
    untested = r.number(fields.difference("change.untested", parameter), water)
    lately = r.number(fields.difference("change.raised_lately", parameter), water)
    measured_at = r.instant("change.measured_at")
    additive = _additive(r, catalogue, parameter, water)
    if r.missing or r.wrong or not (system and measured_as and additive and pump) or target is None:
        return r.unread
    return CorrectionQuestion(
        now=moment,
        system=system,
        parameter=parameter,
        unit=measured_as[1],
        measured=to_canonical(measured_as[0], parameter.kind, measured_as[1], water),
        measured_as=measured_as,
        measured_at=measured_at,
        target=target,
        use=use or 0.0,
        fastest=fastest,
        reason=r.text("change.reason"),
        additive=additive,
        pump=pump,
        others=tuple(catalogue.parameters.values()),
        untested=untested or 0.0,
        lately=lately or 0.0,
    )


def water_of(raw: Raw) -> Water:
    """Return the system's water as far as it can be read, seawater at 35 and 25 degC for the rest.

    Parameters
    ----------
    raw : mapping
        A question's tables, of which ``system`` is read.

    Returns
    -------
    Water
        Salinity and temperature.
    """
    return _water(Form(raw))[0]


def _water(r: Form) -> tuple[Water, bool]:
    """Return the water and whether part of it is assumed."""
    salinity = r.number(fields.SALINITY)
    temperature = r.number(fields.TEMPERATURE)
    standard = Water()
    water = Water(
        standard.salinity if salinity is None else salinity,
        standard.temperature_c if temperature is None else temperature,
    )
    return water, salinity is None or temperature is None


def _parameter(r: Form, catalogue: Catalogue) -> Parameter | None:
    name = r.text("change.parameter")
    if not name:
        r.missing.append(Reason("missing", {"path": "change.parameter"}, "change.parameter"))
        return None
    if name not in catalogue.parameters:
        choices = tuple(catalogue.parameters)
        r.wrong.append(Reason("unknown_parameter", {"text": name, "choices": choices}, "change.parameter"))
    return catalogue.parameters.get(name)


def _system(r: Form, catalogue: Catalogue) -> System | None:
    volume = r.needed(fields.NET_VOLUME)
    known = r.text("system.volume_known")
    if known not in VOLUME_UNCERTAINTY:
        choices = tuple(name for name in VOLUME_UNCERTAINTY if name)
        r.wrong.append(Reason("unknown_choice", {"text": known, "choices": choices}, "system.volume_known"))
        return None
    percent = r.number(fields.VOLUME_UNCERTAINTY)
    water, assumed = _water(r)
    ph = r.number(fields.PH)
    alkalinity = r.number(fields.ALKALINITY, water)
    calcium = r.number(fields.calcium_now(catalogue.parameters["calcium"]), water)
    evaporation = r.number(fields.EVAPORATION)
    if volume is None:
        return None
    uncertainty = VOLUME_UNCERTAINTY[known] if percent is None else percent / 100.0
    if known == "unknown":
        # A dose for too large a volume is an overdose, so an unknown volume counts at its low end.
        volume *= 1.0 - uncertainty
    return System(
        name=r.text("system.name"),
        volume_l=volume,
        volume_uncertainty=uncertainty,
        volume_known=known,
        water=water,
        ph=ph,
        water_assumed=assumed,
        alkalinity=alkalinity,
        calcium=calcium,
        evaporation_l=evaporation,
    )


def _pump(r: Form) -> Pump | None:
    flow = r.needed(fields.FLOW)
    smallest = r.number(fields.SMALLEST_DOSE)
    step = r.number(fields.STEP)
    share = r.number(fields.LARGEST_SHARE)
    doses = r.number(fields.DOSES_PER_DAY)
    if flow is None:
        return None
    return Pump(
        flow_ml_per_min=flow,
        smallest_ml=smallest,
        step_ml=step,
        largest_share=LARGEST_SHARE if share is None else share / 100.0,
        doses_per_day=DOSES_PER_DAY if doses is None else round(doses),
        name=r.text("pump.name"),
    )


def _additive(r: Form, catalogue: Catalogue, parameter: Parameter, water: Water) -> Additive | None:
    if r.value("additive.label") is not None:
        dose_l = r.needed(fields.LABEL_DOSE)
        water_l = r.needed(fields.LABEL_WATER)
        raises_field = fields.label_raises(parameter)
        label = r.value(raises_field.path)
        if isinstance(label, Typed) and label.unit and label.unit not in {u.id for u in raises_field.units.units}:
            # The label speaks of another parameter than the one to raise.
            params = {"chemical": "", "parameter": parameter.name}
            r.wrong.append(Reason("does_not_raise", params, "additive.chemical"))
            return None
        raises = r.needed(raises_field, water)
        if dose_l is None or water_l is None or raises is None:
            return None
        return Labelled(dose_l * 1000.0, water_l, raises, parameter.kind)
    return dissolved(r, catalogue)
