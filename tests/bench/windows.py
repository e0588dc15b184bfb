"""The rows with a window: how long a key takes on every sheet."""

from __future__ import annotations

from pathlib import Path

from evenwater.ui.sheet_list import CORRECT
from tests.bench.rows import Row, measure

# One frame of a screen [ms], and how much longer than a bare window that shows the same a key may take.
FRAME_MS, KEY_RATIO = 16.7, 1.3


def keys_of(name: str, times: int, env: dict[str, str]) -> list[Row]:
    """Compare a keystroke on one sheet with a bare window that shows the same and changes the same.

    Every sheet has two rows, both against the bare window that paints everything: until the field that is typed in is painted, with all that
    is painted in the same pass, and until the answer is painted, with whatever pause comes before it. What is worked out afterwards, when nobody
    types, has a row of its own.
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
        _key(f"{name}: key to own field painted / bare, same items", product["echo"], floor["painted"]),
        Row(f"{name}: the same, processor time", "ms", product["echo_cpu"], floor["cpu"]),
        _key(f"{name}: key to answer painted / bare, same items", product["answered"], floor["painted"]),
        Row(f"{name}: the same, processor time", "ms", product["cpu"], floor["cpu"]),
    ]
    if chart:
        rows.append(Row(f"{name}: the same / chart alone, axes frozen", "ms", product["answered"], chart))
    rows.append(Row(f"{name}: window held afterwards, while nobody types", "ms", product["held"], []))
    if name == CORRECT:
        rows.append(Row(f"{name}: memory after {times} keys / the same", "MiB", product["memory"], floor["memory"]))
    return rows


def _key(name: str, product: list[float], floor: list[float]) -> Row:
    """Return a row that is held against the bare window and against a frame of the screen."""
    return Row(name, "ms", product, floor, KEY_RATIO, FRAME_MS)


def _figures(found: dict[str, object]) -> dict[str, list[float]]:
    """Return what a process handed back as lists."""
    return {
        name: figure if isinstance(figure, list) else [float(figure)]  # type: ignore[arg-type]
        for name, figure in found.items()
        if not isinstance(figure, str)
    }
