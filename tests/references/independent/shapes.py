"""Bodies: counted, or by quadrature over their profile."""

import math

import numpy as np
from scipy import integrate, optimize

from routes import area_under, route


def revolved(radius, length):
    """Volume and surface of a body of revolution, by quadrature over its profile (parametrised by an angle)."""
    angles = np.linspace(0, math.pi, 200001)
    r, z = radius(angles), length(angles)
    volume = abs(area_under(math.pi * r**2, z))
    along = np.hypot(np.gradient(r, angles), np.gradient(z, angles))
    return volume, area_under(2 * math.pi * r * along, angles)


def ball(diameter):
    return revolved(lambda t: diameter / 2 * np.sin(t), lambda t: -diameter / 2 * np.cos(t))


@route("gel/interface-of-droplets/by-quadrature")
def interface():
    volume, surface = ball(5e-6)
    return 0.001 / volume * surface


@route("gel/smallest-droplet/by-quadrature")
def smallest():
    """The diameter whose droplets show as much surface as 0.4 of 12 g cover at 3 mg/m²."""
    cover = 0.4 * 0.012 / 3e-6

    def surplus(d):
        volume, surface = ball(d)
        return 0.002 / volume * surface - cover

    return optimize.brentq(surplus, 1e-6, 1e-4, xtol=1e-12)


@route("gel/surfactant-for-droplets/by-quadrature")
def surfactant():
    volume, surface = ball(4e-6)
    active = 0.0008 / volume * surface * 1.8e-6
    return {"active": active, "asSupplied": active / 0.3}


@route("gel/laplace-pressure/work-of-growing")
def laplace():
    """The pressure that pays for the new surface: tension times dA/dV, both by quadrature."""
    step = 1e-4
    (v1, a1), (v2, a2) = ball(4e-6 * (1 - step)), ball(4e-6 * (1 + step))
    return 0.008 * (a2 - a1) / (v2 - v1)


@route("gel/closest-packing/counted")
def closest():
    """Spheres of a face-centred cube, counted in 4³ cells; their diameter is the shortest distance between two centres."""
    base = np.array([[0, 0, 0], [0.5, 0.5, 0], [0.5, 0, 0.5], [0, 0.5, 0.5]])
    cells = np.array(np.meshgrid(range(4), range(4), range(4))).reshape(3, -1).T
    centres = (cells[:, None, :] + base[None]).reshape(-1, 3)
    gaps = np.linalg.norm(centres[0] - centres[1:], axis=1)
    return len(centres) * ball(gaps.min())[0] / 4**3


@route("particles/flake-shape/by-quadrature")
def flake():
    """A disc in slices: its volume and surface against the sphere that holds as much."""
    width, thickness = 0.0002, 2e-5
    rings = np.linspace(0, width / 2, 20001)
    area = area_under(2 * math.pi * rings, rings)
    rim = area_under(np.full(20001, width / 2), np.linspace(0, 2 * math.pi, 20001)) * thickness
    sphere = optimize.brentq(lambda d: ball(d)[0] - area * thickness, 1e-6, 1e-3, xtol=1e-14)
    return {"diameter": sphere, "sphericity": ball(sphere)[1] / (2 * area + rim), "aspectRatio": 0.1}


@route("particles/flake-of-volume/by-quadrature")
def flake_of_volume():
    rings = np.linspace(0, 1, 20001)
    disc = area_under(2 * math.pi * rings, rings)
    return {"width": 2 * math.sqrt(ball(0.0003)[0] / (disc * 2e-5))}


@route("particles/density/coated-sphere-in-shells")
def coated():
    r = np.linspace(0, 5.2e-5, 400001)
    density = np.where(r <= 5e-5, 1380.0, 2700.0)
    shells = 4 * math.pi * r**2
    return area_under(density * shells, r) / area_under(shells, r)


@route("rheology/capillary-reach/arc")
def capillary_slit():
    """The meniscus as an arc that meets both walls of a slit at 60°, drawn with the halves of an equilateral triangle."""
    width = 1e-3
    tangent = np.array([0.5, math.sqrt(3) / 2])  # 60° to the wall, which runs along x
    # The centre lies on the middle line, at right angles to the tangent at the wall.
    radius = width / 2 / abs(tangent[0])
    pressure = 0.03 / radius
    return pressure * width / (2 * 15)


@route("rheology/yield-stress-for-reach/arc")
def capillary_stress():
    tangent = np.array([0.5, math.sqrt(3) / 2])
    radius = 1e-3 / 2 / abs(tangent[0])
    return 0.03 / radius * 1e-3 / (2 * 0.002)


@route("heat/cooling-at-scales/cylinder-in-discs")
def cylinder_in_discs():
    """10 L on a disc, whose area is summed from its chords, as high as 1.2 of its width."""

    def volume(width):
        chord = lambda x: 2 * math.sqrt((width / 2) ** 2 - x**2)
        return integrate.quad(chord, -width / 2, width / 2, epsabs=1e-12)[0] * 1.2 * width

    width = optimize.brentq(lambda d: volume(d) - 0.01, 0.01, 1, xtol=1e-14)
    return [{"diameter": width, "height": 1.2 * width}]


@route("formula/read/diameter-of-a-flake")
def diameter_of_flake():
    """A disc of 200 µm and 1 µm in columns on a grid, and the ball, piled up in discs, that holds as much."""
    x = (np.arange(2000) + 0.5) / 1000 - 1
    inside = (x[:, None] ** 2 + x[None, :] ** 2 <= 1).mean() * 4
    volume = inside * 1e-4**2 * 1e-6
    radius = optimize.brentq(lambda r: ball_in_discs(r) - volume, 1e-6, 1e-4, xtol=1e-16)
    return {"materials": {"oil": {"particle": {"diameter": 2 * radius}}}}


def ball_in_discs(radius, n=20000):
    z = radius * ((np.arange(n) + 0.5) / n * 2 - 1)
    return math.pi * ((radius**2 - z**2).sum()) * 2 * radius / n
