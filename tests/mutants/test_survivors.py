"""The list of changes that no test notices names code that is still there, and says of each why that may be so."""

from __future__ import annotations

import ast
import tomllib
from pathlib import Path

import pytest

_HERE = Path(__file__).resolve().parent
_ENGINE = _HERE.parents[1] / "desktop/evenwater/engine"
_SURVIVORS = tomllib.loads((_HERE / "survivors.toml").read_text(encoding="utf-8"))["survivor"]
_JUDGEMENTS = {"same result", "message of a programming error", "speed only", "within rounding", "open"}


@pytest.mark.parametrize("survivor", _SURVIVORS, ids=lambda survivor: survivor["name"])
def test_a_survivor_is_named_quoted_and_judged(survivor: dict[str, str]) -> None:
    assert set(survivor) == {"name", "was", "now", "judgement", "why"}
    assert survivor["judgement"] in _JUDGEMENTS
    assert survivor["was"] != survivor["now"]
    assert len(survivor["why"].split()) >= 4, "a judgement says why"
    module, _, owner = survivor["name"].rpartition(":")[0].partition(".")
    source = (_ENGINE / f"{module}.py").read_text(encoding="utf-8")
    assert survivor["was"] in " ".join(line.strip() for line in source.splitlines()), "this code is no longer there"
    assert owner in _names(ast.parse(source)), "this function is no longer there"


def test_no_survivor_is_judged_twice() -> None:
    names = [(entry["name"], entry["now"]) for entry in _SURVIVORS]
    assert len(names) == len(set(names))


def _names(tree: ast.Module) -> set[str]:
    found = {"module"}
    for node in tree.body:
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            found.add(node.name)
        if isinstance(node, ast.ClassDef):
            found |= {f"{node.name}.{inner.name}" for inner in node.body if isinstance(inner, ast.FunctionDef)}
        targets = node.targets if isinstance(node, ast.Assign) else [getattr(node, "target", None)]
        found |= {target.id for target in targets if isinstance(target, ast.Name)}
    return found
