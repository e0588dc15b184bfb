"""The window that imports a spreadsheet: how it is taken at the left, what it would bring at the right, then one button."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, QObject, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QCloseEvent, QGuiApplication, QKeyEvent, QShowEvent
from PySide6.QtWidgets import QCheckBox, QHBoxLayout, QLabel, QPushButton, QScrollArea, QVBoxLayout, QWidget

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.quantities import Water
from evenwater.screens import correct, csv_entries, room_words
from evenwater.screens.csv_guess import with_ruling
from evenwater.session import Change, Document, LogChange
from evenwater.ui.answer_parts import Sentence
from evenwater.ui.dialogs import Dialogs
from evenwater.ui.import_points import PointList, Ruling
from evenwater.ui.import_run import ImportRun, known
from evenwater.ui.import_table import PreviewTable
from evenwater.ui.import_work import ImportWork, Looked
from evenwater.ui.plain_text import allow
from evenwater.ui.progress import ProgressRow, Ticket
from evenwater.ui.records_pane import SYSTEMS, name_of
from evenwater.ui.theme import GRID, pixels, set_role
from evenwater.wording import marked, say, say_all

_WIDTH, _HEIGHT, _POINTS_WIDTH = 1240, 720, 380
# How much of a large screen it takes at first.
_SHARE = 0.75
_HINT = marked("Choose a cell to read what becomes of it.")
_STOPPED = marked("Stopped. Nothing was imported.")


class ImportPage(QWidget):
    """Imports into one system; ``told`` carries what was done, for the sheet behind."""

    told = Signal(str)

    def __init__(self, document: Document, catalogue: Catalogue, owner: QWidget) -> None:
        """Make the window over ``owner``, still without a file."""
        super().__init__(owner, Qt.WindowType.Window)
        self.setWindowTitle(say("Import from a spreadsheet"))
        set_role(self, "page")
        self._document, self._catalogue = document, catalogue
        self._system = ""
        self._source: Path | bytes = b""
        self._rulings: dict[str, str] = {}
        self._looked: Looked | None = None
        self._water = Water()
        self._new = 0
        self._leaving: list[QWidget] = []
        self._host: QWidget | None = None
        self._behind: QWidget | None = None
        self.dialogs = Dialogs(self)
        self.work = ImportWork(catalogue, self)
        self.run = ImportRun(document, catalogue, self)
        self._make_parts()
        self._lay_out()
        self._connect()
        room = QGuiApplication.primaryScreen().availableSize()
        self.resize(
            QSize(pixels(self.font(), _WIDTH), pixels(self.font(), _HEIGHT)).expandedTo(room * _SHARE).boundedTo(room)
        )

    def _make_parts(self) -> None:
        self.file = QLabel(self)
        set_role(self.file, "heading")
        self.other = self._button(say("Choose another &file"))
        self.points = PointList(self)
        self.hindrance = Sentence(self, "stop")
        set_role(self.hindrance.label, "stop")
        self.counts, self.status = QLabel(self), QLabel(say(_HINT), self)
        for label in (self.file, self.counts, self.status):
            label.setTextFormat(Qt.TextFormat.PlainText)
            label.setWordWrap(True)
            label.setMinimumHeight(1)
        self.status.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.status.setMinimumHeight(2 * self.status.fontMetrics().lineSpacing() + 2)
        self.status.setAccessibleName(say("What becomes of the chosen cell"))
        self.table = PreviewTable(self)
        self.faulty = QCheckBox(say("Show only &rows with something wrong"), self)
        self.progress = ProgressRow(self, say("&Stop"))
        self.importing = self._button(say("Import"))
        set_role(self.importing, "main")
        self.leave = self._button(say("&Close"))
        set_role(self.leave, "large")

    def _button(self, text: str) -> QPushButton:
        button = QPushButton(text, self)
        button.setAutoDefault(False)
        return button

    def _lay_out(self) -> None:
        self.area = QScrollArea(self)
        self.area.setWidgetResizable(True)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.area.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.area.setWidget(self.points)
        self.area.setFixedWidth(pixels(self.font(), _POINTS_WIDTH))
        above = QHBoxLayout()
        above.setSpacing(GRID)
        above.addWidget(self.file, 1)
        above.addWidget(self.other, 0, Qt.AlignmentFlag.AlignTop)
        right = QVBoxLayout()
        right.setSpacing(GRID)
        for part in (self.hindrance, self.counts):
            right.addWidget(part)
        right.addWidget(self.table, 1)
        right.addWidget(self.status)
        right.addWidget(self.faulty)
        # Where there is nothing to show the words stay above.
        right.addStretch(0)
        middle = QHBoxLayout()
        middle.setSpacing(2 * GRID)
        middle.addWidget(self.area)
        middle.addLayout(right, 1)
        below = QHBoxLayout()
        below.setSpacing(GRID)
        below.addWidget(self.progress, 3)
        below.addStretch(1)
        below.addWidget(self.leave)
        below.addWidget(self.importing)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(2 * GRID, 2 * GRID, 2 * GRID, 2 * GRID)
        layout.setSpacing(2 * GRID)
        layout.addLayout(above)
        layout.addLayout(middle, 1)
        layout.addLayout(below)

    def _connect(self) -> None:
        self.other.clicked.connect(self._choose_file)
        self.points.ruled.connect(self._rule)
        self.table.told.connect(self._say_cell)
        self.faulty.toggled.connect(self.table.only_faulty)
        self.progress.stopped.connect(self.run.stop)
        self.importing.clicked.connect(self._import)
        self.leave.clicked.connect(self.close)
        self.work.looked.connect(self._show)
        self.work.came.connect(self._came)
        self.run.came.connect(self._moved)
        self._document.changed.connect(self._changed)
        self._document.log.logChanged.connect(self._log_changed)

    # The file

    def begin(self, system: str, file: Path) -> None:
        """Look at a file for a system, and show the window."""
        if self.run.running:
            return
        self._system, self._source, self._rulings, self._looked = system, file, {}, None
        self.file.setText(file.name)
        self.points.clear()
        self.faulty.setChecked(False)
        self._say("", "")
        self._show_parts()
        self._look()
        self.show()
        self.raise_()
        self.activateWindow()

    def _choose_file(self) -> None:
        self.dialogs.open_csv(self._another)

    def _another(self, file: Path) -> None:
        self.begin(self._system, file)

    def _rule(self, ruling: Ruling) -> None:
        self._rulings = with_ruling(self._rulings, ruling.what, ruling.value)
        self._look()

    def _look(self) -> None:
        """Read the file anew. What is shown stays until the answer comes, but cannot be imported any more."""
        self._water = correct.water(self._document.values(self._system))
        self.importing.setEnabled(False)
        self.progress.begin(say("The file is being read."))
        self.progress.stop.setVisible(False)
        self.work.look(self._source, self._rulings, self._water)

    def _came(self, ticket: Ticket) -> None:
        words = (
            say("{done} of about {most} rows are read.", done=ticket.done, most=ticket.most)
            if ticket.done
            else say("The file is being read.")
        )
        self.progress.say(words, ticket.done, ticket.most)

    def _show(self, looked: Looked) -> None:
        self.progress.end()
        self._looked, self._source = looked, looked.data or self._source
        found, guess = looked.preview, looked.guess
        if looked.refusal is not None:
            where = say("Line {line}: ", line=looked.refusal.line) if looked.refusal.line else ""
            self._say(f"{where}{looked.refusal.words}", "")
            self.table.clear()
        if found is None or guess is None:
            self._show_parts()
            self._show_button()
            return
        first = not self.points.rows
        # Without a date or a reading the columns are what must be chosen.
        columns = [point.what for point in guess.points if guess.choices.nothing and point.what.startswith("column ")]
        self.points.show_points((*found.points, *guess.points), columns)
        self.table.show_preview(found, only_faulty=self.faulty.isChecked())
        self.faulty.setEnabled(self._any_faulty())
        self._show_parts()
        self._count()
        asked = self.points.asked()
        if first and asked:
            asked[0].choice.setFocus(Qt.FocusReason.OtherFocusReason)
        elif first:
            self.importing.setFocus(Qt.FocusReason.OtherFocusReason)

    def _any_faulty(self) -> bool:
        found = self._looked.preview if self._looked is not None else None
        return found is not None and any(row.faulty for row in found.rows)

    def _show_parts(self) -> None:
        """Show the points once there are any, and the table while there is something in it."""
        # From above to below at the left, then at the right; what was made later would come last.
        before: QWidget = self.other
        points = (row.choice.combo for row in self.points.in_order())
        for part in (*points, self.table, self.faulty, self.progress.stop, self.leave, self.importing):
            QWidget.setTabOrder(before, part)
            before = part
        self.area.setVisible(bool(self.points.rows))
        for part in (self.table, self.status, self.faulty):
            part.setVisible(self._looked is not None and self._looked.preview is not None)

    def _count(self) -> None:
        """Say how many readings are new."""
        if self._looked is None or self._looked.preview is None:
            return
        found = self._looked.preview
        number = len(found.taken)
        there = known(self._document, self._system, self._looked.sequels, number).count
        self._new = number - there
        hinders, said = ("", found.messages) if found.ready else (found.messages[0], found.messages[1:])
        self._say(hinders, " ".join(filter(None, (*said, csv_entries.there_words(there, number)))))
        self._show_button()

    def _say(self, hinders: str, counts: str, role: str = "") -> None:
        self.hindrance.set_text(hinders)
        self.hindrance.setVisible(bool(hinders))
        set_role(self.counts, role)
        self.counts.setText(counts)
        self.counts.setVisible(bool(counts))

    def _show_button(self) -> None:
        found = self._looked.preview if self._looked is not None else None
        self._new = self._new if found is not None else 0
        ready = found is not None and found.ready and self._new > 0 and not self.work.busy()
        words = csv_entries.button_words(self._new, name_of(self._document, self._system, say_all(SYSTEMS)))
        self.importing.setText(f"&{words.replace('&', '&&')}")
        allow(self.importing, ready, say("Nothing can be imported yet: see the questions at the left."))

    def _say_cell(self, sentence: str) -> None:
        self.status.setText(sentence or (say(_HINT) if self.table.lines.rows else ""))

    # The import

    def _import(self) -> None:
        if self._looked is None or self._looked.preview is None or self.run.running:
            return
        rows = self._looked.preview.taken
        self._hold(True)
        self.progress.begin(say("The readings are being imported."))
        self.progress.stop.setVisible(True)
        outcome = self.run.run(self._system, rows, self._water)
        self.progress.end()
        self._hold(False)
        self._count()
        if outcome.new is not None:
            done = csv_entries.done_words(outcome.new, len(rows))
            self.told.emit(done)
        else:
            done = (
                say(_STOPPED)
                if outcome.reason is None
                else say("Nothing was imported. {reason}", reason=room_words.sentence(outcome.reason))
            )
        self._say(*(("", done, "title") if outcome.reason is None else (done, "")))
        self.leave.setFocus(Qt.FocusReason.OtherFocusReason)
        for window in self._leaving:
            QTimer.singleShot(0, window, window.close)
        self._leaving = []

    def _moved(self, looked_at: int) -> None:
        """Say how far the import has come. While it holds the log nothing in the room behind can be changed."""
        if self._host is not None and self._host.isEnabled():
            self._behind = self._host.focusWidget()
            self._host.setEnabled(False)
            # Which reaches the windows over it as well.
            self.setEnabled(True)
        found = self._looked.preview if self._looked is not None else None
        most = len(found.taken) if found is not None else 0
        if looked_at < most:
            self.progress.say(f"{looked_at} of {most} readings are imported.", looked_at, most)
        else:
            self.progress.say("The readings are being written to the disk.", most, most)

    def _hold(self, held: bool) -> None:
        """Keep the hand off everything but the button that stops the import."""
        for part in (self.points, self.table, self.importing, self.other):
            part.setEnabled(not held)
        self.faulty.setEnabled(not held and self._any_faulty())
        if not held and self._host is not None and not self._host.isEnabled():
            self._host.setEnabled(True)
            if self._behind is not None:
                self._behind.setFocus(Qt.FocusReason.OtherFocusReason)

    def _changed(self, change: Change) -> None:
        """Reckon anew when the water that figures per kilogram hang on is another, and name the system anew."""
        if change.record_id != self._system or not self.isVisible() or self._looked is None or self.run.running:
            return
        if correct.water(self._document.values(self._system)) != self._water:
            self._look()
        else:
            self._show_button()

    def _log_changed(self, _change: LogChange) -> None:
        if self.isVisible() and not self.run.running and not self.work.busy():
            self._count()

    # Opening and closing

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Close with the window behind; let that wait while an import is being stopped."""
        if event.type() == QEvent.Type.Close and watched is self._host:
            if self.run.running:
                self._stop_and_close(self._host)
                event.ignore()
                return True
            self.close()
        return super().eventFilter(watched, event)

    def showEvent(self, event: QShowEvent) -> None:
        """Watch the window behind."""
        super().showEvent(event)
        owner = self.parentWidget()
        if self._host is None and owner is not None:
            self._host = owner.window()
            self._host.installEventFilter(self)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Drop what is under way; an import that is running is stopped first."""
        if self.run.running:
            self._stop_and_close(self)
            event.ignore()
            return
        self.work.drop()
        self.progress.end()
        self._looked, self._source = None, b""
        self.table.clear()
        if self._host is not None:
            self._host.removeEventFilter(self)
            self._host = None
        super().closeEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Close with Escape."""
        if event.key() == Qt.Key.Key_Escape:
            self.close()
        else:
            super().keyPressEvent(event)

    def _stop_and_close(self, window: QWidget) -> None:
        self.run.stop()
        if window not in self._leaving:
            self._leaving.append(window)
