"""Twenty laptops write in one log at once, a few things each, while the server and they are killed (`--only facility` does more)."""

from __future__ import annotations

import re
import subprocess
import sys
from pathlib import Path

import pytest

from tests.postgres import why_not

ROOT = Path(__file__).resolve().parents[2]


@pytest.mark.skipif(bool(why_not()), reason=why_not())
def test_twenty_writers_lose_and_double_nothing() -> None:
    asked = ["--writers", "20", "--entries", "3", "--kills", "2", "--hasty"]
    words = [sys.executable, "-m", "tests.bench.facility", *asked]
    done = subprocess.run(words, cwd=ROOT, capture_output=True, text=True, timeout=170, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    lines = re.findall(r"^\| ([a-z ]+?) +\| +([\d.]+) \|$", done.stdout, re.MULTILINE)
    found = {name: float(figure) for name, figure in lines}
    assert (found["lost"], found["doubled"], found["torn"]) == (0, 0, 0)
    assert found["told"] >= 20 * 3 - 2
    assert found["server kills"] == 2
