"""The rows with a window: how long a key takes on every sheet."""

from __future__ import annotations

from pathlib import Path

from evenwater.ui.sheet_list import CORRECT
from tests.bench.rows import Row, measure

# One frame of a screen [ms], and how much longer than a bare window that shows the same a key may take.
FRAME_MS, KEY_RATIO = 16.7, 1.3


def keys_of(name: str, times: int, env: dict[str, str]) -> list[Row]:
    """Compare a keystroke on one sheet with a bare window that shows the same and changes the same, both until everything is painted.

    What is worked out afterwards, when nobody types, has a row of its own.
    """
    home = Path(env["HOME"])
    seen = home / "seen.json"
    chart: list[float] = []
    product = _figures(measure("product_change", name, times, seen, env=env))
    floor = _figures(measure("floor_change", seen, times, env=env))
    if name == CORRECT:
        height = int(product["chart_height"][0])
        chart = _figures(measure("floor_chart", home / "curves.npz", times, height, env=env))["changes"]
    rows = [
        Row(
            f"{name}: key to all painted / bare, same items",
            "ms",
            product["painted"],
            floor["painted"],
            KEY_RATIO,
            FRAME_MS,
        )
    ]
    if percentile_apart(product["answered"], product["painted"]):
        rows = [
            Row(f"{name}: key to its own field painted / bare, same items", "ms", product["painted"], floor["painted"], KEY_RATIO, FRAME_MS),
            Row(f"{name}: key to answer painted, with its pause", "ms", product["answered"], []),
        ]  # fmt: skip
    rows.append(Row(f"{name}: the same, processor time", "ms", product["cpu"], floor["cpu"]))
    if chart:
        rows.append(Row(f"{name}: the same / chart alone, axes frozen", "ms", product["painted"], chart))
    rows.append(Row(f"{name}: window held afterwards, while nobody types", "ms", product["held"], []))
    if name == CORRECT:
        rows.append(Row(f"{name}: memory after {times} keys / the same", "MiB", product["memory"], floor["memory"]))
    return rows


def percentile_apart(later: list[float], sooner: list[float]) -> bool:
    """Return whether an answer comes by itself some time after the key: half of them later than all was painted."""
    apart = sum(a > b + 1.0 for a, b in zip(later, sooner, strict=True))
    return 2 * apart > len(later)


def _figures(found: dict[str, object]) -> dict[str, list[float]]:
    """Return what a process handed back as lists."""
    return {
        name: figure if isinstance(figure, list) else [float(figure)]  # type: ignore[arg-type]
        for name, figure in found.items()
        if not isinstance(figure, str)
    }
