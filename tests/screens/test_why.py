"""What is said of each input: every figure is the engine's, every term stands in the glossary, every word can be read."""

from __future__ import annotations

import re
import string
from pathlib import Path

import pytest

from evenwater import wording
from evenwater.engine import intake
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.screens import glossary, why

RESOURCES = Path(__file__).resolve().parents[2] / "resources"
WHYS = why.load(RESOURCES)
TERMS = glossary.load(RESOURCES)
# Long enough for what it is, where to read it off and what stands for it; short enough to be read beside the field.
LONGEST = 48


def _texts() -> dict[str, str]:
    import tomllib

    kinds = tomllib.loads((RESOURCES / why.FILE).read_text(encoding="utf-8"))
    return {f"{kind}.{name}": entry["text"] for kind, fields in kinds.items() for name, entry in fields.items()}


@pytest.mark.parametrize(
    ("asked", "topic"),
    [
        ("/change.measured", "correction.measured"),
        ("/additive.also.dissolved", "batch.also_dissolved"),
        ("/batch.also_dissolved", "batch.also_dissolved"),
        ("/stock", "correction.stock"),
        ("/stock.name", "stock.name"),
        ("/calibration.run_3_reads", "calibration.run_reads"),
        ("water/exchanged", "system.exchanged"),
        ("new_water/nitrate", "water.value"),
        ("new_water/salinity", "water.salinity"),
        ("recovery/change.measured", "recovery.measured"),
        ("recovery/overdose.volume", "recovery.ran_in"),
        ("recovery/hold.calcium", "recovery.hold"),
        ("timetable/calcium.first_at", "timetable.first_at"),
        ("timetable/apart", "timetable.apart"),
    ],
)
def test_an_input_leads_to_its_topic(asked: str, topic: str) -> None:
    assert why.topic_of(asked) == topic
    assert WHYS.of(topic) is not None


def test_what_nobody_wrote_about_is_not_made_up() -> None:
    assert WHYS.of("correction.colour") is None


@pytest.mark.parametrize("topic", WHYS.topics)
def test_terms_stand_in_the_glossary(topic: str) -> None:
    said = WHYS.of(topic)
    assert said is not None
    assert not [term for term in said.terms if TERMS.find(term) is None]
    assert len(said.text.split()) <= LONGEST
    assert said.text.endswith("."), "a sentence"


def test_figures_are_those_of_the_engine_and_all_are_quoted() -> None:
    quoted = {name for text in _texts().values() for _, name, _, _ in string.Formatter().parse(text) if name}
    assert quoted == set(why.figures())
    share = WHYS.of("pump.largest_share")
    assert share is not None
    assert f"Empty: {100 * intake.LARGEST_SHARE:.0f}\u00a0%" in share.text
    known = WHYS.of("system.volume_known")
    assert known is not None
    said = [float(number) for number in re.findall(r"([\d.]+)\u00a0%", known.text)]
    assert said == [
        100 * VOLUME_UNCERTAINTY[name] for name in ("measured by filling", "dose and test", "dimensions", "unknown")
    ]


def test_no_figure_is_written_out_that_could_change() -> None:
    bare = {
        topic: found
        for topic, text in _texts().items()
        if (found := re.findall(r"(?<![{A-Za-z\d.])\d[\d.]*\d|(?<![{A-Za-z\d.])\d", text))
    }
    # The hours of a day, all of a salt, and an example of a pump's step: no figures of the engine.
    assert bare.pop("correction.fastest_rise") == ["24"]
    assert bare.pop("batch.purity") == bare.pop("batch.also_purity") * 2 == ["100", "100"]
    assert bare.pop("pump.step") == ["0.1"]
    assert not bare


def test_texts_are_said_in_the_language_in_force() -> None:
    wording.use(lambda text, _about, _count: f"‹{text}›")
    try:
        said = WHYS.of("pump.doses_per_day")
        assert said is not None
        assert said.text.startswith("‹")
        assert str(intake.DOSES_PER_DAY) in said.text
    finally:
        wording.use(None)
