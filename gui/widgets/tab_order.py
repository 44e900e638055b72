"""The order in which Tab goes through widgets that are made later than their neighbours."""

from collections.abc import Iterable
from itertools import pairwise

from PySide6.QtWidgets import QWidget


def in_order(widgets: Iterable[QWidget]) -> None:
    """Let Tab go through these in this order."""
    for one, other in pairwise(widgets):
        QWidget.setTabOrder(one, other)
