"""The product's source files, parsed once for all the checks of this folder."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PRODUCT = ROOT / "desktop" / "evenwater"


def python_files(*parts: str) -> list[Path]:
    """Return the product's Python files, or those of the packages and modules named."""
    if not parts:
        return sorted(PRODUCT.rglob("*.py"))
    found: list[Path] = []
    for part in parts:
        place = PRODUCT / part
        found += [place] if place.suffix == ".py" else sorted(place.rglob("*.py"))
    return found


@cache
def parsed(file: Path) -> ast.Module:
    return ast.parse(file.read_text(encoding="utf-8"), filename=str(file))


def shown(file: Path) -> str:
    """Return a file's name as it stands in messages and test ids."""
    return file.relative_to(PRODUCT).as_posix()


def imported(tree: ast.Module) -> Iterator[tuple[str, int, bool]]:
    """Yield every import as (module, line, whether it is carried out when the module loads)."""
    deferred: set[ast.AST] = set()
    for function in ast.walk(tree):
        if isinstance(function, ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda):
            deferred.update(ast.walk(function))
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield alias.name, node.lineno, node not in deferred
        elif isinstance(node, ast.ImportFrom) and node.module:
            yield node.module, node.lineno, node not in deferred


def texts(tree: ast.Module) -> Iterator[tuple[str, int]]:
    """Yield every string of a module that is not a docstring, pieces of f-strings included."""
    documentation = {
        node.body[0].value
        for node in ast.walk(tree)
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef)
        and node.body
        and isinstance(node.body[0], ast.Expr)
    }
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and node not in documentation:
            yield node.value, node.lineno
