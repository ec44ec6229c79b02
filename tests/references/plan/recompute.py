"""Recomputes the answers of whole plans: `python3 recompute.py` prints them as JSON (Debian: python3-scipy). Written from
the equations in docs/ and textbooks; it reads the same documents as the library, by itself."""

import json
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent))

import numpy
import scipy

import film
from after import after
from cold import ColdQuestions, ColdRun
from documents import job
from hot import Run
from hot_questions import HotQuestions

HOT = ["cuticle-gel-beaker", "cuticle-gel-kettle", "jacket-by-conductance", "jacket-with-skin", "flakes-in-too-early"]
COLD = ["scrub-gel-beaker", "scrub-gel-vessel", "air-held-for-good"]


def leaves_film_open(document):
    return any(one["kind"] == "film" and "thickness" not in one for one in document["batch"]["allowances"])


def hot(document):
    if not leaves_film_open(document):
        return HotQuestions(Run(document).go())
    # A first run, with the thickest film that the set gel holds, finds the film of the melt; a second weighs with it.
    stress = HotQuestions(Run(document, film=1e-3)).yield_stress()["value"]
    first = Run(document, film=film.first_film(Run(document, film=1e-3), stress)).go()
    return HotQuestions(Run(document, film=film.drained(first)).go())


def shown(value):
    if isinstance(value, dict):
        return {k: shown(v) for k, v in value.items()}
    if isinstance(value, list):
        return [shown(one) for one in value]
    if isinstance(value, (numpy.floating, float)):
        return float(f"{float(value):.10g}")
    return int(value) if isinstance(value, numpy.integer) else value


def all_asked():
    """The questions of every job, answered."""
    return {**{name: hot(job(name)) for name in HOT}, **{name: ColdQuestions(ColdRun(job(name)).go()) for name in COLD}}


if __name__ == "__main__":
    versions = {"python": sys.version.split()[0], "scipy": scipy.__version__, "numpy": numpy.__version__}
    asked = all_asked()
    jobs = {name: one.all() for name, one in asked.items()}
    examples = {name: asked[name] for name in ("cuticle-gel-kettle", "scrub-gel-vessel")}
    json.dump(shown({"versions": versions, "jobs": jobs, "after": after(examples)}), sys.stdout)
