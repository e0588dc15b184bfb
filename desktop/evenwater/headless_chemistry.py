"""The question kind ``chemistry``: what an addition does to pH, carbon and aragonite saturation."""

from __future__ import annotations

from typing import Any

from evenwater.engine import chemistry_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.chemistry import ChemistryAnswer, Moment, solve
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, chemistry_lines


def answer(raw: dict[str, Any], known: Catalogue) -> Outcome:
    """Answer a question about a tank's chemistry.

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
    question = chemistry_intake.chemistry(raw, known)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    return Outcome(ANSWERED, _answered(result), lines=chemistry_lines.lines(result))


def _answered(result: ChemistryAnswer) -> dict[str, Any]:
    scale = f"{result.question.scale} scale"
    chemical = result.question.chemical
    return {
        "status": "answered",
        "before": _moment(result.before, scale),
        "at_once": _moment(result.at_once, scale),
        "after_gas_exchange": _moment(result.after_gas_exchange, scale),
        "signal_word": chemical.signal_word,
        "statements": list(chemical.statements),
        "cautions": list(chemical.cautions),
        "reasons": [answer_json.reason(r, None) for r in result.remarks],
    }


def _moment(moment: Moment, scale: str) -> dict[str, Any]:
    return {
        "alkalinity": {"value": moment.alkalinity, "unit": "meq/L"},
        "dic": {"value": moment.dic, "unit": "mmol/L"},
        "ph": {"value": moment.ph, "unit": scale},
        "ph_total": {"value": moment.ph_total, "unit": "total scale"},
        "aragonite_saturation": {"value": moment.saturation, "unit": ""},
        "pco2": {"value": moment.pco2_uatm, "unit": "uatm"},
    }
