"""Small changes of a module, one at a time, as mutmut's operators make them.

mutmut itself writes every possible change of a module into one file, 40,000 functions for the engine, before it tries the first.
Here its operators only say what could be changed; the changed source is written for those that are asked for. What is decorated or
stands outside any function (limits, constants of a formula) is changed too, which mutmut leaves out.
"""

from __future__ import annotations

import ast
import difflib
import math
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import libcst
from libcst.metadata import MetadataWrapper, PositionProvider
from mutmut.mutation.file_mutation import MutationVisitor, deep_replace
from mutmut.mutation.mutators import mutation_operators
from mutmut.mutation.pragma_handling import IgnoredCode


@dataclass(frozen=True)
class Change:
    """One change: its name (``module.function:number``), the lines it may touch, whether they are a function's own (neither its head
    nor outside of any), and the means to make it.
    """

    name: str
    path: Path
    lines: tuple[int, int]
    inside: bool
    _module: libcst.Module
    _mutation: Any

    def source(self) -> str:
        """Return the module's text with the change made."""
        changed = deep_replace(self._module, self._mutation.original_node, self._mutation.mutated_node)
        assert isinstance(changed, libcst.Module)
        return changed.code


class _Everywhere(MutationVisitor):
    """mutmut's visitor, led into decorated functions too: the module is read as a whole, so nothing is decorated twice."""

    def _skip_node_and_children(self, node: libcst.CSTNode) -> bool:
        if isinstance(node, libcst.FunctionDef):
            return False
        return bool(super()._skip_node_and_children(node))


def changes(path: Path) -> Iterator[Change]:
    """Yield every change of a module, in the order of its text; numbers count within a function or an outer statement."""
    source = path.read_text(encoding="utf-8")
    wrapper = MetadataWrapper(libcst.parse_module(source))
    visitor = _Everywhere(mutation_operators, IgnoredCode(set(), set(), set()))
    wrapper.visit(visitor)
    places = wrapper.resolve(PositionProvider)
    tree = ast.parse(source)
    owners = _owners(tree)
    statements = _statements(tree)
    counts: Counter[str] = Counter()
    for mutation in visitor.mutations:
        place = places[mutation.original_node]
        owner, begins = owners.get(place.start.line, ("", math.inf))
        counts[owner] += 1
        first, last = statements.get(place.start.line, (place.start.line, place.end.line))
        name = f"{path.stem}.{owner}:{counts[owner]}"
        yield Change(name, path, (first, last), first >= begins, wrapper.module, mutation)


def difference(before: str, after: str) -> tuple[str, str]:
    """Return the lines that differ, each side's run of them stripped and joined."""
    old, new = before.splitlines(), after.splitlines()
    for tag, start, end, start_new, end_new in difflib.SequenceMatcher(None, old, new, autojunk=False).get_opcodes():
        if tag != "equal":
            return _joined(old[start:end]), _joined(new[start_new:end_new])
    return "", ""


def _joined(lines: list[str]) -> str:
    return " ".join(line.strip() for line in lines)


def _owners(tree: ast.Module) -> dict[int, tuple[str, float]]:
    """Return the name of the function, method or outer statement each line belongs to, and where its body begins."""
    found: dict[int, tuple[str, float]] = {}

    def mark(node: ast.stmt, name: str) -> None:
        decorators = getattr(node, "decorator_list", [])
        start = min([node.lineno, *(decorator.lineno for decorator in decorators)])
        begins = node.body[0].lineno if isinstance(node, ast.FunctionDef) else math.inf
        for line in range(start, (node.end_lineno or node.lineno) + 1):
            found[line] = (name, begins)

    for node in tree.body:
        mark(node, _name(node))
        if isinstance(node, ast.ClassDef):
            for inner in node.body:
                if isinstance(inner, ast.FunctionDef):
                    mark(inner, f"{node.name}.{inner.name}")
    return found


def _name(node: ast.stmt) -> str:
    if isinstance(node, ast.FunctionDef | ast.ClassDef):
        return node.name
    target = node.targets[0] if isinstance(node, ast.Assign) else getattr(node, "target", None)
    return target.id if isinstance(target, ast.Name) else "module"


def _statements(tree: ast.Module) -> dict[int, tuple[int, int]]:
    """Return for every line the lines of its innermost statement, of a compound one (if, for, def) only the head."""
    found: dict[int, tuple[int, int]] = {}
    # Outer statements come before the inner ones, which then overwrite them.
    for node in ast.walk(tree):
        if not isinstance(node, ast.stmt):
            continue
        body = getattr(node, "body", None)
        last = node.end_lineno or node.lineno
        if isinstance(body, list) and body:
            last = max(node.lineno, body[0].lineno - 1)
        for line in range(node.lineno, last + 1):
            found[line] = (node.lineno, last)
    return found
