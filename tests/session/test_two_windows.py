"""Two windows on one log for a moment; `python -m tests.bench --only two-windows` lets them work for longer."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.bench.two_windows import Model

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.skipif(os.name != "posix", reason="programs are started from a server, which is a matter of POSIX")
def test_H14_two_windows_that_edit_undo_and_restore_at_once_lose_and_double_nothing() -> None:
    words = [sys.executable, "-m", "tests.bench.two_windows", "--operations", "60", "--seeds", "1"]
    done = subprocess.run(words, cwd=ROOT, capture_output=True, text=True, timeout=170, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    *_, changes, _restored, turns, faults = _figures(done.stdout)
    assert faults == 0
    assert changes > 90
    assert turns > 1, "they must get in each other's way"


def _figures(words: str) -> list[int]:
    return [int(word) for word in words.split() if word.isdigit()]


def test_the_reckoning_goes_the_way_of_the_log_and_sees_a_step_too_many_or_too_few() -> None:
    lines = [["edit", "ph", "8.1"], ["log", "left 2", 1.0], ["remove", "left 2", None], ["undo", "", None]]
    right, lost, doubled = Model(), Model(), Model()
    for model, steps in ((right, lines), (lost, lines[1:]), (doubled, [*lines, lines[-1]])):
        for line in steps:
            model.do(line)
    assert right.state == {"ph": "8.1", "left 2": 1.0}
    assert lost.state == {"left 2": 1.0}
    assert doubled.state == {"ph": "8.1", "left 2": None}
    right.do(["redo", "", None])
    right.do(["remove", "left 2", None])
    assert len(right.done) == len(lines) - 1, "what is out is not taken out again"
