import { mixingTemperature } from "../heat/index.js";
import { Charge } from "./charge.js";
import type { Content } from "./contents.js";
import type { State } from "./state.js";
import { by, cell } from "./unknown.js";

/** The temperature at which an addition and what is in the vessel meet, with whatever melts as they do [°C]. */
export function meet(state: State, added: readonly Content[], at: number): () => number {
  const { charge: inside } = state;
  return cell(() => {
    const temperature = inside.contents.length === 0 ? inside.job.process.room : state.temperature();
    if (temperature === at) return temperature;
    const more = new Charge(inside.job, added, inside.molten, inside.heated);
    const charges = [
      ...inside.partsWithWall().map((part) => ({ ...part, temperature })),
      ...more.parts().map((part) => ({ ...part, temperature: at })),
    ];
    return by("mixing-temperature", () => mixingTemperature({ charges }));
  });
}
