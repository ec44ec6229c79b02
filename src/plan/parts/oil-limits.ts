import type { Material } from "../../formula/index.js";
import { hlbOfBlend, type InductionTime, inductionTime, requiredHlb } from "../../oils/index.js";
import { type Content, massOf } from "../contents.js";
import type { NotKnown } from "../figure.js";
import type { Run } from "../state.js";
import { by, orNotKnown, stated, unknown } from "../unknown.js";
import { gelOf, withOil } from "./droplets.js";

/** How long an oil keeps from turning rancid at the room's temperature, by what was measured. */
export type OilInduction = {
  readonly material: string;
  /** Of the room [°C]. */
  readonly temperature: number;
} & (InductionTime | NotKnown);

/** What the oils ask for or stand by themselves. */
export interface PlanOilLimits {
  /** In an emulsion: the HLB that its oil asks for, beside that of its surfactants. Indicative: droplets packed in glycerin are no oil in water. */
  readonly hlb?: { readonly required: number | NotKnown; readonly surfactants: number | NotKnown };
  readonly inductionTimes: readonly OilInduction[];
}

/** The HLB that the oil of the finished gel asks for; what is no oil of its own, such as an antioxidant, does not count. */
function hlbRequired(oil: readonly Content[]): number {
  const oils = oil.filter(({ material }) => material.function === "oil");
  if (oils.length === 0) unknown("nothing-there", { field: "material-required-hlb" });
  const parts = oils.map(({ material, mass }) => ({
    mass,
    requiredHlb: stated(material.requiredHlb, "material-required-hlb", { of: material.key }),
  }));
  return by("required-hlb", () => requiredHlb({ parts }));
}

/** The HLB of the surfactants in the outer phase, by their active parts. */
function hlbThere(outer: readonly Content[]): number {
  const parts = outer.flatMap(({ material: { hlb, strength }, mass }) =>
    hlb === undefined ? [] : [{ mass: mass * strength, hlb }],
  );
  if (massOf(parts) === 0) stated(undefined, "material-hlb");
  return by("required-hlb", () => hlbOfBlend({ parts }));
}

/** What the materials ask to be told of the oils; nothing where they state nothing of it. */
export function oilLimitsOf(run: Run): { readonly oilLimits?: PlanOilLimits } {
  const { formula, process } = run.job;
  const used = [...new Set(formula.lines.map(({ material }) => material))].flatMap(
    (key) => formula.materials[key] as Material,
  );
  const asksHlb =
    withOil(run).length > 0 && used.some(({ hlb, requiredHlb: wanted }) => hlb !== undefined || wanted !== undefined);
  const measured = used.filter(({ inductionTimes }) => inductionTimes !== undefined);
  if (!asksHlb && measured.length === 0) return {};
  const temperature = process.room;
  return {
    oilLimits: {
      ...(asksHlb && {
        hlb: {
          required: orNotKnown(() => hlbRequired(gelOf(run).charge.oil())),
          surfactants: orNotKnown(() => hlbThere(gelOf(run).charge.outer())),
        },
      }),
      inductionTimes: measured.map(
        ({ key: material, inductionTimes: readings = [] }): OilInduction => ({
          material,
          temperature,
          ...orNotKnown(() =>
            by("induction-time", () => inductionTime({ readings, temperature }), {
              field: "material-induction-times",
              of: material,
            }),
          ),
        }),
      ),
    },
  };
}
