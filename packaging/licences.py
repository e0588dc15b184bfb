"""What a frozen Evenwater is made of, and under which licences: the list that `evenwater --licences` prints, and the texts beside a build.

    python packaging/licences.py          write resources/licences.md anew, from licences.toml and the lock
    python packaging/licences.py --check  say whether it is what this script would write

packaging/freeze.py calls `collect`, which stops the build when a part has no text.
"""

from __future__ import annotations

import re
import shutil
import subprocess
import sys
import tomllib
from importlib import metadata
from pathlib import Path
from typing import Any

HERE = Path(__file__).resolve().parent
ROOT = HERE.parent
LIST = ROOT / "resources" / "licences.md"
TEXTS = HERE / "licences"
_IS_TEXT = re.compile(r"(licen[cs]e|copying|notice|authors|ofl)", re.IGNORECASE)

HEAD = """# What Evenwater is made of

Evenwater itself stands under the MIT licence. It uses what is listed here; a packaged Evenwater brings it along, with the full texts in the
folder `licences` beside the program.

Qt and Qt for Python stand under the GNU Lesser General Public License, version 3. In a packaged Evenwater they are files of their own
(`_internal/PySide6`, `_internal/shiboken6`), unchanged: you may put another version of them in their place, and look into how the program
works with it. Their source is published by the Qt project under the version named below.
"""


def name_of(written: str) -> str:
    """Return a distribution's name as the index writes it."""
    return re.sub(r"[-_.]+", "-", written).lower()


def parts() -> dict[str, Any]:
    return tomllib.loads((HERE / "licences.toml").read_text(encoding="utf-8"))


def versions() -> dict[str, str]:
    """Return name -> versions of everything that is installed to run Evenwater; those for another Python are joined by "or"."""
    found: dict[str, list[str]] = {}
    for line in (HERE / "locked" / "run.txt").read_text(encoding="utf-8").splitlines():
        pin = re.match(r"([A-Za-z0-9._-]+)==([^\s;\\]+)", line)
        if pin:
            found.setdefault(name_of(pin[1]), []).append(pin[2])
    return {name: " or ".join(numbers) for name, numbers in found.items()}


def listing() -> str:
    """Return resources/licences.md.

    Raises
    ------
    KeyError
        When something that is installed to run Evenwater stands in no row of licences.toml.
    """
    known = parts()
    rows = [
        (name, version, known["distribution"][name]["licence"], known["distribution"][name]["what"])
        for name, version in sorted(versions().items())
    ]
    rows += [(name, "", part["licence"], part["what"]) for name, part in known["inside"].items()]
    table = ["| part | version | licence | what for |", "|---|---|---|---|"]
    table += [f"| {' | '.join(row)} |" for row in rows]
    system = ["| library | licence | what for |", "|---|---|---|"]
    system += [f"| lib{name} | {part['licence']} | {part['what']} |" for name, part in known["system"].items()]
    beside = "The folder for Linux also holds these libraries of the system it was made on:"
    return "\n".join([HEAD, *table, "", beside, "", *system, ""])


def texts_of(distribution: metadata.Distribution) -> list[Path]:
    """Return the licence files that a distribution brings along."""
    return [
        Path(str(distribution.locate_file(file)))
        for file in distribution.files or []
        if ".dist-info" in file.parts[0] and _IS_TEXT.search("/".join(file.parts[1:])) and file.suffix != ".pyc"
    ]


def collect(site: Path, frozen: Path, target: Path) -> None:
    """Put the texts of everything in a frozen folder into another folder.

    Parameters
    ----------
    site : Path
        The site-packages that the folder was frozen from.
    frozen : Path
        The frozen folder.
    target : Path
        The folder for the texts; it must not be there yet.

    Raises
    ------
    SystemExit
        When some part has no text.
    """
    known, without = parts(), []
    installed = {name_of(d.metadata["Name"]): d for d in metadata.distributions(path=[str(site)])}
    wanted = {name: known["distribution"][name].get("text", []) for name in versions()}
    wanted |= {name: part.get("text", []) for name, part in known["inside"].items() if "text_of" not in part}
    wanted["pyinstaller"] = []
    for name, own in wanted.items():
        place = target / name
        place.mkdir(parents=True)
        found = [TEXTS / text for text in own]
        if name in installed:
            found += texts_of(installed[name])
            if own:  # Who wrote it stands there.
                (place / "METADATA").write_text(installed[name].read_text("METADATA") or "", encoding="utf-8")
        if not found:
            without.append(name)
        for text in found:
            relative = (
                "-".join(text.parts[text.parts.index("licenses") + 1 :]) if "licenses" in text.parts else text.name
            )
            shutil.copyfile(text, place / relative)
    place = target / "python"
    place.mkdir()
    of_python = [Path(sys.base_prefix, *way, "LICENSE.txt") for way in (("lib", f"python3.{sys.version_info[1]}"), ())]
    for text in [*of_python, Path(f"/usr/share/doc/python3.{sys.version_info[1]}/copyright")]:
        if text.is_file():
            shutil.copyfile(text, place / "LICENSE.txt")
            break
    else:
        without.append("python")
    without += _of_system(known["system"], frozen, target / "system")
    shutil.copyfile(ROOT / "LICENSE", target / "LICENSE")
    shutil.copyfile(LIST, target / "licences.md")
    if without:
        sys.exit(f"No licence text was found of: {', '.join(without)}")


def _of_system(known: dict[str, Any], frozen: Path, target: Path) -> list[str]:
    """Copy what Debian says of the libraries that came from the system; return those it says nothing of."""
    without = []
    for library in sorted((frozen / "_internal").glob("lib*.so.*")):
        stem = library.name.split(".so.")[0].removeprefix("lib")
        if stem not in known:
            continue
        said = subprocess.run(["dpkg", "-S", f"*/{library.name}"], check=False, capture_output=True, text=True)
        owners = {line.split(":")[0] for line in said.stdout.splitlines() if line.endswith(f"/{library.name}")}
        found = [text for owner in owners if (text := Path("/usr/share/doc") / owner / "copyright").is_file()]
        if not found:
            without.append(library.name)
        for text in found:
            target.mkdir(exist_ok=True)
            shutil.copyfile(text, target / f"lib{stem}.txt")
    return without


def main() -> None:
    text = listing()
    if "--check" in sys.argv:
        if not LIST.is_file() or LIST.read_text(encoding="utf-8") != text:
            sys.exit("resources/licences.md is not what packaging/licences.py writes.")
        return
    LIST.write_text(text, encoding="utf-8", newline="\n")
    print(f"{LIST.relative_to(ROOT)} written")


if __name__ == "__main__":
    main()
