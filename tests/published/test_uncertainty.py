"""Propagation of uncertainty against the worked examples of the guide."""

from __future__ import annotations

import math

import pytest

from evenwater.engine.uncertainty import Spread, shares
from tests.published.rows import Row, check, rows

EXERCISED = rows("uncertainty")


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_contributions_combine_to_the_published_uncertainty(row: Row) -> None:
    """A contribution over the square root of its share of the variance is the combined uncertainty."""
    contributions = row.inputs["contrib_nm"]
    assert isinstance(contributions, dict)
    spread = Spread(
        volume=contributions["lS"],
        reading=contributions["d"],
        strength=contributions["dtheta"],
        pump=contributions["dalpha"],
        use=0.0,
    )
    found = shares(1.0, 0.0, spread)
    assert math.fsum(found.values()) == pytest.approx(1.0)
    for source, contribution in (
        ("volume", spread.volume),
        ("reading", spread.reading),
        ("strength", spread.strength),
        ("pump", spread.pump),
    ):
        check(row, {"uc_nm": contribution / math.sqrt(found[source])})
