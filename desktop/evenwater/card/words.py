"""The card's own few words: headings and labels. Every sentence comes with the CardView."""

from __future__ import annotations

PLAN = "Plan"
STOP = "STOP"
GOES_ON = "Goes on from the page before:"
NOTE = "Note"
HANDLING = "Handle with care"
SEPARATION = "Keep apart"
RETEST = "Test again"
REFILL = "Refill"
TOTALS = "Totals"
WHOLE_JUG = "Whole jug"
STRENGTH = "In the jug"
GIVEN = ("Date", "Time", "Amount given", "Initials")
GIVEN_TITLE = "What was really given"
RULER = "50\u00a0mm at full size"

CHART_LABELS = {
    "plan": "plan",
    "uptake_stops": "if uptake stops now",
    "nothing": "if nothing is dosed",
    "target": "target",
}
HOURS = "h after the reading"
DAYS = "days after the reading"


def page_of(page: int, pages: int) -> str:
    """Return which page this is, counted from 1."""
    return f"{page} of {pages}"
