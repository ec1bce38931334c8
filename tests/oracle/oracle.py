"""Recomputes laydown's targets and verdicts from the definitions, with other people's statistics.

Reads the cases of `cargo run -p laydown-tests --example oracle_cases` from standard input. Propagation of uncertainty is
left to the `uncertainties` package, distributions to scipy; corrections are found by trying every weight the scale can
show. Nothing here is translated from the Rust code. The assumptions (5 % from pot to pot, and so on) are stated in
`core/domain/src/coat/target.rs` and repeated here as numbers.
"""

import json
import math
import sys
import warnings

import numpy as np
from scipy import stats
from uncertainties import ufloat, umath

# A factor that is exactly 1 is meant to have no uncertainty.
warnings.filterwarnings("ignore", message="Using UFloat objects with std_dev==0")

POT_TO_POT, POT_TO_POT_FREEDOM = 0.05, 8
SAME_CLASS, OTHER_CLASS, TILE_TO_POT = 0.03, 0.08, 0.10
OUTSIDE_EXPONENT, PLATE_EXPONENT_UNCERTAINTY = (0.62, 0.03), 0.15
STARTING_SPAN = (3.0, 10.0)
TOLERANCE = {"low": 0.15, "medium": 0.07, "high": 0.04}
MOST_LAYDOWN = 25.0
EDGE = 1e-5
"""Readings this near an edge may fall either way in floating point, in grams."""


def solids(sg, density):
    """Brongniart, derived here from volumes: a gram of slurry is w/density of powder and 1 - w of water."""
    return (1 - 1 / sg) / (1 - 1 / density)


def assert_close(what, got, expect, relative=1e-7, absolute=1e-9):
    if not math.isclose(got, expect, rel_tol=relative, abs_tol=absolute):
        raise AssertionError(f"{what}: laydown says {got}, the oracle {expect}")


def two_sided(freedom):
    return stats.norm.ppf(0.975) if math.isinf(freedom) else stats.t.ppf(0.975, freedom)


class Aim:
    def __init__(self, ln_wet, freedom, source, pots):
        self.wet = math.exp(ln_wet.nominal_value)
        self.uncertainty = ln_wet.std_dev
        spread = math.exp(two_sided(freedom) * self.uncertainty)
        self.interval = (self.wet / spread, self.wet * spread)
        self.source, self.pots = source, pots


def growth_exponent(job):
    """Between what a form holds and the area of the zone: walls, foot and bare foot grow less than the pot."""
    if job["class"] == "plate":
        return ufloat(2 / 3, PLATE_EXPONENT_UNCERTAINTY)
    return ufloat(2 / 3, 0) if job["zone"] == "inside" else ufloat(*OUTSIDE_EXPONENT)


def area_ratios(job, control):
    """Both ways from a control piece's form to the job's, as uncertain numbers."""
    if control["same_form"]:
        return {"control": ufloat(1, 0)}
    same_class = control["class"] == job["class"]
    theirs = ufloat(control["area"], control["area"] * control["area_relative_uncertainty"])
    ours = ufloat(job["area"], job["area"] * job["area_relative_uncertainty"])
    ways = {"control_by_area": ours / theirs * ufloat(1, 0 if same_class else OTHER_CLASS)}
    if same_class and control["capacity"] and job["capacity"]:
        size = job["capacity"] / control["capacity"]
        exponent = growth_exponent(job)
        # Two sizes fail to be similar, and the exponent is not known better: the further apart, the rougher.
        ways["control_by_capacity"] = size**exponent * ufloat(1, SAME_CLASS)
    return ways


def surest_ratio(job, control):
    return min(area_ratios(job, control).items(), key=lambda way: way[1].std_dev / way[1].nominal_value)


def from_controls(job, controls, net_uncertainty):
    density = job["powder_density"]
    today = solids(ufloat(job["sg"], job["sg_uncertainty"]), density)
    source, ratio = surest_ratio(job, controls[0])
    # One bucket as a rule: the control pieces' specific gravities err together.
    together = ufloat(0, 1)
    carried = []
    for control in controls:
        wet = ufloat(control["wet"], net_uncertainty)
        then = solids(control["sg"] + control["sg_uncertainty"] * together, density)
        carried.append(umath.log(wet * ratio * then / today))
    pots = len(carried)
    values = np.array([value.nominal_value for value in carried])
    squares = values.var(ddof=1) * (pots - 1) if pots > 1 else 0.0
    freedom = POT_TO_POT_FREEDOM + pots - 1
    spread = math.sqrt((POT_TO_POT_FREEDOM * POT_TO_POT**2 + squares) / freedom / pots)
    ln_wet = sum(carried) / pots + ufloat(0, spread)
    effective = ln_wet.std_dev**4 / (spread**4 / freedom)
    return Aim(ln_wet, effective, source, pots)


def from_laydown(job, laydown, source):
    area = ufloat(job["area"], job["area"] * job["area_relative_uncertainty"])
    today = solids(ufloat(job["sg"], job["sg_uncertainty"]), job["powder_density"])
    return Aim(umath.log(laydown * area / 100 / today), math.inf, source, 0)


def aim_of(case, net_uncertainty):
    job, controls = case["job"], case["controls"]
    same = [control for control in controls if control["same_form"]]
    if same:
        return from_controls(job, same, net_uncertainty)
    if controls:
        names = sorted({control["form"] for control in controls})
        groups = [[control for control in controls if control["form"] == name] for name in names]
        return min((from_controls(job, group, net_uncertainty) for group in groups), key=lambda aim: aim.uncertainty)
    if case["tiles"]:
        logs = [umath.log(ufloat(laydown, laydown * relative)) for laydown, relative in case["tiles"]]
        return from_laydown(job, umath.exp(sum(logs) / len(logs)) * ufloat(1, TILE_TO_POT), "tile")
    sd = math.log(STARTING_SPAN[1] / STARTING_SPAN[0]) / (2 * stats.norm.ppf(0.975))
    return from_laydown(job, case["starting"] * ufloat(1, sd), "starting")


def exact_half_width(step, repeatability):
    """95 % half-width of a net weight: two roundings, and two draws of a normal error where a repeatability is known."""
    rounding = stats.triang(c=0.5, loc=-step, scale=2 * step)
    if not repeatability:
        return rounding.ppf(0.975)
    normal = stats.norm(scale=repeatability * math.sqrt(2))
    nodes, weights = np.polynomial.legendre.leggauss(200)
    # The triangle has a corner in the middle: each half on its own.
    places = np.concatenate([(nodes - 1) / 2, (nodes + 1) / 2]) * step
    weights = np.concatenate([weights, weights]) / 2 * step * rounding.pdf(places)
    low, high = 0.0, step + 10 * repeatability
    for _ in range(80):
        middle = (low + high) / 2
        inside = weights @ (normal.cdf(middle - places) - normal.cdf(-middle - places))
        low, high = (middle, high) if inside < 0.95 else (low, middle)
    return low


def check_target(case, aim):
    got = case["target"]
    assert_close("aim", got["wet"], aim.wet)
    for end in (0, 1):
        assert_close("interval", got["interval"][end], aim.interval[end])
    tolerance = TOLERANCE[case["job"]["sensitivity"]]
    assert_close("low", got["low"], aim.wet * (1 - tolerance))
    assert_close("high", got["high"], aim.wet * (1 + tolerance))
    if (got["source"], got["pots"]) != (aim.source, aim.pots):
        raise AssertionError(f"laydown goes by {got['source']} of {got['pots']}, the oracle by {aim.source} of {aim.pots}")


def check_verdict(case, aim, worst):
    job, net, got = case["job"], case["net"], case["verdict"]
    dry = net * solids(job["sg"], job["powder_density"])
    laydown = dry / job["area"] * 100
    if got is None or laydown > MOST_LAYDOWN:
        if got is not None or laydown <= MOST_LAYDOWN or "MoreThanPieceHolds" not in case["refused"]:
            raise AssertionError(f"a laydown of {laydown} is answered with {got or case['refused']}")
        return "refused"
    step, repeatability = case["scale"]["step"], case["scale"]["repeatability"]
    exact = exact_half_width(step, repeatability)
    # With a repeatability laydown combines two half-widths and says it is within 1 % of the exact one.
    assert_close("half-width", got["half_width"], exact, relative=0.01 if repeatability else 1e-9)
    worst.append(abs(got["half_width"] / exact - 1))

    half_width = got["half_width"]
    low, high = (aim.wet * (1 + sign * TOLERANCE[job["sensitivity"]]) for sign in (-1, 1))
    near_edge = any(abs(net + sign * half_width - edge) < EDGE for sign in (-1, 1) for edge in (low, high))
    if low <= net - half_width and net + half_width <= high:
        kind = "within"
    elif net + half_width < low:
        kind = "short"
    elif net - half_width > high:
        kind = "over"
    else:
        kind = "cannot_tell"
    if not near_edge and got["kind"] != kind:
        raise AssertionError(f"net {net}: laydown says {got['kind']}, the oracle {kind}")

    # Every weight that the scale can show from nothing to well over the span.
    shown = np.arange(0, math.ceil(high / step) + 2) * step
    within = shown[(shown - half_width >= low - EDGE / 10) & (shown + half_width <= high + EDGE / 10)]
    if got["too_coarse"] != (within.size == 0):
        raise AssertionError(f"too coarse: laydown says {got['too_coarse']}, {within.size} weights would be within")
    assert_close("to the aim", got["to_aim"], aim.wet - net, absolute=1e-6)
    if kind == "within":
        correction = 0.0
    elif within.size == 0:
        correction = aim.wet - net
    else:
        correction = within[np.abs(within - net).argmin()] - net
    if not near_edge:
        assert_close("to within", got["to_within"], correction, absolute=1e-6)
    assert_close("dry", got["dry"], dry)
    assert_close("laydown", got["laydown"], laydown)
    if case["controls"]:
        control = case["controls"][0]
        _, ratio = surest_ratio(job, control)
        on_control = dry / ratio.nominal_value / solids(control["sg"], job["powder_density"])
        assert_close("on the control piece", got["on_control"], on_control)
    return kind


def main():
    cases = json.load(sys.stdin)
    counts, failures, worst = {}, 0, []
    for number, case in enumerate(cases):
        step, repeatability = case["scale"]["step"], case["scale"]["repeatability"] or 0.0
        net_uncertainty = math.sqrt(step**2 / 6 + 2 * repeatability**2)
        try:
            aim = aim_of(case, net_uncertainty)
            check_target(case, aim)
            for what in (aim.source, check_verdict(case, aim, worst)):
                counts[what] = counts.get(what, 0) + 1
        except AssertionError as difference:
            failures += 1
            print(f"case {number}: {difference}", file=sys.stderr)
    print(f"{len(cases)} cases: " + ", ".join(f"{count} {what}" for what, count in sorted(counts.items())))
    print(f"half-width against the exact one: {max(worst):.2%} apart at most")
    expected = {"control", "control_by_area", "control_by_capacity", "tile", "starting"}
    expected |= {"within", "short", "over", "cannot_tell", "refused"}
    missing = expected - counts.keys()
    if missing:
        print(f"no case of {', '.join(sorted(missing))}", file=sys.stderr)
    if failures or missing:
        sys.exit(f"{failures} of {len(cases)} cases differ")


if __name__ == "__main__":
    main()
