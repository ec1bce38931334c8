"""Photographs of pots whose shape is known, drawn by ray: true perspective, uneven light, shadow, noise, handle, tilt.

Nothing here is translated from the Rust code: a pot is a stack of level circles, each of which a pinhole camera sees as an
ellipse; together they cover the pixels that the pot covers. Every picture follows from its number alone.

    render.py FOLDER COUNT [FIRST]
writes COUNT pictures, numbered from FIRST (0), and truth.json, and a folder of pictures that must be refused.
"""

import json
import math
import sys
from multiprocessing import Pool
from pathlib import Path

import numpy as np
from PIL import ExifTags, Image, ImageDraw, ImageFilter
from scipy.interpolate import PchipInterpolator

CAMERA = 600.0
"""From lens to axis, mm."""
SIZE = (1600, 1200)

# Height and radius of a pot's outside in parts of its height; every picture stretches one of them a little.
KINDS = {
    "straight mug": [(0, 0.40), (0.04, 0.43), (0.1, 0.435), (0.55, 0.435), (1, 0.435)],
    "rounded mug": [(0, 0.33), (0.08, 0.41), (0.25, 0.49), (0.5, 0.52), (0.75, 0.47), (0.9, 0.44), (1, 0.45)],
    "tumbler": [(0, 0.27), (0.3, 0.30), (0.7, 0.345), (1, 0.37)],
    "deep bowl": [(0, 0.35), (0.07, 0.34), (0.14, 0.43), (0.3, 0.6), (0.55, 0.74), (0.8, 0.81), (1, 0.84)],
    "bottle": [(0, 0.18), (0.05, 0.21), (0.3, 0.25), (0.55, 0.24), (0.7, 0.17), (0.8, 0.095), (0.9, 0.08), (1, 0.092)],
    "jar": [(0, 0.35), (0.05, 0.42), (0.25, 0.48), (0.5, 0.5), (0.78, 0.46), (0.9, 0.41), (1, 0.40)],
    "vase": [(0, 0.15), (0.2, 0.23), (0.42, 0.28), (0.65, 0.25), (0.85, 0.18), (0.94, 0.18), (1, 0.21)],
    "bowl": [(0, 0.5), (0.08, 0.49), (0.15, 0.62), (0.35, 0.87), (0.6, 1.05), (0.85, 1.16), (1, 1.2)],
    "planter": [(0, 0.35), (0.06, 0.37), (0.45, 0.43), (0.85, 0.49), (0.92, 0.515), (1, 0.52)],
}

FLAT = {
    "shallow bowl": [(0, 0.62), (0.1, 0.61), (0.16, 0.78), (0.4, 1.25), (0.7, 1.62), (0.9, 1.78), (1, 1.82)],
    "plate": [(0, 2.5), (0.15, 2.48), (0.3, 3.05), (0.6, 3.75), (0.85, 4.2), (1, 4.4)],
}
"""Pieces so flat that a degree of the lens changes their area by several per cent: to be refused."""

TALL = {
    "bottle": (170, 260), "vase": (150, 240), "deep bowl": (70, 110), "bowl": (55, 85),
    "shallow bowl": (45, 65), "plate": (24, 30),
}
"""Least and greatest height of a kind, mm."""

GROUNDS = [(196, 198, 200), (214, 206, 190), (170, 186, 200), (60, 62, 66), (44, 54, 70), (200, 200, 188), (90, 110, 96)]
CLAYS = [(150, 92, 66), (236, 228, 214), (108, 74, 58), (74, 92, 120), (222, 204, 180), (60, 54, 52), (128, 140, 112), (120, 119, 117)]


def luma(colour):
    return 0.3 * colour[0] + 0.59 * colour[1] + 0.11 * colour[2]


class Pot:
    def __init__(self, random, kind=None):
        self.kind = kind or random.choice(list(KINDS))
        shape = (KINDS | FLAT)[self.kind]
        stretch = random.uniform(0.92, 1.08)
        tall = TALL.get(self.kind, (80, 150))
        self.height = random.uniform(*tall)
        heights = np.array([height for height, _ in shape]) * self.height
        radii = np.array([radius for _, radius in shape]) * self.height * stretch
        self.wall = PchipInterpolator(heights, radii)
        self.lip = random.uniform(1.0, 2.5)

    def radius(self, height):
        """Half width of the outside; the lip turns inwards in a quarter of a circle."""
        above = np.maximum(np.asarray(height) - (self.height - self.lip), 0)
        return self.wall(height) - self.lip + np.sqrt(np.maximum(self.lip**2 - above**2, 0))

    def profile(self, count=400):
        # The lip is drawn from steps of its own.
        below = np.linspace(0, self.height - self.lip, count)
        heights = np.concatenate([below, self.height - self.lip + self.lip * np.sin(np.linspace(0, np.pi / 2, count // 8))[1:]])
        return heights, self.radius(heights)

    def area_and_volume(self):
        """Of the wall up to the rim: what the roundness of the lip takes off is the wall's thickness, reckoned elsewhere."""
        heights = np.linspace(0, self.height, 20_001)
        radii = self.wall(heights)
        rise, run = np.diff(heights), np.diff(radii)
        middle = (radii[1:] + radii[:-1]) / 2
        area = np.sum(2 * np.pi * middle * np.hypot(rise, run))
        volume = np.sum(np.pi * rise * (radii[1:] ** 2 + radii[1:] * radii[:-1] + radii[:-1] ** 2) / 3)
        return area / 100, volume / 1000


class Camera:
    def __init__(self, random, pot, tilt):
        width, height = SIZE
        widest = float(np.max(pot.profile()[1]))
        fill = random.uniform(0.5, 0.68)
        room = 2.4 if "mug" in pot.kind else 1.9
        self.scale = min(fill * height / pot.height, 0.5 * width / (room * widest))
        self.level = random.uniform(0.25, 0.75) * pot.height
        self.pitch = math.radians(random.uniform(-1, 1))
        self.tilt = math.radians(tilt)
        self.shift = random.uniform(-0.04, 0.04) * width

        # All of it is in the picture, with some ground about it.
        heights, radii = pot.profile(50)
        for _ in range(20):
            edges = [self.see(across * radii, heights, toward * radii) for across in (-1, 1) for toward in (-0.7, 0.7)]
            x, y = (np.concatenate(axis) for axis in zip(*edges))
            if x.min() > 0.05 * width and x.max() < 0.95 * width and y.min() > 0.05 * height and y.max() < 0.93 * height:
                break
            self.scale *= 0.96

    def see(self, across, height, toward):
        """Pixels of a place: across from the axis, above the ground, towards the lens; mm."""
        sin, cos = math.sin(self.pitch), math.cos(self.pitch)
        above, ahead = height - self.level, CAMERA - toward
        depth = ahead * cos - above * sin
        x = self.scale * CAMERA * across / depth
        y = -self.scale * CAMERA * (above * cos + ahead * sin) / depth
        sin, cos = math.sin(self.tilt), math.cos(self.tilt)
        return SIZE[0] / 2 + cos * x - sin * y + self.shift, SIZE[1] / 2 + sin * x + cos * y


def cover(pot, camera, detail):
    """Which pixels the pot covers, and the light that falls on each from one side."""
    mask = Image.new("L", (SIZE[0] * detail, SIZE[1] * detail), 0)
    draw = ImageDraw.Draw(mask)
    around = np.linspace(0, 2 * np.pi, 160)
    before = None
    for height, radius in zip(*pot.profile()):
        x, y = camera.see(radius * np.sin(around), height, radius * np.cos(around))
        draw.polygon(list(zip(x * detail, y * detail)), fill=255)
        # Near the lens's level the ellipses are thin: what lies between two of them belongs to the wall.
        side = math.sqrt(1 - (radius / CAMERA) ** 2)
        ends = [camera.see(sign * radius * side, height, radius * radius / CAMERA) for sign in (-1, 1)]
        if before is not None:
            corners = [before[0], before[1], ends[1], ends[0]]
            draw.polygon([(float(x) * detail, float(y) * detail) for x, y in corners], fill=255)
        before = ends
    return mask.resize(SIZE, Image.Resampling.BOX)


def handle_cover(pot, camera, side, detail):
    mask = Image.new("L", (SIZE[0] * detail, SIZE[1] * detail), 0)
    draw = ImageDraw.Draw(mask)
    angle = np.linspace(-np.pi / 2, np.pi / 2, 60)
    middle, reach, half = 0.55 * pot.height, 0.3 * pot.height, 0.27 * pot.height
    heights = middle + half * np.sin(angle)
    across = pot.radius(np.clip(heights, 0, pot.height)) * 0.96 + reach * np.cos(angle)
    x, y = camera.see(side * across, heights, 0 * across)
    size = 6.0 * camera.scale * detail
    for at in zip(x * detail, y * detail):
        draw.ellipse([at[0] - size, at[1] - size, at[0] + size, at[1] + size], fill=255)
    return mask.resize(SIZE, Image.Resampling.BOX)


def uneven(random, colour):
    x, y = np.meshgrid(np.linspace(-1, 1, SIZE[0]), np.linspace(-1, 1, SIZE[1]))
    light = 1 + random.uniform(-0.12, 0.12) * x + random.uniform(-0.12, 0.12) * y - random.uniform(0, 0.1) * (x * x + y * y)
    # A cloth hangs in soft folds.
    folds = 1 + random.uniform(0, 0.015) * np.sin(x * random.uniform(3, 12) + y * random.uniform(-3, 3))
    return np.array(colour)[None, None, :] * (light * folds)[:, :, None]


def paint(random, pot, camera, with_handle, ground=None):
    ground_colour = GROUNDS[random.integers(len(GROUNDS))]
    contrasting = [clay for clay in CLAYS if abs(luma(clay) - luma(ground_colour)) > 40]
    clay = contrasting[random.integers(len(contrasting))]
    picture = uneven(random, ground_colour) if ground is None else ground
    # A soft shadow on the ground to one side, and a dark one where the foot stands.
    foot = camera.see(0, 0, 0)
    wide = float(pot.radius(0)) * camera.scale
    side = random.choice([-1, 1])
    for reach, aside, flat, soft, deep in [
        (1.3, 0.6, 0.22, random.uniform(10, 22), random.uniform(0.2, 0.45)),
        (1.05, 0.05, 0.1, random.uniform(4, 8), random.uniform(0.2, 0.5)),
    ]:
        shadow = Image.new("L", SIZE, 0)
        middle = foot[0] + side * aside * wide
        box = [middle - reach * wide, foot[1] - flat * wide, middle + reach * wide, foot[1] + flat * wide]
        ImageDraw.Draw(shadow).ellipse(box, fill=255)
        dark = np.asarray(shadow.filter(ImageFilter.GaussianBlur(soft)), dtype=float) / 255 * deep
        picture = picture * (1 - dark[:, :, None])

    body = np.asarray(cover(pot, camera, 3), dtype=float) / 255
    whole = body
    handle = None
    if with_handle:
        handle = random.choice([-1, 1])
        whole = np.maximum(body, np.asarray(handle_cover(pot, camera, handle, 3), dtype=float) / 255)
    # Light from one side over a round wall: brightness follows the place across each row.
    columns = np.arange(SIZE[0])[None, :]
    weight = body + 1e-9
    middle = (weight * columns).sum(1) / weight.sum(1)
    half = np.maximum(body.sum(1) / 2, 1)
    u = np.clip((columns - middle[:, None]) / half[:, None], -1, 1)
    side = random.uniform(-0.7, 0.7)
    light = 0.62 + 0.38 * np.clip(np.sqrt(1 - u * u) * math.sqrt(1 - side * side) + u * side, 0, 1)
    pot_colour = np.array(clay)[None, None, :] * light[:, :, None]
    if random.uniform() < 0.5:
        # A second glaze from some height upwards, as far as its colour differs from the ground.
        glaze = contrasting[random.integers(len(contrasting))]
        line = camera.see(0, random.uniform(0.3, 0.7) * pot.height, float(pot.radius(0.5 * pot.height)))[1]
        above = np.clip((line - np.arange(SIZE[1])) / 6 + 0.5, 0, 1)[:, None, None]
        pot_colour = pot_colour * (1 - above) + np.array(glaze)[None, None, :] * light[:, :, None] * above
    # A window mirrored in the glaze.
    shine = np.exp(-(((u - 0.9 * side) / 0.08) ** 2)) * random.uniform(0, 0.5)
    pot_colour = pot_colour + (245 - pot_colour) * shine[:, :, None]
    picture = picture * (1 - whole[:, :, None]) + pot_colour * whole[:, :, None]
    return picture, handle


def finish(random, picture):
    image = Image.fromarray(np.clip(picture, 0, 255).astype(np.uint8)).filter(ImageFilter.GaussianBlur(random.uniform(0.5, 1.3)))
    noisy = np.asarray(image, dtype=float) + random.normal(0, random.uniform(1.5, 4), (SIZE[1], SIZE[0], 3))
    return Image.fromarray(np.clip(noisy, 0, 255).astype(np.uint8))


def good(folder, number):
    random = np.random.default_rng(number)
    pot = Pot(random)
    tilt = random.uniform(-4, 4)
    camera = Camera(random, pot, tilt)
    picture, handle = paint(random, pot, camera, with_handle="mug" in pot.kind)
    name = f"{number:03}.jpg"
    finish(random, picture).save(folder / name, quality=85)
    heights, radii = pot.profile(201)
    area, volume = pot.area_and_volume()
    coin = [camera.see(1.5 * float(radii.max()), 10, 0), camera.see(1.5 * float(radii.max()) + 30, 10, 0)]
    return {
        "file": name, "kind": pot.kind, "height": pot.height, "width": 2 * float(radii.max()), "area": area, "volume": volume,
        "tilt": tilt, "handle": {None: None, -1: "left", 1: "right"}[handle],
        "length": [30.0, *coin[0], *coin[1]], "known": ("height", "width", "length")[number % 3],
        "heights": heights.tolist(), "radii": radii.tolist(),
    }


WHY = {
    "shallow_bowl": "TooFlat", "plate": "TooFlat", "empty": "Nothing", "noise": "Busy", "dark": "TooDark",
    "tilted": "TooTilted", "busy": "Busy", "cut_off": "CutOff", "far": "TooFar", "two": "NotAlone",
}
"""Why each of the bad pictures is to be refused, as core/domain names it."""


def bad(folder):
    """Pictures that no outline may be taken from, each with the reason."""
    random = np.random.default_rng(9_000)
    made = []

    def save(name, picture):
        finish(random, picture).save(folder / name, quality=85)
        made.append({"file": f"{folder.name}/{name}", "why": [WHY[name.split(".")[0]]]})

    pot = Pot(random)
    for kind in FLAT:
        flat = Pot(random, kind)
        save(f"{kind.replace(' ', '_')}.jpg", paint(random, flat, Camera(random, flat, 1), False)[0])
    save("empty.jpg", uneven(random, GROUNDS[0]))
    save("noise.jpg", random.uniform(0, 255, (SIZE[1], SIZE[0], 3)))
    save("dark.jpg", paint(random, pot, Camera(random, pot, 0), False)[0] * 0.06)
    save("tilted.jpg", paint(random, pot, Camera(random, pot, 15), False)[0])
    shelves = Image.new("RGB", SIZE, (150, 130, 110))
    draw = ImageDraw.Draw(shelves)
    for _ in range(160):
        x, y, w, h = (int(random.uniform(0, limit)) for limit in (SIZE[0], SIZE[1], 180, 160))
        draw.rectangle([x, y, x + w, y + h], fill=tuple(int(value) for value in random.uniform(20, 240, 3)))
    save("busy.jpg", paint(random, pot, Camera(random, pot, 0), False, np.asarray(shelves, dtype=float))[0])
    near = Camera(random, pot, 0)
    near.scale *= 1.9
    save("cut_off.jpg", paint(random, pot, near, False)[0])
    far = Camera(random, pot, 0)
    far.scale *= 0.2
    save("far.jpg", paint(random, pot, far, False)[0])
    one = Camera(random, pot, 0)
    one.scale *= 0.7
    one.shift = -0.22 * SIZE[0]
    picture = paint(random, pot, one, False)[0]
    one.shift = 0.22 * SIZE[0]
    clone = np.asarray(cover(pot, one, 1), dtype=float)[:, :, None] / 255
    save("two.jpg", picture * (1 - clone) + np.array([120.0, 70.0, 50.0]) * clone)
    return made


def turned(folder, original):
    """One of the pictures as phones store it when they are held otherwise: turned, with a note of how to show it."""
    upright = Image.open(original)
    stored = [
        None, Image.Transpose.FLIP_LEFT_RIGHT, Image.Transpose.ROTATE_180, Image.Transpose.FLIP_TOP_BOTTOM,
        Image.Transpose.TRANSPOSE, Image.Transpose.ROTATE_90, Image.Transpose.TRANSVERSE, Image.Transpose.ROTATE_270,
    ]
    names = []
    for orientation, how in enumerate(stored, 1):
        exif = Image.Exif()
        exif[ExifTags.Base.Orientation] = orientation
        names.append(f"turned_{orientation}.jpg")
        picture = upright if how is None else upright.transpose(how)
        picture.save(folder / names[-1], quality=92, exif=exif)
    return names


def main():
    folder, count = Path(sys.argv[1]), int(sys.argv[2])
    first = int(sys.argv[3]) if len(sys.argv) > 3 else 0
    (folder / "bad").mkdir(parents=True, exist_ok=True)
    with Pool() as pool:
        drawn = pool.starmap(good, [(folder, number) for number in range(first, first + count)])
    truth = {"camera": CAMERA, "good": drawn, "bad": bad(folder / "bad"), "turned": turned(folder, folder / drawn[0]["file"])}
    (folder / "truth.json").write_text(json.dumps(truth))


if __name__ == "__main__":
    main()
