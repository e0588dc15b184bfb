"""The layers, as far as import-linter (`newcomer.py check`) cannot see them: third parties, deferred imports, size."""

from __future__ import annotations

import ast
import sys
from pathlib import Path

import pytest

from tests.arch.tree import PRODUCT, imported, parsed, python_files, shown

QT = {"PySide6", "shiboken6", "pyqtgraph"}
QT_FREE = (
    "engine", "store", "screens", "headless.py", "headless_calibration.py", "headless_chemistry.py", "headless_consumption.py", "headless_exchange.py", "headless_outcome.py",
    "headless_jug.py", "headless_recovery.py", "headless_stock.py", "headless_timetable.py", "headless_upkeep.py", "question_file.py", "question_exchange.py", "question_jug.py", "question_parts.py", "question_recovery.py", "question_tables.py",
    "assets.py", "wording.py",
)  # fmt: skip

# What each Qt-free layer may take from outside the standard library.
THIRD_PARTIES = {
    "engine": {"numpy", "pint", "periodictable", "gsw"},
    "store": {"numpy", "peewee", "playhouse", "psycopg"},
    "screens": {"icalendar", "numpy"},
    "headless.py": set(),
    "headless_calibration.py": set(),
    "headless_chemistry.py": set(),
    "headless_consumption.py": set(),
    "headless_exchange.py": set(),
    "headless_outcome.py": set(),
    "headless_stock.py": set(),
    "headless_jug.py": set(),
    "headless_recovery.py": set(),
    "headless_timetable.py": set(),
    "headless_upkeep.py": set(),
    "question_file.py": set(),
    "question_exchange.py": set(),
    "question_jug.py": set(),
    "question_parts.py": set(),
    "question_recovery.py": set(),
    "question_tables.py": set(),
    "assets.py": set(),
    "wording.py": set(),
}
# Only what opens a log on a server may load its driver and the keyring, and only when one was chosen.
OF_A_SERVER = {"psycopg", "psycopg2", "keyring"}
NETWORK = {"aiohttp", "ftplib", "http", "httpx", "requests", "smtplib", "socket", "ssl", "urllib", "urllib3", "xmlrpc"}


def outsiders(tree: ast.Module, allowed: set[str]) -> list[str]:
    """Return the imports of a module that are neither the product's, the standard library's nor allowed."""
    return [
        f"line {line}: {module}"
        for module, line, _ in imported(tree)
        if (top := module.split(".")[0]) not in sys.stdlib_module_names and top not in allowed | {"evenwater"}
    ]


def heavy_at_load(tree: ast.Module) -> list[str]:
    """Return the imports carried out on loading that cost more than a first paint may."""
    heavy = {"pint", "periodictable", "gsw", "icalendar", "scipy"}
    return [
        f"line {line}: {module}"
        for module, line, at_load in imported(tree)
        if at_load and module.split(".")[0] in heavy
    ]


def networked(tree: ast.Module) -> list[str]:
    """Return the imports of a module that could reach a network."""
    return [
        f"line {line}: {module}"
        for module, line, _ in imported(tree)
        if module.split(".")[0] in NETWORK or module.startswith("PySide6.QtNetwork")
    ]


def serving(tree: ast.Module) -> list[str]:
    """Return the imports of a module, on loading or later, of what belongs to a log on a server."""
    return [f"line {line}: {module}" for module, line, _ in imported(tree) if module.split(".")[0] in OF_A_SERVER]


def printing(tree: ast.Module) -> list[str]:
    """Return the calls of print and input in a module."""
    return [
        f"line {node.lineno}: {node.func.id}"
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in {"print", "input"}
    ]


@pytest.mark.parametrize(
    ("check", "source"),
    [
        (lambda tree: outsiders(tree, {"numpy"}), "def f():\n    from PySide6 import QtCore"),
        (lambda tree: outsiders(tree, {"numpy"}), "import pyqtgraph as pg"),
        (heavy_at_load, "try:\n    import pint\nexcept ImportError:\n    pass"),
        (networked, "def f():\n    import urllib.request"),
        (networked, "from PySide6.QtNetwork import QNetworkReply"),
        (serving, "def f():\n    import psycopg"),
        (printing, "def f():\n    print(1)"),
    ],
)
def test_checkers_see_a_breach(check, source: str) -> None:
    assert check(ast.parse(source))


def test_checkers_allow_what_is_allowed() -> None:
    source = "import json\nimport numpy as np\nfrom evenwater.engine import units\ndef f():\n    import pint\n"
    tree = ast.parse(source)
    assert outsiders(tree, {"numpy", "pint"}) == []
    assert heavy_at_load(tree) == networked(tree) == printing(tree) == []


@pytest.mark.parametrize("layer", THIRD_PARTIES)
def test_only_agreed_third_parties(layer: str) -> None:
    found = {shown(file): outsiders(parsed(file), THIRD_PARTIES[layer]) for file in python_files(layer)}
    assert not {name: lines for name, lines in found.items() if lines}


def test_every_layer_is_there() -> None:
    for layer in (*QT_FREE, "session", "card", "ui"):
        assert python_files(layer), layer


def test_qt_never_enters_the_layers_below_it() -> None:
    for file in python_files(*QT_FREE):
        qt = [module for module, _, _ in imported(parsed(file)) if module.split(".")[0] in QT]
        assert not qt, shown(file)


def _without_types(tree: ast.Module) -> ast.Module:
    """Return a module without what only a type checker loads."""
    kept = [node for node in tree.body if not (isinstance(node, ast.If) and ast.unparse(node.test) == "TYPE_CHECKING")]
    return ast.Module(kept, [])


@pytest.mark.parametrize("file", python_files(), ids=shown)
def test_file_keeps_the_house_rules(file: Path) -> None:
    lines = file.read_text(encoding="utf-8").count("\n")
    assert lines <= 400, f"{lines} lines: split it"
    tree = parsed(file)
    assert ast.get_docstring(tree), "says nothing about itself"
    assert heavy_at_load(tree) == []
    assert networked(tree) == []
    # Inside the function that opens a connection; elsewhere only for the types of a checker.
    if file != PRODUCT / "store" / "link.py":
        assert serving(_without_types(tree)) == []
    if file.parent != PRODUCT:  # headless and __main__ speak to a terminal
        assert printing(tree) == []


def test_main_window_stays_small() -> None:
    lines = (PRODUCT / "ui" / "main_window.py").read_text(encoding="utf-8").count("\n")
    assert lines < 300
