"""What the chart says in words: the names of its lines, what the cursor stands on, the whole plan."""

from __future__ import annotations

from datetime import tzinfo

import numpy as np
from PySide6.QtGui import QFontMetrics

from evenwater.screens.shown import decimal, figure
from evenwater.screens.views import ChartView, Floats
from evenwater.ui.chart_axis import moment_text
from evenwater.wording import marked, say, say_all

NAMES = {
    "plan": marked("plan"),
    "uptake_stops": marked("if uptake stops now"),
    "nothing": marked("if nothing is dosed"),
    "target": marked("target"),
    "fastest": marked("fastest allowed"),
    "measured": marked("reading"),
}
_KEYS = marked("Arrow keys read the lines; Shift and an arrow key choose a slower pace.")
_KEYS_FOLLOWED = marked("Arrow keys read the lines.")


def name_of(view: ChartView, key: str) -> str:
    """Return the name a line goes by: the view's own, or the usual one."""
    return view.labels.get(key, say_all(NAMES[key]))


def reading_at(view: ChartView, at: float, zone: tzinfo | None, metrics: QFontMetrics, room: int) -> str:
    """Return what the lines say at an instant [s since the epoch], in whole phrases that fit in ``room`` [px]."""

    def value(series: Floats) -> str:
        return decimal(f"{float(np.interp(at, view.times, series)):.{view.decimals}f}")

    parts = [
        moment_text(at, zone),
        say(
            "plan {plan} {view_unit} ({low} to {high})",
            plan=value(view.plan),
            view_unit=view.unit,
            low=value(view.low),
            high=value(view.high),
        ),
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
    return [
        say("pH {before}, after a dose {after}", before=decimal(f"{before:.2f}"), after=decimal(f"{after:.2f}")),
        say("aragonite {saturation}", saturation=decimal(f"{saturation:.1f}")),
    ]


def _retests(view: ChartView, zone: tzinfo | None) -> str:
    """Return the readings of a followed plan in words."""
    if not view.followed:
        return ""
    said = [
        say(
            "{at} {m_value} {view_unit}, {place} the band",
            at=moment_text(m.at, zone),
            m_value=figure(m.value, view.decimals),
            view_unit=view.unit,
            place=m.place,
        )
        for m in view.retests
    ]
    return say("Readings: {said}. ", said="; ".join(said)) if said else say("No reading since the start. ")


def in_words(view: ChartView, zone: tzinfo | None) -> str:
    """Return the plan in words, for those who do not see it."""
    ends = [
        f"{name_of(view, k)}, {decimal(f'{getattr(view, k)[-1]:.{view.decimals}f}')}"
        for k in ("uptake_stops", "nothing")
    ]
    if view.water is not None:
        ends += [view.water.ph_name, view.water.saturation_name]
    return say(
        "{title} from {measured} to {target} {view_unit}, reached on {ramp_end}, with {size} doses shown. At the end of the chart: {ends}. {view}{keys_followed}",
        title=view.title,
        measured=figure(view.measured, view.decimals),
        target=figure(view.target, view.decimals),
        view_unit=view.unit,
        ramp_end=moment_text(view.ramp_end, zone),
        size=int(view.doses_at.size),
        ends="; ".join(ends),
        view=_retests(view, zone),
        keys_followed=say(_KEYS_FOLLOWED) if view.followed else say(_KEYS),
    )
