"""Benchmarks against floors, as ratios: `python -m tests.bench` prints one table.

Every row compares a process of the product with the bare window it cannot beat. The two take turns within the same
call, so that whatever else the machine does falls on both; ratios hold across machines, milliseconds do not.

The carbonate system and the planner have no window: there the second column is PyCO2SYS with the same states, and the
planner that knows less of pH. A log of 2,000,000 entries is held against one of 2,000 with answers as long. `kills` is no
race: it pulls the plug on programs at work so many times and ends with an error when anything said to be saved is lost, doubled or torn.
`two-windows` lets two programs work in one log at once, `long` works in the real window for the equivalent of a day: an error as well.
`consumption` and `jugs` are none either: they say how well the use is learned from the logs of 1,000 simulated tanks, and how often the
jug check names the right cause. `timetables` plans 10,000 of them and ends with an error when one does not hold, `recovery` lives through
what is proposed after 5,000 overdoses and ends with an error when a limit is passed, `exchange` holds 1,000 exchanges against an integrator.
`fuzz` feeds a million broken numbers, files and logs, and ends with an error when one of them breaks something.

    python -m tests.bench [--rounds N] [--changes N] [--kills N] [--platform offscreen|xcb]
        [--only first|change|carbonate|planner|log|rounds|kills|consumption|jugs|timetables|recovery|exchange|fuzz|two-windows|long]
        [--count N] [--seed S] [--operations N] [--edits N]
"""

from __future__ import annotations

import argparse
import json
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
START = "EVENWATER_BENCH_START"
# Processes of their own that print what they found.
OF_ITS_OWN = ("kills", "fuzz", "two-windows", "long")
WITHOUT_WINDOW = ("consumption", "jugs", "timetables", "recovery", "exchange")


@dataclass(frozen=True)
class Row:
    """One comparison: the product's figures and the floor's, and the ratio aimed at (None: for information)."""

    name: str
    unit: str
    product: list[float]
    floor: list[float]
    aim: float | None = None


def environment(platform: str, display: str | None, home: Path) -> dict[str, str]:
    """Return what a measured process sees: an empty home, this checkout, and compiled modules kept between rounds."""
    strange = ("XDG_", "WAYLAND_", "QT_", "PYTHON")
    kept = {name: value for name, value in os.environ.items() if not name.startswith(strange)}
    kept |= {"QT_QPA_PLATFORM": platform, "HOME": str(home), "PYTHONPATH": f"{ROOT / 'desktop'}{os.pathsep}{ROOT}"}
    kept |= {"PYTHONPYCACHEPREFIX": str(home / "compiled")}
    return kept | ({"DISPLAY": display} if display else {})


def measure(module: str, *words: object, env: dict[str, str], timeout_s: float = 300) -> dict[str, object]:
    """Run one measured process and return what it hands back."""
    command = [sys.executable, "-m", f"tests.bench.{module}", *(str(word) for word in words)]
    started = env | {START: repr(time.monotonic())}
    done = subprocess.run(
        command, cwd=ROOT, env=started, capture_output=True, text=True, timeout=timeout_s, check=False
    )
    if done.returncode != 0 or not done.stdout.strip():
        sys.exit(f"{module} failed with status {done.returncode}:\n{done.stdout}{done.stderr}")
    return json.loads(done.stdout.strip().splitlines()[-1])


@contextmanager
def displays(only: str | None) -> Iterator[list[tuple[str, str | None]]]:
    """Yield the platforms to measure on, with a virtual display of our own for X."""
    platforms: list[tuple[str, str | None]] = [] if only == "xcb" else [("offscreen", None)]
    if only == "offscreen" or shutil.which("Xvfb") is None:
        yield platforms
        return
    screen = ["Xvfb", "-displayfd", "1", "-screen", "0", "1366x768x24", "-nolisten", "tcp"]
    with subprocess.Popen(screen, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True) as server:
        assert server.stdout is not None
        try:
            yield [*platforms, ("xcb", f":{server.stdout.readline().strip()}")]
        finally:
            server.terminate()


def first_paints(rounds: int, env: dict[str, str]) -> list[Row]:
    """Compare start-up: the product's window and its chart with a bare window and a bare chart."""
    product: dict[str, list[float]] = {"first_paint": [], "first_chart": [], "memory": []}
    bare: dict[str, list[float]] = {"first_paint": [], "memory": []}
    chart: dict[str, list[float]] = {"first_paint": [], "memory": []}
    curves = Path(env["HOME"]) / "curves.npz"
    for _ in range(rounds + 1):  # the first round warms the disk's cache and is dropped
        for kept, figures in (
            (bare, measure("floor_window", env=env)),
            (product, measure("product_window", env=env)),
            (chart, measure("floor_chart", curves, 0, 420, env=env)),
        ):
            for name, values in kept.items():
                values.append(float(figures[name]))  # type: ignore[arg-type]
    for kept in (product, bare, chart):
        for values in kept.values():
            del values[0]
    return [
        Row("first paint / bare PySide6 window", "ms", product["first_paint"], bare["first_paint"], 1.3),
        Row("first chart / bare PySide6 window", "ms", product["first_chart"], bare["first_paint"]),
        Row("first chart / bare pyqtgraph window", "ms", product["first_chart"], chart["first_paint"]),
        Row("memory with chart / bare PySide6 window", "MiB", product["memory"], bare["memory"]),
        Row("memory with chart / bare pyqtgraph window", "MiB", product["memory"], chart["memory"]),
    ]


def changes(rounds: int, times: int, env: dict[str, str]) -> list[Row]:
    """Compare one keystroke, until the whole sheet is painted, with feeding and painting a bare chart."""
    product: list[float] = []
    floor: list[float] = []
    after = {"product": [0.0], "floor": [0.0]}
    curves = Path(env["HOME"]) / "curves.npz"
    for _ in range(rounds):
        whole = measure("product_change", times, env=env)
        bare = measure("floor_chart", curves, times, int(whole["chart_height"]), env=env)  # type: ignore[call-overload]
        product += whole["changes"]  # type: ignore[arg-type, operator]
        floor += bare["changes"]  # type: ignore[arg-type, operator]
        after["product"].append(float(whole["memory"]))  # type: ignore[arg-type]
        after["floor"].append(float(bare["memory"]))  # type: ignore[arg-type]
    return [
        Row("change to painted / bare pyqtgraph window", "ms", product, floor, 1.5),
        Row(f"memory after {times} changes / the same", "MiB", after["product"][1:], after["floor"][1:]),
    ]


def carbonate(times: int, env: dict[str, str]) -> list[Row]:
    """Compare a ramp of 1,000 states with the same states by PyCO2SYS; the aim is a fiftieth of its time."""
    taken: dict[str, list[float]] = measure("product_carbonate", times, env=env)  # type: ignore[assignment]
    pairs = (("1,000 states from DIC / PyCO2SYS", "dic"), ("1,000 states from pCO2 / PyCO2SYS", "pco2"))
    return [Row(name, "ms", taken[f"product_{key}"], taken[f"reference_{key}"], 0.02) for name, key in pairs]


def planner(times: int, env: dict[str, str]) -> list[Row]:
    """Compare the planner that minds pH and saturation with itself, not told a pH, and minding neither."""
    taken: dict[str, list[float]] = measure("product_planner", times, env=env)  # type: ignore[assignment]
    pairs = (("plan with pH / pH not measured", "without_ph"), ("plan with pH / pH not reckoned", "not_reckoned"))
    return [Row(name, "us", taken["with_ph"], taken[key]) for name, key in pairs]


def log(rounds: int, scratch: Path, env: dict[str, str]) -> list[Row]:
    """Compare a log of 2,000,000 entries with one of 2,000, for answers of the same length."""
    taken: dict[str, list[float]] = measure("product_log", scratch, rounds, env=env, timeout_s=1800)  # type: ignore[assignment]
    pairs = (
        ("2,000,000 entries / 2,000: opening", "open", 1.5),
        ("newest reading of all systems", "latest", 1.5),
        ("columns of one system", "columns", 1.5),
        ("newest 50 entries of one system", "newest", 1.5),
        ("newest of all, just opened", "latest_first", None),
        ("columns, just opened", "columns_first", None),
        ("newest 50, just opened", "newest_first", None),
        ("a dose logged", "log", None),
        ("first opening of a day", "first", None),
        ("closing it, with the copy made", "copied", None),
        ("100,000 entries imported", "import", None),
        ("the same again", "again", None),
        ("that undone", "undo", None),
    )
    return [Row(name, "ms", taken[f"many_{key}"], taken[f"few_{key}"], aim) for name, key, aim in pairs]


def rounds_sheet(times: int, scratch: Path, env: dict[str, str]) -> list[Row]:
    """Compare the Rounds sheet of a room of 500 systems with that of one of five."""
    taken: dict[str, list[float]] = measure("product_rounds", scratch, times, env=env)  # type: ignore[assignment]
    pairs = (
        ("Rounds of 500 systems / of 5: opened", "open", 1.5),
        ("opened again", "again", 1.5),
        ("until all of the room is known", "all", None),
        ("longest the window is held meanwhile", "held", None),
    )
    return [Row(name, "ms", taken[f"many_{key}"], taken[f"few_{key}"], aim) for name, key, aim in pairs]


def on_its_own(module: str, *words: object) -> None:
    """Let a process of its own print what it found, and end as it ends."""
    with tempfile.TemporaryDirectory() as scratch:
        env = environment("offscreen", None, Path(scratch))
        command = [sys.executable, "-m", f"tests.bench.{module}", *(str(word) for word in words)]
        done = subprocess.run(command, cwd=ROOT, env=env, check=False)
    sys.exit(done.returncode)


def percentile(values: list[float], share: float) -> float:
    """Return the value below which a share of the values lies, interpolated."""
    ordered = sorted(values)
    place = share * (len(ordered) - 1)
    low = int(place)
    high = min(low + 1, len(ordered) - 1)
    return ordered[low] + (ordered[high] - ordered[low]) * (place - low)


def shown(platform: str, row: Row) -> str:
    def three(values: list[float]) -> str:
        return "".join(f"{percentile(values, share):8.1f}" for share in (0.5, 0.95, 0.99))

    ratio50 = statistics.median(row.product) / statistics.median(row.floor)
    ratio95 = percentile(row.product, 0.95) / percentile(row.floor, 0.95)
    digits = 4 if ratio50 < 0.1 else 2
    ratios = f"{ratio50:7.{digits}f}{ratio95:7.{digits}f}"
    aim = f"{row.aim:6.{digits // 2}f}" if row.aim else "     -"
    return f"{row.name:<44}{platform:<10}{row.unit:<4}{three(row.product)} |{three(row.floor)} |{ratios}{aim}"


def windows(chosen: argparse.Namespace, scratch: str) -> None:
    """Measure what has a window, on each platform, and print it."""
    with displays(chosen.platform) as platforms:
        for platform, display in platforms:
            env = environment(platform, display, Path(scratch))
            subprocess.run(
                [sys.executable, "-m", "tests.bench.series", f"{scratch}/curves.npz"], cwd=ROOT, env=env, check=True
            )
            rows = [] if chosen.only == "change" else first_paints(chosen.rounds, env)
            rows += [] if chosen.only == "first" else changes(3, chosen.changes, env)
            for row in rows:
                print(shown(platform, row), flush=True)


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--rounds", type=int, default=7, help="starts of each process (default 7)")
    parser.add_argument("--changes", type=int, default=200, help="changes in each of three processes (default 200)")
    parser.add_argument("--kills", type=int, default=2000, help="kills of programs at work (default 2000)")
    parser.add_argument("--operations", type=int, default=500, help="of each of two windows (default 500)")
    parser.add_argument("--edits", type=int, default=50_000, help="edits of the long run (default 50000)")
    parser.add_argument(
        "--only", choices=("first", "change", "carbonate", "planner", "log", "rounds", *OF_ITS_OWN, *WITHOUT_WINDOW)
    )
    parser.add_argument("--count", type=int, default=1_000_000, help="inputs to feed with fuzz (default 1000000)")
    parser.add_argument("--seed", default="1", help="which inputs to feed with fuzz (default 1)")
    parser.add_argument("--platform", choices=("offscreen", "xcb"))
    chosen = parser.parse_args()
    of_its_own = {
        "kills": ("kills", "--kills", chosen.kills),
        "fuzz": ("fuzz", "--count", chosen.count, "--seed", chosen.seed),
        "two-windows": ("two_windows", "--operations", chosen.operations),
        "long": ("long_run", "--edits", chosen.edits),
        **{each: (each,) for each in WITHOUT_WINDOW},
    }
    if chosen.only in of_its_own:
        on_its_own(*of_its_own[chosen.only])
    print(f"{'':58}{'product':>24} |{'floor':>24} |{'ratio':>14}   aim")
    print(f"{'':58}{'p50':>8}{'p95':>8}{'p99':>8} |{'p50':>8}{'p95':>8}{'p99':>8} |{'p50':>7}{'p95':>7}")
    with tempfile.TemporaryDirectory() as scratch:
        if chosen.only in {None, "carbonate", "planner"}:
            # Without a window one platform is as good as another.
            env = environment("offscreen", None, Path(scratch))
            rows = [] if chosen.only == "planner" else carbonate(10 * chosen.rounds, env)
            rows += [] if chosen.only == "carbonate" else planner(100 * chosen.rounds, env)
            for row in rows:
                print(shown("-", row), flush=True)
        if chosen.only in {None, "log"}:
            for row in log(3 * chosen.rounds, Path(scratch), environment("offscreen", None, Path(scratch))):
                print(shown("-", row), flush=True)
        if chosen.only in {None, "rounds"}:
            for row in rounds_sheet(chosen.rounds, Path(scratch), environment("offscreen", None, Path(scratch))):
                print(shown("offscreen", row), flush=True)
        if chosen.only in {None, "first", "change"}:
            windows(chosen, scratch)


if __name__ == "__main__":
    main()
