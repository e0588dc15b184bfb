"""The floor of the frozen program's size: a bare window with one pyqtgraph plot, closed again after SECONDS when told so."""

import sys

import pyqtgraph as pg
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMainWindow

app = QApplication(sys.argv)
window = QMainWindow()
plot = pg.PlotWidget()
plot.plot([0, 1, 2, 3], [6.8, 7.3, 7.9, 8.4])
window.setCentralWidget(plot)
window.resize(800, 500)
window.show()
if len(sys.argv) == 3 and sys.argv[1] == "--close-after":
    QTimer.singleShot(round(1000 * float(sys.argv[2])), window.close)
sys.exit(app.exec())
