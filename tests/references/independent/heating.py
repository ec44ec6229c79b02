"""Vessels and plates step by step, walls by their equations, the boundary layer over a melt."""

import math

import numpy as np
from scipy import constants, integrate, optimize

from routes import KELVIN, route, until


@route("heat/heating-time/by-steps")
def heating():
    found = integrate.solve_ivp(
        lambda t, y: [(80 - 1 * (y[0] - 40)) / 10800], (0, 1e6), [40.0], events=until(0, 114), rtol=1e-11, atol=1e-11
    )
    return {"duration": found.t_events[0][0], "temperatureSteady": 120}


@route("heat-process/evaporation/coefficient/blasius")
def blasius():
    """The boundary layer solved: f''' + f f''/2 = 0. With a Schmidt number of 1 vapour and momentum spread alike."""

    def past(curve):
        found = integrate.solve_ivp(
            lambda t, y: [y[1], y[2], -y[0] * y[2] / 2], (0, 12), [0, 0, curve], rtol=1e-11, atol=1e-12
        )
        return found.y[1][-1] - 1

    slope = optimize.brentq(past, 0.2, 0.5, xtol=1e-12)
    reynolds = 0.2 * 0.5 / 1.9e-5
    return {"sherwood": 2 * slope * math.sqrt(reynolds)}


@route("heat/power-for-duration/by-steps")
def power_for_duration():
    """The power searched for that warms 90 kJ/K from 20 to 80 °C in an hour against 12 W/K."""

    def end(power):
        return integrate.solve_ivp(
            lambda t, y: [(power - 12 * (y[0] - 20)) / 90000], (0, 3600), [20.0], rtol=1e-11, atol=1e-11
        ).y[0][-1]

    return optimize.brentq(lambda p: end(p) - 80, 100, 1e5, xtol=1e-9)


@route("heat/vessel-times/by-steps")
def vessel_times():
    events = [until(0, wanted) for wanted in (50, 70)]
    events[0].terminal = False
    found = integrate.solve_ivp(
        lambda t, y: [(2500 - 12 * (y[0] - 20)) / 90000], (0, 1e6), [30.0], events=events, rtol=1e-11, atol=1e-11
    )
    return [0, found.t_events[0][0], found.t_events[1][0]]


@route("heat/plate-heating-time/by-steps")
def plate_heating():
    """A plate that gives 300 W at most, and no more than 5 W/K times what it is hotter."""
    source = lambda celsius: min(300, 5 * (150 - celsius))
    found = integrate.solve_ivp(
        lambda t, y: [(source(y[0]) - 1.1 * (y[0] - 20)) / 2040],
        (0, 1e6),
        [20.0],
        events=until(0, 110),
        rtol=1e-10,
        atol=1e-10,
        max_step=5,
    )
    return {"duration": found.t[-1]}


@route("heat/jacket-conductance/along-the-wall")
def jacket():
    """The water warms along the wall of a vessel one degree hotter than it comes in; all that it takes up counts."""
    found = integrate.solve_ivp(lambda x, y: [360 * (1 - y[0]) / 1672], (0, 1), [0.0], rtol=1e-12, atol=1e-14)
    return 1672 * found.y[0][-1]


@route("heat/batch-temperature-at-wall/two-equations")
def batch_at_wall():
    """Flow through the wall and the batch's temperature, as two equations."""
    flow, batch = np.linalg.solve([[1, 0], [1, -100]], [400 * (60 - 57.5), -100 * 60])
    return batch


@route("heat/jacket-temperature-at-wall/two-equations")
def jacket_at_wall():
    flow, cold = np.linalg.solve([[1, 0], [1, 400]], [100 * (70 - 60), 400 * 60])
    return cold


@route("heat/mole-fraction/by-moles")
def moles():
    """Of a kilogram: 20 g of the light part, 980 g of the heavy one."""
    light, heavy = 0.02 / 0.136234, 0.98 / 0.88
    return light / (light + heavy)


@route("heat/plate-heating-time/net-flow-to-a-fifth")
def plate_to_a_fifth():
    """A plate at 150 °C heats a charge that loses heat, until the net flow is a fifth of what it was: stepped."""
    found = integrate.solve_ivp(
        lambda t, y: [(6 * (150 - y[0]) - 1.5 * (y[0] - 20)) / 3000], (0, 1e5), [20.0], events=until(0, 103.2), rtol=1e-12, atol=1e-12
    )
    return {"duration": found.t_events[0][0]}


@route("heat/conduction-root/nearly-insulated")
def nearly_insulated():
    """λ tan λ = 9e-9, to fifty digits."""
    import mpmath

    mpmath.mp.dps = 50
    found = mpmath.findroot(lambda x: x * mpmath.tan(x) - mpmath.mpf(9e-9), mpmath.mpf("9.4e-5"))
    return {"root": found}


@route("laws/temperature-at-viscosity/setting/by-search")
def setting():
    """Where a melt that thickens below 62 °C by a factor of e^0.4 a kelvin has 150 Pa·s: bracketed, in plain viscosity."""

    def thick(celsius):
        melt = 2.0e-6 * math.exp(31000 / (constants.R * (celsius + KELVIN)))
        return melt * math.exp(0.4 * (62 - celsius)) - 150

    return optimize.brentq(thick, 0, 62, xtol=1e-13)
