"""Benchmarks against floors, as ratios: `python -m tests.bench` prints one table.

Every row compares a process of the product with the bare window it cannot beat. The two take turns within the same
call, so that whatever else the machine does falls on both; ratios hold across machines, milliseconds do not.

Each row has its aims, most of them two: how many times as long as the floor at the 95th percentile, and how long at all; the last
column says whether they were met. A key is pressed on every sheet; its floor shows the same widgets and items, and changes the same of them.
The carbonate system and the planner have no window: there the second column is PyCO2SYS with the same states, and the planner that
knows less of pH; a year of nine values is held against scipy's solver at the same error, a log of 2,000,000 entries against one of 2,000
with answers as long. `kills` is no race: it pulls the plug on programs at work so many times and ends with an error when anything said to be saved is lost, doubled or torn.
`facility` lets twenty write in one log on a server that is killed again and again, as they are: an error when anything is lost or doubled.
`two-windows` lets two programs work in one log at once, `long` works in the real window for the equivalent of a day: an error as well.
`consumption` and `jugs` are none either: they say how well the use is learned from the logs of 1,000 simulated tanks, and how often the
jug check names the right cause. `timetables` plans 10,000 of them and ends with an error when one does not hold, `recovery` lives through
what is proposed after 5,000 overdoses and ends with an error when a limit is passed, `exchange` holds 1,000 exchanges against an integrator.
`fuzz` feeds a million broken numbers, files and logs, and ends with an error when one of them breaks something. `opinions` asks 100,000
corrections, lives through every plan and tries every refusal by force: an error when a limit is passed or a refusal has no reason.

    python -m tests.bench [--rounds N] [--changes N] [--platform offscreen|xcb|both] [--sheet NAME]
        [--only first|headless|change|carbonate|planner|year|many|rounds|log]
    python -m tests.bench --only kills|consumption|jugs|timetables|recovery|exchange|fuzz|two-windows|long|opinions|facility
        [--kills N] [--count N] [--seed S] [--operations N] [--edits N]
"""

from __future__ import annotations

import argparse
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from pathlib import Path

from evenwater.ui.sheet_list import SHEETS
from tests.bench import others, starts, windows
from tests.bench.rows import ROOT, Row, displays, environment, head, shown

# Processes of their own that print what they found.
OF_ITS_OWN = ("kills", "fuzz", "two-windows", "long", "opinions", "facility")
ROWS = ("first", "headless", "change", "carbonate", "planner", "year", "many", "rounds", "log")
WITHOUT_WINDOW = ("consumption", "jugs", "timetables", "recovery", "exchange")


def on_its_own(module: str, *words: object) -> None:
    """Let a process of its own print what it found, and end as it ends."""
    with tempfile.TemporaryDirectory() as scratch:
        env = environment("offscreen", None, Path(scratch))
        command = [sys.executable, "-m", f"tests.bench.{module}", *(str(word) for word in words)]
        done = subprocess.run(command, cwd=ROOT, env=env, check=False)
    sys.exit(done.returncode)


def groups(chosen: argparse.Namespace, home: Path) -> Iterator[tuple[str, list[Row]]]:
    """Yield the rows that are asked for, each group as soon as it is measured, with the platform it was measured on."""
    without = environment("offscreen", None, home)
    wanted = (*ROWS,) if chosen.only is None else (chosen.only,)
    if not {"first", "change"}.isdisjoint(wanted):
        with displays(chosen.platform) as platforms:
            for platform, display in platforms:
                env = environment(platform, display, home)
                subprocess.run(
                    [sys.executable, "-m", "tests.bench.series", f"{home}/curves.npz"], cwd=ROOT, env=env, check=True
                )
                if "first" in wanted:
                    yield platform, starts.first_paints(chosen.rounds, env)
                for name in SHEETS if "change" in wanted else ():
                    if chosen.sheet in (None, name):
                        yield platform, windows.keys_of(name, chosen.changes, env)
    # Without a window one platform is as good as another.
    if "headless" in wanted:
        yield "-", starts.headless(3 * chosen.rounds, without)
    if "carbonate" in wanted:
        yield "-", others.carbonate(10 * chosen.rounds, without)
    if "planner" in wanted:
        yield "-", others.planner(100 * chosen.rounds, without)
    if "year" in wanted:
        yield "-", others.year(chosen.rounds, without)
    if "many" in wanted:
        yield "-", others.many(chosen.rounds, without)
    if "rounds" in wanted:
        yield "offscreen", others.rounds_sheet(chosen.rounds, home, without)
    if "log" in wanted:
        yield "-", others.log(3 * chosen.rounds, home, without)


def table(chosen: argparse.Namespace) -> None:
    """Measure and print, a row as soon as it is known; at the end what was missed, once more."""
    missed = []
    print(head())
    with tempfile.TemporaryDirectory() as scratch:
        for platform, rows in groups(chosen, Path(scratch)):
            for row in rows:
                print(shown(platform, row), flush=True)
            missed += [(platform, row) for row in rows if row.verdict == "missed"]
    print(f"\n{len(missed)} aims missed{':' if missed else '.'}")
    for platform, row in missed:
        print(shown(platform, row))


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rounds", type=int, default=5, help="starts of each process (default 5)")
    parser.add_argument("--changes", type=int, default=60, help="keys on each sheet (default 60)")
    parser.add_argument("--kills", type=int, default=2000, help="kills of programs at work (default 2000)")
    parser.add_argument("--operations", type=int, default=500, help="of each of two windows (default 500)")
    parser.add_argument("--edits", type=int, default=50_000, help="edits of the long run (default 50000)")
    parser.add_argument("--only", choices=(*ROWS, *OF_ITS_OWN, *WITHOUT_WINDOW))
    parser.add_argument("--sheet", choices=SHEETS, help="the one sheet to press keys on (default all)")
    parser.add_argument("--count", type=int, help="inputs of fuzz (default 1000000), questions (default 100000)")
    parser.add_argument("--seed", default="1", help="which inputs to feed, which questions to ask (default 1)")
    parser.add_argument("--platform", choices=("offscreen", "xcb", "both"), default="offscreen")
    chosen = parser.parse_args()
    of_its_own = {
        "kills": ("kills", "--kills", chosen.kills),
        "fuzz": ("fuzz", "--count", chosen.count or 1_000_000, "--seed", chosen.seed),
        "opinions": ("opinions", "--count", chosen.count or 100_000, "--seed", chosen.seed),
        "two-windows": ("two_windows", "--operations", chosen.operations),
        "long": ("long_run", "--edits", chosen.edits),
        "facility": ("facility", "--entries", chosen.count or 200, "--seed", chosen.seed),
        **{each: (each,) for each in WITHOUT_WINDOW},
    }
    if chosen.only in of_its_own:
        on_its_own(*of_its_own[chosen.only])
    table(chosen)


if __name__ == "__main__":
    main()
