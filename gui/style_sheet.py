"""The style sheet of Qt's own widgets, made from the tokens of a look."""

from core.places import assets_folder
from gui.look import CORNER, FOCUS_EDGE, S4, S8, Look

_SHEET = """
* {{ outline: none; }}
QToolTip {{ background: {card}; color: {ink}; border: 1px solid {rule}; padding: {s4}px; }}
QMenuBar {{ background: {side}; color: {ink}; border-bottom: 1px solid {rule}; }}
QMenuBar::item {{ padding: {s4}px {s8}px; background: transparent; }}
QMenuBar::item:selected {{ background: {selection}; border-radius: {corner}px; }}
QMenu {{ background: {card}; color: {ink}; border: 1px solid {rule}; padding: {s4}px; }}
QMenu::item {{ padding: {s4}px {s24}px {s4}px {s8}px; border-radius: {corner}px; }}
QMenu::item:selected {{ background: {selection}; }}
QMenu::item:disabled {{ color: {muted}; }}
QMenu::separator {{ height: 1px; background: {rule}; margin: {s4}px; }}
QWidget#side {{ background: {side}; border-right: 1px solid {rule}; }}
QWidget#strip {{ background: {side}; border-top: 1px solid {rule}; }}
QWidget#card {{ background: {card}; border: 1px solid {rule}; border-radius: {corner}px; }}
QLabel[role="title"] {{ color: {ink}; font-size: {title}px; font-weight: 600; }}
QLabel[role="heading"] {{ color: {ink}; font-size: {large}px; font-weight: 600; }}
QLabel[role="muted"] {{ color: {muted}; }}
QLabel[role="caution"] {{ color: {caution}; }}
QLabel[role="problem"] {{ color: {problem}; }}
QPushButton, QToolButton {{
    background: {card}; color: {ink}; border: 1px solid {edge}; border-radius: {corner}px;
    padding: {s4}px {s8}px;
}}
QToolButton {{ border-color: transparent; background: transparent; }}
QPushButton:hover, QToolButton:hover {{ background: {selection}; }}
QPushButton:pressed, QToolButton:pressed, QToolButton:checked {{ background: {selection}; }}
QPushButton:disabled {{ color: {muted}; border-color: {rule}; }}
QToolButton:disabled {{ color: {muted}; }}
QPushButton[role="main"] {{ background: {link}; color: {card}; border-color: {link}; font-weight: 600; }}
QPushButton[role="main"]:hover {{ background: {ink}; border-color: {ink}; }}
QPushButton[role="link"] {{ background: transparent; border-color: transparent; color: {link}; }}
QPushButton[role="switch"]:checked {{ background: {selection}; border-color: {ink}; }}
QPushButton:focus, QToolButton:focus, QComboBox:focus, QLineEdit:focus, QAbstractItemView:focus,
QDoubleSpinBox:focus, QDateTimeEdit:focus, QCheckBox:focus {{ border: 2px solid {link}; }}
QScrollArea#reading_panel {{ border: none; border-left: {focus_edge}px solid transparent; }}
QScrollArea#reading_panel:focus {{ border-left-color: {link}; }}
QLineEdit, QComboBox, QDoubleSpinBox, QDateTimeEdit {{
    background: {card}; color: {ink}; border: 1px solid {edge}; border-radius: {corner}px; padding: {s4}px;
    selection-background-color: {selection}; selection-color: {ink};
}}
QLineEdit:disabled, QComboBox:disabled {{ color: {muted}; border-color: {rule}; }}
QDoubleSpinBox::up-button, QDoubleSpinBox::down-button {{ width: 0px; border: none; }}
QComboBox::drop-down {{ border: none; width: {s24}px; }}
QComboBox::down-arrow {{ image: url("{chevron}"); width: {line}px; height: {line}px; }}
QComboBox QAbstractItemView {{ background: {card}; border: 1px solid {rule}; color: {ink}; }}
QLineEdit {{ lineedit-clear-button-icon: url("{empty}"); }}
QCheckBox {{ border: 2px solid transparent; spacing: {s4}px; }}
QCheckBox::indicator {{
    width: {line}px; height: {line}px; background: {card};
    border: 1px solid {edge}; border-radius: {corner}px;
}}
QCheckBox::indicator:checked {{ background: {link}; border-color: {link}; image: url("{check}"); }}
QCheckBox::indicator:disabled {{ border-color: {rule}; }}
QCheckBox:disabled {{ color: {muted}; }}
QTreeView::indicator, QListView::indicator {{
    width: {line}px; height: {line}px; background: {card};
    border: 1px solid {edge}; border-radius: {corner}px;
}}
QTreeView::indicator:checked, QListView::indicator:checked {{
    background: {link}; border-color: {link}; image: url("{check}");
}}
QTreeView::indicator:indeterminate {{ border-color: {link}; image: url("{partly}"); }}
QLineEdit[wrong="true"] {{ border-color: {problem}; }}
QLineEdit#study_name {{
    background: transparent; border: 2px solid transparent; padding: {s4}px;
    font-size: {large}px; font-weight: 600;
}}
QLineEdit#study_name:hover {{ border-color: {rule}; }}
QLineEdit#study_name:focus {{ border-color: {link}; background: {card}; }}
QListView#pages {{ background: transparent; border: 2px solid transparent; }}
QListView#pages:focus {{ border-color: {link}; border-radius: {corner}px; }}
QListView#pages::item {{ padding-left: {s8}px; border-radius: {corner}px; color: {ink}; }}
QListView#pages::item:hover {{ background: {hover}; }}
QListView#pages::item:selected {{ background: {selection}; color: {ink}; }}
QTreeView, QTableView, QTextBrowser {{
    background: {card}; border: 1px solid {rule}; border-radius: {corner}px;
}}
QTreeView::item, QTableView::item {{ padding: 2px {s4}px; }}
QTreeView::item:selected, QTableView::item:selected {{ background: {selection}; color: {ink}; }}
QHeaderView::section {{
    background: {card}; color: {muted}; border: none; border-bottom: 1px solid {rule}; padding: {s4}px;
}}
QSlider::groove:horizontal {{ background: {rule}; height: {s4}px; border-radius: 2px; }}
QSlider::sub-page:horizontal {{ background: {edge}; border-radius: 2px; }}
QSlider::handle:horizontal {{
    background: {card}; border: 2px solid {edge}; border-radius: {corner}px;
    width: {s8}px; margin: -{s8}px -2px;
}}
QSlider::handle:horizontal:hover {{ background: {selection}; }}
QSlider[focused="true"]::handle:horizontal {{ background: {link}; border-color: {link}; }}
QProgressBar {{ background: {rule}; border: none; border-radius: 3px; max-height: 6px; min-height: 6px; }}
QProgressBar::chunk {{ background: {link}; border-radius: 3px; }}
QScrollArea {{ border: none; background: transparent; }}
QLabel#drop_hint {{
    background: {veil}; border: 2px dashed {link}; color: {ink}; font-size: {title}px; font-weight: 600;
}}
QSplitter::handle {{ background: {rule}; }}
QSplitter::handle:horizontal {{ width: 1px; }}
"""


def style_sheet(look: Look) -> str:
    """The style sheet of the whole application."""
    t = look.tokens
    px = look.text_px
    return _SHEET.format(
        paper=t.paper,
        card=t.card,
        side=t.side,
        ink=t.ink,
        muted=t.muted,
        rule=t.rule,
        selection=t.selection,
        link=t.link,
        caution=t.caution,
        problem=t.problem,
        # The border of a control that can be used needs 3:1 (WCAG 2.2, 1.4.11); a rule has less.
        edge=t.muted,
        hover=look.color("selection", 0.5).name(look.color("ink").NameFormat.HexArgb),
        title=round(1.6 * px),
        large=round(1.2 * px),
        s4=S4,
        s8=S8,
        s24=24,
        line=round(px),
        veil=look.color("card", 0.85).name(look.color("ink").NameFormat.HexArgb),
        # A picture in a style sheet keeps its colours: there is one for each theme.
        chevron=_drawn("chevron", look),
        check=_drawn("check", look),
        partly=_drawn("partly", look),
        empty=_drawn("empty", look),
        corner=CORNER,
        focus_edge=FOCUS_EDGE,
    )


def _drawn(name: str, look: Look) -> str:
    """Where the picture of a control lies in the colours of a look."""
    theme = "dark" if look.is_dark else "light"
    return (assets_folder() / "controls" / f"{name}-{theme}.svg").as_posix()
