"""Gel formers as they dissolve, water that a gel takes up, light that it scatters."""

import math

import numpy as np
from scipy import constants, integrate, optimize, special, stats

from routes import KELVIN, area_under, route, until
from shapes import ball


@route("gel/dissolving-temperature/by-steps")
def dissolving():
    """d ln x/dT = ΔH/(R T²) from the melting point down, until the mole fraction is that of 5 % in the oil."""
    x = (0.05 / 0.35) / (0.05 / 0.35 + 0.95 / 0.88)
    found = integrate.solve_ivp(
        lambda t, y: [-y[0] * 60000 / (constants.R * (343.15 - t) ** 2)], (0, 200), [1.0], events=until(0, x), rtol=1e-11, atol=1e-14
    )
    return 343.15 - found.t_events[0][0] - KELVIN


@route("gel/dissolved-gel-former/by-steps")
def dissolved():
    found = integrate.solve_ivp(
        lambda t, y: [y[0] * 60000 / (constants.R * t**2)], (343.15, 323.15), [1.0], rtol=1e-11, atol=1e-14
    )
    x = found.y[0][-1]
    return x * 0.35 / (x * 0.35 + (1 - x) * 0.88)


@route("gel/gel-point-at-dose/by-search")
def gel_point():
    """Eldridge and Ferry's dose as an exponential, searched for the temperature that it names."""
    return {"value": optimize.brentq(lambda t: math.exp(30 - 9000 / t) / 0.05 - 1, 200, 400, xtol=1e-11) - KELVIN}


@route("gel/dose-for-gel-point/by-steps")
def dose_for_gel_point():
    """From the line's dose at 300 K, d ln c/dT = 9000/T² up to 55 °C."""
    found = integrate.solve_ivp(lambda t, y: [9000 * y[0] / t**2], (300, 328.15), [math.exp(0)], rtol=1e-12, atol=1e-15)
    return {"value": found.y[0][-1]}


def norrish(mass_glycerin, mass_water):
    """Norrish with the 1.16 that Mäkinen (2010) prints for glycerol, and atomic weights of IUPAC."""
    moles = mass_glycerin / 92.0938, mass_water / 18.0153
    x = moles[0] / sum(moles)
    return (1 - x) * math.exp(-1.16 * x * x)


def steam():
    """Saturated steam at 25 °C, by IAPWS-IF97 (the printed table: 3169.9 Pa)."""
    return 3169.9


def uptake():
    def rate(t, y):
        flow = 0.0018 * 0.01 * 0.0180153 * steam() / (constants.R * 298.15)
        return [flow * (0.6 - norrish(0.0085, y[0]))]

    return rate


@route("gel/uptake-duration/by-steps")
def uptake_duration():
    end = until(0, 0.0085 * (1 / 0.75 - 1))
    found = integrate.solve_ivp(uptake(), (0, 1e7), [0.0015], events=end, rtol=1e-10, atol=1e-14)
    return {"norrish": found.t_events[0][0]}


@route("gel/water-taken-up-after/by-steps")
def taken_after():
    found = integrate.solve_ivp(uptake(), (0, 86400), [0.0015], rtol=1e-10, atol=1e-14)
    return {"norrish": found.y[0][-1] - 0.0015}


@route("gel/glycerin-at-humidity/by-search")
def at_humidity():
    return {"norrish": optimize.brentq(lambda w: norrish(w, 1 - w) - 0.6, 0.01, 0.99, xtol=1e-14)}


@route("gel/water-taken-up/by-search")
def taken_up():
    share = optimize.brentq(lambda w: norrish(w, 1 - w) - 0.6, 0.01, 0.99, xtol=1e-14)
    return {"norrish": 0.0085 / share - 0.0085 - 0.0015}


@route("gel/turbidity/air-by-mie")
def air_in_gel():
    """Mie's series for bubbles of 2 µm (scipy's Bessel functions), times their cross-sections, each bubble counted."""
    wide, wave, outer = 2e-6, 5.5e-7, 1.455
    size, ratio = math.pi * wide * outer / wave, 1 / outer
    total = 0.0
    for n in range(1, int(size + 4 * size ** (1 / 3) + 12)):
        j = lambda z, d=False: special.spherical_jn(n, z, d)
        y = lambda z, d=False: special.spherical_yn(n, z, d)
        psi = lambda z: z * j(z)
        dpsi = lambda z: j(z) + z * j(z, True)
        xi = lambda z: z * (j(z) + 1j * y(z))
        dxi = lambda z: j(z) + 1j * y(z) + z * (j(z, True) + 1j * y(z, True))
        inside = ratio * size
        a = (ratio * psi(inside) * dpsi(size) - psi(size) * dpsi(inside)) / (
            ratio * psi(inside) * dxi(size) - xi(size) * dpsi(inside)
        )
        b = (psi(inside) * dpsi(size) - ratio * psi(size) * dpsi(inside)) / (
            psi(inside) * dxi(size) - ratio * xi(size) * dpsi(inside)
        )
        total += (2 * n + 1) * (abs(a) ** 2 + abs(b) ** 2)
    efficiency = 2 / size**2 * total
    bubbles = 0.001 / ball(wide)[0]
    rings = np.linspace(0, wide / 2, 20001)
    return {"air": bubbles * efficiency * area_under(2 * math.pi * rings, rings)}


@route("gel/turbidity/droplets-below-the-wavelength")
def small_droplets():
    """The two-phase medium's scattered light, summed over the angles of a full turn instead of the closed form."""
    wave, ratio = 2 * math.pi * 1.45 / 589.3e-9, 1.46 / 1.45
    length = wave * 3 / 8 * 20e-9

    def towards(angle):
        s = 1 - math.cos(angle)
        return (1 + math.cos(angle) ** 2) / (1 + 2 * length**2 * s) ** 2 * math.sin(angle)

    light = integrate.quad(towards, 0, math.pi, epsabs=0, epsrel=1e-12)[0]
    return {"twoPhase": 2 * wave * (ratio - 1) ** 2 * 0.3 * 0.7 * length**3 * light}


@route("gel/scattering/anomalous/small-lag")
def small_lag():
    """Van de Hulst's closed form for a lag of 0.04, to fifty digits, where a double would lose all but six."""
    import mpmath

    mpmath.mp.dps = 50
    size = mpmath.pi * mpmath.mpf(3.26e-6) / mpmath.mpf(5e-7)
    lag = 2 * size * mpmath.mpf(1) / 1024
    return 2 - 4 / lag * mpmath.sin(lag) + 4 / lag**2 * (1 - mpmath.cos(lag))


@route("gel/strength-at-dose/limits/by-differences")
def strength_limits():
    """ln G = ln A + n ln(c − c₀): its deviation by differences in each parameter, with Student's quantile of scipy."""
    held = np.array([math.log(9.0), 1.6, 1.1])
    covariance = np.array([[0.04, -0.012, 0.009], [-0.012, 0.0045, -0.003], [0.009, -0.003, 0.0030]])
    strength = lambda p: math.exp(p[0]) * (7.5 - p[2]) ** p[1]
    slopes = np.array(
        [(math.log(strength(held + step)) - math.log(strength(held - step))) / 2e-5 for step in np.eye(3) * 1e-5]
    )
    half = stats.t.ppf(0.95, 6) * math.sqrt(slopes @ covariance @ slopes)
    middle = strength(held)
    return {"value": middle, "min": middle * math.exp(-half), "max": middle * math.exp(half)}
