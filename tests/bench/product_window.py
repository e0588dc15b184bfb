"""The product's start: its first paint and its first chart, on the demo."""

from __future__ import annotations

from tests.bench.probe import hand_back, resident_mib, settle
from tests.bench.product import Look, watch


def seen(look: Look) -> None:
    settle(300)
    hand_back(first_paint=look.first_paint, first_chart=look.first_chart, memory=resident_mib())


if __name__ == "__main__":
    watch(seen)
