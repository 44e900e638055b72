"""What is seen while the program is still being loaded: its window's frame, with a word of what goes on."""

from PySide6.QtCore import QByteArray, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QLabel, QMainWindow

from core.language import tr

WIDTH, HEIGHT = 1280, 820


class Opening(QMainWindow):
    """Stands where the window will stand. A main window, because only that reads where another one stood."""

    def __init__(self, geometry: QByteArray) -> None:
        super().__init__()
        self.setObjectName("opening")
        self.setWindowTitle("Samepart")
        words = QLabel(tr("Opening…"))
        words.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.setCentralWidget(words)
        self.resize(WIDTH, HEIGHT)
        if not geometry.isEmpty():
            self.restoreGeometry(geometry)

    def show_at_once(self) -> None:
        """Show the frame before anything else is done."""
        self.show()
        QGuiApplication.processEvents()
