"""Conduction out of a filled pack by spectral collocation: the library sums eigenfunctions, or inverts a Laplace
transform. A jar is the product of a long cylinder and a slab (docs/heat.md, Packs)."""

import math

import numpy as np
from scipy.optimize import brentq


def chebyshev(n):
    """Points and differentiation matrix on [-1, 1]."""
    x = np.cos(math.pi * np.arange(n + 1) / n)
    c = np.array([2.0] + [1.0] * (n - 1) + [2.0]) * (-1.0) ** np.arange(n + 1)
    d = np.outer(c, 1 / c) / (x[:, None] - x[None, :] + np.eye(n + 1))
    return x, d - np.diag(d.sum(axis=1))


class Way:
    """One way in which heat flows, as a share of the half dimension: bend 0 for a slab, 1 for a long cylinder."""

    def __init__(self, bend, biot, n=61):
        x, d = chebyshev(n)
        operator = d @ d + bend * np.diag(1 / x) @ d
        # At both faces dθ/dx = ∓Bi θ: the face values follow from the rest.
        edge = np.array([d[0] + biot * np.eye(n + 1)[0], -d[-1] + biot * np.eye(n + 1)[-1]])
        faces = -np.linalg.solve(edge[:, [0, -1]], edge[:, 1:-1])
        inner = operator[1:-1, 1:-1] + operator[1:-1][:, [0, -1]] @ faces
        self.values, vectors = np.linalg.eig(inner)
        start = np.linalg.solve(vectors, np.ones(n - 1))
        # The centre from the collocation points, by barycentric interpolation on all of them.
        weights = np.array([0.5] + [1.0] * (n - 1) + [0.5]) * (-1.0) ** np.arange(n + 1) / (0 - x)
        weights /= weights.sum()
        to_centre = weights[1:-1] + weights[[0, -1]] @ faces
        self.parts = (to_centre @ vectors) * start

    def centre(self, fourier):
        return float(np.real(np.sum(self.parts * np.exp(self.values * fourier))))


class Pack:
    def __init__(self, pack, conductivity, density, heat, room):
        from documents import q

        h, self.room = q(pack["coefficient"]), room
        self.radius, self.half = q(pack["diameter"]) / 2, q(pack["height"]) / 2
        self.diffusivity = conductivity / (density * heat)
        self.round = Way(1, h * self.radius / conductivity)
        self.flat = Way(0, h * self.half / conductivity)

    def share(self, time):
        if time < 1e-9:
            return 1.0
        return self.round.centre(self.diffusivity * time / self.radius**2) * self.flat.centre(self.diffusivity * time / self.half**2)

    def temperature(self, start, time):
        return self.room + (start - self.room) * self.share(time)

    def until(self, start, end):
        if start <= end:
            return 0.0
        return brentq(lambda t: self.temperature(start, t) - end, 1.0, 1e6, xtol=1e-9, rtol=1e-14)
