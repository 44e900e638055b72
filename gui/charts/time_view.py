"""The visible part of a lane's time: pixels to seconds and back, zoom and pan, bounded by the data. No Qt."""

from typing import Final

from attrs import evolve, frozen

#: nobody looks closer than this [s]
SHORTEST_S: Final = 1.0


@frozen
class TimeView:
    """From `start_s` to `end_s` of a log that lasts from 0 to `whole_s` [s], drawn between two pixels."""

    whole_s: float
    start_s: float
    end_s: float
    left_px: float = 0.0
    width_px: float = 1.0

    @classmethod
    def whole(cls, whole_s: float, left_px: float = 0.0, width_px: float = 1.0) -> "TimeView":
        """The view of all there is."""
        return cls(whole_s, 0.0, max(whole_s, SHORTEST_S), left_px, max(width_px, 1.0))

    @property
    def span_s(self) -> float:
        """Visible time. [s]"""
        return self.end_s - self.start_s

    @property
    def is_whole(self) -> bool:
        """Whether all there is can be seen."""
        return self.span_s >= max(self.whole_s, SHORTEST_S)

    def x(self, at_s: float) -> float:
        """Where a time lies. [px]"""
        return self.left_px + (at_s - self.start_s) / self.span_s * self.width_px

    def at(self, x: float) -> float:
        """The time at a pixel. [s]"""
        return self.start_s + (x - self.left_px) / self.width_px * self.span_s

    def placed(self, left_px: float, width_px: float) -> "TimeView":
        """The same time drawn elsewhere."""
        return evolve(self, left_px=left_px, width_px=max(width_px, 1.0))

    def of_length(self, whole_s: float) -> "TimeView":
        """The same stretch of a log that has become longer or shorter; all of it where all was visible."""
        longer = evolve(self, whole_s=whole_s)
        if self.is_whole:
            return TimeView.whole(whole_s, self.left_px, self.width_px)
        return longer._at(self.start_s, min(self.span_s, max(whole_s, SHORTEST_S)))

    def zoomed(self, factor: float, about_s: float) -> "TimeView":
        """Show `factor` times as much, with `about_s` staying where it is."""
        most = max(self.whole_s, SHORTEST_S)
        span_s = min(max(self.span_s * factor, min(SHORTEST_S, most)), most)
        share = (about_s - self.start_s) / self.span_s
        return self._at(about_s - share * span_s, span_s)

    def moved(self, by_s: float) -> "TimeView":
        """Show later times, or earlier ones."""
        return self._at(self.start_s + by_s, self.span_s)

    def showing(self, from_s: float, to_s: float) -> "TimeView":
        """Show this stretch, with a little around it."""
        margin = 0.05 * (to_s - from_s)
        most = max(self.whole_s, SHORTEST_S)
        span_s = min(max(to_s - from_s + 2 * margin, min(SHORTEST_S, most)), most)
        return self._at((from_s + to_s - span_s) / 2, span_s)

    def including(self, at_s: float) -> "TimeView":
        """The nearest view of the same span that holds this time."""
        if at_s < self.start_s:
            return self._at(at_s - 0.1 * self.span_s, self.span_s)
        if at_s > self.end_s:
            return self._at(at_s - 0.9 * self.span_s, self.span_s)
        return self

    def _at(self, start_s: float, span_s: float) -> "TimeView":
        start_s = min(max(start_s, 0.0), max(self.whole_s, SHORTEST_S) - span_s)
        return evolve(self, start_s=start_s, end_s=start_s + span_s)
