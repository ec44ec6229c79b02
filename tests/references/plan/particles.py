"""Particles and bubbles, by docs/particles.md: creeping flow, the way summed up along the run."""

import math

import numpy as np
from scipy.interpolate import PchipInterpolator

from documents import q
from matter import GRAVITY, KELVIN

HINDRANCE = 4.65
AIR = 1.2


class Particle:
    def __init__(self, document):
        self.diameter = q(document["diameter"])
        self.density = q(document["density"])
        self.thickness = q(document.get("thickness"))
        self.largest = max([self.diameter] + [q(s["diameter"]) for s in document.get("sizes", [])])
        self.resistance = 1.0
        if self.thickness:
            width = math.sqrt(2 * self.diameter**3 / (3 * self.thickness))
            assert self.thickness / width <= 0.1, "a spheroid"
            self.resistance = 16 * width / (9 * math.pi * self.diameter)

    def velocity(self, fluid, viscosity, grains):
        """Downwards [m/s], in creeping flow, among a share of the volume that is particles."""
        stokes = (self.density - fluid) * GRAVITY * self.largest**2 / (18 * viscosity * self.resistance)
        return stokes * (1 - grains) ** HINDRANCE


class Stretch:
    """A stretch of falling temperature in which something moves: its way as a sum over time, by Simpson's rule."""

    def __init__(self, path, duration, speed_at, sets, n=1201):
        times = np.linspace(0, duration, n)
        temps = np.array([path(t) for t in times])
        speeds = np.array([speed_at(t) for t in temps])
        middles = np.array([speed_at(path(t)) for t in (times[1:] + times[:-1]) / 2])
        parts = (speeds[1:] + 4 * middles + speeds[:-1]) / 6 * np.diff(times)
        self.start = temps[0]
        self.sets = sets
        # The way from the start until a temperature, as a curve over falling temperature.
        lowest = np.minimum.accumulate(temps)
        falling = np.concatenate([[True], temps[1:] < lowest[:-1] - 1e-9])
        self.ways = PchipInterpolator(temps[falling][::-1], np.concatenate([[0.0], np.cumsum(parts)])[falling][::-1])
        self.end = temps[-1]

    def way(self, below=math.inf):
        first, last = min(below, self.start), max(self.sets, self.end)
        return float(self.ways(last) - self.ways(first)) if first > last else 0.0


def to_hold(particle, fluid):
    """Yield stress that holds a particle [Pa]."""
    if particle.thickness:
        return dict(zip(("min", "max", "value"), [abs(particle.density - fluid) * GRAVITY * particle.thickness / 2] * 3))
    weight = abs(particle.density - fluid) * GRAVITY * particle.largest
    return {"min": 0.04 * weight, "value": 0.143 / 3 * weight, "max": 0.2 * weight}
