"""Progress as a plain callable, so that core can report and be cancelled without knowing who watches."""

from collections.abc import Callable

#: called with the fraction done (0 to 1) and what is being done; may raise `Cancelled`
Progress = Callable[[float, str], None]


class Cancelled(Exception):
    """Raised by a progress callable when the user has cancelled; nothing has been changed."""


def silent(fraction: float, text: str) -> None:
    """Report to nobody."""


def part(progress: Progress, start: float, stop: float) -> Progress:
    """A progress callable whose 0 to 1 covers only `start` to `stop` of `progress`."""

    def nested(fraction: float, text: str) -> None:
        progress(start + (stop - start) * fraction, text)

    return nested
