"""The routes by the id of their check, and what several of them need."""

import numpy as np
from scipy import constants

KELVIN = 273.15
GRAVITY = constants.g

ROUTES = {}

# numpy 2 has another name for it.
area_under = getattr(np, "trapezoid", None) or np.trapz


def route(*names):
    def keep(function):
        for name in names:
            ROUTES[name] = function
        return function

    return keep


def until(what, wanted):
    """Ends an integration when one of its values reaches what is wanted."""
    event = lambda t, y: y[what] - wanted
    event.terminal = True
    return event
