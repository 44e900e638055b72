"""Hypothesis strategies for studies and histories, for the laws of the history and of the file."""

from random import Random

from hypothesis import strategies as st

from core.history import History
from core.study import Study
from tests.random_edits import random_history


def randoms() -> st.SearchStrategy[Random]:
    """Seeded sources of chance: a choice a draw would be far too slow for whole histories."""
    return st.integers(0, 2**32).map(Random)


@st.composite
def histories(draw: st.DrawFn, max_edits: int = 12) -> History:
    """Histories of a few edits, with some undone."""
    history = random_history(draw(randoms()), draw(st.integers(0, max_edits)))
    for _ in range(draw(st.integers(0, 4))):
        history = history.undo()
    return history


def studies(max_edits: int = 12) -> st.SearchStrategy[Study]:
    """Studies as a user could have made them."""
    return histories(max_edits).map(lambda history: history.study)
