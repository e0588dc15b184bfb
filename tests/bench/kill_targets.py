"""What the plug is pulled on, and in which state everything is found afterwards."""

from __future__ import annotations

import os
import re
import shutil
import sqlite3
from abc import ABC, abstractmethod
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import closing, contextmanager
from multiprocessing.connection import Connection
from pathlib import Path

import pypdf

from evenwater.store import Store, StoreError
from evenwater.store.backups import folder_of
from evenwater.store.migrations import MIGRATIONS
from tests.bench import kill_programs as programs
from tests.bench.kill_programs import BEGAN, CARRIED, LOG, NOTES, READINGS, SOURCE, Word, held
from tests.store.logged import note, reading
from tests.store.old_logs import write_history
from tests.store.writing import Times, added, card_for, typed

Program = Callable[[Path, int, Connection], None]
_NEWEST = len(MIGRATIONS)
_HISTORIES = 4


class Torn(Exception):
    """Something is there by half, or cannot be opened."""


class Target(ABC):
    """Something that is written; one object is used for one row of kills."""

    name: str
    lives = 1
    """So many programs work in one folder, one after the other."""
    words = 12
    """A program is killed after so many of its words at most."""

    @abstractmethod
    def prepare(self, place: Path, number: int) -> dict[str, str]:
        """Fill a folder; return the states in which things are."""

    @abstractmethod
    def program(self, number: int, life: int) -> tuple[Program, int]:
        """Return what is to be killed, and what it is given."""

    @abstractmethod
    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        """Return in which states things are found, more than one where something is there twice; raises ``Torn``."""


class Logging(Target):
    """Entries, fields and plans."""

    name, lives, words = "logging", 40, 20

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        with Store.open(place / LOG) as store:
            store.apply(added("a", number="0"))
        return {"field": "0"}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.log_entries, life

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        with _opened(place / LOG) as store:
            doses = store.entries("a", ("dose",))
            live = [plan.plan_id for plan in store.plans("a")]
            started = {plan.plan_id for plan in store.plans("a", live=False)}
            notes = {entry.id.removeprefix("start ") for entry in store.entries("a", ("note",))}
            cards = [card.plan_id for card in store.cards("in use")]
            if started != notes or not started <= {card.plan_id for card in store.cards()} or cards != live:
                raise Torn(f"plans {sorted(started ^ notes)}, cards {cards}, live {live}")
            found: dict[str, list[str]] = {"field": [store.values("a")["number"].text], "live plan": live}
            at = Counter(entry.at for entry in doses)
            for entry in doses:
                found.setdefault(entry.id, []).extend([f"{entry.value:g}"] * at[entry.at])
        _back_and_forth(place / LOG)
        return found


class Importing(Target):
    """The readings of spreadsheets."""

    name, lives, words = "import", 10, 6

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        with Store.open(place / LOG) as store:
            store.apply(added("a"))
        return {}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.import_sheets, life

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        found: dict[str, list[str]] = {}
        with _opened(place / LOG) as store:
            readings = store.entries("a", ("reading",))
        _back_and_forth(place / LOG)
        for thing, count in Counter(entry.fields["text"].text for entry in readings).items():
            if count % READINGS:
                raise Torn(f"{count} of {READINGS} readings of {thing}")
            found[thing] = ["whole"] * (count // READINGS)
        if len({entry.at for entry in readings}) != len(readings):
            raise Torn("two readings at the same minute")
        return found


class Migrating(Target):
    """A log of an older version, opened for the first time by this program."""

    name, lives, words = "migration", 1, 1

    def __init__(self) -> None:
        self._old: dict[tuple[int, int], tuple[int, Path, list[str], list[str]]] = {}
        self._now = (0, Path(), [""], [""])

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        history, older = divmod(number, _NEWEST - 1)
        key = (older + 1, history % _HISTORIES)
        if key not in self._old:
            self._old[key] = _old_log(place.parent / "old", *key)
        self._now = self._old[key]
        shutil.copyfile(self._now[1], place / LOG)
        return {"version": f"{self._now[0]}"}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.migrate, self._now[0]

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        version, _, before, after = self._now
        # As it lies there, before the product opens it again.
        aside = place / "looked at"
        aside.mkdir()
        for part in place.glob(f"{LOG}*"):
            shutil.copyfile(part, aside / part.name)
        found, content = _content(aside / LOG)
        if content != {version: before, _NEWEST: after}.get(found):
            raise Torn(f"version {found} of {version} holds something else")
        copies = [path for path in folder_of(place / LOG).glob("*.sqlite") if " version " in path.name]
        if found == _NEWEST and not copies:
            raise Torn("migrated without a copy of the log as it was")
        for copy in copies:
            if _content(copy) != (version, before):
                raise Torn(f"{copy.name} is not the log as it was")
        with _opened(place / LOG) as store:
            store.commit_point()
        if _content(place / LOG) != (_NEWEST, after):
            raise Torn(f"opened again it is not what version {version} becomes")
        return {"version": [f"{found}"]}


class Copying(Target):
    """The copies of a log, and putting one back."""

    name, lives, words = "backup and restore", 25, 14

    def __init__(self) -> None:
        self._said: set[str] = set()
        self._sound: set[tuple[str, int]] = set()

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        self._said, self._sound = set(), set()
        with Store.open(place / LOG) as store:
            store.apply(added("a"))
            store.log([note(f"kept {line}", "x" * 500, BEGAN) for line in range(NOTES)])
        shutil.copyfile(place / LOG, place / SOURCE)
        return {"log": "kept"}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.back_up, life

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        self._said |= {name for word in words if word[:2] == ("did", "log") for name in word[3].split(", ")}
        for copy in folder_of(place / LOG).glob("*.sqlite"):
            key = (copy.name, copy.stat().st_mtime_ns)
            if key not in self._sound and " damaged" not in copy.name:
                _content(copy)
                self._sound.add(key)
        if (place / CARRIED).exists():
            _content(place / CARRIED)
        with _opened(place / LOG) as store:
            found = programs.named([entry.id for entry in store.entries("a", ("note",))])
        _back_and_forth(place / LOG)
        if "torn" in (found, held(place / CARRIED)):
            raise Torn("half of a group of notes")
        there = set(found.split(", "))
        if not self._said <= there:
            # What is not in the log was there when it was put back: then a copy has it.
            for copy in folder_of(place / LOG).glob("*before restoring*.sqlite"):
                there |= set(held(copy).split(", "))
        missing = self._said - there
        return {"log": ["" if missing else found], "carried": [held(place / CARRIED)]}


class Damaged(Target):
    """A copy that takes the place of a log that cannot be opened."""

    name, lives, words = "damaged log", 1, 1

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        Copying.prepare(Copying(), place, number)
        content = bytearray((place / LOG).read_bytes())
        content[4096 : 3 * 4096] = os.urandom(2 * 4096)
        (place / LOG).write_bytes(bytes(content))
        (place / f"{LOG}-wal").write_bytes(b"left over")
        self._was = bytes(content)
        return {"log": "damaged"}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.put_back_damaged, number

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        if (place / LOG).read_bytes() == self._was:
            return {"log": ["damaged"]}
        aside = list(folder_of(place / LOG).glob("* damaged.sqlite"))
        if [path.read_bytes() for path in aside] != [self._was]:
            raise Torn("the damaged log is not kept")
        with _opened(place / LOG) as store:
            return {"log": [programs.named([entry.id for entry in store.entries("a", ("note",))])]}


class Printing(Target):
    """Cards that are registered, then written or printed as PDF."""

    name, lives, words = "printing", 20, 8

    def prepare(self, place: Path, number: int) -> dict[str, str]:
        with Store.open(place / LOG) as store:
            store.apply(added("a"))
        return {}

    def program(self, number: int, life: int) -> tuple[Program, int]:
        return programs.print_cards, life

    def look(self, place: Path, words: Sequence[Word]) -> dict[str, list[str]]:
        with _opened(place / LOG) as store:
            cards = {card.plan_id: card for card in store.cards()}
            in_use = [card.plan_id for card in store.cards("in use")]
        if len(in_use) > 1:
            raise Torn(f"{in_use} are in use at once")
        found = {}
        for path in place.glob("*.pdf"):
            if path.stem not in cards:
                raise Torn(f"{path.name} is on paper and not in the log")
            found[path.name] = ["whole" if _whole_pdf(path) else "half"]
        return found


TARGETS: dict[str, Callable[[], Target]] = {
    target.name: target for target in (Logging, Importing, Migrating, Copying, Damaged, Printing)
}


@contextmanager
def _opened(file: Path) -> Iterator[Store]:
    """Open a log as the product does, then let SQLite check it."""
    try:
        with Store.open(file, Times().clock()) as store:
            yield store
    except StoreError as error:
        raise Torn(f"{error.reason.code} {dict(error.reason.params)}") from error
    _checked(file)


def _checked(file: Path) -> None:
    with closing(sqlite3.connect(file)) as plain:
        for check, sound in (("integrity_check", [("ok",)]), ("foreign_key_check", [])):
            if (said := plain.execute(f"PRAGMA {check}").fetchall()) != sound:
                raise Torn(f"{file.name}: {check} says {said[:3]}")


def _content(file: Path) -> tuple[int, list[str]]:
    """Return the version of a log and all that is in it as text, after SQLite has checked it."""
    try:
        _checked(file)
        with closing(sqlite3.connect(file)) as plain:
            return plain.execute("PRAGMA user_version").fetchone()[0], list(plain.iterdump())
    except sqlite3.Error as error:
        raise Torn(f"{file.name}: {error}") from error


def _back_and_forth(file: Path) -> None:
    """Go some steps back and forth again in a copy of a log: what can be undone was written with what was done."""
    aside = file.parent / "aside" / file.name
    aside.parent.mkdir(exist_ok=True)
    shutil.copyfile(file, aside)
    with Store.open(aside, Times().clock()) as store:
        before = store.entries("a"), store.values("a")
        back = sum(store.undo() is not None for _ in range(3))
        forth = sum(store.redo() is not None for _ in range(back))
        if forth != back or (store.entries("a"), store.values("a")) != before:
            raise Torn("undo and redo lead elsewhere")


def _whole_pdf(path: Path) -> bool:
    content = path.read_bytes()
    if not content.startswith(b"%PDF-") or not re.search(rb"%%EOF\s*$", content):
        return False
    told = pypdf.PdfReader(path).metadata
    return told is not None and path.stem in str(told.title)


def _old_log(folder: Path, version: int, history: int) -> tuple[int, Path, list[str], list[str]]:
    """Write a log of an older version; return it with what is in it and what that must become."""
    folder.mkdir(exist_ok=True)
    file = folder / f"{version}-{history}.sqlite"
    write_history(file, history)
    with Store.open(file, Times().clock(), MIGRATIONS[:version]) as store:
        store.apply(added("a", name="North frag bay"))
        store.apply(typed("a", "ph", "8.1"))
        if version > 1:
            store.add_card(card_for("A1", "s1:1"))
        if version > 2:  # entries came with version 3
            store.log([reading(f"r{n}", 6.0 + n / 100, BEGAN) for n in range(200)])
            store.undo()
            store.redo()
    new = folder / f"{version}-{history} now.sqlite"
    shutil.copyfile(file, new)
    Store.open(new, Times().clock()).close()
    return version, file, _content(file)[1], _content(new)[1]
