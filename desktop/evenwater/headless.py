"""The headless front door: question files in, answers out. No Qt is imported but for --card.

What only some questions need is loaded with the first of them: all of it would take longer than an answer.
"""

from __future__ import annotations

import io
import json
import os
import re
import sys
import tomllib
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any

from evenwater.assets import resources
from evenwater.engine import catalogue, intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Answer, Refused, solve
from evenwater.engine.fields import SALINITY, TEMPERATURE
from evenwater.engine.quantities import Water, to_canonical
from evenwater.engine.reader import Ask, Ok, Wrong, read
from evenwater.engine.reasons import Reason
from evenwater.engine.visible import has_unseen, printable, quoted
from evenwater.headless_outcome import ANSWERED, REFUSED, UNREADABLE, Outcome, refused
from evenwater.question_file import Fault, faults
from evenwater.screens import answer_json
from evenwater.screens.local_zone import LocalZone
from evenwater.screens.shown import Shown

if TYPE_CHECKING:
    from evenwater.screens.views import CardView

_WORST = (ANSWERED, REFUSED, UNREADABLE)


def run(arguments: Sequence[str]) -> int:
    """Run ``evenwater answer`` or ``evenwater question``.

    Parameters
    ----------
    arguments : sequence of str
        The words after the program's name.

    Returns
    -------
    int
        Exit status: 0 answered, 3 refused, 2 not readable as a question, or the answer could not be written.
    """
    command, *rest = arguments
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            # JSON is UTF-8 everywhere, and a degree sign must not stop an answer on a plain terminal.
            # Names of files may be no text at all.
            stream.reconfigure(encoding="utf-8", errors="backslashreplace")
    try:
        status = _question(rest) if command == "question" else _answers(rest)
        sys.stdout.flush()
    except OSError as error:
        # The disk is full, or whoever read has gone: an answer that is cut off is none.
        with suppress(OSError):
            print(f"evenwater: the answer could not be written: {error.strerror or error}", file=sys.stderr)
        # What is still in the buffer would be tried once more at the end.
        with suppress(OSError, ValueError), Path(os.devnull).open("wb") as nowhere:
            os.dup2(nowhere.fileno(), sys.stdout.fileno())
        return UNREADABLE
    return status


def _question(rest: Sequence[str]) -> int:
    folder = resources() / "questions"
    kinds = sorted(p.stem for p in folder.glob("*.toml"))
    if len(rest) != 1 or rest[0] not in kinds:
        print(f"usage: evenwater question KIND, where KIND is one of: {', '.join(kinds)}", file=sys.stderr)
        return UNREADABLE
    sys.stdout.write((folder / f"{rest[0]}.toml").read_text(encoding="utf-8"))
    return ANSWERED


def _answers(rest: Sequence[str]) -> int:
    files, card, as_text = [], None, False
    words_left = list(rest)
    while words_left:
        word = words_left.pop(0)
        if word == "--text":
            as_text = True
        elif word == "--card":
            if not words_left or words_left[0].startswith("-"):
                return _usage("--card needs the name of the PDF file to write")
            card = Path(words_left.pop(0))
        elif word.startswith("--card="):
            card = Path(word.removeprefix("--card="))
        elif word.startswith("-"):
            return _usage(f"unknown option {word}")
        else:
            files.append(Path(word))
    if not files:
        return _usage("no question file given")
    if card is not None and len(files) != 1:
        return _usage("--card goes with one question file")
    known = catalogue.load(resources())
    worst = ANSWERED
    for file in files:
        outcome = answer_file(file, known, datetime.now(UTC))
        if as_text and len(files) > 1:
            print(printable(f"{file}:"))
        _report(file, outcome, as_text)
        status = outcome.status if card is None else _write_card(card, outcome)
        worst = max(worst, status, key=_WORST.index)
    return worst


def _usage(fault: str) -> int:
    print(
        printable(f"evenwater: {fault}")
        + "\nusage: evenwater answer QUESTION.toml [QUESTION2.toml ...] [--card OUT.pdf] [--text]",
        file=sys.stderr,
    )
    return UNREADABLE


def answer_file(file: Path, known: Catalogue, now: datetime) -> Outcome:
    """Answer one question file.

    Parameters
    ----------
    file : Path
        The TOML file.
    known : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, for a question that does not say.

    Returns
    -------
    Outcome
        Status and JSON object; nothing is raised for a bad file.
    """
    try:
        # Some editors begin a file with a byte order mark.
        text = file.read_bytes().decode("utf-8-sig")
        raw = tomllib.loads(text)
    except OSError as error:
        return _unreadable([Fault(0, "", f"cannot be read: {error.strerror or error}")])
    except UnicodeDecodeError:
        return _unreadable([Fault(0, "", "is not UTF-8 text")])
    except (tomllib.TOMLDecodeError, RecursionError, ValueError) as error:
        place = re.search(r"at line (\d+)", str(error))
        return _unreadable([Fault(int(place.group(1)) if place else 0, "", f"is not TOML: {error}")])
    found = faults(raw, text)
    if found:
        return _unreadable(found)
    return _BY_KIND[raw["kind"]](raw, known, now)


def _unreadable(found: Sequence[Fault]) -> Outcome:
    problems = [{"line": f.line, "field": f.field, "text": f.text} for f in found]
    return Outcome(UNREADABLE, {"status": "unreadable", "problems": problems})


def _correction(raw: dict[str, Any], known: Catalogue, now: datetime) -> Outcome:
    question = intake.correction(raw, known, now)
    if isinstance(question, intake.Unread):
        return refused(*question.reasons)
    shown = Shown(question.parameter, question.unit, question.system.water)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons, shown=shown)
    return Outcome(ANSWERED, answer_json.answered(result), result)


def _convert(raw: dict[str, Any], known: Catalogue, _now: datetime) -> Outcome:
    from evenwater.engine.conversion import convert

    standard, figures = Water(), {}
    for name, field in (("salinity", SALINITY), ("temperature", TEMPERATURE)):
        found = read(raw.get(name, ""), field)
        if isinstance(found, Ask | Wrong):
            return refused(Reason(found.reason.code, found.reason.params, name))
        if isinstance(found, Ok):
            figures[name] = to_canonical(float(found.entered.number), field.kind, found.entered.unit)
    water = Water(figures.get("salinity", standard.salinity), figures.get("temperature", standard.temperature_c))
    name = raw.get("parameter", "")
    if name and name not in known.parameters:
        return refused(Reason("unknown_parameter", {"text": name, "choices": tuple(known.parameters)}, "parameter"))
    result = convert(raw["value"], raw["to"], known.parameters[name].kind if name else None, water)
    if isinstance(result, Reason):
        return refused(result)
    return Outcome(ANSWERED, {"status": "answered", "result": {"value": result.value, "unit": result.unit}})


def _stock(raw: dict[str, Any], known: Catalogue, _now: datetime) -> Outcome:
    from evenwater import headless_stock

    return headless_stock.answer(raw, known)


def _chemistry(raw: dict[str, Any], known: Catalogue, _now: datetime) -> Outcome:
    from evenwater import headless_chemistry

    return headless_chemistry.answer(raw, known)


def _upkeep(raw: dict[str, Any], known: Catalogue, now: datetime) -> Outcome:
    from evenwater import headless_upkeep

    return headless_upkeep.answer(raw, known, now)


def _consumption(raw: dict[str, Any], known: Catalogue, now: datetime) -> Outcome:
    from evenwater import headless_consumption

    return headless_consumption.answer(raw, known, now)


def _calibration(raw: dict[str, Any], _known: Catalogue, now: datetime) -> Outcome:
    from evenwater import headless_calibration

    return headless_calibration.answer(raw, now)


def _jug(raw: dict[str, Any], known: Catalogue, now: datetime) -> Outcome:
    from evenwater import headless_jug

    return headless_jug.answer(raw, known, now)


def _recovery(raw: dict[str, Any], known: Catalogue, now: datetime) -> Outcome:
    from evenwater import headless_recovery

    return headless_recovery.answer(raw, known, now)


def _timetable(raw: dict[str, Any], known: Catalogue, _now: datetime) -> Outcome:
    from evenwater import headless_timetable

    return headless_timetable.answer(raw, known)


def _exchange(raw: dict[str, Any], known: Catalogue, _now: datetime) -> Outcome:
    from evenwater import headless_exchange

    return headless_exchange.answer(raw, known)


_BY_KIND: dict[str, Callable[[dict[str, Any], Catalogue, datetime], Outcome]] = {
    "correction": _correction,
    "convert": _convert,
    "stock": _stock,
    "chemistry": _chemistry,
    "upkeep": _upkeep,
    "consumption": _consumption,
    "calibration": _calibration,
    "jug": _jug,
    "recovery": _recovery,
    "timetable": _timetable,
    "exchange": _exchange,
}


@dataclass(frozen=True)
class Told:
    """A question file answered for people: in words, and with the card where there is a plan."""

    text: str
    card: CardView | None


def told(file: Path) -> Told:
    """Answer one question file for a window.

    Parameters
    ----------
    file : Path
        The TOML file.

    Returns
    -------
    Told
        The words of ``--text``, or what is wrong with the file and where.
    """
    outcome = answer_file(file, catalogue.load(resources()), datetime.now(UTC))
    problems = _problems(file, outcome)
    text = "\n".join(problems) if problems else _text(outcome)
    if outcome.answer is None:
        return Told(text, None)
    from evenwater.screens import dose_card

    return Told(text, dose_card.card(outcome.answer, _here(outcome.answer)))


def _problems(file: Path, outcome: Outcome) -> list[str]:
    """Return what is wrong with a file, a line for each fault with its place."""
    said = []
    for problem in outcome.body.get("problems", ()):
        place = f"{file}:{problem['line']}" if problem["line"] else str(file)
        field = f"{quoted(problem['field'])}: " if problem["field"] else ""
        said.append(printable(f"{place}: {field}{problem['text']}"))
    return said


def _text(outcome: Outcome) -> str:
    """Return the answer in words."""
    if outcome.lines:
        return printable("\n".join(outcome.lines))
    return printable(answer_json.text(outcome.body, outcome.answer, _here(outcome.answer)))


def _report(file: Path, outcome: Outcome, as_text: bool) -> None:
    for problem in _problems(file, outcome):
        print(problem, file=sys.stderr)
    if as_text:
        print(_text(outcome))
    else:
        body = json.dumps(outcome.body, ensure_ascii=False, allow_nan=False)
        # The same JSON, with what a terminal would obey or nobody see written by its number.
        print(json.dumps(outcome.body, allow_nan=False) if has_unseen(body) else body)


def _here(answer: Answer | None) -> datetime:
    """Return the plan's present in the zone of this machine, in which people read dates."""
    return (datetime.now(UTC) if answer is None else answer.question.now).astimezone(LocalZone())


def _write_card(path: Path, outcome: Outcome) -> int:
    """Write the card, if there is a plan, and return the exit status."""
    if outcome.answer is None:
        print(f"evenwater: there is no plan, so {path} was not written", file=sys.stderr)
        return outcome.status
    from evenwater.card import headless_card  # Qt only when a card is asked for
    from evenwater.screens import dose_card

    fault = headless_card.write(path, dose_card.card(outcome.answer, _here(outcome.answer)))
    if fault:
        print(f"evenwater: {fault}", file=sys.stderr)
    return UNREADABLE if fault else outcome.status
