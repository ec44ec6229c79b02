import type { Check } from "../../formula/index.js";
import type { Moment } from "../moment.js";

/** Steps that cannot be done as written: a heater that does not reach, a room too warm to cool to. */
export function checkObstacles(moments: readonly Moment[]): readonly Check[] {
  return moments.flatMap(({ step, obstacle }, i) =>
    obstacle === undefined
      ? []
      : [
          {
            id: `step-can-be-done:${i + 1}`,
            verdict: "not met" as const,
            statement: `Step ${i + 1} ("${step.do}") cannot be done as written.`,
            value: obstacle,
            limit: "a step that this vessel can do",
            source: "heat balance of the step",
          },
        ],
  );
}
