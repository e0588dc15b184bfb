"""Turns the fields of a question about a tank's chemistry, as typed, into a question; or says what is wrong."""

from __future__ import annotations

from evenwater.engine import fields
from evenwater.engine.carbonate_scales import PhScale
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.chemistry import ChemistryQuestion
from evenwater.engine.form import Form, Raw, Unread
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason


def chemistry(raw: Raw, catalogue: Catalogue) -> ChemistryQuestion | Unread:
    """Read a question about a tank's chemistry.

    Parameters
    ----------
    raw : mapping
        Tables ``system`` and ``addition`` as in a question file; values are ``Typed`` or plain text.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    ChemistryQuestion or Unread
        The question, or every field that is missing or wrong.
    """
    r = Form(raw)
    volume = r.needed(fields.NET_VOLUME)
    salinity = r.needed(fields.SALINITY)
    temperature = r.needed(fields.TEMPERATURE)
    water = Water() if salinity is None or temperature is None else Water(salinity, temperature)
    alkalinity = r.needed(fields.ALKALINITY)
    pressure = r.number(fields.PCO2)
    ph = (
        r.number(fields.PH) if pressure is not None else r.needed(fields.PH) if r.value("system.pco2") is None else None
    )
    calcium = r.number(fields.calcium_now(catalogue.parameters["calcium"]), water)
    scale = _scale(r)
    chemical = r.chemical(catalogue, "addition.chemical")
    grams = r.needed(fields.AMOUNT)
    if r.missing or r.wrong or volume is None or alkalinity is None or chemical is None or grams is None:
        return r.unread
    return ChemistryQuestion(
        volume_l=volume,
        water=water,
        alkalinity=alkalinity,
        calcium=calcium,
        ph=ph,
        pco2_uatm=pressure,
        scale=scale,
        chemical=chemical,
        grams=grams,
    )


def _scale(r: Form) -> PhScale:
    """Return the scale pH is on; a meter set with ordinary buffers shows the NBS one."""
    said = r.text("system.ph_scale")
    for scale in PhScale:
        if said == scale.value:
            return scale
    if said:
        choices = tuple(scale.value for scale in PhScale)
        r.wrong.append(Reason("unknown_choice", {"text": said, "choices": choices}, "system.ph_scale"))
    return PhScale.NBS
