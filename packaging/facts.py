"""The few facts about Evenwater that every platform's package repeats, and the files that repeat them.

    python packaging/facts.py            write resources/linux, packaging/windows and packaging/macos anew
    python packaging/facts.py --check    say which of them are not what this script would write

Nothing but this file is edited by hand: names, suffix, version and date cannot drift apart between Linux, Windows and macOS.
"""

from __future__ import annotations

import plistlib
import re
import sys
from pathlib import Path
from string import Template
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parent.parent
TEMPLATES = ROOT / "packaging" / "templates"

NAME = "Evenwater"
COMMAND = "evenwater"
# A name, not an address: nothing is looked up there. Whoever publishes a build under it should own the domain, or change it here.
ID = "page.evenwater.Evenwater"
GENERIC = "Dosing planner for coral reef tanks"
SUMMARY = "Plan slow, safe corrections for coral reef tanks"
DESCRIPTION = (
    """Stony corals use up calcium and alkalinity. Evenwater says how many millilitres per hour of which stock put them back, and for how
    long: slowly, within limits, and proved by a second, independent reckoning. It prints the card that hangs on the stand.""",
    """It knows what a jug holds, keeps the log of readings and doses, learns from it what the animals use, plans the upkeep of all values
    together, and says what to do first when a value is too high. It works offline and keeps everything on your own computer.""",
)
KEYWORDS = ("aquarium", "reef", "coral", "seawater", "alkalinity", "calcium", "dosing")
LICENCE = "MIT"
AUTHORS = "The authors of Evenwater"

QUESTION_SUFFIX = "ewq"
QUESTION_MIME = "application/vnd.evenwater.question+toml"
QUESTION_NAME = "Evenwater question"


def version() -> str:
    """Return the version that the package gives itself."""
    text = (ROOT / "desktop" / "evenwater" / "__init__.py").read_text(encoding="utf-8")
    found = re.search(r'^__version__ = "([^"]+)"$', text, re.MULTILINE)
    assert found, "desktop/evenwater/__init__.py has no __version__"
    return found[1]


def released() -> tuple[str, list[str]]:
    """Return the date of this version and what is new in it, from packaging/CHANGELOG.md.

    Raises
    ------
    ValueError
        When the newest entry is not of this version.
    """
    text = (ROOT / "packaging" / "CHANGELOG.md").read_text(encoding="utf-8")
    found = re.search(r"^## (\S+), (\d{4}-\d{2}-\d{2})\n+((?:- .*\n(?:  .*\n)*)+)", text, re.MULTILINE)
    if found is None or found[1] != version():
        raise ValueError(f"packaging/CHANGELOG.md must begin with an entry of version {version()}")
    entries = [" ".join(entry.split()) for entry in re.split(r"^- ", found[3], flags=re.MULTILINE) if entry.strip()]
    return found[2], entries


def four_numbers() -> tuple[int, ...]:
    """Return the version as Windows wants it: four numbers, without what tells a release candidate."""
    numbers = [int(part) for part in re.match(r"[\d.]+", version())[0].strip(".").split(".")]
    return tuple([*numbers, 0, 0, 0, 0][:4])


def info_plist() -> dict[str, object]:
    """Return what macOS wants to know about the program and the files it opens."""
    return {
        "CFBundleDisplayName": NAME,
        "CFBundleIdentifier": ID,
        "CFBundleName": NAME,
        "CFBundleShortVersionString": version(),
        "CFBundleVersion": version(),
        "CFBundleDocumentTypes": [
            {
                "CFBundleTypeName": QUESTION_NAME,
                "CFBundleTypeRole": "Viewer",
                "LSHandlerRank": "Owner",
                "LSItemContentTypes": [f"{ID}.question"],
            }
        ],
        "LSApplicationCategoryType": "public.app-category.utilities",
        "LSMinimumSystemVersion": "13.0",
        "NSHighResolutionCapable": True,
        "NSHumanReadableCopyright": f"{AUTHORS}, licence {LICENCE}",
        "UTExportedTypeDeclarations": [
            {
                "UTTypeConformsTo": ["public.plain-text"],
                "UTTypeDescription": QUESTION_NAME,
                "UTTypeIdentifier": f"{ID}.question",
                "UTTypeTagSpecification": {
                    "public.filename-extension": [QUESTION_SUFFIX],
                    "public.mime-type": [QUESTION_MIME],
                },
            }
        ],
    }


def _marks() -> dict[str, str]:
    date, news = released()
    return {
        "name": NAME,
        "command": COMMAND,
        "id": ID,
        "generic": GENERIC,
        "summary": SUMMARY,
        "keywords": ";".join(KEYWORDS),
        "licence": LICENCE,
        "authors": AUTHORS,
        "suffix": QUESTION_SUFFIX,
        "mime": QUESTION_MIME,
        "question": QUESTION_NAME,
        "version": version(),
        "numbers": ", ".join(map(str, four_numbers())),
        "date": date,
        "description_xml": "\n".join(f"    <p>{escape(' '.join(part.split()))}</p>" for part in DESCRIPTION),
        "keywords_xml": "\n".join(f"    <keyword>{escape(word)}</keyword>" for word in KEYWORDS),
        "news_xml": "\n".join(f"          <li>{escape(entry)}</li>" for entry in news),
    }


def files() -> dict[Path, str]:
    """Return every file that repeats the facts, with what should stand in it."""
    linux, windows = ROOT / "resources" / "linux", ROOT / "packaging" / "windows"
    marks = _marks()
    made = {
        linux / f"{ID}.desktop": "desktop.in",
        linux / f"{ID}.metainfo.xml": "metainfo.xml.in",
        linux / f"{ID}.mime.xml": "mime.xml.in",
        windows / "version.txt": "version.txt.in",
        windows / "install.ps1": "install.ps1.in",
    }
    written = {
        place: Template((TEMPLATES / name).read_text(encoding="utf-8")).substitute(marks)
        for place, name in made.items()
    }
    untried = "<!-- Untried: written by packaging/facts.py, not yet built on macOS. -->\n"
    head, rest = plistlib.dumps(info_plist()).decode().split("\n", 1)
    written[ROOT / "packaging" / "macos" / "Info.plist"] = f"{head}\n{untried}{rest}"
    return written


def main() -> None:
    drifted = []
    for place, text in files().items():
        if not place.is_file() or place.read_text(encoding="utf-8") != text:
            drifted.append(str(place.relative_to(ROOT)))
            if "--check" not in sys.argv:
                place.parent.mkdir(parents=True, exist_ok=True)
                place.write_text(text, encoding="utf-8", newline="\n")
    if "--check" in sys.argv and drifted:
        sys.exit(f"Not what packaging/facts.py writes: {', '.join(drifted)}")
    print("\n".join(drifted) or "Nothing has changed.")


if __name__ == "__main__":
    main()
