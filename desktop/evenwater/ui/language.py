"""The language of the window: chosen from the keeper's and the system's, loaded, and handed to what says the texts.

English is what stands in the code, so it costs nothing and loads nothing; another language is one file, looked up when a text is said. What
is on the screen already keeps its words: pages are made anew afterwards.
"""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator
from PySide6.QtWidgets import QApplication

from evenwater import wording
from evenwater.assets import resources
from evenwater.wording import Style

ENGLISH = "en"
# Each by its own name, so that whoever cannot read the others finds it.
LANGUAGES = ((ENGLISH, "English"), ("de", "Deutsch"), ("es", "Español"), ("fr", "Français"))
STYLES = {"de": Style(decimal=",", capital_nouns=True), "es": Style(decimal=","), "fr": Style(decimal=",")}
_CONTEXT, _OURS = "evenwater", "evenwater translation"


def chosen(wanted: str, of_system: Iterable[str]) -> str:
    """Return the language to speak.

    Parameters
    ----------
    wanted : str
        A tag such as "de"; empty for the system's.
    of_system : iterable of str
        What the system speaks, the dearest first, such as "de-AT".

    Returns
    -------
    str
        A tag of ``LANGUAGES``; English where none of them is known.
    """
    known = [tag for tag, _ in LANGUAGES]
    tags = [wanted] if wanted else list(of_system)
    return next((short for tag in tags if (short := tag.replace("_", "-").partition("-")[0]) in known), ENGLISH)


def apply(app: QApplication, wanted: str = "") -> str:
    """Speak another language from now on; call it before what is to be said is made.

    Parameters
    ----------
    app : QApplication
        Whose own words, those of Qt's dialogs and menus, and whose direction of writing follow.
    wanted : str
        A tag of ``LANGUAGES``; empty for the system's.

    Returns
    -------
    str
        The tag of the language that is spoken now; English where the file of the other is missing.
    """
    # Asking the system costs, so only where the keeper has not said it.
    language = chosen(wanted, () if wanted else QLocale.system().uiLanguages())
    for translator in app.findChildren(QTranslator):
        if translator.objectName() == _OURS:
            app.removeTranslator(translator)
            translator.deleteLater()
    if language != ENGLISH and not _load(app, str(resources() / "translations" / f"evenwater_{language}.qm")):
        language = ENGLISH
    if language == ENGLISH:
        wording.use(None)
    else:
        _load(app, f"{QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)}/qtbase_{language}.qm")
        wording.use(_translated, STYLES[language])
    direct(app, language)
    return language


def direct(app: QApplication, language: str) -> None:
    """Let everything run in the direction in which a language is written."""
    direction = QLocale(language).textDirection()
    if app.layoutDirection() != direction:
        app.setLayoutDirection(direction)


def _load(app: QApplication, file: str) -> bool:
    translator = QTranslator(app)
    translator.setObjectName(_OURS)
    if not translator.load(file):
        translator.deleteLater()
        return False
    return app.installTranslator(translator)


def _translated(text: str, about: str, count: int) -> str:
    return QCoreApplication.translate(_CONTEXT, text, about, count)
