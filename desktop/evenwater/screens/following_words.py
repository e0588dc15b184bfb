"""The sentences about what is in the water already, and about a plan that is followed."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import Any

from evenwater.screens.shown import Shown

Params = Mapping[str, Any]

OF_VALUES: dict[str, Callable[[Params, Shown], str]] = {
    "untested_counted": lambda p, s: (
        f"Since the reading {s.rise(p['untested'])} was dosed that no test has shown. It is counted: the ramp starts at {s.value(p['start'])}. "
        "A new test would make it surer."
    ),
    "untested_reaches": lambda p, s: (
        f"Since the reading {s.rise(p['untested'])} was dosed that no test has shown, which may reach {s.value(p['target'])} already. "
        f"Test {p['parameter']} again before more is planned."
    ),
    "untested_unknown": lambda p, s: (
        f"The net volume is not known, so nobody can say what was raised since the reading. Test {p['parameter']} again before more is planned."
    ),
    "given_lately_forbids": lambda p, s: (
        f"{s.rise(p['given'])} was given already that counts in the same 24 hours, of {s.rise(p['hard'])} at the most. Wait a day, then test again."
    ),
}
