import type { Job } from "./job.js";
import type { Plan } from "./plan.js";

/** Where the figures come from, as the documents say it. A material without a source is named as such. */
export function sourcesOf({ formula, bench, batch, vessel, process, pack }: Job): Plan["sources"] {
  const used = new Set(formula.lines.map((line) => line.material));
  return [
    ...Object.values(formula.materials)
      .filter((material) => used.has(material.key))
      .flatMap(({ name, sources }) => {
        const stated = Object.entries(sources).map(([field, source]) => ({ of: `${name}, ${field}`, source }));
        return stated.length > 0 ? stated : [{ of: name, source: "no source stated" }];
      }),
    {
      of:
        process.route === "hot"
          ? "setting, dissolving, viscosity and yield stress"
          : "additions, incorporation times, droplets, air and yield stress",
      source: bench.source,
    },
    ...batch.allowances.map(({ name, source }) => ({ of: `allowance: ${name}`, source: source ?? "no source stated" })),
    ...(process.route === "hot"
      ? [{ of: `${vessel.name}, heat loss`, source: vessel.loss?.from ?? "not stated" }]
      : []),
    ...(pack?.content ? [{ of: `${pack.name}, coefficient at its surface`, source: pack.content.source }] : []),
    ...[
      ["heated wall", vessel.heatedWall?.source],
      ["jacket", vessel.jacket?.source],
    ].flatMap(([wall, source]) => (source === undefined ? [] : [{ of: `${vessel.name}, ${wall}`, source }])),
  ];
}
