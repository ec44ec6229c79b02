"""The film that a batch leaves open (docs/plan.md, Lots and losses)."""

import math

from documents import q
from matter import GRAVITY


def first_film(run, stress):
    """A first run weighs with the thickest film that the yield stress of the set gel holds [m]."""
    return stress / (run.density20 * GRAVITY)


def drained(run):
    """Mean film that has not drained from the wall by the end of filling, Jeffreys [m]: of the height of the charge, in
    the time of filling, at the viscosity by then."""
    fill = next(one for one in run.moments if one.do == "fill")
    contents = fill.before.contents
    level = run.level(contents, fill.before.t)
    viscosity = run.readings(contents, "cooling")(fill.after.t)
    return 2 / 3 * math.sqrt(viscosity * level / (run.density20 * GRAVITY * fill.duration))
