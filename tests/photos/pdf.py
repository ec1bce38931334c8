"""Paints pages with Pillow, and looks with PDFium at the document that laydown binds of them.

    pdf.py make FOLDER        writes FOLDER/page1.jpg and page2.jpg
    pdf.py check FOLDER       looks at FOLDER/bound.pdf
Every page is A4 (ISO 216) and shows what was painted, and nothing else.
"""

import sys
from pathlib import Path

import numpy as np
import pypdfium2
from PIL import Image, ImageDraw

TITLE = "Cone 6, Garden kiln – Öfen"
A4_MM = (210.0, 297.0)
INCH_MM = 25.4
DOTS_AN_INCH = 200


def make(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    for number in (1, 2):
        page = Image.new("RGB", (1654, 2339), "white")
        ImageDraw.Draw(page).rectangle((100, 200 * number, 900, 200 * number + 300), fill=(30, 90 * number, 160))
        page.save(folder / f"page{number}.jpg", quality=88)


def check(folder: Path) -> None:
    document = pypdfium2.PdfDocument(folder / "bound.pdf")
    assert document.get_metadata_dict()["Title"] == TITLE, document.get_metadata_dict()
    assert len(document) == 2, len(document)
    worst = 0.0
    for number, page in enumerate(document, start=1):
        size = [points / 72 * INCH_MM for points in page.get_size()]
        assert all(abs(have - want) < 0.01 for have, want in zip(size, A4_MM)), size
        painted = Image.open(folder / f"page{number}.jpg")
        shown = page.render(scale=DOTS_AN_INCH / 72).to_pil().convert("RGB").resize(painted.size)
        worst = max(worst, float(np.abs(np.asarray(shown, float) - np.asarray(painted, float)).mean()))
    # A page upside down, or one taken for the other, differs by tens of grey levels.
    assert worst < 1.0, worst
    print(f"The bound pages: 2 drawn by PDFium, A4, at most {worst:.2f} grey levels from what was painted.")


if __name__ == "__main__":
    {"make": make, "check": check}[sys.argv[1]](Path(sys.argv[2]))
