import { type JobDocument, type Plan, prepareJob, runPlan } from "gelwright/plan";
import { changed, coldJob, exampleJob } from "../support/example.js";
import type { ValidInputs } from "../support/fuzz.js";
import { jobsByName } from "./jobs/jobs.js";

/** What is compared of a plan: the rest of it is not looked at. */
function comparedOf({ names: { vessel }, lots, scale, allowances }: Plan) {
  return { names: { vessel }, lots, scale, allowances };
}

/** A job with a jacket and a heater, for every kind of change. */
const jacketed: JobDocument = changed(exampleJob(), (draft) => {
  draft.vessel.jacket = { coolant: "15 °C", conductance: "45 W/K" };
});
const prepared = prepareJob(jacketed);
const cold = prepareJob(coldJob("beaker"));

const changes = [
  { change: "dose", material: "gelFormer", value: 0.1 },
  { change: "delivered", value: 20 },
  { change: "room", value: 23 },
  { change: "step", step: 2, field: "to", value: 88 },
  { change: "material", material: "fragrance", field: "massFractionMax", value: 0.01 },
  { change: "coolant", value: 12 },
  { change: "heater", value: 1500 },
];

/** Not met: the last pack is filled too near to setting. */
const answer = { id: "filled-before-it-sets", of: { step: 10 } };

/** The answers of a job that are not known, without what is not looked at. */
function unknownOf(name: string) {
  return runPlan(jobsByName()[name])
    .answers.filter(({ verdict }) => verdict === "not-known")
    .map(({ id, of, verdict, notKnown, figure: { min, max, assumptions } }) => ({
      id,
      of,
      verdict,
      notKnown,
      figure: { min, max, ...(assumptions && { assumptions }) },
    }));
}

const onLabel = prepareJob(
  changed(coldJob(), (draft) => {
    draft.exposure.materials[0].study = { pointOfDeparture: 100, bioavailability: 0.5 };
  }),
);

export const validInputs: ValidInputs = {
  answerQuestions: [
    [{ prepared, changes: [{ change: "room", value: 23 }], questions: ["delivered", "motor-power"] }],
    [{ prepared: cold, questions: ["maximum-oil-fraction"] }],
  ],
  comparePlans: [
    [{ plans: [runPlan(exampleJob("beaker")), runPlan(exampleJob())].map(comparedOf) }],
    [
      {
        plans: [runPlan(exampleJob("beaker")), runPlan(exampleJob())].map((plan) => ({
          ...comparedOf(plan),
          weighing: { lines: plan.weighing.lines.slice(0, 2) },
          cost: plan.cost,
          answers: plan.answers.slice(-2),
          particles: plan.particles,
        })),
        labels: ["bench", "plant"],
        documents: [{ room: "20 °C" }, { room: "22 °C" }],
      },
    ],
  ],
  measureNext: [[{ answers: unknownOf("starter-without-readings").slice(0, 4) }], [{ answers: [] }]],
  planSeries: [[{ prepared, changes: [{ change: "room", value: 23 }] }], [{ prepared: cold }]],
  exposureFor: [[{ prepared: onLabel }]],
  labelFor: [[{ prepared: onLabel }]],
  fingerprint: [[{ version: 1, name: "gel", shares: [0.1, null], isClear: true }]],
  prepareJob: [[exampleJob("beaker")], [coldJob("beaker")]],
  remedies: [[{ prepared, changes: [{ change: "room", value: 22 }], answer }]],
  sweep: [
    [
      {
        prepared,
        rows: [
          { label: "as planned", changes: [] },
          { label: "warm", changes: [{ change: "room", value: 23 }] },
        ],
        questions: ["delivered"],
      },
    ],
  ],
  runPlan: [[exampleJob("beaker")], [coldJob("beaker")]],
  runPrepared: [[{ prepared, changes }], [{ prepared: cold }]],
};
