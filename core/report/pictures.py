"""Pictures as the report, the bundle and the files of ``--out`` take them: drawn elsewhere, bytes here."""

from collections.abc import Mapping
from typing import Literal

from attrs import frozen

from core.activity import Activity
from core.results.values import Comparison
from core.study import Study
from core.traces import Trace

Style = Literal["light", "dark"]


@frozen
class Picture:
    """One picture of the study, in both forms.

    Parameters
    ----------
    key : str
        Name in files, without ending: small letters, digits and hyphens, such as ``"energy-against-time"``.
    title : str
        What it shows, in a few words; stands above it.
    alt : str
        What a reader who cannot see it should know, in whole sentences.
    svg : str
        The picture as SVG whose text is text.
    png : bytes
        The same as a PNG file; empty where only the SVG is wanted.
    page : str
        Title of the page that shows it; empty for none.
    """

    key: str
    title: str
    alt: str
    svg: str
    png: bytes = b""
    page: str = ""


@frozen(eq=False)
class Drawable:
    """What pictures are drawn of: a study with everything that was read and computed.

    ``traces`` and ``activities`` are by log id; a log that is missing there has not been read.
    """

    study: Study
    comparison: Comparison
    traces: Mapping[str, Trace]
    activities: Mapping[str, Activity]
