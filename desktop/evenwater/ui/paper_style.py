"""What a stylesheet cannot draw: list arrows, check marks, focus rings, the frame of a choice."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import (
    QComboBox,
    QProxyStyle,
    QPushButton,
    QStyle,
    QStyleOption,
    QStyleOptionComboBox,
    QStyleOptionComplex,
    QToolButton,
    QWidget,
)

_ARROWS = {
    QStyle.PrimitiveElement.PE_IndicatorArrowDown: 0,
    QStyle.PrimitiveElement.PE_IndicatorArrowLeft: 90,
    QStyle.PrimitiveElement.PE_IndicatorArrowUp: 180,
    QStyle.PrimitiveElement.PE_IndicatorArrowRight: 270,
    QStyle.PrimitiveElement.PE_IndicatorSpinDown: 0,
    QStyle.PrimitiveElement.PE_IndicatorSpinUp: 180,
}
_INDICATORS = (
    QStyle.PixelMetric.PM_IndicatorWidth,
    QStyle.PixelMetric.PM_IndicatorHeight,
    QStyle.PixelMetric.PM_ExclusiveIndicatorWidth,
    QStyle.PixelMetric.PM_ExclusiveIndicatorHeight,
)
_BESIDE_INDICATORS = (QStyle.PixelMetric.PM_CheckBoxLabelSpacing, QStyle.PixelMetric.PM_RadioButtonLabelSpacing)
_INDICATOR, _BESIDE_INDICATOR = 16, 8
_PAD = 10
_ARROW_SPACE = 28
# Beside a number the list has no frame and stands closer. What it needs beyond its text:
_BARE_PAD = 6
_BARE_ARROW_SPACE = 20
BARE_COMBO_EXTRA = _BARE_PAD + _BARE_ARROW_SPACE + 6
FRAMED_COMBO_EXTRA = _PAD + _ARROW_SPACE + 6


def draw_chevron(painter: QPainter, centre: QPointF, colour: QColor, turn: float = 0.0, half: float = 4.0) -> None:
    """Draw an open arrow head, pointing down unless turned by ``turn`` [degrees], ``half`` [px] to each side."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(colour, 0.4 * half)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.translate(centre)
    painter.rotate(turn)
    painter.drawPolyline(QPolygonF([QPointF(-half, -half / 2), QPointF(0, half / 2), QPointF(half, -half / 2)]))
    painter.restore()


def draw_frame(painter: QPainter, rect: QRect, colour: QColor, ground: QColor | Qt.BrushStyle, width: int) -> None:
    """Draw the frame of a field: ``width`` [px] wide, inside ``rect``, corners hardly rounded."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(colour, width))
    painter.setBrush(ground)
    inset = width / 2
    painter.drawRoundedRect(QRectF(rect).adjusted(inset, inset, -inset, -inset), 3, 3)
    painter.restore()


def draw_sign(painter: QPainter, rect: QRectF, colour: QColor) -> None:
    """Draw the sign of a caution or a refusal, a triangle with a stroke in it, to fill ``rect``."""
    painter.save()
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(colour, max(1.5, rect.height() / 10))
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    painter.translate(rect.topLeft())
    unit = rect.height() / 16
    painter.drawPolygon(QPolygonF([QPointF(x * unit, y * unit) for x, y in ((8, 1.5), (15, 14), (1, 14))]))
    painter.drawLine(QPointF(8 * unit, 6 * unit), QPointF(8 * unit, 9.4 * unit))
    painter.drawPoint(QPointF(8 * unit, 11.8 * unit))
    painter.restore()


class PaperStyle(QProxyStyle):
    """Fusion's measures with our own drawing where a stylesheet has no word for it."""

    def __init__(self) -> None:
        super().__init__("Fusion")

    def drawPrimitive(
        self,
        element: QStyle.PrimitiveElement,
        option: QStyleOption,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        """Draw arrows, check marks and focus rings; leave the rest to the base style."""
        palette = option.palette
        if element in _ARROWS:
            enabled = bool(option.state & QStyle.StateFlag.State_Enabled)
            role = QPalette.ColorRole.WindowText if enabled else QPalette.ColorRole.Mid
            draw_chevron(painter, QRectF(option.rect).center(), palette.color(role), _ARROWS[element])
        elif element == QStyle.PrimitiveElement.PE_FrameFocusRect:
            self._draw_focus(option, painter, widget)
        elif element == QStyle.PrimitiveElement.PE_IndicatorCheckBox:
            self._draw_check(option, painter)
        elif element == QStyle.PrimitiveElement.PE_IndicatorRadioButton:
            self._draw_radio(option, painter)
        else:
            super().drawPrimitive(element, option, painter, widget)

    def drawComplexControl(
        self,
        control: QStyle.ComplexControl,
        option: QStyleOptionComplex,
        painter: QPainter,
        widget: QWidget | None = None,
    ) -> None:
        """Draw a list as one frame with one arrow, without a button of its own."""
        if control != QStyle.ComplexControl.CC_ComboBox or not isinstance(option, QStyleOptionComboBox):
            super().drawComplexControl(control, option, painter, widget)
            return
        palette = option.palette
        focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
        enabled = bool(option.state & QStyle.StateFlag.State_Enabled)
        edge = palette.color(QPalette.ColorRole.Highlight if focused else QPalette.ColorRole.Mid)
        if option.frame:
            ground = palette.color(QPalette.ColorRole.Base if enabled else QPalette.ColorRole.Window)
            draw_frame(painter, option.rect, edge, ground, 2 if focused else 1)
        elif focused:
            draw_frame(painter, option.rect.adjusted(0, 2, 0, -2), edge, Qt.BrushStyle.NoBrush, 2)
        arrow = self.subControlRect(control, option, QStyle.SubControl.SC_ComboBoxArrow, widget)
        ink = palette.color(QPalette.ColorRole.WindowText if enabled else QPalette.ColorRole.Mid)
        grown = 4.0 if widget is None else max(4.0, 4.0 * widget.font().pointSizeF() / 11.0)
        draw_chevron(painter, QRectF(arrow).center(), ink, half=grown)

    def subControlRect(
        self,
        control: QStyle.ComplexControl,
        option: QStyleOptionComplex,
        part: QStyle.SubControl,
        widget: QWidget | None = None,
    ) -> QRect:
        """Place the text and the arrow of a list."""
        if control == QStyle.ComplexControl.CC_ComboBox:
            rect = option.rect
            framed = not isinstance(option, QStyleOptionComboBox) or option.frame
            pad, arrow = (_PAD, _ARROW_SPACE) if framed else (_BARE_PAD, _BARE_ARROW_SPACE)
            if part == QStyle.SubControl.SC_ComboBoxArrow:
                return QRect(rect.right() - arrow, rect.top(), arrow, rect.height())
            if part == QStyle.SubControl.SC_ComboBoxEditField:
                return rect.adjusted(pad, 0, -arrow, 0)
        return super().subControlRect(control, option, part, widget)  # type: ignore[arg-type]

    def pixelMetric(
        self, metric: QStyle.PixelMetric, option: QStyleOption | None = None, widget: QWidget | None = None
    ) -> int:
        """Let the boxes of choices grow with the letters beside them."""
        if metric in _INDICATORS and widget is not None:
            return max(_INDICATOR, round(_INDICATOR * widget.font().pointSizeF() / 11))
        if metric in _BESIDE_INDICATORS:
            return _BESIDE_INDICATOR
        return super().pixelMetric(metric, option, widget)

    def sizeFromContents(
        self,
        kind: QStyle.ContentsType,
        option: QStyleOption,
        size: QSize,
        widget: QWidget | None = None,
    ) -> QSize:
        """Give lists the width of their longest entry, the arrow, and the height of a field."""
        if kind == QStyle.ContentsType.CT_ComboBox and isinstance(widget, QComboBox):
            height = max(36, round(36 * widget.font().pointSizeF() / 11))
            return QSize(size.width() + _PAD + _ARROW_SPACE, height)
        if kind == QStyle.ContentsType.CT_CheckBox and widget is not None:
            # As easy to hit as a button.
            height = max(32, round(32 * widget.font().pointSizeF() / 11))
            return super().sizeFromContents(kind, option, size, widget).expandedTo(QSize(0, height))
        return super().sizeFromContents(kind, option, size, widget)  # type: ignore[arg-type]

    def _draw_focus(self, option: QStyleOption, painter: QPainter, widget: QWidget | None) -> None:
        if isinstance(widget, QPushButton | QToolButton) and widget.property("role") != "main":
            return  # the stylesheet gives these a blue border
        if isinstance(widget, QPushButton):
            # On the blue button a blue ring would not show: the border turns to ink, with a light line inside.
            light = option.palette.color(QPalette.ColorRole.HighlightedText)
            draw_frame(painter, widget.rect().adjusted(4, 4, -4, -4), light, Qt.BrushStyle.NoBrush, 2)
            return
        ring = option.palette.color(QPalette.ColorRole.Highlight)
        draw_frame(painter, option.rect, ring, Qt.BrushStyle.NoBrush, 2)

    def _draw_check(self, option: QStyleOption, painter: QPainter) -> None:
        palette = option.palette
        focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
        edge = palette.color(QPalette.ColorRole.Highlight if focused else QPalette.ColorRole.Mid)
        draw_frame(painter, option.rect, edge, palette.color(QPalette.ColorRole.Base), 2 if focused else 1)
        if not option.state & QStyle.StateFlag.State_On:
            return
        box = QRectF(option.rect)
        unit = box.width() / 16
        tick = [QPointF(3.5, 8.5), QPointF(6.8, 11.8), QPointF(12.5, 4.8)]
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(palette.color(QPalette.ColorRole.WindowText), 2 * unit))
        painter.drawPolyline(QPolygonF([box.topLeft() + point * unit for point in tick]))
        painter.restore()

    def _draw_radio(self, option: QStyleOption, painter: QPainter) -> None:
        palette = option.palette
        focused = bool(option.state & QStyle.StateFlag.State_HasFocus)
        width = 2.0 if focused else 1.0
        ring = QRectF(option.rect).adjusted(width / 2, width / 2, -width / 2, -width / 2)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge = palette.color(QPalette.ColorRole.Highlight if focused else QPalette.ColorRole.Mid)
        painter.setPen(QPen(edge, width))
        painter.setBrush(palette.color(QPalette.ColorRole.Base))
        painter.drawEllipse(ring)
        if option.state & QStyle.StateFlag.State_On:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(palette.color(QPalette.ColorRole.WindowText))
            painter.drawEllipse(ring.center(), ring.width() / 3.6, ring.height() / 3.6)
        painter.restore()
