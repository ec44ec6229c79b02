import type { Material } from "../../formula/index.js";
import { atMost, between, exactly } from "../figure.js";
import { type Entering, enteringIn } from "../parts/entering.js";
import { makesMelt, type WhichPack } from "../parts/moments.js";
import { massFractionBeyond, mayGoFarther, packLacks, settledFigure } from "../parts/settling.js";
import { yieldStressNeeded } from "../parts/suspended.js";
import { upToTheWarmest } from "../parts/warmth.js";
import { packsIn, windowOf } from "../parts/window.js";
import { yieldStressFigure } from "../parts/yield-stress.js";
import type { Run } from "../state.js";
import { stated, where } from "../unknown.js";
import { coolerMelt, moreGelFormer, warmerMelt } from "./levers.js";
import { asks, type Question } from "./question.js";

/** Every material that is particles, by the order in which it goes in. */
function materialsIn(entering: readonly Entering[]): readonly Material[] {
  return [...new Set(entering.map(({ material }) => material))];
}

/** Each time that particles go into a melt; an emulsion does not thicken as it cools. */
function intoMelt(run: Run): readonly Entering[] {
  return makesMelt(run) ? enteringIn(run) : [];
}

/** Particles on their way into one of the packs. */
interface IntoPack {
  readonly entering: Entering;
  readonly pack: WhichPack;
}

/** Questions about particles: they go in late enough not to sink, early enough to be stirred in, and stay up in the set gel. */
export const particleQuestions: readonly Question[] = [
  asks<Material, Entering>({
    id: "particles-go-in",
    quantity: "temperature",
    quantifier: "every",
    subjects: (run) => materialsIn(intoMelt(run)),
    of: ({ key }) => ({ material: key }),
    states: (material, run) => intoMelt(run).filter((entering) => entering.material === material),
    at: ({ number }) => ({ step: number, place: "charge" }),
    figure: ({ before, place }, _material, run) => {
      const moment = run.moments[place - 1];
      const temperature = before.temperature();
      return moment ? upToTheWarmest(run, moment, temperature) : exactly(temperature);
    },
    limit: (entering) => {
      const { temperatureMin, temperatureMax, openBy, packLacks: lacking } = windowOf(entering);
      const isLower = lacking !== undefined || packsIn(entering).some((which) => mayGoFarther(entering, which));
      const basis = [{ kind: "law", key: "window-for-adding" }] as const;
      // Where nothing says how thick it can be stirred, the window may close anywhere above the setting temperature.
      return {
        min: openBy ? between(temperatureMin, null, basis) : exactly(temperatureMin, basis),
        // How far they settle in the pack, or in a melt that stays warm longer, may only lower it.
        max: isLower ? between(null, temperatureMax, basis) : exactly(temperatureMax, basis),
      };
    },
    levers: (_material, run, { step = 0 }) => [...coolerMelt(run, step), ...warmerMelt(run, step)],
    beside: (entering) => {
      const { openBy, packLacks: lacking } = windowOf(entering);
      return { lacks: lacking?.field ?? lacking?.code ?? openBy, lacksOf: lacking?.of };
    },
  }),
  asks<Material, IntoPack>({
    id: "particles-settle",
    quantity: "length",
    quantifier: "every",
    subjects: (run) => materialsIn(intoMelt(run)),
    of: ({ key }) => ({ material: key }),
    states: (material, run) =>
      intoMelt(run)
        .filter((entering) => entering.material === material)
        .flatMap((entering): readonly IntoPack[] => packsIn(entering).map((pack) => ({ entering, pack }))),
    at: ({ entering: { number }, pack }) => ({ step: number, place: pack }),
    figure: ({ entering, pack }) => settledFigure(entering, pack),
    limit: (_state, _material, { job: { bench } }) =>
      atMost(stated(bench.settlingAllowed, "bench-settling-max"), [
        { kind: "stated", key: "bench-settling-max", source: bench.source },
      ]),
    levers: (_material, run, { step = 0 }) => coolerMelt(run, step),
    beside: ({ entering, pack }) => {
      const reason = packLacks(entering, pack);
      return {
        lacks: reason?.field ?? reason?.code,
        lacksOf: reason?.of,
        ...(entering.particle.sizes && where("massFractionBeyond", () => massFractionBeyond(entering, pack))),
      };
    },
  }),
  asks<Material, Material>({
    id: "particles-stay-suspended",
    quantity: "stress",
    quantifier: "every",
    subjects: (run) => materialsIn(enteringIn(run)),
    of: ({ key }) => ({ material: key }),
    states: (material) => [material],
    figure: (_state, _material, run) => yieldStressFigure(run),
    limit: ({ particle }, { key }, run) => ({
      min: yieldStressNeeded(run, stated(particle, "material-density", { of: key })),
    }),
    levers: (_material, run) => moreGelFormer(run),
    beside: ({ particle }) => ({ diameter: particle?.diameter, thickness: particle?.thickness }),
  }),
];
