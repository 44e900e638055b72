"""The one gate through which text for people passes, so that a window can show it in another language.

Rules: a text is written in English where it is used, whole sentences with named facts in braces, never sewn
together from pieces; ``tr`` puts it into the language of the window, and ``mark`` only notes a constant that
``tr`` will be given later. Without a window everything is English. What another program or a later version
reads (keys, codes, answers in JSON) never passes here.
"""

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from typing import Final, TypeVar

#: a text in English, with its braces, into the text of another language, or into itself
Lookup = Callable[[str], str]


def _itself(text: str) -> str:
    return text


_Text = TypeVar("_Text", bound=str)
#: the language in which the texts are written
WRITTEN_IN: Final = "en"

_lookup: Lookup = _itself
_code: str = WRITTEN_IN
_english: ContextVar[bool] = ContextVar("in English", default=False)


def speak(lookup: Lookup | None, code: str = WRITTEN_IN) -> None:
    """Show texts as `lookup` gives them from now on; None goes back to English.

    What was put into words before stays as it was, so a program calls this once, at its start.

    Parameters
    ----------
    lookup : Lookup or None
        Gives a text of the language for an English one, or the English one itself.
    code : str
        ISO 639-1 code of the language, for whole pages that are kept in a folder of that name.
    """
    global _lookup, _code
    _lookup, _code = lookup or _itself, code if lookup else WRITTEN_IN


def spoken() -> str:
    """ISO 639-1 code of the language in which texts are shown now."""
    return WRITTEN_IN if _english.get() else _code


@contextmanager
def in_english() -> Iterator[None]:
    """Write in English for a while, whatever the window speaks.

    For what others must be able to check to the byte, wherever they open it. Other threads go on in the
    language of the window meanwhile.
    """
    token = _english.set(True)
    try:
        yield
    finally:
        _english.reset(token)


def mark(text: _Text) -> _Text:
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
    if isinstance(text, Later):
        return tr(text.template, **text.facts)
    found = text if _english.get() else _lookup(text)
    if not facts:
        return found
    values = {name: _fact(value) for name, value in facts.items()}
    if found != text:
        try:
            return found.format(**values)
        except (KeyError, ValueError, IndexError):
            pass
    return text.format(**values)


class Later(str):
    """A text in English that knows how it was made, so that `tr` can still say it in another language.

    For what is found where nobody looks on, perhaps in another process, and shown later: compared, kept and
    answered it is the English text; given to `tr`, or a fact of another text, it is in the language of the
    window.
    """

    template: str
    facts: dict[str, object]


def later(text: str, /, **facts: object) -> Later:
    """A text that will be given to `tr` where it is shown, with the facts that are known only now.

    Parameters
    ----------
    text : str
        As `tr` takes it; as a constant it is written ``later(mark("..."))``.
    **facts
        As `tr` takes them; a fact may be such a text itself.

    Examples
    --------
    >>> later("{count:run|runs}: {why}", count=2, why=later("chosen by hand"))
    '2 runs: chosen by hand'
    """
    with in_english():
        said = Later(tr(text, **facts))
    said.template, said.facts = text, facts
    return said


class _Count(int):
    """A number that a text may follow with the word for one or for many."""

    def __format__(self, spec: str) -> str:
        if "|" not in spec:
            return format(int(self), spec)
        one, many = spec.removeprefix("~").split("|")
        word = one if self == 1 else many
        return word if spec.startswith("~") else f"{int(self)} {word}"


def _fact(fact: object) -> object:
    if isinstance(fact, Later):
        return tr(fact)
    return _Count(fact) if isinstance(fact, int) and not isinstance(fact, bool) else fact
