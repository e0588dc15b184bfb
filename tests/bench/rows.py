"""What the rows of the table have in common: the measured processes, what they see, percentiles, and how a row is written."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
START = "EVENWATER_BENCH_START"
NAME_WIDTH = 58


@dataclass(frozen=True)
class Row:
    """One comparison: the product's figures and the floor's.

    ``aim`` is the most that the ratio of the 95th percentiles may be, ``most`` the most that the product's own may be [unit];
    None of both: for information. Where there is no floor, its figures are empty.
    """

    name: str
    unit: str
    product: list[float]
    floor: list[float]
    aim: float | None = None
    most: float | None = None

    @property
    def ratio(self) -> float | None:
        """The ratio of the 95th percentiles."""
        return percentile(self.product, 0.95) / percentile(self.floor, 0.95) if self.floor else None

    @property
    def verdict(self) -> str:
        """Whether every aim of the row was met; a dash where it has none."""
        if self.aim is None and self.most is None:
            return "-"
        ratio = self.ratio
        missed = self.aim is not None and (ratio is None or ratio > self.aim)
        missed = missed or (self.most is not None and percentile(self.product, 0.95) > self.most)
        return "missed" if missed else "met"


def percentile(values: list[float], share: float) -> float:
    """Return the value below which a share of the values lies, interpolated."""
    ordered = sorted(values)
    place = share * (len(ordered) - 1)
    low = int(place)
    high = min(low + 1, len(ordered) - 1)
    return ordered[low] + (ordered[high] - ordered[low]) * (place - low)


def head() -> str:
    """Return the two lines above the rows."""
    three = f"{'p50':>8}{'p95':>8}{'p99':>8}"
    blank = " " * (NAME_WIDTH + 14)
    return (
        f"{blank}{'product':>24} |{'floor':>24} |{'ratio':>16}{'aims: ratio, most':>22}\n"
        f"{blank}{three} |{three} |{'p50':>8}{'p95':>8}{'p95':>11}{'p95':>11}"
    )


def shown(platform: str, row: Row) -> str:
    """Write a row."""

    def three(values: list[float]) -> str:
        return "".join(f"{percentile(values, share):8.1f}" if values else f"{'':8}" for share in (0.5, 0.95, 0.99))

    ratios, aim = f"{'':16}", f"{'-':>11}"
    if row.floor:
        of = [percentile(row.product, share) / percentile(row.floor, share) for share in (0.5, 0.95)]
        digits = 5 if of[0] < 0.1 else 2
        ratios = "".join(f"{ratio:8.{digits}f}" for ratio in of)
        aim = f"{row.aim:11.{3 if row.aim < 0.1 else 2}f}" if row.aim else aim
    most = f"{row.most:11.1f}" if row.most else f"{'-':>11}"
    figures = f"{three(row.product)} |{three(row.floor)} |{ratios}{aim}{most}"
    return f"{row.name:<{NAME_WIDTH}}{platform:<10}{row.unit:<4}{figures}  {row.verdict}"


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
    if only in (None, "offscreen") or shutil.which("Xvfb") is None:
        yield platforms
        return
    screen = ["Xvfb", "-displayfd", "1", "-screen", "0", "1366x768x24", "-nolisten", "tcp"]
    with subprocess.Popen(screen, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True) as server:
        assert server.stdout is not None
        try:
            yield [*platforms, ("xcb", f":{server.stdout.readline().strip()}")]
        finally:
            server.terminate()
