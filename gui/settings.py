"""What the program remembers between starts that belongs to no study. The only user of QSettings."""

from pathlib import Path
from typing import Final, Literal

from PySide6.QtCore import QByteArray, QSettings, QStandardPaths

Theme = Literal["system", "light", "dark"]
THEMES: Final[tuple[Theme, ...]] = ("system", "light", "dark")
RECENT_LIMIT: Final = 8
#: shares of the system font that View offers
ZOOMS: Final = (1.0, 1.15, 1.3, 1.5, 1.75, 2.0)


def data_folder() -> Path:
    """Folder for untitled studies; made if it is not there."""
    place = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)
    folder = Path(place) / "studies"
    folder.mkdir(parents=True, exist_ok=True)
    return folder


class Settings:
    """Theme, language, zoom, recent studies, window geometry, last folders."""

    def __init__(self, file: Path | None = None) -> None:
        self._store = (
            QSettings(str(file), QSettings.Format.IniFormat)
            if file
            else QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, "Samepart", "samepart")
        )

    @property
    def theme(self) -> Theme:
        """The fixed theme, or "system" to follow the desktop."""
        stored = str(self._store.value("theme", "system"))
        return next((t for t in THEMES if t == stored), "system")

    @theme.setter
    def theme(self, theme: Theme) -> None:
        self._store.setValue("theme", theme)

    @property
    def language(self) -> str:
        """Code of the window's language, or "system" to follow the desktop."""
        return str(self._store.value("language", "system"))

    @language.setter
    def language(self, code: str) -> None:
        self._store.setValue("language", code)

    @property
    def zoom(self) -> float:
        """Text size as a share of the system font, 1 to 2."""
        try:
            zoom = float(str(self._store.value("zoom", 1.0)))
        except ValueError:
            return 1.0
        return min(max(zoom, ZOOMS[0]), ZOOMS[-1])

    @zoom.setter
    def zoom(self, zoom: float) -> None:
        self._store.setValue("zoom", zoom)

    @property
    def recent(self) -> tuple[Path, ...]:
        """Studies opened lately that are still there, newest first."""
        stored = self._store.value("recent", [])
        # One entry comes back bare, none as an empty string.
        names = [str(n) for n in stored] if isinstance(stored, list) else [str(stored or "")]
        return tuple(Path(n) for n in names if n and Path(n).is_file())

    def add_recent(self, path: Path) -> None:
        """Put a study on top of the recent ones."""
        path = path.absolute()
        names = [str(path)] + [str(p) for p in self.recent if p != path]
        self._store.setValue("recent", names[:RECENT_LIMIT])

    @property
    def last_study(self) -> Path | None:
        """The study with a name that was open last; None if that had none, or is no longer there."""
        stored = str(self._store.value("last_study", "") or "")
        return Path(stored) if stored and Path(stored).is_file() else None

    @last_study.setter
    def last_study(self, path: Path | None) -> None:
        self._store.setValue("last_study", "" if path is None else str(path.absolute()))

    @property
    def last_folder(self) -> str:
        """Where a file dialog opens."""
        home = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
        return str(self._store.value("folder", home))

    @last_folder.setter
    def last_folder(self, folder: str) -> None:
        self._store.setValue("folder", folder)

    @property
    def geometry(self) -> QByteArray:
        """Size and place of the window as Qt writes them; empty at the first start."""
        stored = self._store.value("geometry", QByteArray())
        return stored if isinstance(stored, QByteArray) else QByteArray()

    @geometry.setter
    def geometry(self, geometry: QByteArray) -> None:
        self._store.setValue("geometry", geometry)

    @property
    def reading_panel_open(self) -> bool:
        """Whether the panel that says how a log was read is open."""
        return str(self._store.value("reading_panel", "true")) == "true"

    @reading_panel_open.setter
    def reading_panel_open(self, is_open: bool) -> None:
        self._store.setValue("reading_panel", "true" if is_open else "false")

    def sync(self) -> None:
        """Write to disk now."""
        self._store.sync()
