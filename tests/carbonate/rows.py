"""Published figures of seawater chemistry: reads the rows beside this file and compares a figure with each."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from tests.evidence import Compared, compared

HERE = Path(__file__).parent


@dataclass(frozen=True)
class Row:
    """One published figure, or several of one calculation, each with its tolerance, and their source.

    ``differs`` is filled in where the product is known to lie further off: by how much at most, and why.
    """

    id: str
    quantity: str
    inputs: Mapping[str, float | str | bool]
    expected: float | Mapping[str, float]
    unit: str
    tolerance: float | Mapping[str, float]
    source: str
    confidence: str
    differs: Mapping[str, object] | None = None

    def number(self, name: str) -> float:
        """Return an input that is a number."""
        return float(self.inputs[name])

    def figures(self) -> dict[str, tuple[float, float]]:
        """Return every figure with its tolerance; those without one are inputs that the row repeats."""
        if not isinstance(self.expected, Mapping):
            assert isinstance(self.tolerance, float)
            return {"": (self.expected, self.tolerance)}
        assert isinstance(self.tolerance, Mapping)
        bounds = self.tolerance
        return {name: (value, bounds[name]) for name, value in self.expected.items() if name in bounds}


def rows(topic: str) -> tuple[Row, ...]:
    """Return all rows of one file."""
    found = tomllib.loads((HERE / f"{topic}.toml").read_text(encoding="utf-8"))
    return tuple(Row(**entry) for entry in found["row"])


def check(row: Row, figures: float | Mapping[str, float], *, ours: bool = True) -> None:
    """Assert that figures are the published ones, within the published tolerance.

    Where the row says that the product differs: beyond the tolerance (so that a difference that has gone is found), but
    no further than the row says. Figures that are not the product's, but another program's, are counted nowhere.
    """
    actual = figures if isinstance(figures, Mapping) else {"": figures}
    published = row.figures()
    assert published
    for name, (value, tolerance) in published.items():
        off = abs(actual[name] - value)
        if row.differs is None:
            assert off <= tolerance, f"{row.id} {name}: {actual[name]} against {value} ({row.source})"
        else:
            most = row.differs["by_at_most"]
            assert isinstance(most, float)
            assert tolerance < off <= most, f"{row.id} {name}: {actual[name]} against {value}: {row.differs}"
        why = str(row.differs["why"]) if row.differs else ""
        if ours:
            compared(Compared(row.source, row.id, name, value, float(actual[name]), tolerance, row.confidence, why))
