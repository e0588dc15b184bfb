"""Questions about values that are too high, as people write them."""

from __future__ import annotations

import copy
import tomllib
from typing import Any

from evenwater.assets import resources
from evenwater.engine import recovery, recovery_intake
from evenwater.engine.recovery import Choice, RecoveryAnswer
from evenwater.engine.recovery_question import RecoveryQuestion
from tests.engine.asking import NOW, known

# The worked case: a jug of 1 L soda ash siphoned into 340 L.
JUG = tomllib.loads((resources() / "questions" / "recovery.toml").read_text(encoding="utf-8"))


def worked(**changes: Any) -> dict[str, Any]:
    """Return the worked case with some fields changed; ``table=None`` and ``table__field=None`` leave something out."""
    raw = copy.deepcopy(JUG)
    # By hand only one tank is reckoned; what an uncertain volume does has tests of its own.
    raw["system"]["volume_uncertainty"] = "0 %"
    for name, value in changes.items():
        table, _, field = name.partition("__")
        place, key = (raw.setdefault(table, {}), field) if field else (raw, table)
        if value is None:
            place.pop(key, None)
        else:
            place[key] = value
    return raw


def read(raw: dict[str, Any]) -> RecoveryQuestion:
    """Return the question; the test fails when it cannot be read."""
    question = recovery_intake.recovery(raw, known(), NOW)
    assert isinstance(question, RecoveryQuestion), [(r.code, r.path) for r in question.reasons]
    return question


def answer(**changes: Any) -> RecoveryAnswer:
    """Return the answer; the test fails when it is refused."""
    result = recovery.solve(read(worked(**changes)))
    assert isinstance(result, RecoveryAnswer), [r.code for r in result.reasons]
    return result


def refusal(**changes: Any) -> list[tuple[str, str]]:
    """Return code and field of every reason of a refusal."""
    question = recovery_intake.recovery(worked(**changes), known(), NOW)
    result = recovery.solve(question) if isinstance(question, RecoveryQuestion) else question
    assert not isinstance(result, RecoveryAnswer)
    return [(r.code, r.path) for r in result.reasons]


def choice(result: RecoveryAnswer, name: str) -> Choice:
    """Return one of the choices."""
    return next(each for each in result.choices if each.name == name)
