import fc from "fast-check";
import { coolingSegment, temperatureAfter, transientSegment } from "gelwright/transient";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const kettles = fc.record({
  heatCapacity: between(1e3, 1e6),
  conductance: between(1, 100),
  temperatureEnd: between(25, 80),
});

undoes("temperatureAfter", "transientSegment", kettles, ({ heatCapacity, conductance, temperatureEnd }) => {
  const cooling = {
    ...{ temperatureStart: 85, temperatureLimit: 20, heatCapacity, breakpoints: [60] },
    // It loses heat as by free convection: more than in proportion.
    heatFlow: (temperature: number) => -conductance * (temperature - 20) ** 1.25,
  };
  const { duration } = transientSegment({ ...cooling, temperatureEnd });
  return [temperatureAfter({ ...cooling, duration }), temperatureEnd];
});

undoes(
  "coolingSegment, by time",
  "coolingSegment, to a temperature",
  kettles,
  ({ conductance, temperatureEnd, ...of }) => {
    const vessel = {
      ...of,
      temperatureStart: 85,
      temperatureAmbient: 20,
      heatLoss: { law: "newton", conductance } as const,
    };
    const { duration } = coolingSegment({ ...vessel, temperatureEnd });
    return [coolingSegment({ ...vessel, duration }).temperatureEnd, temperatureEnd];
  },
);
