"""The look in one place: colour tokens, the sizes that follow the base font, one stylesheet.

Colours reach widgets through the palette, so a widget that paints itself asks its own palette
(``tokens_of``) and follows a change of theme without knowing which one is in force. Every size in
the stylesheet is a multiple of the base font, so enlarging the base font enlarges everything.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtGui import QColor, QFont, QPalette
from PySide6.QtWidgets import QAbstractItemView, QApplication, QWidget

BASE_POINTS = 11.0
GRID = 8
FIELD_HEIGHT = 36
BUTTON_HEIGHT = 32
MAIN_BUTTON_HEIGHT = 48


@dataclass(frozen=True)
class Tokens:
    """The colours of one theme, each as ``#RRGGBB``.

    ``paper`` is the ground, ``leaf`` what is written on, ``ink`` text, ``muted`` second lines and
    units, ``rule`` field borders, ``blue`` the plan and the focus, ``stop`` refusals, ``on_blue``
    text on blue. ``faint`` (grid lines) and ``wash`` (the band, a hovered button) carry no meaning
    alone and so need no contrast of their own.
    """

    name: str
    paper: str
    leaf: str
    ink: str
    muted: str
    rule: str
    blue: str
    stop: str
    on_blue: str
    faint: str
    wash: str


LIGHT = Tokens(
    "light",
    "#FBFAF6",
    "#FFFFFF",
    "#1B1B1A",
    "#5A5852",
    "#8C897F",
    "#0B5A8F",
    "#B34700",
    "#FFFFFF",
    "#E9E7E0",
    "#D6E4EE",
)
DARK = Tokens(
    "dark", "#17191B", "#202326", "#ECEAE4", "#A9A69C", "#75736C", "#6DB9EC", "#FF9A66", "#17191B", "#34373A", "#263B4A"
)
HIGH_CONTRAST = Tokens(
    "high contrast",
    "#FFFFFF",
    "#FFFFFF",
    "#000000",
    "#2E2E2E",
    "#4A4A4A",
    "#003E6B",
    "#8F2F00",
    "#FFFFFF",
    "#D0D0D0",
    "#C4DCEB",
)
HIGH_CONTRAST_DARK = Tokens(
    "high contrast, dark",
    "#000000",
    "#000000",
    "#FFFFFF",
    "#DCDCDC",
    "#B8B8B8",
    "#8FD0FF",
    "#FFB48A",
    "#000000",
    "#3F3F3F",
    "#12364F",
)
THEMES = (LIGHT, DARK, HIGH_CONTRAST, HIGH_CONTRAST_DARK)

_ROLES = {
    "paper": QPalette.ColorRole.Window,
    "leaf": QPalette.ColorRole.Base,
    "ink": QPalette.ColorRole.WindowText,
    "muted": QPalette.ColorRole.PlaceholderText,
    "rule": QPalette.ColorRole.Mid,
    "blue": QPalette.ColorRole.Highlight,
    "stop": QPalette.ColorRole.BrightText,
    "on_blue": QPalette.ColorRole.HighlightedText,
    "faint": QPalette.ColorRole.Midlight,
    "wash": QPalette.ColorRole.AlternateBase,
}


def contrast(first: str, second: str) -> float:
    """Return the contrast ratio of two colours [1].

    Source: WCAG 2.2, definitions of contrast ratio and relative luminance.
    """
    lighter, darker = sorted((_luminance(first), _luminance(second)), reverse=True)
    return (lighter + 0.05) / (darker + 0.05)


def _luminance(colour: str) -> float:
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in parts]
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def palette_for(tokens: Tokens) -> QPalette:
    """Return the palette that carries the tokens to every widget."""
    palette = QPalette()
    for field, role in _ROLES.items():
        palette.setColor(role, QColor(getattr(tokens, field)))
    for role, colour in (
        (QPalette.ColorRole.Text, tokens.ink),
        (QPalette.ColorRole.ButtonText, tokens.ink),
        (QPalette.ColorRole.Button, tokens.leaf),
        (QPalette.ColorRole.ToolTipBase, tokens.leaf),
        (QPalette.ColorRole.ToolTipText, tokens.ink),
        (QPalette.ColorRole.Link, tokens.blue),
        (QPalette.ColorRole.Accent, tokens.blue),
    ):
        palette.setColor(role, QColor(colour))
    for role in (QPalette.ColorRole.Text, QPalette.ColorRole.WindowText, QPalette.ColorRole.ButtonText):
        palette.setColor(QPalette.ColorGroup.Disabled, role, QColor(tokens.rule))
    return palette


def tokens_of(palette: QPalette) -> Tokens:
    """Return the tokens a palette carries; they follow the theme in force."""
    active = QPalette.ColorGroup.Active
    return Tokens("of palette", **{field: palette.color(active, role).name() for field, role in _ROLES.items()})


def chosen_ground(tokens: Tokens) -> str:
    """Return the ground of a chosen line: where paper is as white as a leaf, or as black, a wash beside its edge in blue."""
    return tokens.wash if tokens.leaf == tokens.paper else tokens.leaf


def points(font: QFont, at_base: float) -> float:
    """Return the size [pt] that is ``at_base`` when the base font has its usual 11 pt."""
    return at_base * font.pointSizeF() / BASE_POINTS


def scaled(font: QFont, at_base: float, *, bold: bool = False) -> QFont:
    """Return ``font`` at the size that is ``at_base`` [pt] when the base font has its usual 11 pt."""
    made = QFont(font)
    made.setPointSizeF(points(font, at_base))
    made.setBold(bold)
    return made


def pixels(font: QFont, at_base: int) -> int:
    """Return the length [px] that is ``at_base`` at the usual base font; never smaller than that."""
    return max(at_base, round(at_base * font.pointSizeF() / BASE_POINTS))


def set_role(widget: QWidget, role: str) -> None:
    """Give a widget a role of the stylesheet: title, muted, caption, stop, main, quiet, nav."""
    if widget.property("role") == role:
        return  # dressing it again takes as long as painting it
    # A hundred enumerations are made when this name is first asked for: a tenth of a first paint.
    from PySide6.QtCore import Qt

    widget.setProperty("role", role)
    # One that was not shown yet is dressed when it is; but a list measures its rows before that, and keeps what it measured.
    if widget.testAttribute(Qt.WidgetAttribute.WA_WState_Polished) or isinstance(widget, QAbstractItemView):
        widget.style().unpolish(widget)
        widget.style().polish(widget)


def apply_theme(app: QApplication, family: str, tokens: Tokens = LIGHT, base_points: float = BASE_POINTS) -> None:
    """Dress the whole application.

    ``family`` is the name of the loaded font, ``base_points`` its size [pt]; everything scales
    with it.
    """
    from evenwater.ui.paper_style import PaperStyle  # its many enumerations cost as much as a first paint may

    apply_ground(app, family, tokens, base_points)
    app.setStyle(PaperStyle())
    app.setPalette(palette_for(tokens))
    app.setStyleSheet(stylesheet(tokens, base_points))


def wear(app: QApplication, family: str, tokens: Tokens, base_points: float = BASE_POINTS) -> None:
    """Change the colours and the size of letters [pt] of an application that is dressed already."""
    # Without its stylesheet first: from one to the other takes Qt four times as long.
    app.setStyleSheet("")
    apply_ground(app, family, tokens, base_points)
    app.setStyleSheet(stylesheet(tokens, base_points))


def apply_ground(app: QApplication, family: str, tokens: Tokens = LIGHT, base_points: float = BASE_POINTS) -> None:
    """Set the font and the colours only: enough for a window with nothing but words in it."""
    font = QFont(family)
    font.setPointSizeF(base_points)
    app.setFont(font)
    app.setPalette(palette_for(tokens))


def stylesheet(t: Tokens, base_points: float = BASE_POINTS) -> str:
    """Return the one stylesheet. No rule matches bare QWidget, so that fonts and palettes are inherited.

    Lists open below their field, never over it (``combobox-popup``), so that what was chosen stays in sight.
    """
    scale = base_points / BASE_POINTS

    def pt(size: float) -> str:
        return f"{size * scale:.1f}pt"

    def px(size: int, less: int = 0) -> str:
        """Return a length, ``less`` of it [px] taken by borders and padding, which do not grow."""
        return f"{max(size, round(size * scale)) - less}px"

    return f"""
QMainWindow, QDialog, QScrollArea, QScrollArea > QWidget > QWidget[role="page"] {{ background: {t.paper}; }}
QScrollArea {{ border: none; }}
QLineEdit, QComboBox, QAbstractItemView, QScrollBar, QMenu {{ widget-animation-duration: 0; }}
QScrollArea[role="answer"] {{ border: 2px solid transparent; }}
QScrollArea[role="answer"]:focus {{ border: 2px solid {t.blue}; }}
QLabel[role="title"] {{ font-size: {pt(13)}; font-weight: bold; }}
QLabel[role="heading"] {{ font-size: {pt(16)}; font-weight: bold; }}
QLabel[role="second"] {{ font-size: {pt(16)}; }}
QLabel[role="muted"] {{ color: {t.muted}; }}
QLabel[role="caption"] {{ color: {t.muted}; font-size: {pt(10)}; }}
QLabel[role="stop"] {{ color: {t.stop}; }}
QLabel:disabled {{ color: {t.rule}; }}

QPushButton, QToolButton {{ background: {t.leaf}; color: {t.ink}; border: 1px solid {t.rule}; border-radius: 3px;
    padding: 1px 15px; min-height: {px(BUTTON_HEIGHT, 4)}; }}
QPushButton:hover, QToolButton:hover {{ background: {t.wash}; }}
QPushButton:pressed, QToolButton:pressed {{ border: 2px solid {t.ink}; padding: 0px 14px; }}
QPushButton:focus, QToolButton:focus {{ border: 2px solid {t.blue}; padding: 0px 14px; }}
QPushButton:disabled, QToolButton:disabled {{ color: {t.rule}; background: {t.paper}; border-style: dashed; }}
QPushButton[role="main"] {{ background: {t.blue}; color: {t.on_blue}; border-color: {t.blue}; font-weight: bold;
    min-height: {px(MAIN_BUTTON_HEIGHT, 4)}; }}
QPushButton[role="main"]:hover {{ background: {t.blue}; border: 2px solid {t.ink}; padding: 0px 14px; }}
QPushButton[role="main"]:focus {{ border: 2px solid {t.ink}; padding: 0px 14px; }}
QPushButton[role="main"]:disabled {{ background: {t.paper}; color: {t.rule}; border-color: {t.rule}; }}
QPushButton[role="large"] {{ min-height: {px(MAIN_BUTTON_HEIGHT, 4)}; }}
QPushButton[role="quiet"] {{ background: transparent; border: 1px solid transparent; color: {t.blue}; padding: 1px 7px;
    text-align: left; }}
QPushButton[role="quiet"]:hover {{ background: {t.wash}; }}
QPushButton[role="quiet"]:focus {{ border: 2px solid {t.blue}; padding: 0px 6px; }}
QToolButton[role="bare"] {{ background: transparent; border: 1px solid transparent; padding: 0px;
    min-width: {px(BUTTON_HEIGHT, 2)}; min-height: {px(BUTTON_HEIGHT, 2)}; }}
QToolButton[role="bare"]:hover {{ background: {t.wash}; }}
QToolButton[role="bare"]:focus {{ border: 2px solid {t.blue}; padding: 0px; }}
QToolButton::menu-indicator {{ image: none; width: 0px; }}

QLineEdit, QPlainTextEdit, QTextEdit {{ background: {t.leaf}; color: {t.ink}; border: 1px solid {t.rule};
    border-radius: 3px; padding: 1px 10px; placeholder-text-color: {t.muted}; selection-background-color: {t.blue}; selection-color: {t.on_blue}; }}
QLineEdit {{ min-height: {px(FIELD_HEIGHT, 4)}; }}
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus {{ border: 2px solid {t.blue}; padding: 0px 9px; }}
QLineEdit[role="bare"], QLineEdit[role="bare"]:focus {{ background: transparent; border: none; padding: 0px;
    min-height: 0px; }}

QAbstractItemView {{ background: {t.leaf}; color: {t.ink}; border: 1px solid {t.rule}; outline: none;
    selection-background-color: {t.wash}; selection-color: {t.ink}; }}
QAbstractItemView:focus {{ border: 2px solid {t.blue}; }}
QComboBox {{ combobox-popup: 0; }}
QComboBox QAbstractItemView::item {{ min-height: {px(BUTTON_HEIGHT)}; padding: 0px 8px; }}
QComboBox QAbstractItemView::item:selected {{ background: {t.wash}; color: {t.ink}; border-left: 3px solid {t.blue}; }}
QListView[role="nav"] {{ background: {t.paper}; border: none; border-right: 1px solid {t.faint}; }}
QListView[role="nav"]::item {{ min-height: {px(33)}; padding-left: 16px; border-left: 4px solid transparent; }}
QListView[role="nav"]::item:selected {{ background: {chosen_ground(t)}; color: {t.ink}; border-left: 4px solid {t.blue}; }}
QListView[role="nav"]:focus {{ border: none; border-right: 2px solid {t.blue}; }}
QListView[role="rows"] {{ background: {t.paper}; border: none; }}
QListView[role="rows"]::item {{ min-height: {px(BUTTON_HEIGHT)}; padding: 2px 8px; border-left: 4px solid transparent;
    border-bottom: 1px solid {t.faint}; }}
QListView[role="rows"]::item:selected {{ background: {chosen_ground(t)}; color: {t.ink}; border-left: 4px solid {t.blue}; }}
QListView[role="rows"]:focus {{ border: 2px solid {t.blue}; }}
QListView[role="lines"], QListView[role="lines"]:focus {{ background: {t.paper}; border: none; }}
QTableView {{ gridline-color: {t.faint}; }}
QTableView[role="plain"] {{ border: 2px solid transparent; background: transparent; }}
QTableView[role="plain"]:focus {{ border: 2px solid {t.blue}; }}
QTableView::item {{ padding: 4px 8px; }}
QHeaderView {{ border: none; background: transparent; }}
QHeaderView::section {{ background: {t.paper}; color: {t.muted}; border: none; border-bottom: 1px solid {t.rule};
    padding: 4px 8px; }}

QMenu {{ background: {t.leaf}; border: 1px solid {t.rule}; padding: 4px; }}
QMenu::item {{ padding: 7px 16px; min-height: {px(18)}; }}
QMenu::item:selected {{ background: {t.wash}; color: {t.ink}; }}
QMenu::item:disabled {{ color: {t.muted}; }}
QMenu::separator {{ height: 1px; background: {t.faint}; margin: 4px 8px; }}
QToolTip {{ background: {t.leaf}; color: {t.ink}; border: 1px solid {t.rule}; padding: 4px 8px; }}
QScrollBar:vertical {{ background: transparent; width: 14px; margin: 0px; }}
QScrollBar:horizontal {{ background: transparent; height: 14px; margin: 0px; }}
QScrollBar::handle {{ background: {t.rule}; border: 4px solid {t.paper}; border-radius: 6px; min-height: 40px;
    min-width: 40px; }}
QScrollBar::add-line, QScrollBar::sub-line {{ width: 0px; height: 0px; }}
QScrollBar::add-page, QScrollBar::sub-page {{ background: transparent; }}
"""
