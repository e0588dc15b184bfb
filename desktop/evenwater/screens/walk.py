"""A walk through the main job on an invented tank: what to type where, and whether it was done.

The figures are those of the worked example in tests/engine; nothing of them is advice for any tank.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from evenwater.engine.fields import FLOW
from evenwater.engine.quantities import Typed
from evenwater.wording import marked, say

SYSTEM = {"name": Typed("Invented tank"), "volume_known": Typed("measured by filling")}
READ, LOOK = "read", "look"
_NOTHING = Typed("")


@dataclass(frozen=True)
class Step:
    """One step. ``path`` names a field of the Correct sheet and ``wanted`` what is to stand in it; without a path it is something to read
    (``READ``) or to look at (``LOOK``).
    """

    text: str
    path: str = ""
    wanted: Typed = _NOTHING
    kind: str = ""


STEPS = (
    Step(
        marked(
            "This tank is invented and nothing of it is kept. Its alkalinity has fallen to 6.8 dKH and is to come back to 8.4, slowly. "
            "You type what the keeper knows, and see what follows."
        ),
        kind=READ,
    ),
    Step(marked("{field}: type 6.8, what the test showed, and press Enter."), "change.measured", Typed("6.8", "dKH")),
    Step(marked("{field}: type now. An old reading is no basis for a correction."), "change.measured_at", Typed("now")),
    Step(
        marked("{field}: type 340, the litres of water without rock and sand."), "system.net_volume", Typed("340", "L")
    ),
    Step(marked("{field}: type 8.4, where it should come to rest."), "change.target", Typed("8.4", "dKH")),
    Step(
        marked("{field}: type 0.9. So much the corals take out of the water in a day."),
        "change.daily_use",
        Typed("0.9", "dKH per day"),
    ),
    Step(
        marked("{field}: open the list with Space, go to {wanted} with the arrow keys, press Enter."),
        "additive.chemical",
        Typed("sodium carbonate anhydrous"),
    ),
    Step(
        marked("Read the cautions first. {field}: type 106, the grams on the scale."),
        "additive.dissolved",
        Typed("106", "g"),
    ),
    Step(marked("{field}: type 1. The jug was filled up to the litre mark."), "additive.made_up_to", Typed("1", "L")),
    Step(marked("{field}: type 24. So much came out of the pump in a minute."), "pump.flow", Typed("24", FLOW.unit)),
    Step(
        marked(
            "This is the answer: {answer}. Below it stands which limit sets the pace, and on the chart what the water will do. Change a "
            "figure at the left and see the answer follow."
        ),
        kind=READ,
    ),
    Step(
        marked("Press {button}: the card that would hang on the stand. Close it again when you have read it."),
        kind=LOOK,
    ),
    Step(
        marked(
            "That was the main job. With your own tank the card is saved or printed from the same row of buttons. F1 in any field says why "
            "it is there."
        ),
        kind=READ,
    ),
)


def done(step: Step, values: Mapping[str, Typed]) -> bool:
    """Return whether what a step asks for stands in its field.

    Parameters
    ----------
    step : Step
        The step.
    values : mapping of str to Typed
        What stands on the sheet, by path.

    Returns
    -------
    bool
        True for the same number in the same unit, and for any time that could be read.
    """
    typed = values.get(step.path, Typed(""))
    if step.wanted.text == "now":
        # A time that was taken stands there as an instant.
        return "T" in typed.text
    if not step.wanted.unit:
        return typed.text == step.wanted.text
    text = typed.text.strip().removesuffix(step.wanted.unit).strip().replace(",", ".")
    try:
        number = float(text)
    except ValueError:
        return False
    return number == float(step.wanted.text) and typed.unit in ("", step.wanted.unit)


def said(step: Step, field: str = "", wanted: str = "", answer: str = "", button: str = "") -> str:
    """Return what is said of a step.

    Parameters
    ----------
    step : Step
        The step.
    field, wanted, answer, button : str
        The names that its field, its entry in the list, the answer and the button have on the sheet.

    Returns
    -------
    str
        One or two sentences.
    """
    return say(step.text, field=field, wanted=wanted, answer=answer, button=button)


def counted(number: int) -> str:
    """Return which step of how many it is."""
    return say("Invented tank, step {number} of {all}", number=number + 1, all=len(STEPS))
