"""What a single cell looks like: a number, a time, nothing, or words.

Rules: only the form is looked at, so that a day that does not exist is still a time, and refused as one.
"""

import re
from functools import lru_cache

from core.logs.numbers import MISSING, SPACES
from core.logs.spans_of_time import END
from core.logs.stamps import HALF_OF_DAY

_GROUP = rf"[.,{SPACES}]"
_NUMBER = re.compile(
    rf"^[+\-−]?(?:\d+(?:[.,]\d*)?|\d{{1,3}}(?:{_GROUP}\d{{3}})+(?:[.,]\d+)?|\d{{1,2}}(?:,\d\d)+,\d{{3}}|[.,]\d+)(?:[eE][+\-]?\d+)?"
    r"(?:\s*(?:°?[A-Za-zµ·%]{1,5}|[кКвВт]{2,3}(?:[·*]?ч)?|℃))?$"
)
_MONTH = r"[^\W\d_]{3,12}\.?"
#: of a stamp without a year, which must not be taken for any word, a number and a clock time
_MONTH_WORD = r"(?:Jan|Feb|M[aä]r|Mrz|Apr|Ma[iy]|Jun|Jul|Aug|Sep|O[ck]t|Nov|De[cz])[a-zä]{0,6}\.?"
#: a weekday in brackets right behind a date, as Japanese clocks write it
WEEKDAY = r"(?:\s?[(（][^\W\d_]{1,4}\.?[)）])?"
#: words between day, month and year, and behind the year
_OF, _YEAR_WORD = r"(?:(?:de|del|d|of)[\s'’])?", r"(?:\s?(?:г|р|год[ау]?|roku)\.?)?"
_NTH = r"(?:st|nd|rd|th|er|[.ºª°])?"
_DATE = (
    rf"(?:(?:令和|平成|昭和|民[國国])?\d{{1,4}}[-/.年]\s?(?:\d{{1,2}}|{_MONTH})[-/.月]\s?\d{{1,4}}\.?日?|\d{{8}}"
    rf"|\d{{1,2}}{_NTH}\s{_OF}{_MONTH},?\s{_OF}\d{{2,4}}{_YEAR_WORD}|{_MONTH}\s\d{{1,2}}{_NTH},?\s\d{{4}}"
    rf"|\d{{4}}\.?\s{_MONTH}\s\d{{1,2}}\.?|[RHS]\d{{1,2}}(?:/\d{{1,2}}/\d{{1,2}}|\.\d\d\.\d\d)){WEEKDAY}"
)
_HALF = rf"(?:\s?{HALF_OF_DAY})?"
_CLOCK = rf"\d{{1,6}}[:.h時]\s?\d\d(?:[:.m分]\s?\d\d(?:[.,]\d{{1,9}}|:\d{{3}})?[秒s]?|分)?{_HALF}"
#: a zone's name behind its offset
_NAMED = r"(?:\[[A-Za-z/_+\-]{2,40}\]?|\s\([^()\d]{2,40}\)|\s[A-Z]{2,5})?"
_ZONE = rf"(?:\s?(?:[Zz]|Uhr|[A-Z]{{2,5}}|(?:UTC|GMT)?[+\-−]\d\d?(?::?\d\d)?){_NAMED})?"
#: a weekday in brackets, or "at" in some language, between date and clock time
_BETWEEN = r"(?:,?\s(?:a las?|\(?[^\W\d_]{1,10}\.?\)?),?(?=\s))?"
_STAMP = re.compile(
    rf"^(?:(?:[^\W\d_]{{2,12}}(?:-feira)?|[月火水木金土日])\.?,?\s+)?{_DATE}"
    rf"(?:{_BETWEEN}(?:[Tt]|\s|_|-|:|,\s?)+{_CLOCK}{_ZONE}(?:{END})?)?$|^{_CLOCK}{_ZONE}(?:{END}|,?\s{_DATE})?$"
    r"|^\d{8}T\d{4,6}(?:[.,]\d+)?(?:Z|[+-]\d{2}:?\d{2})?$|^P(?=\d|T\d)(?:\d+D)?(?:T[\dHMS.,]+)?$"
    rf"|^(?:[^\W\d_]{{2,12}}\.?,?\s+)?{_MONTH}\s+\d{{1,2}}\s{_CLOCK}{_ZONE}\s\d{{4}}$"
    rf"|^(?:[^\W\d_]{{2,4}}\.?,?\s+)?{_MONTH_WORD}\s+\d{{1,2}},?\s+{_CLOCK}$"
    rf"|^\d{{4}}-?(?:W\d\d-?\d|\d{{3}})(?:[Tt]|\s){_CLOCK}{_ZONE}$"
    r"|^\d{4}([-./:_])\d\d\1\d\d[-./:_T ]\d\d([-./:_])\d\d(?:\2\d\d)?$|^\d{2,3}:\d\d[.,]\d{1,3}$"
    r"|^(?=.*[dhm]\s?\d)(?:\d+\s?d\s?)?(?:\d+\s?h\s?)?(?:\d+\s?m(?:in)?\s?)?(?:\d+(?:\.\d+)?\s?s)?$"
    r"|^\d+(?: days?,?\s|d,?\s|[.:]\s?)\d{1,2}:\d\d:\d\d$"
    r"|^/Date\(\d{11,14}(?:[+\-]\d{4})?\)/$"
)
#: a date alone, and a clock time alone
DATED, CLOCKED = re.compile(rf"^{_DATE}$"), re.compile(rf"^{_CLOCK}$")


@lru_cache(maxsize=1 << 13)
def cell_kind(cell: str) -> str:
    """``"number"``, ``"stamp"``, ``"empty"`` or ``"text"``; remembered, as every step asks it again."""
    text = cell.strip().strip("\"'[]").strip()
    if text.casefold() in MISSING:
        return "empty"
    if _NUMBER.match(text):
        return "number"
    return "stamp" if _STAMP.match(text) else "text"
