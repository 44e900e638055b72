"""Files that continue one log are joined; two machines logged one after another are not."""

from datetime import timedelta
from pathlib import Path

import numpy as np
import pytest

from core.analysis import find_logs
from core.logs import Reading, join, join_readings, read_bytes
from core.wording import sentence
from tests.core.logs.corpus import START, Load, load, plain

HEAD = "time,power [W],energy [kWh]"


def written(
    truth: Load, name: str, after_s: float = 0.0, rows: slice = slice(None), device: str = ""
) -> Reading:
    """The reading of a file with some rows of a trace that begins `after_s` after the start."""
    lines = [HEAD + (",device" if device else "")]
    for t, p, c in list(zip(truth.time_s, truth.power_w, truth.counter_wh, strict=True))[rows]:
        at = START + timedelta(seconds=float(t) + after_s)
        lines.append(f"{at:%Y-%m-%d %H:%M:%S},{p:.1f},{c / 1000:.4f}" + (f",{device}" if device else ""))
    (reading,) = read_bytes("\n".join(lines).encode(), name).readings
    return reading


def names(groups: tuple[tuple[Reading, ...], ...]) -> list[list[str]]:
    return [[r.file for r in g] for g in groups]


def test_a_run_cut_in_two_files_with_other_names() -> None:
    truth = load()
    parts = (
        written(truth, "monday.csv", rows=slice(0, 120)),
        written(truth, "tuesday.csv", rows=slice(120, None)),
    )
    assert names(join_readings(parts)) == [["monday.csv", "tuesday.csv"]]
    assert names(join_readings(parts[::-1])) == [["monday.csv", "tuesday.csv"]]


def test_two_machines_one_after_another_stay_two() -> None:
    first, second = load(seed=1), load(seed=2)
    parts = written(first, "Alder.csv"), written(second, "Birch.csv", after_s=2400.0)
    assert names(join_readings(parts)) == [["Alder.csv"], ["Birch.csv"]]


def test_two_machines_with_counters_that_began_at_zero_stay_two() -> None:
    idle = Load(np.arange(60) * 10.0, np.full(60, 6.0), np.zeros(60))
    parts = written(idle, "Alder.csv"), written(load(seed=2), "Birch.csv", after_s=600.0)
    assert names(join_readings(parts)) == [["Alder.csv"], ["Birch.csv"]]


def test_different_devices_are_never_joined() -> None:
    truth = load()
    parts = (
        written(truth, "day 1.csv", rows=slice(0, 120), device="Alder"),
        written(truth, "day 2.csv", rows=slice(120, None), device="Birch"),
    )
    assert len(join_readings(parts)) == 2


def test_one_device_over_several_days_is_one_log_with_a_gap() -> None:
    truth, later = load(), load(seed=3, start_wh=400.0)
    parts = written(truth, "a.csv", device="Alder"), written(later, "b.csv", 86400.0, device="Alder")
    (group,) = join_readings(parts)
    whole = join(group)
    assert [round(g.seconds) for g in whole.gaps] == [86400 - 2390]
    assert whole.counter_wh is not None
    assert (np.diff(whole.counter_wh) >= 0).all()
    assert whole.counter_wh[-1] - whole.counter_wh[0] == pytest.approx(later.counter_wh[-1], abs=0.2)


def test_a_counter_that_starts_again_in_the_second_file_runs_on_with_a_break() -> None:
    truth, later = load(), load(seed=3)
    parts = written(truth, "a.csv", device="Alder"), written(later, "b.csv", 3600.0, device="Alder")
    (group,) = join_readings(parts)
    whole = join(group)
    assert whole.counter_wh is not None
    assert whole.counter_wh[-1] == pytest.approx(truth.counter_wh[-1] + later.counter_wh[-1], abs=0.3)
    assert whole.counter_breaks_s == (pytest.approx(3600.0),)


def test_names_that_differ_in_a_date_only() -> None:
    truth, later = load(), load(seed=3, start_wh=200.0)
    parts = written(truth, "Alder 2025-06-23.csv"), written(later, "Alder 2025-06-24.csv", 86400.0)
    assert len(join_readings(parts)) == 1
    other = written(later, "Birch 2025-06-24.csv", 86400.0)
    assert len(join_readings((parts[0], other))) == 2


def test_rows_in_both_files_count_once() -> None:
    truth = load()
    parts = written(truth, "a.csv", rows=slice(0, 150)), written(truth, "b.csv", rows=slice(100, None))
    (group,) = join_readings(parts)
    np.testing.assert_allclose(join(group).power_w, truth.power_w)


def test_a_group_needs_traces() -> None:
    with pytest.raises(ValueError, match="needs a trace"):
        join(())


def test_that_files_were_joined_is_told_once(tmp_path: Path) -> None:
    lines = plain(load(rows=240)).splitlines()
    (tmp_path / "day 1.csv").write_text("\n".join(lines[:121]))
    (tmp_path / "day 2.csv").write_text("\n".join([lines[0], *lines[121:]]))
    found = find_logs([tmp_path])
    assert len(found.logs) == 1
    (told,) = (p for p in found.problems if p.code == "log.joined")
    assert sentence(told) == "2 files continue one log and were joined: day 1.csv, day 2.csv."
    alone = find_logs([tmp_path / "day 1.csv"])
    assert "log.joined" not in {p.code for p in alone.problems}
