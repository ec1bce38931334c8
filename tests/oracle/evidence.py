"""What evidence says beside a target, calculated again: shares by statsmodels, sets by trying every choice, sums by their recursion,
moving ranges by numpy, sizes and use from their definitions.

    evidence.py make            writes seeded cases as JSON
    evidence.py check           reads what laydown made of them and compares
"""

import itertools

import numpy as np
from scipy import optimize
from statsmodels.stats.proportion import proportion_confint

from cases import run

CASES = 60
ALLOWANCE, ALARM, LEAST_SD = 0.5, 4.5, 0.02
WEEKS, KEPT = 8.0, 1 / 3
# Of core/domain/src/form/shape_class.rs.
OUTSIDE_UNCERTAINTY = 0.03


def case(number):
    random = np.random.default_rng([1610, number])
    of = int(random.integers(1, 60))
    coats = int(random.integers(4, 80))
    shift, since = random.choice([0.0, 0.06, -0.08]), int(random.integers(0, coats))
    logs = random.normal(0, random.uniform(0.005, 0.06), coats)
    logs[since:] += shift
    pots = [
        {"laydown": float(np.exp(random.normal(1.7, 0.2))), "found": str(random.choice(["thin", "right", "thick"]))}
        for _ in range(int(random.integers(0, 30)))
    ]
    return {
        "share": [int(random.integers(0, of + 1)), of],
        "shelf": random.uniform(3, 9, int(random.integers(4, 13))).tolist(),
        "size": int(random.integers(2, 5)),
        "ratios": np.exp(logs).tolist(),
        "pots": pots,
        "zone": str(random.choice(["inside", "outside"])),
        "factor": float(random.uniform(0.8, 1.2)),
        "known": random.uniform(150, 400, 2).tolist(),
        "capacities": sorted(random.uniform(100, 3_000, 5).tolist()),
        "sg": float(random.uniform(1.3, 1.7)),
        "sg_u": float(random.uniform(0.001, 0.01)),
        "density": 2.6,
        "coats": [[float(day), float(random.uniform(5, 60))] for day in sorted(random.uniform(0, 90, int(random.integers(1, 60))))],
        "hands": [[str(random.choice(["Ana", "Bo", "Cy"])), float(np.exp(random.normal(0, 0.05)))] for _ in range(int(random.integers(0, 40)))],
        "today": 90.0,
        "mixed": float(random.uniform(1_000, 10_000)),
    }


def close(what, got, expect, relative=1e-9):
    if not abs(got - expect) <= relative * max(1.0, abs(expect)):
        raise AssertionError(f"{what}: laydown says {got}, the oracle {expect}")


def check_share(made, got):
    for what, ours, theirs in zip(("from", "to"), got["interval"], proportion_confint(*made["share"], method="wilson")):
        close(f"share {what}", ours, theirs)


def check_set(made, got):
    shelf, size = np.array(made["shelf"]), made["size"]
    # Every choice there is.
    least = min(np.log(shelf[list(chosen)]).std(ddof=1) for chosen in itertools.combinations(range(len(shelf)), size))
    chosen = shelf[got["set"]["members"]]
    if len(set(got["set"]["members"])) != size:
        raise AssertionError(f"{got['set']} is not of {size} pieces")
    close("how far the best set lies apart", np.log(chosen).std(ddof=1), least)
    close("the next piece", got["set"]["next"], np.exp(np.log(chosen).mean()))
    close("the set's spread", got["set"]["sd"], chosen.std(ddof=1))


def check_drift(made, got):
    logs = np.log(made["ratios"])
    sd = max(np.abs(np.diff(logs)).mean() * np.sqrt(np.pi) / 2, LEAST_SD)
    close("the hand", got["drift"]["sd"], sd)
    alarm = None
    for side, name in ((1, "high"), (-1, "low")):
        total, since = 0.0, 0
        for at, off in enumerate(side * logs / sd):
            total = max(0.0, total + off - ALLOWANCE)
            if total == 0.0:
                since = at + 1
            if total > ALARM:
                if alarm is None or at < alarm[0]:
                    alarm, rest = (at, since, name), [total]
                    for later in logs[at + 1 :]:
                        rest.append(max(0.0, rest[-1] + side * later / sd - ALLOWANCE))
                    # It lasts until its sum is highest, before that is nothing again.
                    gone = rest.index(0.0) if 0.0 in rest else len(rest)
                    until = at + max(range(gone), key=rest.__getitem__)
                break
    if got["drift"]["alarm"] != (None if alarm is None else list(alarm)):
        raise AssertionError(f"laydown says {got['drift']['alarm']}, the oracle {alarm}")
    close("how far off", got["drift"]["mean_off"], np.exp(logs[alarm[1] : until + 1].mean() if alarm else logs.mean()) - 1)


def check_sizes(made, got):
    sg, density = made["sg"], made["density"]
    solids = density * (sg - 1) / (sg * (density - 1))
    middle, sd = got["outlook"]
    exponent = 2 / 3 if made["zone"] == "inside" else 0.62
    areas = [size["area"] for size in got["sizes"]]
    slope = np.polyfit(np.log(made["capacities"]), np.log(areas), 1)[0]
    close("the exponent of the areas", slope, exponent)
    # By the class's own area at the first size, the factor is what is left.
    close("the studio's proportions", areas[0] / got["class_area"], made["factor"])
    for capacity, size in zip(made["capacities"], got["sizes"], strict=True):
        wet = np.exp(middle) * size["area"] / 100 / solids
        close("grams", size["wet"], wet)
        nearest = min(abs(np.log(capacity / known)) for known in made["known"])
        apart = 0.0 if made["zone"] == "inside" else OUTSIDE_UNCERTAINTY * nearest
        all_of_it = np.sqrt(sd**2 + (made["sg_u"] / (sg * (sg - 1))) ** 2 + apart**2)
        close("from", size["from"], wet * np.exp(-1.959963984540054 * all_of_it))
        close("to", size["to"], wet * np.exp(1.959963984540054 * all_of_it))
    # The curve in a studio's own terms: grams are k V^e, refitted by scipy.
    (k, power), _ = optimize.curve_fit(lambda v, k, e: k * v**e, made["capacities"], [size["wet"] for size in got["sizes"]], p0=[1, 0.7])
    close("the exponent of the grams", power, exponent, 1e-6)


def check_use(made, got):
    days, wet = np.array(made["coats"]).T
    recent = made["today"] - days <= WEEKS * 7
    if not recent.any():
        if got["use"] is not None:
            raise AssertionError("there was no use")
        return
    weeks = WEEKS if not recent.all() else max(1.0, (made["today"] - days.min()) / 7)
    close("grams a week", got["use"]["per_week"], wet[recent].sum() / weeks)
    ordered = np.sort(wet[recent])
    close("grams a coat", got["use"]["per_coat"], ordered[len(ordered) // 2])
    full = made["mixed"] * made["sg"]
    rest = max(0.0, full - wet.sum())
    close("grams left", got["left"]["wet"], rest)
    close("coats left", got["left"]["coats"], np.floor(max(0.0, rest - full * KEPT) / ordered[len(ordered) // 2]), 0.0)
    powder, water = got["mix"]
    # Water and powder together have the volume that makes the specific gravity.
    close("specific gravity of what is mixed", (powder + water) / (powder / made["density"] + water), made["sg"])


def check_hands(made, got):
    logs = {}
    for name, ratio in made["hands"]:
        logs.setdefault(name, []).append(np.log(ratio))
    expect = {name: values for name, values in logs.items() if len(values) > 1}
    if {hand["name"] for hand in got["hands"]} != set(expect):
        raise AssertionError(f"hands: {got['hands']}")
    for hand in got["hands"]:
        values = np.array(expect[hand["name"]])
        close("a hand's mean", hand["mean_off"], np.exp(values.mean()) - 1)
        close("a hand's spread", hand["spread"], values.std(ddof=1))


if __name__ == "__main__":
    run("evidence", [case(number) for number in range(CASES)],
        (check_share, check_set, check_drift, check_sizes, check_use, check_hands),
        f"{CASES} shelves, shares, drifts, sizes, buckets and hands calculated again")
