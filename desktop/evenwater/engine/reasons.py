"""Why something was refused, limited or remarked on: a code and its figures, never prose.

The words belong to ``evenwater.screens.words``; the engine only names what happened.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType


@dataclass(frozen=True)
class Reason:
    """One reason.

    ``code`` is a stable name, ``params`` the figures that the sentence needs (canonical units,
    named with their unit), ``path`` the field of the question it is about, such as
    ``"change.measured"``, or empty when it concerns the whole question.
    """

    code: str
    params: Mapping[str, object] = field(default_factory=dict)
    path: str = ""

    def __post_init__(self) -> None:
        object.__setattr__(self, "params", MappingProxyType(dict(self.params)))
