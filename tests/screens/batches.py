"""Batches as they are typed on the Stocks sheet, and their strength reckoned by hand from atomic weights."""

from __future__ import annotations

import json
from collections.abc import Mapping

from evenwater.engine.quantities import Typed
from evenwater.screens import correct
from tests.engine.reckoning import ATOMS, SALTS

Fields = Mapping[str, str | tuple[str, str]]

SODA = "sodium carbonate anhydrous"
CALCIUM = "calcium chloride dihydrate"
CHLORIDE, SULFATE = "magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"
# Moles per kilogram of seawater at salinity 35: Millero, Feistel, Wright and McDougall 2008, Deep-Sea Res. I 55, 50.
SEA_SULFATE, SEA_MAGNESIUM = 0.0282352, 0.0528171
MG_PER_MEQ = float(1000 * ATOMS["Ca"] / 2000)
"""Calcium that skeleton takes with a milliequivalent of alkalinity [mg]."""


def batch(**fields: str | tuple[str, str]) -> dict[str, Typed]:
    """Return the fields of a batch; a pair is a text with the unit that stood beside it."""
    return {name: Typed(*value) if isinstance(value, tuple) else Typed(value) for name, value in fields.items()}


def weighed(chemical: str, grams: float | str, litres: float = 1.0, **more: str | tuple[str, str]) -> dict[str, Typed]:
    """Return a weighed batch; masses [g] to a hundredth, since three decimals could be thousands."""
    mass = grams if isinstance(grams, str) else _written(grams)
    return batch(chemical=chemical, dissolved=(mass, "g"), made_up_to=(f"{litres:g}", "L"), **more)


def _written(grams: float) -> str:
    return f"{grams:.2f}".rstrip("0").rstrip(".")


def bottle(dose: str, water: str, raises: tuple[str, str], **more: str) -> dict[str, Typed]:
    """Return a bottle by its label."""
    return batch(chemical="bottle", label_dose=(dose, "mL"), label_water=(water, "L"), label_raises=raises, **more)


def carries(chemical: str, parameter: str, grams: float, litres: float = 1.0) -> float:
    """Return what a millilitre carries [meq or mg], from atomic weights."""
    salt = SALTS[chemical]
    per_mole = {**salt.along, **salt.raises}[parameter]
    return float(per_mole) / float(salt.molar) * grams / litres / 1000.0


def mixed(first: float, second: float, litres: float = 2.0) -> dict[str, Typed]:
    """Return a batch of both magnesium salts [g]."""
    return weighed(
        CHLORIDE, first, litres, also_chemical=SULFATE, also_dissolved=(_written(second), "g")
    )  # fmt: skip


def limewater(**more: str | tuple[str, str]) -> dict[str, Typed]:
    """Return a barrel of limewater."""
    return batch(chemical="calcium hydroxide", saturated="yes", made_up_to=("20", "L"), **more)


def body_of(made: Mapping[str, Typed], parameter: str = "alkalinity") -> str:
    """Return what is kept with a card that was reckoned for a batch."""
    return json.dumps(correct.question_text(correct.raw_question(parameter, {}, {}, made, {})))
