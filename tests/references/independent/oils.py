"""How density and refractive index of oils change with temperature, from tabled densities."""

import numpy as np

from routes import route

# Noureddini, Teoh and Clements 1992: g/mL at temperatures in °C; coconut oil is solid at the first.
CELSIUS = [23.9, 37.8, 48.9, 60, 82.2, 100, 110]
DENSITIES = {
    "crambe": [0.9078, 0.8977, 0.8898, 0.8829, 0.8681, 0.8564, 0.8501],
    "rapeseed": [0.9073, 0.8987, 0.8908, 0.8839, 0.8686, 0.8579, 0.8511],
    "corn": [0.9188, 0.9082, 0.9028, 0.8939, 0.88, 0.8679, 0.861],
    "soybean": [0.9193, 0.9082, 0.9023, 0.8939, 0.8795, 0.8674, 0.8615],
    "milkweed": [0.9203, 0.9097, 0.9018, 0.8934, 0.879, 0.8684, 0.8605],
    "coconut": [0.9107, 0.9033, 0.8949, 0.8795, 0.8669, 0.8605],
    "lesquerella": [0.9398, 0.9307, 0.9229, 0.9152, 0.8999, 0.8879, 0.883],
}
LINES = [np.polyfit(CELSIUS[-len(some) :], 1000 * np.array(some), 1) for some in DENSITIES.values()]


def index_per_kelvin(index, density, temperature):
    """Of an index at a temperature: (n² − 1)/(n² + 2) goes with the density; it is found again half a kelvin on either side."""
    refractivity = (index**2 - 1) / (index**2 + 2) / density(temperature)
    at = lambda t: np.sqrt((1 + 2 * (x := refractivity * density(t))) / (1 - x))
    return round(at(temperature + 0.5) - at(temperature - 0.5), 5)


@route("oils/slopes/density-by-regression")
def density_slopes():
    slopes = [line[0] for line in LINES]
    ends = {"min": min(slopes), "value": np.mean(slopes), "max": max(slopes)}
    return {key: round(one, 2) for key, one in ends.items()}


@route("oils/slopes/index-by-lorentz-lorenz")
def index_slopes():
    return {"min": min(index_per_kelvin(1.4735, np.poly1d(line), 25) for line in LINES)}


@route("oils/table/squalane-slope-by-lorentz-lorenz")
def squalane_slope():
    """The density falls by 0.6413 a kelvin (Dubey and Sharma 2008) from 811.5 at 15 °C, where the index is 1.4530."""
    return {"perKelvin": index_per_kelvin(1.453, lambda t: 811.5 - 0.6413 * (t - 15), 15)}


@route("oils/profile-of-blend/by-moles")
def blend_by_moles():
    """The acids of 2 kg of one oil and 3 kg of another, counted in moles: three of them leave their water to one of glycerol."""
    carbon, hydrogen, oxygen = 0.012011, 0.001008, 0.015999
    acid = lambda carbons, bonds: carbons * carbon + 2 * (carbons - bonds) * hydrogen + 2 * oxygen
    glycerol, water = 3 * carbon + 8 * hydrogen + 3 * oxygen, 2 * hydrogen + oxygen
    molar = {"8:0": acid(8, 0), "10:0": acid(10, 0), "18:1": acid(18, 1), "18:2": acid(18, 2)}
    oils = [(2.0, {"8:0": 58.0, "10:0": 42.0}), (3.0, {"10:0": 5.0, "18:1": 75.0, "18:2": 20.0})]
    grams = dict.fromkeys(molar, 0.0)
    for mass, shares in oils:
        moles = {name: share / molar[name] for name, share in shares.items()}
        whole = sum(shares.values()) + sum(moles.values()) * (glycerol / 3 - water)
        for name, share in shares.items():
            grams[name] += mass * share / whole
    return {name: 100 * some / sum(grams.values()) for name, some in grams.items()}
