"""Runs tests against one change of the engine after the other, each in a forked process of its own."""

from __future__ import annotations

import importlib
import importlib.machinery
import importlib.util
import os
import resource
import signal
import sys
import time
import traceback
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from types import CodeType, FunctionType
from typing import Any

import pytest

_PACKAGE = "evenwater.engine"
# A child that loads everything anew begins with so many test files.
_FILES = 8
# How a child says that it could not make the change.
UNABLE = "unable: "
_WITH_A_WINDOW = {"qapp", "qtbot", "young_demo"}
ARGUMENTS = [
    "-q",
    "-W",
    "ignore::pytest.PytestAssertRewriteWarning",
    "-p",
    "no:cacheprovider",
    "-p",
    "no:xdist",
    "-p",
    "no:benchmark",
    "--no-header",
]


@dataclass(frozen=True)
class Trial:
    """One change to be tried: its name, the module's changed text, and the tests that may notice it, in order.

    ``inside`` says that it is a function's code and nothing else, ``loads`` that it runs while the modules load or tests are collected.
    """

    name: str
    source: str
    tests: tuple[str, ...]
    seconds: float
    inside: bool
    loads: bool
    about: dict[str, Any]

    @property
    def module(self) -> str:
        """Return the changed module's full name."""
        return f"{_PACKAGE}.{self.name.split('.')[0]}"

    @property
    def owner(self) -> str:
        """Return the function or method that is changed, as the module knows it."""
        return self.name.partition(".")[2].rpartition(":")[0]


class Collected:
    """The plugin that, in place of running the tests collected, forks for every trial and runs those it names."""

    def __init__(self, trials: Sequence[Trial], record: Callable[[Trial, str, str, float], None]) -> None:
        self.trials = trials
        self.record = record
        self.failed = ""

    @staticmethod
    def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
        """Leave out what opens a window."""
        items[:] = without_window(items)

    @pytest.hookimpl(tryfirst=True)
    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        """Try every change."""
        found = {item.nodeid: item for item in session.items}
        for trial in self.trials:
            items = [found[name] for name in trial.tests if name in found]
            start = time.monotonic()
            outcome, by = in_child(lambda t=trial, i=items: self._run(t, i), trial.seconds)  # type: ignore[misc]
            self.record(trial, outcome, by, time.monotonic() - start)
        return True

    def _run(self, trial: Trial, items: list[pytest.Item]) -> str:
        try:
            put_in_place(trial)
        except Exception as error:  # noqa: BLE001  (nothing was tried, so nothing was noticed)
            return f"{UNABLE}{type(error).__name__}: {error}"
        for item, following in zip(items, [*items[1:], None], strict=True):
            item.config.hook.pytest_runtest_protocol(item=item, nextitem=following)
            if self.failed:
                break
        return self.failed

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Keep the test that noticed."""
        if report.failed and not self.failed:
            self.failed = report.nodeid


class _Named:
    """The plugin that runs the tests of one trial and no others, in its order."""

    def __init__(self, tests: Sequence[str]) -> None:
        self.rank = {name: place for place, name in enumerate(tests)}
        self.failed = ""

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        """Choose and put in order; where the change renames the cases of a test, any case stands for those named."""
        named = [item for item in items if item.nodeid in self.rank]
        if not named:
            functions = {name.partition("[")[0] for name in self.rank}
            named = [item for item in without_window(items) if item.nodeid.partition("[")[0] in functions]
        items[:] = sorted(named, key=lambda item: self.rank.get(item.nodeid, 0))

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Keep the test that noticed."""
        if report.failed and not self.failed:
            self.failed = report.nodeid


def reloaded(trial: Trial) -> tuple[str, str]:
    """Try a change of code that runs while the modules load: load them anew, the changed one from its changed text.

    The first few test files come first and by themselves, since loading all of them takes longer than most changes live.
    """
    files = list(dict.fromkeys(name.partition("::")[0] for name in trial.tests))
    outcome = "survived", ""
    for part in (files[:_FILES], files[_FILES:]):
        if part and outcome[0] == "survived":
            tests = [name for name in trial.tests if name.partition("::")[0] in part]
            outcome = in_child(lambda f=part, t=tests: _load_and_run(trial, f, t), trial.seconds + 20.0)  # type: ignore[misc]
    return outcome


def _load_and_run(trial: Trial, files: list[str], tests: list[str]) -> str:
    sys.meta_path.insert(0, _Finder(trial.module, trial.source))
    chosen = _Named(tests)
    ended = pytest.main([*ARGUMENTS, "-x", *files], plugins=[chosen])
    return chosen.failed or ("" if ended == pytest.ExitCode.OK else f"pytest ended with {int(ended)}")


def in_child(run: Callable[[], str], seconds: float) -> tuple[str, str]:
    """Run in a forked process that may take five times its seconds of processor time; returns what came of it, and by what.

    A process that dies or does not end was noticed as well.
    """
    reading, writing = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            os.close(reading)
            silent = os.open(os.devnull, os.O_RDWR)
            for channel in (0, 1, 2):
                os.dup2(silent, channel)
            resource.setrlimit(resource.RLIMIT_CPU, (int(10 + 5 * seconds), int(15 + 5 * seconds)))
            resource.setrlimit(resource.RLIMIT_AS, (6 << 30, 6 << 30))
            sys.dont_write_bytecode = True
            os.write(writing, (run() or "nothing").encode())
        except BaseException as error:  # noqa: BLE001  (whatever it is, the change did it)
            os.write(writing, f"{type(error).__name__}: {error}".encode()[:400])
        finally:
            os._exit(0)
    os.close(writing)
    with os.fdopen(reading, "rb") as pipe:
        said = pipe.read().decode()
    _, status = os.waitpid(child, 0)
    if said == "nothing":
        return "survived", ""
    if said.startswith(UNABLE):
        return "unable", said
    if said:
        return "killed", said
    by_time = os.WIFSIGNALED(status) and os.WTERMSIG(status) in {signal.SIGXCPU, signal.SIGKILL}
    return "killed", "time" if by_time else f"process ended with {status}"


def apart(run: Callable[[], object]) -> None:
    """Run in a forked process, and wait for it; what goes wrong there goes wrong here."""
    child = os.fork()
    if child == 0:
        code = 1
        try:
            run()
            code = 0
        except BaseException:  # noqa: BLE001  (said, and then nothing of this process may go on)
            traceback.print_exc()
        finally:
            sys.stdout.flush()
            os._exit(code)
    _, status = os.waitpid(child, 0)
    if status:
        raise SystemExit(f"a process of its own ended with {status}")


def put_in_place(trial: Trial) -> None:
    """Give the function that is changed its new code, wherever it is known by."""
    module = importlib.import_module(trial.module)
    function = function_of(module, trial.owner)
    assert function is not None, trial.name
    code: CodeType = compile(trial.source, module.__file__ or "", "exec")
    for name in trial.owner.split("."):
        code = next(part for part in code.co_consts if isinstance(part, CodeType) and part.co_name == name)
    function.__code__ = code
    for remembering in caches():
        remembering.cache_clear()


def function_of(module: Any, owner: str) -> FunctionType | None:
    """Return the plain function below decorators; None where the name is no function."""
    found: Any = module
    for name in owner.split("."):
        found = vars(found).get(name) if hasattr(found, "__dict__") else None
    for wrapper in ("fget", "func", "__func__", "__wrapped__"):
        found = getattr(found, wrapper, None) or found
    return found if isinstance(found, FunctionType) else None


def caches() -> Iterator[Any]:
    """Yield what the engine remembers of earlier calls."""
    for name, module in list(sys.modules.items()):
        if name.startswith(_PACKAGE) and module is not None:
            yield from (thing for thing in vars(module).values() if hasattr(thing, "cache_clear"))


def without_window(items: Iterable[pytest.Item]) -> list[pytest.Item]:
    """Return the tests that open no window."""
    return [item for item in items if not _WITH_A_WINDOW & set(getattr(item, "fixturenames", ()))]


class _Finder(importlib.machinery.PathFinder):
    """Finds one module with a changed text."""

    def __init__(self, name: str, source: str) -> None:
        self.name, self.source = name, source

    def find_spec(self, fullname: str, path: Any = None, target: Any = None) -> Any:  # noqa: ARG002
        """Return where the module is loaded from; None for every other."""
        if fullname != self.name:
            return None
        plain = importlib.machinery.PathFinder.find_spec(fullname, path)
        assert plain is not None
        assert plain.origin is not None
        loader = _Loader(fullname, plain.origin)
        loader.source = self.source
        return importlib.util.spec_from_file_location(fullname, plain.origin, loader=loader)


class _Loader(importlib.machinery.SourceFileLoader):
    source = ""

    def get_code(self, fullname: str) -> CodeType:  # noqa: ARG002
        """Return the changed text, compiled."""
        return compile(self.source, self.path, "exec")
