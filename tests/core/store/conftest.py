"""A study file of which a test may do anything."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from core.store.file import StudyFile
from tests.core.store.files import created


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "clips.samepart"


@pytest.fixture
def file(path: Path) -> Iterator[StudyFile]:
    with created(path) as file:
        yield file
