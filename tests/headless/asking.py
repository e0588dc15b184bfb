"""Asks the headless front door: a question's text in, exit status and what was printed out."""

from __future__ import annotations

import contextlib
import io
import json
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from evenwater import headless
from evenwater.assets import resources

UNREADABLE = "unreadable"


@dataclass(frozen=True)
class Said:
    """What one run said: exit status, standard output, standard error."""

    status: int
    out: str
    err: str

    @property
    def objects(self) -> list[dict[str, Any]]:
        """The JSON objects, one for each line."""
        return [strict(line) for line in self.out.splitlines()]

    @property
    def body(self) -> dict[str, Any]:
        """The only JSON object."""
        (only,) = self.objects
        return only

    @property
    def problems(self) -> list[tuple[int, str]]:
        """Line and field of every problem of an unreadable file."""
        assert self.body["status"] == UNREADABLE
        return [(p["line"], p["field"]) for p in self.body["problems"]]

    @property
    def codes(self) -> list[tuple[str, str]]:
        """Code and field of every reason of a refusal."""
        assert self.body["status"] == "refused"
        return [(r["code"], r.get("field", "")) for r in self.body["reasons"]]

    @property
    def words(self) -> str:
        """Every sentence of a refusal, with ordinary spaces."""
        return " ".join(r["text"] for r in self.body["reasons"]).replace("\u00a0", " ")


def strict(line: str) -> dict[str, Any]:
    """Read JSON that knows no NaN and no infinity."""

    def refuse(name: str) -> None:
        raise ValueError(f"{name} is not JSON")

    found: dict[str, Any] = json.loads(line, parse_constant=refuse)
    return found


def run(*words: str) -> Said:
    """Run a headless command in this process."""
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        status = headless.run(words)
    return Said(status, out.getvalue(), err.getvalue())


def ask(folder: Path, text: str | bytes, *options: str) -> Said:
    """Answer one question, given as its text."""
    file = folder / "question.toml"
    file.write_bytes(text if isinstance(text, bytes) else text.encode())
    return run("answer", str(file), *options)


def example(kind: str = "correction") -> str:
    """Return the example question of a kind."""
    return (resources() / "questions" / f"{kind}.toml").read_text(encoding="utf-8")


def put(text: str, **fields: str | None) -> str:
    """Write another value into lines that stand in the text; None takes a line out."""
    for name, value in fields.items():
        line = "" if value is None else f"{name} = {value}"
        text, count = re.subn(rf"^(# )?{name} = .*$", lambda _: line, text, count=1, flags=re.MULTILINE)  # noqa: B023
        assert count == 1, name
    return text


def line_with(text: str, start: str) -> int:
    """Return the number of the first line that starts so."""
    return next(n for n, line in enumerate(text.split("\n"), start=1) if line.startswith(start))


def on_label(text: str, label: str = '{ dose = "5 mL", water = "100 L", raises = "1 dKH" }') -> str:
    """Return the question with a bottle known by its label in place of a chemical."""
    return put(text, chemical=None, dissolved=None, made_up_to=None, purity=None, label=label)
