"""Questions and their plans for the property tests: drawn as people would write them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from hypothesis import strategies as st

from evenwater.engine.correction import Answer
from tests.engine.asking import ask
from tests.engine.generated import WAYS, draw_one
from tests.engine.reckoning import Plan, reckon

Raw = dict[str, Any]


@dataclass(frozen=True)
class Drawn:
    """A question, the product's plan for it, and the hand reckoning's."""

    raw: Raw
    answer: Answer
    by_hand: Plan


@st.composite
def questions(draw: st.DrawFn) -> Raw:
    """Return any question, answered or refused."""
    name, chemical = draw(st.sampled_from(WAYS))
    return draw_one(draw(st.randoms(use_true_random=False)), name, chemical)


@st.composite
def plans(draw: st.DrawFn) -> Drawn:
    """Return a question that has a plan; what the product refuses is drawn again."""
    for _ in range(20):
        raw = draw(questions())
        answer, by_hand = ask(raw), reckon(raw)
        if isinstance(answer, Answer) and isinstance(by_hand, Plan):
            return Drawn(raw, answer, by_hand)
    raise AssertionError("twenty questions in a row without a plan")
