import fc from "fast-check";
import {
  additionTemperatureMin,
  batchMassForDuration,
  batchTemperatureAtWall,
  capacityFlowForDuration,
  chargeForEvaporation,
  coolingTimeAtScale,
  heatFlowAtWall,
  heatingTime,
  heatToWarm,
  jacketCoefficient,
  jacketedWall,
  jacketTemperatureAtWall,
  jacketTime,
  largestAddition,
  lossFraction,
  massAfterEvaporation,
  mediumTemperatureForDuration,
  meltTemperatureMin,
  mixingTemperature,
  powerForDuration,
  steadyTemperature,
  vesselSegment,
  vesselTimes,
  wallTemperature,
} from "gelwright/heat";
import { heatLossAt } from "gelwright/laws";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

/** Temperatures are measured by the way between batch and surroundings. */
const way = 100;

const wall = fc.record({
  temperatureBulk: between(60, 90),
  temperatureJacket: between(5, 50),
  heatTransferCoefficient: between(10, 1000),
  heatTransferCoefficientJacket: between(10, 3000),
});

undoes(
  "heatFlowAtWall",
  "wallTemperature",
  fc.record({
    ...{ temperatureBulk: between(40, 90), heatFlow: between(-5000, 5000) },
    ...{ area: between(0.1, 5), heatTransferCoefficient: between(500, 2000) },
  }),
  ({ heatFlow, ...at }) => {
    const temperatureWall = wallTemperature({ ...at, heatFlow });
    return [heatFlowAtWall({ ...at, temperatureWall }), heatFlow, 1e5];
  },
);

undoes("batchTemperatureAtWall", "jacketedWall", wall, (at) => {
  const { temperatureWall } = jacketedWall(at);
  const { temperatureBulk, ...known } = at;
  return [batchTemperatureAtWall({ ...known, temperatureWall }), temperatureBulk, 1e4];
});

undoes("jacketTemperatureAtWall", "jacketedWall", wall, (at) => {
  const { temperatureWall } = jacketedWall(at);
  const { temperatureJacket, ...known } = at;
  return [jacketTemperatureAtWall({ ...known, temperatureWall }), temperatureJacket, 1e4];
});

undoes("jacketCoefficient", "jacketedWall", fc.tuple(between(0.05, 5), wall), ([area, at]) => {
  const { heatTransferCoefficientOverall } = jacketedWall(at);
  const { heatTransferCoefficient } = at;
  const conductance = area * heatTransferCoefficientOverall;
  return [jacketCoefficient({ conductance, area, heatTransferCoefficient }), at.heatTransferCoefficientJacket];
});

const charge = (temperature: fc.Arbitrary<number>) =>
  fc.record({ mass: between(0.1, 100), specificHeat: between(1500, 2500), temperature });
const additions = fc.record({ melt: charge(between(70, 90)), addition: charge(between(5, 30)) });

undoes(
  "largestAddition",
  "mixingTemperature",
  additions,
  ({ melt, addition }) => {
    const temperatureMin = mixingTemperature({ charges: [melt, addition] });
    const { mass, ...cold } = addition;
    return [largestAddition({ melt: [melt], addition: cold, temperatureMin }), mass, mass + melt.mass];
  },
  1e-7,
);

undoes("additionTemperatureMin", "mixingTemperature", additions, ({ melt, addition }) => {
  const temperatureMin = mixingTemperature({ charges: [melt, addition] });
  const { temperature, ...part } = addition;
  return [additionTemperatureMin({ melt: [melt], addition: part, temperatureMin }), temperature, 1e3 * way];
});

undoes("meltTemperatureMin", "mixingTemperature", additions, ({ melt, addition }) => {
  const temperatureMin = mixingTemperature({ charges: [melt, addition] });
  const { temperature, ...part } = melt;
  return [meltTemperatureMin({ melt: [part], addition, temperatureMin }), temperature, 1e3 * way];
});

const vessels = fc.record({
  heatCapacity: between(1e3, 1e6),
  conductance: between(1, 500),
  temperatureStart: between(15, 30),
  temperatureAmbient: between(15, 25),
});

undoes(
  "powerForDuration",
  "heatingTime",
  fc.record({ vessel: vessels, temperatureEnd: between(50, 95), beyond: between(1.05, 20) }),
  ({ vessel, temperatureEnd, beyond }) => {
    const { conductance, ...rest } = vessel;
    const power = beyond * conductance * (temperatureEnd - vessel.temperatureAmbient);
    const { duration } = heatingTime({ ...vessel, power, temperatureEnd });
    const heatLoss = { law: "newton", conductance } as const;
    return [powerForDuration({ ...rest, heatLoss, duration, temperatureEnd }), power];
  },
  1e-7,
);

undoes(
  "vesselSegment",
  "vesselTimes",
  fc.record({ vessel: vessels, share: between(0.05, 0.95), beyond: between(1.1, 20) }),
  ({ vessel, share, beyond }) => {
    const { conductance, temperatureStart, temperatureAmbient } = vessel;
    const power = beyond * conductance * (90 - temperatureAmbient);
    const at = {
      ...{ temperatureStart, temperatureAmbient, heatCapacity: vessel.heatCapacity },
      heatLoss: { law: "newton", conductance } as const,
      heatSource: { kind: "power", power } as const,
    };
    const temperature = temperatureStart + share * (90 - temperatureStart);
    const [duration = Number.NaN] = vesselTimes({ ...at, temperatures: [temperature] });
    return [vesselSegment({ ...at, duration }).temperatureEnd, temperature, way];
  },
  1e-8,
);

undoes(
  "steadyTemperature",
  "heatLossAt",
  fc.record({ temperature: between(30, 150), temperatureAmbient: between(10, 28), height: between(0.1, 2) }),
  ({ temperature, temperatureAmbient, height }) => {
    const law = { law: "natural convection", surface: "vertical", area: 1.2, height } as const;
    const power = heatLossAt({ law, temperature, temperatureAmbient });
    return [steadyTemperature({ heatSource: power, heatLoss: law, temperatureAmbient }), temperature];
  },
  1e-7,
);

undoes(
  "heatToWarm",
  "heatToWarm, cooled",
  fc.record({ mass: between(0.1, 100), specificHeat: between(1500, 2500), temperatureEnd: between(30, 90) }),
  ({ temperatureEnd, ...part }) => {
    const parts = [part];
    const up = heatToWarm({ parts, temperatureStart: 20, temperatureEnd }).heat;
    return [-heatToWarm({ parts, temperatureStart: temperatureEnd, temperatureEnd: 20 }).heat, up];
  },
);

const jackets = fc.record({
  heatCapacity: between(1e4, 1e7),
  conductance: between(10, 2000),
  temperatureInlet: between(5, 30),
  temperatureStart: between(70, 95),
  temperatureEnd: between(40, 65),
});

undoes("mediumTemperatureForDuration", "jacketTime", jackets, (jacket) => {
  const { temperatureInlet, ...rest } = jacket;
  const { duration } = jacketTime(jacket);
  return [mediumTemperatureForDuration({ ...rest, duration }), temperatureInlet, way];
});

undoes("batchMassForDuration", "jacketTime", fc.tuple(jackets, between(1500, 2500)), ([jacket, specificHeat]) => {
  const { heatCapacity, temperatureInlet: temperatureMedium, ...rest } = jacket;
  const { duration } = jacketTime(jacket);
  return [batchMassForDuration({ ...rest, temperatureMedium, specificHeat, duration }), heatCapacity / specificHeat];
});

undoes(
  "capacityFlowForDuration",
  "jacketTime",
  fc.tuple(jackets, between(0.2, 20)),
  ([jacket, perConductance]) => {
    const capacityFlow = jacket.conductance * perConductance;
    const { duration } = jacketTime({ ...jacket, capacityFlow });
    return [capacityFlowForDuration({ ...jacket, duration }), capacityFlow];
  },
  1e-7,
);

undoes(
  "coolingTimeAtScale",
  "coolingTimeAtScale, the other way",
  fc.record({
    ...{ duration: between(10, 1e5), volume: between(1e-4, 10), volumeAtScale: between(1e-4, 10) },
    limitedBy: fc.constantFrom("surface" as const, "conduction" as const),
  }),
  ({ duration, volume, volumeAtScale, limitedBy }) => {
    const there = coolingTimeAtScale({ duration, volume, volumeAtScale, limitedBy });
    return [coolingTimeAtScale({ duration: there, volume: volumeAtScale, volumeAtScale: volume, limitedBy }), duration];
  },
);

const losses = fc.record({ charge: between(0.01, 1000), lossFraction: between(0.001, 0.9) });

undoes("chargeForEvaporation", "massAfterEvaporation", losses, (loss) => [
  chargeForEvaporation({ delivered: massAfterEvaporation(loss), lossFraction: loss.lossFraction }),
  loss.charge,
]);

undoes("lossFraction", "massAfterEvaporation", losses, (loss) => [
  lossFraction({ massBefore: loss.charge, massAfter: massAfterEvaporation(loss) }),
  loss.lossFraction,
  1,
]);
