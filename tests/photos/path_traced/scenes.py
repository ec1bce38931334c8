"""Photographs of pots whose shape is known, drawn by a path tracer that is not ours: Mitsuba 3 (Wenzel Jakob et al., 2022).

Every scene follows from its seed alone: a turned pot on a table before a wall or on a bent cloth, in the light of one or two
lamps and a coloured room, seen by a phone at 40 to 80 cm.

    scenes.py FOLDER FIRST GOOD [OBLIQUE BAD]
writes GOOD pictures of pots seen from their side, OBLIQUE ones seen from 6 to 25 degrees above, BAD ones to be refused (each of
ten kinds in turn), and truth.json. Seeds below 1000 and from 7000 to 7999 were tuned on; 5000 to 6999 and those from 8000 on are for measuring.
"""

import json
import math
import os
import re
import sys
import tempfile
from pathlib import Path

import mitsuba as mi
import numpy as np
from PIL import Image, ImageFilter
from scipy.interpolate import PchipInterpolator
from scipy.ndimage import gaussian_filter


def fastest():
    """Mitsuba's kind that compiles for this machine, where an LLVM is that it can use (16 or later); else the plain one."""
    found = Path("/usr/lib").glob("*/libLLVM*.so*")
    versions = {int(number): str(path) for path in found for number in re.findall(r"(?:LLVM-|so\.)(\d+)", path.name)}
    usable = [version for version in versions if version >= 16]
    if not usable:
        return "scalar_rgb"
    os.environ.setdefault("DRJIT_LIBLLVM_PATH", versions[max(usable)])
    return "llvm_ad_rgb"


mi.set_variant(fastest())
mi.set_log_level(mi.LogLevel.Error)

SIZE = (1280, 960)
SAMPLES = 16
"""Paths for each pixel."""
BAD = (
    "two", "cup_over_bottle", "nested_bowls", "tool_in_front", "cut_off", "far", "dark", "busy", "aslant", "empty",
)
WHY = {
    "two": ["NotAlone", "Lopsided"], "cup_over_bottle": ["Stacked"], "nested_bowls": ["Stacked"],
    "tool_in_front": ["Lopsided", "NotAlone", "Stacked", "CutOff"], "cut_off": ["CutOff"], "far": ["TooFar"], "dark": ["TooDark"],
    "busy": ["Busy"], "aslant": ["TooTilted"], "empty": ["Nothing"],
}
"""Reasons that are true of each kind."""

# Height and radius of the outside in parts of the height, and the least and the greatest height, mm.
KINDS = {
    "mug": ([(0, 0.36), (0.03, 0.40), (0.10, 0.425), (0.5, 0.43), (1, 0.42)], (85, 125)),
    "round mug": ([(0, 0.30), (0.06, 0.38), (0.3, 0.50), (0.55, 0.50), (0.85, 0.42), (1, 0.43)], (80, 115)),
    "bowl": ([(0, 0.36), (0.09, 0.35), (0.16, 0.50), (0.4, 0.76), (0.7, 0.93), (1, 1.0)], (65, 100)),
    "small bowl": ([(0, 0.32), (0.10, 0.31), (0.18, 0.44), (0.45, 0.64), (0.75, 0.74), (1, 0.77)], (65, 95)),
    "bottle": ([(0, 0.19), (0.03, 0.215), (0.3, 0.26), (0.5, 0.25), (0.66, 0.16), (0.76, 0.085), (0.92, 0.075), (1, 0.095)], (170, 250)),
    "jar": ([(0, 0.30), (0.05, 0.35), (0.3, 0.47), (0.6, 0.46), (0.85, 0.36), (0.93, 0.34), (1, 0.36)], (110, 180)),
    "vase": ([(0, 0.17), (0.04, 0.18), (0.3, 0.29), (0.5, 0.30), (0.75, 0.19), (0.9, 0.155), (1, 0.20)], (150, 230)),
    "tumbler": ([(0, 0.26), (0.02, 0.275), (0.5, 0.32), (1, 0.37)], (95, 150)),
}
CLAYS = [(0.45, 0.24, 0.15), (0.80, 0.76, 0.68), (0.22, 0.12, 0.08), (0.62, 0.52, 0.40), (0.33, 0.31, 0.29)]
GLAZES = [
    (0.07, 0.12, 0.25), (0.55, 0.58, 0.48), (0.85, 0.84, 0.80), (0.03, 0.03, 0.035), (0.28, 0.11, 0.05),
    (0.16, 0.28, 0.18), (0.45, 0.33, 0.16), (0.35, 0.42, 0.45), (0.50, 0.50, 0.49),
]
SURFACES = [
    (0.78, 0.78, 0.76), (0.55, 0.54, 0.52), (0.42, 0.30, 0.19), (0.16, 0.16, 0.17), (0.62, 0.58, 0.50),
    (0.30, 0.36, 0.42), (0.70, 0.64, 0.52), (0.26, 0.32, 0.27),
]
"""Reflectance of clay, glaze and of walls, tables and cloths: linear red, green, blue."""


class Pot:
    def __init__(self, random, kind=None):
        self.kind = kind or str(random.choice(list(KINDS)))
        shape, tall = KINDS[self.kind]
        self.height = random.uniform(*tall)
        wide = random.uniform(0.92, 1.08)
        jitter = 1 + random.normal(0, 0.012, len(shape))
        heights = np.array([place[0] for place in shape]) * self.height
        radii = np.array([place[1] for place in shape]) * self.height * wide * jitter
        self.wall = PchipInterpolator(heights, radii)
        self.thick = random.uniform(2.5, 5)

    def outside(self, count=160):
        heights = np.linspace(0, self.height, count)
        return heights, self.wall(heights)

    def truth(self):
        """Area (cm²) and volume (ml) of the outside from the foot to the rim, and its greatest width (mm)."""
        heights, radii = self.outside(20_001)
        rise, middle = np.diff(heights), (radii[1:] + radii[:-1]) / 2
        area = np.sum(2 * np.pi * middle * np.hypot(rise, np.diff(radii)))
        volume = np.sum(np.pi * rise * (radii[1:] ** 2 + radii[1:] * radii[:-1] + radii[:-1] ** 2) / 3)
        return area / 100, volume / 1000, 2 * float(radii.max())


def mesh(folder, name, places, faces):
    """A PLY file of triangles."""
    path = Path(folder) / f"{name}.ply"
    head = (
        f"ply\nformat binary_little_endian 1.0\nelement vertex {len(places)}\nproperty float x\nproperty float y\nproperty float z\n"
        f"element face {len(faces)}\nproperty list uchar int vertex_indices\nend_header\n"
    )
    rows = np.empty(len(faces), dtype=[("count", "u1"), ("corners", "<i4", 3)])
    rows["count"], rows["corners"] = 3, faces
    path.write_bytes(head.encode() + np.asarray(places, dtype="<f4").tobytes() + rows.tobytes())
    return str(path)


def grid(rows, columns):
    at = np.arange(rows * columns).reshape(rows, columns)
    a, b, c, d = at[:-1, :-1].ravel(), at[:-1, 1:].ravel(), at[1:, 1:].ravel(), at[1:, :-1].ravel()
    return np.concatenate([np.stack([a, b, c], 1), np.stack([a, c, d], 1)])


def turned(folder, name, heights, radii, around=180):
    """A surface of revolution about z; x lies across the picture, y away from the lens."""
    angle = np.linspace(0, 2 * np.pi, around + 1)
    x, y = np.outer(radii, np.cos(angle)), np.outer(radii, np.sin(angle))
    z = np.repeat(np.asarray(heights)[:, None], around + 1, 1)
    return mesh(folder, name, np.stack([x, y, z], -1).reshape(-1, 3), grid(len(heights), around + 1))


def tube(folder, name, spine, wide, thick):
    """A strap along a line of places, wide across the line's plane and thick within it."""
    ahead = np.gradient(spine, axis=0)
    ahead /= np.linalg.norm(ahead, axis=1, keepdims=True)
    sideways = np.cross(ahead, np.cross(spine[-1] - spine[0], spine[len(spine) // 2] - spine[0]))
    sideways /= np.linalg.norm(sideways, axis=1, keepdims=True)
    across = np.cross(ahead, sideways)
    angle = np.linspace(0, 2 * np.pi, 25)
    places = spine[:, None] + (thick * np.cos(angle))[None, :, None] * sideways[:, None] + (wide * np.sin(angle))[None, :, None] * across[:, None]
    return mesh(folder, name, places.reshape(-1, 3), grid(len(spine), 25))


def skin(random, colour, gloss):
    """What light does on a surface: dull clay or a glaze over it."""
    if gloss is None:
        return {"type": "twosided", "bsdf": {"type": "diffuse", "reflectance": {"type": "rgb", "value": list(colour)}}}
    plastic = {
        "type": "roughplastic", "distribution": "ggx", "alpha": gloss, "nonlinear": True,
        "diffuse_reflectance": {"type": "rgb", "value": list(colour)},
    }
    return {"type": "twosided", "bsdf": plastic}


def pot_shapes(random, folder, pot, at=(0, 0, 0), upside_down=False, name="pot"):
    """The pot's meshes: bare clay below, glaze above, the inside, and how each is lit."""
    heights, radii = pot.outside()
    clay, glaze = CLAYS[random.integers(len(CLAYS))], GLAZES[random.integers(len(GLAZES))]
    gloss = random.uniform(0.04, 0.35)
    line = random.uniform(0.04, 0.2) * pot.height
    second = random.uniform(0.5, 0.85) * pot.height if random.uniform() < 0.4 else pot.height
    other = GLAZES[random.integers(len(GLAZES))]
    shapes = {}
    move = mi.ScalarTransform4f().translate(list(at))
    if upside_down:
        move = move @ mi.ScalarTransform4f().translate([0, 0, pot.height]) @ mi.ScalarTransform4f().rotate([1, 0, 0], 180)

    def add(part, file, look):
        shapes[f"{name}_{part}"] = {"type": "ply", "filename": file, "to_world": move, "bsdf": look}

    for part, low, high, colour, shine in [
        ("clay", 0, line, clay, None), ("glaze", line, second, glaze, gloss), ("second", second, pot.height, other, gloss),
    ]:
        if high - low > 0.5:
            level = np.linspace(low, high, 80)
            add(part, turned(folder, f"{name}_{part}", level, pot.wall(level)), skin(random, colour, shine))
    # The lip is round, and within it the wall goes down to a floor.
    rim = float(radii[-1])
    turn = np.linspace(0, np.pi, 9)
    lip_height = pot.height + 0.0 * turn - pot.thick / 2 * (1 - np.sin(turn)) * (turn > np.pi / 2) - 0.0
    lip_radius = rim - pot.thick / 2 + pot.thick / 2 * np.cos(turn)
    floor = np.linspace(pot.height - pot.thick / 2, 0.06 * pot.height, 60)
    within = np.maximum(pot.wall(floor) - pot.thick, 1.0)
    inner_h = np.concatenate([lip_height, floor, [0.06 * pot.height]])
    inner_r = np.concatenate([lip_radius, within, [0.1]])
    add("inside", turned(folder, f"{name}_inside", inner_h, inner_r), skin(random, other if second < pot.height else glaze, gloss))
    add("base", turned(folder, f"{name}_base", [0.05, 0.05], [float(radii[0]), 0.1]), skin(random, clay, None))
    return shapes, (glaze, gloss)


def texture(random, colour, kind):
    """A bitmap of a surface: plain, cloth, grain of wood or speckle; linear reflectance."""
    count = 1024
    base = np.ones((count, count))
    if kind == "cloth":
        lines = np.sin(np.arange(count) * 2 * np.pi / 6)
        base += 0.05 * (lines[None, :] + lines[:, None]) + 0.05 * gaussian_filter(random.normal(size=(count, count)), 12) * 12
    elif kind == "wood":
        grain = gaussian_filter(random.normal(size=(count, count)), (1.5, 60)) * 14
        base += random.uniform(0.05, 0.16) * np.tanh(grain)
    elif kind == "speckle":
        base += random.uniform(0.05, 0.15) * gaussian_filter(random.normal(size=(count, count)), 1.5) * 4
    elif kind == "patches":
        base += random.uniform(0.05, 0.12) * gaussian_filter(random.normal(size=(count, count)), 50) * 140
    data = np.clip(base[..., None] * np.array(colour), 0.01, 0.95).astype(np.float32)
    return {"type": "bitmap", "bitmap": mi.Bitmap(data), "raw": True, "filter_type": "bilinear", "wrap_mode": "mirror"}


def room(random, folder, busy=False):
    """Table and wall of two surfaces, or one cloth that hangs down behind and runs on over the table."""
    kinds = ["plain", "cloth", "wood", "speckle", "patches"]
    one = SURFACES[random.integers(len(SURFACES))]
    behind = random.uniform(150, 700)
    shapes, T = {}, mi.ScalarTransform4f

    def look(colour, kind):
        return {"type": "twosided", "bsdf": {"type": "diffuse", "reflectance": texture(random, colour, kind)}}

    if random.uniform() < 0.4 and not busy:
        bend = random.uniform(60, 180)
        turn = np.linspace(0, np.pi / 2, 24)
        y = np.concatenate([[-900], behind - bend + bend * np.sin(turn), [behind]])
        z = np.concatenate([[0], bend - bend * np.cos(turn), [1500]])
        x = np.linspace(-1500, 1500, 2)
        places = np.stack([np.repeat(x[:, None], len(y), 1), np.repeat(y[None], 2, 0), np.repeat(z[None], 2, 0)], -1)
        file = mesh(folder, "sweep", places.reshape(-1, 3), grid(2, len(y)))
        shapes["sweep"] = {"type": "ply", "filename": file, "bsdf": skin(random, one, None)}
        return shapes, one
    other = SURFACES[random.integers(len(SURFACES))]
    table = T().translate([random.uniform(-50, 50), behind - 900, 0]) @ T().scale([1600, 900, 1])
    wall = T().translate([0, behind + random.choice([0, 0, 250]), 600]) @ T().rotate([1, 0, 0], 90) @ T().scale([1800, 1000, 1])
    shapes["table"] = {"type": "rectangle", "to_world": table, "bsdf": look(one, str(random.choice(kinds)))}
    shapes["wall"] = {"type": "rectangle", "to_world": wall, "bsdf": look(other, str(random.choice(kinds)))}
    if busy:
        for number in range(50):
            size = random.uniform(20, 80, 3)
            place = [random.uniform(-600, 600), random.uniform(0.3, 0.95) * behind + 60, random.uniform(0, 400)]
            colour = random.uniform(0.03, 0.85, 3)
            shapes[f"clutter_{number}"] = {
                "type": "cube", "to_world": T().translate(place) @ T().rotate([0, 0, 1], random.uniform(0, 90)) @ T().scale(list(size / 2)),
                "bsdf": skin(random, colour, None),
            }
    return shapes, one


def lamps(random):
    """One or two soft lamps from above and a coloured room."""
    T, shapes = mi.ScalarTransform4f, {}
    ambient = np.array([1, 1, 1]) + random.uniform(-0.18, 0.18, 3)
    shapes["ambient"] = {"type": "constant", "radiance": {"type": "rgb", "value": list(random.uniform(0.25, 0.7) * ambient)}}
    for number in range(1 if random.uniform() < 0.5 else 2):
        side = random.uniform(-1, 1)
        place = [1100 * side, random.uniform(-1100, 100), random.uniform(700, 1500)]
        size = random.uniform(60, 350)
        warm = np.array([1.0, random.uniform(0.82, 1.0), random.uniform(0.65, 1.0)])
        shapes[f"lamp_{number}"] = {
            "type": "rectangle",
            "to_world": T().look_at(origin=place, target=[0, 0, 60], up=[0, 1, 0.1]) @ T().scale([size, size, 1]),
            "emitter": {"type": "area", "radiance": {"type": "rgb", "value": list(random.uniform(0.5, 1.1) * 3.6e6 / (2 * size) ** 2 * warm)}},
        }
    return shapes


class Camera:
    """A pinhole at (0, -distance, level); it points `pitch` down and is held `tilt` aslant, radians."""

    def __init__(self, distance, level, pitch, tilt, focal, size=SIZE):
        self.distance, self.level, self.pitch, self.tilt, self.size = distance, level, pitch, tilt, size
        self.pixels = focal * math.hypot(*size) / math.hypot(36, 24)
        sin, cos = math.sin(pitch), math.cos(pitch)
        self.eye = np.array([0.0, -distance, level])
        self.ahead = np.array([0, cos, -sin])
        right, up = np.array([1.0, 0, 0]), np.array([0, sin, cos])
        self.right = math.cos(tilt) * right + math.sin(tilt) * up
        self.up = math.cos(tilt) * up - math.sin(tilt) * right

    def see(self, place):
        away = np.asarray(place, dtype=float) - self.eye
        depth = away @ self.ahead
        return (
            self.size[0] / 2 + self.pixels * (away @ self.right) / depth,
            self.size[1] / 2 - self.pixels * (away @ self.up) / depth,
        )

    def sensor(self, samples):
        wide = 2 * math.degrees(math.atan(self.size[0] / 2 / self.pixels))
        T = mi.ScalarTransform4f
        look = T().look_at(origin=list(self.eye), target=list(self.eye + self.ahead), up=list(self.up))
        return {
            "type": "perspective", "fov": wide, "fov_axis": "x", "to_world": look, "near_clip": 10, "far_clip": 10_000,
            "film": {"type": "hdrfilm", "width": self.size[0], "height": self.size[1], "rfilter": {"type": "gaussian"}, "pixel_format": "rgb"},
            "sampler": {"type": "independent", "sample_count": samples},
        }


def frame(random, pot, pitch, tilt):
    """A lens from which the pot fills a third to three quarters of the picture's height."""
    heights, radii = pot.outside(60)
    portrait = random.uniform() < 0.3 and pot.kind in ("bottle", "vase")
    size = SIZE[::-1] if portrait else SIZE
    for _ in range(400):
        focal, distance = random.uniform(26, 50), random.uniform(400, 800)
        aim = random.uniform(0.35, 0.6) * pot.height
        camera = Camera(distance, aim + distance * math.tan(pitch), pitch, tilt, focal, size)
        if camera.level < 15:
            continue
        ends = [camera.see([s * r, t * r, h]) for h, r in zip(heights, radii) for s, t in [(-1, 0), (1, 0), (0, -1), (0, 1)]]
        x, y = np.array(ends).T
        room_left = x.min() > 0.05 * size[0] and x.max() < 0.95 * size[0] and y.min() > 0.05 * size[1] and y.max() < 0.94 * size[1]
        if room_left and (y.max() - y.min() > 0.34 * size[1] or x.max() - x.min() > 0.5 * size[0]):
            return camera
    return None


def develop(random, seen, dark=1.0):
    """As a phone stores it: exposed, a little blurred, noisy, sRGB."""
    seen = np.maximum(np.nan_to_num(seen), 0)
    light = 0.2126 * seen[..., 0] + 0.7152 * seen[..., 1] + 0.0722 * seen[..., 2]
    seen = seen * (random.uniform(0.2, 0.34) / max(float(light.mean()), 1e-6))
    seen = np.minimum(seen, 6.0)
    balance = light.mean() / np.maximum(seen.mean((0, 1)) / seen.mean(), 1e-6) / light.mean()
    seen = seen * (1 + 0.6 * (balance - 1)) * dark
    # A shoulder instead of a cut, as a camera's curve has.
    seen = np.where(seen > 0.7, 0.7 + 0.3 * (1 - np.exp(-(seen - 0.7) / 0.3)), seen)
    shown = np.where(seen <= 0.0031308, 12.92 * seen, 1.055 * np.maximum(seen, 1e-9) ** (1 / 2.4) - 0.055) * 255
    image = Image.fromarray(np.clip(shown, 0, 255).astype(np.uint8)).filter(ImageFilter.GaussianBlur(random.uniform(0.4, 1.1)))
    noisy = np.asarray(image, dtype=float) + random.normal(0, random.uniform(0.8, 2.5), (*shown.shape[:2], 3))
    return Image.fromarray(np.clip(noisy, 0, 255).astype(np.uint8))


def picture(random, folder, name, shapes, camera, dark=1.0, seed=0):
    scene = mi.load_dict({"type": "scene", "integrator": {"type": "path", "max_depth": 5}, "sensor": camera.sensor(SAMPLES), **shapes})
    seen = np.array(mi.render(scene, seed=seed))
    focal = round(camera.pixels * math.hypot(36, 24) / math.hypot(*camera.size))
    exif = Image.Exif()
    exif.get_ifd(0x8769)[0xA405] = focal
    develop(random, seen, dark).save(folder / name, quality=80, exif=exif)


def handle_shape(random, folder, pot, side, look):
    """An ear on one side, turned up to 8 degrees out of the picture's plane."""
    middle, half = random.uniform(0.48, 0.58) * pot.height, random.uniform(0.24, 0.32) * pot.height
    reach = random.uniform(0.25, 0.34) * pot.height
    angle = np.linspace(-np.pi / 2, np.pi / 2, 48)
    level = middle + half * np.sin(angle)
    away = pot.wall(np.clip(level, 0, pot.height)) - pot.thick * 0.4 + reach * np.cos(angle)
    turn = math.radians(random.uniform(-8, 8))
    spine = np.stack([side * away * math.cos(turn), away * math.sin(turn), level], 1)
    colour, gloss = look
    file = tube(folder, "handle", spine, random.uniform(6, 10), random.uniform(3, 5))
    return {"handle": {"type": "ply", "filename": file, "bsdf": skin(random, colour, gloss)}}


def seen_pot(folder, seed, oblique):
    random = np.random.default_rng(seed)
    while True:
        pot = Pot(random)
        pitch = random.uniform(6, 25) if oblique else random.uniform(-1, 3)
        tilt = random.uniform(-5, 5)
        camera = frame(random, pot, math.radians(pitch), math.radians(tilt))
        if camera is not None:
            break
    known = ("height", "width", "length")[seed % 3]
    name = f"{'oblique' if oblique else 'good'}_{seed}.jpg"
    with tempfile.TemporaryDirectory() as meshes:
        shapes, look = pot_shapes(random, meshes, pot)
        side = 0
        if "mug" in pot.kind and random.uniform() < 0.75:
            side = int(random.choice([-1, 1]))
            shapes |= handle_shape(random, meshes, pot, side, look)
        around, _ = room(random, meshes)
        picture(random, folder, name, shapes | around | lamps(random), camera, seed=seed)
    area, volume, width = pot.truth()
    # Two places 100 mm apart on a ruler beside the pot, marked to a pixel.
    ends = [camera.see([reach, 0, 2]) for reach in (-50, 50)]
    ends = [(x + random.normal(0, 0.7), y + random.normal(0, 0.7)) for x, y in ends]
    return {
        "file": name, "kind": pot.kind, "height": pot.height, "width": width, "area": area, "volume": volume, "known": known,
        "length": [100.0, *ends[0], *ends[1]], "tilt": math.degrees(camera.tilt), "pitch": pitch, "distance": camera.distance,
        "level": camera.level, "pixels": camera.pixels,
        # A potter guesses an arm's length.
        "camera": camera.distance * random.uniform(0.88, 1.12),
        "handle": {0: None, -1: "left", 1: "right"}[side],
        "heights": pot.outside(60)[0].tolist(), "radii": pot.outside(60)[1].tolist(),
    }


def refused(folder, seed, kind):
    """A picture that no outline may be taken from."""
    random = np.random.default_rng(seed + 100_000)
    T = mi.ScalarTransform4f
    aslant = math.radians(random.choice([-1, 1]) * random.uniform(11, 17)) if kind == "aslant" else math.radians(random.uniform(-3, 3))
    pitch = math.radians(random.uniform(0, 3))
    form = {"cup_over_bottle": "bottle", "nested_bowls": "bowl"}.get(kind)
    while True:
        pot = Pot(random, form)
        camera = frame(random, pot, pitch, aslant)
        if camera is not None:
            break
    name = f"{kind}_{seed}.jpg"
    with tempfile.TemporaryDirectory() as meshes:
        shapes, _ = pot_shapes(random, meshes, pot)
        around, _ = room(random, meshes, busy=kind == "busy")
        wide = 2 * float(pot.outside()[1].max())
        if kind == "two":
            other = Pot(random)
            aside = wide / 2 + float(other.outside()[1].max()) + random.uniform(-5, 25)
            shapes |= pot_shapes(random, meshes, other, (aside * random.choice([-1, 1]), 0, 0), name="other")[0]
            camera = Camera(camera.distance * 1.25, camera.level, camera.pitch, camera.tilt, 26, camera.size)
        elif kind == "cup_over_bottle":
            cup = Pot(random, "tumbler")
            cup.height = min(cup.height, 0.45 * pot.height)
            cup.wall = PchipInterpolator([0, cup.height], [0.3 * cup.height + 14, 0.36 * cup.height + 20])
            shapes |= pot_shapes(random, meshes, cup, (0, 0, pot.height - cup.height * 0.9), True, name="cup")[0]
        elif kind == "nested_bowls":
            inner = Pot(random, "bowl")
            scale = random.uniform(0.82, 0.94)
            inner.height = pot.height * scale
            inner.wall = PchipInterpolator(np.linspace(0, inner.height, 40), scale * pot.wall(np.linspace(0, pot.height, 40)))
            shapes |= pot_shapes(random, meshes, inner, (0, 0, pot.height * random.uniform(0.3, 0.5)), name="inner")[0]
        elif kind == "tool_in_front":
            long, thick = wide * random.uniform(1.3, 2.0), random.uniform(4, 9)
            place = [random.uniform(-0.3, 0.3) * wide, -wide * 0.7, thick]
            shapes["tool"] = {
                "type": "cylinder", "p0": [-long / 2, 0, 0], "p1": [long / 2, 0, 0], "radius": thick,
                "to_world": T().translate(place) @ T().rotate([0, 0, 1], random.uniform(-25, 25)) @ T().rotate([0, 1, 0], -random.uniform(0, 30)) @ T().translate([0, 0, thick]),
                "bsdf": skin(random, GLAZES[random.integers(len(GLAZES))], 0.2),
            }
        elif kind == "cut_off":
            camera = Camera(camera.distance, camera.level + random.choice([-0.55, 0.6]) * pot.height, 0, camera.tilt, 50, camera.size)
            camera.eye[0] = random.choice([0, 0.5 * wide])
            camera.pixels *= 1.3
        elif kind == "far":
            camera = Camera(camera.distance * 3.2, camera.level, 0, camera.tilt, 26, camera.size)
        elif kind == "empty":
            shapes = {}
        picture(random, folder, name, shapes | around | lamps(random), camera, 0.012 if kind == "dark" else 1.0, seed)
    return {"file": name, "kind": kind, "why": WHY[kind]}


def main():
    folder, first = Path(sys.argv[1]), int(sys.argv[2])
    good, oblique, bad = (int(count) for count in (sys.argv[3:] + ["0", "0"])[:3])
    folder.mkdir(parents=True, exist_ok=True)
    truth = {
        "good": [seen_pot(folder, first + number, False) for number in range(good)],
        "oblique": [seen_pot(folder, first + 300 + number, True) for number in range(oblique)],
        "bad": [refused(folder, first + 600 + number, BAD[number % len(BAD)]) for number in range(bad)],
    }
    (folder / "truth.json").write_text(json.dumps(truth))


if __name__ == "__main__":
    os.nice(5)
    main()
