"""How a number was found, as a frozen value: what the panel and the report show. No computing here."""

from attrs import frozen

from core.language import tr

#: key of the ratio of two machines, beside the keys of `core.quantities`
RATIO = "ratio"


@frozen
class BudgetLine:
    """One line of an uncertainty budget.

    Parameters
    ----------
    name : str
        Such as ``"meter gain"``.
    u : float
        Standard uncertainty it gives the number, in the unit of `u_text`.
    u_text : str
        The same as people read it, with its unit.
    share_of_variance : float
        From 0 to 1; all lines of a budget make 1.
    shared_with : str
        What errs together with it, such as ``"all runs measured with Meter 1"``; empty for nothing.
    why : str
        What it is, in plain words.
    """

    name: str
    u: float
    u_text: str
    share_of_variance: float
    shared_with: str = ""
    why: str = ""

    @property
    def title(self) -> str:
        """Its name as people read it."""
        return tr(self.name)


@frozen
class SourceLine:
    """One run or log behind the number; ``run_id`` is empty for a log, `counts` tells whether it counts."""

    text: str
    run_id: str = ""
    counts: bool = True


@frozen
class Explanation:
    """What stands behind one number.

    Parameters
    ----------
    title : str
        Which number: machine, run, quantity.
    value_text : str
        The number with its interval and unit, or why there is none in a few words.
    method : tuple of str
        How it was found, in words; one sentence or two each.
    formula : tuple of str
        Lines of arithmetic with the values in them.
    sources : tuple of SourceLine
        Runs and logs it was made of, and those of the same part that were left out.
    budget : tuple of BudgetLine
        Largest first; empty where there is none.
    sensitivity : tuple of str
        What would come out if something had been otherwise, or why nothing moves the number by a little.
    surer : tuple of str
        What would make it surer, the most effective first.
    cautions : tuple of str
        What to know before relying on it.
    topic : str
        Name of the page of ``assets/explain`` that tells more.
    without_budget : str
        Why the number has no budget, in one sentence; empty where it has one.
    """

    title: str
    value_text: str
    topic: str
    method: tuple[str, ...] = ()
    formula: tuple[str, ...] = ()
    sources: tuple[SourceLine, ...] = ()
    budget: tuple[BudgetLine, ...] = ()
    sensitivity: tuple[str, ...] = ()
    surer: tuple[str, ...] = ()
    cautions: tuple[str, ...] = ()
    without_budget: str = ""

    @property
    def is_known(self) -> bool:
        """Whether there is a number to explain: its value in words holds a figure."""
        return any(sign.isdigit() for sign in self.value_text)

    @property
    def lacks(self) -> tuple[str, ...]:
        """The parts that a known number should have and this one has not, by their names in this class.

        What has no budget says why in `without_budget`, and what nothing moves says so in `sensitivity`.
        """
        told = {
            "method": self.method,
            "formula": self.formula,
            "sources": self.sources,
            "budget": self.budget or self.without_budget,
            "sensitivity": self.sensitivity,
        }
        return tuple(name for name, lines in told.items() if not lines) if self.is_known else ()
