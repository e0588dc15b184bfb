"""Finds what can be done by some of its words, or by other words of the trade for it."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from evenwater.wording import marked, say

# So many are listed: what is further down is found by another letter.
MOST = 40
# Parts of words are looked for from so many letters on; fewer would find everything.
_PART_FROM = 3

ACTION, SHEET, VALUE, SYSTEM, JUG, PUMP, WORD = (
    marked("Action"),
    marked("Sheet"),
    marked("Value"),
    marked("System"),
    marked("Jug"),
    marked("Pump"),
    marked("Word of the trade"),
)

_SHEET_WORDS = {
    "Rounds": marked("due today, tests, chores, reminders, calendar, round sheet"),
    "Correct": marked("raise, ramp, plan, dose, dose card, contingency cards, alk, KH"),
    "Upkeep": marked("daily dose, maintenance, consumption, use per day, two-part, balance"),
    "Exchange": marked("water change, new water, old water, salt mix, continuous exchange, bucket"),
    "Foods": marked("feeding, nutrients, amino acids, protein, phosphorus, nitrogen"),
    "Timetable": marked("schedule, quiet hours, clock, times of day, minutes, day"),
    "Pumps": marked("calibration, doser, dosing head, tubing, flow, wear, peristaltic"),
    "Jugs": marked("level, refill, container, reservoir, siphon, absence, holiday, days left"),
    "Stocks": marked("batch, recipe, solution, concentrate, mixing, limewater, kalk, kalkwasser, label, hydroxide"),
    "Log": marked("reading, test, note, history, import, spreadsheet, CSV, entries, chart"),
    "Recovery": marked("overdose, too high, emergency, accident, ran in, cloudy"),
}
_TERM_WORDS = {
    "limewater": marked("kalk, kalkwasser, calcium hydroxide"),
    "alkalinity": marked("alk, KH, carbonate hardness"),
    "metering pump": marked("doser, dosing pump, peristaltic"),
    "specific gravity": marked("SG, hydrometer"),
    "salinity": marked("salt, ppt, refractometer"),
    "recovery": marked("overdose, too high"),
    "ramp": marked("raise slowly, course"),
}
# What stands on a sheet that may not be open yet, by the name that is read of its button.
SHEET_ACTIONS = {
    "Rounds": (
        marked("Print round sheet"),
        marked("Save round sheet as PDF"),
        marked("Look at round sheet"),
        marked("Save reminders"),
    ),
    "Correct": (
        marked("Start this correction"),
        marked("Save card as PDF"),
        marked("Print card"),
        marked("Look at card"),
        marked("Contingency cards"),
        marked("New jug"),
        marked("New pump"),
    ),
    "Foods": (marked("Add a food"),),
    "Timetable": (marked("Print timetable"), marked("Save timetable as PDF"), marked("Look at timetable")),
    "Pumps": (marked("New calibration"), marked("Add pump")),
    "Jugs": (marked("Note this level"), marked("Jug refilled"), marked("Plan an absence")),
    "Stocks": (
        marked("New batch"),
        marked("Print label"),
        marked("Save label as PDF"),
        marked("Look at label"),
        marked("Add jug"),
    ),
    "Log": (marked("Log it"), marked("Import from a spreadsheet"), marked("Save as spreadsheet")),
    "Recovery": (marked("Print emergency card"), marked("The whole jug ran in")),
}


@dataclass(frozen=True)
class Doing:
    """Something that can be done, or cannot now.

    ``kind`` is one of the kinds above, ``key`` what does it knows it by, ``words`` what it is called, ``shortcut`` the keys that do it
    without the finder, ``why_not`` a sentence where it cannot be done now, ``besides`` other words that find it, ``place`` where it stands.
    """

    kind: str
    key: str
    words: str
    shortcut: str = ""
    why_not: str = ""
    besides: str = ""
    place: str = ""

    def line(self) -> str:
        """Return it as one line: what, of which kind, by which keys, and why not."""
        kind = "" if self.kind == ACTION else say(self.kind)
        return "  ·  ".join(filter(None, (self.words, self.place or kind, self.shortcut, self.why_not)))


def sheets(names: Sequence[str], shortcuts: Sequence[str]) -> tuple[Doing, ...]:
    """Return the sheets with their keys; ``names`` as the program knows them, each shown in the language in force."""
    return tuple(
        Doing(SHEET, name, say(name), keys, besides=say(_SHEET_WORDS[name]) if name in _SHEET_WORDS else "")
        for name, keys in zip(names, shortcuts, strict=True)
    )


def term(key: str, name: str) -> Doing:
    """Return a word of the glossary, found by what else it is called in the trade."""
    return Doing(WORD, key, name, besides=say(_TERM_WORDS[key]) if key in _TERM_WORDS else "")


def folded(words: str) -> str:
    """Return words without case and accents, and with "ß" as "ss", so that "e" finds "é"."""
    apart = unicodedata.normalize("NFKD", words.casefold())
    return "".join(letter for letter in apart if not unicodedata.combining(letter))


def _split(words: str) -> tuple[str, ...]:
    plain = "".join(letter if letter.isalnum() else " " for letter in folded(words))
    return tuple(plain.split())


def find(doings: Iterable[Doing], typed: str) -> tuple[Doing, ...]:
    """Return what fits what was typed, the best first.

    Each word must begin a word of the name or of the other words, in any order; from three letters on it may also stand inside one.
    What has the words in its own name comes before what has them beside it, what can be done before what cannot; else the order stays.
    Nothing typed finds everything.

    Parameters
    ----------
    doings : iterable of Doing
        What there is, in the order in which it is shown.
    typed : str
        What was typed.

    Returns
    -------
    tuple of Doing
        At most ``MOST``.
    """
    wanted = _split(typed)
    ranked: list[tuple[int, int, Doing]] = []
    for place, doing in enumerate(doings):
        rank = _rank(doing, wanted)
        if rank is not None:
            ranked.append((rank, place, doing))
    ranked.sort(key=lambda each: each[:2])
    return tuple(doing for *_, doing in ranked[:MOST])


def _rank(doing: Doing, wanted: tuple[str, ...]) -> int | None:
    """Return how far down something belongs, the sum over the words typed; None where a word is not in it."""
    named, besides = _split(doing.words), _split(f"{doing.besides} {say(doing.kind)} {doing.place}")
    total = 0
    for word in wanted:
        places = (
            word in named,
            any(each.startswith(word) for each in named),
            word in besides,
            any(each.startswith(word) for each in besides),
            len(word) >= _PART_FROM and any(word in each for each in (*named, *besides)),
        )
        rank = next((n for n, holds in enumerate(places) if holds), None)
        if rank is None:
            return None
        total += rank
    return 2 * total + bool(doing.why_not)
