"""Flow in films and pipes, added up over the depth."""

import math

import numpy as np
from scipy import integrate, optimize

from routes import GRAVITY, area_under, route, until


def thin_film():
    """Flow along a film of unit depth, viscosity and pressure slope: the parabola under a free surface, added up."""
    y = np.linspace(0, 1, 20001)
    shear = 1 - y
    velocity = integrate.cumulative_trapezoid(shear, y, initial=0)
    return area_under(velocity, y)


@route("rheology/levelling-time/by-steps")
def levelling():
    """A small wave on a film, flattened by its own curvature: surface, pressure, slope and flow on a grid."""
    n, depth, wave, tension, viscosity = 256, 1e-4, 0.004, 0.03, 5.0
    x = np.linspace(0, wave, n, endpoint=False)
    shape = np.cos(2 * math.pi * x / wave)
    frequency = 2j * math.pi * np.fft.fftfreq(n, wave / n)
    slope = lambda f: np.real(np.fft.ifft(frequency * np.fft.fft(f)))
    pressure = -tension * slope(slope(shape))
    flow = -thin_film() * depth**3 / viscosity * slope(pressure)
    rate = slope(flow)[0] / shape[0]  # the crest's loss over its height
    found = integrate.solve_ivp(lambda t, y: [-rate * y[0]], (0, 1e5), [1.0], events=until(0, 0.1), rtol=1e-11, atol=1e-13)
    return found.t_events[0][0]


@route("rheology/mark-that-stays/on-a-grid")
def brush_mark():
    """The wall carries the film's depth times the slope of the pressure under a wave of unit height."""
    n, depth, wave, tension = 256, 1e-4, 0.002, 0.03
    x = np.linspace(0, wave, n, endpoint=False)
    frequency = 2j * math.pi * np.fft.fftfreq(n, wave / n)
    slope = lambda f: np.real(np.fft.ifft(frequency * np.fft.fft(f)))
    stress = depth * np.abs(slope(tension * slope(slope(np.cos(2 * math.pi * x / wave))))).max()
    return 0.5 / stress


def film_flow(depth, stress_to_rate, pull, n=20001):
    y = np.linspace(0, depth, n)
    rate = stress_to_rate(pull * (depth - y))
    velocity = integrate.cumulative_trapezoid(rate, y, initial=0)
    return area_under(velocity, y)


@route("rheology/draining-film/by-waves")
def draining():
    """Each depth runs down at dq/dh: the depth that has come 0.1 m in 60 s, on a slope of 30° (half of gravity)."""
    pull = 920 * GRAVITY * 0.5
    rate = lambda s: s / 3.0

    def reach(h):
        step = 1e-3 * h
        speed = (film_flow(h + step, rate, pull) - film_flow(h - step, rate, pull)) / (2 * step)
        return speed * 60

    depth = lambda z: optimize.brentq(lambda h: reach(h) - z, 1e-6, 1e-2, xtol=1e-12)
    places = np.linspace(0, 1, 41) ** 2 * 0.1
    depths = np.array([0.0] + [depth(z) for z in places[1:]])
    mean = area_under(depths * np.gradient(places, np.linspace(0, 1, 41)), np.linspace(0, 1, 41)) / 0.1
    return {"thickness": depth(0.1), "thicknessMean": mean}


@route("rheology/film-flow/by-quadrature")
def flow_in_film():
    """Herschel and Bulkley's gel of 5 Pa and 8 Pa·sⁿ, n 0.5, in 3 mm down a wall."""
    rate = lambda s: (np.maximum(s - 5, 0) / 8) ** 2
    y = np.linspace(0, 0.003, 400001)
    surface = area_under(rate(900 * GRAVITY * (0.003 - y)), y)
    return {"flowPerWidth": film_flow(0.003, rate, 900 * GRAVITY, 400001), "velocitySurface": surface}


def pipe_flow(gradient, radius, stress_to_rate, n=200001):
    r = np.linspace(0, radius, n)
    rate = stress_to_rate(gradient * r / 2)
    velocity = np.concatenate([[0], integrate.cumulative_trapezoid(rate, r)])
    velocity = velocity[-1] - velocity
    return area_under(2 * math.pi * r * velocity, r)


@route("rheology/flow-through-nozzle/by-quadrature")
def nozzle():
    rate = lambda s: (s / 12) ** (1 / 0.4)
    return pipe_flow(2e6, 0.0005, rate)


@route("rheology/nozzle-flow/by-quadrature")
def nozzle_gradient():
    rate = lambda s: (s / 12) ** (1 / 0.4)
    flow = lambda gradient: pipe_flow(gradient, 0.0005, rate)
    gradient = optimize.brentq(lambda g: flow(g) / 1e-7 - 1, 1e4, 1e8, rtol=1e-12)
    return {"pressureGradient": gradient, "shearRateWall": rate(gradient * 0.0005 / 2)}


@route("rheology/yield-stress-for-film/half-a-triangle")
def film_stays():
    """On a slope of 30°, half an equilateral triangle, half the weight of a square metre pulls."""
    return 915 * 0.001 * GRAVITY / 2
