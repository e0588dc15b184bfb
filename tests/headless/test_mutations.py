"""Three thousand damaged question files: never a traceback, always a documented status and strict JSON."""

from __future__ import annotations

import random
import re
from pathlib import Path

import pytest

from tests.headless.asking import Said, ask, example, on_label, put

LIME = {
    "chemical": '"calcium hydroxide"',
    "dissolved": None,
    "purity": None,
    "saturated": "true",
    "evaporation": '"40 L per day"',
}
MIX = '{ chemical = "potassium chloride", dissolved = "10 g", purity = "99 %" }'
WHOLE = (
    example(), example("convert"), example("stock"), example("chemistry"), example("consumption"), example("upkeep"),
    example("calibration"), example("jug"), example("exchange"), example("recovery"),
    on_label(example()), put(example(), **LIME), put(example("stock"), also=MIX),
)  # fmt: skip
LINES = [line for whole in WHOLE for line in whole.split("\n") if line.strip() and not line.startswith("#")]
# Values that ask for trouble: other types, other marks, other units, extremes.
VALUES = (
    '""', '"0"', '"-1 L"', '"1e3 L"', '"nan dKH"', '"inf"', '"1,250 mL"', '"6,8 dKH"', '"999999999999999 L"', '"9999999999999999"',
    '"0.00000000000001 g"', '"5 gal"', '"8.4 °dKH"', '"8.4 dKH per day"', '"7 mg/L"', '"１２ L"', '"١٢ L"', '"🐠"', '"\\u0000"', '"%"',
    "1", "-0.0", "1e400", "nan", "true", "[]", "{}", '{ a = "b" }', "2026-11-25", "2026-11-25T08:00:00", "9999-12-31T23:59:59Z",
    "0001-01-01T00:00:00+23:59", f"0x{'f' * 4000}", '"""\nkind = 5\n"""', "'8.4 dKH'", '"calcium chloride"', '"salinity"', '"nitrate"',
    '"1.026 SG 25/25 degC"', '"1.0264 SG 20/20 degC"', '"sodium hydroxide"', '"calcium hydroxide"', '"0.001 mL"', '"5000000 L"',
)  # fmt: skip


def mutated(rng: random.Random) -> bytes:
    """Return an example with a few lines or bytes damaged."""
    text = rng.choice(WHOLE)
    for _ in range(rng.choice((1, 1, 1, 2, 4))):
        lines = text.split("\n")
        at = rng.randrange(len(lines))
        match rng.choice((0, 1, 2, 3, 3, 3, 4, 4, 4, 5, 5, 5, 6)):
            case 0:
                del lines[at]
            case 1:
                lines.insert(at, rng.choice(LINES))
            case 2:
                other = rng.randrange(len(lines))
                lines[at], lines[other] = lines[other], lines[at]
            case 3:
                keys = [n for n, line in enumerate(lines) if re.match(r"(# )?\w+ =", line)] or [0]
                at = rng.choice(keys)
                name = lines[at].removeprefix("# ").partition("=")[0]
                lines[at] = f"{name.strip() or 'kind'} = {rng.choice(VALUES)}"
            case 4:
                lines[at] = lines[at].replace("1", rng.choice("02,. "), 1)
            case 5:
                digits = [n for n, c in enumerate(lines[at]) if c in "0123456789.,"]
                if digits:
                    spot = rng.choice(digits)
                    lines[at] = lines[at][:spot] + rng.choice("0123456789.,-eE ") + lines[at][spot + rng.randrange(2) :]
            case 6:
                lines[at] = lines[at].replace("=", rng.choice(("==", "", ".", "= =")), 1)
        text = "\n".join(lines)
    content = bytearray(text.encode())
    if rng.random() < 0.1:
        for _ in range(rng.choice((1, 1, 3, 20))):
            at = rng.randrange(len(content) or 1)
            content[at : at + rng.randrange(3)] = bytes(rng.randrange(256) for _ in range(rng.randrange(3)))
    return bytes(content)


def judge(said: Said, content: bytes) -> str:
    """Hold one outcome against the contract."""
    assert said.status in (0, 2, 3), content
    body = said.body
    match said.status:
        case 0:
            assert body["status"] == "answered"
            assert said.err == ""
            if "check" in body:
                assert body["check"]["agrees"] is True
                # An upkeep has a dose for each of its values.
                for each in body.get("items", [body]):
                    assert each["single_dose_rounded"]["value"] <= each["single_dose"]["value"] * (1 + 1e-9)
                assert body["cautions"]
            if "use_per_day" in body:
                assert body["low"]["value"] <= body["use_per_day"]["value"] <= body["high"]["value"]
            for choice in body.get("choices", []):
                assert choice["proposed"] == (not choice["reasons"])
            if "verdict" in body:
                assert body["low"]["value"] <= body["flow"]["value"] <= body["high"]["value"]
                assert (body["verdict"] == "pass") == (not body["repeat_because"])
        case 3:
            assert body["status"] == "refused"
            assert said.err == ""
            assert body["reasons"]
            assert all(reason["text"] and reason["code"] for reason in body["reasons"])
        case 2:
            assert body["status"] == "unreadable"
            assert body["problems"]
            for problem in body["problems"]:
                assert problem["text"]
                assert 0 <= problem["line"] <= content.count(b"\n") + 1
                assert problem["text"] in said.err
    return str(body["status"])


@pytest.mark.parametrize("start", range(10))
def test_damaged_files_have_a_documented_outcome(tmp_path: Path, start: int) -> None:
    rng = random.Random(start)
    seen: dict[str, int] = {}
    for _ in range(300):
        content = mutated(rng)
        outcome = judge(ask(tmp_path, content), content)
        seen[outcome] = seen.get(outcome, 0) + 1
    # The damage must be of every sort, or the test proves little.
    assert all(seen.get(outcome, 0) >= 30 for outcome in ("answered", "refused", "unreadable")), seen


def test_damaged_files_print_words_for_people_too(tmp_path: Path) -> None:
    rng = random.Random(99)
    for _ in range(200):
        content = mutated(rng)
        said = ask(tmp_path, content, "--text")
        assert said.status in (0, 2, 3)
        assert said.out.strip()
        assert "Traceback" not in said.out + said.err
        assert not re.search(r"\bnan\b|\binf\b", said.out) or b"nan" in content or b"inf" in content
