"""Saves any chart: as a drawing (SVG), as a picture (PNG) or as its figures (CSV).

What is saved does not depend on the window: it is painted anew in dark ink on white paper, in the usual letters and in a size that fits a page.
One button in the chart's corner, its context menu (also by the menu key) and Ctrl+Shift+S lead here.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QEvent, QIODevice, QObject, QPoint, QSaveFile, QSize, QStandardPaths, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QKeySequence, QPalette
from PySide6.QtWidgets import QFileDialog, QMenu, QToolButton, QWidget

from evenwater.ui.icons import put_sign
from evenwater.ui.theme import BUTTON_HEIGHT, pixels, set_role
from evenwater.wording import marked, say, say_all

if TYPE_CHECKING:
    from evenwater.screens.chart_table import ChartTable

SVG, PNG, CSV = "svg", "png", "csv"
_MENU = {
    SVG: marked("Save as a &drawing (SVG)"),
    PNG: marked("Save as a &picture (PNG)"),
    CSV: marked("Save the &figures (CSV)"),
}
_FILTERS = {SVG: marked("Drawing (*.svg)"), PNG: marked("Picture (*.png)"), CSV: marked("Spreadsheet as CSV (*.csv)")}
_NAME, _TIP = marked("Save this chart"), marked("Save this chart as a drawing, a picture or its figures (Ctrl+Shift+S)")
_SAVED, _UNSAVED = marked("Saved {name}."), marked("The chart could not be written there. Choose another folder.")
# About as wide as the text of a page [px at 96 dpi].
_WIDTH = 1200
_KEY = "Ctrl+Shift+S"
_NO_NAME = re.compile(r'[\0-\x1f<>:"/\\|?*]')
_LONGEST_NAME = 60


class Chart(Protocol):
    """What a chart has to offer to be saved."""

    def table(self) -> ChartTable | None:
        """Return the figures that are shown; None where there are none."""

    def twin(self) -> QWidget:
        """Return another chart that shows the same, still without a size."""


class ChartExport(QObject):
    """Stands in the corner of a chart and saves it; the sheet around it says that it was done."""

    def __init__(self, owner: QWidget, chart: Chart, height: int) -> None:
        """Serve ``owner``, which is ``chart``, ``height`` high on a page [px at 96 dpi]; nothing is offered until it shows something."""
        super().__init__(owner)
        self._owner, self._chart, self._size = owner, chart, QSize(_WIDTH, height)
        self._menu: QMenu | None = None
        self._dialogs: dict[str, QFileDialog] = {}
        self.button = QToolButton(owner)
        set_role(self.button, "bare")
        put_sign(self.button, "save", QPalette.ColorRole.PlaceholderText)
        self.button.setAccessibleName(say(_NAME))
        self.button.setToolTip(say(_TIP))
        self.button.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.button.hide()
        self.button.clicked.connect(self.open_menu)
        action = QAction(owner)
        action.setShortcut(QKeySequence(_KEY))
        action.setShortcutContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        action.triggered.connect(self.open_menu)
        owner.addAction(action)
        owner.installEventFilter(self)

    def offer(self, offered: bool) -> None:
        """Show the button while there is something to save."""
        if offered != self.button.isVisibleTo(self._owner):
            self.button.setVisible(offered)
            self._place()

    @property
    def side(self) -> int:
        """The side of the button, which the chart keeps free in its lower right corner [px]."""
        return pixels(self._owner.font(), BUTTON_HEIGHT)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keep the button in its corner, and open the menu with the right button of the mouse or the menu key."""
        if event.type() == QEvent.Type.Resize:
            self._place()
        elif isinstance(event, QContextMenuEvent) and self.button.isVisibleTo(self._owner):
            self._made_menu().popup(event.globalPos())
            event.accept()
            return True
        return False

    def _place(self) -> None:
        side = self.side
        self.button.setGeometry(self._owner.width() - side - 2, self._owner.height() - side - 2, side, side)
        self.button.raise_()

    def open_menu(self) -> None:
        """Ask as what it is to be saved."""
        if self.button.isVisibleTo(self._owner):
            menu = self._made_menu()
            above = self.button.mapToGlobal(QPoint(self.button.width(), 0))
            menu.popup(above - QPoint(menu.sizeHint().width(), menu.sizeHint().height()))

    def _made_menu(self) -> QMenu:
        if self._menu is None:
            self._menu = QMenu(self._owner)
            for kind, words in say_all(_MENU).items():
                action = self._menu.addAction(say(words))
                action.setData(kind)
                action.triggered.connect(self._ask_where)
        return self._menu

    def _ask_where(self) -> None:
        chosen, table = self.sender(), self._chart.table()
        if not isinstance(chosen, QAction) or table is None:
            return
        kind = str(chosen.data())
        if kind not in self._dialogs:
            dialog = self._dialogs[kind] = QFileDialog(self._owner, say(_NAME))
            dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
            dialog.setNameFilter(say(_FILTERS[kind]))
            dialog.setDefaultSuffix(kind)
            dialog.setDirectory(QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation))
            dialog.fileSelected.connect(self._chosen)
        name = _NO_NAME.sub(" ", table.name)[:_LONGEST_NAME].strip(" .")
        self._dialogs[kind].selectFile(f"{name}.{kind}")
        self._dialogs[kind].open()

    def _chosen(self, name: str) -> None:
        path = Path(name)
        done = self.save(path, path.suffix.lstrip(".").lower())
        self._tell(say(_SAVED, name=path.name) if done else say(_UNSAVED))

    def save(self, path: Path, kind: str) -> bool:
        """Write the chart as one of ``SVG``, ``PNG`` and ``CSV``, whole or not at all; False where that failed."""
        table = self._chart.table()
        if table is None:
            return False
        if kind == CSV:
            from evenwater.screens.chart_table import write
            from evenwater.screens.local_zone import LocalZone

            data = write(table, LocalZone())
        else:
            from evenwater.ui.chart_paint import drawing, picture

            made = picture if kind == PNG else drawing
            data = made(self._chart.twin(), self._size, table.name, self._owner.accessibleDescription())
        file = QSaveFile(str(path))
        if not file.open(QIODevice.OpenModeFlag.WriteOnly):
            return False
        return file.write(data) == len(data) and file.commit()

    def _tell(self, sentence: str) -> None:
        """Say it in the head of the sheet that the chart stands on."""
        from evenwater.ui.sheet_header import SheetHeader

        sheet = self._owner.parentWidget()
        while sheet is not None:
            header = getattr(sheet, "header", None)
            if isinstance(header, SheetHeader):
                header.tell(sentence)
                return
            sheet = sheet.parentWidget()
