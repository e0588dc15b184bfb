"""The window of settings: colours, letters, language. What is chosen holds at once, so there is nothing to confirm."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QButtonGroup, QGridLayout, QLabel, QRadioButton, QSizePolicy, QVBoxLayout, QWidget

from evenwater.screens.shown import figure
from evenwater.ui import preferences
from evenwater.ui.flow import FlowRow
from evenwater.ui.language import LANGUAGES
from evenwater.ui.look import TOKENS, Look
from evenwater.ui.preferences import COLOURS, LETTERS
from evenwater.ui.theme import GRID, Tokens, scaled, set_role
from evenwater.wording import marked, say

_COLOURS = {
    preferences.AS_SYSTEM: marked("As the system &has them"),
    preferences.LIGHT: marked("&Light"),
    preferences.DARK: marked("&Dark"),
    preferences.HIGH_CONTRAST: marked("High &contrast, light"),
    preferences.HIGH_CONTRAST_DARK: marked("High contrast, d&ark"),
}
_FIGURE = 8.4
_PERCENT = marked("{number}\u00a0%")
_TITLE, _COLOURS_TITLE, _LETTERS_TITLE = marked("Settings"), marked("Colours"), marked("Letters")
_LANGUAGE_TITLE, _SYSTEMS_OWN = marked("Language"), marked("As the &system speaks")
# Empty for the system's own; the others by their own names, so that whoever cannot read the rest finds theirs.
_TAGS = ("", *(tag for tag, _ in LANGUAGES))
_FAR = marked(
    "From 150\u00a0% on the sheets are read standing back from the tank. Ctrl with plus or minus changes the letters on every sheet, "
    "F11 takes the whole screen."
)
_UNKEPT = marked("\u25b2 The settings could not be written. They hold until the program is closed.")


class Sample(QWidget):
    """A scrap of paper in the colours of a theme: a figure, a second line and the line of a plan."""

    def __init__(self, tokens: Tokens, parent: QWidget) -> None:
        """Show ``tokens``."""
        super().__init__(parent)
        self._tokens = tokens
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)

    def set_tokens(self, tokens: Tokens) -> None:
        """Show other colours."""
        if tokens != self._tokens:
            self._tokens = tokens
            self.update()

    def sizeHint(self) -> QSize:
        """Return the size of a figure, a unit and a short line."""
        metrics = QFontMetricsF(self.font())
        return QSize(round(9.0 * metrics.horizontalAdvance("8")) + 5 * GRID, round(1.8 * metrics.height()))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the scrap."""
        tokens, metrics = self._tokens, QFontMetricsF(scaled(self.font(), 11, bold=True))
        with QPainter(self) as painter:
            painter.setPen(QPen(QColor(tokens.rule), 1))
            painter.setBrush(QColor(tokens.paper))
            painter.drawRect(QRectF(self.rect()).adjusted(0.5, 0.5, -0.5, -0.5))
            base = (self.height() - metrics.height()) / 2.0 + metrics.ascent()
            painter.setFont(scaled(self.font(), 11, bold=True))
            painter.setPen(QColor(tokens.ink))
            number = figure(_FIGURE, 1)
            painter.drawText(QPointF(GRID, base), number)
            left = GRID + metrics.horizontalAdvance(number) + GRID
            painter.setFont(scaled(self.font(), 10))
            painter.setPen(QColor(tokens.muted))
            painter.drawText(QPointF(left, base), "dKH")
            left += metrics.horizontalAdvance("dKH") + GRID
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QColor(tokens.blue), 2))
            painter.drawLine(QPointF(left, self.height() - GRID), QPointF(self.width() - GRID, GRID))


class SettingsWindow(QWidget):
    """Shows what is chosen and chooses something else."""

    def __init__(self, look: Look, parent: QWidget) -> None:
        """Show the choices of ``look``."""
        super().__init__(parent, Qt.WindowType.Window)
        set_role(self, "page")
        self._look = look
        self.colours, self._colour_group = self._group(len(COLOURS))
        self.letters, self._letter_group = self._group(len(LETTERS))
        self.languages, self._language_group = self._group(len(_TAGS))
        self._samples = {name: Sample(TOKENS.get(name, look.tokens), self) for name in COLOURS}
        self._colours_title, self._letters_title = self._label("title"), self._label("title")
        self._language_title = self._label("title")
        self._far, self.told = self._label("muted"), self._label("stop")
        self.told.hide()
        self._lay_out()
        self._colour_group.idClicked.connect(self._choose_colours)
        self._letter_group.idClicked.connect(self._choose_letters)
        self._language_group.idClicked.connect(self._choose_language)
        look.chosen.connect(self._show)
        look.remade.connect(self._say)
        look.unkept.connect(self._say_unkept)
        self._say()
        self._show()

    def _group(self, count: int) -> tuple[tuple[QRadioButton, ...], QButtonGroup]:
        group = QButtonGroup(self)
        buttons = tuple(QRadioButton(self) for _ in range(count))
        for number, button in enumerate(buttons):
            group.addButton(button, number)
        return buttons, group

    def _label(self, role: str) -> QLabel:
        label = QLabel(self)
        set_role(label, role)
        label.setTextFormat(Qt.TextFormat.PlainText)
        label.setWordWrap(True)
        return label

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(3 * GRID)
        grid.setVerticalSpacing(GRID)
        for row, (name, button) in enumerate(zip(COLOURS, self.colours, strict=True)):
            grid.addWidget(button, row, 0)
            grid.addWidget(self._samples[name], row, 1)
        grid.setColumnStretch(2, 1)
        sizes, tongues = FlowRow(3 * GRID), FlowRow(3 * GRID)
        for row_of, buttons in ((sizes, self.letters), (tongues, self.languages)):
            for button in buttons:
                row_of.addWidget(button)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(3 * GRID, 2 * GRID, 3 * GRID, 3 * GRID)
        layout.setSpacing(GRID)
        layout.addWidget(self._colours_title)
        layout.addLayout(grid)
        layout.addSpacing(2 * GRID)
        layout.addWidget(self._letters_title)
        layout.addLayout(sizes)
        layout.addWidget(self._far)
        layout.addSpacing(2 * GRID)
        layout.addWidget(self._language_title)
        layout.addLayout(tongues)
        layout.addWidget(self.told)
        layout.addStretch(1)

    def _say(self) -> None:
        """Write every word in the language in force."""
        self.setWindowTitle(say(_TITLE))
        self._colours_title.setText(say(_COLOURS_TITLE))
        self._letters_title.setText(say(_LETTERS_TITLE))
        self._far.setText(say(_FAR))
        for name, button in zip(COLOURS, self.colours, strict=True):
            button.setText(say(_COLOURS[name]))
        for size, button in zip(LETTERS, self.letters, strict=True):
            button.setText(say(_PERCENT, number=size))
            button.setAccessibleName(f"{say(_LETTERS_TITLE)}: {button.text()}")
        self._language_title.setText(say(_LANGUAGE_TITLE))
        self.languages[0].setText(say(_SYSTEMS_OWN))
        for (_, name), button in zip(LANGUAGES, self.languages[1:], strict=True):
            button.setText(name)

    def _show(self) -> None:
        """Show what is chosen; a size that is not offered leaves all of them open."""
        chosen = self._look.preferences
        self.colours[COLOURS.index(chosen.colours)].setChecked(True)
        self._samples[preferences.AS_SYSTEM].set_tokens(self._look.system_tokens)
        offered = chosen.letters in LETTERS
        self._letter_group.setExclusive(offered)
        for size, button in zip(LETTERS, self.letters, strict=True):
            button.setChecked(size == chosen.letters)
        self._letter_group.setExclusive(True)
        spoken = chosen.language if chosen.language in _TAGS else ""
        self.languages[_TAGS.index(spoken)].setChecked(True)

    def _say_unkept(self) -> None:
        self.told.setText(say(_UNKEPT))
        self.told.show()

    def _choose_colours(self, number: int) -> None:
        self._look.choose(colours=COLOURS[number])

    def _choose_letters(self, number: int) -> None:
        self._look.choose(letters=LETTERS[number])

    def _choose_language(self, number: int) -> None:
        self._look.choose(language=_TAGS[number])

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close with Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)
