"""The question kind ``stock``: what a jug carries, or what to weigh into it."""

from __future__ import annotations

from typing import Any

from evenwater.engine import stock_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.quantities import from_canonical
from evenwater.engine.reasons import Reason
from evenwater.engine.recipe import SAID_DOSE_ML, SAID_WATER_L, Bottle, StockAnswer, solve
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, recipe_lines
from evenwater.screens.answer import BOTTLE


def answer(raw: dict[str, Any], known: Catalogue) -> Outcome:
    """Answer a question about a stock.

    Parameters
    ----------
    raw : dict
        The parsed file, of the shape that ``question_file`` asks for.
    known : Catalogue
        Parameters and chemicals.

    Returns
    -------
    Outcome
        Answered or refused.
    """
    question = stock_intake.stock(raw, known)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return _refused(result.reasons)
    return Outcome(ANSWERED, _answered(result), lines=recipe_lines.lines(result))


def _refused(reasons: tuple[Reason, ...]) -> Outcome:
    """Return a refusal, with the solubility where it is what forbids the stock."""
    outcome = refused(*reasons)
    for reason in reasons:
        if reason.code == "does_not_dissolve" and not reason.path.startswith("wanted.partner"):
            solubility = {"value": reason.params["most"], "unit": "g/L"}
            return Outcome(outcome.status, {**outcome.body, "dissolves": False, "solubility": solubility})
    return outcome


def _answered(result: StockAnswer) -> dict[str, Any]:
    batch = None if isinstance(result.batch, Bottle) else result.batch
    most = result.most_g_per_l
    rises = {
        p.name: _quantity(from_canonical(rise, p.kind, p.display_unit), p.display_unit) for p, rise in result.rises
    }
    return {
        "status": "answered",
        **{item.name: _quantity(item.per_litre, item.unit) for item in result.carries},
        "raises": {"dose": _quantity(SAID_DOSE_ML, "mL"), "water": _quantity(SAID_WATER_L, "L"), **rises},
        # Of a bottle nobody knows what is in it.
        "dissolves": None if most is None else True,
        "temperature": _quantity(result.temperature_c, "degC"),
        "solubility": None if most is None else _quantity(most, "g/L"),
        "mass_needed": None if batch is None else _quantity(batch.grams, "g"),
        "mass_needed_also": [
            {"chemical": part.chemical.name, **_quantity(part.grams, "g")} for part in (batch.also if batch else ())
        ],
        "signal_word": None if batch is None else batch.signal_word,
        "statements": [] if batch is None else list(batch.statements),
        "cautions": list(BOTTLE if batch is None else batch.cautions),
        "reasons": [answer_json.reason(r, None) for r in result.remarks],
    }


def _quantity(value: float, unit: str) -> dict[str, Any]:
    return {"value": value, "unit": unit}
