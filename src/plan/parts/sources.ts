import type { SourceCode } from "../codes/bases.js";
import type { Job } from "../job.js";
import { type Loss, lossOf } from "../loss.js";
import { stated, where } from "../unknown.js";

/** Where figures of the documents come from. */
export interface Source {
  /** What kind of figures. */
  readonly key: SourceCode;
  /** The material by its key, or the allowance, vessel or pack by the caller's name. */
  readonly of?: string;
  /** The field of the material, as the caller names it. */
  readonly property?: string;
  /** In the caller's words; left out if no source is stated. */
  readonly source?: string;
  /** Of a loss that was fitted to a cooling curve: conductance [W/K], its 95 % interval if there are readings enough for one, and how many readings there are. */
  readonly fit?: NonNullable<Loss["fit"]>;
}

/** Where the figures come from, as the documents say it. A material without a source is listed without one. */
export function sourcesOf({ formula, bench, batch, vessel, pack }: Job): readonly Source[] {
  const used = new Set(formula.lines.map(({ material }) => material));
  const { emulsion, doses, viscosities } = bench;
  const { heatedWall, jacket } = vessel;
  const ofVessel = (key: SourceCode, source?: string): Source => ({ key, of: vessel.name, ...sourced(source) });
  return [
    ...Object.values(formula.materials)
      .filter(({ key }) => used.has(key))
      .flatMap(({ key: of, sources }): readonly Source[] => {
        const stated = Object.entries(sources).map(
          ([property, source]): Source => ({ key: "material", of, property, source }),
        );
        return stated.length > 0 ? stated : [{ key: "material", of }];
      }),
    ...(!emulsion || doses || viscosities ? [{ key: "bench", source: bench.source } as const] : []),
    ...(emulsion ? [{ key: "bench-emulsion", of: emulsion.outerPhase, source: bench.source } as const] : []),
    ...batch.allowances.map(({ name, source }): Source => ({ key: "allowance", of: name, ...sourced(source) })),
    ...(vessel.surfaces ? [ofVessel("heat-loss-by-surfaces")] : []),
    ...(vessel.coolingCurve
      ? [
          {
            ...ofVessel("heat-loss-by-cooling-curve"),
            ...where("fit", () => stated(lossOf(vessel)?.fit, "vessel-heat-loss", { of: vessel.name })),
          },
        ]
      : []),
    ...(vessel.heatLoss === undefined ? [] : [ofVessel("heat-loss-stated")]),
    ...(pack?.content ? [{ key: "pack-coefficient", of: pack.name, source: pack.content.source } as const] : []),
    ...(isStated(heatedWall?.coefficient, heatedWall?.source) ? [ofVessel("heated-wall", heatedWall?.source)] : []),
    ...(isStated(jacket?.conductance, jacket?.insideCoefficient, jacket?.outsideCoefficient, jacket?.source)
      ? [ofVessel("jacket", jacket?.source)]
      : []),
  ];
}

function sourced(source: string | undefined): Pick<Source, "source"> {
  return source === undefined ? {} : { source };
}

function isStated(...fields: readonly (number | string | undefined)[]): boolean {
  return fields.some((field) => field !== undefined);
}
