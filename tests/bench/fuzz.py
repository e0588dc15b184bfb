"""Feeds the product what nobody should: `python -m tests.bench --only fuzz [--count N] [--seed S]`.

Typed numbers, question files, spreadsheets and log files, each made from a seed and held against an oracle that shares no code
with the product (see the modules ``fuzz_*``). An exception, a hang and a broken promise are faults alike; one is made smaller
before it is printed, and the run ends with an error. A sample of the question files goes through processes of its own.
"""

from __future__ import annotations

import argparse
import random
import signal
import subprocess
import sys
import tempfile
import time
import traceback
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from evenwater.engine import catalogue
from tests.bench import fuzz_logs, fuzz_numbers, fuzz_questions, fuzz_sheets

COUNT = 1_000_000
# So long may one input take [s of this process's own time]; the slowest question takes half a second.
_HANGS_AFTER = 30.0
_MOST_SHRINKING = 3000
_MOST_FAULTS = 10
_PROCESSES_OF = 20_000


class HangError(BaseException):
    """An input took longer than any may."""


@dataclass(frozen=True)
class Target:
    """What is fed: how an input is made, what is wrong with what becomes of it, its smaller forms, and its share of all."""

    made: Callable[[random.Random], Any]
    fault: Callable[[Any, Path], str]
    smaller: Callable[[Any], Iterator[Any]]
    share: float


TARGETS = {
    "numbers": Target(fuzz_numbers.made, lambda typed, _: fuzz_numbers.fault(typed), fuzz_numbers.smaller, 0.850),
    "questions": Target(fuzz_questions.made, fuzz_questions.fault, fuzz_questions.smaller, 0.117),
    "sheets": Target(fuzz_sheets.made, lambda sheet, _: fuzz_sheets.fault(sheet), fuzz_sheets.smaller, 0.028),
    "logs": Target(fuzz_logs.made, fuzz_logs.fault, fuzz_logs.smaller, 0.005),
}


@dataclass(frozen=True)
class Found:
    """An input that broke something, as small as it could be made, and what it broke."""

    target: str
    number: int
    item: object
    fault: str


@contextmanager
def _hanging_ends() -> Iterator[None]:
    if not hasattr(signal, "setitimer"):
        yield
        return

    def end(*_: object) -> None:
        raise HangError

    before = signal.signal(signal.SIGVTALRM, end)
    signal.setitimer(signal.ITIMER_VIRTUAL, _HANGS_AFTER)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0.0)
        signal.signal(signal.SIGVTALRM, before)


def judged(target: Target, item: object, folder: Path) -> str:
    """Return what is wrong with what becomes of an input: what the oracle says, an exception, or that it hangs."""
    try:
        with _hanging_ends():
            return target.fault(item, folder)
    except HangError:
        return f"hangs: {_HANGS_AFTER:.0f} s were not enough"
    except Exception as error:  # noqa: BLE001  (an exception is what is looked for)
        where = " < ".join(
            f"{frame.name}:{frame.lineno}" for frame in traceback.extract_tb(error.__traceback__)[:-4:-1]
        )
        return f"{type(error).__name__} in {where}: {str(error)[:300]}"


def input_of(name: str, seed: str, number: int) -> object:
    """Return one input, always the same one."""
    return TARGETS[name].made(random.Random(f"{name} {seed} {number}"))


def search(name: str, seed: str, numbers: range, folder: Path) -> Iterator[Found]:
    """Feed so many inputs and yield what broke something, made smaller."""
    target = TARGETS[name]
    for number in numbers:
        item = input_of(name, seed, number)
        fault = judged(target, item, folder)
        if fault:
            yield _smallest(target, Found(name, number, item, fault), folder)


def _smallest(target: Target, found: Found, folder: Path) -> Found:
    """Make an input smaller as long as it breaks the same."""
    left, sort = _MOST_SHRINKING, found.fault[:24]
    smaller = target.smaller(found.item)
    while left > 0 and (item := next(smaller, None)) is not None:
        left -= 1
        fault = judged(target, item, folder)
        if fault[:24] == sort:
            found = Found(found.target, found.number, item, fault)
            smaller = target.smaller(item)
    return found


def in_processes(seed: str, count: int, folder: Path) -> Iterator[Found]:
    """Answer question files in processes of their own, where nothing is caught that the program does not catch."""
    for number in range(count):
        asked = input_of("questions", seed, number)
        assert isinstance(asked, fuzz_questions.AskedFile)
        file = folder / "question.toml"
        file.write_bytes(asked.content)
        words = [sys.executable, "-m", "evenwater", "answer", str(file), *(["--text"] if asked.as_text else [])]
        done = subprocess.run(words, capture_output=True, timeout=300, check=False)
        said = fuzz_questions.Said(done.returncode, done.stdout.decode("utf-8"), done.stderr.decode("utf-8"))
        if fault := fuzz_questions.wrong_with(said, asked):
            yield Found("processes", number, asked, fault)


def _feed(name: str, seed: str, count: int, folder: Path) -> list[Found]:
    began = time.process_time()
    source = in_processes(seed, count, folder) if name == "processes" else search(name, seed, range(count), folder)
    found = []
    for each in source:
        found.append(each)
        print(f"{each.target} {each.number}: {each.fault}\n    {ascii(each.item)[:2000]}", flush=True)
        if len(found) >= _MOST_FAULTS:
            break
    print(f"{name:<10}{count:>9} inputs{time.process_time() - began:>9.0f} s{len(found):>5} faults", flush=True)
    return found


def main() -> None:
    """Feed all targets, or those that are named."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--count", type=int, default=COUNT, help=f"inputs in all (default {COUNT})")
    parser.add_argument("--seed", default="1", help="any text; the same one feeds the same inputs (default 1)")
    parser.add_argument("--target", choices=(*TARGETS, "processes"), help="only this one, with all of the count")
    chosen = parser.parse_args()
    # The data files are read once, not anew for each of so many questions.
    catalogue.load = cache(catalogue.load)  # type: ignore[assignment]
    parts = {name: round(chosen.count * target.share) for name, target in TARGETS.items()}
    parts["processes"] = max(chosen.count // _PROCESSES_OF, 3)
    parts = {chosen.target: chosen.count} if chosen.target else parts
    with tempfile.TemporaryDirectory() as scratch:
        found = [each for name, count in parts.items() for each in _feed(name, chosen.seed, count, Path(scratch))]
    sys.exit(1 if found else 0)


if __name__ == "__main__":
    main()
