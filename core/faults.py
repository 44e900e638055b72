"""A fault of the program itself, told in one line that can be reported."""

from pathlib import Path


def facts_of(error: BaseException) -> dict[str, object]:
    """What happened and where in the code, without the path of anybody's computer.

    Examples
    --------
    >>> facts_of(ValueError("no"))
    {'what': 'ValueError: no', 'where': '?'}
    """
    place = error.__traceback__
    while place is not None and place.tb_next is not None:
        place = place.tb_next
    where = f"{Path(place.tb_frame.f_code.co_filename).name}:{place.tb_lineno}" if place is not None else "?"
    return {"what": " ".join(f"{type(error).__name__}: {error}".split()), "where": where}
