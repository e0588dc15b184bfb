"""Watches every reason that the engine gives while a test runs: it leads to a field that a question has, and it can be said."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from typing import Any

import pytest

from evenwater.assets import resources
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason
from evenwater.question_tables import CALIBRATION_ROWS, CORRECTION
from evenwater.screens import words
from evenwater.screens.shown import Shown
from tests.engine.asking import known

_SHOWN = Shown(known().parameters["alkalinity"], "dKH", Water())

# What the sheet of foods asks; there is no question file for it.
_FOODS = (
    "food", "per_day", "nitrogen", "phosphorus", "phosphorus_share", "protein", "density", "label", "parameter", "dose", "water",
    "raises",
)  # fmt: skip
# What is said of the plan or the answer as a whole, or of a value that no row keeps, and leads to no field; everything else must.
_WHOLE = """
age_unknown beyond_recommended bottle_like_hydroxide calcium_assumed calibrations_scatter check_disagrees
constants_extrapolated dose_tiny drift_needs_two drift_same_hours drift_unclear drift_unusable evaporation_unknown
exchange_brings_too_much exchange_disagrees flat_readings food_never_settles food_phosphorus_unsaid food_rise_fast
food_settles_high food_too_much jug_too_small limewater low_end_volume made_in_the_tank may_precipitate nearly_saturated
no_use nothing_fits ph_above_afterwards ph_assumed raises_too ratio_another_sink ratio_departs ratio_precipitation
ratio_unknown ratio_wrong_test recovery_also_too_high recovery_check_disagrees recovery_nothing_proposed
recovery_precipitation_likely recovery_too_long restricted rise_not_seen rises_by_itself rounding_large short_doses_differ
target_above_range timetable_disagrees together_disagrees together_falls_too_fast together_leaves_hard
together_leaves_hard_later together_leaves_usual together_one_rises_too_fast together_overshoots together_raised_by_both
together_rises_too_fast together_used_up untested_counted upkeep_beside_correction upkeep_covered upkeep_daily_rise upkeep_keep_apart
upkeep_no_doses upkeep_partner_falls upkeep_ph_assumed upkeep_ph_rise upkeep_ratio upkeep_saturation upkeep_single_dose upkeep_too_small
use_changed use_is_old use_unclear value_jumped water_assumed whole_jug_harms
"""
WHOLE = frozenset(_WHOLE.split())
# A caps' own word for a pace that is kept, never a refusal.
_NEVER_REFUSED = "daily_rise"
_READER = "evenwater.engine.reader"


def _of_questions() -> frozenset[str]:
    """Return the name of every table and field that some example question shows, or that may be asked beside them."""
    text = "".join(file.read_text(encoding="utf-8") for file in (resources() / "questions").glob("*.toml"))
    heads = re.findall(r"(?m)^#? ?\[\[?([a-z_.]+)\]", text)
    fields = re.findall(r"(?m)(?:^#? ?|[{,] ?)([a-z_]+) *=", text)
    shown = {part for head in heads for part in head.split(".")} | set(fields)
    beside = CORRECTION["change"].keys() | CALIBRATION_ROWS["run"].keys() | {"volume_known"}
    return frozenset(shown | set(_FOODS) | beside) | known().parameters.keys()


NAMES = _of_questions()
_SEEN: set[tuple[Any, ...]] = set()


@pytest.fixture(autouse=True)
def reasons_lead_somewhere(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """Hold each sort of reason (code, field and names of its figures) that a test is the first to bring about."""
    made = Reason.__post_init__
    new: dict[tuple[Any, ...], Reason] = {}

    def noted(self: Reason) -> None:
        made(self)
        sort = (self.code, self.path, *self.params)
        # Below this stands the dataclass's own __init__, and below that who made it: tests make reasons of their own.
        maker = sys._getframe(2).f_globals["__name__"]
        # The reader is also asked for what is in no question: cells of a spreadsheet, fields of the log.
        asked = maker != _READER or (self.path and not self.path.startswith("log."))
        if sort not in _SEEN and maker.startswith("evenwater.engine.") and asked:
            new[sort] = self

    monkeypatch.setattr(Reason, "__post_init__", noted)
    yield
    _SEEN.update(new)
    for reason in tuple(new.values()):
        assert reason.path or reason.code in WHOLE, f"{reason} leads nowhere"
        for name in filter(None, reason.path.split(".")):
            assert name.isdecimal() or name in NAMES, f"{reason} leads to no field"
        if reason.code == _NEVER_REFUSED:
            continue
        code = reason.code if words.known(reason.code) else f"{reason.code}_forbids"
        assert words.known(code), f"{reason} has no sentence"
        assert words.sentence(Reason(code, reason.params, reason.path), _SHOWN), f"{reason} says nothing"
