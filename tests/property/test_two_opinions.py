"""5,000 drawn corrections, two opinions on each: no plan passes a limit, and no refusal is without need.

Limits: common practice, no source. The other opinion knows nothing of the planner: it reads the question again, reckons
from atomic weights, lives through every plan dose by dose and tries every refusal by force. `python -m tests.bench --only
opinions` asks 100,000.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from evenwater.engine import correction
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.reasons import Reason
from tests.engine import opinion_force, opinion_steps
from tests.engine.opinion_reading import Told, told
from tests.engine.opinion_steps import Timetable
from tests.engine.opinion_tally import CODES, examine
from tests.engine.opinions import drawn

SEED, CHUNKS, EACH = 26, 10, 500
# What every chunk is refused for; the rarer codes turn up once in some hundred questions.
COMMON = {
    "step_too_coarse", "pump_share_forbids", "does_not_dissolve", "target_below_measured", "does_not_raise", "too_slow",
    "dose_below_smallest", "ph_ceiling_forbids", "single_dose_forbids", "rise_needs_reason", "untested_reaches",
    "also_raises_forbids", "reading_stale", "rise_beyond_hard", "rise_not_positive", "implausible", "target_outside",
}  # fmt: skip

Solve = Callable[[CorrectionQuestion], Answer | Refused]
_solve: Solve = correction.solve


@pytest.mark.parametrize("chunk", range(CHUNKS))
def test_no_plan_passes_a_limit_and_no_refusal_is_without_need(chunk: int) -> None:
    found = examine(SEED, range(chunk * EACH, (chunk + 1) * EACH))
    assert not found.violations, "\n".join(found.violations[:3])
    assert found.asked == EACH
    assert found.answered > EACH // 4
    assert COMMON <= found.refused.keys() <= CODES
    assert sum(found.forced.values()) > EACH // 10
    # Plans go right up to their limits, so that one that went beyond would be seen.
    assert {limit for limit, (part, _) in found.worst.items() if part > 0.97} >= {"rise in 24 hours", "target", "pump"}
    assert not found.advised["fewer, no plan"]


def _planned(count: int) -> list[tuple[Told, Answer]]:
    """Return the plans among the first questions, and what was read besides."""
    plans = []
    for number in range(count):
        d = drawn(SEED, number)
        question = d.read()
        assert isinstance(question, CorrectionQuestion)
        answer = _solve(question)
        if isinstance(answer, Answer):
            plans.append((told(d.raw), answer))
    return plans


def test_force_finds_a_plan_wherever_the_planner_has_one() -> None:
    plans = _planned(150)
    assert len(plans) > 40
    for t, _ in plans:
        assert opinion_force.possible(t) is not None, t


def test_a_dose_too_many_or_too_large_is_seen() -> None:
    for t, answer in _planned(60):
        doses = answer.doses
        plan = Timetable(doses.dose_ml, doses.count, doses.upkeep_ml, t.per_day)
        # One dose more overshoots; of the single dose of a short climb, which may be rounded down, a step more does.
        more = [replace(plan, count=plan.count + 1)]
        more += [replace(plan, dose=plan.dose + doses.step_ml)] if plan.count == 1 else []
        assert max(opinion_steps.live(t, each).taken["target"] for each in more) > 1.0, t
        lived = opinion_steps.live(t, plan)
        for limit in ("single dose", "pump"):
            more_of_each = 1.001 / lived.taken[limit]
            larger = replace(plan, dose=more_of_each * plan.dose, upkeep=more_of_each * plan.upkeep)
            assert opinion_steps.live(t, larger).taken[limit] > 1.0, t
        if t.brings is not None and t.brings.alkalinity > 0.0:
            a_hundredfold = opinion_steps.water([(t, plan), (t, replace(plan, dose=100.0 * plan.dose))])
            assert a_hundredfold[1]["pH in an hour"] != a_hundredfold[0]["pH in an hour"]


def _one_more(question: CorrectionQuestion) -> Answer | Refused:
    answer = _solve(question)
    if isinstance(answer, Refused):
        return answer
    return replace(answer, doses=replace(answer.doses, count=answer.doses.count + 1))


def _never(question: CorrectionQuestion) -> Answer | Refused:
    answer = _solve(question)
    return Refused((Reason("too_slow", {"days": 400.0, "most": 365.0}),)) if isinstance(answer, Answer) else answer


def _always(question: CorrectionQuestion) -> Answer | Refused:
    answer = _solve(question)
    return answer if isinstance(answer, Answer) else Refused((Reason("pump_share_forbids", {}),))


@pytest.mark.parametrize(
    ("planner", "word"), [(_one_more, "target taken to"), (_never, "without need"), (_always, "expected")]
)
def test_a_planner_that_errs_is_found_out(monkeypatch: pytest.MonkeyPatch, planner: Solve, word: str) -> None:
    monkeypatch.setattr(correction, "solve", planner)
    found = examine(SEED, range(50))
    assert len([line for line in found.violations if word in line]) > 4
