"""What the packages of all platforms say about Evenwater is one truth, and what Linux's own tools want."""

from __future__ import annotations

import plistlib
import re
import shutil
import struct
import subprocess
from configparser import RawConfigParser
from datetime import date
from xml.etree import ElementTree as ET

import pytest

import evenwater
from tests.arch.tree import ROOT

LINUX = ROOT / "resources" / "linux"
ICONS = ROOT / "resources" / "icons"
ID = "page.evenwater.Evenwater"
MIME = "application/vnd.evenwater.question+toml"
SPACE = "{http://www.freedesktop.org/standards/shared-mime-info}"
COLOURS = {"#FBF8F0", "#23282D", "#0B5A8F"}


def entry() -> RawConfigParser:
    parser = RawConfigParser(interpolation=None, delimiters=("=",))
    parser.optionxform = str  # type: ignore[assignment,method-assign]
    parser.read(LINUX / f"{ID}.desktop", encoding="utf-8")
    return parser


def xml(name: str) -> ET.Element:
    return ET.fromstring((LINUX / name).read_bytes())  # noqa: S314  (our own file)


def test_files_are_what_the_script_writes() -> None:
    import facts

    drifted = [str(place) for place, text in facts.files().items() if place.read_text(encoding="utf-8") != text]
    assert drifted == []


def test_newest_change_is_of_this_version() -> None:
    import facts

    when, news = facts.released()
    assert facts.version() == evenwater.__version__
    assert date(2026, 11, 1) <= date.fromisoformat(when)
    assert news
    assert all(point.endswith(".") for point in news)


def test_a_change_of_another_version_is_noticed(monkeypatch: pytest.MonkeyPatch) -> None:
    import facts

    monkeypatch.setattr(facts, "version", lambda: "99.0.0")
    with pytest.raises(ValueError, match=r"99\.0\.0"):
        facts.released()


def test_desktop_entry() -> None:
    parser = entry()
    main = parser["Desktop Entry"]
    assert main["Type"] == "Application"
    assert main["Name"] == "Evenwater"
    assert main["Icon"] == ID
    # A desktop hands over the file that was opened.
    assert main["Exec"] == "evenwater %f"
    assert main["MimeType"] == f"{MIME};"
    assert main["Terminal"] == "false"
    for action in main["Actions"].strip(";").split(";"):
        assert parser[f"Desktop Action {action}"]["Exec"].startswith("evenwater ")


def test_window_bears_the_name_of_the_entry() -> None:
    start = (ROOT / "desktop" / "evenwater" / "ui" / "start.py").read_text(encoding="utf-8")
    assert f'setDesktopFileName("{ID}")' in start
    assert entry()["Desktop Entry"]["StartupWMClass"] == "evenwater"


def test_metainfo_agrees_with_entry_and_version() -> None:
    root = xml(f"{ID}.metainfo.xml")
    assert root.findtext("id") == ID
    assert root.findtext("launchable") == f"{ID}.desktop"
    assert root.findtext("provides/mediatype") == MIME
    assert root.findtext("project_license") == "MIT"
    assert root.findtext("metadata_license")
    assert root.findtext("summary") == entry()["Desktop Entry"]["Comment"]
    categories = [category.text for category in root.iterfind("categories/category")]
    assert categories == entry()["Desktop Entry"]["Categories"].strip(";").split(";")
    newest = root.find("releases/release")
    assert newest is not None
    assert newest.get("version") == evenwater.__version__
    assert date.fromisoformat(newest.get("date", ""))
    assert all("".join(paragraph.itertext()).strip() for paragraph in root.iterfind("description/p"))


def test_question_files_have_one_type_everywhere() -> None:
    mime = xml(f"{ID}.mime.xml").find(f"{SPACE}mime-type")
    assert mime is not None
    assert mime.get("type") == MIME
    glob = mime.find(f"{SPACE}glob")
    assert glob is not None
    assert glob.get("pattern") == "*.ewq"

    mac = ROOT / "packaging" / "macos" / "Info.plist"
    info = plistlib.loads(mac.read_bytes())
    (kind,) = info["UTExportedTypeDeclarations"]
    assert kind["UTTypeTagSpecification"] == {"public.filename-extension": ["ewq"], "public.mime-type": [MIME]}
    assert info["CFBundleDocumentTypes"][0]["LSItemContentTypes"] == [kind["UTTypeIdentifier"]]
    assert info["CFBundleIdentifier"] == ID
    assert info["CFBundleShortVersionString"] == evenwater.__version__

    install = (ROOT / "packaging" / "windows" / "install.ps1").read_text(encoding="utf-8")
    assert r"$classes\.ewq" in install
    assert MIME in install
    resource = (ROOT / "packaging" / "windows" / "version.txt").read_text(encoding="utf-8")
    assert f'StringStruct("ProductVersion", "{evenwater.__version__}")' in resource
    compile(resource, "version.txt", "eval")
    # Nobody has built these yet, and they say so first.
    for text in (install, resource, mac.read_text(encoding="utf-8")):
        assert "untried" in "\n".join(text.splitlines()[:3]).lower()


def test_windows_version_has_four_numbers(monkeypatch: pytest.MonkeyPatch) -> None:
    import facts

    monkeypatch.setattr(facts, "version", lambda: "1.2.3rc4")
    assert facts.four_numbers() == (1, 2, 3, 0)


def test_icon_is_paper_ink_and_one_blue() -> None:
    text = (ICONS / "evenwater.svg").read_text(encoding="utf-8")
    assert 'viewBox="0 0 256 256"' in text
    assert {colour.upper() for colour in re.findall(r"#[0-9A-Fa-f]{6}", text)} == COLOURS
    for file in ICONS.glob("evenwater-*.png"):
        size = int(file.stem.removeprefix("evenwater-"))
        head = file.read_bytes()[:24]
        assert head.startswith(b"\x89PNG")
        assert struct.unpack(">II", head[16:]) == (size, size)


def test_pictures_are_the_icon(qapp: object) -> None:
    import icons
    from PySide6.QtGui import QImage

    for size in (16, 64):
        drawn, kept = QImage.fromData(icons.png(size)), QImage(str(ICONS / f"evenwater-{size}.png"))
        points = [(x, y) for x in range(size) for y in range(size)]
        apart = [abs(drawn.pixelColor(x, y).lightness() - kept.pixelColor(x, y).lightness()) for x, y in points]
        assert sum(apart) / len(apart) < 2


def test_icon_for_windows_and_macos_holds_whole_pictures(qapp: object) -> None:
    import icons

    ico, icns = icons.ico(), icons.icns()
    count = struct.unpack("<HHH", ico[:6])[2]
    for index in range(count):
        length, place = struct.unpack("<II", ico[6 + 16 * index + 8 : 6 + 16 * index + 16])
        assert ico[place : place + 4] == b"\x89PNG"
        assert ico[place + length - 8 : place + length - 4] == b"IEND"
    assert struct.unpack(">I", icns[4:8])[0] == len(icns)


@pytest.mark.parametrize(
    "command",
    [
        ["desktop-file-validate", f"{ID}.desktop"],
        ["appstreamcli", "validate", "--no-net", f"{ID}.metainfo.xml"],
        ["xmllint", "--noout", f"{ID}.mime.xml"],
    ],
    ids=lambda command: command[0],
)
def test_linux_tools_agree(command: list[str]) -> None:
    if shutil.which(command[0]) is None:
        pytest.skip(f"{command[0]} is not installed")
    done = subprocess.run(command, cwd=LINUX, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
