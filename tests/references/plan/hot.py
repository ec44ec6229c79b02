"""The run of a job by its heat balance, stepped in time by an ODE solver (the library integrates over temperature)."""

import math

import numpy as np
from scipy.integrate import quad, solve_ivp
from scipy.optimize import brentq, curve_fit

import batch
from documents import lines_of, q
from matter import KELVIN, Matter, Readings, dose_temperature
from stirring import Stirrer, level_of

TOLERANCE = {"rtol": 1e-10, "atol": 1e-9}


class Moment:
    def __init__(self, number, step, before, after, duration, path=None, speed=None):
        self.number, self.step, self.do = number, step, step["do"]
        self.before, self.after, self.duration = before, after, duration
        # The path is a function of the time since the step began, or None where nothing moves.
        self.path, self.speed = path, speed
        self.start = None


class State:
    def __init__(self, contents, t, molten, on_heat=False):
        self.contents, self.t, self.molten, self.on_heat = dict(contents), t, molten, on_heat

    def but(self, **changes):
        return State(changes.get("contents", self.contents), changes.get("t", self.t), changes.get("molten", self.molten),
                     changes.get("on_heat", self.on_heat))


class Run:
    def __init__(self, job, film=None):
        self.job, self.matter = job, Matter(job)
        self.room = self.matter.room
        self.vessel, self.bench = job["vessel"], job["bench"]
        self.lines = lines_of(job["formula"])
        self.D = q(self.vessel["diameter"])
        self.stirrer = Stirrer(self.vessel["stirrer"], self.D, self.vessel.get("baffles")) if "stirrer" in self.vessel else None
        self.wall = q(self.vessel["wall"]["mass"]) * q(self.vessel["wall"]["specificHeat"]) if "wall" in self.vessel else 0.0
        self.loss = self._loss()
        self.moments = []
        self._weigh(film)

    def _loss(self):
        if "heatLoss" in self.vessel:
            return q(self.vessel["heatLoss"])
        curve = self.vessel["coolingCurve"]
        room = q(curve["room"])
        times = np.array([q(r["after"]) for r in curve["readings"]])
        temps = np.array([q(r["temperature"]) for r in curve["readings"]])
        capacity = q(curve["content"]["mass"]) * q(curve["content"]["specificHeat"]) + self.wall
        left = lambda t, start, k: room + start * np.exp(-k * t / capacity)
        (_, loss), _ = curve_fit(left, times, temps, p0=(temps[0] - room, 3.0), xtol=1e-14, ftol=1e-14)
        return float(loss)

    def _weigh(self, film):
        product = {key: share for _, key, share, _ in self.lines}
        self.density20 = self.matter.density(product, 20.0)
        target = self.job["batch"]["target"]
        if "packs" in target:
            fill = q(target["fillMass"]) if "fillMass" in target else q(target["fillVolume"]) * self.density20
            self.delivered_target = target["packs"] * fill
        else:
            self.delivered_target = q(target["mass"])
        self.weighing = batch.weighed(self.job, self.delivered_target, self.lines, self.density20, film)
        self.masses = self.weighing["masses"]
        self.delivered = sum(self.weighing["arriving"].values())

    def of_phase(self, name):
        return {key: self.masses[key] for phase, key, _, _ in self.lines if phase == name}

    # What is in the vessel.

    def formers(self, contents):
        outer = self.bench.get("emulsion", {}).get("outerPhase")
        inside = {key for phase, key, _, _ in self.lines if phase == outer}
        return {k: m for k, m in contents.items() if self.matter.materials[k]["function"] == "gel former" and k not in inside}

    def dose(self, contents):
        return sum(self.formers(contents).values()) / sum(contents.values())

    def sets_at(self, contents):
        return dose_temperature(self.bench["doses"], self.dose(contents), "setsAt")

    def dissolves_at(self, contents):
        return dose_temperature(self.bench["doses"], self.dose(contents), "dissolvesAt")

    def capacity(self, state):
        """Heat capacity [J/K] as a function, with the smooth step of what melts."""
        m = self.matter
        melts = []
        if not state.molten and "doses" in self.bench:
            dissolves = self.dissolves_at(state.contents)
            for key in self.formers(state.contents):
                found = m.melting(key, dissolves)
                if found:
                    melts.append((state.contents[key], *found))

        def at(t):
            total = self.wall + sum(mass * m.heat(key, t) for key, mass in state.contents.items())
            for mass, onset, end, latent in melts:
                x = (t - onset) / (end - onset)
                if 0 < x < 1:
                    total += mass * latent * 30 * x**2 * (1 - x) ** 2 / (end - onset)
            return total

        return at, sorted({end for melt in melts for end in melt[1:3]})

    def readings(self, contents, direction):
        """The readings of just these phases."""
        held = {phase for phase, key, _, _ in self.lines if key in contents}
        for one in self.bench.get("viscosities", []):
            if set(one["phases"]) == held and one["direction"] == direction:
                return Readings(one)
        return None

    def level(self, contents, t):
        return level_of(sum(contents.values()) / self.matter.density(contents, t), self.vessel)

    # Stirring of a melt.

    def stirred(self, state, t, speed, direction="cooling", end="value"):
        readings = self.readings(state.contents, direction)
        if readings is None or t < readings.low - 1e-9:
            return None
        density = self.matter.density(state.contents, t)
        return self.stirrer.newton(readings(t), density, speed, self.level(state.contents, t), end)

    def stirring_power(self, state, speed, coolest, direction="cooling"):
        if not speed or self.stirrer is None:
            return None
        readings = self.readings(state.contents, direction)
        if readings is None or coolest < readings.low - 1e-9:
            return None
        m, c = self.matter, state.contents
        return lambda t: self.stirrer.newton(readings(t), m.density(c, t), speed, self.level(c, t))["power"]

    # Segments.

    def warmed(self, state, net, to=None, duration=None):
        """Steps the heat balance in time, to a temperature or for a while, split where something begins or ends to melt."""
        capacity, breaks = self.capacity(state)
        rising = net(state.t) > 0
        t, clock, pieces = state.t, 0.0, []
        stops = [b for b in (breaks if rising else breaks[::-1]) if (b > t + 1e-9 if rising else b < t - 1e-9)]
        if to is not None:
            stops = [b for b in stops if (b < to if rising else b > to)] + [to]
        else:
            stops = stops + [None]
        for stop in stops:
            left = 1e7 if duration is None else duration - clock
            events = None
            if stop is not None:
                events = lambda _, y, stop=stop: y[0] - stop
                events.terminal = True
            found = solve_ivp(lambda _, y: [net(y[0]) / capacity(y[0])], (0, left), [t], method="DOP853", events=events,
                              dense_output=True, max_step=max(left / 20, 1) if duration is not None else 600, **TOLERANCE)
            pieces.append((clock, clock + found.t[-1], found.sol))
            clock += found.t[-1]
            t = float(found.y[0][-1]) if stop is None or found.status != 1 else stop
            if duration is not None and clock >= duration - 1e-9:
                break

        def path(time):
            for start, end, sol in pieces:
                if time <= end + 1e-9:
                    return float(sol(time - start)[0])
            return t

        return clock, t, path

    def cooled(self, state, speed=None, to=None, duration=None):
        """Left to itself, against what stirring gives."""
        guess = to if to is not None else state.t - (state.t - self.room) * 0.5
        power = None
        if duration is not None and speed:
            _, coolest, _ = self.warmed(state, lambda t: -self.loss * (t - self.room), duration=duration)
            guess = coolest
        power = self.stirring_power(state, speed, guess)
        net = lambda t: (power(t) if power else 0.0) - self.loss * (t - self.room)
        return self.warmed(state, net, to=to, duration=duration)

    def meet(self, state, added, at):
        """Where an addition and what is in the vessel meet [°C]."""
        if not state.contents:
            inside, first = {}, self.room
        else:
            inside, first = state.contents, state.t
        m = self.matter
        gain = lambda mass, key, a, b: mass * quad(lambda t: m.heat(key, t), a, b)[0]

        def balance(t):
            total = self.wall * (t - first)
            total += sum(gain(mass, key, first, t) for key, mass in inside.items())
            return total + sum(gain(mass, key, at, t) for key, mass in added.items())

        if abs(first - at) < 1e-12:
            return at
        return brentq(balance, min(first, at), max(first, at), xtol=1e-11)

    def go(self):
        state = State({}, self.room, False)
        self.moments, clock = [], 0.0
        usual = self.stirrer.speed if self.stirrer else None
        for number, step in enumerate(self.job["process"]["steps"], 1):
            moment = getattr(self, "do_" + step["do"].replace(" ", "_").replace("-", "_"))(number, step, state, usual)
            moment.start = clock
            clock += moment.duration
            if moment.after.contents and not moment.after.molten and "doses" in self.bench and self.formers(moment.after.contents):
                dissolves = self.dissolves_at(moment.after.contents)
                if dissolves is not None and moment.after.t >= dissolves:
                    moment.after = moment.after.but(molten=True)
            self.moments.append(moment)
            state = moment.after
        return self

    def do_charge(self, number, step, state, usual):
        added = self.of_phase(step["phase"])
        t = self.meet(state, added, q(step.get("at"), self.room))
        mixed = State({**state.contents, **added}, t, state.molten, state.on_heat)
        wait = q(step.get("for"), 0.0)
        if not wait:
            return Moment(number, step, state, mixed, 0.0, speed=None)
        speed = q(step.get("speed"), usual)
        duration, end, path = self.cooled(mixed, speed, duration=wait)
        moment = Moment(number, step, state, mixed.but(t=end), duration, path, speed)
        moment.mixed = t
        return moment

    def do_heat(self, number, step, state, usual):
        power = q(self.vessel["heater"]["power"])
        duration, end, path = self.warmed(state, lambda t: power - self.loss * (t - self.room), to=q(step["to"]))
        return Moment(number, step, state, state.but(t=end, on_heat=True), duration, path, usual)

    def do_hold(self, number, step, state, usual):
        return Moment(number, step, state, state, q(step["for"]), lambda _: state.t, None)

    def do_take_off_the_heat(self, number, step, state, usual):
        return Moment(number, step, state, state.but(on_heat=False), 0.0)

    def do_cool(self, number, step, state, usual):
        if "toViscosity" in step:
            readings = self.readings(state.contents, "cooling")
            wanted = q(step["toViscosity"])
            to = brentq(lambda t: math.log(readings(t) / wanted), readings.low, readings.high, xtol=1e-12)
        else:
            to = q(step["to"])
        between = None
        if step.get("with") == "jacket":
            power = self.stirring_power(state, usual, to)

            def through(share):
                conducts, inlet = self.jacket(state, to, share)
                net = lambda t: conducts(t) * (inlet - t) + (power(t) if power else 0.0) - self.loss * (t - self.room)
                return self.warmed(state, net, to=to)

            duration, end, path = through(1.0)
            if "conductance" not in self.vessel["jacket"]:
                # A correlation holds to a quarter of its value.
                between = (through(1.25)[0], through(0.75)[0])
        else:
            duration, end, path = self.cooled(state, usual, to=to)
        moment = Moment(number, step, state, state.but(t=end), duration, path, usual)
        moment.asked, moment.between = to, between
        return moment

    def do_stir(self, number, step, state, usual):
        speed = q(step.get("speed"), usual)
        duration, end, path = self.cooled(state, speed, duration=q(step["for"]))
        return Moment(number, step, state, state.but(t=end), duration, path, speed)

    def do_fill(self, number, step, state, usual):
        wait = q(step.get("for"), 0.0)
        if "packsPerMinute" in step:
            wait = 60 * self.job["batch"]["target"]["packs"] / step["packsPerMinute"]
        if not wait:
            return Moment(number, step, state, state, 0.0)
        duration, end, path = self.cooled(state, None, duration=wait)
        moment = Moment(number, step, state, state.but(t=end), duration, path)
        moment.coolest = self.drained(state, wait)
        return moment

    def predicted_films(self):
        """What films without a stated thickness take of the batch: they may be thinner than predicted."""
        named = [one["name"] for one in self.job["batch"]["allowances"] if one["kind"] == "film" and "thickness" not in one]
        allowances = self.weighing["allowances"]
        after = [sum(batch.after_losses(self.masses, allowances[:i]).values()) for i in range(len(allowances) + 1)]
        films = [i for i, loss in enumerate(allowances) if any(loss[0].startswith(name + ", on the") for name in named)]
        return sum(after[i] - after[i + 1] for i in films)

    def drained(self, state, wait):
        """How cool the last pack may be: the mass falls evenly to it and what stays behind, and the loss does not."""
        mass = sum(state.contents.values())
        gone = self.delivered * (1 - 1 / self.job["batch"]["target"].get("packs", math.inf)) + self.predicted_films()
        left = 1 - gone / mass
        if left <= 1e-9:
            return None
        capacity, _ = self.capacity(state)
        fall = lambda time, y: [-self.loss * (y[0] - self.room) / (capacity(y[0]) * (1 - (1 - left) * time / wait))]
        return float(solve_ivp(fall, (0, wait), [state.t], method="DOP853", **TOLERANCE).y[0][-1])

    def do_rest(self, number, step, state, usual):
        return Moment(number, step, state, state, q(step["for"]))

    # The walls of a vessel with a stirrer: Penney's correlations.

    CORRELATIONS = {"anchor": [(12, 0.69, 1 / 2), (100, 0.32, 2 / 3)], "pitched-blade turbine": [(400, 0.45, 2 / 3)],
                    "helical ribbon": [(0, 0.94, 1 / 3), (13, 0.61, 1 / 2), (210, 0.25, 2 / 3)]}

    def inside(self, state, between, direction, speed):
        """Coefficient at the wall [W/(m² K)] by the temperatures of charge and wall, properties in the middle of the way."""
        middle = sum(between) / 2
        m, c = self.matter, state.contents
        total = sum(c.values())
        heat = sum(mass * m.heat(k, middle) for k, mass in c.items()) / total
        k, density = m.conductivity(c, middle), m.density(c, middle)
        readings = self.readings(c, direction)
        d, ranges = self.stirrer.d, self.CORRELATIONS[self.stirrer.kind]

        def at(t, wall):
            # No coefficient rests on a viscosity that nobody read: beyond the readings it is that of their end.
            mu, mu_wall = (readings(min(max(place, readings.low), readings.high)) for place in (t, wall))
            re = density * speed * d**2 / mu
            factor, power = ([(f, p) for least, f, p in ranges if re >= least] or [ranges[0][1:]])[-1]
            return k / self.D * factor * re**power * (heat * mu / k) ** (1 / 3) * (mu / mu_wall) ** 0.14

        return at

    def jacket(self, state, to, share=1.0):
        jacket = self.vessel["jacket"]
        flow, inlet = q(jacket.get("capacityFlow")), q(jacket["coolant"])
        along = lambda ua: flow * (1 - math.exp(-ua / flow)) if flow else ua
        if "conductance" in jacket:
            whole = along(q(jacket["conductance"]))
            return lambda t: whole, inlet
        outside, area = q(jacket["outsideCoefficient"]), q(jacket["area"])
        at = self.inside(state, (state.t, to), "cooling", self.stirrer.speed)
        low = self.readings(state.contents, "cooling").low

        def conducts(t):
            wall = self.cold_wall(at, t, outside, inlet, share)
            if share < 1 and wall < low:
                # Colder than any reading: at worst a skin, whose face takes from the charge what a wall as cold as the
                # coldest reading would.
                return along(area * share * at(t, low) * (t - low) / (t - inlet))
            return along(area / (1 / (share * at(t, wall)) + 1 / outside))

        return conducts, inlet

    def cold_wall(self, at, t, outside, inlet, share=1.0):
        return brentq(lambda w: share * at(t, w) * (w - t) - outside * (inlet - w), inlet, t, xtol=1e-10)
