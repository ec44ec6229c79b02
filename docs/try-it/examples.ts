import beaker from "../examples/cuticle-gel/beaker.json" with { type: "json" };
import bench from "../examples/cuticle-gel/bench.json" with { type: "json" };
import formula from "../examples/cuticle-gel/formula.json" with { type: "json" };
import kettle from "../examples/cuticle-gel/kettle.json" with { type: "json" };
import scrubBench from "../examples/scrub-gel/bench.json" with { type: "json" };
import scrubFormula from "../examples/scrub-gel/formula.json" with { type: "json" };
import scrubVessel from "../examples/scrub-gel/vessel.json" with { type: "json" };

/** The jobs that the page offers, as text to be changed. */
export const examples: Readonly<Record<string, string>> = {
  "1200 jars from a kettle": asText({ version: 1, formula, bench, ...kettle }),
  "200 g in a beaker": asText({ version: 1, formula, bench, ...beaker }),
  "Scrub gel, cold route": asText({ version: 1, formula: scrubFormula, bench: scrubBench, ...scrubVessel }),
};

/** Indented, but what is short stands on one line. */
function asText(job: object): string {
  return JSON.stringify(job, null, 2).replaceAll(/[[{][^[\]{}]{0,110}[\]}]/g, (part) => {
    const line = part.replaceAll(/\s*\n\s*/g, " ");
    return line.length <= 100 ? line : part;
  });
}
