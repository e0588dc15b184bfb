"""What a frozen program may hold. The same lists slim Evenwater and the bare window that is its floor.

Libraries, plugins and data go in by allow-list, so that a new version of a library cannot bring something along unseen; Python's own
modules go out by name, since what PyInstaller finds is imported somewhere.
"""

from __future__ import annotations

import re
from pathlib import PurePath

# Qt by what the window needs. ICU and DBus belong to QtCore and QtGui, OpenGL to pyqtgraph, which imports it whether it is used or not.
QT_MODULES = (
    "Core",
    "DBus",
    "Gui",
    "OpenGL",
    "OpenGLWidgets",
    "PrintSupport",
    "Svg",
    "WaylandClient",
    "Widgets",
    "XcbQpa",
)
QT_BINDINGS = ("Core", "Gui", "OpenGL", "OpenGLWidgets", "PrintSupport", "Svg", "Widgets")
# Windows on X and Wayland, none at all for cards; dead keys and input methods; paper. No OpenGL under X or Wayland, no picture formats
# (PNG is in QtGui), no desktop's own file dialogs: those would load the desktop's libraries into ours.
QT_PLUGINS = {
    "platforms": ("qxcb", "qoffscreen", "qwayland", "qwindows", "qcocoa"),
    "platforminputcontexts": ("composeplatforminputcontextplugin", "ibusplatforminputcontextplugin"),
    "printsupport": ("cupsprintersupport", "windowsprintersupport", "cocoaprintersupport"),
    "styles": ("qmodernwindowsstyle", "qwindowsvistastyle", "qmacstyle"),
    "wayland-shell-integration": ("xdg-shell",),
    "wayland-decoration-client": ("bradient",),
}
# Of the system's libraries, those that Debian does not install with every desktop, or in another version.
SYSTEM = (
    "bz2", "expat", "ffi", "gcc_s", "lzma", "python3", "sqlite3", "stdc++", "uuid", "xkbcommon", "xkbcommon-x11", "z", "zstd",
    "xcb-cursor", "xcb-icccm", "xcb-image", "xcb-keysyms", "xcb-render-util", "xcb-util", "xcb-xkb",
)  # fmt: skip
BESIDE_WHEELS = ("icudata", "icui18n", "icuuc", "gfortran", "quadmath", "scipy_openblas64", "pyside6", "shiboken6")
# Extension modules of Python and of its packages; the others of the packages (tests, random numbers) are not used.
EXTENSIONS = (
    "_asyncio", "_bisect", "_blake2", "_bz2", "_contextvars", "_csv", "_ctypes", "_datetime", "_decimal", "_elementtree", "_heapq",
    "_json", "_lsprof", "_lzma", "_md5", "_multiprocessing", "_opcode", "_pickle", "_posixshmem", "_posixsubprocess", "_queue",
    "_random", "_sha1", "_sha256", "_sha3", "_sha512", "_socket", "_sqlite3", "_statistics", "_struct", "_typing", "_uuid", "_zoneinfo",
    "array", "binascii", "fcntl", "grp", "math", "mmap", "pyexpat", "resource", "select", "termios", "unicodedata", "zlib",
    "_overlapped", "_winapi", "_wmi", "_scproxy",
    "Shiboken", "_gsw_ufuncs", "_multiarray_umath", "_pocketfft_umath", "_umath_linalg",
)  # fmt: skip
# No network, no other window library, nothing that tests or debugs. Python has its own hashes beside those of OpenSSL.
LEFT_OUT = (
    "IPython", "PIL", "PyQt5", "PyQt6", "PySide2", "_hashlib", "_ssl", "_tkinter", "curses", "distutils", "doctest", "ensurepip",
    "ftplib", "idlelib", "lib2to3", "matplotlib", "pandas", "pip", "pydoc_data", "pytest", "readline", "scipy", "setuptools",
    "smtplib", "ssl", "test", "tkinter", "turtledemo", "venv", "xmlrpc",
    "PySide6.QtNetwork", "PySide6.QtQml", "PySide6.QtQuick", "PySide6.QtTest", "PySide6.QtXml",
    "PySide6.scripts", "PySide6.support.deprecated",
    "gsw.tests", "numpy.conftest", "numpy.distutils", "numpy.f2py", "numpy.random", "numpy.testing", "numpy.tests",
    "periodictable.plot", "pint.testsuite", "playhouse.postgres_ext", "pyqtgraph.canvas", "pyqtgraph.examples", "pyqtgraph.jupyter",
    "pyqtgraph.opengl",
)  # fmt: skip
DATA = (
    r"base_library\.zip",
    r"evenwater/.*",
    r"fontpkg_atkinson_hyperlegible/files/.*-(Regular|Bold)\.ttf",
    r"(pint|flexcache|flexparser|numpy)-[^/]*\.dist-info/METADATA",
    r"pint/(default_en|constants_en)\.txt",
    r"pyqtgraph/icons/[^/]*\.svg",
    r"dateutil/zoneinfo/.*",
)


def allowed(place: str, languages: tuple[str, ...] = ()) -> bool:
    """Return whether a file may stand in the frozen folder.

    Parameters
    ----------
    place : str
        Where it would stand, relative to the folder of libraries, with any slashes.
    languages : tuple of str
        Languages in which Qt's own words go along, as in ``qtbase_de.qm``.
    """
    path = PurePath(place.replace("\\", "/"))
    name, folder = path.name, path.parent.name
    if folder in QT_PLUGINS and "plugins" in path.parts:
        return re.sub(r"^lib|\.(so|dll|dylib)$", "", name) in QT_PLUGINS[folder]
    if "plugins" in path.parts:
        return False
    if name.endswith(".qm") and "evenwater" not in path.parts:
        return any(name == f"qtbase_{language}.qm" for language in languages)
    if name.endswith((".so", ".pyd")):
        binding = re.fullmatch(r"Qt(\w+)", name.split(".")[0])
        return binding[1] in QT_BINDINGS if binding else name.split(".")[0] in EXTENSIONS or _library(name)
    if ".so." in name or name.endswith((".dll", ".dylib")) or "Python" in path.parts or ".framework" in place:
        return _library(name)
    return any(re.fullmatch(pattern, path.as_posix()) for pattern in DATA)


def _library(name: str) -> bool:
    """Return whether a shared library is one that is needed, on any platform."""
    stem = re.sub(r"^lib", "", re.split(r"\.(so|dll|dylib|abi3)\b", name)[0])
    # Wheels give what they bring along names of their own: openblas64_-32a4b2a6.
    stem = re.sub(r"_?-[0-9a-f]{8}.*$", "", stem)
    qt = re.fullmatch(r"Qt6?(\w+)", stem)
    if qt:
        return qt[1] in QT_MODULES
    if re.fullmatch(r"(python3.*|Python|vcruntime.*|msvcp.*|ucrtbase|api-ms-.*|opengl32sw)", stem):
        return stem != "opengl32sw"
    return stem in SYSTEM or stem in BESIDE_WHEELS
