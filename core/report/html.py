"""The report as one HTML file with everything inside: no script, nothing fetched, fit to print.

Rules: every text is escaped; pictures stand inside as SVG, those that hold anything but drawing as images of
their own that can do nothing; a policy in the head forbids the browser to load or run anything.
"""

import base64
import re
from collections.abc import Callable
from html import escape
from typing import Final

from core.language import spoken, tr
from core.report.blocks import Block, Bullets, Heading, Paragraph, Report, TableBlock
from core.report.pictures import Picture
from core.tables import to_html

_POLICY: Final = "default-src 'none'; style-src 'unsafe-inline'; img-src data:"
#: of a drawing these are no part
_ACTIVE: Final = re.compile(
    r"<\s*(?:script|foreignobject|iframe|image|use|a|animate|set)\b|\son\w+\s*=|javascript:|<!entity|@import",
    re.IGNORECASE,
)
_ID: Final = re.compile(r"(?P<before>\sid=\"|url\(#|href=\"#)(?P<id>[^\")]+)")
_SVG_TAG: Final = re.compile(r"<svg\b[^>]*>")
_SIZE: Final = re.compile(r"\s(?:width|height)=\"[^\"]*\"")
_TITLES: Final = re.compile(r"<title>.*?</title>|<desc>.*?</desc>", re.DOTALL)

STYLE: Final = """
:root { --paper: #fbfaf7; --card: #ffffff; --ink: #20242b; --muted: #5f6772; --rule: #e3dfd5;
  --caution: #8a5200; color-scheme: light; }
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); }
body { font: 16px/1.5 system-ui, sans-serif; max-width: 60rem; margin: 0 auto; padding: 2rem 1.5rem 4rem; }
h1 { font-size: 1.6rem; line-height: 1.25; margin: 0 0 1rem; }
h2 { font-size: 1.25rem; margin: 2.5rem 0 0.75rem; padding-top: 1rem; border-top: 1px solid var(--rule); }
h3 { font-size: 1rem; margin: 1.75rem 0 0.5rem; }
p, ul { margin: 0.5rem 0; max-width: 46rem; }
ul { padding-left: 1.25rem; }
li { margin: 0.25rem 0; }
p.answer { font-size: 1.2rem; line-height: 1.4; }
p.conditions, p.note, table + p, figcaption { color: var(--muted); font-size: 0.9rem; }
p.number { font-size: 1.2rem; font-variant-numeric: tabular-nums; }
p.caution { border-left: 4px solid var(--caution); padding-left: 0.75rem; }
ul.formula { list-style: none; padding-left: 0.75rem; border-left: 1px solid var(--rule);
  font-variant-numeric: tabular-nums; }
nav ul { columns: 2; list-style: none; padding: 0; }
a { color: #0b5fa5; }
figure { margin: 1.25rem 0; }
figure svg, figure img { display: block; width: 100%; height: auto; background: var(--card);
  border: 1px solid var(--rule); }
figcaption { margin-top: 0.5rem; max-width: 46rem; }
.wide { overflow-x: auto; margin: 1rem 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.9rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; font-weight: bold; padding: 0.25rem 0; }
th, td { padding: 0.3rem 0.6rem; border-bottom: 1px solid var(--rule); vertical-align: top; }
th { font-weight: bold; vertical-align: bottom; }
.left { text-align: left; }
.right { text-align: right; }
td.right { white-space: nowrap; }
footer { margin-top: 3rem; border-top: 1px solid var(--rule); padding-top: 0.75rem; color: var(--muted);
  font-size: 0.9rem; }
@media print {
  html { background: none; }
  body { max-width: none; padding: 0; font-size: 10pt; }
  nav { display: none; }
  .wide { overflow: visible; }
  table { font-size: 7.5pt; }
  th, td { padding: 0.15rem 0.3rem; }
  h1, h2, h3, caption { break-after: avoid; }
  figure, tr, p, li { break-inside: avoid; }
  thead { display: table-header-group; }
  @page { margin: 18mm 16mm; }
}
"""


def to_html_file(report: Report) -> str:
    """The report as the text of one HTML file."""
    made = report.made.isoformat()
    return f"""<!DOCTYPE html>
<html lang="{spoken()}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="{_POLICY}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="{escape(report.program)}">
<meta name="date" content="{made}">
<title>{escape(report.title)}</title>
<style>{STYLE}</style>
</head>
<body>
<main>
{_body(report)}
</main>
<footer>{escape(tr("Made with {program} on {day}.", program=report.program, day=made))}</footer>
</body>
</html>
"""


def blocks_html(report: Report, picture: Callable[[Picture, int], str]) -> str:
    """The blocks as HTML, with pictures as `picture` writes them.

    Parameters
    ----------
    report : Report
    picture : callable
        Writes a picture, which has a number of its own in this report.
    """
    return "\n".join(_block(block, i, picture) for i, block in enumerate(report.blocks))


def _body(report: Report) -> str:
    """The blocks, with the list of contents behind the answer."""
    written = [_block(block, i, _figure) for i, block in enumerate(report.blocks)]
    parts = (i for i, block in enumerate(report.blocks) if isinstance(block, Heading) and block.level == 2)
    written.insert(next(parts, len(written)), _contents(report))
    return "\n".join(written)


def _contents(report: Report) -> str:
    parts = [
        f'<li><a href="#part-{i}">{escape(block.text)}</a></li>'
        for i, block in enumerate(report.blocks)
        if isinstance(block, Heading) and block.level == 2
    ]
    return f'<nav aria-label="{escape(tr("Contents"))}"><ul>{"".join(parts)}</ul></nav>' if parts else ""


def _block(block: Block, number: int, picture: Callable[[Picture, int], str]) -> str:
    if isinstance(block, Heading):
        return f'<h{block.level} id="part-{number}">{escape(block.text)}</h{block.level}>'
    if isinstance(block, Paragraph):
        lead = f"<strong>{escape(block.lead)}</strong> " if block.lead else ""
        return f"<p{_class(block.role)}>{lead}{escape(block.text)}</p>"
    if isinstance(block, Bullets):
        lines = "".join(f"<li>{escape(line)}</li>" for line in block.lines)
        return f"<ul{_class(block.role)}>{lines}</ul>"
    if isinstance(block, TableBlock):
        return f'<div class="wide">\n{to_html(block.table)}\n</div>'
    return picture(block.picture, number)


def _class(role: str) -> str:
    return f' class="{role}"' if role else ""


def _figure(picture: Picture, number: int) -> str:
    return (
        f'<figure id="{escape(picture.key)}">\n{_drawing(picture, number)}\n'
        f"<figcaption>{escape(picture.title)}</figcaption>\n</figure>"
    )


def _drawing(picture: Picture, number: int) -> str:
    """The SVG itself, its names made the picture's own; as an image where it holds more than a drawing."""
    start = _SVG_TAG.search(picture.svg)
    if start is None or _ACTIVE.search(picture.svg):
        packed = base64.b64encode(picture.svg.encode()).decode()
        return f'<img alt="{escape(picture.alt)}" src="data:image/svg+xml;base64,{packed}">'
    svg = _ID.sub(lambda m: f"{m['before']}p{number}-{m['id']}", picture.svg[start.start() :])
    # told once, as the picture's label: browsers show a title wherever one points
    svg = _TITLES.sub("", svg)
    tag = _SIZE.sub("", start.group())
    label = f' role="img" aria-label="{escape(picture.alt)}">'
    return svg.replace(start.group(), tag[:-1] + label, 1).strip()
