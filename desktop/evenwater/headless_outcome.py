"""What becomes of one question file: its exit status, its JSON object, and how it is said to people."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from evenwater.engine.correction import Answer
from evenwater.engine.reasons import Reason
from evenwater.screens import answer_json
from evenwater.screens.shown import Shown

ANSWERED, UNREADABLE, REFUSED = 0, 2, 3


@dataclass(frozen=True)
class Outcome:
    """Exit status, the JSON object, the plan when there is one, and lines for people where the kind has its own."""

    status: int
    body: dict[str, Any]
    answer: Answer | None = None
    lines: tuple[str, ...] = ()


def refused(*reasons: Reason, shown: Shown | None = None) -> Outcome:
    """Return a refusal with its reasons, which speak in the keeper's unit where one is given."""
    return Outcome(REFUSED, {"status": "refused", "reasons": [answer_json.reason(r, shown) for r in reasons]})
