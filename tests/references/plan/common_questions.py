"""Questions that both routes have: what is weighed and arrives, what goes into packs, the stability test."""

import math

from scipy import stats
from scipy.optimize import brentq

from asked import OPEN, between, key, known, least, most
from documents import exact, q


def batch_questions(one):
    run, job, m, answers = one.run, one.job, one.m, one.answers
    formula = job["formula"]
    share = lambda test: sum(s for phase, name, s, _ in run.lines if test(phase, name))
    outer = job["bench"].get("emulsion", {}).get("outerPhase")
    if outer:
        oil = share(lambda phase, name: phase != outer and not m.is_particle(name))
        former = share(lambda phase, name: phase == outer)
    else:
        oil = share(lambda _, name: m.materials[name]["function"] == "oil")
        former = share(lambda _, name: m.materials[name]["function"] == "gel former")
    span = job["bench"].get("oilPerGelFormer")
    limit = {"min": known(float(span["min"])), "max": known(float(span["max"]))} if span else least(OPEN)
    answers.ask("gel-former-ratio", [{"at": {}, "figure": known(oil / former), "limit": limit}])

    claim = formula.get("claims", {}).get("naturalOrigin")
    if claim:
        index = lambda name: m.materials[name].get("indices", {}).get("naturalOrigin")
        low = sum(s * (index(n) or 0) for _, n, s, _ in run.lines)
        high = sum(s * (1 if index(n) is None else index(n)) for _, n, s, _ in run.lines)
        answers.ask("natural-origin-claim", [{"at": {}, "figure": between(low, high), "limit": least(q(claim))}])

    answers.ask("delivered", [{"at": {}, "figure": known(run.delivered), "limit": least(run.delivered_target)}])

    working = job["vessel"]["workingVolume"]
    smallest, largest = known(q(working["min"])), known(q(working["max"]))
    charge = sum(run.masses.values())
    states = [{"at": {"place": "vessel"}, "figure": known(charge / run.density20), "limit": {"min": smallest, "max": largest}}]
    warmest = None
    for moment in run.moments[: one.filling]:
        # A wall that was left out keeps the charge as warm as it was since a step last came to what it asks for.
        sure = "wall" in job["vessel"] or moment.do in ("heat", "cool") or warmest is None
        warmest = moment.after.t if sure else max(warmest, moment.after.t)
        volumes = [m.volume(s.contents, s.t) for s in (moment.before, moment.after) if s.contents]
        volumes[-1] = (volumes[-1][0], max(volumes[-1][1], m.volume(moment.after.contents, warmest)[1]))
        mixed = getattr(moment, "mixed", None)
        volumes = max(volumes, key=lambda v: v[1])
        states.append({"at": {"step": moment.number, "place": "vessel"}, "figure": between(*volumes), "limit": {"max": largest}})
    answers.ask("working-volume", states)

    for name, material in m.materials.items():
        most_share = material.get("limits", {}).get("shareMax")
        if most_share and name in run.masses:
            answers.ask(key("maximum-share", name), [
                {"at": {}, "figure": known(run.masses[name] / charge), "limit": most(q(most_share))}])

    day = job["process"].get("workingDay")
    if day:
        attended = [moment for moment in run.moments if not (moment.do == "rest" and moment.number > one.filling + 1)]
        answers.ask("lot-fits-the-day", [
            {"at": {"step": moment.number}, "figure": known(moment.start + moment.duration), "limit": most(q(day["length"]))} for moment in attended])


def tolerable_error(table, nominal):
    """In g or mL, by the row of the nominal quantity in g or mL, rounded up as the table has it."""
    for row in table["rows"]:
        if row["nominalMax"] is None or nominal <= row["nominalMax"]:
            if "error" in row:
                return row["error"]
            step = row.get("roundUpTo", table.get("roundUpTo"))
            error = exact(str(row["errorRelative"])) * exact(str(round(nominal, 9)))
            return float(error) if not step else float(math.ceil(error / exact(str(step))) * exact(str(step)))
    raise ValueError("no row")


def share_rejected(test, nominal, error, mean, spread):
    """Share of batches that the test rejects. Mean and standard deviation of a normal sample make a noncentral t; that
    both rules fail together is counted as if they were independent, which matters only where both fail often."""
    size = test["mean"]["sampleSize"]
    above = (mean - nominal) / spread
    by_mean = stats.nct.cdf(-test["mean"]["factor"] * math.sqrt(size), size - 1, above * math.sqrt(size))
    short = stats.norm.cdf(-(mean - nominal + error) / spread)
    far = stats.norm.cdf(-(mean - nominal + 2 * error) / spread)
    ok = stats.binom.cdf(test["defectivesMax"], test["sampleSize"], short)
    none_far = (1 - far) ** test["sampleSize"] if test.get("noneBeyondTwo") else 1.0
    return 1 - (1 - by_mean) * ok * none_far


def target(one):
    """Nominal mass, tolerable error and the mean that the rules ask for [kg]."""
    run, pack = one.run, one.job["pack"]
    nominal = q(pack["nominal"]["mass"]) if "mass" in pack["nominal"] else q(pack["nominal"]["volume"]) * run.density20
    rules, spread = pack["averageQuantity"], q(pack["fillSpread"])
    if "mass" in pack["nominal"]:
        error = tolerable_error(rules["tolerableErrors"], q(pack["nominal"]["mass"]) * 1e3) * 1e-3
    else:
        error = tolerable_error(rules["tolerableErrors"], q(pack["nominal"]["volume"]) * 1e6) * 1e-6 * run.density20
    packs = one.job["batch"]["target"]["packs"]
    test = next(row["test"] for row in rules["batchTests"]["rows"] if row["packsMin"] <= packs and (row["packsMax"] is None or packs <= row["packsMax"]))
    wanted = rules["shareRejectedMax"]
    fails = lambda mean: share_rejected(test, nominal, error, mean, spread) - wanted
    mean = nominal if fails(nominal) <= 0 else brentq(fails, nominal, nominal + 10 * spread, xtol=1e-15, rtol=1e-14)
    return {"nominal": nominal, "error": error, "mean": mean, "rejected": share_rejected(test, nominal, error, mean, spread)}


def fill_questions(one):
    pack, run, m = one.job.get("pack", {}), one.run, one.m
    if "nominal" not in pack:
        return
    found = target(one)
    stated = pack.get("fillTarget")
    if stated:
        one.answers.ask("fill-by-the-rules", [{"at": {}, "figure": known(q(stated)), "limit": least(found["mean"])}])
    aimed = q(stated) if stated else found["mean"]
    largest = aimed + 3 * q(pack["fillSpread"])
    brim = q(pack["brimCapacity"])
    product = run.weighing["arriving"]
    total = sum(product.values())
    volume = lambda t: tuple(v * largest / total for v in m.volume(run.moments[one.filling].after.contents, t))
    scale = total / sum(run.moments[one.filling].after.contents.values())
    volumes = lambda t: tuple(v * scale for v in volume(t))
    fill = run.moments[one.filling]
    states = [{"at": {"place": place}, "figure": between(*volumes(t)), "limit": most(brim)}
              for place, t in (("first-pack", fill.before.t), ("last-pack", fill.after.t))]
    one.answers.ask("fits-the-brim", states)
    hottest = q(pack["storageTemperatureMax"])
    low, high = volumes(hottest)
    one.answers.ask("head-space-when-hot", [
        {"at": {}, "figure": between(1 - high / brim, 1 - low / brim), "limit": least(q(pack.get("headSpaceMin"), 0.0))}])
    packs = one.job["batch"]["target"].get("packs")
    if packs:
        one.answers.ask("whole-packs", [{"at": {}, "figure": known(float(math.floor(run.delivered / aimed + 1e-9))), "limit": least(float(packs))}])


def stability_questions(one):
    test = one.job.get("stability")
    if not test:
        return
    samples = sum(len(c["pullDays"]) * c["samplesPerPull"] + c.get("reserve", 0) for c in test["conditions"])
    samples += test.get("cycles", {}).get("samples", 0)
    mass = samples * q(test["sample"])
    allowance = next(a for a in one.job["batch"]["allowances"] if a["name"] == test["allowance"])
    one.answers.ask("samples-within-allowance", [{"at": {}, "figure": known(mass), "limit": most(q(allowance["mass"]))}])
    changes = [(q(t["from"]), q(t["to"])) for t in test.get("transitions", [])]
    if one.m.job["bench"].get("doses"):
        contents = one.run.moments[one.filling].before.contents
        changes.append((one.run.sets_at(contents), one.run.dissolves_at(contents)))
    use = q(test["ageing"]["reference"])
    above = [start for start, _ in changes if start > use]
    below = [end for _, end in changes if end < use]
    limit = {**({"min": known(max(below))} if below else {}), **({"max": known(min(above))} if above else {})}
    margin = q(one.job["process"].get("settingMargin"), 2.0)
    one.answers.ask("stored-below-transition", [
        {"at": {}, "figure": known(q(c["at"])), "limit": limit, "margin": {"min": margin, "max": margin}} for c in test["conditions"] if "at" in c])
