"""Areas and volumes of pots of known shape, reckoned again: scipy integrates the true curves, trimesh measures a mesh of them.

    profiles.py make            writes twenty seeded pots as JSON: forty points on each outside, wall, floor
    profiles.py check           reads what laydown made of them and compares: 0.1 % on area and on volume

Nothing here is translated from the Rust code: a pot is a pair of smooth functions of one parameter, the inside is its
exact parallel curve, and both are integrated as they are.
"""

import json
import sys

import numpy as np
from scipy import integrate, interpolate, optimize

POINTS = 40
POTS = 20
TOLERANCE = 1e-3


class Pot:
    """Outside as radius and height of t from 0 at the ground to 1 at the rim, with their derivatives."""

    def __init__(self, number):
        random = np.random.default_rng(number)
        self.kind = ["belly", "bowl", "bottle", "turned rim"][number % 4]
        self.tall = random.uniform(70, 220)
        self.base = random.uniform(30, 60)
        self.waves = [(random.uniform(-0.16, 0.22) * self.base, order) for order in (1, 2)]
        self.flare = random.uniform(0.6, 1.1) * self.base if self.kind == "bowl" else random.uniform(-0.15, 0.15) * self.base
        self.neck = self.base * random.uniform(0.55, 0.62) if self.kind == "bottle" else 0
        self.wall = random.uniform(3, 6)
        self.floor = random.uniform(4, 8)
        self.turned = self.turned_rim(random) if self.kind == "turned rim" else None

    def turned_rim(self, random):
        """A wall that rises in a wave and then turns outwards and down: radius and height by the way walked."""
        way = np.linspace(0, 1, 20_001)
        late = np.clip((way - 0.55) / 0.45, 0, 1)
        turn = np.radians(random.uniform(110, 130)) * (3 * late**2 - 2 * late**3)
        direction = np.pi / 2 - np.radians(random.uniform(8, 20)) * np.sin(2 * np.pi * way) - turn
        path = integrate.cumulative_simpson(np.stack([np.cos(direction), np.sin(direction)]), x=way, initial=0) * 1.4 * self.tall
        return interpolate.CubicSpline(way, self.base + path[0]), interpolate.CubicSpline(way, path[1])

    def radius(self, t):
        if self.turned:
            return self.turned[0](t)
        neck = self.neck / (1 + np.exp(-(t - 0.62) * 16))
        return self.base + sum(size * np.sin(np.pi * order * t) for size, order in self.waves) + self.flare * t**1.5 * (2 - t) - neck

    def height(self, t):
        return self.turned[1](t) if self.turned else self.tall * t

    def slope(self, function, t, step=1e-5):
        low, high = np.maximum(t - step, 0), np.minimum(t + step, 1)
        return (function(high) - function(low)) / (high - low)

    def inside(self, t):
        """The parallel curve at the distance of the wall."""
        run, rise = self.slope(self.radius, t), self.slope(self.height, t)
        length = np.hypot(run, rise)
        return self.radius(t) - self.wall * rise / length, self.height(t) + self.wall * run / length

    def points(self):
        # At equal steps along the wall, as a finger with a pair of calipers goes; but the highest point is always among
        # them, since a ruler finds the height of a pot first. (Without it the curve ends at the points beside it, and a
        # turned rim of 40 points holds up to 0.105 % too little.)
        fine = np.linspace(0, 1, 20_001)
        way = np.concatenate([[0], np.cumsum(np.hypot(np.diff(self.radius(fine)), np.diff(self.height(fine))))])
        t = np.interp(np.linspace(0, way[-1], POINTS), way, fine)
        crown = fine[np.argmax(self.height(fine))]
        t[np.argmin(np.abs(t - crown))] = crown
        return [[float(height), float(radius)] for height, radius in zip(self.height(t), self.radius(t))]

    def truth(self):
        def swept(radius, height, low, high):
            run = lambda t: self.slope(radius, t)
            rise = lambda t: self.slope(height, t)
            area = integrate.quad(lambda t: 2 * np.pi * radius(t) * np.hypot(run(t), rise(t)), low, high, limit=400)[0]
            volume = integrate.quad(lambda t: np.pi * radius(t) ** 2 * rise(t), low, high, limit=400)[0]
            return area, volume

        outside = swept(self.radius, self.height, 0, 1)
        inner_radius, inner_height = lambda t: self.inside(t)[0], lambda t: self.inside(t)[1]
        start = optimize.brentq(lambda t: inner_height(t) - self.floor, 0, 0.6)
        wall_area, _ = swept(inner_radius, inner_height, start, 1)
        floor = np.pi * inner_radius(start) ** 2
        # Filled to the highest point of the lip; a wall that leans in stands straight up from its inner edge to there.
        fine = np.linspace(start, 1, 200_001)
        crown = fine[np.argmax(inner_height(fine))]
        brim = max(inner_height(crown), self.height(np.linspace(0, 1, 200_001)).max())
        upright = np.pi * inner_radius(crown) ** 2 * (brim - inner_height(crown))
        inside_volume = swept(inner_radius, inner_height, start, 1)[1]
        # The lip is straight from the outer edge to the inner one.
        outer, inner, rise = self.radius(1), inner_radius(1), inner_height(1) - self.height(1)
        lip = np.pi / 3 * rise * (outer**2 + outer * inner + inner**2)
        return {
            "capacity": swept(inner_radius, inner_height, start, crown)[1] + upright,
            "clay": outside[1] + lip - inside_volume,
            "outside_area": outside[0],
            "solid_volume": outside[1],
            "inside_area": wall_area + floor,
            "inside_volume": inside_volume,
        }

    def mesh(self):
        import trimesh

        t = np.linspace(0, 1, 1_000)
        line = np.column_stack([self.radius(t), self.height(t)])
        closed = np.vstack([[0, line[0, 1]], line, [0, line[-1, 1]]])
        mesh = trimesh.creation.revolve(closed, sections=360)
        discs = np.pi * (line[0, 0] ** 2 + line[-1, 0] ** 2)
        return {"outside_area": mesh.area - discs, "solid_volume": abs(mesh.volume)}


def main():
    pots = [Pot(number) for number in range(POTS)]
    if sys.argv[1] == "make":
        json.dump([{"kind": pot.kind, "points": pot.points(), "wall": pot.wall, "floor": pot.floor} for pot in pots], sys.stdout)
        return
    found = json.load(sys.stdin)
    worst, failures = {}, []
    for number, (pot, got) in enumerate(zip(pots, found, strict=True)):
        references = [(what, value, "scipy") for what, value in pot.truth().items()]
        references += [(what, value, "trimesh") for what, value in pot.mesh().items()]
        for what, value, by in references:
            error = got[what] / value - 1
            worst[what, by] = max(worst.get((what, by), 0), abs(error))
            if abs(error) > TOLERANCE:
                failures.append(f"pot {number}, {pot.kind}: {what} is {error:+.3%} from {by}")
    for (what, by), error in sorted(worst.items()):
        print(f"{what} against {by}: {error:.4%} at most, over {POTS} pots of {POINTS} points")
    if failures:
        sys.exit("\n".join(failures))


if __name__ == "__main__":
    main()
