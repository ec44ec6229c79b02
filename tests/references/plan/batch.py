"""What is weighed for a batch: backwards through the losses, then onto the steps of the balances. By docs/batch.md."""

import itertools
import math

from documents import q


def losses(job, density, film=None):
    """The losses in the order of the process as (name, share or None, mass or None, materials or None)."""
    found = []
    diameter = q(job["vessel"].get("diameter"))
    bottom = job["vessel"].get("bottom", {"shape": "flat"})
    for one in job["batch"]["allowances"]:
        if one["kind"] == "share":
            found.append((one["name"], q(one["share"]), None, one.get("materials")))
        elif one["kind"] == "mass":
            found.append((one["name"], None, q(one["mass"]), None))
        else:
            thickness = q(one["thickness"]) if "thickness" in one else film
            area, volume = bottom_face(bottom, diameter)
            found.append((one["name"] + ", on the wall", 4 * thickness / diameter, None, None))
            found.append((one["name"] + ", on the bottom", None, density * thickness * (area - 4 * volume / diameter), None))
    return found


def bottom_face(bottom, diameter):
    """Wetted area and volume of a bottom: a plate, or half of an oblate ellipsoid of revolution."""
    if bottom["shape"] == "flat":
        return math.pi * diameter**2 / 4, 0.0
    assert bottom["shape"] == "ellipsoidal", bottom
    a, c = diameter / 2, q(bottom["depth"])
    if math.isclose(a, c):
        return 2 * math.pi * a**2, 2 * math.pi * a**3 / 3
    e = math.sqrt(1 - (c / a) ** 2)
    half = math.pi * a**2 * (1 + (1 - e**2) / e * math.atanh(e))
    return half, 2 * math.pi * a**2 * c / 3


def charge_for(delivered, shares, allowances):
    """The charge of each line, so that the mass asked for arrives; last loss first."""
    masses = {key: delivered * share for key, share in shares.items()}
    for _, share, mass, materials in reversed(allowances):
        touched = [key for key in masses if materials is None or key in materials]
        total = sum(masses[key] for key in touched)
        for key in touched:
            masses[key] = masses[key] / (1 - share) if share is not None else masses[key] + mass * masses[key] / total
    return masses


def after_losses(masses, allowances):
    """What arrives of a charge, forwards, and what each loss takes."""
    left = dict(masses)
    for _, share, mass, materials in allowances:
        touched = [key for key in left if materials is None or key in materials]
        total = sum(left[key] for key in touched)
        for key in touched:
            left[key] -= left[key] * share if share is not None else mass * left[key] / total
    return left


def increments(job, masses):
    """The finest balance that carries each mass, in as few portions as will do."""
    balances = [(q(b["increment"]), q(b["capacity"]), q(b["minimumWeight"])) for b in job["batch"]["balances"]]
    tare = q(job["batch"].get("tare"), 0.0)
    steps = {}
    for key, mass in masses.items():
        fit = []
        for step, capacity, least in balances:
            portions = math.ceil(mass / (capacity - tare) - 1e-12)
            if mass / portions >= least:
                fit.append((portions, step))
        steps[key] = min(fit)[1]
    return steps


def onto_balances(masses, steps, wanted):
    """Each line up or down by less than a step: the smallest total that is not below what is wanted, with the smallest
    squared deviation among equal totals. Every choice is tried."""
    keys = list(masses)
    unit = min(steps.values())
    floors = {key: math.floor(masses[key] / steps[key] + 1e-9) for key in keys}
    best = None
    for ups in itertools.product((0, 1), repeat=len(keys)):
        counts = {key: floors[key] + up for key, up in zip(keys, ups)}
        total = sum(counts[key] * round(steps[key] / unit) for key in keys)
        if total * unit < wanted - 1e-9 * unit:
            continue
        off = sum((counts[key] * steps[key] - masses[key]) ** 2 for key in keys)
        if best is None or (total, off) < best[:2]:
            best = (total, off, {key: counts[key] * steps[key] for key in keys})
    return best and (best[0] * unit, best[2])


def weighed(job, delivered, lines, density, film=None):
    """Masses to weigh of one lot, by material, with the losses and what they leave."""
    shares = {key: share for _, key, share, _ in lines}
    allowances = losses(job, density, film)
    exact = charge_for(delivered, shares, allowances)
    steps = increments(job, exact)
    wanted = sum(exact.values())
    for _ in range(100):
        total, masses = onto_balances(exact, steps, wanted)
        arriving = after_losses(masses, allowances)
        if sum(arriving.values()) >= delivered * (1 - 1e-12):
            break
        wanted = total + min(steps.values())
    return {"masses": masses, "allowances": allowances, "arriving": arriving, "exact": exact, "steps": steps}
