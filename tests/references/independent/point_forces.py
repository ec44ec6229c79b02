"""Creeping flow round rigid bodies, from the point force alone."""

import math

import numpy as np
from scipy import constants, integrate, optimize

from routes import GRAVITY, KELVIN, ROUTES, area_under, route
from shapes import ball


def even_points(n=400):
    """Nodes and weights over the unit sphere (Gauss over the height, even round the axis)."""
    z, w = np.polynomial.legendre.leggauss(n)
    turns = np.linspace(0, 2 * math.pi, 2 * n, endpoint=False)
    zz, tt = np.meshgrid(z, turns, indexing="ij")
    flat = np.sqrt(1 - zz**2)
    points = np.stack([flat * np.cos(tt), flat * np.sin(tt), zz], -1).reshape(-1, 3)
    weights = np.repeat(w, 2 * n) / (4 * n)
    return points, weights


POINTS, WEIGHTS = even_points()


def resistance(axes, direction, at=(0.0, 0.0, 0.0)):
    """Force over viscosity and velocity of an ellipsoid: point forces spread over it as the image of an even spread over
    a sphere move everything inside alike (`at` shows that), so the force over that velocity is the resistance."""
    x = POINTS * np.asarray(axes) - np.asarray(at)
    r = np.linalg.norm(x, axis=1)
    return 8 * math.pi / np.sum(WEIGHTS * (1 / r + x[:, direction] ** 2 / r**3))


def check_spread():
    """The velocity inside is one and the same, so that the spread of forces is that of a rigid body."""
    axes = (1.0, 1.0, 0.3)
    for direction in (0, 2):
        centre = resistance(axes, direction)
        for at in ((0.4, 0, 0), (0, 0, 0.12), (0.3, 0.2, 0.05)):
            assert abs(resistance(axes, direction, at) / centre - 1) < 1e-4, (direction, at)


def relative(ratio):
    """Resistance of a flattened spheroid over that of the sphere of equal volume, broadside and edgewise."""
    size = ratio ** (-1 / 3)
    axes = (size, size, size * ratio)
    sphere = resistance((1.0, 1.0, 1.0), 0)
    return resistance(axes, 2) / sphere, resistance(axes, 0) / sphere


def spheroid(ratio, orientation):
    broadside, edgewise = relative(ratio)
    mean = 3 / (1 / broadside + 2 / edgewise)
    share = {"broadside": broadside, "edgewise": edgewise, "random": mean}[orientation]
    return 24 / 0.01 * share


for _ratio in (0.3, 0.9, 0.99):
    for _orientation in ("broadside", "edgewise", "random"):
        ROUTES[f"particles/drag/spheroid/point-forces/{_ratio}/{_orientation}"] = lambda r=_ratio, o=_orientation: spheroid(r, o)


def disc(orientation):
    """The same spread pressed flat: seen from above an even spread over a sphere is as dense as 1/√(1 − r²)."""
    over = lambda f: integrate.quad(lambda t: f(math.sin(t)) * math.sin(t), 0, math.pi / 2)[0]
    broadside = 8 * math.pi / over(lambda r: 1 / r)
    # Along the disc the force's own direction counts once round the axis: the mean of cos² is a half.
    turns = np.linspace(0, 2 * math.pi, 721)
    half = area_under(np.cos(turns) ** 2, turns) / (2 * math.pi)
    edgewise = 8 * math.pi / over(lambda r: (1 + half) / r)
    mean = 3 / (1 / broadside + 2 / edgewise)
    return {"broadside": broadside, "edgewise": edgewise, "random": mean}[orientation]


def disc_velocity(orientation):
    """A disc of the volume of a sphere of 106 µm, ten times as wide as thick, of 1400 kg/m³ in oil of 910 and 1 Pa·s."""
    sphere = 0.00010626585691826118
    volume, _ = ball(sphere)
    width = (volume / (math.pi / 4 * 0.1)) ** (1 / 3)
    return {"velocity": (1400 - 910) * GRAVITY * volume / (disc(orientation) * 1.0 * width / 2)}


for _orientation in ("broadside", "edgewise", "random"):
    ROUTES[f"particles/terminal/disc/point-forces/{_orientation}"] = lambda o=_orientation: disc_velocity(o)


@route("particles/stokes/point-forces")
def stokes():
    volume, _ = ball(5e-5)
    return {"velocity": (1400 - 910) * GRAVITY * volume / (resistance((1.0, 1.0, 1.0), 0) * 0.5 * 2.5e-5)}


@route("particles/brownian/diffusivity/point-forces")
def brownian():
    return constants.k * (25 + KELVIN) / (resistance((1.0, 1.0, 1.0), 0) * 0.05 * 5e-7)


@route("particles/brownian/peclet/weights")
def peclet():
    """Time of the heat motion over one radius against the time of the fall, both from mobility."""
    weight = ball(1e-6)[0] * 500 * GRAVITY
    mobility = 1 / (resistance((1.0, 1.0, 1.0), 0) * 0.05 * 5e-7)
    diffusion = constants.k * (25 + KELVIN) * mobility
    return (5e-7**2 / diffusion) / (5e-7 / (weight * mobility))


@route("particles/sedimentation-length/weights")
def sedimentation():
    return constants.k * (25 + KELVIN) / (ball(1e-6)[0] * 500 * GRAVITY)


def intrinsic_viscosity():
    """Einstein's coefficient: a rigid sphere held in a straining flow. Point forces c·E·n over it undo the flow at its
    surface, which gives c; their first moment is the stress that the sphere adds."""
    pole = np.array([0.0, 0.0, 1.0])
    strain = np.diag([-0.5, -0.5, 1.0])
    # Gauss nodes never meet the pole; in s = √(1 − cos) the integrand is smooth.
    s, w = np.polynomial.legendre.leggauss(200)
    s, w = (s + 1) / 2 * math.sqrt(2), w / 2 * math.sqrt(2)
    z = 1 - s**2
    total = 0.0
    for zi, si, wi in zip(z, s, w):
        rho = math.sqrt(max(0.0, 1 - zi * zi))
        # Forces at (ρ cos φ, ρ sin φ, z), n = x; only their axial effect at the pole is left after a turn.
        f_r, f_z = strain[0, 0] * rho, strain[2, 2] * zi
        dz = 1 - zi
        dist = math.sqrt(rho * rho + dz * dz)
        dot = -f_r * rho + f_z * dz
        total += wi * 2 * si * 2 * math.pi * (f_z / dist + dot * dz / dist**3)
    c = 8 * math.pi * (strain @ pole)[2] / total  # velocity of the forces at the pole equals the strain's
    moment = c * np.sum(WEIGHTS * 4 * math.pi * POINTS[:, 2] * POINTS[:, 2])
    # Added stress: number density × moment = φ/(4π/3) × S; over 2 µ E.
    return moment / (4 * math.pi / 3) / 2


@route("rheology/load-at-viscosity/point-forces")
def load():
    eta = intrinsic_viscosity()
    return optimize.brentq(lambda f: (1 - f / 0.62) ** (-eta * 0.62) - 7, 0, 0.61, xtol=1e-14)


@route("rheology/einstein/point-forces")
def einstein():
    return 1 + intrinsic_viscosity() * 0.02
