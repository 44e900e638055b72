"""The one gate through which text for people passes, so that a window can show it in another language.

Rules: a text is written in English where it is used, whole sentences with named facts in braces, never sewn
together from pieces; ``tr`` puts it into the language of the window, and ``mark`` only notes a constant that
``tr`` will be given later. Without a window everything is English. What another program or a later version
reads (keys, codes, answers in JSON) never passes here.
"""

from collections.abc import Callable

#: a text in English, with its braces, into the text of another language, or into itself
Lookup = Callable[[str], str]


def _itself(text: str) -> str:
    return text


_lookup: Lookup = _itself


def speak(lookup: Lookup | None) -> None:
    """Show texts as `lookup` gives them from now on; None goes back to English.

    What was put into words before stays as it was, so a program calls this once, at its start.
    """
    global _lookup
    _lookup = lookup or _itself


def mark(text: str) -> str:
    """A constant that will be given to `tr` where it is shown, so that translators find it."""
    return text


def tr(text: str, /, **facts: object) -> str:
    """A text in the language of the window, with facts in it.

    Parameters
    ----------
    text : str
        In English. With facts it is a format string: ``{name}``, and ``{count:row|rows}`` for a whole number
        with the word for one or for many, ``{count:~was|were}`` for the word alone.
    **facts
        Values of the names in braces. Numbers that need rounding come as text.

    Returns
    -------
    str
        The text; in English if the translation cannot take the facts, because showing a text must never fail.

    Raises
    ------
    KeyError, ValueError, IndexError
        If the English text itself cannot take the facts.

    Examples
    --------
    >>> tr("{count:run|runs} of {machine}", count=2, machine="Alder")
    '2 runs of Alder'
    """
    found = _lookup(text)
    if not facts:
        return found
    values = {name: _counted(value) for name, value in facts.items()}
    if found != text:
        try:
            return found.format(**values)
        except (KeyError, ValueError, IndexError):
            pass
    return text.format(**values)


class _Count(int):
    """A number that a text may follow with the word for one or for many."""

    def __format__(self, spec: str) -> str:
        if "|" not in spec:
            return format(int(self), spec)
        one, many = spec.removeprefix("~").split("|")
        word = one if self == 1 else many
        return word if spec.startswith("~") else f"{int(self)} {word}"


def _counted(fact: object) -> object:
    return _Count(fact) if isinstance(fact, int) and not isinstance(fact, bool) else fact
