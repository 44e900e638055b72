"""Where the program's own data lie: beside the packages in a checkout, inside the package in a wheel."""

from pathlib import Path

from core.language import spoken

_PACKAGE = Path(__file__).resolve().parent


def _folder(name: str) -> Path:
    # A wheel carries the folder inside the package; the check comes first so that an installed copy never
    # picks up a folder of the same name that happens to lie in site-packages.
    carried = _PACKAGE / "_data" / name
    return carried if carried.is_dir() else _PACKAGE.parent / name


def assets_folder() -> Path:
    """The folder of icons and explanations."""
    return _folder("assets")


def explanation(topic: str) -> Path:
    """The page of ``assets/explain`` about a topic, in the language of the window where there is one.

    Parameters
    ----------
    topic : str
        Name of the page, without suffix.

    Returns
    -------
    Path
        In the folder of the language, or the English one; it need not exist.
    """
    folder = assets_folder() / "explain"
    translated = folder / spoken() / f"{topic}.md"
    return translated if translated.is_file() else folder / f"{topic}.md"


def demo_folder() -> Path:
    """The folder of the demo's invented logs."""
    return _folder("demo_data")
