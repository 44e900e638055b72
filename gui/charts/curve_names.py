"""Names of curves, where they end or beside the plot, and of runs where they leave their machine's band."""

from collections.abc import Sequence

import numpy as np
from attrs import evolve, frozen

from core.figures.line_up_values import Curve, Panel
from core.figures.placing import Anchor, Box, place
from core.traces import F64
from gui.charts.margin_names import NEAR_BORDER, CurveEnd, cut_names, lines_beside, margin_width, names_beside
from gui.charts.scene import Item, Line, Marker, Ruler, Text
from gui.look import Look

#: with more runs than this of machines without a median one name stands for each machine
_EACH_RUN_NAMED = 6
#: of so many points of a curve labels keep away
_KEPT_CLEAR = 40
#: and a name within a plot no more than this part of its width
_WIDEST_NAME = 0.55
#: height of a plot for each remark about a run [text heights]
_ROOM_FOR_REMARK = 3.0

Spot = tuple[float, float]


@frozen
class PanelPlace:
    """Where a panel's plot lies, with its scales; `left` is where the texts of its axis begin. [px]"""

    panel: Panel
    box: Box
    left: float
    low: float
    high: float

    def at(self, x: float, y: float) -> Spot:
        """Where a point of the plot lies."""
        box, scale = self.box, self.panel.y
        across = (x - self.low) / (self.high - self.low)
        up = (y - scale.low) / (scale.high - scale.low)
        return box.x + box.width * across, box.bottom - box.height * up

    def x(self, values: F64) -> F64:
        """Where values of the horizontal axis lie."""
        return np.asarray(self.box.x + self.box.width * (values - self.low) / (self.high - self.low))

    def y(self, values: F64) -> F64:
        """Where values of the vertical axis lie."""
        scale = self.panel.y
        return np.asarray(self.box.bottom - self.box.height * (values - scale.low) / (scale.high - scale.low))


@frozen
class _Wanted:
    """A name at a point; `slot` is that of a machine's mark, None for a remark about a run of `owner`."""

    spot: Spot
    name: str
    slot: int | None = None
    owner: int | None = None


def margin_for(panels: Sequence[Panel], low: float, high: float, width: float, look: Look) -> float:
    """Width of a margin for names, where most curves end at the right border; else 0. [px]"""
    names: list[str] = []
    for panel in panels:
        named = [] if panel.title else _to_name(panel)
        ends = [last_inside(c, low, high) for c in named]
        near = [end for end in ends if end is not None and end[0] > high - NEAR_BORDER * (high - low)]
        if len(near) > 1 and len(near) > len(named) / 2:
            names += [c.name for c in named]
    return margin_width(names, width, look)


def names(at: PanelPlace, margin: float, look: Look) -> tuple[list[Item], int]:
    """The names of a panel's curves and of runs that leave their bands, and how many found no room."""
    named = [] if at.panel.title else _to_name(at.panel)
    ends = [(at.at(*end), c) for c in named for end in [last_inside(c, at.low, at.high)] if end is not None]
    items: list[Item] = []
    taken: tuple[Box, ...] = ()
    wanted = _leaving(at, Ruler(look).height())
    dropped = 0
    if margin:
        beside = [CurveEnd(*spot, c.name, c.slot) for spot, c in ends]
        items += names_beside(at.box, beside, margin, look)
        dropped = max(0, len(ends) - lines_beside(at.box, look)) + cut_names(beside, margin, look)
        reach = look.px(5)
        taken = tuple(Box(x - reach, y - reach, 2 * reach, 2 * reach) for (x, y), _ in ends)
    else:
        wanted = [*(_Wanted(spot, c.name, c.slot, c.slot) for spot, c in ends), *wanted]
    inside, without = _inside(at, wanted, taken, look)
    return [*items, *inside], dropped + without


def _inside(
    at: PanelPlace, wanted: Sequence[_Wanted], taken: tuple[Box, ...], look: Look
) -> tuple[list[Item], int]:
    """Names within the plot, each as near to its point as there is room; how many machines' found none."""
    if not wanted:
        return [], 0
    ruler, size = Ruler(look), look.px(10)
    texts = [ruler.fitted(w.name, _WIDEST_NAME * at.box.width, bold=w.slot is not None) for w in wanted]
    anchors = tuple(
        Anchor(
            *w.spot,
            0.75 * size if w.slot is not None else size / 3,
            ruler.width(text, bold=w.slot is not None),
            ruler.height(),
        )
        for w, text in zip(wanted, texts, strict=True)
    )
    curves = [c for c in at.panel.curves if not c.run_id] or list(at.panel.curves[:_EACH_RUN_NAMED])
    clear = tuple(line for curve in curves for line in _segments(at, curve))
    items: list[Item] = []
    dropped = 0
    for each, text, put in zip(wanted, texts, place(anchors, at.box, taken, clear), strict=True):
        if each.slot is not None:
            items.append(Marker(*each.spot, size, each.slot))
        if put is None:
            dropped += each.slot is not None
            continue
        if put.leader is not None:
            items.append(Line(*put.leader, "muted", 0.8, slot=each.owner))
        is_bold = each.slot is not None
        token = "ink" if is_bold else "caution"
        items.append(
            Text(put.box, text, bold=is_bold, token=token, full=each.name, halo=True, slot=each.owner)
        )
    return items, dropped


def _leaving(at: PanelPlace, text_height: float) -> list[_Wanted]:
    """Where runs leave their bands, with by how much; a single run's plot says it in its heading."""
    runs = {c.run_id: c for c in at.panel.curves if c.run_id}
    wanted = []
    # in a low plot names would hide the curves; all of them are told beside the chart
    most = max(1, int(at.box.height / (_ROOM_FOR_REMARK * text_height)))
    for excursion in at.panel.excursions[:most] if len(runs) > 1 else ():
        curve = runs.get(excursion.run_id)
        low, high = max(at.low, excursion.low), min(at.high, excursion.high)
        end = None if curve is None else last_inside(curve, low, high)
        if end is not None:
            name = excursion.name.rpartition(", ")[2] if at.panel.title else excursion.name
            wanted.append(_Wanted(at.at(*end), f"{name}: {excursion.by_text}", owner=excursion.slot))
    return wanted


def _to_name(panel: Panel) -> list[Curve]:
    """A curve a machine where there are medians or many runs, else every run."""
    chosen = [c for c in panel.curves if not c.run_id]
    named = {c.machine_id for c in chosen}
    rest = [c for c in panel.curves if c.run_id and c.machine_id not in named]
    of_machine: dict[str, list[Curve]] = {}
    for curve in rest:
        of_machine.setdefault(curve.machine_id, []).append(curve)
    for members in of_machine.values():
        if len(members) > 1 and len(rest) <= _EACH_RUN_NAMED:
            chosen += members
        else:
            machine = members[0].name.rpartition(", ")[0]
            chosen.append(evolve(members[0], name=machine or members[0].name))
    return chosen


def last_inside(curve: Curve, low: float, high: float) -> Spot | None:
    """The last point of a curve between two places of the axis, in its own units."""
    inside = np.flatnonzero((curve.x >= low) & (curve.x <= high) & np.isfinite(curve.y))
    return (float(curve.x[inside[-1]]), float(curve.y[inside[-1]])) if inside.size else None


def _segments(at: PanelPlace, curve: Curve) -> list[tuple[float, float, float, float]]:
    """A curve as a few straight lines from which labels keep away."""
    known = np.flatnonzero(np.isfinite(curve.y))
    if known.size < 2:
        return []
    rows = known[np.linspace(0, known.size - 1, min(known.size, _KEPT_CLEAR)).astype(int)]
    xs, ys = at.x(curve.x[rows]).tolist(), at.y(curve.y[rows]).tolist()
    return list(zip(xs[:-1], ys[:-1], xs[1:], ys[1:], strict=True))
