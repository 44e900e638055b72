"""The window's actions as a table, and its menus as nested names."""

from collections.abc import Callable, Mapping
from typing import Final

from attrs import frozen
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar, QWidget

from core.language import mark, tr
from gui.icons import icon
from gui.look import Look


@frozen
class ActionSpec:
    """What an action is called, which keys call it, and what it does in a sentence."""

    id: str
    text: str
    keys: str = ""
    icon: str = ""
    tip: str = ""


ACTIONS: Final = (
    ActionSpec(
        "new", mark("&New study"), "Ctrl+N", "", mark("Start an empty study; this one stays where it is kept")
    ),
    ActionSpec("open", mark("&Open…"), "Ctrl+O", "open", mark("Open a study or a bundle")),
    ActionSpec("add", mark("&Add logs…"), "Ctrl+L", "open", mark("Read meter logs into this study")),
    ActionSpec(
        "add_folder", mark("Add a &folder of logs…"), "Ctrl+Shift+L", "", mark("Read every log in a folder")
    ),
    ActionSpec(
        "type", mark("&Type readings…"), "Ctrl+T", "", mark("Enter runs of which only the display was read")
    ),
    ActionSpec(
        "save_as",
        mark("Sa&ve as…"),
        "Ctrl+Shift+S",
        "",
        mark("Keep this study under a name of yours and go on there"),
    ),
    ActionSpec(
        "save_copy",
        mark("Save a &copy…"),
        "",
        "",
        mark("Write a copy and go on here; edits are saved by themselves"),
    ),
    ActionSpec("demo", mark("Open the &demo"), "", "", mark("A bench of five invented machines")),
    ActionSpec("quit", mark("&Quit"), "Ctrl+Q", "", mark("Close the window; every edit is saved already")),
    ActionSpec("undo", mark("&Undo"), "Ctrl+Z", "undo"),
    ActionSpec("redo", mark("&Redo"), "Ctrl+Shift+Z", "redo"),
    ActionSpec("larger", mark("&Larger text"), "Ctrl++"),
    ActionSpec("smaller", mark("&Smaller text"), "Ctrl+-"),
    ActionSpec("normal", mark("&Normal text"), "Ctrl+0"),
    ActionSpec(
        "explain", mark("&How was this found?"), "F1", "", mark("Method, uncertainty and sources of a number")
    ),
    ActionSpec(
        "page_help",
        mark("About this &page"),
        "Shift+F1",
        "",
        mark("What it answers, how to read it, what to beware of"),
    ),
    ActionSpec("keys", mark("&Keys"), "Ctrl+/", "", mark("What the keyboard can do")),
    ActionSpec(
        "cautions", mark("&Cautions"), "", "", mark("Mains voltage, hot parts, and what the numbers are not")
    ),
    ActionSpec(
        "diagnostics",
        mark("&Diagnostics…"),
        "",
        "",
        mark("Versions and sizes to send with a fault; nothing private"),
    ),
    ActionSpec("about", mark("&About Samepart")),
)

SEPARATOR: Final = "-"
#: names in angle brackets are menus that the window fills
MENUS: Final[tuple[tuple[str, tuple[str, ...]], ...]] = (
    (
        mark("&File"),
        (
            "new",
            "open",
            "<recent>",
            SEPARATOR,
            "add",
            "add_folder",
            "type",
            SEPARATOR,
            "save_as",
            "save_copy",
            SEPARATOR,
            "demo",
            "quit",
        ),
    ),
    (mark("&Edit"), ("undo", "redo")),
    (
        mark("&View"),
        ("<pages>", SEPARATOR, "<theme>", "<language>", SEPARATOR, "larger", "smaller", "normal"),
    ),
    (mark("&Help"), ("explain", "page_help", SEPARATOR, "keys", "cautions", "diagnostics", "about")),
)


def make_actions(owner: QWidget, does: Mapping[str, Callable[[], object]]) -> dict[str, QAction]:
    """An action for every line of the table.

    Parameters
    ----------
    owner : QWidget
        The window; shortcuts work anywhere in it.
    does : mapping of id to bound method
        Bound methods of QObjects only: a lambda would keep the window alive.
    """
    made: dict[str, QAction] = {}
    for spec in ACTIONS:
        action = QAction(tr(spec.text), owner)
        action.setObjectName(f"action_{spec.id}")
        if spec.keys:
            action.setShortcut(QKeySequence(spec.keys))
        tip = tr(spec.tip) if spec.tip else ""
        action.setStatusTip(tip)
        action.setToolTip(tip or action.text().replace("&", ""))
        action.triggered.connect(does[spec.id])
        owner.addAction(action)
        made[spec.id] = action
    return made


def draw_icons(actions: Mapping[str, QAction], look: Look) -> None:
    """Draw the icons in the ink of a look."""
    for spec in ACTIONS:
        if spec.icon:
            actions[spec.id].setIcon(icon(spec.icon, look))


def fill_menus(bar: QMenuBar, actions: Mapping[str, QAction], given: Mapping[str, QMenu]) -> dict[str, QMenu]:
    """Build the menu bar; `given` holds the menus that the window fills, by their bracketed names."""
    menus: dict[str, QMenu] = {}
    for title, entries in MENUS:
        menu = menus[title.replace("&", "")] = bar.addMenu(tr(title))
        for entry in entries:
            if entry == SEPARATOR:
                menu.addSeparator()
            elif entry in given:
                menu.addMenu(given[entry])
            else:
                menu.addAction(actions[entry])
    return menus
