"""Drops and bubbles by the forces on them, and their way through a melt step by step."""

import math

import numpy as np
from scipy import integrate, interpolate, optimize

from point_forces import resistance
from routes import GRAVITY, KELVIN, route, until
from shapes import ball


def drop_resistance(ratio):
    """Force over viscosity, radius and velocity of a drop: outside a point force and a dipole, inside a whirl; the normal
    velocities are 0, the tangential ones and their shear are alike at the surface. Solved as four equations."""
    # ψ = (A r + B/r) sin² outside, with U r²/2 sin² of the drop's velocity; (C r² + D r⁴) sin² inside; all at r = 1, U = 1.
    m = np.array(
        [
            [1.0, 1.0, 0.0, 0.0],  # A + B = 1/2 · 1 (the surface moves with the drop)
            [0.0, 0.0, 1.0, 1.0],  # C + D = 0
            [1.0, -1.0, -2.0, -4.0],  # tangential velocity, less that of the drop
            [0.0, 6.0, 0.0, -6.0 * ratio],  # shear
        ]
    )
    rhs = np.array([0.5, 0.0, 1.0, 0.0])
    a, *_ = np.linalg.solve(m, rhs)
    return 8 * math.pi * a


@route("particles/drop/four-equations")
def drop():
    volume, _ = ball(1e-4)
    return {"velocity": (1250 - 915) * GRAVITY * volume / (drop_resistance(1.0 / 0.06) * 0.06 * 5e-5)}


@route("particles/bubble-rise/mobile/four-equations")
def bubble():
    volume, _ = ball(2e-4)
    return {"velocity": 910 * GRAVITY * volume / (drop_resistance(0.0) * 0.05 * 1e-4)}


def andrade_melt(celsius):
    """The melt of the checks: ln µ = −9.5 + 900/(T + 110), T in °C."""
    return math.exp(-9.5 + 900 / (celsius + 110))


def rise(diameter, density, viscosity):
    """A clean bubble without weight: buoyancy against the drag of the four equations."""
    return density * GRAVITY * math.pi / 6 * diameter**3 / (drop_resistance(0.0) * viscosity * diameter / 2)


@route("particles/viscosity-to-clear/four-equations")
def viscosity_to_clear():
    return optimize.brentq(lambda m: rise(1e-4, 910, m) * 3600 - 0.3, 1e-4, 10, xtol=1e-14)


@route("particles/temperature-to-clear/four-equations")
def temperature_to_clear():
    return optimize.brentq(lambda c: rise(1e-4, 910, andrade_melt(c)) * 3600 - 0.3, -20, 90, xtol=1e-10)


def cooling_bubble(t, y):
    celsius, _ = y
    wide = 8e-5 * ((celsius + KELVIN) / 358.15) ** (1 / 3)
    density = 915 - 0.64 * (celsius - 20)
    return [-12 * (celsius - 20) / 90000, rise(wide, density, andrade_melt(celsius))]


@route("particles/rise-over-cooling/by-steps")
def rise_over_cooling():
    found = integrate.solve_ivp(cooling_bubble, (0, 1e6), [85.0, 0.0], events=until(0, 40), rtol=1e-10, atol=1e-12)
    return {"distance": found.y[1][-1], "duration": found.t[-1]}


@route("particles/clearing-over-cooling/by-steps")
def clearing_over_cooling():
    found = integrate.solve_ivp(cooling_bubble, (0, 1e6), [85.0, 0.0], events=until(1, 0.05), rtol=1e-10, atol=1e-13)
    return {"duration": found.t[-1], "temperature": found.y[0][-1]}


@route("particles/settling-over-curve/by-steps")
def settling_over_curve():
    """A ball of 100 µm and 1400 kg/m³ in a melt of 905 kg/m³ whose temperatures were written down."""
    weight = 495 * GRAVITY * math.pi / 6 * 1e-4**3
    drag = resistance((1.0, 1.0, 1.0), 0) * 5e-5
    at = interpolate.PchipInterpolator([0, 600, 1800, 7200], [85, 80, 60, 30])
    speed = lambda time: weight / (drag * andrade_melt(at(time)))
    # Where a curve ends scipy has a rule of its own, so the last stretch is left out.
    ways = [integrate.quad(speed, a, b, epsabs=1e-13)[0] for a, b in ((0, 600), (600, 1800))]
    return {"distances": [0, *np.cumsum(ways), {}], "velocityStart": speed(0)}


def climbing_time(depth, pressure):
    """A bubble of constant mass through its liquid: it widens as the pressure on it falls, down to that above."""
    wide = lambda z: 2e-5 * (101325 / (pressure + 910 * GRAVITY * (depth - z))) ** (1 / 3)
    found = integrate.quad(lambda z: 1 / rise(wide(z), 910, 50), 0, depth, epsabs=0, epsrel=1e-11)
    return found[0]


@route("particles/pressure-to-clear/near-a-vacuum")
def near_vacuum():
    wanted = 1.005 * climbing_time(0.3, 0)
    return optimize.brentq(lambda p: climbing_time(0.3, p) - wanted, 0, 1000, xtol=1e-9)


@route("particles/pressure-to-clear/shallow")
def shallow():
    wanted = 0.3 * 0.002 / rise(2e-5, 910, 50)
    return optimize.brentq(lambda p: climbing_time(0.002, p) - wanted, 1000, 101325, xtol=1e-9)
