"""The report as Markdown, with pictures as links to the files beside it."""

from core.found.markdown import escaped
from core.language import tr
from core.report.blocks import Block, Bullets, Heading, Paragraph, Report, TableBlock
from core.tables import to_markdown


def to_markdown_file(report: Report) -> str:
    """The report as Markdown text."""
    parts = [_block(block) for block in report.blocks]
    made = tr("Made with {program} on {day}.", program=escaped(report.program), day=report.made.isoformat())
    return "\n\n".join(part for part in (*parts, made) if part) + "\n"


def _block(block: Block) -> str:
    if isinstance(block, Heading):
        return f"{'#' * block.level} {escaped(block.text)}"
    if isinstance(block, Paragraph):
        return _paragraph(block)
    if isinstance(block, Bullets):
        return "\n".join(f"- {escaped(line)}" for line in block.lines)
    if isinstance(block, TableBlock):
        return to_markdown(block.table, level=4).strip()
    return f"![{escaped(block.picture.title)}]({block.picture.key}.png)"


def _paragraph(block: Paragraph) -> str:
    text = escaped(block.text)
    if block.role in ("answer", "number"):
        text = f"**{text}**"
    lead = f"**{escaped(block.lead)}**" if block.lead else ""
    return f"{lead} {text}".strip()
