"""The cold route: oil stirred into a gel former by a schedule (docs/cold-route.md), and what is asked of it."""

import itertools
import math

import numpy as np
from scipy.integrate import quad

from asked import OPEN, Answers, between, key, known, least, most, over
from common_questions import batch_questions, fill_questions, stability_questions
from documents import q
from hot import Moment, Run, State
from hot_questions import HotQuestions
from matter import EXPANSION_MAX, GRAVITY, KELVIN, glycerin_water_density, glycerin_water_index
from particles import AIR, Particle, to_hold
from stirring import CAVERN, ENDS

PACKED_GRAINS = 0.64
INTRINSIC = 2.5
ATMOSPHERE = 101325.0
# By docs/how-sure.md: of the water activity, and of the index of glycerin and water.
ACTIVITY_BAND = 0.03
INDEX_BAND = 0.0006
TOLERANCE = 0.005


class ColdRun(Run):
    """A charge that is only ever stirred: its properties count at the temperature of the room."""

    def __init__(self, job):
        super().__init__(job)
        self.emulsion = self.bench["emulsion"]
        outer = self.emulsion["outerPhase"]
        self.outer_keys = {name for phase, name, _, _ in self.lines if phase == outer}
        self.schedules = {}

    def split(self, contents):
        outer = {n: m for n, m in contents.items() if n in self.outer_keys}
        oil = {n: m for n, m in contents.items() if n not in self.outer_keys and not self.matter.is_particle(n)}
        return outer, oil

    def oil_fraction(self, contents):
        outer, oil = self.split(contents)
        if not oil:
            return 0.0
        vo = sum(oil.values()) / self.matter.density(oil, self.room)
        vg = sum(outer.values()) / self.matter.density(outer, self.room)
        return vo / (vo + vg)

    def table(self, rows, x_field, y_field):
        pairs = sorted((q(r[x_field]), q(r[y_field])) for r in rows if y_field in r)
        return lambda x: float(np.interp(x, *zip(*pairs))) if len(pairs) > 1 else pairs[0][1]

    def curve(self, contents):
        """Yield stress, consistency and index of the gel, by the readings along its oil; particles thicken it."""
        rows = self.emulsion["thickness"]["readings"]
        rate = q(self.emulsion["thickness"]["shearRate"])
        phi = self.oil_fraction(contents)
        log = lambda field: [(q(r["oil"]), math.log(q(r[field]))) for r in rows if field in r]
        viscosity = math.exp(float(np.interp(phi, *zip(*log("viscosity")))))
        index = float(np.interp(phi, *zip(*[(q(r["oil"]), q(r["flowIndex"])) for r in rows])))
        yields = log("yieldStress")
        stress = math.exp(float(np.interp(phi, *zip(*yields)))) if yields and phi >= yields[0][0] else 0.0
        consistency = (viscosity * rate - stress) / rate**index
        thicker = (1 - self.matter.grains(contents, self.room) / PACKED_GRAINS) ** (-INTRINSIC * PACKED_GRAINS)
        return stress * thicker, consistency * thicker, index

    def stirred_gel(self, contents, speed, end="value", shear="value"):
        density = self.matter.density(contents, self.room)
        return self.stirrer.gel(self.curve(contents), density, speed, self.level(contents, self.room), end, shear)

    def stirred_ends(self, contents, speed):
        """At every end of what is published of the stirrer: its power, and its shear constant."""
        return [self.stirred_gel(contents, speed, end, shear) for end in ENDS for shear in ENDS]

    def capacity(self, state):
        total = self.wall + sum(mass * self.matter.heat(k, self.room) for k, mass in state.contents.items())
        return (lambda t: total), []

    def meet(self, state, added, at):
        if not state.contents:
            return at
        heat = lambda contents: sum(mass * self.matter.heat(k, self.room) for k, mass in contents.items())
        old, new = heat(state.contents) + self.wall, heat(added)
        return (old * state.t + new * at) / (old + new)

    def cooled(self, state, speed=None, to=None, duration=None):
        power = self.stirred_gel(state.contents, speed)["power"] if speed else 0.0
        return self.warm(state, power, duration)

    def warm(self, state, power, duration):
        """At one power against Newton's loss: in closed form."""
        total = self.capacity(state)[0](0)
        end = self.room + power / self.loss
        path = lambda t: end + (state.t - end) * math.exp(-self.loss * t / total)
        return duration, path(duration), path

    def increment(self, step):
        if "increment" in step:
            return q(step["increment"])
        return min(self.weighing["steps"][n] for n in self.of_phase(step["phase"]))

    def portions(self, step, contents, oil):
        """The additions, each as large as its share allows and rounded down to the step of the balance."""
        share = self.table(self.emulsion["additionShareMax"], "oil", "share")
        unit, total = self.increment(step), sum(oil.values())
        part = lambda done: {n: m * done / total for n, m in oil.items()}
        done, rows = 0.0, []
        inside = sum(contents.values())
        while total - done > 1e-9:
            before = {**contents, **part(done)} if done else dict(contents)
            phi = self.oil_fraction(before)
            largest = share(phi) * (inside + done)
            left = total - done
            mass = left if left <= largest * (1 + 1e-12) else math.floor(largest / unit + 1e-9) * unit
            rows.append({"mass": mass, "share": mass / (inside + done), "share_max": share(phi)})
            done += mass
        return rows, part

    def do_add(self, number, step, state, usual):
        oil = self.of_phase(step["phase"])
        speed = q(step.get("speed"), usual)
        rows, part = self.portions(step, state.contents, oil)
        incorporation = self.table(self.emulsion["incorporationTime"], "oil", "time")
        factor = 1.0
        if step.get("keeps") == "revolutions":
            factor = q(self.emulsion["stirring"]["stirrer"]["speed"]) / speed
        else:
            assert step.get("keeps", "time") == "time", step["keeps"]
        rate = q(step["pump"]["mass"]) / q(step["pump"]["in"]) if "pump" in step else None
        now, clock, done = state, 0.0, 0.0
        for row in rows:
            added = {n: m * row["mass"] / sum(oil.values()) for n, m in oil.items()}
            contents = {n: now.contents.get(n, 0) + added.get(n, 0) for n in {**now.contents, **added}}
            mixed = State(contents, self.meet(now, added, self.room), False)
            lasts = (row["mass"] / rate if rate else 0.0) + factor * incorporation(self.oil_fraction(contents))
            found = self.stirred_gel(contents, speed)
            _, end, _ = self.warm(mixed, found["power"], lasts)
            now = mixed.but(t=end)
            clock += lasts
            row.update(after=now, speed=speed, **found)
        self.schedules[number] = rows
        moment = Moment(number, step, state, now, clock, None, speed)
        moment.rows = rows
        return moment

    def do_match_clarity(self, number, step, state, usual):
        return Moment(number, step, state, state, 0.0)

    def do_de_aerate(self, number, step, state, usual):
        speed = q(step.get("speed"))
        duration, end, path = self.cooled(state, speed, duration=q(step["for"]))
        return Moment(number, step, state, state.but(t=end), duration, path, speed)

    def do_rest(self, number, step, state, usual):
        duration, end, path = self.cooled(state, None, duration=q(step["for"]))
        return Moment(number, step, state, state.but(t=end), duration, path)

    def do_fill(self, number, step, state, usual):
        wait = q(step.get("for"), 0.0)
        duration, end, path = self.cooled(state, None, duration=wait)
        return Moment(number, step, state, state.but(t=end), duration, path if wait else None)


# Refractive indices, by Lorentz and Lorenz.

def lorentz(parts):
    """Index of parts given as (volume, index)."""
    total = sum(v for v, _ in parts)
    r = sum(v / total * (n**2 - 1) / (n**2 + 2) for v, n in parts)
    return math.sqrt((1 + 2 * r) / (1 - r))


def saturation_pressure(t):
    """Of water, IAPWS-IF97, region 4 [Pa]; the library goes by Antoine's equation."""
    n = [0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.12020824702470e5, -0.32325550322333e7,
         0.14915108613530e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3]
    k = t + 273.15
    th = k + n[8] / (k - n[9])
    a = th**2 + n[0] * th + n[1]
    b = n[2] * th**2 + n[3] * th + n[4]
    c = n[5] * th**2 + n[6] * th + n[7]
    return 1e6 * (2 * c / (-b + math.sqrt(b**2 - 4 * a * c))) ** 4


def wilson(share, t):
    """Water activity of glycerin and water by the law of Zhang, Grace and Sun, of Wilson's form."""
    x = share / 0.092094 / (share / 0.092094 + (1 - share) / 0.0180153)
    k, volumes = t + KELVIN, 0.08685 / 0.0188311
    first = volumes * math.exp(-(0.89924067 + 127.07511 / k))
    second = math.exp(1.9173013 - 91.465969 / k) / volumes
    own = 1 - x + first * x
    return (1 - x) / own * math.exp(first * x / own - first * x / (x + second * (1 - x)))


class ColdQuestions(HotQuestions):
    def all(self):
        batch_questions(self)
        for one in ("flash", "emulsion", "clarity", "blended_cold", "moves_cold", "motors_cold", "cover_cold", "held", "deaerating"):
            getattr(self, one)()
        fill_questions(self)
        stability_questions(self)
        return self.answers.found

    def turned(self):
        """Every stirred state: of a schedule the end of each addition."""
        for one in self.run.moments:
            if not one.speed:
                continue
            if hasattr(one, "rows"):
                for i, row in enumerate(one.rows, 1):
                    yield one, {"step": one.number, "addition": i, "place": "vessel"}, row["after"], row["speed"]
            elif one.duration:
                yield one, {"step": one.number, "place": "vessel"}, one.after, one.speed

    def warmest(self, one):
        if hasattr(one, "rows"):
            return max([one.before.t] + [row["after"].t for row in one.rows])
        return max(one.before.t if one.before.contents else one.after.t, one.after.t, getattr(one, "mixed", one.after.t))

    def warmest_first(self, name):
        """Where no limit is stated, the warmest step decides."""
        return sorted(self.with_material(name), key=lambda one: -self.warmest(one))

    def flash(self):
        margin = {"max": q(self.job["process"].get("flashPointMargin"), 30.0)}
        for name, material in self.m.materials.items():
            if material["function"] in ("particle", "water"):
                continue
            limits = material.get("limits", {})
            limit = most(q(limits["flashPoint"])) if "flashPoint" in limits else least(OPEN)
            states = [{"at": {"step": one.number, "place": "charge"}, "figure": known(self.warmest(one)), "limit": limit, "margin": margin}
                      for one in self.warmest_first(name)]
            self.answers.ask(key("flash-point", name, "charge"), states)

    def weighed_ends(self, contents):
        """Oil fraction with all oil as heavy and the outer phase as light as the weighing tolerance lets them be."""
        run = self.run
        relative = q(self.job["batch"].get("weighingTolerance"), TOLERANCE)
        charge = sum(run.masses.values())
        ends = {}
        for name, mass in contents.items():
            step, weighed = run.weighing["steps"][name], run.masses[name]
            reach = max(relative * weighed, step)
            sign = -1 if name in run.outer_keys else 1
            ends[name] = mass * (1 + sign * math.floor(reach / step + 1e-9) * step / weighed)
        outer, oil = run.split(ends)
        widest = self.m.volume(oil, run.room)[1]
        return widest / (widest + self.m.volume(outer, run.room)[0])

    def emulsion(self):
        run, m = self.run, self.m
        document = run.emulsion
        margin = {"max": q(self.job["process"].get("oilFractionMargin"), 0.01)}
        changing = [one for one in run.moments if one.do in ("charge", "add", "fill") and run.split(one.after.contents)[1]]
        states = [{"at": {"step": one.number, "place": "vessel"}, "figure": known(self.weighed_ends(one.after.contents)),
                   "limit": most(q(document["volumeFractionOilMax"])), "margin": margin} for one in changing]
        self.answers.ask("maximum-oil-fraction", states)

        gel = run.moments[self.filling].before.contents
        outer, oil = run.split(gel)
        name = document["surfactant"]["material"]
        covers = lambda volume: 6 * volume / q(document["dropletDiameter"]) / (q(document["surfactant"]["areaPerGram"]) * 1e3)
        need = between(*(covers(volume) for volume in m.volume(oil, run.room)), covers(sum(oil.values()) / m.density(oil, run.room)))
        self.answers.ask("surfactant-covers-droplets", [{"at": {}, "figure": known(gel[name] * q(m.materials[name].get("strength"), 1.0)), "limit": least(need)}])

        for one in run.moments:
            parts = run.split(one.after.contents)
            if one.do == "charge" and parts[0] and not parts[1] and run.stirrer:
                v = sum(one.after.contents.values()) / m.density(one.after.contents, one.after.t)
                self.answers.ask(key("gel-former-covers-impeller", one.number), [
                    {"at": {"step": one.number, "place": "vessel"}, "figure": known(v), "limit": least(q(self.job["vessel"]["workingVolume"]["min"]))}])

        share = self.glycerin_share(outer)
        activity = wilson(share, run.room)
        self.activity = between(activity - ACTIVITY_BAND, activity + ACTIVITY_BAND, activity)
        self.answers.ask("water-activity", [{"at": {}, "figure": self.activity, "limit": most(0.75), "margin": {"max": 1e-9}}])

        for one in run.moments:
            if hasattr(one, "rows"):
                states = [{"at": {"step": one.number, "addition": i, "place": "vessel"}, "figure": known(row["share"]), "limit": most(row["share_max"])}
                          for i, row in enumerate(one.rows, 1)]
                self.answers.ask(key("additions-within-share", one.step["phase"]), states)

    def glycerin_share(self, outer):
        of = lambda kind: sum(mass for n, mass in outer.items() if self.m.materials[n].get("propertiesOf") == kind)
        return of("glycerin") / (of("glycerin") + of("water"))

    def indices(self, t):
        run, m = self.run, self.m
        outer, oil = run.split(run.moments[self.filling].before.contents)

        def own(name):
            index = m.materials[name].get("refractiveIndex")
            return index and q(index["value"]) + q(index.get("perKelvin"), 0.0) * (t - q(index["at"]))

        pair = {n: mass for n, mass in outer.items() if m.materials[n].get("propertiesOf") in ("glycerin", "water")}
        share = self.glycerin_share(outer)
        def part(name, mass):
            """Volume as its density says, as wide or as narrow as it may be where no expansion is stated, and index."""
            volume = mass / m.own_density(name, t)
            at = t if m.states_expansion(name) else q(m.materials[name]["density"]["at"])
            return volume, volume * (1 + EXPANSION_MAX * (t - at)), own(name)

        def ends(parts):
            """The index, and the lowest and highest over every corner of what is not stated."""
            corners = [lorentz(list(zip(volumes, [p[2] for p in parts]))) for volumes in itertools.product(*({p[0], p[1]} for p in parts))]
            return lorentz([(p[0], p[2]) for p in parts]), min(corners), max(corners)

        volume = sum(pair.values()) / glycerin_water_density(share, t)
        return (ends([(volume, volume, glycerin_water_index(share, t))] + [part(n, mass) for n, mass in outer.items() if n not in pair and own(n)]),
                ends([part(n, mass) for n, mass in oil.items() if own(n)]))

    def clarity(self):
        allowed = q(self.run.emulsion["mismatchAllowed"])
        assert "gelFormerIndex" not in self.run.emulsion, "a measured index has no band"

        def figure(*temperatures):
            """Between the ends over the temperatures that the gel may have; the value at the first."""
            found = [self.indices(t) for t in temperatures]
            # What is not stated counts alike either way.
            off = [INDEX_BAND + sum(max(high - value, value - low) for value, low, high in one) for one in found]
            apart = [oil[0] - outer[0] for outer, oil in found]
            low, high = min(a - o for a, o in zip(apart, off)), max(a + o for a, o in zip(apart, off))
            return between(max(0.0, low, -high), max(high, -low), abs(apart[0]))

        self.answers.ask("clarity-match", [{"at": {}, "figure": figure(self.run.room), "limit": most(allowed)}])
        clear = figure(self.run.room)["value"] <= allowed
        stated = "wall" in self.job["vessel"] and "heatLoss" in self.job["vessel"]
        for one in self.run.moments:
            if one.do == "match clarity":
                limit = most(allowed) if clear else least(allowed)
                self.answers.ask(key("clarity-while-warm", one.number), [
                    {"at": {"step": one.number, "place": "vessel"}, "figure": figure(one.after.t, *([] if stated else [self.run.room])), "limit": limit}])

    def blended_cold(self):
        revolutions = self.run.stirrer.document.get("revolutionsToBlend")
        for one in self.run.moments:
            if one.do != "stir":
                continue
            width, height = self.moved(one.after, one.speed)
            level = self.run.level(one.after.contents, one.after.t)
            # Where gel stands still there is no time.
            all_of_it = (width["min"] or 0) >= self.run.D and (height["min"] or 0) >= level
            still = (width["max"] is not None and width["max"] < self.run.D) or (height["max"] is not None and height["max"] < level)
            figure = known(revolutions / one.speed) if revolutions and all_of_it else OPEN
            self.still = still
            self.answers.ask(key("blended", one.number), [
                {"at": {"step": one.number, "place": "vessel"}, "figure": figure, "limit": most(one.duration)}])

    def moved(self, state, speed):
        """How wide and how high the stirrer moves a gel with a yield stress, over the shapes of caverns that were seen and
        what is published of the stirrer."""
        run, s = self.run, self.run.stirrer
        stress = run.curve(state.contents)[0]
        level = run.level(state.contents, state.t)
        if stress == 0:
            return between(s.D, None), between(level, None)
        density = self.m.density(state.contents, run.room)
        widths, heights = zip(*(s.cavern(found, density, speed, stress, CAVERN[shape])
                                for found in run.stirred_ends(state.contents, speed) for shape in ENDS))
        width = between(min(widths), max(widths))
        # An end at the free surface carries no stress.
        free = [h + (s.D / 6 if w >= s.D else 0) for w, h in zip(widths, heights)]
        height = between(min(heights), max(free))
        if s.follows_wall and height["min"] < level:
            top = s.top()
            height = between(max(height["min"], top[0]), max(height["max"], top[0])) if top else OPEN
        return width, height

    def moves_cold(self):
        run = self.run
        wide, high = {}, {}
        for one, at, state, speed in self.turned():
            width, height = self.moved(state, speed)
            level = run.level(state.contents, state.t)
            bowl = known(level) if "bottom" in self.job["vessel"] else between(level, level + run.D / 12)
            wide.setdefault(one.number, []).append({"at": at, "figure": width, "limit": least(run.D)})
            high.setdefault(one.number, []).append({"at": at, "figure": height, "limit": least(bowl)})
        for number in wide:
            self.answers.ask(key("gel-moves-at-wall", number), wide[number])
            self.answers.ask(key("gel-moves-at-surface", number), high[number])

    def motors_cold(self):
        motor = self.run.stirrer.document.get("motor")
        if not motor:
            return
        rated, usual = q(motor["power"]), self.run.stirrer.speed
        low, high = (rated * motor["efficiency"],) * 2 if "efficiency" in motor else (0.7 * rated, rated)
        power, torque = [], []
        for one, at, state, speed in self.turned():
            found, ends = self.run.stirred_gel(state.contents, speed), self.run.stirred_ends(state.contents, speed)
            figure = lambda what: over(found[what], [one[what] for one in ends])
            power.append({"at": at, "figure": figure("power"), "limit": most(between(low, high)), "margin": {"max": 0.2 * high}})
            # Turned down, a drive keeps its torque or its power, and nobody said which.
            slowest = lambda p: 0.8 * p / (2 * math.pi * max(speed, usual))
            fastest = lambda p: 0.8 * p / (2 * math.pi * speed)
            torque.append({"at": at, "figure": figure("torque"), "limit": most(between(slowest(low), fastest(high)))})
        self.answers.ask("motor-power", power)
        self.answers.ask("motor-torque", torque)

    def cover_cold(self):
        run, s = self.run, self.run.stirrer
        top = s.top()
        levels = [(at, state, speed, run.level(state.contents, state.t)) for _, at, state, speed in self.turned()]
        if top and ("cover" in s.document or not s.follows_wall):
            self.answers.ask("stirrer-covered", [{"at": at, "figure": known(level), "limit": least(sum(top))} for at, _, _, level in levels])
            self.answers.ask("minimum-volume", [{"at": {"place": "vessel"}, "figure": known(q(self.job["vessel"]["workingVolume"]["min"])), "limit": least(self.volume_at(sum(top)))}])
        states = []
        for at, state, speed, level in levels:
            re = max(found["re"] for found in run.stirred_ends(state.contents, speed))
            figure = known(0.0) if re < 300 else between(0.0, s.vortex(speed))
            states.append({"at": at, "figure": figure, "limit": most(level - top[0]) if top and level > top[0] else most(between(0.0, None)) })
        self.answers.ask("no-air-down-the-vortex", states)

    def gel_stress(self):
        if "yieldStress" in self.bench:
            return q(self.bench["yieldStress"])
        # Of the finished gel, between the readings along its oil; particles do not count in what holds them.
        gel = self.run.moments[self.filling].before.contents
        return self.run.curve({n: m for n, m in gel.items() if not self.m.is_particle(n)})[0]

    def held(self):
        run = self.run
        for name, material in self.m.materials.items():
            if material["function"] == "particle":
                gel = run.moments[self.filling].before.contents
                need = to_hold(Particle(material["particle"]), self.m.fluid_density(gel, run.room))
                self.answers.ask(key("particles-stay-suspended", name), [{"at": {}, "figure": known(self.gel_stress()), "limit": least(need)}])

    def deaerating(self):
        run, air = self.run, self.run.emulsion.get("air")
        for one in run.moments:
            if one.do != "de-aerate":
                continue
            at = {"step": one.number, "place": "vessel"}
            pressure = q(one.step.get("pressure"), ATMOSPHERE)
            d0 = q(air["bubbleDiameter"])
            contents = one.before.contents
            density = self.m.fluid_density(contents, run.room)
            wide = d0 * (ATMOSPHERE / pressure) ** (1 / 3)
            limit = known(0.0)
            moved = one.speed and self.moved(one.after, one.speed)
            if not (moved and moved[0]["min"] >= run.D and moved[1]["min"] >= run.level(contents, one.after.t)):
                weight = (density - AIR) * GRAVITY
                stress = self.gel_stress()
                limit = between(stress / (0.2 * weight), stress / (0.04 * weight), stress / (0.143 / 3 * weight))
            self.answers.ask(key("air-is-released", one.number), [{"at": at, "figure": known(wide), "limit": {"min": limit}}])
            depths = self.in_a_bowl(run.level(contents, one.before.t))
            velocity = density * GRAVITY * d0**2 / (18 * q(air["viscosity"]))

            def time(depth, density=density, velocity=velocity, pressure=pressure, one=one):
                if "pressure" not in one.step:
                    return depth / velocity
                return quad(lambda z: ((pressure + density * GRAVITY * z) / ATMOSPHERE) ** (2 / 3), 0, depth)[0] / velocity

            cleared = between(*(time(depths[end]) for end in ("min", "max"))) if depths["min"] < depths["max"] else known(time(depths["min"]))
            self.answers.ask(key("air-has-time", one.number), [{"at": at, "figure": cleared, "limit": most(one.duration)}])
            if pressure < 1e5:
                t = max(one.before.t, one.after.t)
                p = saturation_pressure(t)
                band = [wilson(self.glycerin_share(run.split(contents)[0]), t) + d for d in (-ACTIVITY_BAND, ACTIVITY_BAND)]
                self.answers.ask(key("vacuum-boils", "water", one.number), [{"at": at, "figure": known(pressure), "limit": {"min": between(p * band[0], p * band[1])}}])
