"""With what was measured: meters and logs."""

from collections.abc import Iterator, Mapping

from core.language import tr
from core.report.blocks import Block, Heading, Paragraph, TableBlock
from core.tables import Table


def measured(shown: Mapping[str, Table]) -> Iterator[Block]:
    """The part on meters and logs."""
    if "meters" in shown:
        yield Heading(tr("Meters and logs"))
        yield TableBlock(shown["meters"])
    if "logs" in shown:
        yield TableBlock(shown["logs"])
        yield Paragraph(
            tr(
                "A bundle saved beside this report holds the study and, if its maker chose so, the logs: "
                "with it “samepart compare BUNDLE” finds every figure again."
            ),
            "note",
        )
