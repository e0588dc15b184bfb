"""Every sentence about a timetable is produced here, with its figures, in words that are safe to read."""

from __future__ import annotations

from dataclasses import replace

import pytest

from evenwater.engine.form import Unread
from evenwater.engine.reasons import Reason
from evenwater.engine.timetable import Refused, TimetableAnswer, TimetableQuestion, solve
from evenwater.engine.timetable_intake import timetable
from evenwater.engine.timetable_question import Apart, Quiet, TimedPump
from evenwater.screens import timetable_lines, timetable_words, words
from tests.engine.asking import known
from tests.engine.timetables import LIME, PAIR, SODA, doses
from tests.screens.lint import faults

SLOW = TimedPump("Slow", 600.0, 1.0, doses=4, fewest=4, most=4)
ROW = {"name": "Soda", "per_day": "52.8 mL per day", "flow": "24 mL/min"}


def alone(**changes: object) -> TimetableQuestion:
    return TimetableQuestion((replace(SODA, **changes),))  # type: ignore[arg-type]


ASKED: dict[str, tuple[TimetableQuestion, list[str]]] = {
    "timetable_no_pumps": (TimetableQuestion(()), ["pump"]),
    "timetable_too_many": (TimetableQuestion(tuple(replace(SODA, name=str(n)) for n in range(25))), ["25", "24"]),
    "timetable_figure": (alone(flow_ml_per_min=0.0), ["“Soda”"]),
    "timetable_same_name": (TimetableQuestion((SODA, SODA)), ["“Soda”"]),
    "timetable_apart_itself": (replace(PAIR, apart=(Apart(0, 0, 15.0),)), ["“Soda”"]),
    "timetable_apart_least": (replace(PAIR, apart=(Apart(0, 1, 5.5),)), ["15 min", "5.5 min", "“Soda” and “Lime”"]),
    "timetable_step": (alone(per_day_ml=0.05), ["0.05 mL", "0.1 mL"]),
    "timetable_pump_share": (alone(flow_ml_per_min=0.05), ["52.8 mL", "36 mL", "50 %"]),
    "timetable_smallest": (alone(smallest_ml=3.0), ["24 doses a day", "2.2 mL", "3 mL", "Choose 17 doses a day"]),
    "timetable_largest": (alone(largest_ml=2.0), ["24 doses a day", "2.2 mL", "2 mL", "Choose 27 doses a day"]),
    "timetable_between": (
        TimetableQuestion((doses(replace(SODA, smallest_ml=4.0, largest_ml=4.05), 24, least=1),)),
        ["4 mL or more", "4.05 mL or less", "1 to 24 doses a day"],
    ),
    "timetable_apart": (replace(PAIR, apart=(Apart(0, 1, 30.0),)), ["No timetable of “Soda” and “Lime” keeps", "29 min", "30 min"]),
    "timetable_doses": (replace(PAIR, apart=(Apart(0, 1, 30.0),)), ["23 doses a day"]),
    "timetable_quiet": (
        TimetableQuestion((replace(SLOW, per_day_ml=200.0, quiet=(Quiet(0, 600), Quiet(620, 0))),)), ["20 min", "Shorten"],
    ),
    "timetable_one_at_a_time": (
        TimetableQuestion(tuple(replace(SLOW, name=str(n), per_day_ml=500.0) for n in range(3)), one_at_a_time=True), ["together"],
    ),
    "timetable_closest": (TimetableQuestion((replace(SLOW, closest_min=400),)), ["“Slow”", "400 min"]),
    "timetable_together": (
        TimetableQuestion((replace(SLOW, closest_min=380, quiet=(Quiet(0, 900),)),)),
        ["the quiet hours, the doses a day and how near the doses of one pump may come"],
    ),
    "timetable_other_number": (TimetableQuestion((doses(replace(SODA, smallest_ml=5.0), 24, least=4),)), ["10 doses", "24"]),
    "timetable_uneven": (TimetableQuestion((SODA, replace(LIME, closest_min=5)), (Apart(0, 1, 30.0),)), ["“Lime”", "5 min to"]),
    "timetable_bunched": (
        TimetableQuestion((doses(SODA, 20), doses(LIME, 20)), (Apart(0, 1, 30.0),), quiet=(Quiet(1320, 420),)), ["“Lime”", "7 h 30 min", "15 h"],
    ),
    "timetable_carried": (TimetableQuestion((replace(SODA, per_day_ml=53.04),)), ["2 of 5 days", "0.1 mL"]),
    "timetable_rather_further": (PAIR, ["29.9 min", "30 min"]),
}  # fmt: skip
READ: dict[str, tuple[dict[str, object], list[str]]] = {
    "timetable_which_pump": ({"pump": [ROW], "apart": [{"first": "Sodium", "second": "Soda"}]}, ["“Sodium”", "“Soda”"]),
    "timetable_hours": ({"pump": [{**ROW, "quiet": "by night"}]}, ["“by night”", "22:00 to 07:00"]),
    "timetable_numbers": ({"pump": [{**ROW, "fewest_doses": 9, "doses_per_day": 6}]}, ["6 doses a day", "9 to 6"]),
}
BY_HAND = {"timetable_disagrees": Reason("timetable_disagrees", {"faults": ("the hour of Soda",)})}


def check(sentence: str, fragments: list[str]) -> None:
    plain = sentence.replace("\u00a0", " ")
    assert all(fragment in plain for fragment in fragments), plain
    assert plain[0].isupper() or plain[0] in "“0123456789"
    assert plain[-1] == "."
    assert not faults(sentence)
    assert "None" not in plain


def test_every_sentence_is_produced_below() -> None:
    assert ASKED.keys() | READ.keys() | BY_HAND.keys() == timetable_words.SENTENCES.keys()


@pytest.mark.parametrize("code", ASKED)
def test_sentence_holds_its_figures(code: str) -> None:
    question, fragments = ASKED[code]
    result = solve(question)
    found = {reason.code: reason for reason in (result.reasons if isinstance(result, Refused) else result.remarks)}
    assert code in found
    check(words.sentence(found[code]), fragments)


@pytest.mark.parametrize("code", READ)
def test_sentence_about_what_was_typed_holds_it(code: str) -> None:
    raw, fragments = READ[code]
    result = timetable(raw, known())
    assert isinstance(result, Unread)
    (reason,) = result.reasons
    assert reason.code == code
    check(words.sentence(reason), fragments)


@pytest.mark.parametrize("code", BY_HAND)
def test_sentence_of_what_cannot_be_asked_for(code: str) -> None:
    check(words.sentence(BY_HAND[code]), ["report"])


VARIANTS = [
    (Reason("timetable_smallest", {"name": "A", "fewest": 1, "small_ml": 0.4, "smallest_ml": 0.5, "step_ml": 0.1, "would_do": 0}), "finer pump"),
    (Reason("timetable_largest", {"name": "A", "most": 9, "large_ml": 4.0, "largest_ml": 3.0, "would_do": 0}), "stronger stock"),
    (Reason("timetable_between", {"name": "A", "fewest": 2, "most": 2, "smallest_ml": 3.0, "step_ml": 0.1, "largest_ml": 4.0, "would_do": 1}), "Choose one dose a day"),
    (Reason("timetable_apart", {"names": ("A", "B"), "proved": False, "first": "A", "second": "B", "minutes": 40.0, "widest_min": 0}), "was found that keeps"),
    (Reason("timetable_quiet", {"names": ("A",), "proved": True, "open_min": 0}), "nothing of the day"),
    (Reason("timetable_together", {"names": ("A",), "proved": True, "wishes": ()}), "too long for one day"),
    (Reason("timetable_together", {"names": ("A",), "proved": True, "wishes": ("quiet",)}), "the quiet hours"),
    (Reason("timetable_carried", {"name": "A", "days": 1000, "extra": 3, "step_ml": 0.1}), "on some days"),
]  # fmt: skip


@pytest.mark.parametrize(("reason", "fragment"), VARIANTS, ids=lambda value: getattr(value, "code", ""))
def test_every_turn_of_a_sentence_is_safe_to_read(reason: Reason, fragment: str) -> None:
    check(words.sentence(reason), [fragment])


def test_lines_for_people_are_safe_to_read() -> None:
    answer = solve(TimetableQuestion((replace(SODA, per_day_ml=53.04), doses(LIME, 1)), (Apart(0, 1, 15.0),)))
    assert isinstance(answer, TimetableAnswer)
    assert not [fault for rule in timetable_lines.RULES for fault in faults(rule)]
    assert not [fault for day in answer.pumps for fault in faults(timetable_lines.pump_line(day))]
    lines = timetable_lines.lines(answer)
    assert (
        timetable_lines.pump_line(answer.pumps[1]).replace("\u00a0", " ")
        == "“Lime”: one dose a day, 52.8 mL in all, running 2 min 12 s"
    )
    assert sum("on some days 0.1 mL more" in line for line in lines) == 1
