"""Changes the engine in small ways, one at a time, and says which changes no test notices.

    pip install --target TOOLS mutmut
    python packaging/mutants.py --tools TOOLS --folder COPY --sample 1000

The changes are mutmut's (``mutant_making.py``), some 40,000; the first ``--sample`` of them are tried, in an order that only their names and
``--seed`` decide, so that a longer sample goes on with a shorter one. Everything happens in a copy of this tree, ``--folder``, made when
it is not there; what was learned and tried is kept in it, and a second run tries only what is new (``--again``: also what survived and was not judged).
New tests are to be copied into it by hand: it stays as it was, so that a test can fail there only for the change.

First the tests without a window run once under coverage.py, to learn which of them meet which line and how long each takes. Then one process
collects all tests and forks for every change: the child puts the changed code in the place of the function's, and runs the tests that meet
the changed line, fast ones first, until one fails. Code that ran while the modules loaded is tried in a child that loads them anew.
A change that no test meets counts as not noticed. What survived and was looked at stands in ``tests/mutants/survivors.toml``.
"""

from __future__ import annotations

import argparse
import hashlib
import json
import math
import os
import shutil
import sys
import time
import tomllib
from collections import defaultdict
from dataclasses import replace
from pathlib import Path
from typing import Any

# One process uses one core; the libraries ask for this while they load.
os.environ["OPENBLAS_NUM_THREADS"] = "1"

import pytest
from mutant_tests import ENGINE, TESTS, Learned, modules_of, sum_of, tests_of
from mutant_trial import ARGUMENTS, Collected, Trial, apart, reloaded

_ROOT = Path(__file__).resolve().parents[1]
_JUDGED = _ROOT / "tests/mutants/survivors.toml"
# Nobody noticed where only the code was exchanged; what tests hold since they were collected may still show it.
_UNSURE = "survived so far"
# Judgements of a change that nobody could notice in what the engine answers.
_HARMLESS = ("same result", "message of a programming error", "speed only")


def main() -> int:
    """Try a sample and print what survived; returns 1 when fewer than nine tenths were noticed."""
    options = _options()
    sys.path.append(str(Path(options.tools).resolve()))
    folder = Path(options.folder).resolve()
    if not folder.is_dir():
        ignored = shutil.ignore_patterns(".git", ".venv", "__pycache__", ".*_cache", "*.egg-info")
        shutil.copytree(_ROOT, folder, ignore=ignored)
    os.chdir(folder)
    sys.path[:0] = [str(folder / "desktop"), str(folder)]
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    _preload()
    if not options.report:
        learned = Learned(folder)
        learned.bring_up_to_date(folder)
        chosen, of = _chosen(options, folder)
        _try(folder, learned, chosen, options)
    else:
        chosen, of = _chosen(options, folder)
    return _report(folder, chosen, of)


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--tools", required=True, help="the folder mutmut is installed in")
    parser.add_argument("--folder", required=True, help="where the copy stands, with what was learned and tried so far")
    parser.add_argument("--sample", type=int, default=1000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", default="", help="only changes whose name begins so: jug, jug.reckon, jug.reckon:3")
    parser.add_argument("--again", action="store_true", help="try once more what survived and was not judged")
    parser.add_argument("--budget", type=float, default=12.0, help="seconds of tests for one change")
    parser.add_argument("--report", action="store_true", help="try nothing, say what was found")
    return parser.parse_args()


def _preload() -> None:
    """Load what is heavy and not ours, so that no child has to."""
    for name in ("numpy", "scipy.integrate", "scipy.optimize", "hypothesis", "pint", "periodictable", "gsw", "peewee"):
        __import__(name)


def _names(folder: Path) -> list[str]:
    """Return every change there is; kept in the folder, made anew for modules that changed."""
    from mutant_making import changes  # noqa: PLC0415  (mutmut stands in a folder that is only named at the start)

    file = folder / "changes.json"
    kept: dict[str, Any] = json.loads(file.read_text(encoding="utf-8")) if file.is_file() else {}
    names = []
    for module, path in modules_of(folder).items():
        if kept.get(module, {}).get("sum") != sum_of(path):
            kept[module] = {"sum": sum_of(path), "names": [change.name for change in changes(path)]}
        names += kept[module]["names"]
    file.write_text(json.dumps(kept), encoding="utf-8")
    return names


def _chosen(options: argparse.Namespace, folder: Path) -> tuple[list[str], int]:
    """Return the sample, and how many changes there are to choose from."""
    names = [name for name in _names(folder) if name.startswith(options.only)]
    order = sorted(names, key=lambda name: hashlib.sha256(f"{options.seed} {name}".encode()).digest())
    return order[: options.sample], len(names)


class Results:
    """What came of every change tried, a line each; what was found of another text of its module counts no more."""

    def __init__(self, folder: Path) -> None:
        self.file = folder / "results.jsonl"
        self.sums = {name: sum_of(path) for name, path in modules_of(folder).items()}
        lines = self.file.read_text(encoding="utf-8").splitlines() if self.file.is_file() else []
        rows = [json.loads(line) for line in lines]
        self.rows = {row["name"]: row for row in rows if row["sum"] == self.sums.get(row["name"].split(".")[0])}

    def add(self, row: dict[str, Any]) -> None:
        """Keep one, at once on the disk."""
        self.rows[row["name"]] = row
        with self.file.open("a", encoding="utf-8") as file:
            file.write(json.dumps(row, ensure_ascii=False) + "\n")


def _try(folder: Path, learned: Learned, names: list[str], options: argparse.Namespace) -> None:
    """Try what was not tried yet, first where a function's code can be exchanged, then what takes loading everything anew."""
    results = Results(folder)
    judged, left = _judged(), []
    for name in names:
        row = results.rows.get(name)
        if (
            row is None
            or row["outcome"] in {"unable", _UNSURE}
            or (options.again and row["outcome"] in {"survived", "no test"} and _key(row) not in judged)
        ):
            left.append(name)
    trials = _trials(folder, learned, results, left, options.budget)
    ordered = [trials[name] for name in left if name in trials]

    def record(trial: Trial, outcome: str, by: str, seconds: float) -> None:
        if outcome == "survived" and trial.loads and trial.inside:
            outcome = _UNSURE
        results.add({**trial.about, "outcome": outcome, "by": by, "seconds": round(seconds, 2)})
        if outcome == "survived":
            said = (
                f"survived {len(trial.tests)} tests: {trial.name}\n  - {trial.about['was']}\n  + {trial.about['now']}"
            )
            print(said, flush=True)

    unsure = {name for name, row in results.rows.items() if row["outcome"] == _UNSURE}
    inside = [trial for trial in ordered if trial.inside and trial.name not in unsure]
    if ordered:
        # What is not changed must pass, or everything would seem noticed.
        plain = (folder / ENGINE / f"{ordered[0].name.split('.')[0]}.py").read_text(encoding="utf-8")
        outcome, by = reloaded(replace(ordered[0], source=plain))
        if outcome != "survived":
            raise SystemExit(f"the tests fail where nothing is changed: {by}")
    print(f"{len(inside)} changes within functions, {len(ordered) - len(inside)} outside", flush=True)
    if inside:
        arguments = [*ARGUMENTS, *tests_of(folder, TESTS)]
        apart(lambda: pytest.main(arguments, plugins=[Collected(inside, record)]))
    results = Results(folder)
    for trial in ordered:
        if trial.inside and results.rows[trial.name]["outcome"] != _UNSURE:
            continue
        start = time.monotonic()
        outcome, by = reloaded(trial)
        record(replace(trial, inside=False), outcome, by, time.monotonic() - start)


def _trials(folder: Path, learned: Learned, results: Results, left: list[str], budget: float) -> dict[str, Trial]:
    """Make the changes that are to be tried; those that no test meets are entered at once."""
    from mutant_making import changes, difference  # noqa: PLC0415

    trials: dict[str, Trial] = {}
    modules = modules_of(folder)
    file = folder / "made.json"
    made: dict[str, Any] = json.loads(file.read_text(encoding="utf-8")) if file.is_file() else {}
    for module in sorted(
        {name.split(".")[0] for name in left if made.get(name, {}).get("sum") != results.sums[name.split(".")[0]]}
    ):
        before = modules[module].read_text(encoding="utf-8")
        for change in changes(modules[module]):
            if change.name in left:
                after = change.source()
                was, now = difference(before, after)
                about = {
                    "name": change.name,
                    "sum": results.sums[module],
                    "line": change.lines[0],
                    "was": was,
                    "now": now,
                }
                made[change.name] = {
                    "sum": about["sum"],
                    "about": about,
                    "lines": change.lines,
                    "inside": change.inside,
                    "after": after,
                }
    file.write_text(json.dumps(made), encoding="utf-8")
    for name in left:
        one = made[name]
        module, lines = name.split(".")[0], (one["lines"][0], one["lines"][1])
        loads = not one["inside"] or learned.loads(module, lines)
        tests, seconds = learned.tests(module, lines, budget, loads=loads)
        about = {**one["about"], "tests": len(tests)}
        if tests:
            trials[name] = Trial(name, one["after"], tests, seconds, one["inside"], loads, about)
        else:
            results.add({**about, "outcome": "no test", "by": "", "seconds": 0.0})
    return trials


def _judged() -> dict[tuple[str, str, str], str]:
    """Return what was judged of changes that survived, by function and the lines that differ."""
    entries = tomllib.loads(_JUDGED.read_text(encoding="utf-8"))["survivor"]
    return {_key(entry): entry["judgement"] for entry in entries}


def _key(row: dict[str, Any]) -> tuple[str, str, str]:
    return row["name"].rpartition(":")[0], row["was"], row["now"]


def _report(folder: Path, names: list[str], of: int) -> int:
    """Say what share was noticed, in all and by module, and what was not with how it was judged."""
    results = Results(folder)
    rows = [results.rows[name] for name in names if name in results.rows]
    judged = _judged()
    by_module: dict[str, list[bool]] = defaultdict(list)
    harmless = 0
    for row in rows:
        noticed = row["outcome"] == "killed"
        by_module[row["name"].split(".")[0]].append(noticed)
        if noticed:
            continue
        judgement = judged.get(_key(row), "not judged")
        harmless += judgement in _HARMLESS
        print(
            f"{row['outcome']} ({row['tests']} tests; {judgement}): {row['name']}\n  - {row['was']}\n  + {row['now']}"
        )
    for module, noticed in sorted(by_module.items(), key=lambda pair: sum(pair[1]) / len(pair[1])):
        print(f"{module:28} {sum(noticed):4} of {len(noticed):4}  {100 * sum(noticed) / len(noticed):5.1f} %")
    killed = sum(map(sum, by_module.values()))
    low, high = wilson(killed, len(rows))
    print(f"{of} changes are possible, {len(rows)} of {len(names)} chosen were tried, {killed} noticed: ", end="")
    print(f"{100 * killed / max(len(rows), 1):.1f} % (95 % interval {100 * low:.1f} to {100 * high:.1f} %)")
    if harmless:
        share = killed / (len(rows) - harmless)
        print(f"{harmless} change nothing that anybody could notice; without them {100 * share:.1f} %")
    return 0 if killed >= 0.9 * len(rows) else 1


def wilson(found: int, of: int) -> tuple[float, float]:
    """Return the 95 % interval of a share (Wilson 1927, J. Am. Stat. Assoc. 22, 209)."""
    if not of:
        return 0.0, 1.0
    z, share = 1.959964, found / of
    middle = share + z * z / (2 * of)
    half = z * math.sqrt(share * (1 - share) / of + (z / (2 * of)) ** 2)
    return (middle - half) / (1 + z * z / of), (middle + half) / (1 + z * z / of)


if __name__ == "__main__":
    raise SystemExit(main())
