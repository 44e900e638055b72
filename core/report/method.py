"""The method with its sources, and the cautions."""

import re
from collections.abc import Iterator

from core.found.energy import counted_from
from core.language import mark, tr
from core.places import explanation
from core.publish.sources import Sources
from core.report.blocks import Block, Bullets, Heading, Paragraph

#: a paragraph of the page of cautions: a few words in bold, then the text
_LED = re.compile(r"\*\*(?P<lead>[^*]+)\*\*\s*(?P<text>.*)", re.DOTALL)

STEPS: tuple[tuple[str, str], ...] = (
    (
        mark("Energy."),
        mark(
            "At the plug, from the log’s power by what each value stands for (sampled, averaged, on change) "
            "or from its energy counter, whichever is less unsure; over gaps the counter decides, else the "
            "whole plausible range counts as uncertainty."
        ),
    ),
    (
        mark("Runs."),
        mark(
            "Found in the log by levels of power learnt from that log, never by fixed watts; edges that a "
            "person set win. Operating states are called off, standby, warm-up, processing and cooling, in "
            "the sense of ISO 14955-1."
        ),
    ),
    (
        mark("Intervals."),
        mark(
            "95 %, after the GUM [1]: every source of uncertainty is one input; what two runs share, such "
            "as the gain of one meter, adds up in a mean and cancels in a ratio. The effective degrees of "
            "freedom give the factor of Student’s t."
        ),
    ),
    (
        mark("Differences."),
        mark(
            "A difference between two machines counts as shown where both the repeats alone (Welch’s test "
            "[2] for two machines, that of Games and Howell [3] for more) and the ratio with what the "
            "meters leave open (adjusted for all pairs by Holm’s way [4]) have a p below 0.05. Otherwise "
            "none is shown, which does not mean that there is no difference."
        ),
    ),
    (
        mark("Beds."),
        mark(
            "The bed’s share is found by a meter of its own, by a run without it, by a hold test, or from "
            "the switching of its heater, in this order; each value names its way. The least that a plate "
            "of a bed’s size must lose is natural convection on both faces and radiation [5]."
        ),
    ),
)
SOURCES: tuple[str, ...] = (
    "[1] JCGM 100:2008, Guide to the expression of uncertainty in measurement: 4.2, 4.3, 5.2, annex G.",
    "[2] B. L. Welch, The generalization of ‘Student’s’ problem when several different population variances "
    "are involved, Biometrika 34 (1947) 28-35.",
    "[3] P. A. Games and J. F. Howell, Pairwise multiple comparison procedures with unequal N’s and/or "
    "variances, Journal of Educational Statistics 1 (1976) 113-125.",
    "[4] S. Holm, A simple sequentially rejective multiple test procedure, Scandinavian Journal of "
    "Statistics 6 (1979) 65-70.",
    "[5] F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer: natural convection on "
    "horizontal plates.",
)


def method(sources: Sources) -> Iterator[Block]:
    """The part on the method, as it was used for this study."""
    comparison = sources.comparison
    yield Heading(tr("Method"))
    yield Paragraph(
        tr("{counted} The same for all machines.", counted=counted_from(comparison.boundary)),
        lead=tr("What counts."),
    )
    for lead, text in STEPS:
        yield Paragraph(tr(text), lead=tr(lead))
    yield Heading(tr("Sources"), 3)
    yield Bullets(SOURCES)


def cautions() -> Iterator[Block]:
    """The page of cautions, word for word."""
    text = explanation("cautions").read_text(encoding="utf-8")
    yield Heading(tr("Cautions"))
    for paragraph in text.split("\n\n"):
        if paragraph.startswith("#") or not paragraph.strip():
            continue
        flat = " ".join(paragraph.split())
        led = _LED.match(flat)
        yield Paragraph(led["text"], "caution", led["lead"]) if led else Paragraph(flat, "caution")
