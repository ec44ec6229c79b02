"""Balances of amounts, torques and viscosities."""

import math
from decimal import Decimal

import numpy as np
from scipy import integrate, optimize, stats

from routes import area_under, route


@route("mixing/exponential-feed/by-steps")
def feed():
    """The specific rate that carries 10 kg to 100 kg in 1800 s, found by integrating dM/dt = kM."""

    def mass(rate, until):
        return integrate.solve_ivp(lambda t, y: [rate * y[0]], (0, until), [10.0], rtol=1e-12, atol=1e-12).y[0][-1]

    rate = optimize.brentq(lambda k: mass(k, 1800) - 100, 1e-4, 1e-2, xtol=1e-14)
    return {"specificRate": rate, "rateStart": 10 * rate, "rateEnd": 100 * rate, "massInVessel": mass(rate, 900)}


@route("rheology/packed-fraction/by-volumes")
def packed():
    """100 g of pigment and the 20 g of linseed oil that fill its gaps, as volumes."""
    pigment, oil = 0.1 / 4200, 0.02 / 935
    return pigment / (pigment + oil)


@route("mixing/cavern/torque-at-wall")
def cavern_at_wall():
    """The torque of the impeller, carried by a yield stress on the side and both ends of a cylinder as wide as the vessel."""
    power = 5 * 1000 * 12**3 * 0.1**5
    torque = power / (2 * math.pi * 12)
    rings = np.linspace(0, 0.125, 20001)
    ends = 2 * area_under(2 * math.pi * rings * rings * 20, rings)
    side_per_height = 2 * math.pi * 0.125 * 0.125 * 20
    return {"reachesWall": True, "height": (torque - ends) / side_per_height}


@route("oils/viscosity/grunberg-nissan/as-product")
def grunberg():
    """Roots and products instead of logarithms; the excess searched for."""
    return 0.01**0.5 * 0.1**0.5 * math.e ** (0.25 * 0.8)


@route("oils/grunberg-nissan-term/by-search")
def grunberg_term():
    return optimize.brentq(lambda g: 0.01**0.25 * 0.04**0.75 * math.e ** (0.1875 * g) / 0.03 - 1, -5, 5, xtol=1e-14)


@route("rheology/let-down/two-equations")
def let_down():
    paste, base = np.linalg.solve([[1, 1], [0.5, 0.01]], [20, 0.6])
    return {"paste": paste, "base": base}


def spread_of_newton(off):
    """Four readings whose shear rate over stress is 1 − off, 1 + off and so on: relative residuals of the best straight line through zero, with 3 degrees of freedom."""
    ratio = np.array([1 - off, 1 + off, 1 - off, 1 + off])
    viscosity = np.linalg.lstsq(ratio[:, None], np.ones(4), rcond=None)[0][0]
    return math.sqrt(((1 - viscosity * ratio) ** 2).sum() / 3)


# Four readings that scatter by 10 % each miss a true line by more than this once in a hundred times.
RARELY = 0.1 * math.sqrt(stats.chi2.ppf(0.99, 3) / 3)


@route("rheology/choose-flow-curve/within-the-scatter")
def within_the_scatter():
    off = optimize.brentq(lambda off: spread_of_newton(off) - 0.9995 * RARELY, 0.01, 0.9, xtol=1e-14)
    return {"best": {"model": "newton", "standardDeviation": spread_of_newton(off)}}


@route("rheology/choose-flow-curve/beyond-the-scatter")
def beyond_the_scatter():
    spread = spread_of_newton(0.1712484217896033)
    return "refused" if spread > RARELY else {"best": {"model": "newton", "standardDeviation": spread}}


@route("mixing/power-number/points/as-power")
def power_of_points():
    """Between two points of a measured curve the power law that passes through both, from two equations."""
    slope, height = np.linalg.solve([[math.log10(4), 1], [math.log10(250), 1]], [math.log10(30), math.log10(1.2)])
    return 10**height * 60**slope


@route("mixing/flow-curve-at-oil/as-power")
def flow_curve():
    """From 4 to 25 Pa·s over 0.10 of oil: the factor of a hundredth, taken so often; the index along its chord."""
    viscosity = 4 * (25 / 4) ** (0.1 * 3)
    index = np.interp(0.73, [0.70, 0.80], [0.6, 0.35])
    return {"law": "power-law", "consistency": 20 * viscosity / 20**index, "flowIndex": index}


@route("mixing/addition-schedule/in-whole-grams")
def schedule():
    """Every addition the largest multiple of 20 g within an eighth of what is in the vessel, in decimal fractions."""
    vessel, left, masses = Decimal("10"), Decimal("6.31"), []
    while left > 0:
        most = vessel / 8
        mass = left if left <= most else most // Decimal("0.02") * Decimal("0.02")
        masses.append(mass)
        vessel, left = vessel + mass, left - mass
    return [{"mass": mass} for mass in masses]


@route("batch/materials-to-buy/in-whole-grams")
def to_buy():
    """Three lots of 3.337 kg, counted in decimal fractions, less 1.7 kg."""
    needed = 3 * Decimal("3.337")
    return {"materials": [{"needed": needed, "inStock": Decimal("1.7"), "toBuy": needed - Decimal("1.7")}]}
