"""What the chart says in words: the names of its lines, what the cursor stands on, the whole plan."""

from __future__ import annotations

from datetime import tzinfo

import numpy as np
from PySide6.QtGui import QFontMetrics

from evenwater.engine.quantities import figure
from evenwater.screens.views import ChartView, Floats
from evenwater.ui.chart_axis import moment_text

NAMES = {
    "plan": "plan",
    "uptake_stops": "if uptake stops now",
    "nothing": "if nothing is dosed",
    "target": "target",
    "fastest": "fastest allowed",
    "measured": "reading",
}
_KEYS = "Arrow keys read the lines; Shift and an arrow key choose a slower pace."
_KEYS_FOLLOWED = "Arrow keys read the lines."


def name_of(view: ChartView, key: str) -> str:
    """Return the name a line goes by: the view's own, or the usual one."""
    return view.labels.get(key, NAMES[key])


def reading_at(view: ChartView, at: float, zone: tzinfo | None, metrics: QFontMetrics, room: int) -> str:
    """Return what the lines say at an instant [s since the epoch], in whole phrases that fit in ``room`` [px]."""

    def value(series: Floats) -> str:
        return f"{float(np.interp(at, view.times, series)):.{view.decimals}f}"

    parts = [
        moment_text(at, zone),
        f"plan {value(view.plan)} {view.unit} ({value(view.low)} to {value(view.high)})",
        *_water_at(view, at),
        f"{name_of(view, 'uptake_stops')} {value(view.uptake_stops)}",
        f"{name_of(view, 'nothing')} {value(view.nothing)}",
    ]
    gap = "    "
    # A narrow chart reads out whole phrases or none: a figure cut short would be another figure.
    while len(parts) > 1 and metrics.horizontalAdvance(gap.join(parts)) > room:
        parts.pop()
    return gap.join(parts)


def _water_at(view: ChartView, at: float) -> list[str]:
    row = view.water
    if row is None:
        return []
    before, after, saturation = (float(np.interp(at, row.times, v)) for v in (row.ph, row.ph_after, row.saturation))
    return [f"pH {before:.2f}, after a dose {after:.2f}", f"aragonite {saturation:.1f}"]


def _retests(view: ChartView, zone: tzinfo | None) -> str:
    """Return the readings of a followed plan in words."""
    if not view.followed:
        return ""
    said = [
        f"{moment_text(m.at, zone)} {figure(m.value, view.decimals)} {view.unit}, {m.place} the band"
        for m in view.retests
    ]
    return f"Readings: {'; '.join(said)}. " if said else "No reading since the start. "


def in_words(view: ChartView, zone: tzinfo | None) -> str:
    """Return the plan in words, for those who do not see it."""
    ends = [f"{name_of(view, k)}, {getattr(view, k)[-1]:.{view.decimals}f}" for k in ("uptake_stops", "nothing")]
    if view.water is not None:
        ends += [view.water.ph_name, view.water.saturation_name]
    return (
        f"{view.title} from {figure(view.measured, view.decimals)} to {figure(view.target, view.decimals)} {view.unit}, "
        f"reached on {moment_text(view.ramp_end, zone)}, with {int(view.doses_at.size)} doses shown. "
        f"At the end of the chart: {'; '.join(ends)}. {_retests(view, zone)}{_KEYS_FOLLOWED if view.followed else _KEYS}"
    )
