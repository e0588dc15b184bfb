"""Damaged question files, and what must hold of every answer to one.

What is held against an answer is read by the standard library and by the test's own reader of numbers: an answered file has
no key that its example does not show, no quantity that is none, no dose below zero, and neither prints what nobody sees.
"""

from __future__ import annotations

import contextlib
import io
import json
import random
import re
import tomllib
import unicodedata
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path
from typing import Any

from evenwater import headless
from evenwater.assets import resources
from tests.bench import fuzz_numbers

STATUSES = {0: "answered", 2: "unreadable", 3: "refused"}
# Keys whose text is no quantity.
_WORDS = frozenset(
    {
        "kind", "name", "parameter", "chemical", "reason", "material", "ph_scale", "raises", "first", "second", "quiet", "to",
        "holds_back", "stock", "text",
    }
)  # fmt: skip
# Keys that no example shows: what plans and tests before this one leave behind.
_UNSHOWN = frozenset(
    {
        "untested",
        "raised_lately",
        "planned",
        "rise_per_day",
        "days_left",
        "partner",
        "strength",
        "also",
        "label",
        "pco2",
    }
)
# How often a kind is asked, since some cost a hundred times what others do.
_OFTEN = {"recovery": 1, "jug": 4, "timetable": 4, "exchange": 6, "upkeep": 6, "consumption": 6, "calibration": 12}
_HOSTILE = (
    '""', '"0"', '"-1 L"', '"1e3 L"', '"nan dKH"', '"inf"', '"1,250 mL"', '"6,8 dKH"', '"999999999999999 L"', '"0.00000000000001 g"',
    '"5 gal"', '"8.4 °dKH"', '"8.4 dKH per day"', '"7 mg/L"', '"１２ L"', '"١٢ L"', '"🐠"', '"\\u0000"', '"\\u202e8 dKH"', '"\\u001b[2J"',
    '"%s%n"', '"<b>8</b>"', '"../../x"', "1", "-0.0", "-1", "1e400", "nan", "-inf", "true", "false", "[]", "[[]]", "{}", '{ a = "b" }',
    '["1 mL", "2 mL"]', "2026-11-25", "08:00:00", "2026-11-25T08:00:00", "9999-12-31T23:59:59Z", "0001-01-01T00:00:00+23:59",
    "1899-12-31T23:59:59Z", "2026-02-30T00:00:00Z", f"0x{'f' * 4000}", "9" * 5000, '"""\nkind = 5\n"""', "'8.4 dKH'", "''", '"salinity"',
    '"nitrate"', '"iodide"', '"calcium chloride"', '"calcium hydroxide"', '"sodium hydroxide"', '"potassium nitrate"',
    '"1.026 SG 25/25 degC"', '"0.001 mL"', '"5000000 L"', '"0.1 L"', '"1440"', "1440", "0", '"100 %"', '"0 %"', '"0.000001 %"', '"31 degC"',
    '"23:00 to 06:00"', '"00:00 to 24:00"', '"00:00 to 00:00"', '"45"', '"5"', '"0.5 dKH"', '"30 dKH"', '"900 mg/L"', '"1 s"', '"0 h"',
)  # fmt: skip


@dataclass(frozen=True)
class Said:
    """What one run said: exit status, standard output, standard error."""

    status: int
    out: str
    err: str


@dataclass(frozen=True)
class AskedFile:
    """A question file, and whether it is to be answered in words."""

    content: bytes
    as_text: bool = False
    kinds: tuple[str, ...] = field(default=(), compare=False)


@cache
def examples() -> Mapping[str, str]:
    """Return the example of each kind, and again with what it only shows in comments."""
    found = {}
    for file in sorted((resources() / "questions").glob("*.toml")):
        text = file.read_text(encoding="utf-8")
        found[file.stem] = text
        found[f"{file.stem}, all of it"] = re.sub(r"^# (?=\[|\w+ = )", "", text, flags=re.MULTILINE)
    return found


@cache
def _keys(kind: str) -> frozenset[str]:
    """Return the names that the example of a kind shows; an additive and its tank may have all that those of a correction have."""
    shown = examples()[kind] + (examples()["correction"] if "additive" in examples()[kind] else "")
    tables = " ".join(re.findall(r"\[\[?([\w.]+)\]", shown))
    return frozenset(re.findall(r"(\w+)\s*=", shown)) | frozenset(re.findall(r"\w+", tables)) | _UNSHOWN


@cache
def _weighted() -> tuple[tuple[str, ...], tuple[int, ...]]:
    names = tuple(examples())
    # What only stands in comments often contradicts the rest.
    return names, tuple(_OFTEN.get(name.partition(",")[0], 20) * (1 if "," in name else 4) for name in names)


def made(draw: random.Random) -> AskedFile:
    """Return an example with some damage."""
    names, often = _weighted()
    name = draw.choices(names, often)[0]
    text = examples()[name]
    for _ in range(draw.choice((1, 1, 1, 1, 1, 1, 2, 2, 3, 6))):
        text = _damaged(draw, text)
    content = text.encode("utf-8", "surrogatepass")
    if draw.random() < 0.08:
        content = _spoilt(draw, text, content)
    return AskedFile(content, draw.random() < 0.3, (name,))


def _damaged(draw: random.Random, text: str) -> str:
    lines = text.split("\n")
    keys = [n for n, line in enumerate(lines) if re.match(r"(# )?\w+ =", line)] or [0]
    at = draw.choice(keys) if draw.random() < 0.8 else draw.randrange(len(lines))
    name = lines[at].removeprefix("# ").partition("=")[0].strip() or "kind"
    match draw.choice((0, 0, 0, 1, 2, 3, 4, 5, 6, 7, 6, 7, 6, 8, 8, 9, 10, 11, 12, 13, 14, 15)):
        case 0 | 1 | 2:
            lines[at] = f"{name} = {draw.choice(_HOSTILE)}"
        case 3 | 4 | 5:
            lines[at] = f"{name} = {json.dumps(fuzz_numbers.made(draw).text, ensure_ascii=draw.random() < 0.5)}"
        case 6 | 7:
            digits = [m.start() for m in re.finditer(r"[0-9.,]", lines[at])]
            if digits:
                spot = draw.choice(digits)
                lines[at] = lines[at][:spot] + draw.choice("0123456789.,-eE ") + lines[at][spot + draw.randrange(2) :]
        case 8:
            del lines[at]
        case 9:
            lines.insert(draw.randrange(len(lines) + 1), lines[at])
        case 10:
            lines.insert(at, draw.choice(examples()[draw.choice(list(examples()))].split("\n")))
        case 11:
            other = draw.randrange(len(lines))
            lines[at], lines[other] = lines[other], lines[at]
        case 12:
            begin = draw.choice([n for n, line in enumerate(lines) if line.startswith("[")] or [0])
            end = min(begin + draw.randrange(1, 12), len(lines))
            lines[end:end] = lines[begin:end] * draw.choice((1, 1, 1, 2, 30))
        case 13:
            lines[at] = f"{name} = {'[' * (deep := draw.choice((2, 50, 5000)))}{']' * deep}"
        case 14:
            lines[at] = f'{name} = "{draw.choice(fuzz_numbers.ODD)}{"x" * draw.choice((0, 300, 100_000))}"'
        case _:
            lines[at] = lines[at].replace("=", draw.choice(("==", "", ".", "= =", "= {", "=\0")), 1)
    return "\n".join(lines)


def _spoilt(draw: random.Random, text: str, content: bytes) -> bytes:
    """Damage the file as bytes: other encodings, marks at its beginning, bytes that are none of it."""
    match draw.randrange(8):
        case 0:
            return (
                draw.choice((b"\xef\xbb\xbf", b"\xef\xbb\xbf\xef\xbb\xbf", b"\xff\xfe", b"\xfe\xff", b"\0")) + content
            )
        case 1:
            return text.encode(
                draw.choice(("utf-16", "utf-16-le", "utf-32", "cp1252", "shift_jis", "utf-7")), "replace"
            )
        case 2:
            return content[: draw.randrange(len(content) + 1)]
        case 3:
            return draw.randbytes(draw.choice((0, 1, 20, 3000)))
        case 4:
            return content.replace(b"\n", draw.choice((b"\r\n", b"\r", b"\n\n", b"\x85", b"")))
        case _:
            spoilt = bytearray(content)
            for _ in range(draw.choice((1, 1, 3, 20))):
                at = draw.randrange(len(spoilt) or 1)
                spoilt[at : at + draw.randrange(3)] = draw.randbytes(draw.randrange(3))
            return bytes(spoilt)


def ask(asked: AskedFile, folder: Path) -> Said:
    """Answer a file in this process."""
    file = folder / "question.toml"
    file.write_bytes(asked.content)
    out, err = io.StringIO(), io.StringIO()
    with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
        status = headless.run(["answer", str(file), *(["--text"] if asked.as_text else [])])
    return Said(status, out.getvalue(), err.getvalue())


def fault(asked: AskedFile, folder: Path) -> str:
    """Return what is wrong with the answer to a file, or nothing."""
    return wrong_with(ask(asked, folder), asked)


def wrong_with(said: Said, asked: AskedFile) -> str:
    """Return what is wrong with what was said to a file, or nothing."""
    if said.status not in STATUSES:
        return f"exit status {said.status}"
    if "Traceback" in said.out + said.err:
        return f"a traceback: {said.err[-300:]}"
    unseen = _unseen(said.out + said.err)
    if unseen:
        return f"prints {unseen}"
    if (said.status == 2) != bool(said.err.strip()):
        return f"status {said.status} with {said.err[:200]!r} on standard error"
    if asked.as_text:
        return "" if said.out.strip() else "no words"
    try:
        (line,) = said.out.splitlines()
        body = json.loads(line, parse_constant=_refuse)
    except ValueError as error:
        return f"is not one line of JSON: {error}"
    if body.get("status") != STATUSES[said.status]:
        return f"status {said.status} says {body.get('status')}"
    told = body.get("problems", []) + body.get("reasons", []) if said.status else [{"text": "answered"}]
    if not told or not all(each["text"].strip() for each in told):
        return "nothing says why"
    longest = max(len(each["text"]) for each in told)
    if longest > 2000:
        return f"{longest} letters say why"
    return _wrong_answer(body, asked.content) if said.status == 0 else ""


def _wrong_answer(body: Mapping[str, Any], content: bytes) -> str:
    raw = tomllib.loads(content.decode("utf-8-sig"))
    kind = raw["kind"]
    strange = [path for path, key, _ in _leaves(raw) if key not in _keys(kind)]
    if strange:
        return f"{strange[0]} was passed over"
    for path, key, value in _leaves(raw):
        quantity = key not in _WORDS or (key == "raises" and any(c.isdigit() for c in str(value)))
        if isinstance(value, str) and quantity and not _is_quantity(value):
            return f"{path} = {value[:80]!r} was taken for a quantity"
    below = [
        path for path, key, value in _leaves(body) if "dose" in path and key in ("value", "dose") and _below(value)
    ]
    return f"{below[0]} is below zero" if below else ""


def _below(value: object) -> bool:
    return isinstance(value, int | float) and not value >= 0


def _is_quantity(text: str) -> bool:
    """Return whether a text is blank, or one number with a unit of any list, by the test's own reader."""
    if not text.split() or re.fullmatch(r"\d\d:\d\d to \d\d:\d\d(, *\d\d:\d\d to \d\d:\d\d)*", text):
        return True
    return fuzz_numbers.any_quantity(text)


def _leaves(value: object, path: str = "", key: str = "") -> Iterator[tuple[str, str, object]]:
    """Yield path, key and value of all that is in a table; lists have the key of what holds them."""
    if isinstance(value, Mapping):
        for name, inner in value.items():
            yield from _leaves(inner, f"{path}.{name}".removeprefix("."), name)
    elif isinstance(value, list):
        for inner in value:
            yield from _leaves(inner, path, key)
    else:
        yield path, key, value


def _unseen(text: str) -> str:
    """Return the first sign that a terminal would obey, or that turns a line round."""
    for sign in set(text):
        if sign not in "\n\t" and (
            unicodedata.category(sign) in ("Cc", "Cs") or sign in "\u202a\u202b\u202d\u202e\u2066\u2067\u2068"
        ):
            return f"U+{ord(sign):04X}"
    return ""


def _refuse(name: str) -> None:
    raise ValueError(f"{name} is not JSON")


def smaller(asked: AskedFile) -> Iterator[AskedFile]:
    """Yield the same with less in it: fewer lines, then fewer bytes of what is left."""
    lines = asked.content.split(b"\n")
    for size in (len(lines) // 2, len(lines) // 4, 4, 1):
        if size:
            for at in range(0, len(lines), size):
                yield AskedFile(b"\n".join(lines[:at] + lines[at + size :]), asked.as_text, asked.kinds)
    if len(lines) <= 6:
        for size in (len(asked.content) // 2, 30, 5, 1):
            if size:
                for at in range(0, len(asked.content), size):
                    yield AskedFile(asked.content[:at] + asked.content[at + size :], asked.as_text, asked.kinds)
