"""H26: an old card on the stand. The plan id changes with the plan, and a misread id is no id.

Check characters after ISO/IEC 7064.
"""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import timedelta
from functools import lru_cache

import pytest

from evenwater.engine.question import CorrectionQuestion
from evenwater.screens import plan_id
from evenwater.screens.answer_json import answered as as_json
from evenwater.screens.dose_card import card
from tests.engine.asking import NOW, answered, read, worked
from tests.engine.generated import drawn

LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"


@lru_cache(maxsize=1)
def _ids() -> tuple[str, ...]:
    return tuple(plan_id.make(read(raw)) for raw, _ in drawn()[0])


def test_H26_every_plan_has_an_id_of_its_own() -> None:
    ids = _ids()
    assert len(set(ids)) == len(ids) == 300
    assert all(plan_id.valid(one) for one in ids)


def test_H26_every_single_wrong_character_is_seen() -> None:
    for one in _ids():
        for place, right in enumerate(one):
            for wrong in LETTERS + "ILOU- ":
                changed = one[:place] + wrong + one[place + 1 :]
                if wrong != right and changed.strip() != one:
                    assert not plan_id.valid(changed), f"{one} and {changed}"


def test_H26_swapped_neighbours_are_seen() -> None:
    seen = swapped = 0
    for one in _ids():
        for place in range(len(one) - 1):
            changed = one[:place] + one[place + 1] + one[place] + one[place + 2 :]
            if changed != one:
                swapped += 1
                seen += not plan_id.valid(changed)
    assert swapped > 1000
    assert seen == swapped


def test_H26_most_other_slips_are_seen() -> None:
    draw = random.Random(26)
    slips: list[str] = []
    for one in _ids():
        body, _, check = one.partition("-")
        a, b = sorted(draw.sample(range(6), 2))
        jumped = list(body)
        jumped[a], jumped[b] = jumped[b], jumped[a]
        slips += [f"{''.join(jumped)}-{check}", f"{''.join(draw.choice(LETTERS) for _ in range(6))}-{check}"]
    wrong = [slip for slip in slips if slip not in _ids()]
    # A random guess is right once in 97.
    assert sum(map(plan_id.valid, wrong)) <= 0.03 * len(wrong)


def test_H26_shortened_lengthened_and_empty_are_no_ids() -> None:
    for one in _ids()[:20]:
        for text in (one[1:], one[:-1], one + "0", "0" + one, one.replace("-", ""), one.replace("-", "--"), ""):
            assert not plan_id.valid(text), text
        assert plan_id.valid(f" {one.lower()} ")


def _changed() -> dict[str, CorrectionQuestion]:
    """Return the worked example with each of its inputs changed, one at a time."""
    raw = {
        "name": worked(system__name="South bay"),
        "volume": worked(system__net_volume="341 L"),
        "volume in the last digit": worked(system__net_volume="340.000000000001 L"),
        "volume known": worked(system__volume_known="measured by filling"),
        "volume uncertainty": worked(system__volume_uncertainty="3 %"),
        "salinity": worked(system__salinity="34"),
        "temperature": worked(system__temperature="26 degC"),
        "ph": worked(system__ph="8.1"),
        "measured": worked(change__measured="6.9 dKH"),
        "unit": worked(change__measured="2.4252367280703315 meq/L"[:16] + " meq/L"),
        "measured at": worked(change__measured_at=NOW - timedelta(hours=1)),
        "measured at, a minute later": worked(change__measured_at=NOW - timedelta(minutes=59)),
        "target": worked(change__target="8.5 dKH"),
        "use": worked(change__daily_use="0.8 dKH per day"),
        "fastest": worked(change__fastest_rise="0.9 dKH per day"),
        "no fastest": worked(change__fastest_rise=None),
        "reason": worked(change__reason="because"),
        "untested": worked(change__untested="0.2 dKH"),
        "raised lately": worked(change__raised_lately="0.2 dKH"),
        "chemical": worked(additive__chemical="sodium carbonate monohydrate"),
        "dissolved": worked(additive__dissolved="107 g"),
        "made up to": worked(additive__made_up_to="1.1 L"),
        "purity": worked(additive__purity="99 %"),
        "flow": worked(pump__flow="25 mL/min"),
        "smallest": worked(pump__smallest_dose="0.1 mL"),
        "step": worked(pump__step="0.1 mL"),
        "share": worked(pump__largest_share="40 %"),
        "doses": worked(pump__doses_per_day="12"),
        "pump": worked(pump__name="left head"),
    }
    out = {what: read(question) for what, question in raw.items()}
    out["now"] = read(worked(), NOW + timedelta(minutes=1))
    base = read(worked())
    # A new edition of the limits makes a new plan.
    out["limits"] = replace(base, parameter=replace(base.parameter, rise_hard=1.3))
    return out


def test_H26_the_id_changes_when_any_input_changes() -> None:
    base = read(worked())
    ids = {"as it was": plan_id.make(base)} | {what: plan_id.make(question) for what, question in _changed().items()}
    assert len(set(ids.values())) == len(ids), sorted(ids.items(), key=lambda item: item[1])


@pytest.mark.parametrize("number", [0, 17, 140])
def test_H26_the_same_plan_has_the_same_id_everywhere(number: int) -> None:
    raw = drawn()[0][number][0]
    first, again = answered(raw), answered(raw)
    one = plan_id.make(first.question)
    assert plan_id.make(again.question) == one
    assert as_json(again)["plan_id"] == one
    printed = card(again, NOW)
    assert printed.plan_id == one
    assert printed.valid_until
    assert "plan id changes" in printed.replace
