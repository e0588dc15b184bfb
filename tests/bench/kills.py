"""Pulls the plug on programs at work and holds what is on the disk against what they said.

Lost is what a program said it had done and the log does not say; doubled is what is there twice; unasked is what no program said
it would do; torn is what is there by half, or cannot be opened. All of them must be nought.
"""

from __future__ import annotations

import argparse
import multiprocessing
import random
import statistics
import sys
import tempfile
import time
from collections import Counter, defaultdict
from collections.abc import Sequence
from contextlib import suppress
from dataclasses import dataclass, field
from itertools import pairwise
from multiprocessing.context import ForkServerContext
from pathlib import Path

from tests.bench.kill_programs import Word
from tests.bench.kill_targets import TARGETS, Target, Torn

FAULTS = ("lost", "doubled", "unasked", "torn")
# A thing is looked at for the first time without knowing how long it takes [s].
_AT_FIRST = 0.02
_LONG_LIVES = 1


@dataclass
class Tally:
    """What the kills of one target came to; ``middle`` fell between what a program would do and had done."""

    kills: int = 0
    middle: int = 0
    said: int = 0
    faults: Counter[str] = field(default_factory=Counter)
    told: list[str] = field(default_factory=list)

    def fault(self, kind: str, words: str) -> None:
        """Count a fault."""
        self.faults[kind] += 1
        self.told.append(f"{kind}: {words}")


class Killer:
    """Kills programs of one target at random moments, in folders of their own."""

    def __init__(self, target: Target, folder: Path, seed: int) -> None:
        """Begin; ``folder`` is filled with what is needed."""
        self.target, self.folder = target, folder
        self.tally = Tally()
        self._chance = random.Random(seed)
        self._took: dict[str, list[float]] = defaultdict(list)
        self._server: ForkServerContext = multiprocessing.get_context("forkserver")
        # A server that has loaded the product already starts each program in a moment.
        self._server.set_forkserver_preload(["tests.bench.kill_programs"])

    def kill(self, kills: int) -> Tally:
        """Kill so many programs and look at what each left behind."""
        allowed: dict[str, set[str]] = {}
        for number in range(kills):
            life = number % self.target.lives
            if life == 0:
                place = self.folder / f"{number}"
                place.mkdir(parents=True)
                allowed = {thing: {state} for thing, state in self.target.prepare(place, number).items()}
            words = self._one(place, number, life)
            self._take(allowed, words)
            self._look(place, allowed, words)
        return self.tally

    def _one(self, place: Path, number: int, life: int) -> list[Word]:
        """Let a program live until some moment after one of its words; return all that it said."""
        hear, say = self._server.Pipe(duplex=False)
        program, given = self.target.program(number, life)
        running = self._server.Process(target=program, args=(place, given, say))
        running.start()
        say.close()
        words: list[Word] = []
        try:
            # The first lives are long enough to see how long everything takes.
            shortest = 1 if number >= _LONG_LIVES else max(self.target.words, 2)
            count = self._chance.randint(shortest, max(self.target.words, shortest))
            while len(words) < count:
                words.append(hear.recv())
        except EOFError:
            running.join(30)
            raise AssertionError(f"{self.target.name} {number} ended by itself after {words[-3:]}") from None
        usual = self._took[_sort(words[-1])]
        time.sleep(self._chance.uniform(0.0, 1.2 * statistics.median(usual) if usual else _AT_FIRST))
        running.kill()
        running.join(30)
        if running.exitcode != -9:
            raise AssertionError(f"{self.target.name} {number} ended by itself with {running.exitcode}")
        running.close()
        with suppress(EOFError, OSError):  # the end, or a word cut off by the kill
            while True:
                words.append(hear.recv())
        hear.close()
        for will, did in pairwise(words):
            if did[0] == "did":
                self._took[_sort(did)].append(did[4] - will[4])
        self.tally.kills += 1
        self.tally.middle += words[-1][0] == "will"
        self.tally.said += sum(word[0] == "did" for word in words)
        return words

    def _take(self, allowed: dict[str, set[str]], words: Sequence[Word]) -> None:
        """Work out in which state each thing may be."""
        for word, thing, before, after, _ in words:
            there = allowed.get(thing, {""})
            if word == "will" and before not in there:
                self.tally.fault("lost", f"{thing} is {before!r} for the next program, and should be {sorted(there)}")
            allowed[thing] = {after} if word == "did" else {before, after}

    def _look(self, place: Path, allowed: dict[str, set[str]], words: Sequence[Word]) -> None:
        try:
            found = self.target.look(place, words)
        except Torn as torn:
            self.tally.fault("torn", str(torn))
            return
        for thing in allowed.keys() | found.keys():
            states, may = found.get(thing, []) or [""], allowed.get(thing, {""})
            if len(states) > 1:
                self.tally.fault("doubled", f"{thing} is {states}")
            elif states[0] not in may:
                # What was said to be gone and is there was not asked for; anything else said is missing.
                kind = "unasked" if may == {""} else "lost"
                self.tally.fault(kind, f"{thing} is {states[0]!r}, and should be {sorted(may)}")
            # What was found cannot change any more but by another word.
            allowed[thing] = {states[0]}


def _sort(word: Word) -> str:
    """Return what kind of doing a word is of, for how long it takes."""
    _, thing, before, after, _ = word
    return f"{thing.partition(' ')[0]} {bool(before)} {len(after) // 20}"


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--kills", type=int, default=2000, help="kills in all, shared among what is written")
    parser.add_argument("--of", nargs="*", choices=tuple(TARGETS), default=tuple(TARGETS))
    chosen = parser.parse_args()
    wrong = 0
    print(f"{'':<20}{'kills':>7}{'in the middle':>15}{'said':>8}" + "".join(f"{kind:>9}" for kind in FAULTS))
    with tempfile.TemporaryDirectory() as scratch:
        for place, name in enumerate(chosen.of):
            share = chosen.kills // len(chosen.of) + (place < chosen.kills % len(chosen.of))
            began = time.monotonic()
            tally = Killer(TARGETS[name](), Path(scratch) / name, 20261128 + place).kill(share)
            faults = "".join(f"{tally.faults[kind]:9}" for kind in FAULTS)
            took = time.monotonic() - began
            print(f"{name:<20}{tally.kills:7}{tally.middle:15}{tally.said:8}{faults}  in {took:.0f} s", flush=True)
            print(*tally.told[:20], sep="\n", end="\n" if tally.told else "", file=sys.stderr)
            wrong += len(tally.told)
    sys.exit(1 if wrong else 0)


if __name__ == "__main__":
    main()
