"""Pictures as cameras leave them, written by Pillow: each way of holding the phone, with the place and the maker's notes
in their metadata, and some that are no pictures.

    pictures.py FOLDER
writes the pictures and, in FOLDER/bad, those that must be refused.
"""

import struct
import sys
import zlib
from pathlib import Path

import numpy as np
from PIL import ExifTags, Image, ImageCms, PngImagePlugin

SIZE = (1600, 1100)
SECRET = b"SECRET"
"""Stands in everything that the metadata say beside which way is up; no kept file may hold it."""


def scene(size=SIZE):
    """A picture of which no two corners are alike, with broad shapes and fine noise."""
    width, height = size
    x, y = np.meshgrid(np.linspace(0, 1, width), np.linspace(0, 1, height))
    red = 60 + 150 * x
    green = 200 - 130 * y + 30 * np.sin(40 * x)
    blue = 90 + 100 * ((x - 0.3) ** 2 + (y - 0.6) ** 2 < 0.05)
    noise = np.random.default_rng(width).normal(0, 4, (height, width, 3))
    return Image.fromarray(np.clip(np.stack([red, green, blue], -1) + noise, 0, 255).astype(np.uint8))


def metadata(orientation):
    exif = Image.Exif()
    exif[ExifTags.Base.Orientation] = orientation
    exif[ExifTags.Base.Make] = f"{SECRET.decode()} cameras"
    exif[ExifTags.Base.DateTime] = "2026:01:02 03:04:05"
    exif.get_ifd(ExifTags.IFD.Exif)[ExifTags.Base.MakerNote] = SECRET * 40
    place = exif.get_ifd(ExifTags.IFD.GPSInfo)
    place[ExifTags.GPS.GPSLatitudeRef], place[ExifTags.GPS.GPSLatitude] = "N", (12.0, 34.0, 56.0)
    place[ExifTags.GPS.GPSLongitudeRef], place[ExifTags.GPS.GPSLongitude] = "E", (65.0, 43.0, 21.0)
    place[ExifTags.GPS.GPSAreaInformation] = SECRET
    return exif


def segment(marker, body):
    return bytes([0xFF, marker]) + struct.pack(">H", len(body) + 2) + body


def with_segments(jpeg, *segments):
    """With segments that Pillow does not write, right at the beginning."""
    return jpeg[:2] + b"".join(segments) + jpeg[2:]


def good(folder):
    picture = scene()
    for orientation in range(1, 9):
        picture.save(folder / f"held_{orientation}.jpg", quality=88, exif=metadata(orientation), comment=SECRET)
    picture.save(folder / "progressive.jpg", quality=88, progressive=True, exif=metadata(6))
    picture.convert("L").save(folder / "grey.jpg", quality=88, exif=metadata(8))
    picture.save(folder / "no_metadata.jpg", quality=88)
    scene((400, 300)).save(folder / "small.jpg", quality=88, exif=metadata(3))
    scene((300, 2400)).save(folder / "narrow.jpg", quality=88, exif=metadata(5))
    held = (folder / "held_6.jpg").read_bytes()
    xmp = segment(0xE1, b"http://ns.adobe.com/xap/1.0/\0<x>" + SECRET + b"</x>")
    makers = segment(0xE5, SECRET), segment(0xED, b"Photoshop 3.0\0" + SECRET), segment(0xFE, SECRET)
    (folder / "makers_segments.jpg").write_bytes(with_segments(held, xmp, *makers))
    # As phones do for moving pictures and for a second picture of the light: the first says so, the second follows it.
    (folder / "says_of_a_second.jpg").write_bytes(with_segments(held, segment(0xE2, b"MPF\0II*\0" + SECRET)))
    (folder / "second_behind.jpg").write_bytes(held + with_segments(held, xmp))
    colours = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    picture.save(folder / "colours.jpg", quality=88, exif=metadata(2), icc_profile=colours)
    picture.save(folder / "colours.png", icc_profile=colours)
    text = PngImagePlugin.PngInfo()
    text.add_text("Comment", SECRET.decode())
    text.add_text("Packed", SECRET.decode() * 50, zip=True)
    text.add_itxt("XML:com.adobe.xmp", SECRET.decode())
    picture.save(folder / "text.png", exif=metadata(6), pnginfo=text)
    picture.convert("L").save(folder / "grey.png", pnginfo=text)
    private = PngImagePlugin.PngInfo()
    private.add(b"prVt", SECRET)
    private.add(b"xyZz", SECRET, after_idat=True)
    picture.save(folder / "private.png", exif=metadata(8), pnginfo=private, dpi=(300, 300))
    picture.save(folder / "animated.png", save_all=True, append_images=[scene((1600, 1100)).rotate(180)], pnginfo=private)
    (folder / "behind_the_end.png").write_bytes((folder / "grey.png").read_bytes() + SECRET)
    scene((500, 400)).quantize(64).save(folder / "palette.png", exif=metadata(7))


def bad(folder):
    jpeg, png = (folder.parent / "held_1.jpg").read_bytes(), (folder.parent / "text.png").read_bytes()

    def chunk(kind, body):
        return struct.pack(">I", len(body)) + kind + body + struct.pack(">I", zlib.crc32(kind + body))

    # 10 000 by 7 000 dots: a header and next to nothing behind it.
    huge = png[:8] + chunk(b"IHDR", struct.pack(">IIBBBBB", 10_000, 7_000, 8, 2, 0, 0, 0))
    huge += chunk(b"IDAT", zlib.compress(b"\0" * 1_000)) + chunk(b"IEND", b"")
    frame = jpeg.index(b"\xff\xc0")
    huge_jpeg = jpeg[: frame + 5] + struct.pack(">HH", 7_000, 10_000) + jpeg[frame + 9 :]
    heic = b"\0\0\0\x18ftypheic\0\0\0\0mif1heic" + b"\0" * 2_000
    for name, content in {
        "empty.jpg": b"", "text.jpg": b"This is a letter and no picture.\n" * 50, "heic.jpg": heic, "cut_header.jpg": jpeg[:300],
        "cut_quarter.jpg": jpeg[: len(jpeg) // 4], "cut_half.jpg": jpeg[: len(jpeg) // 2], "cut_end.jpg": jpeg[: len(jpeg) * 99 // 100],
        "cut.png": png[: len(png) // 2], "huge.png": huge, "huge.jpg": huge_jpeg,
        "too_many_bytes.jpg": jpeg + b"\0" * (64 << 20),
    }.items():
        (folder / name).write_bytes(content)


def main():
    folder = Path(sys.argv[1])
    (folder / "bad").mkdir(parents=True, exist_ok=True)
    good(folder)
    bad(folder / "bad")


if __name__ == "__main__":
    main()
