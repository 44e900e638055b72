"""Menu entry, file types and icons for a Linux desktop: complete, and true to what the program writes."""

import os
import shutil
import subprocess
from configparser import ConfigParser
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest
from PySide6.QtGui import QImage

from core import edits
from core.bundle.manifest import BUNDLE_SUFFIX
from core.edits import Edit
from core.history import History
from core.store.file import StudyFile
from gui.study_files import STUDY_SUFFIX
from tests.screens.pictures import ICON_SIZES, write_icons

LINUX = Path(__file__).parents[2] / "assets" / "linux"
INFO = "{http://www.freedesktop.org/standards/shared-mime-info}"


def test_the_menu_entry_starts_the_program_with_files() -> None:
    entry = ConfigParser(interpolation=None)
    entry.optionxform = str  # type: ignore[assignment,method-assign]
    entry.read(LINUX / "samepart.desktop", encoding="utf-8")
    desktop = entry["Desktop Entry"]
    assert desktop["Type"] == "Application"
    assert desktop["Exec"] == "samepart %F"
    assert {"Name", "Comment", "Icon", "Categories"} <= set(desktop)
    types = {m.get("type") for m in ET.parse(LINUX / "samepart.xml").getroot().iter(f"{INFO}mime-type")}
    assert set(desktop["MimeType"].strip(";").split(";")) == types


def test_file_types_are_known_by_name_and_by_what_the_program_writes(tmp_path: Path) -> None:
    root = ET.parse(LINUX / "samepart.xml").getroot()
    globs = {glob.get("pattern") for glob in root.iter(f"{INFO}glob")}
    assert globs == {f"*{STUDY_SUFFIX}", f"*{BUNDLE_SUFFIX}"}
    first, second = root.iter(f"{INFO}match")
    made = StudyFile.create(tmp_path / "a.samepart", History.start(Edit(edits.new_study("s").study, "Begin")))
    assert isinstance(made, StudyFile)
    made.close()
    data = (tmp_path / "a.samepart").read_bytes()
    assert data.startswith((first.get("value") or "").replace("\\0", "\0").encode())
    at = int(second.get("offset") or 0)
    assert int.from_bytes(data[at : at + 4], "big") == int(second.get("value") or "", 16)


@pytest.mark.usefixtures("qapp")
def test_icons_are_those_of_the_drawing(tmp_path: Path) -> None:
    drawn = write_icons(tmp_path)
    assert [path.name for path in drawn] == [f"{size}.png" for size in ICON_SIZES]
    for path, size in zip(drawn, ICON_SIZES, strict=True):
        kept = QImage(str(LINUX / "icons" / path.name))
        assert (kept.width(), kept.height()) == (size, size)
        assert kept.hasAlphaChannel()
        # other versions of Qt may smooth edges otherwise
        middle = kept.pixelColor(size // 2, size // 2), QImage(str(path)).pixelColor(size // 2, size // 2)
        assert middle[0] == middle[1]


@pytest.mark.skipif(shutil.which("sh") is None, reason="needs a shell")
def test_they_are_installed_for_one_user_and_taken_away_again(tmp_path: Path) -> None:
    place = tmp_path / "a folder with spaces"
    surroundings = {"PATH": os.environ["PATH"], "HOME": str(tmp_path), "XDG_DATA_HOME": str(place)}
    for arguments, there in (([], True), (["remove"], False)):
        run = [shutil.which("sh") or "sh", str(LINUX / "install.sh"), *arguments]
        subprocess.run(run, env=surroundings, check=True, capture_output=True, timeout=60)
        assert (place / "applications" / "samepart.desktop").exists() is there
        assert (place / "mime" / "packages" / "samepart.xml").exists() is there
        assert (place / "icons" / "hicolor" / "48x48" / "apps" / "samepart.png").exists() is there
        assert (place / "icons" / "hicolor" / "scalable" / "apps" / "samepart.svg").exists() is there
