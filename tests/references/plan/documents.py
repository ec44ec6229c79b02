"""Reads job documents: quantities written as text, and the shares of a formula. Written from docs/formula.md and
docs/guides/documents.md; nothing here is taken from the library's reader."""

import json
import re
from decimal import Decimal
from pathlib import Path

ROOT = Path(__file__).resolve().parents[3]

# Units in terms of those that the library computes in; by the SI brochure.
PREFIX = {"": "1", "k": "1e3", "c": "1e-2", "d": "1e-1", "m": "1e-3", "µ": "1e-6", "n": "1e-9"}
BASE = {
    "g": "1e-3", "m": "1", "L": "1e-3", "s": "1", "min": "60", "h": "3600", "d": "86400", "W": "1", "J": "1",
    "Pa": "1", "bar": "1e5", "K": "1", "°C": "1", "N": "1", "mol": "1", "%": "0.01", "1": "1", "rpm": "rpm", "ppm": "1e-6",
}
POWER = {"²": 2, "³": 3, "2": 2, "3": 3}


def _unit(text):
    if text == "% v/v":
        return Decimal("0.01")
    factor = Decimal(1)
    over = False
    for part in re.split(r"([·/()])", text):
        if part == "/":
            over = True
        if part in ("", "/", "·", "(", ")"):
            continue
        name, power = re.match(r"(.+?)([²³23]?)$", part).groups()
        for prefix in PREFIX:
            if name.startswith(prefix) and name[len(prefix):] in BASE and (prefix == "" or name not in BASE):
                base = BASE[name[len(prefix):]]
                one = Decimal(1) / 60 if base == "rpm" else Decimal(PREFIX[prefix]) * Decimal(base)
                break
        else:
            raise ValueError(f"unit {part!r} in {text!r}")
        one = one ** POWER.get(power, 1)
        factor = factor / one if over else factor * one
    return factor


def exact(text):
    """A quantity as a decimal, in the unit of its kind."""
    number, unit = re.match(r"\s*([-−+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)\s*(.*?)\s*$", text).groups()
    return Decimal(number.replace("−", "-")) * _unit(unit or "1")


def q(text, default=None):
    """A quantity as a number, in the unit of its kind; a bare number as it is."""
    if text is None:
        return default
    return float(text) if isinstance(text, (int, float)) else float(exact(text))


def read_json(path):
    return json.loads((ROOT / path).read_text(encoding="utf8"))


def job(name):
    """A job by its name: of the examples from its three documents, else of tests/plan/jobs."""
    for example in ("cuticle-gel", "scrub-gel"):
        if name.startswith(example):
            folder = f"docs/examples/{example}/"
            rest = read_json(f"{folder}{name[len(example) + 1:]}.json")
            return {"formula": read_json(f"{folder}formula.json"), "bench": read_json(f"{folder}bench.json"), **rest}
    return read_json(f"tests/plan/jobs/{name}.json")


def lines_of(formula):
    """The lines of a formula as (phase, material, share), one q.s. line taking the rest. Shares are exact decimals."""
    lines = []
    for phase in formula["phases"]:
        for line in phase["lines"]:
            material = formula["materials"][line["material"]]
            amount = line["amount"]
            share = None if amount == "q.s." else exact(amount)
            if share is not None and line.get("as") == "active":
                share = share / exact(material["strength"])
            lines.append([phase["name"], line["material"], share])
    rest = 1 - sum(share for *_, share in lines if share is not None)
    return [(phase, key, float(rest if share is None else share), share is None) for phase, key, share in lines]
