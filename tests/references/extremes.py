"""Figures at extreme ratios and near equal ends, to 50 digits, where doubles lose theirs.

python3 tests/references/extremes.py > tests/support/extremes.json (Debian: apt install python3-mpmath)

Every input is a double, taken for exactly what it is. Each case says what could go wrong there, and how far our figure
may be off, relative to the figure itself.
"""

import json

import mpmath
from mpmath import mp, mpf, exp, log, expm1, log1p, erf, erfc, sqrt, ncdf, betainc, besselj, bessely, pi, findroot

mp.dps = 60
cases = []


def case(call, inputs, value, bound, why):
    # The bound is relative; a figure below the range of doubles is nothing to compare with.
    assert abs(value) > mpf("1e-300"), (call, inputs)
    cases.append({"call": call, "inputs": inputs, "expected": float(value), "bound": bound, "why": why})


# Newton's law of cooling, near the room and over a small fall.
for ambient, start, end, why in [
    (20.0, 85.0, 85.0 - 1e-9, "ends that all but agree"),
    (20.0, 20.000001, 20.0000005, "near the room"),
    (20.0, 500.0, 20.0 + 1e-12, "down to the room's last digits"),
    (-273.0, 85.0, -272.9999999, "near the room, far from zero"),
]:
    capacity, conductance = 210000.0, 15.0
    a, s, e = mpf(ambient), mpf(start), mpf(end)
    inputs = {"heatCapacity": capacity, "conductance": conductance, "temperatureAmbient": ambient}
    value = mpf(capacity) / conductance * log((s - a) / (e - a))
    case("heat.coolingTime", {**inputs, "temperatureStart": start, "temperatureEnd": end}, value, 1e-14, why)

# Heating against a loss that is almost nothing, or takes almost all.
for power, conductance, end, why in [
    (1200.0, 1e-12, 85.0, "a loss of almost nothing"),
    (1200.0, 1e-6, 20.0 + 1e-6, "a rise of almost nothing"),
    (1200.0, 15.0, 99.999999, "almost at the steady temperature"),
    (1200.0, 3.0, 85.0, "a loss of a sixth"),
]:
    p, k, ambient, capacity = mpf(power), mpf(conductance), mpf(20), mpf(50000)
    flow, left = p, p - k * (mpf(end) - ambient)
    time = capacity / k * log(flow / left)
    lost = p * time - capacity * (mpf(end) - ambient)
    # Almost at the steady temperature a last digit of the end is worth 8e-10 of the time.
    bound = 1e-9 if end > 99 else 1e-13
    inputs = {"power": power, "conductance": conductance, "temperatureAmbient": 20.0, "temperatureStart": 20.0}
    inputs = {**inputs, "temperatureEnd": end, "heatCapacity": 50000.0}
    case("heat.heatingTime.duration", inputs, time, bound, why)
    case("heat.heatingTime.energyLost", inputs, lost, bound, why)

# A slab that has only begun to cool: the semi-infinite solid, whose other side is e^(-1/Fo) away.
for biot, fourier, position, why in [
    (3.0, 1e-6, 1.0, "the surface, just begun"),
    (1e-6, 1e-8, 1.0, "a surface that hardly cools"),
    (1e6, 1e-6, 1.0, "a surface as cold as the room"),
    (3.0, 1e-4, 0.97, "under the surface"),
    (50.0, 5e-4, 0.9, "under the surface, strongly cooled"),
    (3.0, 0.002, 1.0, "where one form of the series takes over from the other"),
]:
    b, f, y = mpf(biot), mpf(fourier), 1 - mpf(position)
    root = sqrt(f)
    value = erf(y / (2 * root)) + exp(b * y + b * b * f) * erfc(y / (2 * root) + b * root)
    inputs = {"shape": "slab", "biot": biot, "fourier": fourier, "position": position}
    case("heat.relativeTemperature", inputs, value, 1e-10 if biot > 1e3 else 1e-12, why)


# Mie's series for indices that all but agree, small and large spheres.
def mie(size, ratio):
    x, m = mpf(size), mpf(ratio)
    last = int(size + 4.05 * size ** (1 / 3) + 12)
    sum_ = mpf(0)
    ric = lambda f, n, z: sqrt(pi * z / 2) * f(n + mpf(1) / 2, z)
    slope = lambda f, n, z: ric(f, n - 1, z) - n / z * ric(f, n, z)
    for n in range(1, last + 1):
        psi, dpsi = ric(besselj, n, x), slope(besselj, n, x)
        chi, dchi = -ric(bessely, n, x), -slope(bessely, n, x)
        own, down = ric(besselj, n, m * x), slope(besselj, n, m * x)
        for p, q in [
            (m * own * dpsi - psi * down, m * own * dchi - chi * down),
            (own * dpsi - m * psi * down, own * dchi - m * chi * down),
        ]:
            sum_ += (2 * n + 1) * p * p / (p * p + q * q)
    return 2 / (x * x) * sum_


for size, ratio, bound, why in [
    (0.0011, 1.1, 1e-12, "a sphere far below the wavelength"),
    (0.5, 1.0009765625, 1e-11, "indices a thousandth apart"),
    (5.0, 1.00000095367431640625, 1e-8, "indices a millionth apart, whose difference is all that scatters"),
    (60.0, 1.0009765625, 1e-11, "a large sphere, indices a thousandth apart"),
    (200.0, 1.5, 1e-10, "a large sphere, far from the index outside"),
]:
    case("gel.mieEfficiency", {"size": size, "ratio": ratio}, mie(size, ratio), bound, why)

# The normal distribution: tails, and both sides of where the form changes.
for x in [-37.0, -20.0, -3.0000001, -2.9999999, -1e-9, 2.9999999]:
    case("numeric.normalBelow", {"x": x}, ncdf(mpf(x)), 1e-13, "tails, and where the form changes")

# Student's t and F with many degrees of freedom, where logarithms of gamma functions of a million cancel.
for t, degrees, bound in [(1e-6, 5.0, 1e-13), (40.0, 3.0, 1e-13), (2.0, 1e6, 2e-10), (6.0, 1e5, 2e-10), (1e8, 2.0, 1e-13)]:
    v = mpf(degrees)
    value = betainc(v / 2, mpf(1) / 2, 0, v / (v + mpf(t) ** 2), regularized=True) if degrees < 1e4 else None
    if value is None:
        # Integrated: the hypergeometric series of a million terms would not end soon.
        scale = exp(mp.loggamma((v + 1) / 2) - mp.loggamma(v / 2)) / sqrt(pi * v)
        value = 2 * scale * mp.quad(lambda z: exp(-(v + 1) / 2 * log1p(z * z / v)), [mpf(t), t + 4, t + 12, t + 40])
    case("numeric.studentBeyond", {"t": t, "degrees": degrees}, value, bound, "many degrees of freedom, far tails")
for ratio, above, below in [(50.0, 2.0, 8.0), (1e-8, 4.0, 9.0), (3000.0, 1.0, 40.0)]:
    a, b, r = mpf(above), mpf(below), mpf(ratio)
    value = betainc(b / 2, a / 2, 0, b / (b + a * r), regularized=True)
    case("numeric.fisherAbove", {"ratio": ratio, "above": above, "below": below}, value, 1e-13, "far tails")

# The logarithmic mean of differences that all but agree, and that are far apart.
for one, other, why in [
    (60.0, 60.0 + 1e-12, "ends a few last digits apart"),
    (60.0, 60.00001, "ends that all but agree"),
    (1e-9, 60.0, "one end all but at the other's temperature"),
    (-3.0, -5.0, "both below 0"),
]:
    a, b = mpf(one), mpf(other)
    case("heat.logMean", {"one": one, "other": other}, (a - b) / log(a / b), 1e-15 * 4, why)

# A part of the normal distribution between places that all but agree, and far out.
for low, high, bound, why in [
    (1.0, 1.0 + 1e-6, 1e-8, "a narrow part"),
    (8.0, 9.0, 1e-10, "a part far out"),
    (-0.001, 0.001, 1e-11, "a narrow part around the middle"),
]:
    a, b = mpf(low), mpf(high)
    density = lambda z: exp(-z * z / 2) / sqrt(2 * pi)
    part = ncdf(-a) - ncdf(-b)
    case("packing.truncated.share", {"from": low, "to": high}, part, bound, why)
    mean = (density(a) - density(b)) / part
    if abs(low) != abs(high):
        case("packing.truncated.mean", {"from": low, "to": high}, mean, bound, why)

print(json.dumps({"library": "mpmath", "version": mpmath.__version__, "digits": mp.dps, "cases": cases}, indent=2))
