"""Takes every text that a keeper reads out of the program, and brings the translations to it and back.

    .venv/bin/python packaging/translations.py            writes resources/translations/evenwater_LANGUAGE.ts: new texts come, gone ones go,
                                                          what was translated stays; then checks them and compiles the .qm beside them
    .venv/bin/python packaging/translations.py check      says what is wrong and what is still to be translated; writes nothing

A file is edited with Qt Linguist or by hand. The texts are the literals of ``say``, ``say_many`` and ``marked`` (evenwater.wording), the
words of the data files and the words among the units. One more language: its tag in ``LANGUAGES`` here and in ``evenwater.ui.language``.
"""

from __future__ import annotations

import ast
import re
import subprocess
import sys
import tomllib
import xml.etree.ElementTree as ET
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from pathlib import Path
from string import Formatter
from typing import Any
from xml.sax.saxutils import escape

import PySide6

ROOT = Path(__file__).resolve().parents[1]
PRODUCT = ROOT / "desktop" / "evenwater"
RESOURCES = ROOT / "resources"
FOLDER = RESOURCES / "translations"
CONTEXT = "evenwater"
LANGUAGES = ("de", "es", "fr")
# Singular and plural: all of these languages have two forms.
FORMS = 2
ROOMS = ("screens", "card", "session", "ui")
# Which strings of a data file are read by a keeper, by the name of their key; the names of the tables, where they are read as well.
DATA: Mapping[str, tuple[bool, frozenset[str]]] = {
    "parameters.toml": (True, frozenset()),
    "chemicals.toml": (True, frozenset({"tall_man", "signal_word", "statements", "cautions"})),
    "why.toml": (False, frozenset({"text"})),
    "glossary.toml": (False, frozenset({"name", "text"})),
}

if str(ROOT / "desktop") not in sys.path:
    sys.path.insert(0, str(ROOT / "desktop"))

from evenwater.engine.units import KINDS  # noqa: E402  (found only from here on)


@dataclass
class Text:
    """One text: its English, that for one where it depends on a number, what tells it apart, and where it is said."""

    source: str
    one: str = ""
    about: str = ""
    files: list[str] = field(default_factory=list)
    places: list[str] = field(default_factory=list)

    @property
    def key(self) -> tuple[str, str]:
        """What Qt finds it by."""
        return self.source, self.about


@dataclass(frozen=True)
class Done:
    """What a translator has made of a text: the text, or its forms; ``finished`` unless it is marked as not."""

    forms: tuple[str, ...]
    finished: bool

    @property
    def whole(self) -> bool:
        """Whether it can be used."""
        return self.finished and all(self.forms)


Texts = dict[tuple[str, str], Text]
Translations = dict[tuple[str, str], Done]


def extract() -> Texts:
    """Return every text of the program, in the order of the files."""
    found: Texts = {}
    for room in ROOMS:
        for file in sorted((PRODUCT / room).glob("*.py")):
            for text, place in said_in(file):
                _add(found, text, f"../../desktop/evenwater/{room}/{file.name}", place)
    for name in DATA:
        for source, place in words_of(RESOURCES / name):
            _add(found, Text(source), f"../{name}", place)
    for kind in KINDS.values():
        for unit in kind.units:
            if has_words(unit.shown):
                _add(found, Text(unit.shown), "../../desktop/evenwater/engine/units.py", "a unit beside a figure")
    return found


def _add(found: Texts, text: Text, file: str, place: str) -> None:
    known = found.setdefault(text.key, text)
    if known.one != text.one:
        raise ValueError(f"{file}: {text.source!r} is said with a number here and without, or with another singular")
    if file not in known.files:
        known.files.append(file)
    if place and place not in known.places:
        known.places.append(place)


def has_words(unit: str) -> bool:
    """Return whether a unit has a word in it that is translated: mL per hour, and not mL."""
    return bool(re.search(r"\b(?:per|as|imperial|[a-z]{4,})\b", unit))


def said_in(file: Path) -> Iterator[tuple[Text, str]]:
    """Yield the texts of a module, each with the function that it stands in."""
    tree = ast.parse(file.read_text(encoding="utf-8"), filename=str(file))
    yield from _walk(tree, file, "")


def _walk(node: ast.AST, file: Path, place: str) -> Iterator[tuple[Text, str]]:
    if isinstance(node, ast.FunctionDef | ast.ClassDef):
        place = f"{place}.{node.name}" if place else node.name
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("say", "say_many", "marked"):
        literals = [arg.value for arg in node.args if isinstance(arg, ast.Constant) and isinstance(arg.value, str)]
        about = "".join(k.value.value for k in node.keywords if k.arg == "about" and isinstance(k.value, ast.Constant))
        if node.func.id == "say_many":
            if len(literals) != 2:
                raise ValueError(f"{file.name}:{node.lineno}: both texts of say_many must be literals")
            yield Text(literals[1], literals[0], about), place
        elif literals and literals[0]:
            yield Text(literals[0], "", about), place
    for child in ast.iter_child_nodes(node):
        yield from _walk(child, file, place)


def words_of(file: Path) -> Iterator[tuple[str, str]]:
    """Yield the texts of a data file, each with the table that it stands in."""
    names, keys = DATA[file.name]
    for table, content in tomllib.loads(file.read_text(encoding="utf-8")).items():
        if names:
            yield table, "a name"
        yield from _strings(content, keys, table)


def _strings(content: Any, keys: frozenset[str], place: str) -> Iterator[tuple[str, str]]:
    for key, value in content.items() if isinstance(content, dict) else ():
        if isinstance(value, dict):
            yield from _strings(value, keys, f"{place}.{key}")
        elif key in keys:
            for text in value if isinstance(value, list) else [value]:
                if text:
                    yield text, place
                if text and key == "signal_word":
                    yield text.upper(), place


def parts_of(text: str) -> frozenset[str]:
    """Return the names of the parts of a text."""
    return frozenset(name for _, name, _, _ in Formatter().parse(text) if name is not None)


def read(file: Path) -> Translations:
    """Return what a file of translations holds."""
    if not file.is_file():
        return {}
    found: Translations = {}
    for message in ET.parse(file).getroot().iter("message"):  # noqa: S314  (a file of this repository)
        made = message.find("translation")
        if made is None:
            continue
        forms = [form.text or "" for form in made.findall("numerusform")] or [made.text or ""]
        key = (message.findtext("source") or "", message.findtext("comment") or "")
        found[key] = Done(tuple(forms), made.get("type") is None)
    return found


def written(language: str, texts: Texts, known: Translations) -> str:
    """Return a file of translations with exactly these texts."""
    lines = [
        '<?xml version="1.0" encoding="utf-8"?>',
        "<!DOCTYPE TS>",
        f'<TS version="2.1" language="{language}" sourcelanguage="en">',
        "<context>",
        f"    <name>{CONTEXT}</name>",
    ]
    for text in texts.values():
        count = FORMS if text.one else 1
        done = known.get(text.key, Done(("",) * count, False))
        forms = done.forms if len(done.forms) == count else ("",) * count
        state = "" if done.finished and all(forms) else ' type="unfinished"'
        lines.append('    <message numerus="yes">' if text.one else "    <message>")
        lines += [f'        <location filename="{_xml(file)}"/>' for file in text.files]
        lines.append(f"        <source>{_xml(text.source)}</source>")
        if text.about:
            lines.append(f"        <comment>{_xml(text.about)}</comment>")
        said = "; ".join(filter(None, (f"for 1: {text.one}" if text.one else "", ", ".join(text.places[:3]))))
        if said:
            lines.append(f"        <extracomment>{_xml(said)}</extracomment>")
        if text.one:
            inner = "".join(f"\n            <numerusform>{_xml(form)}</numerusform>" for form in forms)
            lines.append(f"        <translation{state}>{inner}\n        </translation>")
        else:
            lines.append(f"        <translation{state}>{_xml(forms[0])}</translation>")
        lines.append("    </message>")
    return "\n".join([*lines, "</context>", "</TS>", ""])


def _xml(text: str) -> str:
    """Return a text for a file, its no-break spaces so that they are seen."""
    return escape(text, {"\u00a0": "&#xa0;", '"': "&quot;"})


def faults(texts: Texts, made: Translations) -> Iterator[str]:
    """Yield what is wrong with translations: texts that are not there, and other parts than the English has."""
    yield from (f"not in the program: {source!r}" for source, _ in made.keys() - texts.keys())
    for key, text in texts.items():
        done = made.get(key)
        if done is None:
            yield f"missing: {text.source!r}"
            continue
        for number, form in enumerate(done.forms):
            try:
                parts = parts_of(form)
            except ValueError as error:
                yield f"{text.source!r}: {error}"
                continue
            wanted = [parts_of(text.source)]
            if text.one and number == 0:
                # What is said for one may have the parts of the English for one, and leave the number out: "a day".
                wanted += [parts_of(text.one)] + [each - {"n"} for each in (*wanted, parts_of(text.one))]
            if form and parts not in wanted:
                yield f"{text.source!r}: the parts of {form!r} are not its own"
            loose = [
                text.source[:1].isspace() and not form[:1].isspace(),
                text.source[-1:].isspace() and not form[-1:].isspace(),
            ]
            if form and any(loose):
                yield f"{text.source!r}: {form!r} lacks the space at its beginning or end"


def missing(texts: Texts, made: Translations) -> list[str]:
    """Return the texts that are not translated yet."""
    return [text.source for key, text in texts.items() if key not in made or not made[key].whole]


def compiled(file: Path, out: Path) -> None:
    """Compile a file of translations with Qt's own tool."""
    tool = Path(PySide6.__file__).parent / ("lrelease.exe" if sys.platform == "win32" else "lrelease")
    # Beside it first: a running window has the old one in its memory, and would fall over if that changed.
    new = out.with_suffix(".new")
    subprocess.run([tool, "-silent", file, "-qm", new], check=True)
    new.replace(out)


def file_of(language: str) -> Path:
    """Return where the translations of a language stand."""
    return FOLDER / f"evenwater_{language}.ts"


def main(wish: str) -> int:
    """Write, check and compile; returns 1 where something is wrong."""
    texts = extract()
    status = 0
    for language in LANGUAGES:
        file = file_of(language)
        if wish != "check":
            FOLDER.mkdir(exist_ok=True)
            file.write_text(written(language, texts, read(file)), encoding="utf-8")
        made = read(file)
        wrong = list(faults(texts, made))
        print(*wrong, sep="\n", end="\n" if wrong else "")
        print(f"{language}: {len(texts)} texts, {len(missing(texts, made))} to be translated, {len(wrong)} faults")
        status = status or int(bool(wrong))
        if wish != "check":
            compiled(file, file.with_suffix(".qm"))
    return status


if __name__ == "__main__":
    sys.exit(main(sys.argv[1] if len(sys.argv) > 1 else ""))
