"""One pass over a form or a question file as typed: reads field after field and collects every problem."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import UTC, datetime
from typing import Any

from evenwater.engine.catalogue import Catalogue, Chemical
from evenwater.engine.quantities import Typed, Water, to_canonical
from evenwater.engine.reader import Empty, Field, Ok, read
from evenwater.engine.reasons import Reason
from evenwater.engine.visible import visible

Raw = Mapping[str, Any]

# Plans reach years ahead; a date outside these years is a slip of the keyboard.
_FIRST_YEAR, _LAST_YEAR = 1970, 2200


@dataclass(frozen=True)
class Unread:
    """What stands between the form and a question.

    ``missing`` are fields that are still empty, ``wrong`` fields whose content cannot be taken.
    """

    missing: tuple[Reason, ...]
    wrong: tuple[Reason, ...]

    @property
    def reasons(self) -> tuple[Reason, ...]:
        """All of them, what is wrong first."""
        return self.wrong + self.missing


@dataclass
class Form:
    """Collects every problem of one pass over the form."""

    raw: Raw
    missing: list[Reason] = field(default_factory=list)
    wrong: list[Reason] = field(default_factory=list)

    @property
    def unread(self) -> Unread:
        """What is missing and wrong so far."""
        return Unread(tuple(self.missing), tuple(self.wrong))

    def value(self, path: str) -> Any:
        """Return what stands at a dotted path, or None.

        Parameters
        ----------
        path : str
            Names joined by points.

        Returns
        -------
        Any
            As handed in.
        """
        node: Any = self.raw
        for name in path.split("."):
            if not isinstance(node, Mapping) or name not in node:
                return None
            node = node[name]
        return node

    def text(self, path: str) -> str:
        """Return a plain text, stripped and in one line, for the answer; empty when there is none.

        Parameters
        ----------
        path : str
            Path of the field.

        Returns
        -------
        str
            The text.
        """
        value = self.value(path)
        return visible((value.text if isinstance(value, Typed) else str(value or "")).strip())

    def flag(self, path: str) -> bool:
        """Return whether something is said to be so: ``true`` in a file, "yes" in a form.

        Parameters
        ----------
        path : str
            Path of the field.

        Returns
        -------
        bool
            False where nothing is said.
        """
        return self.text(path).casefold() in {"yes", "true"}

    def number(self, spec: Field, water: Water | None = None) -> float | None:
        """Return a quantity, or None when it is absent or cannot be taken.

        Parameters
        ----------
        spec : Field
            The field.
        water : Water or None
            The water, for figures per kilogram.

        Returns
        -------
        float or None
            The quantity [canonical unit of the field's kind].
        """
        found = self.entered(spec, water)
        return None if found is None else to_canonical(found[0], spec.kind, found[1], water)

    def needed(self, spec: Field, water: Water | None = None) -> float | None:
        """Return a quantity as ``number`` does, and note it as missing when the field is empty.

        Parameters
        ----------
        spec : Field
            The field.
        water : Water or None
            The water, for figures per kilogram.

        Returns
        -------
        float or None
            The quantity [canonical unit of the field's kind].
        """
        found = self.entered_needed(spec, water)
        return None if found is None else to_canonical(found[0], spec.kind, found[1], water)

    def entered_needed(self, spec: Field, water: Water | None = None) -> tuple[float, str] | None:
        """Return what ``entered`` does, and note the field as missing when it is empty.

        Parameters
        ----------
        spec : Field
            The field.
        water : Water or None
            The water, for figures per kilogram.

        Returns
        -------
        tuple of (float, str) or None
            Figure [unit as entered] and the unit's id.
        """
        before = len(self.wrong)
        found = self.entered(spec, water)
        if found is None and len(self.wrong) == before:
            self.missing.append(Reason("missing", {"path": spec.path}, spec.path))
        return found

    def entered(self, spec: Field, water: Water | None = None) -> tuple[float, str] | None:
        """Return a quantity as it was entered, or None when it is absent or cannot be taken.

        Parameters
        ----------
        spec : Field
            The field.
        water : Water or None
            The water, for figures per kilogram.

        Returns
        -------
        tuple of (float, str) or None
            Figure [unit as entered] and the unit's id.
        """
        value = self.value(spec.path)
        if isinstance(value, bool | float):
            self.wrong.append(Reason("not_text", {"text": str(value)}, spec.path))
            return None
        typed = value if isinstance(value, Typed) else Typed("" if value is None else str(value))
        result = read(typed.text, spec, typed.unit, water)
        if isinstance(result, Empty):
            return None
        if isinstance(result, Ok):
            return float(result.entered.number), result.entered.unit
        self.wrong.append(result.reason)
        return None

    def instant(self, path: str) -> datetime | None:
        """Return a point in time with its zone, or None.

        Parameters
        ----------
        path : str
            Path of the field; what cannot be taken is noted as wrong.

        Returns
        -------
        datetime or None
            With its zone.
        """
        value = self.value(path)
        if isinstance(value, Typed):
            value = value.text.strip() or None
        if value is None:
            return None
        if isinstance(value, str):
            try:
                value = datetime.fromisoformat(value)
            except ValueError:
                self.wrong.append(Reason("not_a_time", {"text": value}, path))
                return None
        if not isinstance(value, datetime) or value.tzinfo is None:
            self.wrong.append(Reason("time_without_zone", {"text": str(value)}, path))
            return None
        if not _FIRST_YEAR <= value.year <= _LAST_YEAR:
            self.wrong.append(Reason("not_a_time", {"text": str(value)}, path))
            return None
        return value.astimezone(UTC)

    def chemical(self, catalogue: Catalogue, path: str) -> Chemical | None:
        """Return the chemical named at a path, or None and a note of what is missing or wrong.

        Parameters
        ----------
        catalogue : Catalogue
            The chemicals known.
        path : str
            Path of the field.

        Returns
        -------
        Chemical or None
            The chemical with its exact hydrate.
        """
        name = self.text(path)
        if not name:
            self.missing.append(Reason("missing", {"path": path}, path))
            return None
        folded = name.casefold()
        if folded in catalogue.chemicals:
            return catalogue.chemicals[folded]
        # A bare name fits every hydrate of the salt, a word of the trade perhaps several: offer those.
        fitting = tuple(
            known.name
            for known in catalogue.chemicals.values()
            if known.name.startswith(f"{folded} ") or folded in (word.casefold() for word in known.also_called)
        )
        code = "which_hydrate" if fitting else "unknown_chemical"
        params = {"text": name, "choices": fitting or tuple(catalogue.chemicals)}
        self.wrong.append(Reason(code, params, path))
        return None
