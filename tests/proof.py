"""Ends a run of all tests in failure where a hazard has no passing test, or the trust page says what no test bears out.

A test that is skipped or deselected fails nothing by itself, and nobody sees that its hazard is open again. So what every test ended in is
collected where all reports arrive (with several processes that is the one that started them), and looked at when the run is over.
Of a part of the tests nothing is asked.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest

from tests.agreement import PAGE, out_of_date
from tests.evidence import CARRIED, Compared, carried, taken
from tests.register import ROOT, function_of, hazards, unproved

# Options with which pytest runs fewer tests than there are.
_FEWER = (
    "keyword",
    "markexpr",
    "deselect",
    "ignore",
    "ignore_glob",
    "lf",
    "stepwise",
    "maxfail",
    "collectonly",
    "setuponly",
    "setupplan",
)


def whole(config: pytest.Config) -> bool:
    """Return whether pytest was asked for all tests there are."""
    if any(config.getoption(name, default=None) for name in _FEWER):
        return False
    if config.args_source is pytest.Config.ArgsSource.TESTPATHS:
        return True
    named = [(config.invocation_params.dir / argument).resolve() for argument in config.args]
    return any(place in {ROOT, ROOT / "tests"} for place in named)


class Proof:
    """The plugin: collects how tests ended and what they compared, and judges a whole run by it."""

    def __init__(self) -> None:
        self.outcomes: dict[str, set[str]] = {}
        self.evidence: list[Compared] = []
        self.complaints: list[str] = []

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_makereport(self) -> Iterator[None]:
        report = yield
        compared = taken()
        if report.when == "call" and report.passed and compared:
            report.user_properties.append((CARRIED, compared))
        return report

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.when == "call" or not report.passed:
            self.outcomes.setdefault(function_of(report.nodeid), set()).add(report.outcome)
        self.evidence.extend(carried(report.user_properties))

    def pytest_sessionfinish(self, session: pytest.Session) -> None:
        if hasattr(session.config, "workerinput") or not whole(session.config):
            return
        self.complaints = unproved(hazards(), self.outcomes)
        self.complaints += out_of_date(PAGE.read_text(encoding="utf-8"), self.evidence)
        if self.complaints and session.exitstatus == pytest.ExitCode.OK:
            session.exitstatus = pytest.ExitCode.TESTS_FAILED

    def pytest_terminal_summary(self, terminalreporter: Any) -> None:
        if self.complaints:
            terminalreporter.section("claimed and not proved", red=True)
            for complaint in self.complaints:
                terminalreporter.line(complaint)
