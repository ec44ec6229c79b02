import fc from "fast-check";
import { enthalpyBetween, heatLossAt, outerTemperature, temperatureAtViscosity, viscosityAt } from "gelwright/laws";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

const oils = fc.oneof(
  between(25_000, 50_000).map((activationEnergy) => ({ law: "andrade", factor: 1e-6, activationEnergy }) as const),
  between(600, 1200).map((coefficient) => {
    return { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient, temperatureVogel: -110 } as const;
  }),
);
const melts = fc.oneof(
  oils,
  oils.map((melt) => ({ law: "setting", melt, temperatureSetting: 62, steepness: 0.4 }) as const),
);

undoes("temperatureAtViscosity", "viscosityAt", fc.tuple(melts, between(20, 100)), ([law, temperature]) => [
  temperatureAtViscosity({ law, viscosity: viscosityAt({ law, temperature }) }),
  temperature,
  100,
]);

undoes(
  "outerTemperature",
  "heatLossAt",
  fc.record({ temperature: between(40, 95), temperatureAmbient: between(10, 25), thickness: between(0.005, 0.1) }),
  ({ temperature, temperatureAmbient, thickness }) => {
    const outside = [{ law: "radiation", area: 1.2, emissivity: 0.3 }] as const;
    const law = {
      law: "layers",
      ...{ area: 1.2, layers: [{ thickness, conductivity: 0.04 }], outside },
      heatTransferCoefficientInside: 80,
    } as const;
    const outer = outerTemperature({ law, temperature, temperatureAmbient });
    const lost = heatLossAt({ law, temperature, temperatureAmbient });
    return [heatLossAt({ law: { law: "sum", parts: outside }, temperature: outer, temperatureAmbient }), lost];
  },
  1e-7,
);

undoes(
  "enthalpyBetween",
  "enthalpyBetween, the other way",
  fc.record({ temperatureStart: between(10, 60), temperatureEnd: between(10, 95) }),
  ({ temperatureStart, temperatureEnd }) => {
    const law = { law: "polynomial", coefficients: [1984.2, 1.4733, -0.0048] } as const;
    const there = enthalpyBetween({ law, temperatureStart, temperatureEnd });
    return [-enthalpyBetween({ law, temperatureStart: temperatureEnd, temperatureEnd: temperatureStart }), there, 1e5];
  },
);
