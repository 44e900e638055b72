"""Personal data in logs and studies: found, counted, replaced; readings stay as they are."""

import gzip
import io
import zipfile
from pathlib import Path

import numpy as np
import pytest
from attrs import evolve
from hypothesis import given, settings
from hypothesis import strategies as st

from core import edits
from core.bundle.writing import Contents, write_bundle
from core.comparing import Gathered, gather
from core.json_answer import compared, dumps
from core.personal.columns import positions_in, with_positions_in_columns
from core.personal.kinds import found_in
from core.personal.pseudonyms import pseudonyms
from core.personal.replacing import Replaced, replace
from core.personal.search import THE_STUDY, Personal, personal_data
from core.personal.texts import CannotReplace, changed
from core.publish.sources import Sources
from core.report.pictures import Drawable
from core.wording import sentence
from tests.core.benches import alike, trace
from tests.core.bundle.made import MADE, log_text

HEAD = """\
# saved by ann@workshop.example in C:\\Users\\ann\\Documents
# device address 24:0A:c4:11:22:33, 192.168.7.31, fe80::1c2d:3e4f
# Serial number: SN-00417-B
# SSID: Tidewater loft
"""
DEVICES = ("Plug by the window", "Plug a4c138f0e2d1")


def device_log() -> str:
    """One file with the logs of two devices, and much that says whose it is."""
    rows = [HEAD + "time,device,power [W]"]
    for i, device in enumerate(DEVICES):
        made = log_text(trace(alike(3, level_w=60.0 + 30 * i, seed=i), seed=i)).splitlines()[1:]
        rows += [row.replace(",", f",{device},", 1) for row in made]
    return "\n".join(rows) + "\n"


@pytest.fixture(scope="module")
def read(tmp_path_factory: pytest.TempPathFactory) -> Gathered:
    folder = tmp_path_factory.mktemp("Users")
    (folder / "log of ann@workshop.example.csv").write_text(device_log(), encoding="utf-8")
    found = gather([folder])
    study = edits.leave_out(found.study, found.study.runs[0].id, "ask bob@workshop.example").study
    return evolve(found, study=study)


def drawable(read: Gathered) -> Drawable:
    return Drawable(read.study, read.comparison(), read.traces, read.activities)


def replaced(read: Gathered) -> Replaced:
    found = personal_data(read.study, read.log_bytes)
    return replace(drawable(read), read.readings, read.log_bytes, pseudonyms(found))


@pytest.mark.parametrize(
    ("text", "kind", "found"),
    [
        ("by ann.b+x@mail.example.org;", "e-mail address", "ann.b+x@mail.example.org"),
        ("/home/ann/logs/a.csv", "user name in a path", "ann"),
        (r"C:\Users\Ann\a.csv", "user name in a path", "Ann"),
        ("plug-a4c138f0e2d1", "hardware address", "a4c138f0e2d1"),
        ("MAC 24-0a-c4-11-22-33", "hardware address", "24-0a-c4-11-22-33"),
        ("http://10.0.0.7/log", "network address", "10.0.0.7"),
        ("[2001:db8:1::42]", "network address", "2001:db8:1::42"),
        ('{"ssid": "Loft 2"}', "network name", "Loft 2"),
        ("Serial no: AB12-77", "serial number", "AB12-77"),
        ("6f1c2d3e-0011-4a5b-8c7d-001122334455", "serial number", "6f1c2d3e-0011-4a5b-8c7d-001122334455"),
        ('"latitude": -53.5512', "position", "-53.5512"),
    ],
)
def test_forms_that_are_found(text: str, kind: str, found: str) -> None:
    assert (kind, found) in list(found_in(text))


@pytest.mark.parametrize(
    "text",
    [
        "2026-06-15T09:00:00.123+02:00,21.5,230.1,0.093",
        "15.06.2026 09:00:00;12,5;1.234.567,8",
        "00:00:01\t12.5\t230",
        "1781506800,60.0,123456789012,0.5",
        "serial,power",
        "Flat rate: 0.34, platform: 12.5",
        "version 1.2.3, 127.0.0.1, 0.0.0.0",
        "a@b, @SUM(A1), user@",
    ],
)
def test_readings_and_times_are_not_taken_for_personal_data(text: str) -> None:
    assert list(found_in(text)) == []


def test_everything_is_listed_with_its_places(read: Gathered) -> None:
    found = {p.text: p for p in personal_data(read.study, read.log_bytes)}
    name = "log of ann@workshop.example.csv"
    assert found["ann@workshop.example"].places == ((name, 2),)
    assert found["bob@workshop.example"].places == ((THE_STUDY, 1),)
    rows = device_log().count(DEVICES[0])
    assert found[DEVICES[0]].kind == "device name"
    assert dict(found[DEVICES[0]].places) == {name: rows, THE_STUDY: 2}
    kinds = {p.kind for p in found.values()}
    assert {"hardware address", "network address", "serial number", "network name"} <= kinds
    assert found["ann"].kind == "user name in a path"


def test_nothing_is_left_and_no_figure_changes(read: Gathered, tmp_path: Path) -> None:
    made = replaced(read)
    assert made.problems == ()
    assert personal_data_left(made) == []
    for log_id, before in read.traces.items():
        after = made.drawable.traces[log_id]
        assert np.array_equal(before.time_s, after.time_s)
        assert np.array_equal(before.power_w, after.power_w)
    before_json = figures(drawable(read))
    assert figures(made.drawable) == before_json
    path = tmp_path / "b.zip"
    sources = Sources(made.drawable, MADE.year)
    contents = Contents(
        sources, MADE, made.log_bytes, readings=made.readings, replaced=made.digests, notes=made.notes
    )
    assert write_bundle(path, contents) == ()
    again = gather([path])
    assert [p.code for p in again.problems if p.code.startswith("bundle")] == []
    assert figures(Drawable(again.study, again.comparison(), again.traces, {})) == before_json
    with zipfile.ZipFile(path) as archive:
        for name in archive.namelist():
            content = archive.read(name).decode()
            for text in ("workshop.example", "Plug by", "a4c138f0e2d1", "00417", "192.168.7", "Tidewater"):
                assert text not in content + name, (text, name)
        assert "replaced" in archive.read("README.txt").decode()


def figures(drawn: Drawable) -> list[object]:
    """Every number of the answer, in its order."""
    import json

    def numbers(value: object) -> list[object]:
        if isinstance(value, dict):
            return [n for key, item in value.items() if key != "warnings" for n in numbers(item)]
        if isinstance(value, list):
            return [n for item in value for n in numbers(item)]
        return [] if isinstance(value, str | bool) else [value]

    return numbers(json.loads(dumps(compared(drawn.comparison, drawn.study, ()))))


def personal_data_left(made: Replaced) -> list[str]:
    """What is still found, other than the pseudonyms."""
    left = personal_data(made.drawable.study, made.log_bytes)
    ours = ("device ", "person", "user", "02:", "192.0.2.", "2001:db8::", "network ", "serial-")
    return [p.text for p in left if not p.text.startswith(ours)]


def test_one_thing_has_one_pseudonym_everywhere(read: Gathered) -> None:
    made = replaced(read)
    devices = [s.device for log in made.drawable.study.logs for s in log.sources]
    assert devices == ["device 1", "device 2"] or devices == ["device 2", "device 1"]
    names = [m.name for m in made.drawable.study.machines]
    assert sorted(names) == ["device 1", "device 2"]
    (source,) = {s.digest for log in made.drawable.study.logs for s in log.sources}
    data = made.log_bytes(source)
    assert isinstance(data, bytes)
    assert data.count(b"device 1") == device_log().count(DEVICES[0])


def test_a_pseudonym_is_never_a_text_that_stands_there() -> None:
    found = (
        Personal("device name", "device 1", ()),
        Personal("device name", "Kitchen", ()),
    )
    assert [r.pseudonym for r in pseudonyms(found)] == ["device 2", "device 3"]


def test_many_addresses_stay_apart() -> None:
    found = tuple(Personal("network address", f"10.1.{i >> 8}.{i & 255}", ()) for i in range(2000))
    made = [r.pseudonym for r in pseudonyms(found)]
    assert len(set(made)) == len(made)


def test_nothing_replaced_keeps_bytes_and_digests(read: Gathered) -> None:
    made = replace(drawable(read), read.readings, read.log_bytes, ())
    assert made.digests == frozenset()
    assert [log.sources[0].digest for log in made.drawable.study.logs] == [
        log.sources[0].digest for log in read.study.logs
    ]


def test_a_log_that_would_be_read_otherwise_is_kept_back(read: Gathered) -> None:
    # a device called like a column: without the word nobody can tell which column is the power
    found = (Personal("device name", "power [W]", ()), Personal("device name", "time", ()))
    made = replace(drawable(read), read.readings, read.log_bytes, pseudonyms(found))
    assert [p.code for p in made.problems] == ["personal.kept_back"]
    assert "only its SHA-256" in sentence(made.problems[0])
    digest = read.study.logs[0].sources[0].digest
    assert made.drawable.study.logs[0].sources[0].digest == digest
    assert not isinstance(made.log_bytes(digest), bytes)
    assert figures(made.drawable) == figures(drawable(read))


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "latin-1"])
def test_texts_in_any_encoding(encoding: str) -> None:
    data = "Gerät: Küche\r\n1,5;2\r\n".encode(encoding)
    new = changed(data, lambda text: text.replace("Küche", "device 1"))
    assert new.decode(encoding) == "Gerät: device 1\r\n1,5;2\r\n"


def test_texts_in_archives_keep_the_rest_to_the_byte() -> None:
    inside = b"ann,1\n"
    packed = gzip.compress(inside)
    assert changed(packed, lambda text: text) == packed
    assert gzip.decompress(changed(packed, lambda text: text.replace("ann", "user1"))) == b"user1,1\n"
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr("ann.csv", inside)
        archive.writestr("b.bin", bytes(range(256)))
    new = changed(out.getvalue(), lambda text: text.replace("ann", "user1"))
    with zipfile.ZipFile(io.BytesIO(new)) as archive:
        assert archive.read("user1.csv") == b"user1,1\n"
        assert archive.read("b.bin") == bytes(range(256))


@pytest.mark.parametrize(
    "data", [b"PAR1 ann ....", b"SQLite format 3\x00 ann", b"\x1f\x8b broken ann", b"a\x00ann"]
)
def test_what_cannot_be_written_back_says_so(data: bytes) -> None:
    with pytest.raises(CannotReplace):
        changed(data, lambda text: text.replace("ann", "user1"))


@settings(deadline=None)
@given(st.binary(max_size=300))
def test_any_bytes_that_nothing_changes_stay_as_they_are(data: bytes) -> None:
    try:
        assert changed(data, lambda text: text) == data
    except CannotReplace:
        assert data.startswith((b"\x1f\x8b", b"PK\x03\x04"))


@settings(deadline=None)
@given(st.text(max_size=200))
def test_any_text_gives_an_answer(text: str) -> None:
    for kind, found in found_in(text):
        assert found in text
        assert kind


def test_positions_in_columns_are_found_and_replaced_there_alone() -> None:
    text = "# x\ntime;GPS lat [deg];Longitude;power\n0;48.1371;11.5754;48.1371\n1;48.1371;11.5754;12.50\n"
    assert list(positions_in(text)) == ["48.1371", "11.5754"] * 2
    new = with_positions_in_columns(text, {"48.1371": "0.0001", "11.5754": "0.0002"})
    assert new.splitlines()[2:] == ["0;0.0001;0.0002;48.1371", "1;0.0001;0.0002;12.50"]
    assert list(positions_in("time;platform;power\n0;48.1371;12.50\n")) == []


def test_what_is_found_does_not_depend_on_what_stands_around_it() -> None:
    """Rows are looked up by their shape: a row like others with something personal is not passed over."""
    rows = [f"{i},10.{i}.0.9,{i}.5" for i in range(1, 250)] + [
        "7,10.7.0.9,127.0.0.1",
        '{"lat":1.25}{"lat":48.13}',
    ]
    found = list(found_in("\n".join(rows)))
    assert len([text for kind, text in found if kind == "network address"]) == 250
    assert [text for kind, text in found if kind == "position"] == ["1.25", "48.13"]
