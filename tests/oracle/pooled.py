"""The pooled model of a glaze's target, fitted again by scipy, and by statsmodels' OrderedModel where the two are the same.

    pooled.py make              writes seeded evidence as JSON
    pooled.py check             reads what laydown made of it and compares, to 1e-6

The posterior is written here piece by piece from the table in core/domain/src/learning/pooled: every effect is a parameter of its
own, however many there are, and nothing is merged. scipy climbs from several starts without derivatives of its own; a few steps of
Newton by differences end the climb. The special case has no effects, flat priors, no slips and no age.
"""

import json
import warnings

import numpy as np
from scipy import optimize, special
from statsmodels.miscmodels.ordinal_model import OrderedModel

from cases import run

ORDER = ["thin", "right", "thick"]
CASES, PLAIN = 50, 10
LAPSE, STEEPNESS, CONTROL, MOST_CONTROLS = 0.03, (np.log(20.0), 0.7), 0.5, 2
STARTING_SD, HALF_WIDTHS, HALF_WIDTH_SD = 0.31, {"low": 0.30, "medium": 0.20, "high": 0.13}, 0.5
CLASS, FORM, BODY, OWN_AREA = 0.05, 0.02, 0.06, 0.022
TILE_TO_POT, TILE_TO_TILE, HALF_LIFE, INFLATION = 0.10, 0.05, 500.0, 1.1
TODAY = 1_000.0


def normal(x, mean, sd):
    return -0.5 * ((x - mean) / sd) ** 2 - np.log(sd * np.sqrt(2 * np.pi))


def place(form):
    return {"form": form["id"], "class": form["class"], "area": form["area"], "body": form["body"]}


def case(number):
    random = np.random.default_rng([16, number])
    if number < PLAIN:
        form = {"id": 1, "class": "jar", "area": 0.0, "body": None}
        x = random.normal(np.log(5.5), 0.3, 150)
        slack = random.logistic(0, 1 / random.uniform(8, 20), len(x))
        found = np.where(x + slack < np.log(4.9), 0, np.where(x + slack > np.log(6.5), 2, 1))
        pots = [{"place": place(form), "laydown": np.exp(a), "u": 0.0, "found": ORDER[b], "day": TODAY} for a, b in zip(x, found)]
        return {"plain": True, "pots": pots, "controls": [], "tiles": [], "starting": 5.5, "sensitivity": "medium", "job": place(form)}
    classes, bodies = ["jar", "vase"], [1, 2] if random.uniform() < 0.5 else [1]
    forms = [
        {
            "id": form,
            "class": classes[form > 2],
            "area": float(random.choice([0.02, 0.08])),
            "body": int(random.choice(bodies)) if random.uniform() < 0.9 else None,
        }
        for form in (1, 2, 3)
    ]
    middle, half = np.log(random.uniform(4, 8)), random.uniform(0.1, 0.3)
    pots = []
    for _ in range(int(random.choice([0, 3, 10, 40, 100]))):
        x = middle + random.normal(0, 0.25)
        seen = x + random.logistic(0, 0.04)
        found = "thin" if seen < middle - half else "thick" if seen > middle + half else "right"
        if random.uniform() < 0.03:
            x += np.log(10)
        day = TODAY - random.uniform(0, 900)
        chosen = forms[random.integers(3)]
        pots.append({"place": place(chosen), "laydown": np.exp(x), "u": random.uniform(0.005, 0.06), "found": found, "day": day})
    controls = [
        {"place": place(forms[random.integers(3)]), "laydown": np.exp(middle + random.normal(0, 0.1)), "u": 0.02, "day": TODAY - 50}
        for _ in range(random.integers(0, 12))
    ]
    tiles = [{"laydown": np.exp(middle + random.normal(0, 0.1)), "u": 0.03} for _ in range(random.integers(0, 4))]
    job = dict(place(forms[0])) if random.uniform() < 0.5 else {"form": 9, "class": "jar", "area": 0.08, "body": 1}
    return {
        "plain": False,
        "pots": pots,
        "controls": controls,
        "tiles": tiles,
        "starting": random.uniform(3.5, 8),
        "sensitivity": str(random.choice(["low", "medium", "high"])),
        "job": job,
    }


class Model:
    def __init__(self, made):
        self.made = made
        pieces = [(pot, ORDER.index(pot["found"]), False) for pot in made["pots"]]
        pieces += [(control, 1, True) for control in made["controls"]]
        places = [piece["place"] for piece, *_ in pieces]
        bodies = {where["body"] for where in places + [made["job"]]} - {None}
        self.effects = []
        rows = [self.sizes(where, bodies) for where in places]
        self.job = self.sizes(made["job"], bodies)
        self.design = np.zeros((len(rows), len(self.effects)))
        for at, row in enumerate(rows):
            self.design[at] = [row.get(effect, 0.0) for effect in self.effects]
        self.job = np.array([self.job.get(effect, 0.0) for effect in self.effects])
        self.x = np.log([piece["laydown"] for piece, *_ in pieces])
        self.variance = np.array([piece["u"] ** 2 for piece, *_ in pieces])
        self.weight = np.array([0.5 ** ((TODAY - piece["day"]) / HALF_LIFE) for piece, *_ in pieces])
        controls = [json.dumps(control["place"]) for control in made["controls"]]
        self.weight[len(made["pots"]) :] *= [min(1, MOST_CONTROLS / controls.count(where)) for where in controls]
        self.found = np.array([found for _, found, _ in pieces], dtype=int)
        self.is_control = np.array([is_control for *_, is_control in pieces], dtype=bool)

    def sizes(self, where, bodies):
        own = min(where["area"], OWN_AREA)
        shared = np.sqrt(where["area"] ** 2 - own**2)
        sizes = {
            ("class", where["class"]): CLASS,
            ("proportions", where["class"]): shared,
            ("form", where["form"]): np.hypot(FORM, own),
        }
        if len(bodies) > 1 and where["body"] is not None:
            sizes[("body", where["body"])] = BODY
        self.effects += [effect for effect in sizes if effect not in self.effects]
        return sizes

    def log_posterior(self, at):
        middle, half, steep, effects = at[0], np.exp(at[1]), np.exp(at[2]), at[3:]
        value = normal(middle, np.log(self.made["starting"]), STARTING_SD)
        value += normal(at[1], np.log(HALF_WIDTHS[self.made["sensitivity"]]), HALF_WIDTH_SD)
        value += normal(at[2], *STEEPNESS) + normal(effects, 0, 1).sum()
        tiles = self.made["tiles"]
        if tiles:
            own = np.mean([tile["u"] ** 2 + TILE_TO_TILE**2 for tile in tiles]) / len(tiles) * (np.pi / 2 if len(tiles) > 2 else 1)
            centre = np.median(np.log([tile["laydown"] for tile in tiles]))
            meant = np.exp(normal(middle, centre, np.sqrt(own + TILE_TO_POT**2)))
            # A slip lies anywhere from 1 to 25 g per 100 cm2.
            value += np.log((1 - LAPSE) * meant + LAPSE * np.exp(-1.169))
        # Control pieces bound the middle by what is usual, and say nothing of width and steepness.
        usual = HALF_WIDTHS[self.made["sensitivity"]] * CONTROL
        half = np.where(self.is_control, usual, half)
        steep = np.where(self.is_control, np.exp(STEEPNESS[0]), steep)
        flat = steep / np.sqrt(1 + np.pi / 8 * steep**2 * self.variance)
        there = middle + self.design @ effects
        thin = special.expit(flat * (there - half - self.x))
        thick = special.expit(flat * (self.x - there - half))
        chance = np.choose(self.found, [thin, 1 - thin - thick, thick])
        return value + (self.weight * np.log((1 - LAPSE) * chance + LAPSE / 3)).sum()

    def climb(self):
        best = None
        right = self.x[self.found == 1]
        starts = [np.log(self.made["starting"])] + ([np.median(right)] if len(right) else [])
        for start in starts:
            at = np.concatenate([[start, np.log(HALF_WIDTHS[self.made["sensitivity"]]), STEEPNESS[0]], np.zeros(len(self.effects))])
            at = optimize.minimize(lambda at: -self.log_posterior(at), at, method="BFGS", options={"gtol": 1e-5}).x
            for _ in range(6):
                slope, curvature = self.derivatives(at)
                at = at - np.linalg.solve(curvature, slope)
            if best is None or self.log_posterior(at) > self.log_posterior(best):
                best = at
        return best

    def derivatives(self, at):
        size, by = len(at), 1e-4
        unit = np.eye(size) * by
        value = self.log_posterior
        # Fourth order, so that what the differences leave out is far below what is compared.
        slope = np.array([(8 * (value(at + e) - value(at - e)) - value(at + 2 * e) + value(at - 2 * e)) / (12 * by) for e in unit])
        curvature = np.empty((size, size))
        for i in range(size):
            for j in range(i, size):
                signs = [(a, b) for a in (1, -1) for b in (1, -1)]
                bent = sum(a * b * value(at + 10 * (a * unit[i] + b * unit[j])) for a, b in signs) / (4 * (10 * by) ** 2)
                fine = sum(a * b * value(at + 5 * (a * unit[i] + b * unit[j])) for a, b in signs) / (4 * (5 * by) ** 2)
                curvature[i, j] = curvature[j, i] = (4 * fine - bent) / 3
        return slope, curvature


def close(what, got, expect, absolute):
    if not abs(got - expect) <= absolute:
        raise AssertionError(f"{what}: laydown says {got}, the oracle {expect}")


def check(made, got):
    model = Model(made)
    at = model.climb()
    close("middle", got["middle"], at[0], 1e-6)
    close("ln half-width", got["ln_half_width"], at[1], 1e-6)
    close("ln steepness", got["ln_steepness"], at[2], 1e-6)
    along = np.concatenate([[1, 0, 0], model.job])
    close("the job's middle", got["job_middle"], along @ at, 1e-6)
    variance = along @ np.linalg.inv(-model.derivatives(at)[1]) @ along
    # Effects that only the job has are not widened.
    unseen = (model.job[~model.design.any(axis=0)] ** 2).sum()
    close("its uncertainty", got["job_sd"], np.sqrt((variance - unseen) * INFLATION**2 + unseen), 1e-6)


def check_plain(made, got):
    x = np.log([pot["laydown"] for pot in made["pots"]])
    found = np.array([ORDER.index(pot["found"]) for pot in made["pots"]])
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        model = OrderedModel(found, (x - x.mean())[:, None], distr="logit")
        fitted = model.fit(method="newton", maxiter=200, tol=1e-14, disp=False)
    slope, (_, low, high, _) = fitted.params[0], model.transform_threshold_params(fitted.params)
    close("middle", got["middle"], x.mean() + (low + high) / (2 * slope), 1e-6)
    close("ln half-width", got["ln_half_width"], np.log((high - low) / (2 * slope)), 1e-6)
    close("ln steepness", got["ln_steepness"], np.log(slope), 1e-6)
    # The middle by the parameters (slope, first cut, logarithm of the distance of the cuts).
    middle = lambda p: (2 * p[1] + np.exp(p[2])) / (2 * p[0])
    by = optimize.approx_fprime(fitted.params, middle, 1e-7)
    close("its uncertainty", got["job_sd"], np.sqrt(by @ fitted.cov_params() @ by) * INFLATION, 1e-5)


if __name__ == "__main__":
    run("pooled", [case(number) for number in range(CASES)],
        (lambda one, got: (check_plain if one["plain"] else check)(one, got),),
        f"{CASES} pooled models fitted again, {PLAIN} of them by statsmodels")
