import { fields, maybe, quantity, text, whole, word } from "../../formula/entry.js";
import { mixingTemperature } from "../../heat/index.js";
import { wait } from "../balance.js";
import { Charge } from "../charge.js";
import type { Content } from "../contents.js";
import type { State } from "../state.js";
import type { ChargeDocument } from "../step-documents.js";
import { by, cell, known } from "../unknown.js";
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
      basis: () => [{ kind: "law", key: "mixing-temperature" }, ...(stood.basis?.() ?? [])],
      assumptions: () => [
        "no-loss-while-charging",
        ...(job.vessel.wall || before.contents.length === 0 ? [] : (["vessel-wall-left-out"] as const)),
        ...(stood.assumptions?.() ?? []),
      ],
    };
  },
};

/** The temperature at which an addition and what is in the vessel meet, with whatever melts as they do [°C]. */
export function meet(state: State, added: readonly Content[], at: number): () => number {
  const { charge: inside } = state;
  return cell(() => {
    const temperature = inside.contents.length === 0 ? inside.job.process.room : state.temperature();
    if (temperature === at) return temperature;
    const more = new Charge(inside.job, added, inside.molten, inside.heated);
    const charges = [
      ...inside.partsWithWall().map((part) => ({ ...part, temperature })),
      ...more.parts().map((part) => ({ ...part, temperature: at })),
    ];
    return by("mixing-temperature", () => mixingTemperature({ charges }));
  });
}
