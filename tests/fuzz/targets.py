"""What is given damaged bytes: each either answers or refuses in words, and never raises.

Each target takes bytes and a folder for scratch, and has good bytes to begin from.
"""

from collections.abc import Callable
from pathlib import Path
from random import Random

from core import edits
from core.bundle.beside import read_logs
from core.bundle.reading import open_bundle
from core.costs.price_csv import read_prices
from core.logs import read_bytes
from core.plan.order import order_of
from core.plan.sheet import run_sheet, sheet_csv
from core.problems import Problem
from core.run_sheet import add_sheet
from core.store.file import StudyFile
from core.wording import placed, sentences
from tests.core.bundle.made import bundle_of, logs_in
from tests.core.logs.test_corpus import CASES
from tests.core.store.files import add_logs, created, write_steps

Target = Callable[[bytes, Path], None]


def log(data: bytes, folder: Path) -> None:
    """Read as a log."""
    found = read_bytes(data, "log.csv")
    _in_words(*found.problems, *(p for reading in found.readings for p in reading.problems))


def study(data: bytes, folder: Path) -> None:
    """Opened as a study file, with the bytes of all its logs."""
    path = folder / "fuzzed.samepart"
    path.write_bytes(data)
    opened = StudyFile.open(path)
    if isinstance(opened, Problem):
        _in_words(opened)
        return
    with opened as file:
        _in_words(*([file.problem] if file.problem else []))
        for one in file.history.study.logs:
            for source in one.sources:
                told = file.blob(source.digest)
                _in_words(*([told] if isinstance(told, Problem) else []))


def bundle(data: bytes, folder: Path) -> None:
    """Opened as a bundle, with the readings of its logs."""
    path = folder / "fuzzed.zip"
    path.write_bytes(data)
    opened = open_bundle(path)
    if isinstance(opened, Problem):
        _in_words(opened)
    else:
        _in_words(*read_logs(opened).problems)


def sheet(data: bytes, folder: Path) -> None:
    """Read as a filled run sheet into a study."""
    path = folder / "fuzzed.csv"
    path.write_bytes(data)
    _, problems = add_sheet(edits.new_study("fuzzed").study, path)
    _in_words(*problems)


def prices(data: bytes, folder: Path) -> None:
    """Read as a list of prices by date."""
    _in_words(*read_prices(data, "prices.csv").problems)


TARGETS: dict[str, Target] = {
    "log": log,
    "study": study,
    "bundle": bundle,
    "sheet": sheet,
    "prices": prices,
}


def seeds(name: str, folder: Path) -> list[bytes]:
    """Good bytes for a target."""
    if name == "log":
        return [case.data for case in CASES if len(case.data) < 20_000]
    if name == "study":
        with created(folder / "seed.samepart") as file:
            add_logs(file, Random(3), [1, 2])
            write_steps(file, Random(3), 10)
        return [(folder / "seed.samepart").read_bytes()]
    if name == "bundle":
        return [bundle_of(logs_in(folder / "in"), folder / "seed.zip").read_bytes()]
    if name == "prices":
        rows = "".join(f"2026-06-01 {hour:02}:00;{hour / 100:.2f}\n".replace(".", ",") for hour in range(24))
        return [
            f"Beginn;Preis [ct/kWh]\n{rows}".encode("cp1252"),
            rows.replace(",", ".").encode(),
            b"1" * 140_000,
        ]
    planned = edits.new_study("planned").study
    for machine in ("Alder", "Birch"):
        planned = edits.add_machine(planned, machine).study
    assert order_of(planned)
    text = sheet_csv(run_sheet(planned))
    filled = "\n".join(f"{line},21.5" for line in text.splitlines())
    return [text.encode(), filled.encode("utf-16"), text.replace(",", ";").encode("utf-8-sig")]


def _in_words(*problems: Problem) -> None:
    for problem in problems:
        assert problem.code != "log.unforeseen", problem.facts
        assert problem.code in sentences(), problem.code
        assert placed(problem)
