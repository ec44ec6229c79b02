"""Stirrers: power, caverns, levels, blend times, vortices. By docs/mixing.md and the docstrings of src/mixing."""

import math

from scipy.optimize import brentq

from documents import q
from matter import GRAVITY


def published(low, value, high):
    return {"min": low, "value": value, "max": high}


def stated(value):
    return published(value, value, value)


# kind: (Po·Re in creeping flow, Po in turbulent flow, constant of Metzner and Otto), as docs/mixing.md tabulates them
KINDS = {
    "propeller": (published(37, 41, 45), published(0.3, 0.32, 0.37), published(8, 10, 12)),
    "anchor": (published(140, 250, 375), published(0.25, 0.35, 0.5), published(12, 25, 30)),
    "helical ribbon": (published(157, 240, 360), stated(0), published(25, 30, 36)),
    "pitched-blade turbine": (None, None, published(9.5, 11, 13)),
    "flat-blade turbine": (None, None, None),
}
# The bands of docs/how-sure.md: of the power of blades by their shape, from 0.9 of the vessel on the second, and of a
# blend time in the transition and in turbulent flow.
BLADES, WIDE_BLADES = published(0.8, 1, 1.2), published(0.75, 1, 1.2)
BLENDED = {"transitional": published(0.65, 1, 1.35), "turbulent": published(0.8, 1, 1.2)}
CAVERN = {"min": 0.4, "value": 0.55, "max": 0.75}
ENDS = ("min", "max")
FOLLOWS_WALL = ("anchor", "helical ribbon")


def lesser(a, b):
    return (a**-7.8 + b**-7.8) ** (-1 / 7.8)


class KameiHiraoka:
    """The power number of flat or pitched blades from their shape in the vessel (Kamei and Hiraoka)."""

    def __init__(self, d, D, H, blades, width, angle, baffles=None):
        n, b, th = blades, width, math.radians(angle)
        sin = math.sin(th)
        flat = math.isclose(angle, 90)
        log = math.log(D / d)
        eta = 0.711 * (0.157 + (n * log) ** 0.611) / (n**0.52 * (1 - (d / D) ** 2))
        beta = 2 * log / (D / d - d / D)
        gamma = (eta * log / (beta * D / d) ** 5) ** (1 / 3)
        X = gamma * n**0.7 * b * sin**1.6 / H
        self.Ct = lesser(1.96 * X**1.19, 0.25)
        self.m = lesser(0.71 * X**0.373, 0.333)
        self.f_inf = 0.0151 * d / D * self.Ct**0.308
        self.Ctr = 23.8 * (d / D) ** -3.24 * (b * sin / D) ** -1.18 * X**-0.74
        self.CL = 0.215 * eta * n * d / H * (1 - (d / D) ** 2) + 1.83 * b * sin / H * (n / 2 * sin) ** (1 / 3)
        self.to_G = math.pi * eta * log / (4 * d / (beta * D))
        self.scale = 1.2 * math.pi**4 * beta**2 / (8 * d**3 / (D**2 * H))
        self.baffles = None
        if baffles and baffles[0]:
            count, wide = baffles
            phi = n**0.7 * b / d
            if flat:
                most = 10 * phi**1.3 if phi <= 0.54 else 8.3 * phi if phi <= 1.6 else 10 * phi**0.6
            else:
                most = 8.3 * (2 * th / math.pi) ** 0.9 * n**0.7 * b * sin**1.6 / d
            self.baffles = (most, 4.5 * wide / D * count**0.8 / ((2 * th / math.pi) ** 0.72 * most**0.2))

    def __call__(self, re):
        g = self.to_G * re
        f = self.CL / g + self.Ct * ((self.Ctr / g + g) ** -1 + (self.f_inf / self.Ct) ** (1 / self.m)) ** self.m
        bare = self.scale * f
        if self.baffles is None:
            return bare
        most, first = self.baffles
        x = first + bare / most
        return max(bare, most * (1 + x**-3) ** (-1 / 3))


class Stirrer:
    def __init__(self, document, diameter, baffles=None):
        self.kind = document["kind"]
        self.d = q(document["diameter"])
        self.D = diameter
        self.document = document
        self.speed = q(document.get("speed"))
        creep, turbulent, self.ks = KINDS[self.kind]
        # What the document states of its own stirrer counts as it stands.
        self.own = "laminarPowerConstant" in document or "powerNumber" in document
        own = lambda field: stated(q(document.get(field), 0.0))
        self.creep, self.turbulent = (own("laminarPowerConstant"), own("powerNumber")) if self.own else (creep, turbulent)
        if "metznerOttoConstant" in document:
            self.ks = own("metznerOttoConstant")
        self.baffles = (baffles["count"], q(baffles["width"])) if baffles else None
        self.follows_wall = self.kind in FOLLOWS_WALL

    def power_number(self, re, level, end="value"):
        """At a Reynolds number: as it is taken, or at an end of what is published."""
        if self.kind in ("pitched-blade turbine", "flat-blade turbine") and not self.own:
            pitched = self.kind.startswith("pitched")
            angle = q(self.document.get("bladeAngle"), 45.0) if pitched else 90.0
            width = q(self.document.get("bladeWidth"), self.d / 5)
            if not pitched:
                width = min(width, level)
            curve = KameiHiraoka(self.d, self.D, level, self.document.get("blades", 4), width, angle, self.baffles)
            return (BLADES if self.d < 0.9 * self.D else WIDE_BLADES)[end] * curve(re)
        return self.creep[end] / re + self.turbulent[end]

    def newton(self, viscosity, density, speed, level, end="value"):
        """Reynolds number, power number, power, torque in a liquid of one viscosity."""
        re = density * speed * self.d**2 / viscosity
        po = self.power_number(re, level, end)
        power = po * density * speed**3 * self.d**5
        return {"re": re, "po": po, "power": power, "torque": power / (2 * math.pi * speed), "viscosity": viscosity}

    def gel(self, curve, density, speed, level, end="value", shear="value"):
        """The same in a gel of Herschel and Bulkley, at the mean shear rate of Metzner and Otto."""
        rate = self.ks[shear] * speed
        stress, consistency, index = curve
        return self.newton((stress + consistency * rate**index) / rate, density, speed, level, end)

    def cavern(self, found, density, speed, yield_stress, slender):
        """Width as if the vessel were wide enough, and height [m]."""
        load = found["po"] * density * speed**2 * self.d**2 / (math.pi**2 * yield_stress)
        width = self.d * (load / (slender + 1 / 3)) ** (1 / 3)
        if width < self.D:
            return width, slender * width
        tall = found["po"] * density * speed**2 * self.d**5 / (math.pi**2 * yield_stress * self.D**3)
        return width, self.D * (tall - 1 / 3)

    def vortex(self, speed):
        froude = speed**2 * self.d / GRAVITY
        return math.pi**2 * froude * self.d * (1 - self.d**2 / (2 * self.D**2))

    def top(self):
        """Upper edge and cover asked for [m]."""
        if "topEdge" not in self.document:
            return None
        return q(self.document["topEdge"]), q(self.document.get("cover"), 0.0)


def level_of(volume, vessel):
    """Height of a filling above the lowest point [m]."""
    D = q(vessel["diameter"])
    bottom = vessel.get("bottom", {"shape": "flat"})
    if bottom["shape"] == "flat":
        return volume / (math.pi / 4 * D**2)
    assert bottom["shape"] == "ellipsoidal"
    c = q(bottom["depth"])
    below = math.pi / 6 * D**2 * c
    if volume >= below:
        return c + (volume - below) / (math.pi / 4 * D**2)
    held = lambda h: math.pi * D**2 / 4 * (h**2 / c - h**3 / (3 * c**2))
    return brentq(lambda h: held(h) - volume, 0, c)


def blend_time(found, density, D, H):
    """Grenville and Nienow, 95 %, with the band of its regime."""
    group = found["po"] ** (1 / 3) * found["re"]
    turbulent = group > 183**2 / 5.2
    fourier = 5.2 / group if turbulent else (183 / group) ** 2
    time = fourier * density * D**1.5 * H**0.5 / found["viscosity"]
    return {end: factor * time for end, factor in BLENDED["turbulent" if turbulent else "transitional"].items()}
