"""What may stand in the frozen folder, and that Evenwater needs nothing else."""

from __future__ import annotations

import re
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

from tests.arch.tree import PRODUCT, ROOT

IMPORT = re.compile(r"^\s*(?:from\s+([\w.]+)\s+import\s+(.+)|import\s+([\w.]+))", re.MULTILINE)


@cache
def imported() -> frozenset[str]:
    """Return every module that the product imports anywhere, functions included."""
    found: set[str] = set()
    for file in PRODUCT.rglob("*.py"):
        for module, names, plain in IMPORT.findall(file.read_text(encoding="utf-8")):
            found |= {module or plain, *(f"{module}.{name}" for name in re.findall(r"\w+", names))}
    return frozenset(found)


def test_every_qt_module_that_is_imported_is_frozen() -> None:
    from frozen import slim

    modules = {found[1] for name in imported() if (found := re.match(r"PySide6\.Qt(\w+)", name))}
    assert modules
    assert modules <= set(slim.QT_BINDINGS)
    assert set(slim.QT_BINDINGS) <= set(slim.QT_MODULES)


def test_nothing_that_is_imported_is_left_out() -> None:
    from frozen import slim

    assert imported().isdisjoint(slim.LEFT_OUT)


LATE = """
import sys
from datetime import UTC, datetime, timedelta
from importlib.abc import MetaPathFinder

class Without(MetaPathFinder):
    def find_spec(self, name, path, target=None):
        if name in {left_out!r}:
            raise ModuleNotFoundError(name, name=name)

sys.meta_path.insert(0, Without())
import evenwater.card.output
import gsw
import pyqtgraph
from evenwater.engine import formula, units
from icalendar import Alarm, Calendar, Event
calendar, event, alarm = Calendar(), Event(), Alarm()
event.add("dtstart", datetime.now(UTC))
alarm.add("trigger", timedelta(0))
event.add_component(alarm)
calendar.add_component(event)
assert calendar.to_ical().startswith(b"BEGIN:VCALENDAR")
units.registry()
print(round(formula.by_periodictable("CaCO3"), 1))
"""


def test_libraries_that_load_late_do_without_what_is_left_out() -> None:
    """The trial of a frozen program does not come as far as to each of them."""
    from frozen import slim

    code = LATE.format(left_out=slim.LEFT_OUT)
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    assert done.stdout.split() == ["100.1"]


@pytest.mark.parametrize(
    "place",
    [
        "PySide6/Qt/lib/libQt6Core.so.6", "PySide6/QtWidgets.abi3.so", "PySide6/QtWidgets.pyd", "PySide6/Qt6Gui.dll",
        "PySide6/Qt/plugins/platforms/libqxcb.so", "PySide6/plugins/platforms/qwindows.dll",
        "PySide6/Qt/plugins/platforms/libqcocoa.dylib", "PySide6/Qt/plugins/printsupport/libcupsprintersupport.so",
        "PySide6/Qt/lib/libicudata.so.73", "numpy.libs/libscipy_openblas64_-32a4b2a6.so", "numpy.libs/libquadmath-96973f99-934c22de.so.0.0.0",
        "libxcb-cursor.so.0", "libpython3.11.so.1.0", "python311.dll", "VCRUNTIME140.dll".lower(), "libsqlite3.so.0", "libstdc++.so.6",
        "gsw/_gsw_ufuncs.abi3.so", "python3.11/lib-dynload/_sqlite3.cpython-311-x86_64-linux-gnu.so",
        "PySide6/Qt/lib/QtCore.framework/Versions/A/QtCore", "base_library.zip", "evenwater/resources/chemicals.toml",
        "evenwater/engine/units.txt", "fontpkg_atkinson_hyperlegible/files/AtkinsonHyperlegible-Bold.ttf",
    ],
)  # fmt: skip
def test_goes_in(place: str) -> None:
    from frozen import slim

    assert slim.allowed(place)
    assert slim.allowed(place.replace("/", "\\"))


@pytest.mark.parametrize(
    "place",
    [
        "PySide6/Qt/lib/libQt6Network.so.6", "PySide6/QtNetwork.abi3.so", "PySide6/QtDBus.abi3.so", "PySide6/Qt6Quick.dll",
        "PySide6/Qt/lib/QtQml.framework/Versions/A/QtQml", "PySide6/opengl32sw.dll",
        "PySide6/Qt/plugins/xcbglintegrations/libqxcb-glx-integration.so", "PySide6/Qt/plugins/tls/libqopensslbackend.so",
        "PySide6/Qt/plugins/platformthemes/libqgtk3.so", "PySide6/Qt/plugins/imageformats/libqjpeg.so",
        "PySide6/Qt/plugins/platforms/libqvnc.so", "PySide6/Qt/translations/qtbase_fr.qm",
        "libX11.so.6", "libgtk-3.so.0", "libcrypto.so.3", "libfontconfig.so.1", "libglib-2.0.so.0",
        "numpy/random/mtrand.cpython-311-x86_64-linux-gnu.so", "numpy/_core/_multiarray_tests.cpython-311-x86_64-linux-gnu.so",
        "pyqtgraph/examples/icon.png", "pyqtgraph/icons/peegee/peegee_512px.png", "pint/testsuite/baseline/test_basic_plot.png",
        "fontpkg_atkinson_hyperlegible/files/AtkinsonHyperlegible-Italic.ttf",
    ],
)  # fmt: skip
def test_stays_out(place: str) -> None:
    from frozen import slim

    assert not slim.allowed(place)


def test_qt_speaks_the_languages_that_evenwater_speaks() -> None:
    from frozen import slim

    assert slim.allowed("PySide6/Qt/translations/qtbase_de.qm", ("de",))
    assert not slim.allowed("PySide6/Qt/translations/qtbase_de.qm", ("fr",))
    assert slim.allowed("evenwater/resources/translations/evenwater_de.qm")


def test_sizes_count_each_file_once_and_no_link(tmp_path: Path) -> None:
    import freeze

    for name, size in (("evenwater", 10), ("_internal/numpy/a.so", 20), ("_internal/PySide6/Qt/lib/b.so", 40)):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_bytes(bytes(size))
    (tmp_path / "_internal" / "b.so").symlink_to("PySide6/Qt/lib/b.so")
    found = freeze.sizes(tmp_path)
    assert found.total() == 70
    assert found["numpy"] == 20


def test_debian_package_leaves_to_debian_what_debian_has(tmp_path: Path) -> None:
    import linux

    inside = tmp_path / "_internal"
    inside.mkdir()
    for name in ("libxcb-cursor.so.0", "libz.so.1", "libpython3.11.so.1.0", "libscipy_openblas64_-32a4b2a6.so"):
        (inside / name).write_bytes(b"\x7fELF GLIBC_2.4 GLIBC_2.36 ")
    left = linux.left_to_debian(tmp_path)
    assert [file.name for file in left] == ["libxcb-cursor.so.0", "libz.so.1"]
    packages = linux.depends(tmp_path, left).split(", ")
    assert packages[0] == "libc6 (>= 2.36)"
    assert {"libxcb-cursor0", "zlib1g", "libegl1", "tzdata"} <= set(packages)


def test_every_library_of_the_system_has_a_debian_package() -> None:
    import linux
    import newcomer
    from frozen import slim

    known = {
        library.split(".so")[0].removeprefix("lib") for library in newcomer.BASE_LIBRARIES | newcomer.WINDOW_LIBRARIES
    }
    assert set(slim.SYSTEM) - {"python3"} <= known | set(linux._OF_DEBIAN)


def test_control_file_is_whole() -> None:
    import facts
    import linux

    control = linux._filled(
        "control.in",
        architecture="amd64",
        kibibytes="1",
        depends="libc6",
        description_deb=linux._wrapped("words " * 60),
    )
    fields = dict(re.findall(r"^(\S+): (.+)$", control, re.MULTILINE))
    assert fields["Package"] == "evenwater"
    assert fields["Version"] == facts.version()
    assert all(len(line) <= 80 for line in control.splitlines() if line.startswith(" "))


def test_lock_has_the_freezer() -> None:
    assert "pyinstaller==" in (ROOT / "packaging" / "locked" / "package.txt").read_text(encoding="utf-8")
