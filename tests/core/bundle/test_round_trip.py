"""What goes into a bundle comes out of it, to the last bit; what was changed on the way is named."""

import hashlib
import json
import zipfile
from pathlib import Path

import pytest

from core import edits
from core.bundle.claims import _figures
from core.bundle.manifest import MANIFEST, STUDY, from_text
from core.bundle.reading import Bundle, is_bundle, open_bundle
from core.bundle.writing import Contents, without_folders, write_bundle
from core.comparing import Gathered, gather
from core.json_answer import compared, dumps
from core.problems import Problem, Severity
from core.progress import Cancelled
from core.store.file import StudyFile
from core.wording import sentence
from tests.core.bundle.made import MADE, bundle_of, logs_in, sources_of


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return logs_in(tmp_path_factory.mktemp("logs"))


@pytest.fixture(scope="module")
def full(logs: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return bundle_of(logs, tmp_path_factory.mktemp("full") / "b.zip", report="<html></html>")


@pytest.fixture(scope="module")
def hashes(logs: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    return bundle_of(logs, tmp_path_factory.mktemp("hashes") / "b.zip", with_logs=False)


def figures(gathered: Gathered) -> str:
    study = without_folders(gathered.study)
    return dumps(compared(gathered.comparison_of(study), study, ()))


def codes(gathered: Gathered, least: Severity = Severity.CAUTION) -> list[str]:
    order = list(Severity)
    return [p.code for p in gathered.problems if order.index(p.severity) >= order.index(least)]


def changed(path: Path, out: Path, change: dict[str, bytes]) -> Path:
    """A copy of a zip with other bytes in some of its files."""
    with zipfile.ZipFile(path) as old, zipfile.ZipFile(out, "w") as new:
        for name in old.namelist():
            new.writestr(name, change.get(name, old.read(name)))
    return out


def test_figures_are_equal_to_the_last_bit(logs: Path, full: Path) -> None:
    again = gather([full])
    assert codes(again) == []
    assert figures(again) == figures(gather([logs]))
    checked = again.held_against_bundle(again.comparison())
    assert checked is not None
    assert checked.code == "bundle.figures_same"
    assert checked.fact("count") == len(_numbers(json.loads(figures(again))))


def _numbers(value: object) -> list[object]:
    if isinstance(value, dict):
        return [n for key, item in value.items() if key != "warnings" for n in _numbers(item)]
    if isinstance(value, list):
        return [n for item in value for n in _numbers(item)]
    return [] if isinstance(value, str | bool) else [value]


def test_an_edited_study_goes_round_through_its_file_and_a_bundle(logs: Path, tmp_path: Path) -> None:
    found = gather([logs])
    study = edits.leave_out(found.study, found.study.runs[1].id, "the door was open").study
    study = edits.rename_machine(study, study.machines[0].id, "=Älder <1>").study
    edited = Gathered(study, found.traces, found.activities, found.files, ())
    path = tmp_path / "b.zip"
    write_bundle(path, Contents(sources_of(edited), MADE, found.log_bytes))
    again = gather([path])
    assert again.study == without_folders(study)
    assert figures(again) == figures(edited)


def test_a_study_file_and_its_bundle_give_one_answer(logs: Path, tmp_path: Path) -> None:
    found = gather([logs])
    kept = StudyFile.create(tmp_path / "s.samepart")
    assert isinstance(kept, StudyFile)
    with kept:
        for digest in {s.digest for log in found.study.logs for s in log.sources}:
            data = found.log_bytes(digest)
            assert isinstance(data, bytes)
            assert kept.add_blob(data) == digest
        new = kept.history.apply(edits.Edit(without_folders(found.study), "all at once"))
        assert kept.write(kept.history, new) is None
    opened = gather([tmp_path / "s.samepart"])
    path = tmp_path / "b.zip"
    assert write_bundle(path, Contents(sources_of(opened), MADE, opened.log_bytes)) == ()
    again = gather([path])
    assert dumps(compared(again.comparison(), again.study, ())) == dumps(
        compared(opened.comparison(), opened.study, ())
    )


def test_the_same_study_makes_the_same_bytes(logs: Path, full: Path, tmp_path: Path) -> None:
    again = bundle_of(logs, tmp_path / full.name, report="<html></html>")
    assert again.read_bytes() == full.read_bytes()


def test_every_file_is_listed_with_its_digest(full: Path) -> None:
    with zipfile.ZipFile(full) as archive:
        manifest = from_text(archive.read(MANIFEST).decode())
        listed = {f.path: f.sha256 for f in manifest.files}
        listed |= {g.path: g.sha256 for g in manifest.logs if g.path}
        assert set(archive.namelist()) == {*listed, MANIFEST}
        for path, sha256 in listed.items():
            assert hashlib.sha256(archive.read(path)).hexdigest() == sha256
        assert {i.date_time for i in archive.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        assert "samepart compare b.zip" in archive.read("README.txt").decode()


def test_nothing_in_a_bundle_says_in_which_folder_a_log_lay(logs: Path, full: Path) -> None:
    with zipfile.ZipFile(full) as archive:
        for name in archive.namelist():
            assert str(logs).encode() not in archive.read(name), name


def test_hashes_only_asks_for_the_logs_by_name(hashes: Path) -> None:
    alone = gather([hashes])
    assert codes(alone) == ["bundle.log_missing", "bundle.log_missing"]
    checked = alone.held_against_bundle(alone.comparison())
    assert checked is not None
    assert checked.code == "bundle.figures_unchecked"
    assert "because 2 logs of the bundle could not be" in sentence(checked)
    claimed = [value for _, value in _figures(json.loads(alone.bundle.claimed))] if alone.bundle else []
    assert checked.fact("of") == len(claimed)
    assert f" of {len(claimed)} could not be checked" in sentence(checked)
    assert "Alder.csv" in sentence(alone.problems[0])
    assert alone.traces == {}


def test_hashes_only_with_the_logs_beside_gives_the_same_figures(
    logs: Path, hashes: Path, tmp_path: Path
) -> None:
    beside = tmp_path / "beside"
    beside.mkdir()
    # files are told by their bytes: what they are called does not matter
    for i, path in enumerate(sorted(logs.iterdir())):
        (beside / f"{i}.txt").write_bytes(path.read_bytes())
    (beside / "other.csv").write_text("time,power [W]\n2026-01-01T00:00:00Z,1\n")
    again = gather([hashes, beside])
    assert codes(again) == []
    assert [p.code for p in again.problems] == ["bundle.passed_over"]
    assert figures(again) == figures(gather([logs]))


def test_a_changed_log_beside_is_named_and_left_out(logs: Path, hashes: Path, tmp_path: Path) -> None:
    for path in logs.iterdir():
        (tmp_path / path.name).write_bytes(path.read_bytes())
    touched = tmp_path / "Rowan.csv"
    touched.write_bytes(touched.read_bytes().replace(b",90.", b",80.", 1))
    again = gather([hashes, tmp_path])
    assert codes(again) == ["bundle.log_changed"]
    (problem,) = [p for p in again.problems if p.severity is Severity.ERROR]
    assert problem.file == str(touched)
    assert "Rowan.csv" in sentence(problem)
    assert len(again.traces) == 1


def test_a_changed_log_inside_is_named_and_left_out(full: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(full) as archive:
        data = archive.read("logs/Alder.csv")
    path = changed(full, tmp_path / "c.zip", {"logs/Alder.csv": data.replace(b",60.", b",61.", 1)})
    again = gather([path])
    assert codes(again) == ["bundle.log_changed"]
    assert "logs/Alder.csv" in str(again.problems[0].file)
    checked = again.held_against_bundle(again.comparison())
    assert checked is not None
    assert checked.code == "bundle.figures_differ"


def test_a_study_changed_afterwards_is_told_and_its_figures_held_against(full: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(full) as archive:
        study = archive.read(STUDY).decode()
    path = changed(
        full,
        tmp_path / "c.zip",
        {STUDY: study.replace('"gain_percent": 1.0', '"gain_percent": 3.0').encode()},
    )
    again = gather([path])
    assert codes(again) == ["bundle.file_changed"]
    checked = again.held_against_bundle(again.comparison())
    assert checked is not None
    assert "energy_u95_wh" in str(checked.fact("where"))


def test_another_boundary_is_no_claim_of_the_bundle(full: Path) -> None:
    again = gather([full], boundary="processing only")
    assert again.held_against_bundle(again.comparison()) is None


def test_logs_that_cannot_be_had_are_named(logs: Path, tmp_path: Path) -> None:
    gathered = gather([logs])

    def none(digest: str) -> bytes | Problem:
        return Problem("store.blob_missing", Severity.ERROR, facts={"digest": digest[:12]})

    problems = write_bundle(tmp_path / "b.zip", Contents(sources_of(gathered), MADE, none))
    assert [p.code for p in problems] == ["bundle.log_not_had", "bundle.log_not_had"]
    opened = open_bundle(tmp_path / "b.zip")
    assert isinstance(opened, Bundle)
    assert [entry.path for entry in opened.manifest.logs] == [None, None]


def test_a_bundle_that_cannot_be_written_leaves_nothing(logs: Path, tmp_path: Path) -> None:
    gathered = gather([logs])
    contents = Contents(sources_of(gathered), MADE, gathered.log_bytes)
    (problem,) = write_bundle(tmp_path / "nowhere" / "b.zip", contents)
    assert problem.code == "bundle.not_written"
    (tmp_path / "b.zip").write_text("what was there")

    def stop(fraction: float, text: str) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        write_bundle(tmp_path / "b.zip", contents, stop)
    assert [p.name for p in tmp_path.iterdir()] == ["b.zip"]
    assert (tmp_path / "b.zip").read_text() == "what was there"


def test_logs_of_one_name_are_kept_apart(logs: Path, tmp_path: Path) -> None:
    for source, folder in (("Alder", "first"), ("Rowan", "second")):
        (tmp_path / "in" / folder).mkdir(parents=True)
        (tmp_path / "in" / folder / "log.csv").write_bytes((logs / f"{source}.csv").read_bytes())
    path = bundle_of(tmp_path / "in", tmp_path / "b.zip")
    opened = open_bundle(path)
    assert isinstance(opened, Bundle)
    assert [g.path for g in opened.manifest.logs] == ["logs/log.csv", "logs/log 2.csv"]
    assert codes(gather([path])) == []


def test_a_zip_of_logs_is_no_bundle(logs: Path, tmp_path: Path) -> None:
    path = tmp_path / "logs.zip"
    with zipfile.ZipFile(path, "w") as archive:
        for log in logs.iterdir():
            archive.write(log, log.name)
        archive.writestr(MANIFEST, '{"format": "something else"}')
    assert not is_bundle(path)
    assert not is_bundle(logs)
    assert not is_bundle(tmp_path / "gone.zip")
