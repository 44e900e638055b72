"""Letters of time zones behind a clock time, as an offset from UTC each.

Rules: letters that several countries use for different offsets have the one most loggers mean, and are told;
letters that are not known shift nothing, and are told too. Offsets as in the tz database, from memory.
"""

from collections.abc import Iterable

from core.problems import Problem, Severity

_HOURS = {
    "UTC": 0, "GMT": 0, "Z": 0, "WET": 0, "WEST": 1, "BST": 1, "CET": 1, "MEZ": 1, "CEST": 2, "MESZ": 2,
    "EET": 2, "EEST": 3, "MSK": 3, "TRT": 3, "SAST": 2, "EAT": 3, "IST": 5.5, "PKT": 5, "WIB": 7, "HKT":
    8, "SGT": 8, "AWST": 8, "JST": 9, "KST": 9, "ACST": 9.5, "ACDT": 10.5, "AEST": 10, "AEDT": 11,
    "NZST": 12, "NZDT": 13, "NST": -3.5, "NDT": -2.5, "AST": -4, "ADT": -3, "EST": -5, "EDT": -4, "CST":
    -6, "CDT": -5, "MST": -7, "MDT": -6, "PST": -8, "PDT": -7, "AKST": -9, "AKDT": -8, "HST": -10,
    "BRT": -3, "ART": -3, "CLT": -4,
}  # fmt: skip
#: letters in lower case, as offsets from UTC [s]
OFFSETS_S = {letters.casefold(): int(hours * 3600) for letters, hours in _HOURS.items()}
#: letters that mean another offset elsewhere: China, Israel and Ireland, Arabia, Bangladesh
_SEVERAL = frozenset({"CST", "IST", "AST", "BST"})
#: letters of two kinds of time at once, which the season would have to tell
_SEASONAL = frozenset({"ET", "CT", "MT", "PT"})
#: words in capitals behind a clock time that are no zone
_NO_ZONES = frozenset({"AM", "PM", "UHR"})


def is_unknown(word: str) -> bool:
    """Whether a word behind a clock time is written as a zone and none that is known."""
    if not (word.isascii() and word.isupper()) or word in _NO_ZONES or word in _HOURS:
        return False
    return word in _SEASONAL or 3 <= len(word) <= 5


def doubts(written: Iterable[str], file: str) -> tuple[Problem, ...]:
    """What has to be said of the letters that stand in a log."""
    out = []
    for letters in sorted(set(written)):
        if letters in _SEVERAL:
            at = OFFSETS_S[letters.casefold()]
            taken = f"UTC{'-' if at < 0 else '+'}{abs(at) // 3600:02d}:{abs(at) % 3600 // 60:02d}"
            facts: dict[str, object] = {"letters": letters, "taken": taken}
            out.append(Problem("log.zone_letters_doubtful", Severity.CAUTION, file, facts=facts))
        elif is_unknown(letters):
            unknown: dict[str, object] = {"letters": letters}
            out.append(Problem("log.zone_letters_unknown", Severity.CAUTION, file, facts=unknown))
    return tuple(out)
