"""After the batch, of the two examples: fill and tolerable error, what a stability test stands for, label and exposure;
and the statistics of the room stability on the readings of docs/stability.md. By docs/packing.md, docs/stability.md,
docs/labelling.md and docs/exposure.md; shares as exact decimals."""

import math
from decimal import Decimal

import numpy as np
from scipy import stats
from scipy.optimize import brentq

from common_questions import target
from documents import exact, job, q
from matter import GAS, KELVIN

# SCCS/1647/22, Table 3A, as docs/exposure.md prints it: exposure by body weight [mg/(kg d)].
EXPOSURE = {"hand cream": 32.70, "shower gel": 2.79}


def packs(asked):
    found = target(asked)
    pack, run = asked.job["pack"], asked.run
    aimed = q(pack["fillTarget"]) if "fillTarget" in pack else found["mean"]
    count = math.floor(run.delivered / aimed + 1e-9)
    return {"massNominal": found["nominal"], "tolerableError": found["error"], "target": found["mean"],
            "shareRejected": found["rejected"], "massAimed": aimed, "count": count, "massLeft": run.delivered - count * aimed}


def stability(document):
    """Time at the temperature of use that does as much as a whole storage [s], with its bounds."""
    test = document["stability"]
    ageing, use = test["ageing"], q(test["ageing"]["reference"])
    found = {}
    for one in test["conditions"]:
        if "at" not in one or q(one["at"]) == use:
            continue
        t, time = q(one["at"]), 86400.0 * max(one["pullDays"])
        if ageing["law"] == "q10":
            times = [time * ageing["q10"][end] ** ((t - use) / 10) for end in ("min", "value", "max")]
        else:
            inverse = 1 / (t + KELVIN) - 1 / (use + KELVIN)
            times = [time * math.exp(-q(ageing["activationEnergy"][end]) / GAS * inverse) for end in ("min", "value", "max")]
        found[one["name"]] = {"min": min(times), "value": times[1], "max": max(times)}
    return found


def shares(document):
    """Exact share of each material, q.s. taking the rest."""
    found, rest = {}, None
    for phase in document["formula"]["phases"]:
        for line in phase["lines"]:
            material = document["formula"]["materials"][line["material"]]
            if line["amount"] == "q.s.":
                rest = line["material"]
                continue
            share = exact(line["amount"])
            found[line["material"]] = share / exact(material["strength"]) if line.get("as") == "active" else share
    return {**found, rest: 1 - sum(found.values())}


def label(document):
    formula, wanted = document["formula"]["materials"], document["label"]
    of, names, colourants = shares(document), {}, set()
    for key, share in of.items():
        material = formula[key]
        for part in material.get("ingredients", [{"name": material.get("listingName", material["name"]), "share": "100 %"}]):
            names[part["name"]] = names.get(part["name"], 0) + share * exact(part["share"])
    ordered = sorted((n for n in names if names[n] >= Decimal("0.01")), key=lambda n: -names[n])
    threshold = Decimal("0.00001") if wanted["use"] == "leave-on" else Decimal("0.0001")
    allergens = {}
    if "allergens" in wanted:
        listed = {s["name"] for s in wanted["allergens"]["substances"]}
        for key, share in of.items():
            for one in formula[key].get("allergens", []):
                if one["name"] in listed:
                    allergens[one["name"]] = allergens.get(one["name"], 0) + share * exact(one["share"])
    claims = []
    for claim in wanted.get("claims", []):
        water = sum(s for k, s in of.items() if formula[k].get("formulationWater")) if claim["basis"] == "without water" else Decimal(0)
        counted = {k: s for k, s in of.items() if not (water and formula[k].get("formulationWater"))}
        low = sum(s * Decimal(str(formula[k].get("indices", {}).get(claim["of"], 0))) for k, s in counted.items()) / (1 - water)
        claims.append({"of": claim["of"], "percent": math.floor(low * 100), "min": float(low)})
    found = {"ordered": {n: float(names[n]) for n in ordered}, "anyOrder": {n: float(s) for n, s in names.items() if s < Decimal("0.01")},
             "allergens": {n: float(s) for n, s in allergens.items() if s > threshold}, "claims": claims}
    if "certified" in wanted:
        kinds, organic = {}, {}
        for key, share in of.items():
            certified = formula[key]["certified"]
            kinds[certified["class"]] = kinds.get(certified["class"], 0) + share
            organic[certified["class"]] = organic.get(certified["class"], 0) + share * exact(certified.get("organic", "0 %"))
        physical, chemical = "physically processed agro-ingredient", "chemically processed agro-ingredient"
        every = sum(organic.values())
        found["certified"] = {
            "organic of product": float(every),
            "organic of physically processed": float(organic[physical] / kinds[physical]),
            "organic of agro-ingredients": float(every / (kinds[physical] + kinds[chemical])),
        }
    return found


def exposure(document):
    asked = document["exposure"]
    daily, found = EXPOSURE[asked["productType"]], {}
    of = shares(document)
    for one in asked["materials"]:
        absorbed, share = q(one["dermalAbsorption"]), float(of[one["material"]])
        row = {"dose": daily * share * absorbed}
        if "study" in one:
            study = one["study"]["pointOfDeparture"] * one["study"]["bioavailability"]
            row["margin"] = study / row["dose"]
            if "marginMin" in one:
                row["massFractionMax"] = min(1.0, study / (one["marginMin"] * daily * absorbed))
        found[one["material"]] = row
    return found


# Readings of docs/stability.md, and two sets of weighings of oil bleed [%]; invented.
LOTS = {"A": [101.2, 98.6, 99.4, 96.4, 96.9], "B": [99.6, 100.0, 97.4, 97.9, 95.7], "C": [100.6, 98.9, 98.5, 97.3, 95.9]}
APART = {"A": [101.2, 99.6, 98.4, 96.4, 95.9], "B": [99.6, 97.0, 94.4, 91.9, 88.7], "C": [100.6, 98.9, 97.5, 95.3, 94.9]}
BLEED = {"first": [0.42, 0.51, 0.38, 0.47, 0.44, 0.55], "second": [0.61, 0.72, 0.49, 0.83]}


def shelf_life(lots, lowest):
    """ICH Q1E: slopes and then intercepts pooled at a significance of 0.25, the one-sided 95 % limit of the mean."""
    names = list(lots)
    times = [3.0 * i for i in range(5)]
    t = np.array(times * len(names))
    which = np.repeat(np.arange(len(names)), len(times))
    y = np.concatenate([lots[n] for n in names])
    ones = np.stack([(which == i).astype(float) for i in range(len(names))], axis=1)
    designs = {"separate lines": np.hstack([ones, ones * t[:, None]]), "common slope": np.hstack([ones, t[:, None]]),
               "common line": np.stack([np.ones_like(t), t], axis=1)}

    def left(name):
        x = designs[name]
        _, (rss, *_), rank, _ = np.linalg.lstsq(x, y, rcond=None)
        return float(rss), len(y) - rank

    def p_value(small, large):
        # In the analysis of covariance every term is held against the scatter about lines of their own.
        (r0, f0), (r1, f1), (r, f) = left(small), left(large), left("separate lines")
        return float(stats.f.sf((r0 - r1) / (f0 - f1) / (r / f), f0 - f1, f))

    slopes = p_value("common slope", "separate lines")
    intercepts = p_value("common line", "common slope")
    model = "separate lines" if slopes < 0.25 else "common slope" if intercepts < 0.25 else "common line"
    x = designs[model]
    rss, freedom = left(model)
    beta = np.linalg.lstsq(x, y, rcond=None)[0]
    cov = np.linalg.inv(x.T @ x) * rss / freedom
    quantile = stats.t.ppf(0.95, freedom)

    def row(lot, at):
        own = np.eye(len(names))[lot]
        return {"separate lines": np.concatenate([own, own * at]), "common slope": np.append(own, at), "common line": np.array([1, at])}[model]

    def below(lot):
        limit = lambda at: row(lot, at) @ beta - quantile * math.sqrt(row(lot, at) @ cov @ row(lot, at)) - lowest
        return brentq(limit, 0, 200, xtol=1e-12)

    durations = {n: below(i) for i, n in enumerate(names)}
    return {"model": model, "slopes": slopes, "intercepts": intercepts, "duration": min(durations.values())}


def welch(first, second):
    found = stats.ttest_ind(first, second, equal_var=False)
    a, b = (np.var(s, ddof=1) / len(s) for s in (first, second))
    freedom = (a + b) ** 2 / (a**2 / (len(first) - 1) + b**2 / (len(second) - 1))
    apart, reach = np.mean(first) - np.mean(second), stats.t.ppf(0.975, freedom) * math.sqrt(a + b)
    return {"t": float(found.statistic), "degreesOfFreedom": float(freedom), "probability": float(found.pvalue),
            "difference": {"min": apart - reach, "value": float(apart), "max": apart + reach}}


def after(asked):
    """What the examples give, by the questions that were asked of them."""
    return {
        "packs": {name: packs(one) for name, one in asked.items()},
        "stability": {name: stability(one.job) for name, one in asked.items()},
        "label": {name: label(one.job) for name, one in asked.items()},
        "exposure": {name: exposure(one.job) for name, one in asked.items()},
        "shelfLife": [{"lots": lots, "min": low, **shelf_life(lots, low)} for lots, low in ((LOTS, 90.0), (APART, 80.0))],
        "welch": [{**BLEED, **welch(BLEED["first"], BLEED["second"])}],
    }
