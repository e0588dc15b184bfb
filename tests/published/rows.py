"""Published figures: reads the rows beside this file and compares the product's figure with each."""

from __future__ import annotations

import tomllib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from scipy.optimize import brentq

from evenwater.assets import resources
from evenwater.engine.catalogue import Catalogue, load
from tests.evidence import Compared, compared

HERE = Path(__file__).parent

Figures = float | Mapping[str, float]


@dataclass(frozen=True)
class Row:
    """One published figure, or several of one calculation, with its source.

    ``differs`` is filled in where the product is known to lie further off than the published
    tolerance: by how much at most, and why.
    """

    id: str
    quantity: str
    inputs: Mapping[str, object]
    expected: Figures
    unit: str
    tolerance: float
    source: str
    confidence: str
    differs: Mapping[str, object] | None = None
    note: str = ""

    def number(self, name: str) -> float:
        """Return an input that is a number."""
        value = self.inputs[name]
        assert isinstance(value, int | float)
        return float(value)

    def word(self, name: str) -> str:
        """Return an input that is a text."""
        value = self.inputs[name]
        assert isinstance(value, str)
        return value


def rows(topic: str) -> tuple[Row, ...]:
    """Return all rows of one file."""
    found = tomllib.loads((HERE / f"{topic}.toml").read_text(encoding="utf-8"))
    return tuple(Row(**entry) for entry in found["row"])


def every_row() -> tuple[Row, ...]:
    """Return the rows of all files."""
    return tuple(row for file in sorted(HERE.glob("*.toml")) for row in rows(file.stem))


def check(row: Row, figures: Figures) -> None:
    """Assert that the product's figures are the published ones.

    Within the published tolerance; where the row says that the product differs, beyond the
    tolerance (so that a difference that has gone is found) but no further than the row says.
    """
    expected = row.expected if isinstance(row.expected, Mapping) else {"": row.expected}
    actual = figures if isinstance(figures, Mapping) else {"": figures}
    assert actual.keys() == expected.keys()
    for name, published in expected.items():
        off = abs(actual[name] - published)
        # The product's own binary noise is not a difference.
        noise = 1e-12 * abs(published)
        if row.differs is None:
            assert off <= row.tolerance + noise, f"{row.id} {name}: {actual[name]} against {published} ({row.source})"
        else:
            most = row.differs["by_at_most"]
            assert isinstance(most, float)
            assert row.tolerance < off <= most, f"{row.id} {name}: {actual[name]} against {published}: {row.differs}"
        why = str(row.differs["why"]) if row.differs else ""
        got, expect = float(actual[name]), float(published)
        compared(Compared(row.source, row.id, name, expect, got, row.tolerance, row.confidence, why))


def where(function: Callable[[float], float], value: float, low: float, high: float) -> float:
    """Return the argument at which a function of the product takes a value."""
    return float(brentq(lambda x: function(x) - value, low, high, xtol=1e-12))


@lru_cache(maxsize=1)
def catalogue() -> Catalogue:
    """Return the parameters and chemicals that ship with the product."""
    return load(resources())
