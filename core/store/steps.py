"""The history in the tables: writing what two histories differ in, reading all of it back."""

import hashlib
import sqlite3
from collections.abc import Iterable
from typing import Any

from attrs import evolve, frozen

from core.costs.rates import PriceList
from core.history import History, Step
from core.language import tr
from core.store.values import Unreadable, decode, encode, from_json, to_json
from core.study import Log, Machine, Meter, Run, Study, TypedReading

#: collections of a study, each kept as a list of pieces
_COLLECTIONS: dict[str, type[Any]] = {
    "machines": Machine,
    "meters": Meter,
    "logs": Log,
    "runs": Run,
    "typed": TypedReading,
    "price_lists": PriceList,
}


@frozen
class _Said:
    """What a step says about its edit."""

    label: str
    merge_key: str | None


class Steps:
    """The steps of one open file.

    Not thread-safe: it belongs to its connection. All methods that write expect a transaction to be open, and
    after a rollback the object is to be thrown away or `forget` called.

    Attributes
    ----------
    used : set of int
        Pieces that a step refers to, as `read` found them.
    """

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection
        self._first = 1
        # By identity, because equal values may differ (1 and True); the object is kept so that its id stays
        # its own.
        self._known: dict[int, tuple[object, int]] = {}
        self.used: set[int] = set()

    def forget(self) -> None:
        """Forget which values are in the file: what was written last has been rolled back."""
        self._known = {}

    def write(self, old: History | None, new: History) -> int:
        """Bring the tables from `old` to `new`, touching only what differs.

        Parameters
        ----------
        old : History or None
            What the tables hold; None for new tables.
        new : History

        Returns
        -------
        int
            Position of the first step, to hand to `settle` once the transaction is committed.
        """
        steps, had = new.steps, () if old is None else old.steps
        dropped = next((i for i, step in enumerate(had) if step is steps[0]), len(had))
        shared = 0
        for mine, theirs in zip(had[dropped:], steps, strict=False):
            if mine is not theirs:
                break
            shared += 1
        first = self._first + dropped
        self._connection.execute(
            "DELETE FROM steps WHERE position < ? OR position >= ?", (first, first + shared)
        )
        for i, step in enumerate(steps[shared:], first + shared):
            said = to_json(encode(_Said(step.label, step.merge_key), _Said))
            self._connection.execute(
                "INSERT INTO steps (position, edit, study) VALUES (?, ?, ?)",
                (i, said, self._study(step.study)),
            )
        self._connection.execute(
            "INSERT OR REPLACE INTO present (only, position) VALUES (1, ?)", (first + len(new.past),)
        )
        return first

    def settle(self, first: int, history: History) -> None:
        """Take note that what was written has been committed."""
        self._first = first
        study = history.study
        kept = [self._known.get(id(item)) for item in _parts(study)]
        self._known = {id(entry[0]): entry for entry in kept if entry is not None}

    def read(self) -> History:
        """The history that the tables hold.

        Raises
        ------
        Unreadable
            If it does not hold together.
        sqlite3.DatabaseError
            If the file is damaged.
        """
        texts = dict(self._connection.execute("SELECT id, json FROM pieces"))
        reader = _Reader(texts)
        steps: list[Step] = []
        positions: list[int] = []
        for position, edit, study in self._connection.execute(
            "SELECT position, edit, study FROM steps ORDER BY position"
        ):
            said = decode(from_json(edit), _Said)
            steps.append(Step(reader.study(study), said.label, said.merge_key))
            positions.append(position)
        present = self._connection.execute("SELECT position FROM present").fetchone()
        if present is None or present[0] not in positions:
            raise Unreadable(tr("no step is the present one"))
        if positions != list(range(positions[0], positions[0] + len(positions))):
            raise Unreadable(tr("steps are missing"))
        at = present[0] - positions[0]
        self._first = positions[0]
        self.used = reader.used
        return History(tuple(steps[:at]), steps[at], tuple(steps[at + 1 :]))

    def _study(self, study: Study) -> int:
        bare = evolve(study, machines=(), meters=(), logs=(), runs=(), typed=(), price_lists=())
        data: dict[str, Any] = encode(bare, Study)
        for name, kind in _COLLECTIONS.items():
            data[name] = self._list(getattr(study, name), kind)
        return self._piece(to_json(data))

    def _list(self, items: tuple[object, ...], kind: type[Any]) -> int:
        known = self._known.get(id(items))
        if known is None:
            known = (items, self._piece(to_json([self._item(item, kind) for item in items])))
            self._known[id(items)] = known
        return known[1]

    def _item(self, item: object, kind: type[Any]) -> int:
        known = self._known.get(id(item))
        if known is None:
            known = (item, self._piece(to_json(encode(item, kind))))
            self._known[id(item)] = known
        return known[1]

    def _piece(self, text: str) -> int:
        digest = hashlib.sha256(text.encode()).digest()
        row = self._connection.execute("SELECT id FROM pieces WHERE digest = ?", (digest,)).fetchone()
        if row is None:
            row = self._connection.execute(
                "INSERT INTO pieces (digest, json) VALUES (?, ?) RETURNING id", (digest, text)
            ).fetchone()
        return int(row[0])


class _Reader:
    """Builds studies from pieces, each piece once, so that steps share values as they did before."""

    def __init__(self, texts: dict[int, str]) -> None:
        self._texts = texts
        self._items: dict[tuple[int, type[Any]], Any] = {}
        self._lists: dict[tuple[int, type[Any]], tuple[Any, ...]] = {}
        self._studies: dict[int, Study] = {}
        self.used: set[int] = set()

    def study(self, piece: int) -> Study:
        if piece not in self._studies:
            data = self._data(piece)
            if not isinstance(data, dict):
                raise Unreadable(tr("piece {piece} is no study", piece=piece))
            lists: dict[str, Any] = {
                name: self._list(data.pop(name), kind) for name, kind in _COLLECTIONS.items() if name in data
            }
            self._studies[piece] = evolve(decode(data, Study), **lists)
        return self._studies[piece]

    def _list(self, piece: Any, kind: type[Any]) -> tuple[Any, ...]:
        if (piece, kind) not in self._lists:
            numbers = self._data(piece)
            if not isinstance(numbers, list):
                raise Unreadable(tr("piece {piece} is no list", piece=piece))
            self._lists[piece, kind] = tuple(self._item(number, kind) for number in numbers)
        return self._lists[piece, kind]

    def _item(self, piece: Any, kind: type[Any]) -> Any:
        if (piece, kind) not in self._items:
            self._items[piece, kind] = decode(self._data(piece), kind)
        return self._items[piece, kind]

    def _data(self, piece: Any) -> Any:
        if type(piece) is not int or piece not in self._texts:
            raise Unreadable(tr("piece {piece} is missing", piece=repr(piece)))
        self.used.add(piece)
        return from_json(self._texts[piece])


def _parts(study: Study) -> Iterable[object]:
    for name in _COLLECTIONS:
        items = getattr(study, name)
        yield items
        yield from items
