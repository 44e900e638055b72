"""Pictures as files: sharper is not different, text stays text, and every file says what it shows."""

import re
import zlib
from pathlib import Path
from xml.etree import ElementTree as ET

import numpy as np
import pytest
from attrs import evolve
from numpy.typing import NDArray
from PySide6.QtGui import QImage

from core.progress import Cancelled, silent
from core.publish.choices import Pick, Publishing
from core.publish.shelf import shelf
from core.publish.sources import Sources
from core.report.pictures import Drawable
from gui.charts.sheet import Part
from gui.publish.encode import ENDINGS, file_bytes, image_of, pdf_bytes, png_bytes, svg_bytes, webp_bytes
from gui.publish.files import table_bytes
from gui.publish.making import Desk, save_picked, save_sequence
from gui.publish.picture import DrawnPicture, draw
from gui.publish.report_pictures import report_pictures
from tests.comparisons import make
from tests.gui.published import KINDS, figure_of, study_of

pytestmark = pytest.mark.usefixtures("qapp")
SVG = "{http://www.w3.org/2000/svg}"


def picture(kind: str = "comparison", machines: int = 4, **how: object) -> DrawnPicture:
    publishing = evolve(Publishing(purpose="free", width_px=800, height_px=500), **how)
    return draw([Part(figure_of(kind, machines))], publishing, study_of(machines)[0])


def desk(machines: int = 3, **how: object) -> Desk:
    study, comparison = make(machines, 3)
    sources = Sources(Drawable(study, comparison, {}, {}), 2026)
    publishing = Publishing(purpose="free", width_px=640, height_px=480)
    return Desk(sources, shelf(sources), evolve(publishing, **how))


def shades(image: QImage) -> NDArray[np.float64]:
    """The pixels as grey from 0 to 255, in rows."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    flat = np.frombuffer(grey.constBits(), np.uint8).reshape(grey.height(), grey.bytesPerLine())
    return flat[:, : grey.width()].astype(np.float64)


@pytest.mark.parametrize("kind", KINDS)
def test_a_picture_at_three_times_the_pixels_differs_only_in_sharpness(kind: str) -> None:
    drawn = picture(kind)
    once, thrice = image_of(drawn), image_of(drawn, 3.0)
    assert (thrice.width(), thrice.height()) == (3 * once.width(), 3 * once.height())
    fine = shades(thrice)
    mean = fine.reshape(once.height(), 3, once.width(), 3).mean(axis=(1, 3))
    apart = np.abs(mean - shades(once))
    # edges are smoothed in other ways at the two sizes; nothing moves, so blocks of pixels have one mean
    blocks = apart[: once.height() // 10 * 10, :].reshape(-1, 10, once.width() // 10, 10)
    signed = (mean - shades(once))[: once.height() // 10 * 10, :].reshape(blocks.shape)
    assert apart.mean() < 2.5
    assert np.abs(signed.mean(axis=(1, 3))).max() < 26


def test_a_moved_mark_would_be_seen_by_the_test_of_sharpness() -> None:
    drawn = picture()
    moved = picture(machines=5)
    difference = np.abs(shades(image_of(drawn)) - shades(image_of(moved)))
    blocks = difference[:500, :800].reshape(50, 10, 80, 10).mean(axis=(1, 3))
    assert blocks.max() > 26


def test_png_and_webp_hold_the_pixels_that_were_painted() -> None:
    image = image_of(picture())
    for data, form in ((png_bytes(image), b"PNG"), (webp_bytes(image), b"WEBP")):
        assert form in data[:16]
        read = QImage.fromData(data)
        assert read.convertToFormat(QImage.Format.Format_RGB32) == image.convertToFormat(
            QImage.Format.Format_RGB32
        )


def test_png_says_what_it_shows_and_from_which_numbers() -> None:
    drawn = picture()
    read = QImage.fromData(png_bytes(image_of(drawn)))
    assert read.text("Title") == drawn.words.title
    assert drawn.words.alt in read.text("Description")
    assert "invented data" in read.text("Description")
    assert read.text("Source") == drawn.words.numbers
    assert read.text("Software").startswith("Samepart ")


def test_a_transparent_ground_is_seen_through_and_nothing_is_laid_behind_texts() -> None:
    read = QImage.fromData(png_bytes(image_of(picture("energy against time", is_clear=True))))
    assert read.hasAlphaChannel()
    assert read.pixelColor(2, 2).alpha() == 0
    alphas = {read.pixelColor(x, y).alpha() for x in range(0, 800, 5) for y in range(0, 500, 5)}
    assert 0 in alphas
    solid = QImage.fromData(png_bytes(image_of(picture("energy against time"))))
    assert not solid.hasAlphaChannel()


@pytest.mark.parametrize("kind", KINDS)
def test_svg_shows_every_text_of_the_picture(kind: str) -> None:
    drawn = picture(kind)
    root = ET.fromstring(svg_bytes(drawn).decode())
    texts = {" ".join("".join(t.itertext()).split()) for t in root.iter(f"{SVG}text")}
    assert {" ".join(t.text.split()) for t in drawn.scene.texts if t.text.strip()} <= texts
    assert root.findtext(f"{SVG}title") == drawn.words.title
    assert drawn.words.numbers in (root.findtext(f"{SVG}desc") or "")
    assert root.get("viewBox") == "0 0 800 500"


def test_pdf_embeds_its_fonts_with_a_way_back_to_letters_and_is_one_page_of_the_picture() -> None:
    drawn = picture()
    data = pdf_bytes(drawn)
    assert data.startswith(b"%PDF-")
    assert b"/FontFile2" in data or b"/FontFile3" in data
    assert b"/ToUnicode" in data
    assert len(re.findall(rb"/Type /Page\b", data)) == 1
    box = re.search(rb"/MediaBox \[([\d. ]+)\]", data)
    assert box is not None
    assert [float(n) for n in box[1].split()] == pytest.approx([0, 0, 600, 375], abs=0.5)  # 3/4 point a pixel
    streams = [m[1] for m in re.finditer(rb"stream\r?\n(.*?)endstream", data, re.DOTALL)]
    plain = b"".join(_inflated(stream) for stream in streams)
    assert b"BT" in plain  # text objects, not outlines
    assert drawn.words.title.encode() in data
    assert "dc:source" in plain.decode("latin-1") or b"dc:source" in data


def _inflated(stream: bytes) -> bytes:
    try:
        return zlib.decompress(stream)
    except zlib.error:
        return stream


def test_every_ending_has_a_way_and_a_side_too_long_for_webp_is_told() -> None:
    drawn = picture()
    assert all(file_bytes(drawn, ending) for ending in ENDINGS)
    with pytest.raises(OSError, match="WEBP"):
        webp_bytes(QImage(17_000, 4, QImage.Format.Format_RGB32))


# saving what is picked


def test_picks_are_saved_under_their_numbers_figures_as_pictures_and_tables_as_csv(tmp_path: Path) -> None:
    picks = (Pick("energy-against-time"), Pick("table-runs"), Pick("gone"), Pick("comparison"))
    paths = save_picked(desk(picks=picks), tmp_path, "png", 2.0, silent)
    assert [path.name for path in paths] == [
        "01-energy-against-time.png",
        "02-table-runs.csv",
        "03-comparison.png",
    ]
    assert QImage(str(paths[0])).width() == 1280
    assert paths[1].read_text("utf-8").startswith("machine,")


def test_figures_on_one_picture_are_saved_once(tmp_path: Path) -> None:
    picks = (Pick("comparison"), Pick("energy-against-time"))
    paths = save_picked(desk(picks=picks, is_together=True), tmp_path, "svg", 1.0, silent)
    assert [path.name for path in paths] == ["01-together.svg"]
    words = paths[0].read_text("utf-8")
    assert "Chart 1 of 2" in words


def test_the_pictures_of_a_sequence_are_numbered_and_end_with_the_whole(tmp_path: Path) -> None:
    made = desk()
    paths = save_sequence(made, "comparison", tmp_path, "png", 1.0, silent)
    assert [path.name for path in paths] == [f"comparison-{n:02}.png" for n in range(4)]
    whole = made.picture("comparison")
    assert whole is not None
    assert paths[-1].read_bytes() == png_bytes(image_of(whole))
    ink = [float((shades(QImage(str(path))) < 128).sum()) for path in paths]
    assert ink == sorted(ink)
    assert ink[0] < ink[-1]


def test_saving_can_be_stopped_and_leaves_what_was_saved(tmp_path: Path) -> None:
    def stop(fraction: float, text: str) -> None:
        if fraction > 0.4:
            raise Cancelled

    picks = (Pick("comparison"), Pick("energy-against-time"))
    with pytest.raises(Cancelled):
        save_picked(desk(picks=picks), tmp_path, "svg", 1.0, stop)
    assert [path.name for path in tmp_path.iterdir()] == ["01-comparison.svg"]


@pytest.mark.parametrize("ending", ["csv", "xlsx", "md", "html"])
def test_a_table_is_written_by_its_ending(ending: str) -> None:
    table = desk().table("table-runs")
    assert table is not None
    data = table_bytes(table, ending)
    assert data.startswith(b"PK") if ending == "xlsx" else b"Alder" in data
    with pytest.raises(ValueError, match="docx"):
        table_bytes(table, "docx")


def test_the_report_gets_every_figure_as_drawing_and_pixels() -> None:
    made = desk()
    pictures = tuple(report_pictures(made.sources.drawable, "light", 2026))
    assert [p.key for p in pictures] == [e.key for e in made.entries if not e.is_table]
    for each in pictures:
        assert each.svg.startswith("<?xml")
        assert each.png.startswith(b"\x89PNG")
        assert each.alt.startswith("Chart")
        assert each.page


def test_text_in_the_pool_is_painted_as_in_the_window() -> None:
    from concurrent.futures import ThreadPoolExecutor

    drawn = picture()
    here = image_of(drawn)
    with ThreadPoolExecutor(2) as pool:
        there = [future.result() for future in [pool.submit(image_of, drawn) for _ in range(4)]]
    assert all(image == here for image in there)
