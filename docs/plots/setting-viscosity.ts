import { line, ruleX, text } from "@observablehq/plot";
import { temperatureAtViscosity, viscosityAt } from "gelwright/laws";
import type { Figure } from "./figure.js";

/** The law of the page. */
const melt = { law: "vogel-fulcher-tammann", lnFactor: -9.5, coefficient: 900, temperatureVogel: -110 } as const;
const law = { law: "setting", melt, temperatureSetting: 62, steepness: 0.4 } as const;

/** The viscosity of a melt that sets on cooling, beside the melt that would not. */
export function settingViscosity(): Figure {
  const temperatures = Array.from({ length: 81 }, (_, step) => 90 - step / 2);
  const along = (one: typeof law | typeof melt) =>
    temperatures.map((temperature) => ({ temperature, viscosity: viscosityAt({ law: one, temperature }) }));
  const thick = temperatureAtViscosity({ law, viscosity: 1 });
  const at = [85, 62, 50].map(
    (temperature) => `${viscosityAt({ law, temperature }).toPrecision(2)} Pa·s at ${temperature} °C`,
  );
  return {
    name: "setting-viscosity",
    title: "The viscosity of a melt that sets below 62 °C, and of the same melt without gel former",
    description: `${at.join(", ")}; it passes 1 Pa·s at ${thick.toFixed(1)} °C. Above the setting temperature both are the melt's.`,
    options: {
      marginRight: 130,
      x: { label: "temperature [°C], cooling →", domain: [90, 50], reverse: false },
      y: { type: "log", label: "↑ viscosity [Pa·s]", tickFormat: String, ticks: [0.01, 0.03, 0.1, 0.3, 1, 3] },
      marks: [
        ruleX([62], { strokeOpacity: 0.4 }),
        text([62], { x: () => 62, y: () => 2, text: () => "sets", dx: -6, textAnchor: "end" }),
        line(along(melt), { x: "temperature", y: "viscosity", strokeDasharray: "7 4" }),
        line(along(law), { x: "temperature", y: "viscosity", strokeWidth: 2 }),
        text([along(law).at(-1), along(melt).at(-1)], {
          x: "temperature",
          y: "viscosity",
          text: (_: unknown, i: number) => (i === 0 ? "with gel former" : "melt alone"),
          dx: 6,
          textAnchor: "start",
        }),
      ],
    },
  };
}
