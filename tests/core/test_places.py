"""The program's own data are found in a checkout and in an installed copy."""

import shutil
import subprocess
import sys
import tomllib
from pathlib import Path

import core
from core.places import assets_folder, demo_folder


def test_checkout() -> None:
    assert (demo_folder() / "logs").is_dir()
    assert (assets_folder() / "icons").is_dir()


def test_installed_copy_brings_its_own(tmp_path: Path) -> None:
    """Laid out as the wheel lays it out, with a folder of the same name beside it that is none of ours."""
    package = tmp_path / "core"
    shutil.copytree(
        Path(core.__file__).parent, package, ignore=shutil.ignore_patterns("__pycache__", "_data")
    )
    for name in ("assets", "demo_data"):
        (package / "_data" / name).mkdir(parents=True)
        (tmp_path / name).mkdir()
    code = "from core.places import *; print(assets_folder()); print(demo_folder())"
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, cwd=tmp_path, check=True
    )
    assert done.stdout.splitlines() == [
        str(package / "_data" / "assets"),
        str(package / "_data" / "demo_data"),
    ]


def test_the_wheel_carries_all_assets_but_the_pictures_of_the_readme() -> None:
    root = Path(core.__file__).parents[1]
    build = tomllib.loads((root / "pyproject.toml").read_text("utf-8"))["tool"]["hatch"]["build"]
    carried = build["targets"]["wheel"]["force-include"]
    wanted = {f"assets/{each.name}" for each in (root / "assets").iterdir()} - {"assets/pictures"}
    assert {name: target.removeprefix("core/_data/") for name, target in carried.items()} == {
        name: name for name in (*wanted, "demo_data")
    }
