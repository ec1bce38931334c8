"""Mixing, thinning and what a bucket holds, calculated again: mixes by mass and volume, thinning by keeping the powder, uncertainties by
the uncertainties package, the expected specific gravity by a linear regression in numpy.

    mixing.py make            writes seeded cases as JSON
    mixing.py check           reads what laydown made of them and compares
"""

import numpy as np
from uncertainties import ufloat

from cases import run

CASES = 300
# Of core/domain/src/glaze/bucket.rs and sg_age.rs.
VOLUME_UNSURE, UNCHECKED, LARGEST = 0.1, 0.04, 0.2
WALK, DAYS, JUMP, LEAST, RISE, LONGEST_RISE, DUE = 0.004, 28.0, 3.0, 0.25, 0.001, 60.0, 0.0125
# Of core/domain/src/glaze/slurry.rs.
LEVEL_AND_STIRRING, MARK = 0.002, 0.005


def case(number):
    rng = np.random.default_rng(19_000 + number)
    materials = [
        [round(rng.uniform(1, 60), 3), bool(at and rng.random() < 0.3), round(rng.uniform(2.1, 6.0), 3)]
        for at in range(rng.integers(1, 9))
    ]
    days = np.sort(rng.uniform(0, 90, rng.integers(0, 10)))
    rise = rng.choice([0.0, 0.0005, 0.002])
    checks = [
        [float(day), round(1.42 + rise * day + rng.normal(0, 0.006), 5), float(rng.choice([0.003, 0.005, 0.01]))] for day in days
    ]
    steps = [
        [str(rng.choice(["water", "water_off", "powder", "taken"])), round(float(rng.uniform(20, 600)), 3)]
        for _ in range(rng.integers(1, 6))
    ]
    empty = round(float(rng.uniform(50, 200)), 3)
    return {
        "materials": materials,
        "base": round(float(rng.uniform(100, 8_000)), 3),
        "sg": round(float(rng.uniform(1.25, 1.75)), 5),
        "to": round(float(rng.uniform(1.25, 1.75)), 5),
        "uncertainty": float(rng.choice([0.003, 0.005, 0.02])),
        "volume": round(float(rng.uniform(3_000, 20_000)), 3),
        "steps": steps,
        "checks": checks,
        "changed": [float(day) for day in rng.uniform(0, 90, rng.integers(0, 3))],
        "later": float(rng.uniform(0, 80)),
        "vessel": [empty, round(empty + float(rng.uniform(80, 400)), 3), float(rng.uniform(5, 35)), float(rng.choice([0.01, 0.1, 1.0]))],
    }


def close(what, got, expect, relative=1e-9, absolute=1e-9):
    if not np.isclose(got, expect, rtol=relative, atol=absolute):
        raise AssertionError(f"{what}: {got} is not {expect}")


def check_mix(made, got):
    parts, additions, densities = map(np.array, zip(*made["materials"]))
    base = parts[~additions].sum()
    grams = made["base"] * np.where(additions, parts / 100, parts / base)
    for weight, expect in zip(got["weights"], grams, strict=True):
        close("weight of a material", weight, expect)
    # Mass by volume, as it would be read off a measuring cylinder.
    density = grams.sum() / (grams / densities).sum()
    close("powder density", got["density"], density)
    close("powder", got["powder"], grams.sum())
    wet, volume = grams.sum() + got["water"], (grams / densities).sum() + got["water"]
    close("SG of what is mixed", wet / volume, made["sg"])
    close("volume of what is mixed", got["mixed"], volume)
    # The same batch asked for by its volume.
    close("powder by volume", got["by_volume"][0], grams.sum())
    close("water by volume", got["by_volume"][1], got["water"])


def check_thinning(made, got):
    density = got["density"]
    if "nothing" in got["thin"]:
        if abs(made["sg"] - made["to"]) >= 0.0005:
            raise AssertionError("there was something to do")
        return
    mass, volume = made["sg"] * made["volume"], made["volume"]
    water = got["thin"]["water"]
    close("SG after the water", (mass + water) / (volume + water), made["to"])
    if water < 0:
        powder = got["thin"]["powder"]
        close("SG after the powder", (mass + powder) / (volume + powder / density), made["to"])


def check_contents(made, got):
    """Each step by its sums; how unsure, from the reading before and the volume, each of its own."""
    density = got["density"]
    volume, sg, unsure = made["volume"], made["sg"], made["uncertainty"]
    for (what, amount), after in zip(made["steps"], got["steps"], strict=True):
        if what == "taken":
            volume = max(0.0, volume - amount / sg)
        else:
            mass = {"water": amount, "water_off": -amount, "powder": amount}[what]
            added = amount / density if what == "powder" else mass
            v, s = ufloat(volume, VOLUME_UNSURE * volume), ufloat(sg, unsure)
            found = (v * s + mass) / (v + added)
            volume, sg, unsure = volume + added, found.nominal_value, min(found.std_dev, LARGEST)
        close("volume", after[0], volume)
        close("SG", after[1], sg)
        close("how unsure", after[2], unsure, 1e-6)


def gaps(made):
    pairs = zip(made["checks"], made["checks"][1:])
    return [(one, two) for one, two in pairs if not any(one[0] <= day < two[0] for day in made["changed"])]


def check_projection(made, got):
    left_alone = gaps(made)
    days = np.array([two[0] - one[0] for one, two in left_alone])
    change = np.array([two[1] - one[1] for one, two in left_alone])
    own = np.array([one[2] ** 2 + two[2] ** 2 for one, two in left_alone])
    squares = WALK**2 * DAYS + np.minimum(change**2 - own, JUMP**2 * WALK**2 * days).sum()
    walk = np.sqrt(max(squares / (DAYS + days.sum()), (WALK * LEAST) ** 2))
    close("walk", got["walk"], walk)
    # A line through nothing with one row of prior, weighted: numpy's least squares.
    reach = JUMP * WALK * np.sqrt(days)
    sd = np.sqrt(own + WALK**2 * days)
    rows = np.append(days / sd, 1 / RISE)[:, None]
    rise = np.linalg.lstsq(rows, np.append(np.clip(change, -reach, reach) / sd, 0.0), rcond=None)[0][0]
    close("rise", got["rise"][0], max(0.0, rise), 1e-7)
    rise_unsure = np.sqrt(np.linalg.inv(rows.T @ rows)[0, 0])
    close("how unsure the rise is", got["rise"][1], rise_unsure)

    def unsure(days_later):
        terms = [made["uncertainty"], rise_unsure * min(days_later, LONGEST_RISE), walk * np.sqrt(days_later)]
        return min(np.sqrt(np.sum(np.square(terms))), max(made["uncertainty"], UNCHECKED))

    close("expected SG", got["projected"][0], made["sg"] + max(0.0, rise) * min(made["later"], LONGEST_RISE), 1e-7)
    close("how unsure that is", got["projected"][1], unsure(made["later"]))
    due = next((days_later for days_later in range(365) if unsure(days_later) > DUE), 365)
    close("days until a check is due", got["due"], due)


def check_vessel(made, got):
    empty, with_water, celsius, step = made["vessel"]
    rounding = step / np.sqrt(12)
    e, w = ufloat(empty, rounding), ufloat(with_water, rounding)
    g = ufloat(got["with_glaze"], rounding)
    ratio = (g - e) / (w - e)
    # Water of another temperature moves the figure and, at this rounding, not how sure it is.
    close("how unsure by vessel", got["by_vessel"][1], np.hypot(ratio.std_dev, LEVEL_AND_STIRRING), 0.02)
    by_volume = (g - e) / ufloat(got["cup_ml"], MARK * got["cup_ml"])
    close("SG by volume", got["by_volume_sg"][0], by_volume.nominal_value)
    close("how unsure by volume", got["by_volume_sg"][1], np.hypot(by_volume.std_dev, LEVEL_AND_STIRRING))


if __name__ == "__main__":
    run("mixing", [case(number) for number in range(CASES)],
        (check_mix, check_thinning, check_contents, check_projection, check_vessel),
        f"{CASES} batches, thinnings, buckets, projections and vessels calculated again")
