import itertools

import pytest

from gui.look import DARK, FILLS, LIGHT, MARKERS, Look, contrast, marker_path


@pytest.mark.parametrize("tokens", [LIGHT, DARK])
def test_text_is_legible_on_every_ground(tokens):
    for ground in (tokens.paper, tokens.card, tokens.side):
        assert contrast(tokens.ink, ground) >= 13
        for name in ("muted", "link", "caution", "problem"):
            assert contrast(getattr(tokens, name), ground) >= 4.85, name


@pytest.mark.parametrize("dark", [False, True])
def test_machine_lines_are_told_from_the_ground(dark):
    look = Look.of(dark=dark)
    for slot in range(6):
        for ground in (look.tokens.paper, look.tokens.card):
            assert contrast(look.machine(slot).line, ground) >= 3.0


def test_first_24_machines_differ_in_colour_or_marker():
    look = Look.of(dark=False)
    pairs = {(look.machine(s).fill, look.machine(s).marker) for s in range(24)}
    assert len(pairs) == 24
    assert len({look.machine(s).marker for s in range(8)}) == 8
    assert [look.machine(s).fill for s in range(6)] == list(FILLS)


def test_markers_have_about_one_area_and_differ_in_shape():
    areas = {}
    for marker in MARKERS:
        polygon = marker_path(marker, 100).toFillPolygon()
        points = [(p.x(), p.y()) for p in polygon]
        areas[marker] = abs(sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in itertools.pairwise(points))) / 2
    assert max(areas.values()) / min(areas.values()) < 1.35, areas


def test_scale_multiplies_type_and_lengths():
    look = Look.of(dark=False, text_px=13)
    assert look.scaled(2).font().pixelSize() == 26
    assert look.scaled(2).px(4) == 8


def test_contrast_is_that_of_published_pairs():
    """W3C, "Understanding WCAG 2.2", 1.4.3: black on white 21:1, #767676 just passes (from memory)."""
    assert contrast("#000000", "#FFFFFF") == pytest.approx(21.0)
    assert contrast("#FFFFFF", "#767676") == contrast("#767676", "#FFFFFF") == pytest.approx(4.54, abs=0.005)
    assert contrast("#777777", "#FFFFFF") < 4.5


@pytest.mark.parametrize("tokens", [LIGHT, DARK])
def test_words_stay_legible_where_a_row_is_chosen(tokens):
    assert contrast(tokens.ink, tokens.selection) >= 4.5
