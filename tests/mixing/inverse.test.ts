import fc from "fast-check";
import {
  cavern,
  exponentialFeed,
  feedAt,
  feedDuration,
  levelOfVolume,
  scaleUp,
  speedToMoveGelAtWall,
  stirring,
  volumeAtLevel,
} from "gelwright/mixing";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const kettle = fc.constantFrom(
  { diameter: 0.6 },
  { diameter: 0.6, bottom: { shape: "cone", depth: 0.2 } as const },
  { diameter: 0.6, bottom: { shape: "ellipsoidal", depth: 0.15 } as const },
  { diameter: 0.6, bottom: { shape: "dished", crownToDiameter: 1, knuckleToDiameter: 0.1 } as const },
);

undoes("levelOfVolume", "volumeAtLevel", fc.tuple(kettle, between(0.005, 2)), ([vessel, level]) => [
  levelOfVolume({ vessel, volume: volumeAtLevel({ vessel, level }) }),
  level,
]);

const gel = { law: "herschel-bulkley", yieldStress: 30, consistency: 12, flowIndex: 0.5 } as const;
const pitched = { kind: "pitched-blade turbine", diameter: 0.2 } as const;
const size = { diameter: 0.6, level: 0.6 };

undoes(
  "speedToMoveGelAtWall",
  "cavern",
  fc.record({ yieldStress: between(5, 100), density: between(850, 1000) }),
  ({ yieldStress, density }) => {
    const batch = { impeller: pitched, density, curve: { ...gel, yieldStress } };
    const speed = speedToMoveGelAtWall({ ...batch, vessel: size, beyond: "extend" });
    const { powerNumber } = stirring({ ...batch, vessel: size, speed, beyond: "extend" });
    const { impeller } = batch;
    return [cavern({ powerNumber, speed, impeller, density, yieldStress, vessel: size }).diameter, size.diameter];
  },
  1e-6,
);

const bench = {
  ...{ impeller: { kind: "pitched-blade turbine", diameter: 0.05 } as const, vessel: { diameter: 0.15, level: 0.15 } },
  ...{ density: 915, volume: 0.0026, beyond: "extend" as const },
};
const criteria = ["tip-speed", "power-per-volume", "reynolds", "froude", "shear-rate"] as const;

undoes(
  "scaleUp",
  "stirring",
  fc.record({ speed: between(1, 20), scale: between(1.5, 15), criterion: fc.constantFrom(...criteria) }),
  ({ speed, scale, criterion }) => {
    const plant = { impeller: { diameter: 0.05 * scale } };
    const batch = { ...bench, speed, curve: gel, plant, criteria: [criterion] };
    const row = scaleUp(batch).plant[0];
    const kept = { "tip-speed": "tipSpeed", "power-per-volume": "powerPerVolume", "shear-rate": "shearRate" };
    const of = (kept as Record<string, string>)[criterion] ?? criterion;
    return [(row?.ratios as Record<string, number> | undefined)?.[of] ?? Number.NaN, 1];
  },
  1e-7,
);

const oil = {
  ...{ massGelFormer: 10, massOil: 1, massToAdd: 30, densityOil: 915, densityGelFormer: 1250 },
  ...{ share: { law: "linear", atNoOil: 0.05, perVolumeFraction: 0.2 } as const, volumeFractionOilMax: 0.9 },
  ...{ incorporationTime: { law: "constant", value: 90 } as const, rateMax: 0.05 },
};

undoes(
  "feedAt",
  "feedDuration",
  between(1, 30),
  (massToAdd) => {
    const feed = { ...oil, massToAdd };
    return [feedAt({ ...feed, time: feedDuration(feed) }).massOil, oil.massOil + massToAdd];
  },
  1e-7,
);

undoes(
  "exponentialFeed",
  "exponentialFeed, as a clock",
  fc.record({
    massStart: between(1, 50),
    growth: between(1.01, 20),
    duration: between(60, 7200),
    share: between(0.01, 1),
  }),
  ({ massStart, growth, duration, share }) => {
    const massEnd = massStart * growth;
    const time = share * duration;
    const { massInVessel, specificRate } = exponentialFeed({ massStart, massEnd, duration, time });
    return [Math.log(massInVessel / massStart) / specificRate, time];
  },
);
