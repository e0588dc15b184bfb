"""Help where it is needed: why a field is there on F1 or its "?", the glossary on F1 once more, and the guide.

Nothing is loaded before somebody asks, or stays in a field.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, QPoint, Qt, QTimer
from PySide6.QtGui import QAction, QKeyEvent, QKeySequence
from PySide6.QtWidgets import QApplication, QCheckBox, QScrollArea, QWidget

from evenwater.assets import resources
from evenwater.ui.field_shell import FieldShell
from evenwater.ui.help_slip import WhyMark, WhySlip, host_of

if TYPE_CHECKING:
    from evenwater.screens.glossary import Glossary
    from evenwater.screens.why import Why, Whys
    from evenwater.ui.glossary_window import GlossaryWindow
    from evenwater.ui.guide_window import GuideWindow

# Whoever goes from field to field with Tab is not waiting to hear why each is there.
_RESTS_MS = 400


class Help(QObject):
    """Follows the focus through the window of ``page``."""

    def __init__(self, page: QWidget) -> None:
        """Take the key and follow the focus."""
        super().__init__(page)
        self._page = page
        self._whys: Whys | None = None
        self._terms: Glossary | None = None
        self.glossary: GlossaryWindow | None = None
        self.guide: GuideWindow | None = None
        self.field: QWidget | None = None
        self.mark: WhyMark | None = None
        self.slip: WhySlip | None = None
        # What has the focus inside the field that is explained.
        self._held: QWidget | None = None
        action = QAction(page)
        action.setShortcut(QKeySequence(Qt.Key.Key_F1))
        action.setShortcutContext(Qt.ShortcutContext.WindowShortcut)
        action.triggered.connect(self.explain)
        page.addAction(action)
        self._rests = QTimer(self)
        self._rests.setSingleShot(True)
        self._rests.setInterval(_RESTS_MS)
        self._rests.timeout.connect(self._describe)
        application = QApplication.instance()
        assert isinstance(application, QApplication)
        application.focusChanged.connect(self._focus_moved)
        self._focus_moved(None, application.focusWidget())

    # Asking

    def explain(self) -> None:
        """Say why the field with the focus is there; where that is said already, or there is nothing to say, open the glossary."""
        said = self.why(self.field)
        if self.field is None or said is None:
            self.show_glossary()
        elif self.slip is not None and self.slip.isVisible():
            self.show_glossary(said.terms[0] if said.terms else "")
        else:
            self._tell(self.field, said)

    def why(self, field: QWidget | None) -> Why | None:
        """Return what is said of an input."""
        asked = "" if field is None else str(field.property("topic") or "")
        if not asked:
            return None
        from evenwater.screens.why import load, topic_of

        if self._whys is None:
            self._whys = load(resources())
        return self._whys.of(topic_of(asked))

    def terms(self) -> Glossary:
        """Return the glossary."""
        if self._terms is None:
            from evenwater.screens.glossary import load

            self._terms = load(resources())
        return self._terms

    def show_glossary(self, term: str = "") -> None:
        """Show the glossary, at a term where one is named."""
        self.hide_slip()
        if self.glossary is None:
            from evenwater.ui.glossary_window import GlossaryWindow

            self.glossary = GlossaryWindow(self.terms(), self._page)
        self.glossary.open_at(term)

    def show_guide(self) -> None:
        """Show the guide."""
        self.hide_slip()
        if self.guide is None:
            from evenwater.ui.guide_window import GuideWindow

            self.guide = GuideWindow(resources(), self._page)
        self.guide.open()

    def settle(self) -> None:
        """Close the windows of the help."""
        for window in (self.glossary, self.guide):
            if window is not None:
                window.close()
                window.deleteLater()
        self.glossary = self.guide = None

    # Following the focus

    def _focus_moved(self, _before: QWidget | None, now: QWidget | None) -> None:
        if (
            now is None
            or (self.slip is not None and self.slip.isAncestorOf(now))
            or now.window() is not self._page.window()
        ):
            return
        field = _input_of(now)
        if field is self.field:
            return
        self.hide_slip()
        self._watch(field)
        self._rests.stop()
        if self.mark is not None:
            self.mark.hide()
        if field is not None:
            self._rests.start()
            self._show_mark(field)

    def _watch(self, field: QWidget | None) -> None:
        if self.field is not None:
            self.field.removeEventFilter(self)
            self.field.destroyed.disconnect(self._gone)
        self.field = field
        if field is not None:
            field.installEventFilter(self)
            field.destroyed.connect(self._gone)

    def _gone(self) -> None:
        self.field = self._held = None

    def _show_mark(self, field: QWidget) -> None:
        host = host_of(field)
        if self.mark is None:
            self.mark = WhyMark(host)
            self.mark.destroyed.connect(self._mark_gone)
            self.mark.clicked.connect(self.explain)
        elif self.mark.parentWidget() is not host:
            self.mark.setParent(host)
        if isinstance(field, FieldShell):
            line = field.label.geometry()
            corner = field.mapTo(host, QPoint(field.width(), line.bottom() + 1))
        else:
            wide = min(field.width(), field.sizeHint().width() + self.mark.sizeHint().width())
            corner = field.mapTo(host, QPoint(wide, (field.height() + self.mark.sizeHint().height()) // 2))
        self.mark.put(corner.x(), corner.y())

    def _mark_gone(self) -> None:
        self.mark = None

    def _slip_gone(self) -> None:
        self.slip = None

    def _describe(self) -> None:
        """Let a screen reader say it too, after what is wrong or usual."""
        said = self.why(self.field)
        if said is None:
            return
        if isinstance(self.field, FieldShell):
            self.field.set_why(said.text)
        elif isinstance(self.field, QCheckBox) and not self.field.accessibleDescription():
            self.field.setAccessibleDescription(said.text)

    # The slip

    def _tell(self, field: QWidget, said: Why) -> None:
        host = host_of(field)
        if self.slip is None:
            self.slip = WhySlip(host)
            self.slip.destroyed.connect(self._slip_gone)
            self.slip.termWanted.connect(self.show_glossary)
            self.slip.closed.connect(self.hide_slip)
        elif self.slip.parentWidget() is not host:
            self.slip.setParent(host)
        glossary = self.terms()
        offered = tuple((key, term.name) for key in said.terms if (term := glossary.find(key)) is not None)
        self.slip.tell(field, said.text, offered)
        above = host.parentWidget()
        while above is not None:
            if isinstance(above, QScrollArea):
                # In large letters a slip at the foot of the page would be cut off.
                above.ensureWidgetVisible(self.slip, 0, 0)
            above = above.parentWidget()
        self._describe()
        held = QApplication.focusWidget()
        if held is not field and held is not None and field.isAncestorOf(held):
            self._held = held
            held.installEventFilter(self)

    def hide_slip(self) -> None:
        """Take the slip away."""
        if self.slip is None or self.slip.isHidden():
            return
        if self._held is not None:
            self._held.removeEventFilter(self)
            self._held = None
        inside = QApplication.focusWidget()
        if inside is not None and self.slip.isAncestorOf(inside) and self.field is not None:
            self.field.setFocus(Qt.FocusReason.OtherFocusReason)
        self.slip.hide()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Close the slip with Escape, which then takes nothing back; keep sign and slip at their field."""
        kind = event.type()
        if kind in (QEvent.Type.KeyPress, QEvent.Type.ShortcutOverride):
            escape = isinstance(event, QKeyEvent) and event.key() == Qt.Key.Key_Escape
            if escape and self.slip is not None and self.slip.isVisible():
                if kind == QEvent.Type.KeyPress:
                    self.hide_slip()
                event.accept()
                return True
        elif watched is self.field and self.field is not None:
            if kind in (QEvent.Type.Move, QEvent.Type.Resize):
                self._show_mark(self.field)
            elif kind == QEvent.Type.Hide:
                self.hide_slip()
                if self.mark is not None:
                    self.mark.hide()
            elif kind == QEvent.Type.Show:
                held = QApplication.focusWidget()
                if held is not None and _input_of(held) is self.field:
                    self._show_mark(self.field)
        return False


def _input_of(widget: QWidget) -> QWidget | None:
    """Return the input that a widget is part of, or None."""
    found: QWidget | None = widget
    while found is not None and not found.isWindow():
        if found.property("topic"):
            return found
        found = found.parentWidget()
    return None
