"""Paints a chart for a page: dark ink on white, in the usual letters, as an SVG whose letters are outlines, or as a PNG."""

from __future__ import annotations

from xml.etree import ElementTree as ET

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QPoint, QRect, QSize, Qt
from PySide6.QtGui import QFont, QImage, QImageWriter, QPainter, QPainterPath
from PySide6.QtSvg import QSvgGenerator
from PySide6.QtWidgets import QWidget

from evenwater.ui.chart_page import SHARPNESS
from evenwater.ui.theme import BASE_POINTS, LIGHT, palette_for
from evenwater.wording import say

_SPACE, _LINKS = "http://www.w3.org/2000/svg", "http://www.w3.org/1999/xlink"
# A picture has twice the points of the screen's 96 dpi, so that it can be printed.
_SHARPNESS = 2
_INCH_PER_M = 39.3701


def _laid_out(chart: QWidget, size: QSize) -> None:
    """Give a chart its size, letters and colours without showing it."""
    font = QFont(chart.font())
    font.setPointSizeF(BASE_POINTS)
    chart.setAttribute(Qt.WidgetAttribute.WA_DontShowOnScreen)
    chart.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    chart.setFont(font)
    chart.setPalette(palette_for(LIGHT))
    chart.resize(size)
    chart.show()


def picture(chart: QWidget, size: QSize, title: str, about: str) -> bytes:
    """Return a chart as PNG; it is used up by that.

    Parameters
    ----------
    chart : QWidget
        A chart that nobody sees.
    size : QSize
        Of the picture [px at 96 dpi].
    title, about : str
        What it is, and the same in a few sentences.

    Returns
    -------
    bytes
        The file.
    """
    chart.setProperty(SHARPNESS, _SHARPNESS)
    _laid_out(chart, size)
    image = QImage(size * _SHARPNESS, QImage.Format.Format_RGB32)
    image.setDevicePixelRatio(_SHARPNESS)
    image.fill(LIGHT.leaf)
    image.setText(say("Title"), title)
    image.setText(say("Description"), about)
    with QPainter(image) as painter:
        QWidget.render(chart, painter, QPoint())
    per_m = round(96 * _SHARPNESS * _INCH_PER_M)
    image.setDotsPerMeterX(per_m)
    image.setDotsPerMeterY(per_m)
    chart.deleteLater()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    QImageWriter(buffer, QByteArray(b"png")).write(image)
    return bytes(data.data())


def drawing(chart: QWidget, size: QSize, title: str, about: str) -> bytes:
    """Return a chart as SVG, its letters as outlines, so that it looks the same where the typeface is missing; arguments as ``picture``."""
    _laid_out(chart, size)
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    generator = QSvgGenerator()
    generator.setOutputDevice(buffer)
    generator.setResolution(chart.logicalDpiX())
    generator.setSize(size)
    generator.setViewBox(QRect(QPoint(0, 0), size))
    generator.setTitle(title)
    generator.setDescription(about)
    with QPainter(generator) as painter:
        QWidget.render(chart, painter, QPoint())
    chart.deleteLater()
    return _outlined(bytes(data.data()))


def _outlined(svg: bytes) -> bytes:
    """Return an SVG with every text turned into the outlines of its letters."""
    ET.register_namespace("", _SPACE)
    ET.register_namespace("xlink", _LINKS)
    root = ET.fromstring(svg)  # noqa: S314  (written a moment ago by Qt, not by anybody else)
    for parent in list(root.iter()):
        # Lines are to grow with the drawing.
        parent.attrib.pop("vector-effect", None)
        for place, text in enumerate(list(parent)):
            if text.tag == f"{{{_SPACE}}}text":
                parent[place] = _outlines(text)
    return bytes(ET.tostring(root, encoding="utf-8", xml_declaration=True))


def _outlines(text: ET.Element) -> ET.Element:
    font = QFont(text.get("font-family", ""))
    font.setPixelSize(max(1, round(float(text.get("font-size", "13")))))
    size = float(text.get("font-size", "13"))
    font.setWeight(QFont.Weight.Bold if float(text.get("font-weight", "400")) > 500 else QFont.Weight.Normal)
    path = QPainterPath()
    path.addText(0.0, 0.0, font, text.text or "")
    grow, x, y = size / font.pixelSize(), float(text.get("x", "0")), float(text.get("y", "0"))
    parts: list[str] = []
    for number in range(path.elementCount()):
        element = path.elementAt(number)
        sign = {
            QPainterPath.ElementType.MoveToElement: "M",
            QPainterPath.ElementType.LineToElement: "L",
            QPainterPath.ElementType.CurveToElement: "C",
        }.get(element.type, "")
        parts.append(f"{sign}{x + grow * element.x:.2f},{y + grow * element.y:.2f}")
    kept = {name: text.get(name, "") for name in ("fill", "fill-opacity") if text.get(name)}
    return ET.Element(
        f"{{{_SPACE}}}path",
        {"d": " ".join(parts), "stroke": "none", "fill-rule": "nonzero", "aria-label": text.text or "", **kept},
    )
