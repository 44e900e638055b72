"""How each number was found: method in words, arithmetic, sources, budget, sensitivity, what would help."""

from core.found.asking import explain
from core.found.markdown import as_markdown
from core.found.values import RATIO, BudgetLine, Explanation, SourceLine

__all__ = ["RATIO", "BudgetLine", "Explanation", "SourceLine", "as_markdown", "explain"]
