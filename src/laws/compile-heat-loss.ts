import { fraction, list, notNegative, positive, record, refuse, show, variant } from "../guards.js";
import { root } from "../numeric/root.js";
import type { HeatLossLaw, LayersLoss, SurfaceLoss } from "./heat-loss-law.js";
import * as known from "./known.js";
import { compileConvection, type Loss } from "./natural-convection.js";

/** Stefan–Boltzmann constant [W/(m²·K⁴)], rounded from the exact value of the SI of 2019. */
const stefanBoltzmann = 5.670374419e-8;

function compileSurface(law: SurfaceLoss, path: string, extended: boolean): Loss {
  variant(law, path, "law", known.surfaceLoss);
  switch (law.law) {
    case "newton": {
      const conductance = notNegative(law.conductance, `${path}.conductance`);
      return (excess) => conductance * excess;
    }
    case "natural convection":
      return compileConvection(law, path, extended);
    case "radiation": {
      const factor =
        stefanBoltzmann * positive(law.area, `${path}.area`) * fraction(law.emissivity, `${path}.emissivity`);
      return (excess, ambient) => {
        const room = ambient + 273.15;
        const surface = room + excess;
        // T⁴ − T₀⁴ by its factors: exact to the last digits for a small excess too.
        return factor * excess * (surface + room) * (surface * surface + room * room);
      };
    }
    default:
      return refuse("input", `${path}.law`, show((law as { law: unknown }).law), "a heat-loss law");
  }
}

function sum(losses: readonly Loss[]): Loss {
  return (excess, ambient) => {
    let total = 0;
    for (const loss of losses) total += loss(excess, ambient);
    return total;
  };
}

/** The loss through layers, and the share of the excess that is left at their outer surface. */
export function compileLayers(law: LayersLoss, path: string): { readonly loss: Loss; readonly shareOutside: Loss } {
  const area = positive(law.area, `${path}.area`);
  const inside = law.heatTransferCoefficientInside;
  const resistance = list(law.layers, `${path}.layers`, 1).reduce(
    (passed, layer, i) => {
      const at = `${path}.layers[${i}]`;
      const { thickness, conductivity } = record(layer, at, known.layer);
      return passed + positive(thickness, `${at}.thickness`) / positive(conductivity, `${at}.conductivity`);
    },
    inside === undefined ? 0 : 1 / positive(inside, `${path}.heatTransferCoefficientInside`),
  );
  const outside = (extended: boolean): Loss =>
    sum(
      list(law.outside, `${path}.outside`, 1).map((loss, i) => compileSurface(loss, `${path}.outside[${i}]`, extended)),
    );
  // The search may look at surfaces that the answer will not need; only the answer has to lie within the ranges.
  const searched = outside(true);
  const answered = outside(false);
  const shareOutside: Loss = (excess, ambient) =>
    excess === 0
      ? 0
      : root(
          (share) => ((1 - share) * area) / resistance - searched(share * excess, ambient) / excess,
          0,
          1,
          `${path}.layers`,
        );
  return { shareOutside, loss: (excess, ambient) => answered(shareOutside(excess, ambient) * excess, ambient) };
}

function compilePart(law: SurfaceLoss | LayersLoss, path: string): Loss {
  variant(law, path, "law", known.heatLossPart);
  return law.law === "layers" ? compileLayers(law, path).loss : compileSurface(law, path, false);
}

/** The law as a function of both temperatures, named `path` in its faults. */
export function compileHeatLoss(law: HeatLossLaw, path: string): (temperature: number, ambient: number) => number {
  variant(law, path, "law", known.heatLoss);
  const loss =
    law.law === "sum"
      ? sum(list(law.parts, `${path}.parts`, 1).map((part, i) => compilePart(part, `${path}.parts[${i}]`)))
      : compilePart(law, path);
  return (at, ambient) => loss(at - ambient, ambient);
}
