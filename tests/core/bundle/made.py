"""Logs and bundles made up for tests."""

from datetime import date, datetime, timedelta, timezone
from pathlib import Path

from core.bundle.writing import Contents, write_bundle
from core.comparing import Gathered, gather
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.traces import Trace
from tests.core.benches import alike, trace

MADE = date(2026, 6, 20)
_START = datetime(2026, 6, 15, 9, 0, tzinfo=timezone(timedelta(hours=2)))


def log_text(whole: Trace) -> str:
    """A log as a meter saves it: ISO stamps with offset, power in watts."""
    rows = ["time,power [W]"]
    for at_s, power_w in zip(whole.time_s, whole.power_w, strict=True):
        rows.append(f"{(_START + timedelta(seconds=float(at_s))).isoformat()},{power_w:.1f}")
    return "\n".join(rows) + "\n"


def logs_in(folder: Path) -> Path:
    """Logs of two machines with three parts each."""
    folder.mkdir(parents=True, exist_ok=True)
    for i, (name, level_w) in enumerate({"Alder": 60.0, "Rowan": 90.0}.items()):
        made = trace(alike(3, level_w=level_w, seed=i), seed=i)
        (folder / f"{name}.csv").write_text(log_text(made), encoding="utf-8")
    return folder


def sources_of(gathered: Gathered) -> Sources:
    """The results of what was read."""
    study = gathered.study
    drawn = Drawable(study, gathered.comparison(), gathered.traces, gathered.activities)
    return Sources(drawn, MADE.year)


def bundle_of(folder: Path, path: Path, *, with_logs: bool = True, report: str = "") -> Path:
    """A bundle of the logs in a folder."""
    gathered = gather([folder])
    problems = write_bundle(
        path,
        Contents(
            sources_of(gathered),
            MADE,
            gathered.log_bytes,
            report=report,
            with_logs=with_logs,
            readings=gathered.readings,
        ),
    )
    assert problems == ()
    return path
