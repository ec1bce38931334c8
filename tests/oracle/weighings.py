"""Dry weights, tests of scales, soaked bisque and seconds of dips, calculated again: uncertainties by the `uncertainties` package,
spreads by scipy, the law of a dip and its prediction interval by statsmodels.

    weighings.py make            writes seeded cases as JSON
    weighings.py check           reads what laydown made of them and compares
"""

import math
import warnings

import numpy as np
import statsmodels.api as sm
from scipy import optimize, stats
from uncertainties import ufloat

from cases import run

# What was weighed has no uncertainty of its own here: that is added apart.
warnings.filterwarnings("ignore", message="Using UFloat objects with std_dev==0")

CASES = 80
# Of core/domain/src/coat/dry.rs and bisque.rs.
WATER_FROM_AIR, POWDER_DENSITY, BLOTTING = 0.0005, 0.1, 0.002


def case(number):
    random = np.random.default_rng([1911, number])
    coats = [
        [float(random.uniform(5, 60)), float(random.uniform(1.3, 1.7)), float(random.choice([0.003, 0.01, 0.04])), float(random.uniform(2.4, 2.9))]
        for _ in range(int(random.integers(1, 4)))
    ]
    dry = sum(wet * solids(sg, density) for wet, sg, _, density in coats) * random.uniform(0.85, 1.15)
    bare = float(random.uniform(100, 900))
    times = random.uniform(1, 8, int(random.integers(4, 25)))
    k, scatter = random.uniform(1, 5), random.uniform(0.02, 0.15)
    # Weights are kept in whole milligrams.
    fired = round(float(random.uniform(50, 300)), 3)
    return {
        "step": float(random.choice([0.01, 0.1, 1.0])),
        # Scales keep whole milligrams.
        "repeatability": float(random.integers(0, 300)) / 1000,
        "bare": bare,
        "bone_dry": bare + float(min(dry, 0.9 * sum(coat[0] for coat in coats))),
        "coats": coats,
        "readings": (300 + random.normal(0, 0.2, int(random.integers(5, 15)))).tolist(),
        "dips": [[float(time), float(k * math.sqrt(time) * math.exp(random.normal(0, scatter)))] for time in times],
        "aim": float(k * math.sqrt(random.uniform(1, 8))),
        "soaked": [fired, round(fired * float(random.uniform(1.01, 1.2)), 3), round(fired * float(random.uniform(0.4, 0.7)), 3), 0.998],
    }


def solids(sg, density):
    """A gram of slurry is w/density of powder and 1 - w of water."""
    return (1 - 1 / sg) / (1 - 1 / density)


def close(what, got, expect, relative=1e-6):
    if not abs(got - expect) <= relative * max(1e-3, abs(expect)):
        raise AssertionError(f"{what}: laydown says {got}, the oracle {expect}")


def net_uncertainty(made):
    """Two readings, each rounded, each repeating so well."""
    return math.sqrt(2 * made["step"] ** 2 / 12 + 2 * made["repeatability"] ** 2)


def check_dry(made, got):
    bare, dry_piece = made["bare"], made["bone_dry"]
    weighed = ufloat(dry_piece, 0) - ufloat(bare, 0) + ufloat(0, net_uncertainty(made)) + ufloat(0, WATER_FROM_AIR * bare)
    close("dry glaze", got["weighed"][0], weighed.nominal_value)
    close("how sure", got["weighed"][1], weighed.std_dev)
    by_sg = [
        ufloat(wet, net_uncertainty(made)) * solids(ufloat(sg, sg_u), ufloat(density, POWDER_DENSITY)) for wet, sg, sg_u, density in made["coats"]
    ]
    for one, expect in zip(got["by_sg"], by_sg, strict=True):
        close("by the SG", one[0], expect.nominal_value)
        close("how sure by the SG", one[1], expect.std_dev)
    # The package knows that each share has its own coat above and below the line.
    for one, share in zip(got["split"], [weighed * coat / sum(by_sg) for coat in by_sg], strict=True):
        close("a coat's share", one[0], share.nominal_value)
        close("how sure a share is", one[1], share.std_dev)
    apart = weighed - sum(by_sg)
    if got["disagrees"] != (abs(apart.nominal_value) > stats.norm.ppf(0.975) * apart.std_dev):
        raise AssertionError(f"disagrees: laydown says {got['disagrees']}, the oracle {apart}")


def check_combined(made, got):
    """Two estimates of one logarithm: their weighted mean is a regression on a constant, its Birge ratio the residual's spread."""
    wet, sg, sg_u, density = made["coats"][0]
    sg_says = ufloat(wet, net_uncertainty(made)) * solids(ufloat(sg, sg_u), density)
    dry, dry_u = got["split"][0]
    powder = solids(sg, ufloat(density, POWDER_DENSITY))
    spread = np.array([sg_says.std_dev / sg_says.nominal_value, math.hypot(dry_u / dry, powder.std_dev / powder.nominal_value)])
    fit = sm.WLS(np.log([sg_says.nominal_value, dry]), np.ones(2), weights=spread**-2).fit()
    birge = max(1.0, math.sqrt(fit.scale))
    close("both together", got["combined"][0], math.exp(fit.params[0]))
    close("how sure together", got["combined"][1] / got["combined"][0], birge / math.sqrt((spread**-2).sum()))


def check_repeats(made, got):
    readings = np.array(made["readings"])
    mean, deviation, low, high = got["repeats"]
    close("mean", mean, readings.mean())
    close("standard deviation", deviation, readings.std(ddof=1))
    freedom = len(readings) - 1
    ends = np.sqrt(freedom * readings.var(ddof=1) / stats.chi2.ppf([0.975, 0.025], freedom))
    close("its lower end", low, ends[0])
    close("its upper end", high, ends[1])


def check_dips(made, got):
    times, laid = np.array(made["dips"]).T
    fit = sm.OLS(laid, np.sqrt(times)).fit()
    close("k", got["law"][0], fit.params[0])
    close("its uncertainty", got["law"][1], fit.bse[0])
    close("off the law", got["law"][2], math.sqrt(fit.scale))
    time, from_, to = got["hint"]
    close("the hint", time, (made["aim"] / fit.params[0]) ** 2)

    def edge(seconds, side):
        # Where the prediction interval of a single dip ends.
        return fit.get_prediction([[math.sqrt(seconds)]]).conf_int(obs=True)[0][side] - made["aim"]

    if from_ > 1e-9:
        close("from", from_, optimize.brentq(edge, 1e-12, time, args=(1,)), 1e-5)
    elif edge(1e-12, 1) < 0:
        raise AssertionError("a dip of no time takes up too little")
    if to is not None:
        close("to", to, optimize.brentq(edge, time, time * 1e6, args=(0,)), 1e-5)
    elif edge(1e9, 0) > 0:
        raise AssertionError("there is an end")


def check_soaked(made, got):
    dry, soaked, _, _ = made["soaked"]
    rounded = made["step"] / math.sqrt(12)
    piece = (ufloat(soaked, rounded) - ufloat(dry, rounded)) / dry
    both = ufloat(soaked, rounded), ufloat(dry, rounded)
    drinks = (both[0] - both[1]) / both[1] + ufloat(0, BLOTTING)
    close("absorption", got["absorption"][0], piece.nominal_value)
    close("how sure of the absorption", got["absorption"][1], drinks.std_dev)


if __name__ == "__main__":
    run("weighings", [case(number) for number in range(CASES)],
        (check_dry, check_combined, check_repeats, check_dips, check_soaked),
        f"{CASES} dry pieces, scale tests, dips and soaked pieces calculated again")
