"""The plug is pulled on imports, migrations, backups and printing, a few times; `python -m tests.bench --only kills` does it 2,000 times."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

KILLS = 2
ROOT = Path(__file__).resolve().parents[2]
OF = ("import", "migration", "backup and restore", "damaged log", "printing")


@pytest.mark.skipif(os.name != "posix", reason="the signal that cannot be caught is a matter of POSIX")
def test_nothing_is_lost_doubled_or_torn_when_a_program_is_killed() -> None:
    # A process of its own: it has its own server, which has loaded all that the programs need.
    words = [sys.executable, "-m", "tests.bench.kills", "--kills", f"{KILLS * len(OF)}", "--of", *OF]
    done = subprocess.run(words, cwd=ROOT, capture_output=True, text=True, timeout=170, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    heading, *rows = done.stdout.splitlines()
    assert heading.split()[-4:] == ["lost", "doubled", "unasked", "torn"]
    counts = {name: list(map(int, row.removeprefix(name).split()[:7])) for name, row in zip(OF, rows, strict=True)}
    assert {name: row[0] for name, row in counts.items()} == dict.fromkeys(OF, KILLS)
    assert all(row[3:] == [0, 0, 0, 0] for row in counts.values())
    assert sum(row[1] for row in counts.values()) > 0, "they must be killed in the middle"
