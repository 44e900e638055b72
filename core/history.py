"""The history of a study as one frozen value: what was, what is, what was undone.

Rules: `apply`, `undo` and `redo` make a new history and change nothing; a redo after an undo gives back
exactly what was there, and so does an undo after an edit.
"""

from typing import Final

from attrs import evolve, field, frozen

from core.edits import Edit
from core.study import Study

#: how many steps can be undone; older ones are forgotten
LIMIT: Final = 1000


@frozen
class Step:
    """A study and the edit that led to it."""

    study: Study
    label: str
    merge_key: str | None = None


@frozen
class History:
    """Steps before now, the step that is shown, and steps that were undone (next to be redone first).

    ``merging`` says whether the next edit may merge with the present one. It is no part of the value and is
    not saved: after an undo, a redo, `sealed` or a restart the next edit is always a step of its own.
    """

    past: tuple[Step, ...]
    present: Step
    future: tuple[Step, ...] = ()
    merging: bool = field(default=False, eq=False, repr=False)

    @classmethod
    def start(cls, edit: Edit) -> "History":
        """A history that begins with this edit, which cannot be undone."""
        return cls((), Step(edit.study, edit.label, edit.merge_key))

    @property
    def study(self) -> Study:
        """The study as it is now."""
        return self.present.study

    @property
    def steps(self) -> tuple[Step, ...]:
        """All steps in order."""
        return (*self.past, self.present, *self.future)

    @property
    def undo_label(self) -> str | None:
        """What an undo would take back, or None if nothing can be undone."""
        return self.present.label if self.past else None

    @property
    def redo_label(self) -> str | None:
        """What a redo would do again, or None if nothing can be redone."""
        return self.future[0].label if self.future else None

    def apply(self, edit: Edit, limit: int = LIMIT) -> "History":
        """Take an edit in; what was undone before it can no longer be redone.

        Parameters
        ----------
        edit : Edit
            An edit that changes nothing gives the same history back.
        limit : int
            How many steps to keep for undoing.
        """
        if _is_same(edit.study, self.study):
            return self
        step = Step(edit.study, edit.label, edit.merge_key)
        goes_on = self.merging and edit.merge_key is not None and edit.merge_key == self.present.merge_key
        past = self.past if goes_on else (*self.past, self.present)
        return History(past[max(0, len(past) - limit) :], step, (), merging=True)

    def undo(self) -> "History":
        """The history one step back, or itself if there is none."""
        if not self.past:
            return self
        return History(self.past[:-1], self.past[-1], (self.present, *self.future))

    def redo(self) -> "History":
        """The history one step on, or itself if there is none."""
        if not self.future:
            return self
        return History((*self.past, self.present), self.future[0], self.future[1:])

    def sealed(self) -> "History":
        """The same history, whose next edit is a step of its own: a drag or a field is finished."""
        return evolve(self, merging=False)


def _is_same(a: Study, b: Study) -> bool:
    # A property that goes from True to 1.0 is a change, though Python calls the two equal.
    return a == b and repr(a.machines) == repr(b.machines)
