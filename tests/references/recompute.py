"""Recomputes check values with the libraries that hold them. Reads checks as JSON from standard input: a list of objects
with id, source and inputs; prints for each what the library gives, or why there is nothing."""

import json
import math
import re
import sys

GAS = 8.314462618
KELVIN = 273.15


def regression(x, y):
    from scipy import stats

    return stats.linregress(x, y)


def curve(inputs):
    from scipy.interpolate import PchipInterpolator

    points = sorted((1 / (p["temperature"] + KELVIN), math.log(p["viscosity"])) for p in inputs["law"]["points"])
    at = PchipInterpolator([x for x, _ in points], [y for _, y in points])
    return math.exp(at(1 / (inputs["temperature"] + KELVIN)))


def induction(inputs):
    times = [math.log(r["duration"]) for r in inputs["readings"]]
    celsius = [r["temperature"] for r in inputs["readings"]]
    by_inverse = regression([1 / (GAS * (t + KELVIN)) for t in celsius], times)
    by_degree = regression(celsius, times)
    wanted = inputs["temperature"]
    arrhenius = math.exp(by_inverse.intercept + by_inverse.slope / (GAS * (wanted + KELVIN)))
    log_linear = math.exp(by_degree.intercept + by_degree.slope * wanted)
    return {
        "arrhenius": {"activationEnergy": by_inverse.slope, "duration": arrhenius},
        "logLinear": {"factorPerTenKelvin": math.exp(-10 * by_degree.slope), "duration": log_linear},
        "ratio": arrhenius / log_linear,
    }


def peroxide(inputs):
    from scipy import stats

    times = [r["time"] for r in inputs["readings"]]
    line = regression(times, [r["peroxideValue"] for r in inputs["readings"]])
    reach = stats.t.ppf(0.975, len(times) - 2) * line.stderr
    return {
        "rate": line.slope,
        "peroxideValueStart": line.intercept,
        "interval": {"min": line.slope - reach, "max": line.slope + reach},
    }


def andrade(inputs):
    x = [1 / (p["temperature"] + KELVIN) for p in inputs["points"]]
    y = [math.log(p["viscosity"]) for p in inputs["points"]]
    line = regression(x, y)
    return {
        "law": {"factor": math.exp(line.intercept), "activationEnergy": line.slope * GAS},
        "standardErrors": {"lnFactor": line.intercept_stderr, "activationEnergy": line.stderr * GAS},
        "sumOfSquares": sum((b - line.intercept - line.slope * a) ** 2 for a, b in zip(x, y)),
    }


def casson(inputs):
    points = inputs["points"]
    line = regression([math.sqrt(p["shearRate"]) for p in points], [math.sqrt(p["stress"]) for p in points])
    return {
        "yieldStress": line.intercept**2,
        "plasticViscosity": line.slope**2,
        "determination": line.rvalue**2,
    }


def rejected(inputs):
    from scipy import stats

    test, spread = inputs["test"], inputs["spread"]
    size = test["sampleSize"]
    above = (inputs["massFill"] - inputs["nominal"]) / spread
    if test["mean"]["factor"] < 100:
        return stats.nct.cdf(-test["mean"]["factor"] * math.sqrt(size), size - 1, above * math.sqrt(size))
    short = stats.norm.cdf(-above - inputs["tolerableError"] / spread)
    return stats.binom.sf(test["defectivesMax"], size, short)


def welch(inputs):
    from scipy import stats
    from statsmodels.stats.weightstats import CompareMeans, DescrStatsW

    first, second = inputs["first"], inputs["second"]
    t, probability = stats.ttest_ind(first, second, equal_var=False)
    means = CompareMeans(DescrStatsW(first), DescrStatsW(second))
    low, high = means.tconfint_diff(0.05, usevar="unequal")
    return {
        "t": t,
        "probability": probability,
        "degreesOfFreedom": means.dof_satt(),
        "difference": {"min": low, "max": high},
    }


def line_of(times, values, confidence):
    from statsmodels.api import OLS, add_constant

    fit = OLS(values, add_constant(times)).fit()
    low, high = fit.conf_int(1 - confidence)[1]
    return fit.params, low, high


def trend(inputs):
    readings = inputs["readings"]
    (start, slope), low, high = line_of([r["time"] for r in readings], [r["value"] for r in readings], 0.95)
    return {"slope": {"min": low, "value": slope, "max": high}, "valueStart": start}


def drift(inputs):
    readings = inputs["readings"]
    values = [math.log(r["viscosity"]) for r in readings]
    (_, slope), low, high = line_of([r["time"] for r in readings], values, inputs["confidence"])
    rate = {"min": low, "value": slope, "max": high}
    return {"rate": rate, "factor": {key: math.exp(one * inputs["duration"]) for key, one in rate.items()}}


def shelf_life(inputs):
    import pandas
    from scipy.optimize import brentq
    from statsmodels.formula.api import ols
    from statsmodels.stats.anova import anova_lm

    frame = pandas.DataFrame(
        [(lot["name"], r["time"], r["value"]) for lot in inputs["lots"] for r in lot["readings"]],
        columns=["lot", "t", "y"],
    )
    separate, common = ols("y ~ C(lot)*t", frame).fit(), ols("y ~ C(lot) + t", frame).fit()
    # Each test is against the scatter of the separate lines.
    table = anova_lm(ols("y ~ t", frame).fit(), common, separate)
    slopes = {"ratio": table["F"][2], "probability": table["Pr(>F)"][2]}
    intercepts = {"ratio": table["F"][1]}
    low = "min" in inputs["limits"]
    limit = inputs["limits"]["min" if low else "max"]

    def duration(name):
        if inputs.get("scatter") == "by lot":
            fit = ols("y ~ t", frame[frame["lot"] == name]).fit()
        else:
            fit = common if slopes["probability"] > 0.25 else separate

        def beyond(t):
            at = pandas.DataFrame({"lot": [name], "t": [t]})
            return fit.get_prediction(at).conf_int(alpha=0.1)[0][0 if low else 1] - limit

        return brentq(beyond, 0, 1000, xtol=1e-12)

    lots = [{"duration": duration(lot["name"])} for lot in inputs["lots"]]
    return {
        "tests": {"slopes": slopes, "intercepts": intercepts},
        "lots": lots,
        "duration": min(one["duration"] for one in lots),
    }


def molar_mass(inputs):
    import periodictable

    return periodictable.formula(inputs[0]).mass / 1000


def opened(inputs):
    import subprocess

    (change,) = inputs["changes"]
    month = float(subprocess.run(["units", "-t", "month", "s"], capture_output=True, check=True).stdout)
    return {"first": {"months": math.floor((change["max"] - change["initial"]) / change["rate"] / month)}}


def boiling(inputs):
    from iapws import IAPWS97

    return IAPWS97(P=inputs["pressure"] / 1e6, x=0).T - KELVIN


def air(inputs):
    from iapws.humidAir import Air

    warm, cold = inputs["temperatureSurface"], inputs["temperatureAmbient"]
    at = (warm + cold) / 2 + KELVIN
    of = Air(T=at, P=0.101325)
    spread = of.k / (of.rho * of.cp * 1000)
    return 9.80665 / at * (warm - cold) * inputs["length"] ** 3 * of.rho / (of.mu * spread)


def enthalpy(inputs):
    from iapws import IAPWS97

    warm, cold = (IAPWS97(T=inputs[one] + KELVIN, P=0.101325).h for one in ("temperatureEnd", "temperatureStart"))
    return 1000 * (warm - cold)


def water(inputs):
    from iapws import IAPWS97

    return IAPWS97(T=inputs["temperature"] + KELVIN, P=0.101325)


def boiling_point(inputs):
    from iapws.iapws97 import _TSat_P

    return {"temperatureMax": _TSat_P(0.101325) - KELVIN}


def target(inputs):
    from scipy import optimize, stats

    test, spread = inputs["test"], inputs["spread"]
    least = inputs["nominal"] - inputs["tolerableError"]

    def rejected_at(mean):
        return stats.binom.sf(test["defectivesMax"], test["sampleSize"], stats.norm.cdf((least - mean) / spread))

    found = optimize.brentq(lambda mean: rejected_at(mean) - inputs["shareRejectedMax"], least, least + 9 * spread, xtol=1e-15)
    return {"mass": found}


def of_one_acid(inputs):
    from periodictable import formula

    (kind,) = inputs["profile"]
    carbons, bonds = (int(one) for one in kind.split(":"))
    acid = formula(f"C{carbons}H{2 * (carbons - bonds)}O2").mass
    triglyceride = 3 * acid + formula("C3H2").mass
    iodine = bonds * formula("I2").mass
    return {
        "molarMassTriglyceride": triglyceride / 1000,
        "saponificationValueMolar": 3000 * formula("KOH").mass / triglyceride,
        "iodineValue": 300 * iodine / triglyceride,
        "iodineValueAcids": 100 * iodine / acid,
    }


def power_of(number, impeller, speed, density):
    from fluids.core import Power_number

    return number / Power_number(P=1, L=impeller, N=speed, rho=density)


def stirred(inputs):
    impeller = inputs["impeller"]
    number = impeller["power"]["powerNumber"]
    return {"power": power_of(number, impeller["diameter"], inputs["speed"], inputs["density"])}


def ribbons(inputs):
    from fluids.mixing import Kp_helical_ribbon_Rieger

    one, two = (Kp_helical_ribbon_Rieger(D=d, h=d, nb=n, pitch=d, width=d / 10, T=1) for d, n in ((0.9, 1), (0.95, 2)))
    return {"min": one, "max": two}


def blended(inputs):
    from fluids.mixing import agitator_time_homogeneous

    speed, density, impeller = inputs["speed"], inputs["density"], inputs["impeller"]["diameter"]
    power = inputs["powerNumber"] * density * speed**3 * impeller**5 / 9.80665
    vessel = inputs["vessel"]
    size = {"T": vessel["diameter"], "H": vessel["level"], "mu": inputs["viscosity"], "rho": density, "D": impeller}
    even = {"homogeneity": inputs["uniformity"]} if "uniformity" in inputs else {}
    return {"duration": agitator_time_homogeneous(N=speed, P=power, **size, **even)}


def turns(inputs):
    from fluids.mixing import time_helical_ribbon_Grenville

    return time_helical_ribbon_Grenville(inputs["laminarPowerConstant"], 1)


def handbook_turns(_inputs):
    from fluids.mixing import time_helical_ribbon_Grenville

    return time_helical_ribbon_Grenville(357.4, 4 / 60)


def tank(vessel):
    from fluids.geometry import TANK

    bottom = vessel["bottom"]
    if bottom["shape"] == "dished":
        crown, knuckle = bottom.get("crownToDiameter", 1), bottom.get("knuckleToDiameter", 0.1)
        ends = {"sideA": "torispherical", "sideA_f": crown, "sideA_k": knuckle}
    else:
        ends = {"sideA": {"cone": "conical"}.get(bottom["shape"], bottom["shape"]), "sideA_a": bottom["depth"]}
    return TANK(D=vessel["diameter"], L=1, horizontal=False, **ends)


def bottom(inputs):
    from fluids import geometry

    shape, width = inputs["vessel"]["bottom"]["shape"], inputs["vessel"]["diameter"]
    depth = tank(inputs["vessel"]).sideA_a
    if shape == "dished":
        return {"depth": depth, "area": geometry.SA_torispheroidal(D=width, f=1, k=0.1)}
    area = geometry.SA_conical_head if shape == "cone" else geometry.SA_ellipsoidal_head
    return {"area": area(D=width, a=depth)}


def level_in(of, volume):
    """The library's own way back, TANK.h_from_V, interpolates."""
    from scipy.optimize import brentq

    return brentq(lambda level: of.V_from_h(level) - volume, 1e-9, of.h_max, xtol=1e-15)


def wetted(inputs):
    of = tank(inputs["vessel"])
    level = level_in(of, inputs["volume"])
    return {"level": level, "areaWetted": of.SA_from_h(level)}


def scaled(inputs):
    bench, plant = inputs["impeller"]["diameter"], inputs["plant"]["impeller"]["diameter"]
    number, density, speed = inputs["impeller"]["power"]["powerNumber"], inputs["density"], inputs["speed"]
    slower = speed * bench / plant
    ratio = power_of(number, plant, slower, density) / power_of(number, bench, speed, density)
    width = inputs["vessel"]["diameter"]
    wide = width * plant / bench
    volumes = [math.pi / 4 * w**2 * w for w in (width, wide)]
    first = {"speed": slower, "ratios": {"power": ratio, "powerPerVolume": ratio * volumes[0] / volumes[1]}}
    return [first]


RECIPES = [
    (r"^labelling/period-after-opening/six-months", opened),
    (r"^particles/boiling/water-at-20-kPa", boiling),
    (r"^laws/rayleigh/air-at-300-kelvin", air),
    (r"^laws/enthalpy-between/water-by-iapws", enthalpy),
    (r"^laws/water/by-iapws/specific-heat", lambda inputs: 1000 * water(inputs).cp),
    (r"^laws/water/by-iapws/conductivity", lambda inputs: water(inputs).k),
    (r"^laws/table/water-range-", boiling_point),
    (r"^mixing/stirring-power/as-function-by-fluids", lambda inputs: stirred(inputs)["power"]),
    (r"^mixing/table/ribbon-power-ends", ribbons),
    (r"^mixing/blend-time/.*/library-", blended),
    (r"^mixing/ribbon-revolutions/handbook-example", handbook_turns),
    (r"^mixing/ribbon-revolutions/library", turns),
    (r"^mixing/volume/", lambda inputs: tank(inputs["vessel"]).V_from_h(inputs["level"])),
    (r"^mixing/level/", lambda inputs: level_in(tank(inputs["vessel"]), inputs["volume"])),
    (r"^mixing/bottom/", bottom),
    (r"^mixing/wetted/", wetted),
    (r"^oils/table/squalane-molar-mass", lambda _: molar_mass(["C30H62"])),
    (r"^oils/table/glycerin-molar-mass", lambda _: molar_mass(["C3H8O3"])),
    (r"^packing/target-fill/by-binomial", target),
    (r"^oils/profile/.*-by-weights", of_one_acid),
    (r"^mixing/stirring/power-number-by-fluids", stirred),
    (r"^mixing/scale-up/power-number-by-fluids", lambda inputs: {"plant": [*scaled(inputs), {}, {}, {}, {}, {}]}),
    (r"^laws/viscosity/curve-through-five", curve),
    (r"^oils/induction/", induction),
    (r"^oils/peroxide/", peroxide),
    (r"^rheology/fit-andrade/", andrade),
    (r"^rheology/casson-regression", casson),
    (r"^packing/share-rejected/", rejected),
    (r"^stability/welch/", welch),
    (r"^stability/trend/", trend),
    (r"^stability/viscosity-drift/", drift),
    (r"^stability/shelf-life/", shelf_life),
    (r"^natural-origin/molar-mass/", molar_mass),
]


def versions():
    found = {"python": sys.version.split()[0]}
    for name in ("scipy", "statsmodels", "periodictable", "iapws", "fluids"):
        try:
            found[name] = __import__(name).__version__
        except ImportError:
            found[name] = None
    return found


def run(check):
    recipe = next((one for pattern, one in RECIPES if re.search(pattern, check["id"])), None)
    if recipe is None:
        return {"none": "no recipe"}
    try:
        return {"value": recipe(check.get("inputs"))}
    except ImportError as error:
        return {"none": f"{error.name} is not installed"}


def plain(value):
    if isinstance(value, list):
        return [plain(one) for one in value]
    return {key: plain(one) for key, one in value.items()} if isinstance(value, dict) else float(value)


results = {}
for one in json.load(sys.stdin):
    outcome = run(one)
    results[one["id"]] = {"value": plain(outcome["value"])} if "value" in outcome else outcome
json.dump({"versions": versions(), "results": results}, sys.stdout)
