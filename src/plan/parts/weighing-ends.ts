import { Charge } from "../charge.js";
import { type Content, volumeOf } from "../contents.js";
import type { Run } from "../state.js";

/** A charge with each line weighed as heavy or as light as its tolerance lets it be. */
function weighedAt(charge: Charge, { scaled }: Run, end: (content: Content) => "min" | "max"): Charge {
  const contents = charge.contents.map((content) => {
    const line = scaled.lot.lines.find(
      ({ phase, material }) => phase === content.phase && material === content.material.key,
    );
    return line ? { ...content, mass: (content.mass * line.tolerance[end(content)]) / line.mass } : content;
  });
  return new Charge(charge.job, contents, charge.molten, charge.heated);
}

/** The oil fraction with all oil weighed as heavy and the gel former as light as the tolerances let them be, and the oil as wide as it may be where no expansion is stated. */
export function oilFractionMax(charge: Charge, run: Run): number {
  const { bench, process } = charge.job;
  const outer = bench.emulsion?.outerPhase;
  const weighed = weighedAt(charge, run, ({ phase }) => (phase === outer ? "min" : "max"));
  const oil = volumeOf(weighed.oil(), process.room).max;
  return oil / (oil + volumeOf(weighed.outer(), process.room).min);
}
