"""What a plan of the hot route is asked, by the page Questions of a plan."""

import math

import numpy as np
from scipy import stats
from scipy.optimize import brentq

from asked import OPEN, Answers, between, key, known, least, most, over
from batch import bottom_face
from common_questions import batch_questions, fill_questions, stability_questions
from documents import q
from matter import GRAVITY, KELVIN
from packs import Pack
from particles import AIR, Particle, Stretch, to_hold
from stirring import CAVERN, ENDS, blend_time, level_of

# A correlation for a stirred wall holds to a quarter of its value.
SURE = {"min": 0.75, "value": 1.0, "max": 1.25}
VORTEX_FROM = 300


class HotQuestions:
    def __init__(self, run):
        self.run, self.job, self.m = run, run.job, run.matter
        self.answers = Answers()
        self.filling = next((i for i, one in enumerate(run.moments) if one.do == "fill"), len(run.moments))
        self.margin = {"min": q(self.job["process"].get("settingMargin"), 2.0)}
        self.bench = self.job["bench"]

    def all(self):
        batch_questions(self)
        for one in ("sensitive", "hot_places", "steps", "setting", "filling_", "skin", "blended", "motors", "cover", "moves",
                    "particles", "packs", "strength", "air"):
            getattr(self, one)()
        return self.answers.found

    def material(self, name):
        return self.m.materials[name]

    def with_material(self, name, filled=True):
        last = self.filling if filled else len(self.run.moments) - 1
        return [one for one in self.run.moments[: last + 1] if name in one.after.contents]

    def sensitive(self):
        heated = any(one.after.on_heat for one in self.run.moments)
        for name, material in self.m.materials.items():
            if heated and material.get("heatSensitive") and material["function"] != "antioxidant":
                states = [{"at": {"step": one.number}, "figure": known(float(one.after.on_heat)), "limit": most(0.0)}
                          for one in self.with_material(name, filled=False)]
                self.answers.ask(key("heat-sensitive-off-the-heat", name), states)

    def warmest(self, one):
        """The warmest that a material meets in the charge in one step."""
        temps = [one.after.t, getattr(one, "mixed", one.after.t)]
        if one.before.contents:
            temps.append(one.before.t)
        if one.do == "charge":
            temps.append(q(one.step.get("at"), self.run.room))
        return max(temps)

    def hottest_wall(self, one):
        """The heated wall in a step that heats: the flux of the heater through the film of the charge."""
        wall = self.job["vessel"].get("heatedWall")
        if wall is None:
            return None
        flux = q(self.job["vessel"]["heater"]["power"]) / q(wall["area"])
        if "coefficient" in wall:
            return known(one.after.t + flux / q(wall["coefficient"]))
        readings = self.run.readings(one.after.contents, "heating")
        places = [one.after.t] + [r for r in self.reading_temperatures(one, "heating") if one.before.t < r < one.after.t]
        at = self.run.inside(one.after, (one.after.t, one.after.t), "heating", self.run.stirrer.speed)

        def hottest(share):
            return max(brentq(lambda w: share * at(bulk, w) * (w - bulk) - flux, bulk, bulk + 500, xtol=1e-10) for bulk in places)

        low, value, high = (hottest(SURE[end]) for end in ("max", "value", "min"))
        # Beyond the readings the charge counts as thick as where they end: the wall is no hotter than that, and at least
        # as hot as they go.
        if value > readings.high:
            return between(max(one.after.t, min(low, readings.high)), high)
        return between(low, high, value)

    def reading_temperatures(self, one, direction):
        held = {phase for phase, name, _, _ in self.run.lines if name in one.after.contents}
        for document in self.bench["viscosities"]:
            if set(document["phases"]) == held and document["direction"] == direction:
                return [q(r["at"]) for r in document["readings"]]
        return []

    def warmest_first(self, name):
        """Where no limit is stated, the warmest step decides."""
        return sorted(self.with_material(name), key=lambda one: -self.warmest(one))

    def places(self, name):
        """Figures of a material by place: in the charge, and at the wall of steps on the heat."""
        charge = [{"at": {"step": one.number, "place": "charge"}, "figure": known(self.warmest(one))} for one in self.warmest_first(name)]
        wall, hottest = [], None
        for one in self.with_material(name):
            if not one.after.on_heat:
                continue
            if one.do == "heat":
                hottest = self.hottest_wall(one)
            if hottest is None:
                figure = between(self.warmest(one), None)
            elif one.do == "heat":
                figure = hottest
            else:
                figure = between(self.warmest(one), hottest["max"])
            wall.append((self.warmest(one), {"at": {"step": one.number, "place": "heated-wall"}, "figure": figure}))
        return charge, [figure for _, figure in sorted(wall, key=lambda one: -one[0])]

    def hot_places(self):
        margin = {"max": q(self.job["process"].get("flashPointMargin"), 30.0)}
        for name, material in self.m.materials.items():
            limits = material.get("limits", {})
            if not self.with_material(name):
                continue
            charge, wall = self.places(name)
            if "temperatureMax" in limits:
                states = [{**s, "limit": most(q(limits["temperatureMax"]))} for s in charge + wall]
                self.answers.ask(key("maximum-temperature", name), states)
            if material["function"] in ("particle", "water"):
                continue
            limit = most(q(limits["flashPoint"])) if "flashPoint" in limits else least(OPEN)
            for place, states in (("charge", charge), ("heated-wall", wall)):
                self.answers.ask(key("flash-point", name, place), [{**s, "limit": limit, "margin": margin} for s in states])

    def steps(self):
        for one in self.run.moments:
            if one.do not in ("heat", "cool"):
                continue
            at = {"step": one.number, "place": "charge"}
            asked = q(one.step["to"]) if one.do == "heat" else one.asked
            limit = least(asked) if one.do == "heat" else most(asked)
            self.answers.ask(key("step-can-be-done", one.number), [{"at": at, "figure": known(one.after.t), "limit": limit}])
            if "within" in one.step:
                figure = known(one.duration)
                if getattr(one, "between", None):
                    figure = between(*one.between)
                states = [{"at": {"step": one.number}, "figure": figure, "limit": most(q(one.step["within"]))}]
                self.answers.ask(key("done-in-time", one.number), states)

    def setting(self):
        run = self.run
        formers = [name for name in run.formers(run.masses)]
        for name in formers:
            inside = self.with_material(name)
            hot = [one for one in inside if one.after.on_heat] or inside
            states = [{"at": {"step": one.number, "place": "charge"}, "figure": known(one.after.t),
                       "limit": least(run.dissolves_at(one.after.contents))} for one in hot]
            self.answers.ask(key("gel-former-dissolves", name), states, "some")
        for one in run.moments:
            if one.do == "charge" and one.before.contents and run.formers(one.after.contents):
                states = [{"at": {"step": one.number, "place": "charge"}, "figure": known(one.after.t),
                           "limit": least(run.sets_at(one.after.contents)), "margin": self.margin}]
                self.answers.ask(key("above-setting", one.number, one.step["phase"]), states)

    def packs_filled(self):
        """The first pack and the last, with how warm the vessel is then."""
        fill = self.run.moments[self.filling]
        first = ("first-pack", fill.before.t)
        return [first, ("last-pack", fill.after.t)]

    def filling_(self):
        run = self.run
        if self.filling == len(run.moments):
            return
        fill = run.moments[self.filling]
        sets = run.sets_at(fill.before.contents)
        at = lambda place: {"step": fill.number, "place": place}
        coolest = {"first-pack": fill.before.t, "last-pack": getattr(fill, "coolest", fill.after.t)}
        self.answers.ask(key("filled-before-it-sets", fill.number), [
            {"at": at(place), "figure": between(coolest[place], t, t), "limit": least(sets), "margin": self.margin}
            for place, t in self.packs_filled()])
        readings = run.readings(fill.before.contents, "cooling")
        pourable = self.bench.get("pourableViscosityMax")
        limit = most(q(pourable)) if pourable else least(OPEN)
        states = []
        for place, t in self.packs_filled():
            figure = known(readings(t)) if readings.covers(t) else between(readings.thickest, None) if t < readings.low else between(None, readings.thinnest)
            cold = coolest[place]
            figure["max"] = None if cold is None or cold < readings.low else readings(min(cold, readings.high))
            states.append({"at": at(place), "figure": figure, "limit": limit})
        self.answers.ask(key("pours-into-the-pack", fill.number), states)

    def skin(self):
        jacket = self.job["vessel"].get("jacket")
        for one in self.run.moments:
            if one.do != "cool" or one.step.get("with") != "jacket":
                continue
            t, coolant, area = one.after.t, q(jacket["coolant"]), q(jacket["area"])
            sets = self.run.sets_at(one.after.contents)
            if "insideCoefficient" in jacket:
                h = q(jacket["insideCoefficient"])
                outside = q(jacket["outsideCoefficient"]) if "outsideCoefficient" in jacket else 1 / (area / q(jacket["conductance"]) - 1 / h)
                figure = known((h * t + outside * coolant) / (h + outside))
            else:
                at = self.run.inside(one.after, (t, t), "cooling", self.run.stirrer.speed)
                warm, cold = (self.run.cold_wall(at, t, q(jacket["outsideCoefficient"]), coolant, SURE[end]) for end in ("max", "min"))
                low = self.run.readings(one.after.contents, "cooling").low
                # A wall colder than any reading has a thicker film than was read, and is at worst as cold as the coolant.
                figure = between(cold if cold >= low else coolant, warm)
            self.answers.ask(key("skin-on-the-wall", one.number), [
                {"at": {"step": one.number, "place": "cooled-wall"}, "figure": figure, "limit": least(sets), "margin": self.margin}])

    # Stirring.

    def turns(self):
        return [one for one in self.run.moments if one.speed and one.duration]

    def has_set(self, one):
        return one.after.molten and not one.after.on_heat and one.after.t < self.run.sets_at(one.after.contents)

    def in_a_bowl(self, level):
        """A bottom that nobody stated may be half an ellipsoid a quarter of the diameter deep, which holds two thirds of a
        cylinder of its depth."""
        D = q(self.job["vessel"]["diameter"])
        return known(level) if "bottom" in self.job["vessel"] else between(level, level + (1 - 2 / 3) * D / 4)

    def stirred(self, one, end="value"):
        direction = "heating" if one.after.on_heat else "cooling"
        return self.run.stirred(one.after, one.after.t, one.speed, direction, end)

    def blended(self):
        run = self.run
        for one in self.turns():
            if one.do != "stir" or self.has_set(one):
                continue
            found, s = self.stirred(one), run.stirrer
            density = self.m.density(one.after.contents, one.after.t)
            level = run.level(one.after.contents, one.after.t)
            revolutions = s.document.get("revolutionsToBlend")
            measured = found and found["re"] >= 200 and 1 / 3 <= s.d / s.D <= 1 / 2
            times = lambda: [blend_time(self.stirred(one, end), density, s.D, level) for end in ENDS]
            quickest = lambda: min(time["min"] for time in times())
            figure = OPEN
            if measured and s.baffles:
                value = blend_time(found, density, s.D, level)["value"]
                figure = between(quickest(), max(time["max"] for time in times()), value)
            elif revolutions:
                figure = known(revolutions / one.speed)
            elif measured:
                figure = between(quickest(), None)
            self.answers.ask(key("blended", one.number), [
                {"at": {"step": one.number, "place": "vessel"}, "figure": figure, "limit": most(one.duration)}])

    def motors(self):
        run, turns = self.run, self.turns()
        if not run.stirrer or not turns:
            return
        motor = run.stirrer.document.get("motor")
        power, torque = [], []
        for one in turns:
            found = {end: self.stirred(one, end) for end in ("value", *ENDS)}
            figure = lambda what: over(found["value"][what], [found[end][what] for end in ENDS]) if found["value"] else OPEN
            at = {"step": one.number, "place": "vessel"}
            if motor:
                rated = q(motor["power"])
                low, high = (rated * motor["efficiency"],) * 2 if "efficiency" in motor else (0.7 * rated, rated)
                power.append({"at": at, "figure": figure("power"), "limit": most(between(low, high)), "margin": {"max": 0.2 * high}})
                ends = [0.8 * end / (2 * math.pi * one.speed) for end in (low, high)]
                torque.append({"at": at, "figure": figure("torque"), "limit": most(between(*ends))})
            else:
                for states, what in ((power, "power"), (torque, "torque")):
                    states.append({"at": at, "figure": figure(what), "limit": least(OPEN)})
        self.answers.ask("motor-power", power)
        self.answers.ask("motor-torque", torque)

    def cover(self):
        run, turns = self.run, self.turns()
        if not run.stirrer or not turns:
            return
        s, top, cover = run.stirrer, run.stirrer.top(), "cover" in run.stirrer.document
        levels = [(one, run.level(one.after.contents, one.after.t)) for one in turns]
        at = lambda one: {"step": one.number, "place": "vessel"}
        if top and (cover or not s.follows_wall):
            self.answers.ask("stirrer-covered", [{"at": at(one), "figure": known(level), "limit": least(sum(top))} for one, level in levels])
            volume = self.volume_at(sum(top))
            self.answers.ask("minimum-volume", [{"at": {"place": "vessel"}, "figure": known(q(self.job["vessel"]["workingVolume"]["min"])), "limit": least(volume)}])
        states = []
        for one, level in levels:
            found = self.stirred(one)
            re = found and found["re"]
            figure = known(0.0) if re is not None and re < VORTEX_FROM else between(0.0, s.vortex(one.speed))
            if s.baffles and not (re is not None and re < VORTEX_FROM):
                figure = OPEN
            limit = most(level - top[0]) if top else most(between(0.0, None))
            states.append({"at": at(one), "figure": figure, "limit": limit})
        self.answers.ask("no-air-down-the-vortex", states)

    def volume_at(self, height):
        return brentq(lambda v: level_of(v, self.job["vessel"]) - height, 1e-9, 1e3, xtol=1e-15)

    def moves(self):
        """A set gel that is turned: by its yield stress alone, the least that the impeller moves."""
        run = self.run
        for one in self.turns():
            if not self.has_set(one):
                continue
            stress, s = self.yield_stress()["max"], run.stirrer
            density = self.m.density(one.after.contents, one.after.t)
            level = run.level(one.after.contents, one.after.t)
            # The viscosity is at least what the yield stress alone makes it, and the torque at least what that asks for.
            caverns = [
                s.cavern(s.newton(stress / (s.ks[shear] * one.speed), density, one.speed, level, end), density, one.speed, stress, CAVERN[shape])
                for end in ENDS for shear in ENDS for shape in ENDS]
            width, height = map(min, zip(*caverns))
            at = {"step": one.number, "place": "vessel"}
            self.answers.ask(key("gel-moves-at-wall", one.number), [{"at": at, "figure": between(width, None), "limit": least(s.D)}])
            bowl = between(level, level + s.D / 12) if "bottom" not in self.job["vessel"] else known(level)
            self.answers.ask(key("gel-moves-at-surface", one.number), [{"at": at, "figure": between(height, None), "limit": least(bowl)}])

    # Particles.

    def entering(self):
        for index, one in enumerate(self.run.moments):
            new = [name for name in one.after.contents if name not in one.before.contents and self.m.is_particle(name)]
            for name in new:
                yield index, one, name, Particle(self.material(name)["particle"])

    def speed_in(self, contents, particle):
        readings, grains = self.run.readings(contents, "cooling"), None
        def at(t):
            return particle.velocity(self.m.fluid_density(contents, t), readings(t), self.m.grains(contents, t))
        return at

    def slower(self, contents, start):
        """How many times as long a content takes whose specific heat is everywhere the largest that setting gives it."""
        middle, total = (start + self.run.room) / 2, sum(contents.values())
        heat, peak = (sum(mass * self.m.heat(name, middle) for name, mass in contents.items()) / total), 0.0
        share = np.linspace(0, 1, 100001)
        for name, mass in contents.items():
            melting = self.m.melting(name, None)
            if melting:
                onset, end, latent = melting
                peak += mass * latent / (end - onset) * np.max(30 * share**2 * (1 - share) ** 2)
            elif self.material(name)["function"] == "gel former":
                return None
        return 1 + peak / total / heat

    def pack_of(self, start):
        pack = self.job.get("pack", {}).get("content")
        if not pack or "diameter" not in pack:
            return None
        contents, middle = self.run.moments[self.filling].after.contents, (start + self.run.room) / 2
        heat = sum(mass * self.m.heat(name, middle) for name, mass in contents.items()) / sum(contents.values())
        return Pack(pack, self.m.conductivity(contents, middle), self.m.density(contents, middle), heat, self.run.room)

    def ways(self, index, particle, which):
        """The stretches in which particles settle on their way into a pack, and whether its cooling is known."""
        run, found = self.run, []
        for later in run.moments[index: self.filling + 1]:
            if later.do in ("stir", "add") or not later.path or not later.duration:
                continue
            if later.do == "fill" and which == "first-pack":
                continue
            c = later.after.contents
            found.append(Stretch(later.path, later.duration, self.speed_in(c, particle), run.sets_at(c)))
        fill = run.moments[self.filling]
        start = fill.before.t if which == "first-pack" else fill.after.t
        pack, c = self.pack_of(start), fill.after.contents
        if pack is None:
            return found, False
        sets = run.sets_at(c)
        if start > sets:
            lasts = pack.until(start, sets)
            found.append(Stretch(lambda t: pack.temperature(start, t), lasts, self.speed_in(c, particle), sets, 301))
        return found, True

    def settled(self, ways, below=math.inf):
        return sum(one.way(below) for one in ways)

    def ways_before(self, index, particle, drop):
        """What they would have done had they gone in earlier, off the heat, into a melt that they cool as here."""
        found, contents = [], self.run.moments[index].after.contents
        off = next(i for i, one in enumerate(self.run.moments) if one.do == "take off the heat")
        for earlier in self.run.moments[off + 1: index]:
            if earlier.do in ("stir", "add") or not earlier.path or not earlier.duration:
                continue
            path = lambda t, one=earlier: one.path(t) - drop
            found.append(Stretch(path, earlier.duration, self.speed_in(contents, particle), self.run.sets_at(contents)))
        return found

    def particles(self):
        run = self.run
        allowed = q(self.bench.get("settlingAllowed"))
        for index, one, name, particle in self.entering():
            states, known_pack, sums = [], True, []
            vessel_depth = run.level(one.after.contents, one.after.t)
            for which in ("last-pack", "first-pack") if run.moments[self.filling].duration else ("last-pack",):
                ways, known_pack = self.ways(index, particle, which)
                way = min(self.settled(ways), vessel_depth) if ways else 0.0
                sums.append(ways)
                figure = known(way) if known_pack else between(way, None)
                states.append({"at": {"step": one.number, "place": which}, "figure": figure, "limit": most(allowed)})
            self.answers.ask(key("particles-settle", name), states)
            self.window(index, one, name, particle, sums, allowed, known_pack)
        for name, material in self.m.materials.items():
            if material["function"] == "particle":
                contents = run.moments[self.filling].before.contents
                need = to_hold(Particle(material["particle"]), self.m.fluid_density(contents, run.room))
                self.answers.ask(key("particles-stay-suspended", name), [{"at": {}, "figure": self.yield_stress(), "limit": least(need)}])

    def window(self, index, one, name, particle, sums, allowed, known_pack):
        run, contents = self.run, one.after.contents
        mixed = getattr(one, "mixed", one.after.t)
        drop = one.before.t - mixed
        sets = run.sets_at(contents)
        readings = run.readings(contents, "cooling")
        stirrable = q(self.bench["stirrableViscosityMax"])
        thick = brentq(lambda t: math.log(readings(t) / stirrable), readings.low - 5, readings.high, xtol=1e-12)
        before = self.ways_before(index, particle, drop)
        ends = []
        for ways in sums:
            total = lambda below, ways=ways: self.settled(before + ways, below) - allowed
            warmest = max([w.start for w in before + ways] or [mixed])
            ends.append(brentq(total, sets + 1e-6, warmest, xtol=1e-9) if total(warmest) > 0 else warmest)
        low, high = max(thick, sets) + drop, min(ends) + drop
        limit = {"min": known(low), "max": known(high) if known_pack else between(None, high)}
        self.answers.ask(key("particles-go-in", name), [
            {"at": {"step": one.number, "place": "charge"}, "figure": known(one.before.t), "limit": limit}])

    # Packs.

    def packs(self):
        run = self.run
        fill = run.moments[self.filling] if self.filling < len(run.moments) else None
        rest = next((one for one in run.moments[self.filling:] if one.do == "rest"), None)
        if fill and rest:
            states = []
            for place, start in self.packs_filled()[::-1] if fill.duration else [("last-pack", fill.after.t)]:
                pack = self.pack_of(start)
                at = {"step": rest.number, "place": place}
                if pack is None:
                    states.append({"at": at, "figure": OPEN, "limit": most(rest.duration)})
                    continue
                # From the end of filling: the first pack has cooled meanwhile.
                sets, gone = run.sets_at(fill.after.contents), fill.duration if place == "first-pack" else 0
                cold = getattr(fill, "coolest", start) if place == "last-pack" else start
                time, slower = pack.until(start, sets), self.slower(fill.after.contents, start)
                quick = 0.0 if cold is None else self.pack_of(cold).until(cold, sets)
                figure = [None if one is None else max(0.0, one - gone) for one in (quick, slower and time * slower, time)]
                states.append({"at": at, "figure": between(*figure), "limit": most(rest.duration)})
            self.answers.ask("set-at-centre", states)
        fill_questions(self)
        stability_questions(self)

    # Strength.

    def by_trials(self):
        """The curve through the trials, G = A (c − c₀)ⁿ, with its 95 % limits at the dose of the product."""
        trials = self.bench.get("strengthTrials")
        c = np.array([q(t["gelFormer"]) for t in trials["trials"]])
        y = np.log([q(t["strength"]) for t in trials["trials"]])
        threshold = q(trials.get("threshold"))
        assert threshold is not None, "only with a threshold"
        x, dose = np.log(c - threshold), sum(s for _, n, s, _ in self.run.lines if self.material(n)["function"] == "gel former")
        design = np.column_stack([np.ones_like(x), x])
        (a, n), ss, *_ = np.linalg.lstsq(design, y, rcond=None)
        freedom = len(x) - 2
        cov = np.linalg.inv(design.T @ design) * float(ss[0]) / freedom
        at = np.array([1, math.log(dose - threshold)])
        reach = stats.t.ppf(0.975, freedom) * math.sqrt(at @ cov @ at)
        middle = a + n * at[1]
        return between(math.exp(middle - reach), math.exp(middle + reach), math.exp(middle))

    def yield_stress(self):
        if "yieldStress" in self.bench:
            return known(q(self.bench["yieldStress"]))
        return self.by_trials()

    def strength(self):
        target = self.bench.get("strengthTrials", {}).get("target")
        if target:
            self.answers.ask("gel-strength", [{"at": {}, "figure": self.yield_stress(), "limit": least(q(target))}])

    # Air.

    def air(self):
        run = self.run
        bubbles = self.job["process"].get("air")
        if not bubbles:
            return
        d0, states = q(bubbles["bubbleDiameter"]), []
        off = next(i for i, one in enumerate(run.moments) if one.do == "take off the heat")
        for index, one in enumerate(run.moments[off + 1:], off + 1):
            if one.do not in ("cool", "fill", "rest") or index > self.filling:
                continue
            state = one.before
            level = run.level(state.contents, state.t)
            readings, sets = run.readings(state.contents, "cooling"), run.sets_at(state.contents)
            at = {"step": one.number, "place": "vessel"}
            if readings is None:
                states.append({"at": at, "figure": OPEN, "limit": least(self.in_a_bowl(level))})
                continue

            def speed(t, state=state, readings=readings):
                d = d0 * ((t + KELVIN) / (state.t + KELVIN)) ** (1 / 3)
                return (self.m.fluid_density(state.contents, t) - 0) * GRAVITY * d**2 / (18 * readings(t))

            way = Stretch(one.path, one.duration, speed, sets).way() if state.t > sets and one.duration else 0.0
            states.append({"at": at, "figure": known(way), "limit": least(self.in_a_bowl(level))})
        self.answers.ask("air-leaves", states, "some")
