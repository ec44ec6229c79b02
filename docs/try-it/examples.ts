import beaker from "../examples/cuticle-gel/beaker.json" with { type: "json" };
import bench from "../examples/cuticle-gel/bench.json" with { type: "json" };
import formula from "../examples/cuticle-gel/formula.json" with { type: "json" };
import kettle from "../examples/cuticle-gel/kettle.json" with { type: "json" };
import scrubBench from "../examples/scrub-gel/bench.json" with { type: "json" };
import scrubFormula from "../examples/scrub-gel/formula.json" with { type: "json" };
import scrubVessel from "../examples/scrub-gel/vessel.json" with { type: "json" };
import starter from "../examples/starter/job.json" with { type: "json" };
import { asText } from "./as-text.js";

/** The jobs that the page offers, as text to be changed. */
export const examples: Readonly<Record<string, string>> = {
  "1200 jars from a kettle": asText({ version: 1, formula, bench, ...kettle }),
  "200 g in a beaker": asText({ version: 1, formula, bench, ...beaker }),
  "Scrub gel, cold route": asText({ version: 1, formula: scrubFormula, bench: scrubBench, ...scrubVessel }),
  "Twenty lines to start from": asText(starter, 190),
};

/** What a job of a reader's own begins with. */
export const ownJob: string = asText({ ...starter, formula: { ...starter.formula, name: "My gel" } });
