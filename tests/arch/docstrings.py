"""Reads numpydoc docstrings strictly enough that a missing unit or a renamed parameter fails the build.

The rule, for every public function of the engine: it says what it does; its parameters stand under Parameters, in the order of the
signature, what it returns under Returns, and what it raises itself under Raises; figures (floats or arrays of them) have their unit in
brackets there, ``[-]`` where it has none. The rule for every public class: it says what it is; figures among its fields have a unit in the
class's docstring, or in their own name (``dose_ml``).
"""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator

_FIGURE = re.compile(r"\b(float|float64|floating|NDArray|ndarray|Floats?|Array)\b")
_UNIT = re.compile(r"\[[^\[\]]+\]")
_SECTION = re.compile(r"^(?P<title>[A-Z][A-Za-z ]+)\n-{3,}\s*$", re.MULTILINE)

# A name that carries its unit.
_NAMED_UNIT = re.compile(r"_(?:c|cm|days?|g|hours|hpa|l|m|mg|min|ml|mm|s|seconds|share)$|_per_")

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
    if list(described) != list(parameters):
        found.append(f"Parameters are {list(described)}, the signature says {list(parameters)}")
    for name, annotation in parameters.items():
        if _FIGURE.search(annotation) and not _UNIT.search(described.get(name, "")):
            found.append(f"no [unit] for parameter {name}")
    returned = ast.unparse(function.returns) if function.returns else ""
    is_property = any(
        ast.unparse(decorator) in {"property", "cached_property"} for decorator in function.decorator_list
    )
    said = docstring if is_property else parts.get("Returns", parts.get("Yields", ""))
    if returned not in {"", "None"} and not said:
        found.append("does not say what it returns")
    unsaid = sorted(raised for raised in _raised(function) if raised not in parts.get("Raises", ""))
    found += [f"does not say when it raises {raised}" for raised in unsaid]
    if _FIGURE.search(returned) and not _UNIT.search(said):
        found.append("no [unit] for what is returned")
    return found


def _raised(function: Function) -> set[str]:
    """Return the names of what a function raises itself; what it calls is said there."""
    raised = (node.exc for node in ast.walk(function) if isinstance(node, ast.Raise) and node.exc is not None)
    return {ast.unparse(each.func if isinstance(each, ast.Call) else each) for each in raised}


def public_classes(tree: ast.Module) -> Iterator[ast.ClassDef]:
    """Yield the public classes of a module."""
    yield from (node for node in tree.body if isinstance(node, ast.ClassDef) and not node.name.startswith("_"))


def class_faults(node: ast.ClassDef) -> list[str]:
    """Return what is wrong with a class's docstring, in words; empty when nothing is."""
    docstring = ast.get_docstring(node)
    if not docstring:
        return ["no docstring"]
    if _UNIT.search(docstring):
        return []
    fields = (each for each in node.body if isinstance(each, ast.AnnAssign) and isinstance(each.target, ast.Name))
    return [
        f"no [unit] for field {each.target.id}"  # type: ignore[union-attr]
        for each in fields
        if _FIGURE.search(ast.unparse(each.annotation)) and not _NAMED_UNIT.search(each.target.id)  # type: ignore[union-attr]
    ]
