"""A log of 2,000 entries and one of 2,000,000, asked the same questions in turn.

Both have twenty systems with five parameters, and the first system has the same thousand readings in both; the rest are
those of the others. So the answers are equally long, and whatever differs is what the size of the log costs.

    python -m tests.bench.product_log FOLDER ROUNDS
"""

from __future__ import annotations

import json
import random
import shutil
import sys
import time
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

from evenwater.engine.quantities import Typed
from evenwater.store import AddRecord, Entry, Step, Store, content_id
from evenwater.store.backups import folder_of
from evenwater.store.entries import micros, text_of
from evenwater.store.entry_writing import _INSERT

FEW, MANY = 2_000, 2_000_000
OF_FIRST = 1_000
SYSTEMS = [f"{number:032x}" for number in range(20)]
PARAMETERS = ("alkalinity", "calcium", "magnesium", "nitrate", "phosphate")
BEGAN = datetime(2016, 1, 1, tzinfo=UTC)
IMPORTED = 100_000


def rows(number: int) -> Iterator[tuple[object, ...]]:
    """Yield the rows of a log in the order in which they lie in the file."""
    draw = random.Random(number)
    fields = text_of(
        {"value": Typed("6,8", "dKH", "meq/L"), "kit": Typed("drops, blue box"), "note": Typed("before noon")}
    )
    logged = micros(BEGAN)
    for place, system in enumerate(SYSTEMS):
        each = (OF_FIRST if place == 0 else (number - OF_FIRST) // (len(SYSTEMS) - 1)) // len(PARAMETERS)
        for parameter in PARAMETERS:
            for line in range(each):
                at = logged + 3_600_000_000 * line
                entry_id = f"{draw.getrandbits(128):032x}"
                yield system, "reading", parameter, at, entry_id, "Ada", fields, draw.random(), logged


def make(file: Path, number: int) -> None:
    """Write a log of so many readings; not through the journal, which remembers a thousand steps only."""
    with Store.open(file) as store:
        store.apply(Step("add", tuple(AddRecord(system, "system") for system in SYSTEMS)))
        database = store._database
        database.sql("PRAGMA synchronous = OFF")
        database.sql("PRAGMA cache_size = -500000")
        with database.writing():
            database.sql("DROP INDEX entry_by_id")
            database.many(_INSERT, rows(number))
            database.sql("CREATE UNIQUE INDEX entry_by_id ON entry (id)")


def imported() -> list[Entry]:
    """Return what a keeper has noted in a table for twenty years: four readings a day, and a little more."""
    entries = []
    for line in range(IMPORTED):
        at, text = BEGAN - timedelta(hours=1.75 * line), f"{line % 90 / 10}"
        parameter = PARAMETERS[line % len(PARAMETERS)]
        entry_id = content_id(SYSTEMS[1], "reading", parameter, at, text, "dKH")
        fields = {"value": Typed(text, "dKH")}
        entries.append(Entry(entry_id, SYSTEMS[1], "reading", parameter, at, "Ada", fields, line % 90 / 10))
    return entries


def timed(work: Callable[[], object], clock: Callable[[], float] = time.perf_counter) -> float:
    """Return how long something took [ms]."""
    began = clock()
    work()
    return (clock() - began) * 1000


def opening(file: Path) -> tuple[Store, float]:
    """Open a log, with its records, and return how long that took [ms]."""
    began = time.perf_counter()
    store = Store.open(file)
    store.snapshot()
    return store, (time.perf_counter() - began) * 1000


def ask(file: Path, number: int) -> dict[str, float]:
    """Ask everything of a log that was opened for the question alone: first with nothing read, then the best of five.

    Those five need nothing from the disk any more, and the processor's own time is taken. A small log is read through when
    it is opened, which spares its first answer what a large one's has to read.
    """
    taken = {}
    store, taken["open"] = opening(file)
    store.close()
    questions: dict[str, Callable[[], object]] = {
        "latest": lambda: store.latest_of_all("reading"),
        "columns": lambda: [store.columns(SYSTEMS[0], parameter) for parameter in PARAMETERS],
        "newest": lambda: store.entries(SYSTEMS[0], newest_first=True, limit=50),
    }
    for name, question in questions.items():
        store, _ = opening(file)
        taken[f"{name}_first"] = timed(question)
        taken[name] = min(timed(question, time.thread_time) for _ in range(5))
        store.close()
    with Store.open(file) as store:
        dose = Entry(f"dose {number}", SYSTEMS[0], "dose", "left", BEGAN + timedelta(minutes=number), value=1.0)
        taken["log"] = timed(lambda: store.log([dose]))
        store.undo()
    return taken


def main() -> None:
    folder, rounds = Path(sys.argv[1]), int(sys.argv[2])
    files = {"few": folder / "few.sqlite", "many": folder / "many.sqlite"}
    make(files["few"], FEW)
    make(files["many"], MANY)
    taken: dict[str, list[float]] = {}
    for number in range(rounds + 1):
        for size, file in files.items():
            for name, figure in ask(file, number).items():
                if number:  # the first round loads what is loaded late
                    taken.setdefault(f"{size}_{name}", []).append(figure)
    for size, file in files.items():
        shutil.rmtree(folder_of(file))
        store, first = opening(file)
        taken[f"{size}_first"] = [first]
        taken[f"{size}_copied"] = [timed(store.close)]
    table = imported()
    for size, file in files.items():
        with Store.open(file) as store:
            for name, act in (
                ("import", lambda: store.import_entries(table, lambda read: True)),
                ("again", lambda: store.import_entries(table, lambda read: True)),
                ("undo", store.undo),
            ):
                taken[f"{size}_{name}"] = [timed(act)]
    print(json.dumps(taken))


if __name__ == "__main__":
    main()
