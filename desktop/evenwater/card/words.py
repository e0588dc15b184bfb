"""The card's own few words: headings and labels. Every sentence comes with the CardView."""

from __future__ import annotations

from evenwater.wording import marked, say

PLAN = marked("Plan")
STOP = "STOP"
GOES_ON = marked("Goes on from the page before:")
NOTE = marked("Note")
HANDLING = marked("Handle with care")
SEPARATION = marked("Keep apart")
RETEST = marked("Test again")
REFILL = marked("Refill")
TOTALS = marked("Totals")
WHOLE_JUG = marked("Whole jug")
STRENGTH = marked("In the jug")
GIVEN = (marked("Date"), marked("Time"), marked("Amount given"), marked("Initials"))
GIVEN_TITLE = marked("What was really given")
RULER = marked("50\u00a0mm at full size")

CHART_LABELS = {
    "plan": marked("plan"),
    "uptake_stops": marked("if uptake stops now"),
    "nothing": marked("if nothing is dosed"),
    "target": marked("target"),
}
HOURS = marked("h after the reading")
DAYS = marked("days after the reading")


def page_of(page: int, pages: int) -> str:
    """Return which page this is, counted from 1."""
    return say("{page} of {pages}", page=page, pages=pages)
