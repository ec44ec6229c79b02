"""Figures, limits and verdicts, by the section Answers of docs/plan.md."""

import math


def known(value):
    return {"min": value, "max": value, "value": value}


def between(low, high, value=None):
    return {"min": low, "max": high, **({} if value is None else {"value": value})}


OPEN = between(None, None)


def over(value, ends):
    """A figure between all of its ends."""
    ends = [value, *ends]
    return between(min(ends), max(ends), value)


def least(value):
    return {"min": value if isinstance(value, dict) else known(value)}


def most(value):
    return {"max": value if isinstance(value, dict) else known(value)}


def _from_below(figure, limit, margin):
    low, high = figure["min"], figure["max"]
    first = None if limit["min"] is None else limit["min"] + margin
    last = None if limit["max"] is None else limit["max"] + margin
    room = None if low is None or last is None else low - last
    if low is not None and last is not None and low >= last - 1e-12 * abs(last):
        return "met", room
    if high is not None and first is not None and high < first:
        return "not-met", room
    return "not-known", room


def mirrored(figure):
    return between(None if figure["max"] is None else -figure["max"], None if figure["min"] is None else -figure["min"])


def judge(figure, limit, margin):
    """Verdict, side and room of a figure against its limit, moved inwards by the margin."""
    ends = []
    if "min" in limit:
        verdict, room = _from_below(figure, limit["min"], margin.get("min", 0))
        if verdict == "not-met":
            return "not-met", "below", room
        ends.append((verdict, room))
    if "max" in limit:
        verdict, room = _from_below(mirrored(figure), mirrored(limit["max"]), margin.get("max", 0))
        if verdict == "not-met":
            return "not-met", "above", room
        ends.append((verdict, room))
    unsure = [room for verdict, room in ends if verdict == "not-known"]
    if unsure:
        return "not-known", "none", unsure[0]
    return "met", "none", None if any(r is None for _, r in ends) else min(r for _, r in ends)


def decide(states, quantifier):
    """The state that decides: the worst where every state has to meet the limit, the best where one is enough."""
    order = ["not-met", "not-known", "met"] if quantifier == "every" else ["met", "not-known", "not-met"]
    sign = 1 if quantifier == "every" else -1
    judged = [(s, *judge(s["figure"], s["limit"], s.get("margin", {}))) for s in states]
    rank = lambda one: (order.index(one[1]), sign * (-math.inf if one[3] is None else one[3]))
    first = min(judged, key=rank)
    counts = {v: sum(1 for one in judged if one[1] == v) for v in ("met", "not-met", "not-known")}
    near = lambda one: one[1] == first[1] and (one[3] == first[3] or None not in (one[3], first[3]) and math.isclose(one[3], first[3], rel_tol=1e-9))
    tied = [one[0].get("at", {}) for one in judged if near(one)]
    return first, counts, tied


class Answers:
    def __init__(self):
        self.found = {}

    def ask(self, key, states, quantifier="every"):
        if not states:
            return
        (state, verdict, side, _), counts, tied = decide(states, quantifier)
        self.found[key] = {
            "verdict": verdict, "side": side, "at": state.get("at", {}), "figure": state["figure"], "limit": state["limit"],
            **({"margin": state["margin"]} if state.get("margin") else {}), "states": counts,
            # States that decide alike: which of them is named is a matter of the last digit.
            **({"tied": tied} if len(tied) > 1 else {}),
        }


def key(name, *of):
    return ":".join([name, *(str(o) for o in of)])
