"""Every text that a keeper reads is said through evenwater.wording, and none when a module is loaded."""

from __future__ import annotations

import ast
import re

import pytest

from tests.arch.tree import parsed, python_files, shown

ROOMS = ("screens", "card", "ui")
SAYING = {"say", "say_many", "say_all", "term", "terms", "capitalized"}
TEXT = {"say", "say_many", "marked"}
# A run of words, or one that begins with a capital and goes on small.
PROSE = re.compile(r"[A-Za-z][,;:.]? +[A-Za-z“]|^[A-Z][a-z]+")
# A key of the keyboard, as Qt writes it.
KEY = re.compile(r"(?:Ctrl|Shift|Alt)\+")
# What takes ids, keys, names of properties, patterns and units: never a text.
TAKE_NO_TEXT = {
    "Field", "QFont", "QSettings", "Reason", "TypeVar", "Typed", "cast", "compile", "findChild", "fullmatch", "get", "getattr", "index", "match",
    "partition", "pop", "property", "removeprefix", "removesuffix", "replace", "setApplicationName", "setDesktopFileName",
    "setObjectName", "setOrganizationName", "setProperty", "setStyleSheet", "setValue", "startswith", "strftime", "sub", "value",
}  # fmt: skip
# Files with prose of another kind, and why.
OTHER = {
    "screens/answer_json.py": "the answer for programs is English",
    "screens/csv_headings.py": "headings as files have them, in every language",
    "screens/csv_writing.py": "headings of the file that is written, read back by the import",
    "card/fonts.py": "names of typefaces",
    "card/headless_card.py": "said on a terminal, in English",
    "ui/language.py": "every language by its own name",
    "ui/start.py": "said on a terminal, in English",
    "ui/theme.py": "style sheets and names of typefaces",
}
# Single strings that look like prose and are none, and why.
ALLOWED = {
    **dict.fromkeys(
        ("Correct", "Foods", "Jugs", "Log", "Pumps", "Stocks"),
        "a sheet's id; its name is said where the list of sheets shows it",
    ),
    **dict.fromkeys(("x per day", "mL per day", "0 L per day", "mg/L per day", "meq/L per day"), "a unit's id"),
    **dict.fromkeys(
        ("column x", "series x", "unit x", "unit of x", "unit of series x", "button x"),
        "an id that is made of a kind and a number",
    ),
    "Fusion": "a style of Qt",
    "x paper": "a setting",
    "NaCl": "a formula",
    "NBS scale": "a scale in the answer for programs",
    "Evenwater": "the program's name",
    "Letter": "a paper's id, which is its name",
    "as it is": "an id of what the keeper ruled",
    "magnesium mix": "an id of contents",
    "calcium hydroxide": "an id of a chemical",
    "magnesium chloride hexahydrate": "an id of a chemical",
    "magnesium sulfate heptahydrate": "an id of a chemical",
    "sodium carbonate anhydrous": "an id of a chemical",
    "liquid food": "an id of a food",
    "amino acids": "an id of a food",
    "trace mix": "an id of a food",
    "Never mix it with a concentrate of ": "how a sentence of the data begins",
    **dict.fromkeys(
        ("batch x", "timetable x x", "together x"), "what a printed code is made of, the same in every language"
    ),
    "in use": "the state of a card",
    "read down": "the name of a property",
    "label paper": "a setting",
}


def at_load(tree: ast.Module) -> list[str]:
    """Return what is said when the module is loaded: outside of every function."""
    inside: set[ast.AST] = set()
    for node in ast.walk(tree):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            inside.update(each for statement in node.body for each in ast.walk(statement))
        elif isinstance(node, ast.Lambda):
            inside.update(ast.walk(node.body))
    return [
        f"line {node.lineno}: {node.func.id}"
        for node in ast.walk(tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id in SAYING
        and node not in inside
    ]


def _name(call: ast.Call) -> str:
    return call.func.attr if isinstance(call.func, ast.Attribute) else getattr(call.func, "id", "")


def _no_text(node: ast.AST, above: dict[ast.AST, ast.AST]) -> bool:
    """Return whether a string stands where nobody reads it, or is said already."""
    child, parent = node, above[node]
    if isinstance(parent, ast.Expr | ast.Compare | ast.Subscript | ast.MatchValue) or (
        isinstance(parent, ast.Dict) and child in parent.keys
    ):
        return True
    while child in above:
        parent = above[child]
        if isinstance(parent, ast.Raise) or (isinstance(parent, ast.AnnAssign) and child is parent.annotation):
            return True
        if isinstance(parent, ast.FunctionDef) and (child is parent.returns or child in parent.decorator_list):
            return True
        if isinstance(parent, ast.Assign) and any(
            isinstance(to, ast.Name) and to.id == "__all__" for to in parent.targets
        ):
            return True
        if isinstance(parent, ast.Call) and _name(parent) in TEXT | TAKE_NO_TEXT:
            return True
        if isinstance(parent, ast.stmt):
            return False
        child = parent
    return False


def unsaid(tree: ast.Module) -> list[str]:
    """Return the prose of a module that is not said."""
    above = {child: node for node in ast.walk(tree) for child in ast.iter_child_nodes(node)}
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            text = "".join(str(piece.value) if isinstance(piece, ast.Constant) else "x" for piece in node.values)
            # Several parts without a word between them are no prose.
            if not re.search("[a-z]{3}", re.sub(r"\bx+\b", "", text)):
                continue
        elif (
            isinstance(node, ast.Constant)
            and isinstance(node.value, str)
            and not isinstance(above[node], ast.JoinedStr)
        ):
            text = node.value
        else:
            continue
        if (
            PROSE.search(text.replace("&", ""))
            and not KEY.match(text)
            and text not in ALLOWED
            and not _no_text(node, above)
        ):
            found.append(f"line {node.lineno}: {text!r}")
    return found


@pytest.mark.parametrize(
    ("source", "faults"),
    [
        ("A = say('Stop now')", 1),
        ("class A:\n    b = say_many('a', 'b', 2)", 1),
        ("def f(a=say('Stop')):\n    pass", 1),
        ("def f():\n    return say('Stop now')", 0),
        ("A = {'a': lambda p: say('Stop now')}", 0),
    ],
)
def test_saying_at_load_is_seen(source: str, faults: int) -> None:
    assert len(at_load(ast.parse(source))) == faults


@pytest.mark.parametrize(
    ("source", "faults"),
    [
        ("def f():\n    return 'Stop now'", 1),
        ("def f(n):\n    return f'{n} doses a day'", 1),
        ("A = ('reading', 'A reading')", 1),
        ("def f():\n    'Says nothing.'\n    return say('Stop now')", 0),
        ("A = ('reading', marked('A reading'))", 0),
        ("def f(a, b):\n    return f'{a}: {b}'", 0),
        ("def f(a):\n    raise ValueError('Not so')", 0),
    ],
)
def test_unsaid_prose_is_seen(source: str, faults: int) -> None:
    assert len(unsaid(ast.parse(source))) == faults


def test_nothing_is_said_when_a_module_is_loaded() -> None:
    assert {shown(file): said for file in python_files(*ROOMS, "session") if (said := at_load(parsed(file)))} == {}


def test_every_text_is_said() -> None:
    files = [file for file in python_files(*ROOMS) if shown(file) not in OTHER]
    assert {shown(file): left for file in files if (left := unsaid(parsed(file)))} == {}
