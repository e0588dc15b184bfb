"""Twenty laptops write in one log on a server that is killed again and again, as they are themselves: what is lost or doubled?

Each keeper logs doses of their own, types, and logs each planned dose that is not in the log yet. What a keeper was told, saved
or waiting, is held against what the log holds in the end. A planned dose that is there twice counts as doubled unless somebody
was told of it.
"""

from __future__ import annotations

import argparse
import multiprocessing
import random
import sys
import tempfile
import time
from collections import Counter
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from evenwater.engine.quantities import Typed
from evenwater.store import Store
from tests.bench.facility_writer import CONTESTED, write
from tests.postgres import Server, why_not
from tests.store.writing import added

_ARRIVED = "SELECT count(*) FROM evenwater.entry WHERE system_id = 'a'"


@dataclass(frozen=True)
class Found:
    """What came of it; ``lost``, ``doubled`` and ``torn`` must be empty."""

    writers: int
    told: int
    waited: int
    asked: int
    remarked: int
    server_kills: int
    server_stops: int
    writer_kills: int
    seconds: float
    lost: tuple[str, ...]
    doubled: tuple[str, ...]
    torn: tuple[str, ...]


def run(
    server: Server, database: str, folder: Path, writers: int, entries: int, kills: int, chance: random.Random
) -> Found:
    """Let so many write at once, and pull the plug ``kills`` times on the server and on as many of them."""
    address = server.address(database)
    with Store.open_server(address, folder / "first") as store:
        store.fill(added("a"))
        store.apply(added("b"))
    context = multiprocessing.get_context("forkserver")
    # What each program would load for itself otherwise, some of it only since this module is loaded in it again.
    loaded = (
        "tests.bench.facility_writer",
        "tests.postgres",
        "evenwater.store.facility",
        "evenwater.store.spool",
        "psycopg",
    )
    context.set_forkserver_preload(list(loaded))
    began = time.monotonic()
    places = [folder / str(number) for number in range(writers)]
    programs: list[Any] = [None] * writers

    def start(number: int) -> None:
        programs[number] = context.Process(target=write, args=(address, places[number], number, entries))
        programs[number].start()

    for number in range(writers):
        start(number)
    done = Counter[str]()
    total = writers * entries
    for turn in range(kills):
        # Spread over what arrives, however quick the machine is.
        while int(server.ask(database, _ARRIVED)[0][0]) < total * (turn + 1) / (kills + 1):
            time.sleep(0.05)
        if turn % 3 == 2:
            server.stop()
            done["stops"] += 1
        else:
            server.kill()
            done["kills"] += 1
        number = chance.randrange(writers)
        if programs[number].is_alive():
            programs[number].kill()
            programs[number].join(30)
            start(number)
            done["writers"] += 1
        time.sleep(chance.uniform(0.0, 0.3))
        server.start()
    for program in programs:
        program.join(300)
    faults = [f"a writer ended with {p.exitcode}" for p in programs if p.exitcode != 0]
    seconds = time.monotonic() - began
    with Store.open_server(address, folder / "first") as store:
        return _held(store, places, entries, done, seconds, faults)


def _held(
    store: Store, places: list[Path], entries: int, done: Counter[str], seconds: float, faults: list[str]
) -> Found:
    """Hold what everybody was told against the log."""
    there = Counter(entry.id for system in ("a", "b") for entry in store.entries(system, ("dose",)))
    outcomes, lost, remarked, asked, waited = Counter[str](), [], 0, 0, 0
    for number, place in enumerate(places):
        lines = [line.split() for line in (place / "told").read_text().splitlines()]
        remarked += sum(line[0] == "remark" for line in lines)
        if lines[-1] != ["ended"]:
            faults.append(f"writer {number} did not end")
        for line in lines:
            if line[0] == "told":
                outcomes[line[2]] += 1
                if line[2] in ("new", "already", "waiting") and not there[line[1]]:
                    lost.append(line[1])
                waited += line[2] == "waiting"
            elif line[0] == "planned":
                name = f"planned {line[1]} {line[2]}"
                asked += line[3] == "ask"
                if line[3] != "ask" and not there[name]:
                    lost.append(name)
                if line[3] == "ask" and there[name]:
                    faults.append(f"{name} was asked about and is there")
        # Whoever was ended before they were told may have typed one more.
        typed = max(int(line[1]) for line in lines if line[0] == "typed")
        if int(store.values("a").get(f"typed {number}", Typed("-1")).text) not in (typed, typed + 1):
            lost.append(f"what {number} typed last")
    slots = Counter(entry_id.split()[1] for entry_id in there if entry_id.startswith("planned"))
    more = [f"planned dose {due}, {count} times" for due, count in slots.items() if count > 1]
    # Whoever logs while the server is away is told afterwards; only more doses than were told of were doubled in silence.
    silent = sum(count - 1 for count in slots.values()) - remarked
    doubled = [entry_id for entry_id, count in there.items() if count > 1] + (more if silent > 0 else [])
    lost += [f"planned dose {due}" for due in range((entries + CONTESTED - 1) // CONTESTED) if not slots[str(due)]]
    return Found(
        len(places), sum(outcomes.values()), waited, asked, remarked, done["kills"], done["stops"], done["writers"],
        seconds, tuple(lost), tuple(doubled), tuple(faults),
    )  # fmt: skip


def main() -> None:
    """Print one table; end with 1 when anything was lost, doubled or torn."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--writers", type=int, default=20)
    parser.add_argument("--entries", type=int, default=200)
    parser.add_argument("--kills", type=int, default=12)
    parser.add_argument("--seed", default="1")
    parser.add_argument("--hasty", action="store_true", help="a server that does not wait for its disk")
    chosen = parser.parse_args()
    if why_not():
        sys.exit(f"Nothing was measured: {why_not()}.")
    server = Server(durable=not chosen.hasty)
    try:
        with tempfile.TemporaryDirectory() as scratch, server.empty() as take:
            chance = random.Random(chosen.seed)
            found = run(server, take(), Path(scratch), chosen.writers, chosen.entries, chosen.kills, chance)
    finally:
        server.remove()
    for name, value in vars(found).items():
        print(f"| {name.replace('_', ' '):14} | {len(value) if isinstance(value, tuple) else round(value, 1):>8} |")
    for name in ("lost", "doubled", "torn"):
        for each in getattr(found, name)[:20]:
            print(f"{name}: {each}")
    sys.exit(1 if found.lost or found.doubled or found.torn else 0)


if __name__ == "__main__":
    main()
