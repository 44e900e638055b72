"""Bundles as strangers may send them: nothing leaves its folder, fills the memory, or ends the program."""

import json
import zipfile
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from core.bundle import reading
from core.bundle.claims import held_against
from core.bundle.manifest import MANIFEST, RESULTS, STUDY
from core.bundle.reading import Bundle, is_bundle, is_safe, open_bundle
from core.comparing import gather
from core.json_answer import compared, dumps
from core.problems import Problem, Severity
from core.results.compare import compare
from core.wording import sentence
from tests.core.bundle.made import bundle_of, logs_in

_ANY = settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture])


@pytest.fixture(scope="module")
def good(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("hostile")
    return bundle_of(logs_in(folder / "in"), folder / "good.zip")


def rewritten(
    good: Path, out: Path, change: dict[str, bytes | None], more: dict[str, bytes] | None = None
) -> Path:
    """A copy with some files otherwise, without some, and with more."""
    with zipfile.ZipFile(good) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            data = change.get(name, old.read(name))
            if data is not None:
                new.writestr(name, data)
        for name, data in (more or {}).items():
            new.writestr(name, data)
    return out


def refused(path: Path) -> Problem:
    problem = open_bundle(path)
    assert isinstance(problem, Problem)
    assert problem.severity is Severity.ERROR
    assert "{" not in sentence(problem)
    return problem


@pytest.mark.parametrize(
    "name", ["../evil", "/etc/evil", "logs/../../evil", "c:evil", "logs\\..\\evil", "a//b", "./a"]
)
def test_names_that_leave_the_bundle_are_refused(good: Path, tmp_path: Path, name: str) -> None:
    assert not is_safe(name)
    path = rewritten(good, tmp_path / "b.zip", {}, {name: b"x"})
    with zipfile.ZipFile(path) as archive:
        kept = archive.namelist()[-1]
    if is_safe(kept):  # what the module for zips has mended already
        return
    assert refused(path).code == "bundle.unsafe"
    assert gather([path]).traces == {}
    assert [p.name for p in tmp_path.iterdir()] == ["b.zip"]


def test_a_log_may_not_be_taken_from_outside_by_the_manifest(good: Path, tmp_path: Path) -> None:
    with zipfile.ZipFile(good) as archive:
        manifest = json.loads(archive.read(MANIFEST))
    manifest["logs"][0]["path"] = "../../../../etc/hostname"
    path = rewritten(good, tmp_path / "b.zip", {MANIFEST: json.dumps(manifest).encode()})
    opened = open_bundle(path)
    assert isinstance(opened, Bundle)
    found = opened.log(manifest["logs"][0]["sha256"])
    assert isinstance(found, Problem)
    assert found.code == "bundle.damaged"


@pytest.mark.filterwarnings("ignore:Duplicate name")
@pytest.mark.parametrize("name", [STUDY, "Values.JSON"])
def test_two_files_of_one_name_are_refused(good: Path, tmp_path: Path, name: str) -> None:
    assert refused(rewritten(good, tmp_path / "b.zip", {}, {name: b"{}"})).code == "bundle.unsafe"


def test_what_unpacks_to_far_more_is_refused(
    good: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading, "FREE_BYTES", 1 << 16)
    path = rewritten(good, tmp_path / "b.zip", {RESULTS: b" " * (1 << 24)})
    problem = refused(path)
    assert problem.code == "bundle.too_large"
    assert RESULTS in sentence(problem)


def test_a_log_that_unpacks_to_far_more_is_left_out(
    good: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(reading, "FREE_BYTES", 1 << 20)
    path = rewritten(good, tmp_path / "b.zip", {"logs/Alder.csv": b"0" * (1 << 25)})
    again = gather([path])
    assert [p.code for p in again.problems] == ["bundle.too_large"]
    assert len(again.traces) == 1


def test_a_newer_layout_says_so(good: Path, tmp_path: Path) -> None:
    text = json.dumps({"format": "samepart bundle", "version": 99, "something": "new"}).encode()
    path = rewritten(good, tmp_path / "b.zip", {MANIFEST: text})
    assert is_bundle(path)
    assert refused(path).code == "bundle.newer"


@pytest.mark.parametrize(
    ("name", "text"),
    [
        (STUDY, None),
        (STUDY, b""),
        (STUDY, b"\xff\xfe"),
        (STUDY, b'{"id": 1}'),
        (STUDY, b"[" * 100_000),
        (STUDY, b'{"id": "s", "runs": [{"id": "r", "log_id": "nowhere"}]}'),
        (STUDY, b'{"id": "s", "room_c": 1e999}'),
        (STUDY, b'{"id": "s", "room_c": 1' + b"0" * 400 + b"}"),
        (MANIFEST, b'{"format": "samepart bundle", "version": 1}'),
        (MANIFEST, b'{"format": "samepart bundle", "version": 1, "logs": {}}'),
    ],
)
def test_damage_is_said_in_words(good: Path, tmp_path: Path, name: str, text: bytes | None) -> None:
    assert refused(rewritten(good, tmp_path / "b.zip", {name: text})).code == "bundle.damaged"


@_ANY
@given(at=st.floats(0, 1), cut=st.integers(0, 400), noise=st.binary(max_size=40))
def test_any_damage_of_the_bytes_gives_an_answer(
    good: Path, tmp_path: Path, at: float, cut: int, noise: bytes
) -> None:
    data = good.read_bytes()
    place = int(at * len(data))
    path = tmp_path / "b.zip"
    path.write_bytes(data[:place] + noise + data[place + cut :])
    opened = open_bundle(path)
    if isinstance(opened, Bundle):
        for entry in opened.manifest.logs:
            found = opened.log(entry.sha256)
            assert isinstance(found, bytes | Problem)
    else:
        assert sentence(opened)
    assert is_bundle(path) in (True, False)


_JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(max_size=8), inner, max_size=4),
    max_leaves=12,
)


@_ANY
@given(data=st.data())
def test_any_change_of_a_value_gives_an_answer(good: Path, tmp_path: Path, data: st.DataObject) -> None:
    name = data.draw(st.sampled_from([MANIFEST, STUDY]))
    with zipfile.ZipFile(good) as archive:
        value = json.loads(archive.read(name))
    spot = value
    while True:
        keys = list(spot) if isinstance(spot, dict) else list(range(len(spot)))
        if not keys:
            break
        key = data.draw(st.sampled_from(keys))
        if not isinstance(spot[key], dict | list) or data.draw(st.booleans()):
            spot[key] = data.draw(_JSON)
            break
        spot = spot[key]
    path = rewritten(good, tmp_path / "b.zip", {name: json.dumps(value).encode()})
    opened = open_bundle(path)
    if isinstance(opened, Problem):
        assert sentence(opened)
    else:
        # without its logs: what is computed of runs alone is quick, and must stand whatever they say
        comparison = compare(opened.study, {})
        assert dumps(compared(comparison, opened.study, ()))
        held_against(opened.manifest, opened.claimed, comparison, opened.study)


@_ANY
@given(name=st.text(max_size=20))
def test_safe_names_stay_inside(name: str) -> None:
    if is_safe(name):
        folder = Path("/some/where")
        assert (folder / name).resolve().is_relative_to(folder)


def test_files_that_are_too_large_together_are_refused(good: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reading, "MOST_FILES_BYTES", 1000)
    assert refused(good).code == "bundle.too_large"
