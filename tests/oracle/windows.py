"""The window of laydown, fitted again by scipy, and whether what is said of it holds for invented glazes whose truth is known.

    windows.py make             writes seeded studios as JSON: each some pots, how much glaze they had and how they came out
    windows.py check            reads what laydown made of them and compares

The model is written here as textbooks write the ordered logistic model: a slope and two cut points,
P(y <= j) = expit(cut_j - slope x), with the prior on what they say of the window. For the first studios it is maximised without
derivatives from two starts, its curvature is taken by differences, and the ends of the window are found as roots. For all of them the
interval of the best is held against the truth.
"""

import json
import sys

import numpy as np
from scipy import optimize, special

ORDER = ["thin", "right", "thick"]
STUDIOS, REFITTED = 1_200, 60
SURE, ENOUGH, BEYOND = 0.8, 8, 2
FIRST, SECOND = (np.log(5.5), 0.6), (np.log(0.2), 0.7)
STEEP = (np.log(20.0), 0.7)


def studios():
    for number in range(STUDIOS):
        random = np.random.default_rng([7, number])
        middle = np.log(random.uniform(3.5, 9.0))
        half, steep = random.uniform(0.08, 0.35), random.uniform(12, 45)
        pots = int(random.choice([5, 8, 12, 20, 40, 120]))
        # A potter strays from an aim that lies somewhere in or near the window.
        aim = middle + random.normal(0, half / 2)
        x = random.normal(aim, random.uniform(0.05, 0.3), pots)
        chances = np.stack([special.expit(steep * (middle - half - x)), special.expit(steep * (x - middle - half))])
        draw = random.uniform(size=pots)
        found = np.where(draw < chances[0], 0, np.where(draw > 1 - chances[1], 2, 1))
        yield {
            "looks": [[float(np.exp(one)), ORDER[kind]] for one, kind in zip(x, found)],
            "truth": {"middle": middle, "half_width": half, "steepness": steep},
        }


def log_posterior(place, x, found):
    middle, half, steep = place[0], np.exp(place[1]), np.exp(place[2])
    slope, cuts = steep, np.array([steep * (middle - half), steep * (middle + half)])
    below = [special.log_expit(cut - slope * x) for cut in cuts]
    above = [special.log_expit(slope * x - cut) for cut in cuts]
    # P(right) = P(y <= 1) - P(y <= 0), taken in logarithms.
    right = below[1] + np.log(-np.expm1(np.minimum(below[0] - below[1], -1e-300)))
    likelihood = np.select([found == 0, found == 1], [below[0], right], above[1]).sum()
    prior = sum(-0.5 * ((value - mean) / sd) ** 2 for value, (mean, sd) in zip((middle, *place[1:]), (FIRST, SECOND, STEEP)))
    return likelihood + prior


def fitted(x, found):
    def down(place):
        return -log_posterior(place, x, found)

    starts = ([np.log(5.5), -1.6, 3.0], [x.mean(), -2.5, 3.5])
    exact = {"xatol": 1e-8, "fatol": 1e-12, "maxiter": 20_000}
    climbed = [optimize.minimize(down, start, method="Nelder-Mead", options=exact) for start in starts]
    return min(climbed, key=lambda result: result.fun)


def middle_sd(place, x, found):
    by = np.array([1e-4, 1e-3, 1e-3])
    curvature = np.empty((3, 3))
    for i in range(3):
        for j in range(3):
            ends = [(a, b, a * b) for a in (1, -1) for b in (1, -1)]
            step = lambda a, b: place + a * by * np.eye(3)[i] + b * by * np.eye(3)[j]
            curvature[i, j] = sum(sign * log_posterior(step(a, b), x, found) for a, b, sign in ends) / (4 * by[i] * by[j])
    return np.sqrt(np.linalg.inv(-curvature)[0, 0])


def right(place, x):
    middle, half, steep = place[0], np.exp(place[1]), np.exp(place[2])
    return special.expit(steep * (middle + half - x)) - special.expit(steep * (middle - half - x))


def end(place, side):
    """Where the chance falls to the promised one on a side of the middle; None where it never is as high."""
    if right(place, place[0]) < SURE:
        return None
    return optimize.brentq(lambda x: right(place, x) - SURE, place[0], place[0] + side * 5.0, xtol=1e-13)


def assert_close(what, got, expect, absolute):
    if (got is None) != (expect is None) or got is not None and abs(got - expect) > absolute:
        raise AssertionError(f"{what}: laydown says {got}, the oracle {expect}")


def check(studio, got, counts):
    x = np.log([look[0] for look in studio["looks"]])
    found = np.array([ORDER.index(look[1]) for look in studio["looks"]])
    best = fitted(x, found)
    mine = [got["middle"], np.log(got["half_width"]), np.log(got["steepness"])]
    height = log_posterior(np.array(mine), x, found)
    if height < -best.fun - 1e-9:
        raise AssertionError(f"scipy climbs higher: {-best.fun} at {best.x}, laydown {height} at {mine}")
    for what, ours, theirs in zip(("middle", "ln half-width", "ln steepness"), mine, best.x):
        assert_close(what, ours, theirs, 2e-5)
    assert_close("uncertainty", got["middle_sd"], middle_sd(best.x, x, found), 1e-3 * got["middle_sd"])
    upper = end(best.x, 1)
    assert_close("reach", got["reach"], None if upper is None else upper - best.x[0], 1e-4)

    thin, of_right, thick = (int((found == kind).sum()) for kind in range(3))
    if len(x) < ENOUGH:
        lesson = "too few"
    elif not of_right:
        lesson = "none right"
    elif (thin >= BEYOND or thick >= BEYOND) and upper is None:
        lesson = "mixed"
    else:
        lesson = "window"
    if got["lesson"] != lesson:
        raise AssertionError(f"laydown says {got['lesson']}, the oracle {lesson}")
    counts[lesson] = counts.get(lesson, 0) + 1
    if lesson != "window":
        return
    low = np.exp(end(best.x, -1)) if thin >= BEYOND else None
    high = np.exp(upper) if thick >= BEYOND else None
    assert_close("from", got["from"], low, 1e-3)
    assert_close("to", got["to"], high, 1e-3)


def hold_against_the_truth(studio, got, counts):
    if got["best"]:
        truth = np.exp(studio["truth"]["middle"])
        counts["with a best"] = counts.get("with a best", 0) + 1
        counts["truth between"] = counts.get("truth between", 0) + (got["best"][0] <= truth <= got["best"][2])


def main():
    made = list(studios())
    if sys.argv[1] == "make":
        json.dump(made, sys.stdout)
        return
    counts, failures = {}, 0
    for number, (studio, got) in enumerate(zip(made, json.load(sys.stdin), strict=True)):
        hold_against_the_truth(studio, got, counts)
        try:
            if number < REFITTED:
                check(studio, got, counts)
        except AssertionError as difference:
            failures += 1
            print(f"studio {number}: {difference}", file=sys.stderr)
    print(f"{len(made)} studios, {REFITTED} fitted again: " + ", ".join(f"{count} {what}" for what, count in sorted(counts.items())))
    missing = {"too few", "mixed", "window", "with a best"} - counts.keys()
    held = counts.get("truth between", 0) / max(counts.get("with a best", 0), 1)
    print(f"the interval of the best, meant to hold for 95 %, held for {held:.1%}")
    # Laplace's approximation, and two standard deviations of so many studios.
    if failures or missing or not 0.91 <= held <= 0.98:
        sys.exit(f"{failures} differ; no case of {sorted(missing)}")


if __name__ == "__main__":
    main()
