"""The fields of the Exchange sheet by their name in the record, what they are called, and the words that never change."""

from __future__ import annotations

from dataclasses import replace

from evenwater.engine import exchange_intake as intake
from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.reader import Field
from evenwater.screens.pump_words import CAUTIONS as ELECTRICITY
from evenwater.screens.water_given import AS_MUCH_AS, BOTH, EACH, MIXING
from evenwater.wording import marked, say, say_all

# The system's own figure, which the Upkeep sheet shows too; all others are in the record of the water.
EXCHANGED = "exchanged"
WAY = "way"
# A list takes an entry without an id for a heading, so the first way has one there and none in the record.
ALIKE = "both"
WAYS = (
    (ALIKE, marked("Both pumps alike")),
    (AS_MUCH_AS, marked("As a batch change")),
    (EACH, marked("Each pump by itself")),
)
# Which fields say the flow in each way.
OF_WAY = {BOTH: (EXCHANGED,), AS_MUCH_AS: ("as_much_as", "every_days"), EACH: ("out", "in")}
LOSSES = ("nitrate_loss", "phosphate_loss")
# What most tests of new water tell, and so what stands there at once; the rest is behind "More".
FIRST = ("salinity", "alkalinity", "calcium")

# Local codes and licensed practice come first. Common practice, no source.
PLUMBING = (
    marked("Both outlets end above the water with an air gap: else a whole jug can siphon across."),
    marked("A jug of 20\u00a0L weighs 20\u00a0kg: fill it where it stands, or lift it with two."),
)
AROUND = (*ELECTRICITY, *PLUMBING)
BUCKET = (
    marked("The bag's own sheet comes first."),
    marked("Salt into water, slowly, never water onto salt."),
    marked("Stir and aerate until all of it is clear; a day is best, and only then test."),
    marked("Bring it to the tank's temperature before it goes in."),
    marked("Nothing for drinks or food is used for mixing."),
)

FIELDS: dict[str, Field] = {
    EXCHANGED: intake.PER_DAY,
    "as_much_as": intake.AS_MUCH_AS,
    "every_days": intake.EVERY_DAYS,
    "out": intake.OUT,
    "in": intake.IN,
    "days": intake.DAYS,
    "old_jug": intake.OLD_JUG,
    "new_jug": intake.NEW_JUG,
    "salinity": intake.NEW_SALINITY,
    "temperature": intake.NEW_TEMPERATURE,
    "mix_volume": intake.MIX_VOLUME,
    "label_mass": intake.LABEL_MASS,
    "label_water": intake.LABEL_WATER,
    "label_salinity": intake.LABEL_SALINITY,
    "mix_measured": intake.MEASURED,
    **{name: replace(intake.LOSS, path=name) for name in LOSSES},
}

# By the name of the field, for undo.
WATER_WORDS = {
    "exchanged": marked("the water exchanged in a day"),
    "way": marked("how the exchange is said"),
    "as_much_as": marked("the batch change that the exchange equals"),
    "every_days": marked("the days between two batch changes"),
    "out": marked("the water taken out in a day"),
    "in": marked("the new water in a day"),
    "days": marked("how many days to look ahead"),
    "old_jug": marked("what the jug of old water holds"),
    "new_jug": marked("what the jug of new water holds"),
    "mix_volume": marked("the new water in the bucket"),
    "label_mass": marked("the salt mix on the bag's label"),
    "label_water": marked("the water on the bag's label"),
    "label_salinity": marked("the salinity on the bag's label"),
    "mix_measured": marked("the salinity found in the bucket"),
    "nitrate_loss": marked("the share of nitrate lost in a day"),
    "phosphate_loss": marked("the share of phosphate lost in a day"),
}
# Fields of the record that other records have too are named apart.
NEW_WATER = marked("the {name} of the new water")
_PATHS = {f"mixing.{path}": name for name, path in MIXING.items()}


def of_new_water(parameter: Parameter) -> Field:
    """Return the field for what the new water holds of a parameter.

    Parameters
    ----------
    parameter : Parameter
        The parameter.

    Returns
    -------
    Field
        As a reading of it; of salinity the pair's own.
    """
    if parameter.kind == "salinity":
        return FIELDS["salinity"]
    return fields.concentration(f"new_water.{parameter.name}", parameter)


def undo_words(field: str) -> str:
    """Return what a field of the record of the water is called in a sentence."""
    return say_all(WATER_WORDS.get(field)) or say(NEW_WATER).format(name=field.replace("_", " "))


def field_of(path: str, way: str, parameters: tuple[str, ...]) -> str:
    """Return the field that a reason of the question is about.

    Parameters
    ----------
    path : str
        Path in the question, such as ``exchange.per_day`` or ``value.2.new_water``.
    way : str
        How the flow is said.
    parameters : tuple of str
        Names of the values asked about, in their order.

    Returns
    -------
    str
        Name of the field in the record; empty where no field of this sheet says it.
    """
    table, _, rest = path.partition(".")
    if path in _PATHS:
        return _PATHS[path]
    if table == "exchange":
        return OF_WAY[way][0] if rest in ("", "per_day") else rest
    if table == "new_water":
        return rest
    number, _, name = rest.partition(".")
    if table != "value" or not number.isdigit() or not 0 < int(number) <= len(parameters):
        return ""
    parameter = parameters[int(number) - 1]
    if name == "new_water":
        return parameter
    return f"{parameter}_loss" if name == intake.LOSS.path else ""


def parameter_of(path: str, parameters: tuple[str, ...]) -> str:
    """Return the value that a reason is about, or an empty text."""
    table, _, rest = path.partition(".")
    number = rest.partition(".")[0]
    if table != "value" or not number.isdigit() or not 0 < int(number) <= len(parameters):
        return ""
    return parameters[int(number) - 1]


def names(catalogue: Catalogue) -> tuple[str, ...]:
    """Return every field of the sheet in the order of the form."""
    new = tuple(name for name in catalogue.parameters if name != "salinity")
    return (WAY, *FIELDS, *new)
