"""Samepart's core: from meter logs to a comparison, with no window and no clock of its own.

Rules of this package: it imports no Qt and nothing of ``gui``; times are seconds, power watts, energy
watt hours, temperatures degrees Celsius; a value never changes after it is made; bad data from outside
becomes a `core.problems.Problem`, a programmer's mistake raises.
"""

__version__ = "0.1.0"
