"""Packs by the distribution of their fill, and the tests of stability."""

import math

import numpy as np
from scipy import integrate, optimize

from routes import GRAVITY, KELVIN, route


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


def share_rejected(batches, excess, tolerable, size, most, factor, second=None, none_beyond_two=False):
    """Draws samples and asks them the rules; `second` is from which count it is rejected at once, its size and its limit."""
    random, rejected, left = np.random.Generator(np.random.SFC64(20261129)), 0, batches
    upon, more, most_of_both = second or (0, 0, 0)
    while left > 0:
        drawn = min(left, 4_000_000 // (size + more))
        first, then = random.standard_normal((drawn, size)), random.standard_normal((drawn, more))
        short = (first < -excess - tolerable).sum(axis=1)
        of_both = short + (then < -excess - tolerable).sum(axis=1)
        few = (short <= most) | ((short < upon) & (of_both <= most_of_both))
        mean = first.mean(axis=1) + factor * first.std(axis=1, ddof=1) >= -excess
        twice = none_beyond_two & (first.min(axis=1) < -excess - 2 * tolerable)
        rejected += drawn - np.count_nonzero(few & mean & ~twice)
        left -= drawn
    return rejected / batches


@route("packing/share-rejected/drawn-20-opened")
def drawn_opened():
    """Four million samples of 20, of which one may be short; a mean 0.4 deviations below nominal."""
    return share_rejected(4_000_000, -0.4, 2, 20, 1, 0.64)


@route("packing/share-rejected/drawn-12-new-zealand")
def drawn_new_zealand():
    return share_rejected(4_000_000, -0.4, 2, 12, 0, 0.746)


@route("packing/share-rejected/drawn-two-of-30")
def drawn_two():
    return share_rejected(2_000_000, -0.4, 2, 30, 1, 0.503, (3, 30, 4))


@route("packing/share-rejected/drawn-strict-50")
def drawn_strict():
    """No allowance for the mean, and none short by two errors."""
    return share_rejected(2_000_000, 0.2, 1.5, 50, 2, 0, none_beyond_two=True)


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
