"""Cyclic garbage is collected in the GUI thread only.

Python collects in whichever thread happens to allocate, and a widget that is part of a cycle would then be
destroyed in a thread of the pool, which Qt answers with a crash. So automatic collecting is off while a pool
runs, and a timer does it in the thread that owns the widgets.
"""

import gc
from typing import Final

from PySide6.QtCore import QObject, QTimer

_EVERY_MS: Final = 500


class Collector(QObject):
    """Collects by Python's own thresholds, in the thread it was made in, until it is closed."""

    _open = 0

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        Collector._open += 1
        self._is_open = True
        gc.disable()
        self._timer = QTimer(self)
        self._timer.setInterval(_EVERY_MS)
        self._timer.timeout.connect(self.collect)
        self._timer.start()

    def collect(self) -> None:
        """Collect the youngest generations that have grown past their threshold."""
        due = [count > limit for count, limit in zip(gc.get_count(), gc.get_threshold(), strict=True)]
        for generation in (2, 1, 0):
            if all(due[: generation + 1]):
                gc.collect(generation)
                return

    def close(self) -> None:
        """Hand collecting back to Python; no thread of the pool may run any more."""
        if not self._is_open:
            return
        self._is_open = False
        self._timer.stop()
        Collector._open -= 1
        if Collector._open == 0:
            gc.enable()
