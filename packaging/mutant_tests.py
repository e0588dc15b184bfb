"""Which tests meet which line of the engine, and how long each takes: learned once under coverage.py and kept."""

from __future__ import annotations

import hashlib
import json
import time
from collections import defaultdict
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import pytest
from mutant_trial import ARGUMENTS, apart, caches, without_window

ENGINE = Path("desktop/evenwater/engine")
# The tests of the numbers; those with a window are slow and see the same numbers.
TESTS = ("engine", "published", "property", "carbonate", "headless", "hazards", "screens")
_WRITTEN = "library_figures"
# A change whose line fewer tests meet than this is shown to the other tests of its module too: a line that runs once, for
# something that is then kept, is met by the first test alone.
_FEW = 5


def sum_of(path: Path) -> str:
    """Return a short sum of a file's contents."""
    return hashlib.sha256(path.read_bytes()).hexdigest()[:16]


def modules_of(folder: Path) -> dict[str, Path]:
    """Return the engine's modules by name, without the one that ``library_figures.py`` writes: it is held against the libraries."""
    return {path.stem: path for path in sorted((folder / ENGINE).glob("[!_]*.py")) if path.stem != _WRITTEN}


class Learned:
    """Which tests meet which line, and how long they take; kept in the folder, and learned anew for files that changed."""

    def __init__(self, folder: Path) -> None:
        self.file = folder / "learned.json"
        self.kept: dict[str, Any] = {"engine": {}, "files": {}, "tests": [], "seconds": {}, "lines": {}, "loading": {}}
        if self.file.is_file():
            self.kept = json.loads(self.file.read_text(encoding="utf-8"))

    def bring_up_to_date(self, folder: Path) -> None:
        """Run what was never run, or was changed, under coverage.py; all of it when the engine's lines are others."""
        engine = {name: sum_of(path) for name, path in modules_of(folder).items()}
        files = {name: sum_of(folder / name) for name in tests_of(folder, TESTS)}
        if engine != self.kept["engine"]:
            self.kept = {"engine": engine, "files": {}, "tests": [], "seconds": {}, "lines": {}, "loading": {}}
        new = [name for name, known in files.items() if self.kept["files"].get(name) != known]
        if not new:
            return
        print(f"learning which lines {len(new)} test files meet", flush=True)
        found = folder / "found.json"
        apart(lambda: _learn(new, found))
        self._take(json.loads(found.read_text(encoding="utf-8")))
        self.kept["files"].update({name: files[name] for name in new})
        self.file.write_text(json.dumps(self.kept), encoding="utf-8")

    def _take(self, found: dict[str, Any]) -> None:
        tests: list[str] = self.kept["tests"]
        known = {name: number for number, name in enumerate(tests)}
        for name, seconds in found["seconds"].items():
            if name not in known:
                known[name] = len(tests)
                tests.append(name)
            self.kept["seconds"][name] = seconds
        for module, lines in found["lines"].items():
            kept = self.kept["lines"].setdefault(module, {})
            for line, names in lines.items():
                kept[line] = sorted({*kept.get(line, ()), *(known[name] for name in names if name in known)})
        for module, lines in found["loading"].items():
            self.kept["loading"][module] = sorted({*self.kept["loading"].get(module, ()), *lines})

    def loads(self, module: str, lines: tuple[int, int]) -> bool:
        """Return whether a line runs while modules load or tests are collected."""
        return not set(range(lines[0], lines[1] + 1)).isdisjoint(self.kept["loading"].get(module, ()))

    def tests(
        self, module: str, lines: tuple[int, int], budget: float, *, loads: bool
    ) -> tuple[tuple[str, ...], float]:
        """Return the tests that may notice a change of some lines, and the seconds they take: quick files first."""
        seconds: dict[str, float] = self.kept["seconds"]
        by_line: dict[str, list[int]] = self.kept["lines"].get(module, {})
        names: list[str] = self.kept["tests"]
        meet = {number for line in range(lines[0], lines[1] + 1) for number in by_line.get(str(line), ())}
        rest = (
            {number for numbers in by_line.values() for number in numbers} if loads or 0 < len(meet) < _FEW else set()
        )
        chosen: dict[str, list[str]] = defaultdict(list)
        left = budget
        for group in (meet, rest - meet):
            for name in sorted((names[number] for number in group), key=lambda n: seconds[n]):
                file = name.partition("::")[0]
                if left > 0:
                    chosen[file].append(name)
                    left -= seconds[name]
        files = sorted(chosen.values(), key=lambda tests: sum(seconds[name] for name in tests) / len(tests))
        return tuple(name for tests in files for name in tests), budget - left


def _learn(files: list[str], found: Path) -> None:
    import coverage  # noqa: PLC0415  (stands in a folder that is only named at the start)

    measuring = coverage.Coverage(data_file=None, source=[str(ENGINE)], config_file=False)
    measuring.start()
    plugin = Learning(measuring)
    pytest.main([*ARGUMENTS, *files], plugins=[plugin])
    measuring.stop()
    data = measuring.get_data()
    lines: dict[str, dict[int, list[str]]] = {}
    loading: dict[str, list[int]] = {}
    for path in data.measured_files():
        by_line = data.contexts_by_lineno(path)
        module = Path(path).stem
        lines[module] = {line: [name for name in names if name in plugin.seconds] for line, names in by_line.items()}
        loading[module] = [line for line, names in by_line.items() if "" in names]
    seconds = {name: spent for name, spent in plugin.seconds.items() if name not in plugin.failed}
    found.write_text(json.dumps({"seconds": seconds, "lines": lines, "loading": loading}), encoding="utf-8")
    print(f"{len(seconds)} tests in {sum(seconds.values()):.0f} s; not used: {sorted(plugin.failed)}", flush=True)


class Learning:
    """The plugin that tells coverage.py which test runs, and keeps how long each took and whether it passed."""

    def __init__(self, coverage: Any) -> None:
        self.coverage = coverage
        self.seconds: dict[str, float] = {}
        self.failed: set[str] = set()

    @staticmethod
    def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
        """Leave out what opens a window."""
        items[:] = without_window(items)

    @pytest.hookimpl(wrapper=True, tryfirst=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        """Run a test with the engine's memory of earlier ones wiped, or what they have met would be met no more."""
        for remembering in caches():
            remembering.cache_clear()
        self.coverage.switch_context(item.nodeid)
        start = time.process_time()
        result = yield
        self.seconds[item.nodeid] = time.process_time() - start
        self.coverage.switch_context("")
        return result

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        """Keep what did not pass: it can notice nothing."""
        if not report.passed:
            self.failed.add(report.nodeid)


def tests_of(root: Path, folders: Sequence[str]) -> list[str]:
    """Return the test files of some folders, relative to the root."""
    return sorted(
        str(file.relative_to(root)) for folder in folders for file in (root / "tests" / folder).glob("test_*.py")
    )
