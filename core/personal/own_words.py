"""The words of a person in a study, read and changed; kinds, codes, digests and identifiers are none."""

from collections.abc import Callable, Iterator
from functools import cache
from typing import Any, Literal, TypeVar, get_args, get_origin, get_type_hints

from attrs import evolve, fields, has

from core.study import Log, Study

Value = TypeVar("Value")
#: texts that the program itself makes and looks up
_ITS_OWN = (
    "id",
    "digest",
    "key",
    "found_why",
    "found_part",
    "load",
    "zone",
    "encoding",
    "delimiter",
    "decimal",
)


def words_of(study: Study) -> Iterator[str]:
    """Every text in a study that a person may have written."""
    met: list[str] = []

    def look(text: str) -> str:
        met.append(text)
        return text

    in_words(study, look)
    yield from met


def in_words(study: Study, change: Callable[[str], str]) -> Study:
    """The study with a person's words changed; its logs stay, whose names belong to their bytes."""
    changed = _changed(evolve(study, logs=()), change)
    return evolve(changed, logs=study.logs)


def _changed(value: Value, change: Callable[[str], str]) -> Value:
    if has(type(value)) and not isinstance(value, Log):
        new = {}
        hints: dict[str, Any] = _hints(type(value))  # type: ignore[arg-type]  # classes can be hashed
        for name, hint in hints.items():
            if not _is_its_own(name) and not _is_choice(hint):
                old = getattr(value, name)
                other = _changed(old, change)
                if other is not old and other != old:
                    new[name] = other
        return evolve(value, **new) if new else value  # type: ignore[misc]  # attrs values only
    if isinstance(value, tuple):
        return type(value)(_changed(item, change) for item in value)
    if isinstance(value, str):
        return change(value)  # type: ignore[return-value]  # a text for a text
    return value


def _is_its_own(name: str) -> bool:
    return name in _ITS_OWN or name.endswith(("_id", "_ids"))


def _is_choice(hint: Any) -> bool:
    """Whether a field holds one of a few words of the program."""
    return get_origin(hint) is Literal or any(_is_choice(inner) for inner in get_args(hint))


@cache
def _hints(cls: type[Any]) -> dict[str, Any]:
    hints = get_type_hints(cls)
    return {attribute.name: hints[attribute.name] for attribute in fields(cls)}
