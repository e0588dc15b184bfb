"""The floor of a first paint: a bare PySide6 window with one label."""

from __future__ import annotations

from PySide6.QtWidgets import QApplication, QLabel, QMainWindow

from tests.bench.probe import SIZE, FirstPaint, hand_back, resident_mib


def painted(at: float) -> None:
    hand_back(first_paint=at, memory=resident_mib())


def main() -> None:
    app = QApplication([])
    window = QMainWindow()
    window.setCentralWidget(QLabel("6.8"))
    window.resize(*SIZE)
    watch = FirstPaint(painted, app)
    window.show()
    app.exec()
    del watch


if __name__ == "__main__":
    main()
