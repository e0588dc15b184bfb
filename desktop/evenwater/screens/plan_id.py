"""The identity of a plan, of a batch and of a timetable: short enough to read out, with check characters against a misread one.

Crockford's base 32 alphabet has no I, L, O and U. The check characters are those of ISO/IEC 7064,
MOD 97-10, over the id taken as one number in base 32: 97 is prime and larger than the base, so every
single wrong character and every swap of neighbours is caught, which is not so when letters are
spelled as two decimal digits.
"""

from __future__ import annotations

import hashlib
from dataclasses import replace
from typing import TYPE_CHECKING

from evenwater.engine.question import CorrectionQuestion
from evenwater.screens.terms import term
from evenwater.wording import say

if TYPE_CHECKING:
    from evenwater.engine.timetable_plan import TimetableAnswer
    from evenwater.engine.timetable_question import TimedPump

_ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
_LENGTH = 6


def make(question: CorrectionQuestion) -> str:
    """Return the plan id of a question: the same question always has the same id."""
    seen = f" {question.untested!r} {question.lately!r}" if question.untested or question.lately else ""
    return _short(repr(question) + seen)


def batch_code(batch_id: str) -> str:
    """Return what a jug's label says of its batch, so that plan and jug can be matched by eye.

    Parameters
    ----------
    batch_id : str
        Id of the batch's record.

    Returns
    -------
    str
        Six characters and two to check them, as of a plan; the same batch always has the same code.
    """
    # Not the bare id: a batch must never share its code with a plan that happens to be written like it.
    return _short(f"batch {batch_id}")


def timetable_code(answer: TimetableAnswer) -> str:
    """Return the code of a timetable: the same doses at the same minutes always have the same one.

    Parameters
    ----------
    answer : TimetableAnswer
        The timetable.

    Returns
    -------
    str
        Six characters and two to check them, as of a plan.
    """
    question = replace(answer.question, pumps=tuple(_own_name(pump) for pump in answer.question.pumps))
    return _short(f"timetable {question!r} {answer.rows!r}")


def _own_name(pump: TimedPump) -> TimedPump:
    """Return a pump without the name that the program gave it, which is another in each language."""
    if not pump.raises:
        return pump
    given = say("Pump for {parameter}", parameter=term(pump.raises)), f" ({term(pump.raises)})"
    return replace(pump, name=pump.name.removesuffix(given[1]).removeprefix(given[0]))


def together_code(parts: tuple[object, ...]) -> str:
    """Return the code of the card of all plans together: the same settings always have the same one.

    Parameters
    ----------
    parts : tuple
        Everything on it that somebody sets or gives, as figures and the keeper's own names: never a text, which another language says otherwise.

    Returns
    -------
    str
        Six characters and two to check them, as of a plan.
    """
    return _short(f"together {parts!r}")


def _short(text: str) -> str:
    digest = hashlib.sha256(text.encode()).digest()
    body = "".join(_ALPHABET[byte % len(_ALPHABET)] for byte in digest[:_LENGTH])
    return f"{body}-{_check(body)}"


def valid(text: str) -> bool:
    """Return whether a typed or scanned id is one that Evenwater could have printed."""
    body, dash, check = text.strip().upper().partition("-")
    known = len(body) == _LENGTH and all(c in _ALPHABET for c in body)
    return bool(dash) and known and check == _check(body)


def _check(body: str) -> str:
    number = 0
    for character in body:
        number = number * len(_ALPHABET) + _ALPHABET.index(character)
    return f"{98 - number * 100 % 97:02d}"
