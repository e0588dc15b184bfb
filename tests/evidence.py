"""What the tests held against published figures, carried from wherever they ran to the one place that sums it up.

``compared`` is called beside the assertion, so that nothing is counted that is not also asserted. The plugin of ``tests/proof.py``
hands what a passed test compared on with its report, which works in one process and in many alike.
"""

from __future__ import annotations

import os
from collections.abc import Iterable
from dataclasses import asdict, dataclass
from typing import Any

# The name under which a report carries what its test compared.
CARRIED = "compared"


@dataclass(frozen=True)
class Compared:
    """One figure of a published row, or the worst of a whole grid that another program reckoned as well.

    ``points`` is how many figures of a grid stand behind it: 0 for a row. ``differs`` says why the product is known to lie
    further off than ``tolerance``; empty where it does not. ``about`` is what was compared, for a grid.
    """

    source: str
    row: str
    figure: str
    expected: float
    got: float
    tolerance: float
    confidence: str
    differs: str = ""
    points: int = 0
    about: str = ""

    @property
    def off(self) -> float:
        """How far the product's figure lies from the published one."""
        return abs(self.got - self.expected)

    @property
    def off_share(self) -> float:
        """The same as a share of the published figure; infinite where that is nothing."""
        return self.off / abs(self.expected) if self.expected else float("inf")


_SINCE: list[Compared] = []


def compared(one: Compared) -> None:
    """Note one comparison of the test that runs now."""
    _SINCE.append(one)


def compared_grid(source: str, about: str, worst: float, allowed: float, points: int) -> None:
    """Note the worst difference from another program over many points: how far off, and how far is allowed."""
    test = os.environ.get("PYTEST_CURRENT_TEST", "").split(" ")[0]
    _SINCE.append(
        Compared(source, test, about, 0.0, float(worst), allowed, "computed-with-library", points=points, about=about)
    )


def taken() -> list[dict[str, Any]]:
    """Return what was compared since the last time it was asked, as plain values that can go to another process."""
    found = [asdict(one) for one in _SINCE]
    _SINCE.clear()
    return found


def carried(properties: Iterable[tuple[str, Any]]) -> list[Compared]:
    """Return what a report carries."""
    return [Compared(**one) for name, value in properties if name == CARRIED for one in value]
