import type { NotKnown, Plan, PlanWait } from "../plan/index.js";
import { type Block, form, list } from "./blocks.js";
import { type Sheet, whyNot } from "./render.js";

type Wait = PlanWait | NotKnown | undefined;

/** Whether packs are closed and moved as they are filled: nothing in them is warm, or sets. */
export function isHandledAtOnce({ afterFilling: { capping, moving } }: Plan): boolean {
  return isAtOnce(capping) && (moving === undefined || isAtOnce(moving));
}

/** Whether packs need no wait after they are filled. */
export function isAtOnce(wait: Wait): boolean {
  return wait !== undefined && !("notKnown" in wait) && wait.firstPack === 0 && wait.lastPack === 0;
}

/** When packs may be closed and moved, and how long they rest: one table for the first pack and the last. */
export function afterwards(sheet: Sheet): readonly Block[] {
  const { plan, words, say } = sheet;
  const { labels, lines } = words;
  const { capping, moving, temperatureCapping, temperatureMoving } = plan.afterFilling;
  const { cooledTo, centreAt, trialPack, afterFull, restOf, timesNotKnown } = lines.kettle;
  const rest = plan.timeline.find(({ step, inPacks }) => inPacks && step.do === "rest");
  const duration = rest && "for" in rest.step ? rest.step.for : undefined;
  if (isHandledAtOnce(plan) && duration === undefined) return [];
  const cellOf = (wait: Wait, pack: "firstPack" | "lastPack"): string =>
    wait === undefined || "notKnown" in wait
      ? say.notKnown
      : wait[pack] === 0
        ? labels.atOnce
        : afterFull({ duration: inMinutes(wait[pack]) }, say);
  const row = (what: string, when: string, wait: Wait): readonly string[] => [
    ...[what, when, cellOf(wait, "firstPack"), cellOf(wait, "lastPack")],
    ...["", ""],
  ];
  const until = temperatureMoving === undefined ? trialPack() : centreAt({ temperature: temperatureMoving }, say);
  const lacking = [capping, moving].flatMap((wait) =>
    wait && "notKnown" in wait ? [whyNot(sheet, wait.notKnown)] : [],
  );
  return [
    form({
      columns: [labels.afterFilling, labels.packIs, labels.firstPack, labels.lastPack, labels.doneAt, labels.by],
      rows: [
        row(labels.close, cooledTo({ temperature: temperatureCapping }, say), capping),
        ...(moving === undefined ? [] : [row(labels.moveNotBefore, until, moving)]),
        ...(rest === undefined || duration === undefined
          ? []
          : [[restOf({ step: rest.number }, say), "", "", afterFull({ duration }, say), "", ""]]),
      ],
    }),
    ...(lacking.length === 0 ? [] : list([timesNotKnown({ reasons: [...new Set(lacking)] })])),
  ];
}

/** A wait of minutes in whole ones, rounded up: the same wherever the sheet names it. */
export function inMinutes(seconds: number): number {
  return seconds < 60 ? seconds : 60 * Math.ceil(seconds / 60 - 1e-9);
}
