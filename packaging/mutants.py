"""Changes the engine in small ways, one at a time, and says which changes no test notices.

A random sample of the changes that mutmut can make is tried: ``python packaging/mutants.py --sample 500``. It works on a copy, so
nothing here is touched. mutmut is no part of the locked development environment; give a folder it is installed in by ``--mutmut``
(``pip install --target FOLDER mutmut``), or install it beside the tests.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

_ROOT = Path(__file__).resolve().parents[1]
# mutmut finds a package below src only.
_SOURCE = "src"
# The tests of the numbers; those with a window are slow and see the same numbers.
_TESTS = ("tests/engine", "tests/published", "tests/property", "tests/carbonate", "tests/headless")
# mutmut's exit codes of a mutant's tests.
_SURVIVED, _KILLED, _NO_TESTS, _TIMED_OUT = 0, (1, 3), (5, 33), (-24, 24, 36, 152)
_CONFIG = """
[tool.mutmut]
source_paths = ["src"]
only_mutate = [{only}]
pytest_add_cli_args_test_selection = [{tests}]
pytest_add_cli_args = ["-p", "no:xdist", "-p", "no:cacheprovider"]
also_copy = ["resources", "packaging", "src"]
mutate_only_covered_lines = true
"""


def main() -> int:
    """Try a sample and print what survived; returns 1 when fewer than nine tenths were noticed."""
    options = _options()
    folder = Path(options.folder or tempfile.mkdtemp(prefix="mutants-"))
    if not (folder / "mutants").is_dir():
        _prepare(folder, options.only)
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    if options.mutmut:
        environment["PYTHONPATH"] = os.pathsep.join(filter(None, (options.mutmut, os.environ.get("PYTHONPATH"))))
    if not _names(folder):
        # Makes the changes and learns which tests meet which function; the name is none, so nothing is tried.
        _mutmut(folder, environment, ["no.such.mutant"], options.children)
    names = sorted(_names(folder))
    chosen = random.Random(options.seed).sample(names, min(options.sample, len(names)))  # noqa: S311  (no secret)
    tried = _names(folder)
    left = [name for name in chosen if tried[name] is None]
    for start in range(0, len(left), 100):
        _mutmut(folder, environment, left[start : start + 100], options.children)
    return _report(folder, chosen, len(names))


def _options() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--sample", type=int, default=500)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", default="src/evenwater/engine/*", help="which files to change")
    parser.add_argument("--folder", help="where the copy stands; one that is there already is gone on with")
    parser.add_argument("--mutmut", help="a folder that mutmut is installed in")
    parser.add_argument("--children", type=int, default=2)
    return parser.parse_args()


def _prepare(folder: Path, only: str) -> None:
    ignored = shutil.ignore_patterns(".git", ".venv", "__pycache__", ".*_cache", "*.egg-info")
    shutil.copytree(_ROOT, folder, dirs_exist_ok=True, ignore=ignored)
    (folder / "desktop").rename(folder / _SOURCE)
    project = folder / "pyproject.toml"
    text = project.read_text(encoding="utf-8").replace('"desktop"', f'"{_SOURCE}"')
    tests = ", ".join(f'"{name}"' for name in _TESTS)
    project.write_text(text + _CONFIG.format(only=f'"{only}"', tests=tests), encoding="utf-8")


def _mutmut(folder: Path, environment: dict[str, str], names: list[str], children: int) -> None:
    command = [sys.executable, "-m", "mutmut", "run", "--max-children", str(children), *names]
    with (folder / "mutmut.log").open("ab") as log:
        subprocess.run(command, cwd=folder, env=environment, stdout=log, stderr=log, check=False)


def _names(folder: Path) -> dict[str, int | None]:
    """Return every change with the exit code of its tests; None of one that was not tried."""
    found: dict[str, int | None] = {}
    for meta in (folder / "mutants").rglob("*.meta"):
        found.update(json.loads(meta.read_text(encoding="utf-8"))["exit_code_by_key"])
    return found


def _report(folder: Path, chosen: list[str], of: int) -> int:
    codes = _names(folder)
    counts: Counter[str] = Counter()
    for name in sorted(chosen):
        code = codes[name]
        result = (
            "not tried" if code is None
            else "survived" if code == _SURVIVED
            else "killed" if code in _KILLED or code in _TIMED_OUT
            else "not met by a test" if code in _NO_TESTS
            else f"exit {code}"
        )  # fmt: skip
        counts[result] += 1
        if result != "killed":
            print(f"{result}: {name}")
    tried = sum(counts.values()) - counts["not tried"]
    share = counts["killed"] / max(tried, 1)
    print(f"{of} changes are possible, {tried} were tried: {dict(counts)}; noticed {100 * share:.1f} %")
    return 0 if tried and share >= 0.9 else 1


if __name__ == "__main__":
    raise SystemExit(main())
