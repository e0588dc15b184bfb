"""The names of the lines of the chart."""

from __future__ import annotations

from evenwater.screens.views import ChartView

NAMES = {
    "plan": "plan",
    "uptake_stops": "if uptake stops now",
    "nothing": "if nothing is dosed",
    "target": "target",
    "fastest": "fastest allowed",
    "measured": "reading",
}


def name_of(view: ChartView, key: str) -> str:
    """Return the name a line goes by: the view's own, or the usual one."""
    return view.labels.get(key, NAMES[key])
