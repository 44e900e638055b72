"""Files for translators are whole: every text, nothing unfinished, the same facts, compiled as they are."""

import re
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PySide6.QtCore import QTranslator

from tests.languages.__main__ import release, update
from tests.languages.texts import ROOT, placeholders, texts

FILES = sorted((ROOT / "gui" / "languages").glob("*.ts"))
_ACCELERATOR = re.compile(r"&(?=\w)")


def pairs(file: Path) -> list[tuple[str, str]]:
    messages = ElementTree.parse(file).iter("message")
    return [(m.findtext("source") or "", m.findtext("translation") or "") for m in messages]


@pytest.fixture(params=FILES, ids=[file.stem for file in FILES])
def file(request: pytest.FixtureRequest) -> Path:
    found = request.param
    assert isinstance(found, Path)
    return found


def test_every_text_is_there_and_no_other(file: Path) -> None:
    assert {source for source, _ in pairs(file)} == set(texts())


def test_no_text_is_left_in_english(file: Path) -> None:
    assert [source for source, translation in pairs(file) if not translation.strip()] == []
    assert 'type="unfinished"' not in file.read_text(encoding="utf-8")


def test_every_translation_takes_the_same_facts(file: Path) -> None:
    def facts(text: str) -> tuple[str, ...]:
        return tuple(sorted({name.rstrip("|") for name in placeholders(text)}))

    wrong = []
    for source, translation in pairs(file):
        try:
            if facts(source) != facts(translation):
                wrong.append(source)
        except ValueError:  # a brace that is none of a fact
            if "{" not in source:
                wrong.append(source)
    assert wrong == []


def test_accelerators_and_edges_stay(file: Path) -> None:
    wrong = []
    for source, translation in pairs(file):
        same_edges = all(
            text[:1].isspace() == translation[:1].isspace()
            and text[-1:].isspace() == translation[-1:].isspace()
            for text in (source,)
        )
        if not same_edges or len(_ACCELERATOR.findall(source)) != len(_ACCELERATOR.findall(translation)):
            wrong.append(source)
    assert wrong == []


def test_the_compiled_file_says_the_same(file: Path, tmp_path: Path) -> None:
    compiled = tmp_path / "compiled.qm"
    release(file, compiled)
    assert compiled.read_bytes() == file.with_suffix(".qm").read_bytes()
    translator = QTranslator()
    assert translator.load(str(compiled))
    for source, translation in pairs(file):
        assert translator.translate("", source) == translation


def test_an_update_keeps_what_was_translated(file: Path, tmp_path: Path) -> None:
    copy = tmp_path / file.name
    copy.write_bytes(file.read_bytes())
    update(copy)
    assert pairs(copy) == pairs(file)
