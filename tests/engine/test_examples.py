"""The examples for a notebook run as they stand, and say what they said when they were written."""

from __future__ import annotations

import runpy
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

EXAMPLES = sorted((Path(__file__).resolve().parents[2] / "packaging" / "examples").glob("*.py"))
SAYS = {
    "carbonate.py": ("log10 K1     -5.8472 published    -5.8472", "3.40 meq/kg: pH 8.168"),
    "correction.py": (
        "4.7 mL every 1 h, 39 times: 183.3 mL in all",
        "daily_rise sets the pace of alkalinity",
        "target_outside",
    ),
    "ramp_and_volume.py": ("280 L: 9.05 dKH at the end", "340 L: 8.40 dKH at the end"),
    "upkeep_year.py": ("leave 2254 g of sodium chloride", "the engine says 2254 g"),
}


def test_every_example_is_held_to_its_words():
    assert {file.name for file in EXAMPLES} == set(SAYS)


@pytest.mark.parametrize("file", EXAMPLES, ids=lambda file: file.name)
def test_an_example_runs_and_says_what_it_said(file: Path, capsys: pytest.CaptureFixture[str]):
    found = runpy.run_path(str(file))
    said = capsys.readouterr().out
    assert not [words for words in SAYS[file.name] if words not in said], said
    if "picture" in found:
        drawn = ET.fromstring(found["picture"])  # noqa: S314  (made one line above)
        assert len(drawn) == 10
    text = file.read_text(encoding="utf-8")
    assert text.startswith("# %% [markdown]\n# # "), "a notebook begins with its title"
    assert text.count("# %%") >= 4
