"""Properties of what is in a vessel, from its materials. By docs/formula.md, docs/laws.md and docs/plan.md; tables and
polynomials by the sources that docs/bibliography.json names."""

import math

import numpy as np
from scipy.interpolate import CubicHermiteSpline, PchipInterpolator

from documents import q

KELVIN = 273.15
GRAVITY = 9.80665
GAS = 8.314462618

# Choi and Okos 1986, fat: specific heat [J/(kg K)] and conductivity [W/(m K)], T in °C.
FAT_HEAT = np.polynomial.Polynomial([1984.2, 1.4733, -4.8008e-3])
FAT_CONDUCTIVITY = np.polynomial.Polynomial([0.18071, -2.7604e-4, -1.7749e-7])
# Righetti 1998 and Volk and Kähler 2018 for glycerin; polynomials through IAPWS-95 for water.
GLYCERIN_HEAT = np.polynomial.Polynomial([2273.7, 4.70716])
WATER_HEAT = np.polynomial.Polynomial([4218.46, -2.90565, 7.22456e-2, -7.22562e-4, 2.88485e-6])
# Glycerine Producers' Association 1963: index at 20 °C by steps of 5 % of glycerin.
GLYCERIN_INDEX = PchipInterpolator(np.linspace(0, 1, 21), [
    1.33303, 1.3388, 1.34481, 1.35106, 1.35749, 1.36404, 1.3707, 1.3774, 1.38413, 1.39089, 1.39809, 1.40554, 1.41299,
    1.42044, 1.42789, 1.43534, 1.4429, 1.45085, 1.45839, 1.46597, 1.47399])
EXPANSION_MAX = 1.2e-3


def glycerin_water_density(share, t):
    """Volk and Kähler 2018 [kg/m³], by mass share of glycerin."""
    glycerin = 1273.3 - 0.6121 * t
    water = 1000 * (1 - abs((t - 3.98) / 615) ** 1.71)
    contraction = 1.78e-6 * t**2 - 1.82e-4 * t + 1.41e-2
    mixed = water + (glycerin - water) / (1 + glycerin / water * (1 / share - 1))
    return mixed * (1 + contraction * math.sin(math.pi * share**1.31) ** 0.81)


def glycerin_water_index(share, t):
    return float(GLYCERIN_INDEX(share)) - 1e-4 * (1 + 2.34 * share - 0.94 * share**2) * (t - 20)


class Matter:
    """The materials of a job."""

    def __init__(self, job):
        self.job = job
        self.materials = job["formula"]["materials"]
        self.room = q(job["process"]["room"])

    def is_particle(self, key):
        return self.materials[key]["function"] == "particle"

    def own_density(self, key, t):
        """Density of one material; one that states no expansion keeps that of its reading."""
        material = self.materials[key]
        if "density" in material:
            density = material["density"]
            return q(density["value"]) - q(density.get("fallPerKelvin"), 0.0) * (t - q(density["at"]))
        if material.get("propertiesOf") == "glycerin":
            return 1273.3 - 0.6121 * t
        if material.get("propertiesOf") == "water":
            return 1000 * (1 - abs((t - 3.98) / 615) ** 1.71)
        raise KeyError(f"density of {key}")

    def states_expansion(self, key):
        material = self.materials[key]
        return "density" not in material or "fallPerKelvin" in material["density"]

    def _volumes(self, contents, t):
        """Volumes as (key or None, volume at no further expansion, reference temperature or None)."""
        pair = {key: mass for key, mass in contents.items() if self.materials[key].get("propertiesOf") in ("glycerin", "water")}
        found = []
        if len(pair) == 2:
            glycerin = sum(m for k, m in pair.items() if self.materials[k]["propertiesOf"] == "glycerin")
            total = sum(pair.values())
            found.append((total / glycerin_water_density(glycerin / total, t), None))
        for key, mass in contents.items():
            if len(pair) == 2 and key in pair:
                continue
            at = None if self.states_expansion(key) else q(self.materials[key]["density"]["at"])
            found.append((mass / self.own_density(key, t), at))
        return found

    def volume(self, contents, t):
        """Between what an expansion that nobody stated leaves open [m³]."""
        low = high = 0.0
        for volume, at in self._volumes(contents, t):
            grown = volume if at is None else volume * (1 + EXPANSION_MAX * (t - at))
            low += min(volume, grown)
            high += max(volume, grown)
        return low, high

    def density(self, contents, t):
        return sum(contents.values()) / sum(volume for volume, _ in self._volumes(contents, t))

    def fluid_density(self, contents, t):
        return self.density({k: m for k, m in contents.items() if not self.is_particle(k)}, t)

    def grains(self, contents, t=20.0):
        particles = {k: m for k, m in contents.items() if self.is_particle(k)}
        if not particles:
            return 0.0
        solid = sum(m / self.own_density(k, t) for k, m in particles.items())
        return solid / sum(volume for volume, _ in self._volumes(contents, t))

    def heat(self, key, t):
        """Specific heat without melting [J/(kg K)]."""
        material = self.materials[key]
        if "specificHeat" in material:
            return q(material["specificHeat"])
        laws = {"fats and oils": FAT_HEAT, "glycerin": GLYCERIN_HEAT, "water": WATER_HEAT}
        return float(laws[material["propertiesOf"]](t))

    def melting(self, key, dissolves):
        """Onset, end [°C] and latent heat [J/kg] of what melts."""
        melting = self.materials[key].get("melting")
        if melting is None:
            return None
        middle, width = q(melting["at"]), q(melting.get("over"), 4.0)
        onset, end = middle - width / 2, middle + width / 2
        if dissolves is not None and end > dissolves:
            onset, end = dissolves - width, dissolves
        return onset, end, q(melting["latentHeat"])

    def conductivity(self, contents, t):
        """Side by side by volume, of what states one."""
        known = {}
        for key in contents:
            material = self.materials[key]
            if "conductivity" in material:
                known[key] = q(material["conductivity"])
            elif material.get("propertiesOf") == "fats and oils":
                known[key] = float(FAT_CONDUCTIVITY(t))
        volumes = {key: contents[key] / self.own_density(key, t) for key in known}
        return sum(known[key] * volumes[key] for key in known) / sum(volumes.values())


class Readings:
    """Viscosity readings of one composition: a monotone cubic of ln viscosity over 1/T (Fritsch and Butland), at its ends
    no flatter than a quarter of the chord, and a straight line beyond them."""

    def __init__(self, document):
        points = sorted((q(r["at"]), q(r["viscosity"])) for r in document["readings"])
        self.low, self.high = points[0][0], points[-1][0]
        self.thickest, self.thinnest = points[0][1], points[-1][1]
        xs = [1 / (t + KELVIN) for t, _ in points][::-1]
        ys = [math.log(v) for _, v in points][::-1]
        slopes = PchipInterpolator(xs, ys).derivative()(xs)
        for end, next_one in ((0, 1), (-1, -2)):
            slopes[end] = max(slopes[end], (ys[end] - ys[next_one]) / (xs[end] - xs[next_one]) / 4)
        self._curve = CubicHermiteSpline(xs, ys, slopes)
        self._ends = [(xs[end], ys[end], slopes[end]) for end in (0, -1)]
        self.shear_rate = q(document["shearRate"])

    def covers(self, t):
        return self.low - 1e-9 <= t <= self.high + 1e-9

    def __call__(self, t):
        x = 1 / (t + KELVIN)
        for (x0, y0, slope), beyond in ((self._ends[0], x < self._ends[0][0]), (self._ends[1], x > self._ends[1][0])):
            if beyond:
                return math.exp(y0 + slope * (x - x0))
        return math.exp(float(self._curve(x)))


def dose_temperature(doses, dose, which):
    """Eldridge and Ferry between neighbouring doses, ln c straight in 1/T; near the outermost doses those themselves."""
    points = sorted((q(d["gelFormer"]), q(d[which])) for d in doses if which in d)
    cs = [c for c, _ in points]
    if dose < cs[0] or dose > cs[-1]:
        end = points[0] if dose < cs[0] else points[-1]
        if abs(dose / end[0] - 1) <= 0.02:
            return end[1]
        return None
    return 1 / float(np.interp(math.log(dose), np.log(cs), [1 / (t + KELVIN) for _, t in points])) - KELVIN
