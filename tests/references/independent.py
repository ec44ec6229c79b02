"""The figures of checks that go another way than the code: quadrature, an integrated equation, a counted geometry, a sum
over forces. Nothing here is read from the library: each route has its own transcription of what its source prints.
Prints for each id what the route gives."""

import json
import math
import sys

import numpy as np
from scipy import constants, integrate, interpolate, optimize

KELVIN = 273.15
GRAVITY = constants.g

ROUTES = {}

# numpy 2 has another name for it.
area_under = getattr(np, "trapezoid", None) or np.trapz


def route(*names):
    def keep(function):
        for name in names:
            ROUTES[name] = function
        return function

    return keep


# --- geometry, counted or summed up --------------------------------------------------------------------------------


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


# --- creeping flow from the point force alone -----------------------------------------------------------------------


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


for _ratio in (0.3, 0.9):
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


# --- equations integrated step by step -------------------------------------------------------------------------------


@route("gel/dissolving-temperature/by-steps")
def dissolving():
    """d ln x/dT = ΔH/(R T²) from the melting point down, until the mole fraction is that of 5 % in the oil."""
    x = (0.05 / 0.35) / (0.05 / 0.35 + 0.95 / 0.88)
    end = lambda t, y: y[0] - x
    end.terminal = True
    found = integrate.solve_ivp(
        lambda t, y: [-y[0] * 60000 / (constants.R * (343.15 - t) ** 2)], (0, 200), [1.0], events=end, rtol=1e-11, atol=1e-14
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


@route("heat/heating-time/by-steps")
def heating():
    end = lambda t, y: y[0] - 114
    end.terminal = True
    found = integrate.solve_ivp(
        lambda t, y: [(80 - 1 * (y[0] - 40)) / 10800], (0, 1e6), [40.0], events=end, rtol=1e-11, atol=1e-11
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


@route("mixing/exponential-feed/by-steps")
def feed():
    """The specific rate that carries 10 kg to 100 kg in 1800 s, found by integrating dM/dt = kM."""

    def mass(rate, until):
        return integrate.solve_ivp(lambda t, y: [rate * y[0]], (0, until), [10.0], rtol=1e-12, atol=1e-12).y[0][-1]

    rate = optimize.brentq(lambda k: mass(k, 1800) - 100, 1e-4, 1e-2, xtol=1e-14)
    return {"specificRate": rate, "rateStart": 10 * rate, "rateEnd": 100 * rate, "massInVessel": mass(rate, 900)}


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
    end = lambda t, y: y[0] - 0.0085 * (1 / 0.75 - 1)
    end.terminal = True
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
    found = integrate.solve_ivp(lambda t, y: [-rate * y[0]], (0, 1e5), [1.0], events=_tenth, rtol=1e-11, atol=1e-13)
    return found.t_events[0][0]


def _tenth(t, y):
    return y[0] - 0.1


_tenth.terminal = True


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


# --- balances of amounts ---------------------------------------------------------------------------------------------


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


@route("stability/mean-kinetic-temperature/usual-energy-by-search")
def mkt():
    """The one temperature at which as much happens as at 5 and at 40 °C together; energy over R is 10 000 K (USP 1160)."""
    rate = lambda t: math.exp(-10000 / (t + KELVIN))
    return optimize.brentq(lambda t: 2 * rate(t) / (rate(5) + rate(40)) - 1, 5, 40, xtol=1e-12)


def student(share, size):
    """Student's quantile over the root of the sample, by the distribution itself."""
    density = lambda t: math.exp(
        math.lgamma(size / 2) - math.lgamma((size - 1) / 2)
    ) / math.sqrt(math.pi * (size - 1)) * (1 + t * t / (size - 1)) ** (-size / 2)
    quantile = optimize.brentq(lambda t: 0.5 + integrate.quad(density, 0, t)[0] - share, 0, 20, xtol=1e-10)
    return quantile / math.sqrt(size)


@route("packing/table/oiml-factors-of-the-mean")
def oiml():
    """99.5 % on one side, which is what the recommendation asks of the mean."""
    return [{"test": {"mean": {"factor": student(0.995, n)}}} for n in (50, 80, 125)]


@route("packing/table/handbook-133-factors-of-the-mean")
def handbook():
    """97.5 % on one side for samples of 12, 24 and 48."""
    return [*({} for _ in range(11)), *({"test": {"mean": {"factor": student(0.975, n)}}} for n in (12, 24, 48))]



# --- bubbles and grains by forces, vessels by steps -------------------------------------------------------------------


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


def until(what, wanted):
    event = lambda t, y: y[what] - wanted
    event.terminal = True
    return event


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


@route("gel/turbidity/air-by-mie")
def air_in_gel():
    """Mie's series for bubbles of 2 µm (scipy's Bessel functions), times their cross-sections, each bubble counted."""
    from scipy import special

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


@route("packing/spread-of-fill/by-pairs")
def spread_of_fill():
    """Variance as the mean square of all differences of pairs, without a mean."""

    def variance(values):
        pairs = [(a - b) ** 2 for i, a in enumerate(values) for b in values[:i]]
        return sum(pairs) / (len(values) * (len(values) - 1))

    gross, tare = [0.0712, 0.0704, 0.0709, 0.0717], [0.0203, 0.0205, 0.0201]
    return {
        "spread": math.sqrt(variance(gross) - variance(tare)),
        "spreadGross": math.sqrt(variance(gross)),
        "spreadTare": math.sqrt(variance(tare)),
    }


@route("stability/centrifuge-speed/round-a-circle")
def centrifuge():
    """The turns per second at which a point 0.1 m out, seen at three moments, is accelerated by 1000 g."""

    def acceleration(speed):
        step = 1e-4 / speed
        at = lambda t: np.array([0.1 * math.cos(2 * math.pi * speed * t), 0.1 * math.sin(2 * math.pi * speed * t)])
        return np.linalg.norm(at(step) - 2 * at(0) + at(-step)) / step**2

    return optimize.brentq(lambda s: acceleration(s) - 1000 * GRAVITY, 1, 500, xtol=1e-9)


@route("rheology/let-down/two-equations")
def let_down():
    paste, base = np.linalg.solve([[1, 1], [0.5, 0.01]], [20, 0.6])
    return {"paste": paste, "base": base}


@route("rheology/yield-stress-for-film/half-a-triangle")
def film_stays():
    """On a slope of 30°, half an equilateral triangle, half the weight of a square metre pulls."""
    return 915 * 0.001 * GRAVITY / 2


def main():
    check_spread()
    wanted = json.load(sys.stdin) if not sys.stdin.isatty() else list(ROUTES)
    print(json.dumps({name: ROUTES[name]() for name in wanted if name in ROUTES}, default=float))


if __name__ == "__main__":
    main()
