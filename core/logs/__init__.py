"""Meter logs: bytes in, readings out.

The way of a row: `containers` unpacks, `text` decodes, `sniff` finds delimiter and headings, `roles` decides what
columns hold, `body` reads them, `clock` tells the time, `machines` sorts out whose they are, and `series` makes the
trace; `join` puts files of one machine together.
"""
