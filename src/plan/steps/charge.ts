import { fields, maybe, quantity, text, whole, word } from "../../formula/entry.js";
import { meet } from "../meeting-temperature.js";
import type { ChargeDocument } from "../step-documents.js";
import { wait } from "../stretch.js";
import { known } from "../unknown.js";
import { atItsSpeed, type StepKind } from "./kind.js";

/** The mix comes to one temperature at once, and then stands for as long as the charging takes. */
export const charge: StepKind<ChargeDocument> = {
  entries: [
    fields<ChargeDocument>({
      do: word("charge"),
      phase: text,
      share: maybe("process", quantity("massFraction", { above: 0, max: 1 })),
      mass: maybe("process", quantity("mass", { above: 0 })),
      at: maybe("process", quantity("temperature")),
      for: maybe("process", quantity("time", { above: 0 })),
      equalAdditions: maybe("process", whole(1)),
      speed: maybe("process", quantity("rotationalSpeed", { above: 0 })),
      note: maybe("identity", text),
    }),
  ],
  needs: ["not-filled"],
  oneOf: [["share", "mass"]],
  speed: atItsSpeed,
  run: (step, state, { job, charged: added, speed }) => {
    const { at = job.process.room, for: duration = 0 } = step;
    const warmed = at !== job.process.room;
    const before = warmed ? state.charge.as(state.charge.molten, true) : state.charge;
    const met = meet({ ...state, charge: before }, added, at);
    const mixed = before.with(added);
    const stood = wait({ ...state, charge: mixed, temperature: met }, known(duration), speed);
    return {
      ...stood,
      charge: mixed,
      basis: () => [{ kind: "law", key: "mixing-temperature" }, ...stood.basis()],
      assumptions: () => [
        "no-loss-while-charging",
        ...(job.vessel.wall || before.contents.length === 0 ? [] : (["vessel-wall-left-out"] as const)),
        ...stood.assumptions(),
      ],
    };
  },
};
