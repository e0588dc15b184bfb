"""Washout and approach in stirred volumes, against rooms, vessels, dialysis and exact solutions."""

from __future__ import annotations

import pytest

from evenwater.engine.balance import after, segment, steady, trajectory
from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, Pair, as_much_as
from evenwater.engine.quantities import Water
from tests.engine.asking import known
from tests.published.rows import Figures, Row, check, rows, where

EXERCISED = rows("exchange")

_MINUTES_PER_DAY = 1440.0


def _left(days: float, volumes_per_day: float) -> float:
    """Return the fraction left by a steady exchange with water that holds nothing."""
    part = segment(days, dosed=0.0, use=0.0, exchange=volumes_per_day)
    return float(after(1.0, part.days, part.gain, part.loss))


def _exchanged(
    days: float, volumes_per_day: float, now: float = 1.0, new: float = 0.0, added: float = 0.0
) -> ExchangeAnswer:
    """Return what the product's exchange makes of a stirred volume of 250 L."""
    pair = Pair(250.0 * volumes_per_day, 250.0 * volumes_per_day)
    value = Moved(known().parameters["nitrate"], "mg/L as NO3", now, new, added=added)
    found = solve(ExchangeQuestion("", 250.0, 0.02, Water(), pair, days, (value,)))
    assert isinstance(found, ExchangeAnswer), found
    return found


def _through_an_exchange(row: Row) -> Figures:
    """Return the figures of a row as the question kind answers them."""
    if row.id.startswith(("wash.cdc.", "wash.hc.")):
        assert isinstance(row.expected, dict)
        per_day = 24.0 * row.number("Q_over_V_per_h")
        return {
            gone: where(
                lambda m: _exchanged(m / _MINUTES_PER_DAY, per_day).left, 1.0 - float(gone) / 100.0, 0.5, 1000.0
            )
            for gone in row.expected
        }
    if row.id.startswith("ktv."):
        # As much as one batch change of the share that is cleared.
        return as_much_as(row.number("URR"), 1.0, 1.0)
    match row.id:
        case "wash.1turn" | "wash.10pct_day_7d" | "batch.vs":
            return _exchanged(1.0, row.number("QtV")).left
        case "wash.who63":
            return 100.0 * _exchanged(1.0, row.number("QtV")).batch_whole
        case "batch.1x50":
            # As much in a day as one change of half, and what stays of it.
            per_day = as_much_as(row.number("f"), 1.0, 1.0)
            return _exchanged(row.number("n"), per_day).left
        case "wash.90":
            return as_much_as(1.0 - row.number("frac"), 1.0, 1.0)
        case "wash.source":
            (found,) = _exchanged(30.0, row.number("k"), added=row.number("G")).courses
            assert found.settles is not None
            return found.settles
        case "wash.approach":
            (found,) = _exchanged(
                row.number("days"), row.number("QV_per_day"), row.number("C0"), row.number("Cin")
            ).courses
            return found.end
        case "wash.200gal":
            days = row.number("t_min") / _MINUTES_PER_DAY
            return as_much_as(1.0 - row.number("C") / row.number("C0"), days, row.number("V_gal")) / _MINUTES_PER_DAY
    raise AssertionError(row.id)


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_question_of_an_exchange_is_answered_as_published(row: Row) -> None:
    check(row, _through_an_exchange(row))


def _minutes_until(gone_percent: float, volumes_per_hour: float) -> float:
    def left(minutes: float) -> float:
        return _left(minutes / _MINUTES_PER_DAY, 24.0 * volumes_per_hour)

    return where(left, 1.0 - gone_percent / 100.0, 0.0, 1000.0)


def _figures(row: Row) -> Figures:
    if row.id.startswith(("wash.cdc.", "wash.hc.")):
        assert isinstance(row.expected, dict)
        return {gone: _minutes_until(float(gone), row.number("Q_over_V_per_h")) for gone in row.expected}
    if row.id.startswith("ktv."):
        return where(lambda volumes: _left(1.0, volumes), 1.0 - row.number("URR"), 0.0, 10.0)
    match row.id:
        case "wash.1turn" | "wash.10pct_day_7d" | "batch.vs":
            return _left(1.0, row.number("QtV"))
        case "wash.who63":
            return 100.0 * (1.0 - _left(1.0, row.number("QtV")))
        case "batch.1x50":
            return 1.0 - _exchanged(1.0, where(lambda m: 1.0 - _left(1.0, m), row.number("f"), 0.0, 5.0)).batch_whole
        case "wash.90":
            return where(lambda volumes: _left(1.0, volumes), row.number("frac"), 0.0, 10.0)
        case "wash.source":
            part = segment(1.0, dosed=row.number("G"), use=0.0, exchange=row.number("k"))
            return steady(part.gain, part.loss)
        case "wash.approach":
            part = segment(
                row.number("days"),
                dosed=0.0,
                use=0.0,
                exchange=row.number("QV_per_day"),
                new_water=row.number("Cin"),
            )
            return float(after(row.number("C0"), part.days, part.gain, part.loss))
        case "wash.200gal":
            days = row.number("t_min") / _MINUTES_PER_DAY

            def salt_left(gallons_per_minute: float) -> float:
                volumes_per_day = gallons_per_minute / row.number("V_gal") * _MINUTES_PER_DAY
                return row.number("C0") * _left(days, volumes_per_day)

            return where(salt_left, row.number("C"), 0.0, 100.0)
    raise AssertionError(row.id)


@pytest.mark.parametrize("row", EXERCISED, ids=lambda row: row.id)
def test_exchange_is_the_published_one(row: Row) -> None:
    check(row, _figures(row))


@pytest.mark.parametrize("row", [r for r in EXERCISED if r.id.startswith("ktv.")], ids=lambda row: row.id)
@pytest.mark.parametrize("by_loss", [0.0, 0.3, 1.0])
def test_first_order_loss_clears_as_exchange_does(row: Row, by_loss: float) -> None:
    """Dialysis clears by exchange alone; the product must not care how much of it is a loss."""

    def left(volumes: float) -> float:
        part = segment(1.0, dosed=0.0, use=0.0, loss=by_loss * volumes, exchange=(1.0 - by_loss) * volumes)
        return float(after(1.0, part.days, part.gain, part.loss))

    check(row, where(left, 1.0 - row.number("URR"), 0.0, 10.0))


@pytest.mark.parametrize("pieces", [1, 7, 40])
def test_the_approach_does_not_depend_on_how_it_is_cut_into_segments(pieces: int) -> None:
    row = next(r for r in EXERCISED if r.id == "wash.approach")
    days = row.number("days")
    parts = [segment(days / pieces, 0.0, 0.0, exchange=row.number("QV_per_day"), new_water=row.number("Cin"))] * pieces
    assert isinstance(row.expected, float)
    import numpy as np

    end = trajectory(row.number("C0"), parts, np.array([days]))
    assert float(end[0]) == pytest.approx(row.expected, abs=row.tolerance)
