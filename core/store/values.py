"""Study values as JSON and back, led by the types that their fields declare.

Rules: every field is written out, also where it has its default, so that a default that changes later changes
no saved study. Reading is strict: a value of another type than declared, or a missing field with no default,
is damage; a field that nobody here knows was written by a newer version. A field that is missing takes its
default.
"""

import json
import math
from functools import cache
from types import NoneType, UnionType
from typing import Any, Literal, TypeVar, Union, get_args, get_origin, get_type_hints

from attrs import NOTHING, fields, has

from core.language import tr

Value = TypeVar("Value")


class Unreadable(ValueError):
    """A saved value is not what its type says: the file is damaged."""


class UnknownField(Unreadable):
    """A saved value has a field that this version does not know."""


def to_json(data: object) -> str:
    """JSON text of plain data: one text for one value, and only ASCII, so that any file name survives."""
    return json.dumps(data, separators=(",", ":"), allow_nan=False)


def from_json(text: str) -> Any:
    """Plain data of a JSON text.

    Raises
    ------
    Unreadable
        If it is no JSON.
    """
    try:
        return json.loads(text, parse_constant=_refuse_constant)
    except (TypeError, ValueError, RecursionError) as error:
        raise Unreadable(tr("no JSON: {error}", error=error)) from error


def encode(value: object, hint: Any) -> Any:
    """Plain data (dict, list, str, number, bool, None) of a value declared as `hint`.

    Raises
    ------
    TypeError, ValueError
        If the value is not of that type, or a number is not finite: a mistake in the program.
    """
    if has(hint) and isinstance(value, hint):
        return {name: encode(getattr(value, name), kind) for name, kind in _hints(hint).items()}
    origin = get_origin(hint)
    if origin is tuple and isinstance(value, tuple):
        return [encode(item, kind) for item, kind in zip(value, _item_hints(hint, len(value)), strict=True)]
    if origin in (Union, UnionType):
        return encode(value, _member(value, hint))
    if origin is Literal and value in get_args(hint):
        return value
    if hint is float and isinstance(value, int | float) and not isinstance(value, bool):
        if not math.isfinite(value):
            raise ValueError("a study holds finite numbers only")
        return float(value)
    if hint in (str, int, bool, NoneType) and type(value) is hint:
        return value
    raise TypeError(f"{value!r} is no {hint}")


def decode(data: Any, hint: type[Value]) -> Value:
    """The value declared as `hint` that `encode` made `data` of.

    Raises
    ------
    UnknownField
        If there is a field that `hint` does not have.
    Unreadable
        If `data` is anything else than `encode` makes.
    """
    try:
        value: Value = _decode(data, hint)
    except Unreadable:
        raise
    except (TypeError, ValueError, OverflowError, RecursionError) as error:
        raise Unreadable(str(error)) from error
    return value


def _decode(data: Any, hint: Any) -> Any:
    if has(hint):
        return _decode_fields(data, hint)
    origin = get_origin(hint)
    if origin is tuple and isinstance(data, list):
        return tuple(
            _decode(item, kind) for item, kind in zip(data, _item_hints(hint, len(data)), strict=True)
        )
    if origin in (Union, UnionType):
        return _decode(data, _member(data, hint))
    if origin is Literal and data in get_args(hint):
        return data
    if hint is float and type(data) in (int, float):
        return float(data)
    if hint in (str, int, bool, NoneType) and type(data) is hint:
        return data
    raise Unreadable(tr("{value} is no {kind}", value=repr(data), kind=hint))


def _decode_fields(data: Any, hint: Any) -> Any:
    if not isinstance(data, dict):
        raise Unreadable(tr("{value} is no {kind}", value=repr(data), kind=hint.__name__))
    hints = _hints(hint)
    unknown = data.keys() - hints.keys()
    if unknown:
        raise UnknownField(tr("{kind} has no {field}", kind=hint.__name__, field=min(unknown)))
    missing = _required(hint) - data.keys()
    if missing:
        raise Unreadable(tr("{kind} needs {field}", kind=hint.__name__, field=min(missing)))
    return hint(**{name: _decode(item, hints[name]) for name, item in data.items()})


@cache
def _hints(cls: type[Any]) -> dict[str, Any]:
    hints = get_type_hints(cls)
    return {attribute.name: hints[attribute.name] for attribute in fields(cls)}


@cache
def _required(cls: type[Any]) -> frozenset[str]:
    return frozenset(attribute.name for attribute in fields(cls) if attribute.default is NOTHING)


def _item_hints(hint: Any, count: int) -> list[Any]:
    kinds = get_args(hint)
    return [kinds[0]] * count if len(kinds) == 2 and kinds[1] is Ellipsis else list(kinds)


def _member(value: object, hint: Any) -> Any:
    """The member of a union that a value, or its plain data, belongs to."""
    for kind in get_args(hint):
        origin = get_origin(kind)
        if origin is Literal:
            if value in get_args(kind):
                return kind
        elif origin is tuple:
            if isinstance(value, tuple | list):
                return kind
        elif has(kind):
            if isinstance(value, dict | kind):
                return kind
        elif type(value) is kind or (kind is float and (type(value) is int or isinstance(value, float))):
            return kind
    raise Unreadable(tr("{value} is no {kind}", value=repr(value), kind=hint))


def _refuse_constant(name: str) -> float:
    raise ValueError(tr("{name} is no number", name=name))
