"""Which cards were made with another flow than a pump has now: their running times give another dose."""

from __future__ import annotations

import json

from evenwater.engine.fields import FLOW
from evenwater.engine.quantities import to_canonical
from evenwater.engine.reader import Ok, read
from evenwater.screens.calibration_words import flow as flow_words
from evenwater.wording import say

# Nearer than this the same card may be followed, as with a batch of nearly the same strength; common practice, no source.
SAME_FLOW = 0.01


def other_flow(body: str, flow: float) -> str:
    """Return why a card must not be followed with a pump's flow; empty when it may.

    Parameters
    ----------
    body : str
        The card's question as JSON text.
    flow : float
        The pump's flow now, or the one it is to get [mL/min].

    Returns
    -------
    str
        A sentence, or nothing where the card's own flow cannot be read.
    """
    before = _flow_of(body)
    if before is None or abs(flow / before - 1.0) <= SAME_FLOW:
        return ""
    return say("It was made for {before}.", before=flow_words(before, 4))


def _flow_of(body: str) -> float | None:
    try:
        raw = json.loads(body)
    except ValueError:
        return None
    pump = raw.get("pump") if isinstance(raw, dict) else None
    text = str(pump.get("flow", "")) if isinstance(pump, dict) else ""
    found = read(text, FLOW)
    return to_canonical(float(found.entered.number), FLOW.kind, found.entered.unit) if isinstance(found, Ok) else None
