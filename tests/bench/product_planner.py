"""What pH and saturation cost the planner: the example correction solved as it is, without a pH, and without either.

In the last variant the limits of pH and saturation are taken out of the plan and of its second opinion alike; that is the
planner as it would be if it knew nothing of the carbonate system. The three take turns in one process, each time with
another reading, so that no answer is remembered; salinity and temperature stay, as they do from key to key.
"""

from __future__ import annotations

import json
import sys
import time
import tomllib
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from datetime import UTC, datetime
from unittest import mock

from evenwater.assets import resources
from evenwater.engine import catalogue, check_ph, correction, intake, water_limits
from evenwater.engine.question import CorrectionQuestion


def example() -> CorrectionQuestion:
    raw = tomllib.loads((resources() / "questions" / "correction.toml").read_text(encoding="utf-8"))
    question = intake.correction(raw, catalogue.load(resources()), datetime.now(UTC))
    if not isinstance(question, CorrectionQuestion):
        sys.exit(f"the example question was not read: {question}")
    return question


def nothing(*_: object) -> None:
    """Stand in for what is not reckoned: a mock's own call would take as long as a tenth of the planner."""


@contextmanager
def not_reckoned() -> Iterator[None]:
    """Let the planner and its second opinion find no carbonate system in any question."""
    with mock.patch.object(water_limits, "chemistry_of", nothing), mock.patch.object(check_ph, "look", nothing):
        yield


def solved(question: CorrectionQuestion, with_water: bool, with_ph: bool) -> float:
    """Return how long a question took [us]; ends the process when the answer is not of the kind that was asked for."""
    began = time.perf_counter()
    answer = correction.solve(question)
    taken = (time.perf_counter() - began) * 1e6
    if not isinstance(answer, correction.Answer):
        sys.exit(f"the example question was not answered: {answer.reasons}")
    ceilings = answer.seen.water is not None and answer.seen.water.highest_ph is not None
    if (answer.tank is not None, ceilings) != (with_water, with_ph):
        sys.exit("pH was reckoned where it should not be, or the other way round")
    return taken


def main() -> None:
    asked = example()
    taken: dict[str, list[float]] = {"with_ph": [], "without_ph": [], "not_reckoned": []}
    for number in range(int(sys.argv[1]) + 20):
        one = replace(asked, measured=asked.measured + 1e-6 * number)
        figures = {
            "with_ph": solved(one, True, True),
            "without_ph": solved(replace(one, system=replace(one.system, ph=None)), True, False),
        }
        with not_reckoned():
            figures["not_reckoned"] = solved(one, False, False)
        if number >= 20:  # the first ones load what is loaded late
            for name, figure in figures.items():
                taken[name].append(figure)
    print(json.dumps(taken))


if __name__ == "__main__":
    main()
