"""Reads numpydoc docstrings strictly enough that a missing unit or a renamed parameter fails the build.

The rule, for every public function of the engine: it says what it does; where figures (floats or arrays of them) go in
or come out, each stands under Parameters or Returns with its unit in brackets, ``[-]`` where it has none; and where
there is a Parameters section, its names are the signature's, in its order.
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

_FIGURE = re.compile(r"\b(float|float64|floating|NDArray|ndarray|Floats?|Array)\b")
_UNIT = re.compile(r"\[[^\[\]]+\]")
_SECTION = re.compile(r"^(?P<title>[A-Z][A-Za-z ]+)\n-{3,}\s*$", re.MULTILINE)

Function = ast.FunctionDef | ast.AsyncFunctionDef


def public_functions(tree: ast.Module) -> Iterator[tuple[str, Function]]:
    """Yield the public functions of a module and the public methods of its public classes, with their names."""
    for node in tree.body:
        if isinstance(node, Function) and not node.name.startswith("_"):
            yield node.name, node
        elif isinstance(node, ast.ClassDef) and not node.name.startswith("_"):
            for inner in node.body:
                if isinstance(inner, Function) and not inner.name.startswith("_"):
                    yield f"{node.name}.{inner.name}", inner


def sections(docstring: str) -> dict[str, str]:
    """Return the underlined sections of a docstring by title."""
    marks = list(_SECTION.finditer(docstring))
    ends = [mark.start() for mark in marks[1:]] + [len(docstring)]
    return {mark["title"]: docstring[mark.end() : end].strip("\n") for mark, end in zip(marks, ends, strict=False)}


def entries(section: str) -> dict[str, str]:
    """Return the entries of a Parameters section: name -> everything said about it."""
    found: dict[str, str] = {}
    names: list[str] = []
    for line in section.splitlines():
        if line and not line[0].isspace():
            names = [name.strip().lstrip("*") for name in line.split(" : ")[0].split(",")]
            for name in names:
                found[name] = line
        else:
            for name in names:
                found[name] += f"\n{line}"
    return found


def signature(function: Function) -> dict[str, str]:
    """Return a function's parameters in order with their annotations, without self and cls."""
    given = function.args
    ordered = [*given.posonlyargs, *given.args, *([given.vararg] if given.vararg else [])]
    ordered += [*given.kwonlyargs, *([given.kwarg] if given.kwarg else [])]
    return {
        arg.arg: ast.unparse(arg.annotation) if arg.annotation else ""
        for arg in ordered
        if arg.arg not in {"self", "cls"}
    }


def faults(function: Function) -> list[str]:
    """Return what is wrong with a function's docstring, in words; empty when nothing is."""
    docstring = ast.get_docstring(function)
    if not docstring:
        return ["no docstring"]
    parts = sections(docstring)
    parameters = signature(function)
    described = entries(parts.get("Parameters", ""))
    found = []
    if described and list(described) != list(parameters):
        found.append(f"Parameters are {list(described)}, the signature says {list(parameters)}")
    for name, annotation in parameters.items():
        if _FIGURE.search(annotation) and not _UNIT.search(described.get(name, "")):
            found.append(f"no [unit] for parameter {name}")
    returned = ast.unparse(function.returns) if function.returns else ""
    is_property = any(
        ast.unparse(decorator) in {"property", "cached_property"} for decorator in function.decorator_list
    )
    said = docstring if is_property else parts.get("Returns", parts.get("Yields", ""))
    if _FIGURE.search(returned) and not _UNIT.search(said):
        found.append("no [unit] for what is returned")
    return found
