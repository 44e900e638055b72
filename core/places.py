"""Where the program's own data lie: beside the packages in a checkout, inside the package in a wheel."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def _folder(name: str) -> Path:
    # A wheel carries the folder inside the package; the check comes first so that an installed copy never
    # picks up a folder of the same name that happens to lie in site-packages.
    carried = _PACKAGE / "_data" / name
    return carried if carried.is_dir() else _PACKAGE.parent / name


def assets_folder() -> Path:
    """The folder of icons and explanations."""
    return _folder("assets")


def demo_folder() -> Path:
    """The folder of the demo's invented logs."""
    return _folder("demo_data")
