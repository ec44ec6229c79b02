import { type Estimate, fitGelPoint, type GelPointLine, gelPointAtDose } from "../../gel/index.js";
import type { ByDose } from "../by-dose.js";
import type { Charge } from "../charge.js";
import type { Basis } from "../figure.js";
import type { Job } from "../job.js";
import type { Run } from "../state.js";
import { by, type Cell, cell, otherwise, remembered, where } from "../unknown.js";
import { gelOf } from "./droplets.js";

type Doses = NonNullable<Job["bench"]["doses"]>;

/** A temperature at which the finished gel sets or dissolves, by its dose. */
export interface PlanGelPoint {
  readonly what: "sets" | "dissolves";
  /** Gel former in the finished gel [0 to 1]. */
  readonly dose: number;
  /** [°C]. */
  readonly temperature: number;
  /** Measured at this dose, read between doses, or computed by ideal solubility. */
  readonly by: ByDose["by"];
  readonly basis: Basis;
  /** 95 % limits [°C] of the line through all doses, if it was read between them and there are four or more. */
  readonly line?: Estimate;
}

/** The lines through the doses. */
const linesOf: (doses: Doses) => Readonly<Record<"setsAt" | "dissolvesAt", Cell<GelPointLine>>> = remembered(
  (doses) => {
    const lineOf = (which: "setsAt" | "dissolvesAt"): Cell<GelPointLine> =>
      cell(() =>
        by("setting-line", () =>
          fitGelPoint({ points: doses.map((point) => ({ dose: point.gelFormer, temperature: point[which] })) }),
        ),
      );
    return { setsAt: lineOf("setsAt"), dissolvesAt: lineOf("dissolvesAt") };
  },
);

/** Where the finished gel sets and dissolves, as far as that is known. */
export function gelPointsOf(run: Run): readonly PlanGelPoint[] {
  return otherwise(
    () => {
      const { charge } = gelOf(run);
      return [...gelPoint(charge, "setsAt", "sets"), ...gelPoint(charge, "dissolvesAt", "dissolves")];
    },
    () => [],
  );
}

function gelPoint(
  charge: Charge,
  which: "setsAt" | "dissolvesAt",
  what: PlanGelPoint["what"],
): readonly PlanGelPoint[] {
  const dose = charge.dose();
  const { doses = [] } = charge.job.bench;
  return otherwise(
    () => {
      const found = which === "setsAt" ? charge.setting() : charge.dissolving();
      const hasLine = found.by === "between" && doses.length >= 4;
      const line = hasLine
        ? where("line", () => {
            const fitted = linesOf(doses)[which]();
            return by("setting-line", () => gelPointAtDose({ line: fitted, dose }));
          })
        : {};
      return [{ what, dose, ...found, ...line }];
    },
    () => [],
  );
}
