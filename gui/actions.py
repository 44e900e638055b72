"""The window's actions as a table, and its menus as nested names."""

from collections.abc import Callable, Mapping
from typing import Final

from attrs import frozen
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMenu, QMenuBar, QWidget

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
    ActionSpec("new", "&New study", "Ctrl+N", "", "Start an empty study; this one stays where it is kept"),
    ActionSpec("open", "&Open…", "Ctrl+O", "open", "Open a study or a bundle"),
    ActionSpec("add", "&Add logs…", "Ctrl+L", "open", "Read meter logs into this study"),
    ActionSpec("add_folder", "Add a &folder of logs…", "Ctrl+Shift+L", "", "Read every log in a folder"),
    ActionSpec("type", "&Type readings…", "Ctrl+T", "", "Enter runs of which only the display was read"),
    ActionSpec(
        "save_as", "Save &as…", "Ctrl+Shift+S", "", "Keep this study under a name of yours and go on there"
    ),
    ActionSpec(
        "save_copy", "Save a &copy…", "", "", "Write a copy and go on here; edits are saved by themselves"
    ),
    ActionSpec("demo", "Open the &demo", "", "", "A bench of five invented machines"),
    ActionSpec("quit", "&Quit", "Ctrl+Q", "", "Close the window; every edit is saved already"),
    ActionSpec("undo", "&Undo", "Ctrl+Z", "undo"),
    ActionSpec("redo", "&Redo", "Ctrl+Shift+Z", "redo"),
    ActionSpec("larger", "&Larger text", "Ctrl++"),
    ActionSpec("smaller", "&Smaller text", "Ctrl+-"),
    ActionSpec("normal", "&Normal text", "Ctrl+0"),
    ActionSpec("explain", "&How was this found?", "F1", "", "Method, uncertainty and sources of a number"),
    ActionSpec(
        "page_help", "About this &page", "Shift+F1", "", "What it answers, how to read it, what to beware of"
    ),
    ActionSpec("keys", "&Keys", "Ctrl+/", "", "What the keyboard can do"),
    ActionSpec("cautions", "&Cautions", "", "", "Mains voltage, hot parts, and what the numbers are not"),
    ActionSpec(
        "diagnostics", "&Diagnostics…", "", "", "Versions and sizes to send with a fault; nothing private"
    ),
    ActionSpec("about", "&About Samepart"),
)

SEPARATOR: Final = "-"
#: names in angle brackets are menus that the window fills
MENUS: Final[tuple[tuple[str, tuple[str, ...]], ...]] = (
    (
        "&File",
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
    ("&Edit", ("undo", "redo")),
    ("&View", ("<pages>", SEPARATOR, "<theme>", SEPARATOR, "larger", "smaller", "normal")),
    ("&Help", ("explain", "page_help", SEPARATOR, "keys", "cautions", "diagnostics", "about")),
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
        action = QAction(spec.text, owner)
        action.setObjectName(f"action_{spec.id}")
        if spec.keys:
            action.setShortcut(QKeySequence(spec.keys))
        action.setStatusTip(spec.tip)
        action.setToolTip(spec.tip or spec.text.replace("&", ""))
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
        menu = menus[title.replace("&", "")] = bar.addMenu(title)
        for entry in entries:
            if entry == SEPARATOR:
                menu.addSeparator()
            elif entry in given:
                menu.addMenu(given[entry])
            else:
                menu.addAction(actions[entry])
    return menus
