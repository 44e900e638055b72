"""Values to JSON and back: exact types, nothing guessed."""

import json
from typing import Any, Literal

import pytest
from attrs import frozen

from core.store.values import UnknownField, Unreadable, decode, encode, from_json, to_json
from core.study import Choices, Log, Machine, Meter, Run, Source


@frozen
class _Sample:
    number: float
    count: int
    words: tuple[str, ...] = ()
    pair: tuple[int, str] | None = None
    mode: Literal["a", "b"] | None = None
    free: str | float | bool = ""


@pytest.mark.parametrize(
    "value",
    [
        _Sample(1.5, 2),
        _Sample(0.1 + 0.2, -3, ("x", ""), (1, "y"), "b", True),
        _Sample(1e308, 0, free=1.0),
        _Sample(5e-324, 0, free=False),
        Machine("a1", "Ä\u2028\udce4", 3, (("bed", 5.5), ("box", True), ("supply", "mains"))),
        Meter("m1", "Meter"),
        Log(
            "g1",
            "a1",
            "m1",
            (Source("0" * 64, "a.csv", "plug", Choices(header_row=0, columns=((0, "time", "s"),))),),
        ),
        Run("r1", "g1", 0.0, 10.5, set_kind="hold test", set_included=False),
    ],
)
def test_value_comes_back_the_same_to_the_last_bit(value: Any):
    text = to_json(encode(value, type(value)))
    again = decode(from_json(text), type(value))
    assert again == value
    assert repr(again) == repr(value)
    assert to_json(encode(again, type(value))) == text
    assert text.isascii()


def test_whole_number_in_a_field_for_floats_is_kept_as_a_float():
    assert to_json(encode(_Sample(1, 2), _Sample)).startswith('{"number":1.0,"count":2,')


@pytest.mark.parametrize("bad", [float("nan"), float("inf"), "1", True, None])
def test_wrong_value_is_a_mistake(bad: Any):
    with pytest.raises((TypeError, ValueError)):
        encode(_Sample(bad, 2), _Sample)


def _data(**changes: Any) -> dict[str, Any]:
    data: dict[str, Any] = json.loads(to_json(encode(_Sample(1.5, 2), _Sample)))
    return data | changes


@pytest.mark.parametrize(
    "changes",
    [
        {"number": "1"},
        {"number": True},
        {"number": None},
        {"count": 1.0},
        {"count": True},
        {"words": "x"},
        {"words": [1]},
        {"pair": [1]},
        {"pair": [1, "a", 2]},
        {"mode": "c"},
        {"mode": ["a"]},
        {"free": None},
        {"free": {}},
    ],
)
def test_data_of_another_type_is_damage(changes: dict[str, Any]):
    with pytest.raises(Unreadable):
        decode(_data(**changes), _Sample)


@pytest.mark.parametrize("data", [None, [], "text", 1, {}, {"number": 1.0}])
def test_data_that_is_no_such_value_is_damage(data: Any):
    with pytest.raises(Unreadable):
        decode(data, _Sample)


def test_missing_field_takes_its_default():
    assert decode({"number": 1.0, "count": 2}, _Sample) == _Sample(1.0, 2)


def test_unknown_field_is_from_a_newer_version():
    with pytest.raises(UnknownField, match="colour"):
        decode(_data(colour="red"), _Sample)


@pytest.mark.parametrize("text", ["", "{", "NaN", "Infinity", '{"a":-Infinity}', "[" * 100_000, "1 2"])
def test_text_that_is_no_json_is_damage(text: str):
    with pytest.raises(Unreadable):
        from_json(text)
