"""Markdown with air between its paragraphs and headings of the window's own sizes."""

from PySide6.QtGui import QTextCharFormat, QTextCursor, QTextFormat
from PySide6.QtWidgets import QTextBrowser

from gui.look import S4, S8

#: size of headings, in Qt's steps above the text: 1 is about 1.2 times
_HEADING_STEP = 1


def show_markdown(browser: QTextBrowser, text: str) -> None:
    """Show a text from its beginning."""
    browser.setMarkdown(text)
    document = browser.document()
    document.setDocumentMargin(S4)
    cursor = QTextCursor(document)
    block = document.begin()
    while block.isValid():
        cursor.setPosition(block.position())
        shape = block.blockFormat()
        shape.setBottomMargin(S4 if block.textList() is not None else S8)
        cursor.setBlockFormat(shape)
        if shape.headingLevel():
            size = QTextCharFormat()
            size.setProperty(QTextFormat.Property.FontSizeAdjustment, _HEADING_STEP)
            cursor.movePosition(QTextCursor.MoveOperation.EndOfBlock, QTextCursor.MoveMode.KeepAnchor)
            cursor.mergeCharFormat(size)
        block = block.next()
    cursor.setPosition(0)
    browser.setTextCursor(cursor)
