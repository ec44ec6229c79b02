import { atLeast, type Figure } from "../figure.js";
import type { Job } from "../job.js";
import { doseForTarget, doseOfProduct, strengthByTrials } from "../parts/trials.js";
import { yieldStressFigure } from "../parts/yield-stress.js";
import { otherwise } from "../unknown.js";
import { moreGelFormer } from "./levers.js";
import { asks, type Question } from "./question.js";

type Target = NonNullable<Job["bench"]["strengthTrials"]> & { readonly target: number };

/** Questions about the strength of the set gel. */
export const strengthQuestions: readonly Question[] = [
  asks<Target, Target>({
    id: "gel-strength",
    quantity: "stress",
    quantifier: "every",
    subjects: ({ job: { bench } }) => {
      const { strengthTrials: trials } = bench;
      return trials?.target === undefined ? [] : [{ ...trials, target: trials.target }];
    },
    of: () => ({}),
    states: (trials) => [trials],
    figure: ({ of }, _trials, run): Figure =>
      of === "yield stress" ? yieldStressFigure(run) : strengthByTrials(run.job),
    levers: (_trials, run) => moreGelFormer(run),
    limit: ({ target }) => atLeast(target, [{ kind: "stated", key: "bench-strength-trials" }]),
    beside: ({ of }, _trials, { job }) => ({
      of,
      dose: doseOfProduct(job),
      ...otherwise(
        () => {
          const { min, value, max } = doseForTarget(job);
          return { doseTargetMin: min, doseTarget: value, doseTargetMax: max };
        },
        () => ({}),
      ),
    }),
  }),
];
