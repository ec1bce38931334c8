"""Looks with Pillow and hashlib at what laydown keeps of the pictures that pictures.py wrote.

    developed.py FOLDER < developed.json
A kept file is named by the SHA-256 of what is in it, shows dot for dot what the camera's file shows, and says nothing but
which way is up; its preview is upright and like the one that Pillow makes. What is no picture is refused.
"""

import hashlib
import io
import json
import sys
import warnings
from pathlib import Path

import numpy as np
from PIL import ExifTags, Image, ImageOps

from pictures import SECRET

LONGEST = 720
NEAR = 3.0
"""Mean difference from Pillow's preview, levels of grey out of 255; mirrored, these pictures differ by 20 to 40."""
PATCH = 16
"""A preview is also compared by the means of squares of so many dots: there the noise cancels."""
PATCH_NEAR = 3.0
"""Moved aside by a single dot, the worst square of these pictures differs by 4 to 6 levels."""

REASONS = {
    "empty.jpg": "Empty", "heic.jpg": "Heic", "huge.png": "TooLarge", "huge.jpg": "TooLarge", "too_many_bytes.jpg": "TooLarge",
}
"""Why a bad picture is to be refused, as core/store names it, where it is not that it is no picture."""


def dots(file):
    """What the file shows before it is turned."""
    with Image.open(file) as picture:
        return picture.mode, np.asarray(picture.convert("RGB") if picture.mode == "P" else picture)


def difference(one, other):
    return np.abs(one.astype(float) - other.astype(float))


def patches(grey):
    rows, columns = (side // PATCH * PATCH for side in grey.shape)
    return grey[:rows, :columns].astype(float).reshape(rows // PATCH, PATCH, columns // PATCH, PATCH).mean((1, 3))


def pillow_preview(upright, size):
    """The same size by averaging areas, or between dots where the picture is smaller, through a JPEG of the same quality."""
    small = io.BytesIO()
    way = Image.Resampling.BOX if upright.width > size[0] else Image.Resampling.BILINEAR
    upright.convert("RGB").resize(size, way).save(small, "JPEG", quality=82)
    return np.asarray(Image.open(small).convert("L"))


def check(source, got):
    """What is wrong with one kept picture, and how far its preview is from Pillow's."""
    wrong = []
    stored = Path(got["file"]).read_bytes()
    name = Path(got["file"]).name.split(".")[0]
    if not name == got["sha256"] == hashlib.sha256(stored).hexdigest():
        wrong.append("its name is not the SHA-256 of what is in it")
    if SECRET in stored or b"".join(bytes([letter, 0]) for letter in SECRET) in stored:
        wrong.append("it still says what its metadata said")
    before, after = Image.open(source), Image.open(io.BytesIO(stored))
    tags = dict(after.getexif())
    way_up = before.getexif().get(ExifTags.Base.Orientation, 1)
    if tags != {ExifTags.Base.Orientation: way_up}:
        wrong.append(f"its EXIF is {tags}, not the orientation {way_up} alone")
    if any(dict(after.getexif().get_ifd(ifd)) for ifd in (ExifTags.IFD.GPSInfo, ExifTags.IFD.Exif)):
        wrong.append("it has a place or a maker's note")
    told = set(after.info) - {"jfif", "jfif_version", "jfif_unit", "jfif_density", "dpi", "exif", "progressive", "progression"}
    if before.info.get("icc_profile") != after.info.get("icc_profile"):
        wrong.append("its colours have another profile")
    told.discard("icc_profile")
    if told:
        wrong.append(f"it also says {told}")
    (mode, shown), (kept_mode, kept) = dots(source), dots(got["file"])
    if mode != kept_mode or not np.array_equal(shown, kept):
        wrong.append("it does not show dot for dot what the camera's file shows")

    upright = ImageOps.exif_transpose(before)
    if (got["width"], got["height"]) != upright.size:
        wrong.append(f"its size is given as {got['width']} × {got['height']}, upright it is {upright.size}")
    preview = Image.open(got["preview"])
    if preview.getexif().get(ExifTags.Base.Orientation, 1) != 1:
        wrong.append("its preview is not upright as it lies there")
    # A small picture is not enlarged.
    scale = min(1, LONGEST / max(upright.size))
    expected = [side * scale for side in upright.size]
    if max(difference(np.array(preview.size), np.array(expected))) > 1:
        wrong.append(f"its preview is {preview.size}")
    ours, theirs = np.asarray(preview.convert("L")), pillow_preview(upright, preview.size)
    far = difference(ours, theirs).mean(), difference(patches(ours), patches(theirs)).max()
    if far[0] > NEAR or far[1] > PATCH_NEAR:
        wrong.append(f"its preview is {far[0]:.2f} levels of grey from Pillow's, a square of it {far[1]:.2f}")
    return wrong, far


def main():
    # Pillow warns of the mock of a list of further pictures.
    warnings.filterwarnings("ignore", module="PIL")
    folder = Path(sys.argv[1])
    developed = json.load(sys.stdin)
    failures, far = [], []
    there = {path.name for path in folder.iterdir() if path.is_file()}
    if set(developed["good"]) != there or set(developed["bad"]) != {path.name for path in (folder / "bad").iterdir()}:
        failures.append("not every picture was developed")
    wrong = {}
    for name, got in developed["good"].items():
        if "refused" in got:
            wrong[name] = [f"is refused: {got['refused']}"]
            continue
        wrong[name], apart = check(folder / name, got)
        far.append(apart)
    for name, got in developed["bad"].items():
        refused = REASONS.get(name, "NoPicture") == got.get("refused")
        wrong[name] = [] if refused else [f"is not refused as it should be: {got.get('refused', 'it was kept')}"]
    failures += [f"{name}: {what}" for name, all_of_it in wrong.items() for what in all_of_it]
    mean, worst = np.array(far).max(0)
    print(f"{len(far)} pictures kept, {len(developed['bad'])} to be refused; previews at most {mean:.2f} levels of grey from "
          f"Pillow's, a square of {PATCH} dots at most {worst:.2f}")
    if failures:
        sys.exit("\n".join(failures))


if __name__ == "__main__":
    main()
