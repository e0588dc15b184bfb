"""The rows about starting: the first paint, the first chart and what it keeps in memory, and an answer without a window."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path

from evenwater.assets import resources
from tests.bench.rows import ROOT, Row, measure

PAINT_RATIO, CHART_RATIO, MEMORY_RATIO, HEADLESS_RATIO = 1.3, 1.1, 1.3, 1.5


def first_paints(rounds: int, env: dict[str, str]) -> list[Row]:
    """Compare start-up with bare windows: one with a label in it, and one that imports the same libraries and draws the same chart.

    A keeper opens the log of yesterday: that row has the aim. The demonstration makes three years of readings before it shows them.
    """
    home = Path(env["HOME"])
    log, seen = home / "start.evenwater", home / "start.pickle"
    subprocess.run([sys.executable, "-m", "tests.bench.start_log", str(log)], cwd=ROOT, env=env, check=True)
    opened = ("product_window", "--log", log)
    measure(*opened, env=env)  # the first opening of a day makes a copy of the log
    measure(*opened, seen, env=env)
    programs = {
        "window": ("floor_window",),
        "log": opened,
        "chart": ("floor_start", seen),
        "demo": ("product_window", "--demo"),
    }
    taken: dict[str, dict[str, list[float]]] = {name: {} for name in programs}
    for number in range(rounds + 1):  # the first round warms the disk's cache and is dropped
        for name, program in programs.items():
            figures = measure(*program, env=env)
            for kept, figure in figures.items() if number else ():
                if isinstance(figure, float):
                    taken[name].setdefault(kept, []).append(figure)
    product, chart, demo = taken["log"], taken["chart"], taken["demo"]
    window = taken["window"]["first_paint"]
    return [
        Row("first paint / bare PySide6 window", "ms", product["first_paint"], window, PAINT_RATIO),
        Row("first chart / bare, same libraries, same chart", "ms", product["first_chart"], chart["first_chart"], CHART_RATIO),
        Row("first chart of the demo, its 3 years made / the same", "ms", demo["first_chart"], chart["first_chart"]),
        Row("memory with chart / the same", "MiB", product["memory"], chart["memory"], MEMORY_RATIO),
        Row("memory with chart, demo / the same", "MiB", demo["memory"], chart["memory"]),
    ]  # fmt: skip


def headless(rounds: int, env: dict[str, str]) -> list[Row]:
    """Compare an answer without a window, from the command to the end of the process, with a Python that imports numpy."""
    question = resources() / "questions" / "correction.toml"
    answer = ("-m", "evenwater", "answer", str(question))
    commands = {"answer": answer, "numpy": ("-c", "import numpy")}
    wall: dict[str, list[float]] = {name: [] for name in commands}
    worked: dict[str, list[float]] = {name: [] for name in commands}
    for number in range(rounds + 1):
        for name, words in commands.items():
            taken, processor = _process(words, env)
            if number:
                wall[name].append(taken)
                worked[name].append(processor)
    return [
        Row("headless answer / python that imports numpy", "ms", wall["answer"], wall["numpy"], HEADLESS_RATIO),
        Row("the same, processor time", "ms", worked["answer"], worked["numpy"]),
    ]


def _process(words: tuple[str, ...], env: dict[str, str]) -> tuple[float, float]:
    """Return how long a Python with these words took, and how long it worked [ms]."""
    began = time.perf_counter()
    with subprocess.Popen([sys.executable, *words], cwd=ROOT, env=env, stdout=subprocess.DEVNULL) as process:
        _, status, used = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
    if process.returncode != 0:
        sys.exit(f"python {' '.join(words)} ended with status {process.returncode}")
    return (time.perf_counter() - began) * 1000, (used.ru_utime + used.ru_stime) * 1000
