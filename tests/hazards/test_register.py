"""The hazard file itself: whole, true to the tests there are, and on its page; and a run of all tests that is held to it."""

from __future__ import annotations

import re
import tomllib
from collections import Counter
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import pytest

from tests import proof
from tests.proof import Proof, whole
from tests.register import FILE, ROOT, Hazard, function_of, functions_in, hazards, unproved
from tests.trust_making import trust_pages

HERE = Path(__file__).parent
KNOWN = hazards()
OF_A_HAZARD = re.compile(r"test_((?:H\d+_)+)")
FIRST, SECOND = "tests/a/test_a.py::test_one", "tests/b/test_b.py::test_two"
TWO = (Hazard("H1", "one", "-", ("-",), (FIRST,), "-"), Hazard("H2", "two", "-", ("-",), (FIRST, SECOND), "-"))


def of_hazards() -> list[tuple[str, str]]:
    """Return every test that must stand in the file, with the hazard that its name begins with, if any."""
    found = []
    for file in sorted((ROOT / "tests").rglob("test_*.py")):
        for name in functions_in(file):
            told = OF_A_HAZARD.match(name)
            numbers = told[1].rstrip("_").split("_") if told else ([""] if file.parent == HERE else [])
            found += [(f"{file.relative_to(ROOT).as_posix()}::{name}", number) for number in numbers]
    return found


def test_every_hazard_has_a_name_a_cause_something_done_and_a_proof() -> None:
    assert {f"H{number}" for number in range(1, 35)} < {each.id for each in KNOWN}
    assert [each.id for each in KNOWN] == [f"H{number}" for number in range(1, len(KNOWN) + 1)]
    assert len({each.name for each in KNOWN}) == len(KNOWN)
    for each in KNOWN:
        assert all((each.name, each.cause, each.mitigation, each.proof, each.remains)), each.id
        assert [test for test, times in Counter(each.proof).items() if times > 1] == [], each.id


def test_every_proof_is_a_test_that_there_is() -> None:
    proofs = {tuple(node.split("::")) for each in KNOWN for node in each.proof}
    files = {file for file, _ in proofs}
    assert sorted(file for file in files if not (ROOT / file).is_file()) == []
    assert sorted((file, name) for file, name in proofs if name not in functions_in(ROOT / file)) == []


def test_every_test_of_a_hazard_stands_with_it() -> None:
    by_id = {each.id: set(each.proof) for each in KNOWN}
    anywhere = set().union(*by_id.values()) | {
        f"{Path(__file__).relative_to(ROOT).as_posix()}::{name}" for name in functions_in(Path(__file__))
    }
    nowhere = sorted(
        test for test, number in of_hazards() if test not in (by_id.get(number, set()) if number else anywhere)
    )
    assert nowhere == [], f"write them into {FILE.relative_to(ROOT)}"


def test_its_page_is_up_to_date() -> None:
    pages = trust_pages()
    assert pages.HAZARDS.read_text(encoding="utf-8") == pages.hazards_page(KNOWN), (
        "run packaging/trust_pages.py hazards"
    )


def test_nothing_keeps_tests_from_running_by_default() -> None:
    given = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]["pytest"]["ini_options"]
    assert given["testpaths"] == ["tests"]
    fewer = ("-k", "-m", "--deselect", "--ignore", "--maxfail", "-x")
    assert [word for word in given["addopts"] if word.startswith(fewer)] == []


def test_a_test_that_passed_in_every_case_proves() -> None:
    assert unproved(TWO, {FIRST: {"passed"}, SECOND: {"passed"}}) == []


@pytest.mark.parametrize(
    ("ended", "how"),
    [
        ({"skipped"}, "skipped"),
        ({"passed", "failed"}, "failed"),
        ({"passed", "skipped"}, "skipped"),
        (set(), "never ran"),
    ],
)
def test_one_that_was_skipped_failed_or_never_ran_proves_nothing(ended: set[str], how: str) -> None:
    assert unproved(TWO, {FIRST: {"passed"}, SECOND: ended}, posix=True) == [f"H2 two: {SECOND} {how}"]


def test_elsewhere_than_on_posix_a_skipped_one_is_let_pass_but_no_other() -> None:
    assert unproved(TWO, {FIRST: {"passed"}, SECOND: {"skipped"}}, posix=False) == []
    assert len(unproved(TWO, {FIRST: {"failed"}, SECOND: {"skipped"}}, posix=False)) == 2


def run(config: Any, monkeypatch: pytest.MonkeyPatch, *reports: tuple[str, str, str]) -> tuple[int, list[str]]:
    """Let a run of these reports (test, phase, outcome) end; return its status and what was complained about."""
    monkeypatch.setattr(proof, "hazards", lambda: TWO)
    monkeypatch.setattr(proof, "out_of_date", lambda page, evidence: [])
    monkeypatch.setattr(proof, "whole", lambda config: config.whole)
    plugin, session = Proof(), SimpleNamespace(config=config, exitstatus=pytest.ExitCode.OK)
    for node, when, outcome in reports:
        report = pytest.TestReport(node, ("", 0, ""), {}, outcome, None, when)  # type: ignore[arg-type]
        plugin.pytest_runtest_logreport(report)
    plugin.pytest_sessionfinish(session)  # type: ignore[arg-type]
    return int(session.exitstatus), plugin.complaints


ALL = SimpleNamespace(whole=True)
PASSED = [(FIRST, when, "passed") for when in ("setup", "call", "teardown")]


def test_a_whole_run_fails_when_a_proof_was_skipped_and_a_part_does_not(monkeypatch: pytest.MonkeyPatch) -> None:
    case = (f"{SECOND}[case]", "setup", "skipped")
    assert run(ALL, monkeypatch, *PASSED, (SECOND + "[a]", "call", "passed")) == (0, [])
    status, complaints = run(ALL, monkeypatch, *PASSED, (SECOND + "[a]", "call", "passed"), case)
    assert status == pytest.ExitCode.TESTS_FAILED
    assert complaints == unproved(TWO, {FIRST: {"passed"}, SECOND: {"passed", "skipped"}})
    assert run(ALL, monkeypatch, *PASSED) == (1, [f"H2 two: {SECOND} never ran"])
    assert run(SimpleNamespace(whole=False), monkeypatch, *PASSED) == (0, [])
    # The processes that run a share of the tests each leave the judging to the one that started them.
    assert run(SimpleNamespace(whole=True, workerinput={}), monkeypatch, *PASSED) == (0, [])


def test_a_test_whose_end_failed_proves_nothing(monkeypatch: pytest.MonkeyPatch) -> None:
    ended = [(SECOND, "call", "passed"), (SECOND, "teardown", "failed")]
    assert run(ALL, monkeypatch, *PASSED, *ended) == (1, [f"H2 two: {SECOND} failed"])


@pytest.mark.parametrize(
    ("source", "args", "options", "expected"),
    [
        ("TESTPATHS", ["tests"], {}, True),
        ("ARGS", ["tests"], {}, True),
        ("ARGS", ["."], {}, True),
        ("ARGS", ["tests/hazards"], {}, False),
        ("ARGS", ["tests/hazards/test_units.py::test_H3_a_bare_gallon_is_refused"], {}, False),
        ("TESTPATHS", ["tests"], {"keyword": "H3"}, False),
        ("TESTPATHS", ["tests"], {"deselect": ["tests/a.py"]}, False),
        ("TESTPATHS", ["tests"], {"maxfail": 1}, False),
        ("TESTPATHS", ["tests"], {"lf": True}, False),
    ],
)
def test_a_whole_run_is_told_from_a_part(
    source: str, args: list[str], options: dict[str, object], expected: bool
) -> None:
    config: Any = SimpleNamespace(
        args_source=pytest.Config.ArgsSource[source],
        args=args,
        invocation_params=SimpleNamespace(dir=ROOT),
        getoption=lambda name, default=None: options.get(name, default),
    )
    assert whole(config) is expected


def test_cases_are_counted_with_their_test() -> None:
    assert function_of("tests/a.py::test_b[c[d]]") == "tests/a.py::test_b"
