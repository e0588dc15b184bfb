"""The published rows themselves: enough of them, each with its source, each held against the product."""

from __future__ import annotations

from tests.published import (
    test_calcification,
    test_calibration,
    test_dosing,
    test_exchange,
    test_per_gram,
    test_regression_nist,
    test_seawater,
    test_solubility,
    test_uncertainty,
    test_units,
)
from tests.published.rows import every_row

EXERCISED = (
    *test_calcification.EXERCISED,
    *test_calibration.EXERCISED,
    *test_dosing.EXERCISED,
    *test_exchange.EXERCISED,
    *test_per_gram.EXERCISED,
    *test_regression_nist.EXERCISED,
    *test_seawater.EXERCISED,
    *test_solubility.EXERCISED,
    *test_uncertainty.EXERCISED,
    *test_units.EXERCISED,
)


def test_every_row_on_file_is_exercised_once() -> None:
    on_file = sorted(row.id for row in every_row())
    assert len(set(on_file)) == len(on_file)
    assert sorted(row.id for row in EXERCISED) == on_file


def test_at_least_300_rows_are_met_within_their_published_tolerance() -> None:
    assert sum(row.differs is None for row in EXERCISED) >= 300


def test_differences_are_few_and_each_has_its_reason() -> None:
    differing = [row for row in EXERCISED if row.differs is not None]
    assert len(differing) <= 0.12 * len(EXERCISED)
    for row in differing:
        assert row.differs is not None
        assert set(row.differs) == {"by_at_most", "why"}
        assert len(str(row.differs["why"])) > 30, row.id


def test_every_row_names_its_source_and_how_sure_it_is() -> None:
    for row in EXERCISED:
        assert row.source, row.id
        assert row.tolerance > 0.0, row.id
        assert row.confidence in {"read-in-source", "computed-with-library", "from-memory"}, row.id
