"""Every public function of the engine says the unit of every figure, under the names of its signature."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

from tests.arch.docstrings import class_faults, entries, faults, public_classes, public_functions, sections
from tests.arch.tree import parsed, python_files, shown

GOOD = '''
def mix(volume: float, share: float | None = None, *, name: str = "") -> float:
    """Return the volume after mixing.

    Parameters
    ----------
    volume : float
        Volume [L].
    share : float, optional
        Share of it,
        as a fraction [-].
    name : str
        What it is called.

    Returns
    -------
    float
        Volume [mL].
    """
'''


def only_function(source: str) -> ast.FunctionDef:
    function = ast.parse(source).body[0]
    assert isinstance(function, ast.FunctionDef)
    return function


def test_good_docstring_passes() -> None:
    assert faults(only_function(GOOD)) == []


@pytest.mark.parametrize(
    ("was", "becomes", "fault"),
    [
        ("Volume [L].", "Volume in litres.", "no [unit] for parameter volume"),
        ("as a fraction [-].", "as a fraction.", "no [unit] for parameter share"),
        ("Volume [mL].", "Volume.", "no [unit] for what is returned"),
        ("    volume : float", "    volumes : float", "no [unit] for parameter volume"),
        ("    name : str\n", "    title : str\n", "Parameters are"),
    ],
)
def test_fault_is_seen(was: str, becomes: str, fault: str) -> None:
    assert was in GOOD
    assert any(fault in said for said in faults(only_function(GOOD.replace(was, becomes))))


@pytest.mark.parametrize(
    ("source", "fault"),
    [
        ('def f(name: str) -> None:\n    """Do it."""\n', "Parameters are [], the signature says ['name']"),
        ('def f() -> str:\n    """Say it."""\n    return ""\n', "does not say what it returns"),
        ('def f() -> None:\n    """Do it."""\n    raise KeyError("x")\n', "does not say when it raises KeyError"),
    ],
)
def test_what_is_left_out_is_seen(source: str, fault: str) -> None:
    assert faults(only_function(source)) == [fault]


@pytest.mark.parametrize(
    ("docstring", "field", "found"),
    [
        ("A run.", "seconds: float", ["no [unit] for field seconds"]),
        ("A run, ``seconds`` [s].", "seconds: float", []),
        ("A run.", "lasts_s: float | None", []),
        ("A run.", "count: int", []),
        ("", "count: int", ["no docstring"]),
    ],
)
def test_fields_of_a_class_have_units(docstring: str, field: str, found: list[str]) -> None:
    body = f'    """{docstring}"""\n' if docstring else ""
    node = ast.parse(f"class Run:\n{body}    {field}\n").body[0]
    assert isinstance(node, ast.ClassDef)
    assert class_faults(node) == found


def test_missing_docstring_is_seen() -> None:
    assert faults(only_function("def f(name: str) -> str:\n    return name\n")) == ["no docstring"]


def test_figures_without_sections_are_seen() -> None:
    function = only_function('def f(rise: Floats) -> tuple[float, int]:\n    """Return the rise."""\n')
    assert faults(function) == [
        "Parameters are [], the signature says ['rise']", "no [unit] for parameter rise", "does not say what it returns",
        "no [unit] for what is returned",
    ]  # fmt: skip


def test_sections_and_entries_are_read() -> None:
    docstring = ast.get_docstring(only_function(GOOD))
    assert docstring is not None
    assert list(sections(docstring)) == ["Parameters", "Returns"]
    assert list(entries(sections(docstring)["Parameters"])) == ["volume", "share", "name"]
    assert list(entries("low, high : float\n    Bounds [mL].")) == ["low", "high"]


@pytest.mark.parametrize("file", python_files("engine"), ids=shown)
def test_engine_says_its_units(file: Path) -> None:
    found = {name: said for name, function in public_functions(parsed(file)) if (said := faults(function))}
    found |= {node.name: said for node in public_classes(parsed(file)) if (said := class_faults(node))}
    assert not found
