"""The sentences about what is in the water already, and about a plan that is followed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.shown import Shown
from evenwater.screens.terms import term
from evenwater.wording import say

Params = Mapping[str, Any]

OF_VALUES: dict[str, Callable[[Params, Shown], str]] = {
    "untested_counted": lambda p, s: say(
        "Since the reading {untested} was dosed that no test has shown. It is counted: the ramp starts at {start}. A new test would make it surer.",
        untested=s.rise(p["untested"]),
        start=s.value(p["start"]),
    ),
    "untested_reaches": lambda p, s: say(
        "Since the reading {untested} was dosed that no test has shown, which may reach {target} already. Test {parameter} again before more is planned.",
        untested=s.rise(p["untested"]),
        target=s.value(p["target"]),
        parameter=term(p["parameter"]),
    ),
    "untested_unknown": lambda p, s: say(
        "The net volume is not known, so nobody can say what was raised since the reading. Test {parameter} again before more is planned.",
        parameter=term(p["parameter"]),
    ),
    "given_lately_forbids": lambda p, s: say(
        "{given} was given already that counts in the same 24 hours, of {hard} at the most. Wait a day, then test again.",
        given=s.rise(p["given"]),
        hard=s.rise(p["hard"]),
    ),
}
