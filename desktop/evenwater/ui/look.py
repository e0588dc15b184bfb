"""The look of the whole program as the keeper chose it: colours that may follow the system, the size of all letters, the language.

Made before the first paint, so nothing slow is imported here; the system's own hints are asked once the window has been painted.
"""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QApplication

from evenwater.ui import language as speech
from evenwater.ui import preferences
from evenwater.ui.preferences import AS_SYSTEM, Preferences
from evenwater.ui.theme import (
    BASE_POINTS,
    DARK,
    HIGH_CONTRAST,
    HIGH_CONTRAST_DARK,
    LIGHT,
    Tokens,
    apply_ground,
    apply_theme,
    wear,
)

TOKENS = {
    preferences.LIGHT: LIGHT,
    preferences.DARK: DARK,
    preferences.HIGH_CONTRAST: HIGH_CONTRAST,
    preferences.HIGH_CONTRAST_DARK: HIGH_CONTRAST_DARK,
}


class Look(QObject):
    """Applies what was chosen, live, and keeps it.

    ``chosen`` says that something else is chosen. Where letters or language change, ``leaving`` asks for the page to be taken down before
    everything is dressed anew, and ``remade`` for it to be made again. ``unkept`` says that the choice could not be written.
    """

    chosen = Signal()
    leaving = Signal()
    remade = Signal()
    unkept = Signal()

    def __init__(
        self,
        app: QApplication,
        file: Path | None = None,
        letters: int | None = None,
        parent: QObject | None = None,
    ) -> None:
        """Read the preferences.

        ``file`` is where they are kept, None to keep nothing; ``letters`` is a size [% of the usual] that goes before the one kept.
        """
        super().__init__(app if parent is None else parent)
        self._app, self._file = app, file
        self.preferences = Preferences() if file is None else preferences.load(file)
        self._kept = self.preferences
        if letters is not None:
            self.preferences = replace(self.preferences, letters=letters)
        self._family = app.font().family()
        # Before it is dressed the application has the system's own colours.
        roles = (QPalette.ColorRole.Window, QPalette.ColorRole.WindowText)
        ground, ink = (app.palette().color(role).lightness() for role in roles)
        self._dark, self._contrast = ground < ink, False
        self._worn: tuple[Tokens, float] | None = None
        self._spoken = self.preferences.language
        # With the next turn of the loop: the page that goes may be the one that is just told of a key.
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(0)
        self._soon.timeout.connect(self._make_anew)

    @property
    def tokens(self) -> Tokens:
        """The colours in force."""
        if self.preferences.colours != AS_SYSTEM:
            return TOKENS[self.preferences.colours]
        return self.system_tokens

    @property
    def system_tokens(self) -> Tokens:
        """The colours that go with the system's, as far as it was asked."""
        if self._contrast:
            return HIGH_CONTRAST_DARK if self._dark else HIGH_CONTRAST
        return DARK if self._dark else LIGHT

    @property
    def points(self) -> float:
        """The size of the base font [pt]."""
        return BASE_POINTS * self.preferences.letters / 100.0

    def speak(self) -> None:
        """Speak the language that is chosen from now on."""
        self._spoken = self.preferences.language
        speech.apply(self._app, self._spoken)

    def prepare(self, family: str) -> None:
        """Set font and colours for a window with nothing but words in it."""
        self._family = family
        apply_ground(self._app, family, self.tokens, self.points)

    def dress(self, family: str) -> None:
        """Dress everything, and follow the system from now on; call it once the window has been painted."""
        self._family = family
        hints = self._app.styleHints()
        hints.colorSchemeChanged.connect(self._system_changed)
        hints.accessibility().contrastPreferenceChanged.connect(self._system_changed)
        self._ask_frames()
        self._dark, self._contrast = self._system()
        apply_theme(self._app, family, self.tokens, self.points)
        self._worn = (self.tokens, self.points)

    def choose(self, *, colours: str | None = None, letters: int | None = None, language: str | None = None) -> None:
        """Choose something else; what is not given stays."""
        before = self.preferences
        after = replace(
            before,
            colours=before.colours if colours is None else colours,
            letters=before.letters if letters is None else preferences.within(letters),
            language=before.language if language is None else language,
        )
        if after == before:
            return
        self.preferences = after
        # A size from the command line is for this time only; the rest is kept as it was chosen.
        self._keep(replace(after, letters=self._kept.letters) if letters is None else after)
        if colours is not None:
            self._ask_frames()
            self._dark, self._contrast = self._system()
        if (after.letters, after.language) != (before.letters, before.language):
            self._soon.start()
        else:
            self._wear()
        self.chosen.emit()

    def larger(self) -> None:
        """Choose the next larger letters."""
        self.choose(letters=preferences.next_letters(self.preferences.letters, 1))

    def smaller(self) -> None:
        """Choose the next smaller letters."""
        self.choose(letters=preferences.next_letters(self.preferences.letters, -1))

    def follow(self, dark: bool, contrast: bool) -> None:
        """Take what the system has now: whether it is dark, and whether it asks for high contrast."""
        self._dark, self._contrast = dark, contrast
        self._wear()

    def _wear(self) -> None:
        """Dress the application anew where that changes anything: it takes as long as some twenty keys."""
        if self._worn is not None and self._worn != (self.tokens, self.points):
            self._worn = (self.tokens, self.points)
            wear(self._app, self._family, *self._worn)

    def _make_anew(self) -> None:
        self.leaving.emit()
        if self._spoken != self.preferences.language:
            self.speak()
        self._wear()
        self.remade.emit()

    def _keep(self, wanted: Preferences) -> None:
        self._kept = wanted
        if self._file is not None and not preferences.save(self._file, wanted):
            self.unkept.emit()

    def _system_changed(self, *_: object) -> None:
        self.follow(*self._system())

    def _system(self) -> tuple[bool, bool]:
        """Return whether the system is dark and asks for high contrast; while it cannot be asked, what is known of it."""
        from PySide6.QtCore import Qt  # a hundred enumerations, too slow before the first paint

        if self.preferences.colours != AS_SYSTEM:
            return self._dark, self._contrast  # the hints say what was asked for here, and not what the system has
        hints = self._app.styleHints()
        scheme = hints.colorScheme()
        dark = self._dark if scheme == Qt.ColorScheme.Unknown else scheme == Qt.ColorScheme.Dark
        return dark, hints.accessibility().contrastPreference() == Qt.ContrastPreference.HighContrast

    def _ask_frames(self) -> None:
        """Let the system draw the window's frame, and dialogs of its own, in the colours that were chosen."""
        from PySide6.QtCore import Qt

        hints = self._app.styleHints()
        if self.preferences.colours == AS_SYSTEM:
            hints.unsetColorScheme()
        else:
            dark = self.preferences.colours in (preferences.DARK, preferences.HIGH_CONTRAST_DARK)
            hints.setColorScheme(Qt.ColorScheme.Dark if dark else Qt.ColorScheme.Light)
