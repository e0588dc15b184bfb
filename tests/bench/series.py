"""Writes the curves of the example correction and of its neighbour, for the floor to draw: python -m tests.bench.series OUT.npz.

The floor must draw what the product draws, but must not carry the product's memory or imports; so the curves are worked
out in a process of their own, from a file to a file.
"""

from __future__ import annotations

import sys
import tomllib
from datetime import UTC, datetime

import numpy as np

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.screens import correct

# One keystroke apart, and both are answered.
READINGS = ("6.8", "6.85")
NAMES = ("times", "plan", "low", "high", "uptake_stops", "nothing", "doses_at", "doses_ml")


def main() -> None:
    question = tomllib.loads((resources() / "questions" / "correction.toml").read_text(encoding="utf-8"))
    question["pump"]["doses_per_day"] = str(question["pump"]["doses_per_day"])
    known = catalogue.load(resources())
    curves = {}
    for number, reading in enumerate(READINGS):
        question["change"]["measured"] = f"{reading} dKH"
        chart = correct.evaluate(question, known, datetime.now(UTC)).chart
        if chart is None:
            sys.exit("the example question was not answered")
        curves |= {f"{name}{number}": getattr(chart, name) for name in NAMES}
        curves |= {f"target{number}": np.array([chart.target]), f"fastest{number}": np.array(chart.fastest)}
    np.savez(sys.argv[1], **curves)


if __name__ == "__main__":
    main()
