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
    counts = dict(zip(("changes", "restored", "turns", "faults"), _figures(done.stdout)[-4:], strict=True))
    assert counts["faults"] == 0
    assert counts["changes"] > 90
    assert counts["restored"] > 0
    assert counts["turns"] > 2, "they must get in each other's way"


def _figures(words: str) -> list[int]:
    return [int(word) for word in words.split() if word.isdigit()]


def test_the_reckoning_sees_a_step_that_was_done_twice_or_not_at_all() -> None:
    lines = [["edit", "ph", "8.1"], ["log", "left 2", 1.0], ["undo", "", None], ["redo", "", None]]
    right, lost, doubled = Model(), Model(), Model()
    for model, steps in ((right, lines), (lost, lines[1:]), (doubled, [lines[0], *lines[:2]])):
        for line in steps:
            model.do(line)
    assert right.state == {"ph": "8.1", "left 2": 1.0}
    assert (lost.state, len(doubled.done)) == ({"left 2": 1.0}, len(right.done) + 1)
