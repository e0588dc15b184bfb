"""Paint the program's icon in the sizes that platforms want, from resources/icons/evenwater.svg.

    QT_QPA_PLATFORM=offscreen python packaging/icons.py          write the PNGs in resources/icons
    QT_QPA_PLATFORM=offscreen python packaging/icons.py FOLDER   write icon.ico and icon.icns, for Windows and macOS, into a folder

Needs the Python that has Evenwater's dependencies (QtSvg comes with them, and is used only here).
"""

from __future__ import annotations

import struct
import sys
from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QRectF, Qt
from PySide6.QtGui import QGuiApplication, QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

ICONS = Path(__file__).resolve().parent.parent / "resources" / "icons"
SVG = ICONS / "evenwater.svg"
SIZES = (16, 24, 32, 48, 64, 128, 256)
_OF_WINDOWS = (16, 24, 32, 48, 64, 256)
# Apple's names of the PNG entries, by their size.
_OF_MAC = {32: b"ic11", 64: b"ic12", 128: b"ic07", 256: b"ic08", 512: b"ic09", 1024: b"ic10"}


def png(size: int) -> bytes:
    """Return the icon as a PNG of ``size`` by ``size`` pixels."""
    image = QImage(size, size, QImage.Format.Format_ARGB32)
    image.fill(Qt.GlobalColor.transparent)
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    QSvgRenderer(str(SVG)).render(painter, QRectF(0, 0, size, size))
    painter.end()
    written = QByteArray()
    buffer = QBuffer(written)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    assert image.save(buffer, "PNG")
    return bytes(written.data())


def ico() -> bytes:
    """Return an icon for Windows that holds the PNGs (as Windows has read since 2006)."""
    pictures = {size: png(size) for size in _OF_WINDOWS}
    head, place = struct.pack("<HHH", 0, 1, len(pictures)), 6 + 16 * len(pictures)
    for size, data in pictures.items():
        head += struct.pack("<BBBBHHII", size % 256, size % 256, 0, 0, 1, 32, len(data), place)
        place += len(data)
    return head + b"".join(pictures.values())


def icns() -> bytes:
    """Return an icon for macOS that holds the PNGs."""
    entries = [(name, png(size)) for size, name in _OF_MAC.items()]
    body = b"".join(name + struct.pack(">I", 8 + len(data)) + data for name, data in entries)
    return b"icns" + struct.pack(">I", 8 + len(body)) + body


def main() -> None:
    _app = QGuiApplication([])
    if len(sys.argv) == 2:
        folder = Path(sys.argv[1])
        folder.mkdir(parents=True, exist_ok=True)
        (folder / "icon.ico").write_bytes(ico())
        (folder / "icon.icns").write_bytes(icns())
        return
    for size in SIZES:
        (ICONS / f"evenwater-{size}.png").write_bytes(png(size))


if __name__ == "__main__":
    main()
