import { minOf } from "../numeric/extremes.js";
import type { PlanSchedule, WeighingLine } from "../plan/index.js";
import { type Block, form, list, section } from "./blocks.js";
import { isInPaste, takenFrom } from "./pastes.js";
import { isDust, makingPremixes } from "./premixes.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";

/** What to weigh, with room for the lots of the materials and for two signatures, and what to make ready of it. */
export function weighing(sheet: Sheet): readonly Block[] {
  return section(sheet.words.labels.weighTitle, [
    form(weighingTable(sheet)),
    total(sheet),
    ...list([...makingPremixes(sheet), ...wettings(sheet), ...mixedBeforehand(sheet)]),
  ]);
}

function weighingTable({ plan, words, say }: Sheet): Table {
  const { phase, material, weigh, balance, rightBetween, lotOfMaterial, weighed, by, checkedBy } = words.labels;
  const { portions: inPortions } = words.lines.batch;
  const { forVessel, forPaste, forPremix, dusty } = words.lines.kettle;
  const toWeigh = ({ mass, portions = [], increment }: Weighed): string => {
    const whole = say.weighed(mass, increment);
    // Where one weighing would be too much for the balance.
    return portions.length > 1
      ? inPortions({ whole, portions: portions.map((portion) => say.weighed(portion, increment)) })
      : whole;
  };
  // Both ends in the unit of the mass: 0.995 to 1.005 kg, not 995 g to 1.005 kg.
  const accepted = ({ mass, increment, tolerance: { min, max } }: Weighed): string =>
    say.range(say.weighed(min, increment, mass), say.weighed(max, increment, mass));
  return {
    columns: [phase, material, weigh, balance, rightBetween, lotOfMaterial, weighed, by, checkedBy],
    rows: plan.weighing.lines.flatMap((line) => {
      const row = (what: string, of: Weighed): readonly string[] => [
        ...[line.phase, what, toWeigh(of), of.balance, accepted(of)],
        ...["", "", "", ""],
      ];
      const own = say.material(line.material);
      const name = isDust(plan, line.material) ? dusty({ material: own }) : own;
      const paste = takenFrom(plan, line.phase, line.material);
      const apart = plan.weighing.premixes.flatMap(({ phase: into, name: premix, lines }) =>
        lines.flatMap(({ material: key, weighing: of }) =>
          into === line.phase && key === line.material && of ? [row(forPremix({ material: name, premix }), of)] : [],
        ),
      );
      if (apart.length > 0) return [...(line.left ? [row(forVessel({ material: name }), line.left)] : []), ...apart];
      if (!paste) return [row(name, line)];
      return [row(forVessel({ material: name }), paste.left), row(forPaste({ material: name }), paste.keptBack)];
    }),
  };
}

/** One weighing. */
type Weighed = Pick<WeighingLine, "mass" | "balance" | "increment" | "tolerance"> &
  Partial<Pick<WeighingLine, "portions">>;

/** What the lines add up to, on the finest of the balances. */
function total({ plan, words, say }: Sheet): Block {
  const { lines, total: whole } = plan.weighing;
  const finest = minOf(lines.map(({ increment }) => increment));
  return { kind: "text", strong: words.lines.batch.total({ total: say.weighed(whole, finest) }), text: "" };
}

/** What there is to know of pastes; particles for which no single line gives the oil are wetted with some that is weighed already. */
function wettings({ plan, words, say }: Sheet): readonly string[] {
  const { wetBeforehand, oilOfPaste } = words.lines.kettle;
  const { premixes } = plan.weighing;
  // What is in a premix is wetted there.
  const isWetted = (key: string): boolean =>
    plan.weighing.lines.some(({ phase }) => isInPaste(plan, phase, key)) ||
    premixes.some(({ lines }) => lines.some(({ material }) => material === key));
  return [
    ...(plan.pastes?.some(({ phase, oil }) => phase !== oil.phase) ? [oilOfPaste()] : []),
    ...plan.particles.flatMap(({ material, wettingOil: mass }) =>
      mass === undefined || isWetted(material) ? [] : [wetBeforehand({ material: say.material(material), mass }, say)],
    ),
  ];
}

/** Phases of several materials that go in by parts, and so have to be one mix before. */
function mixedBeforehand({ plan, words }: Sheet): readonly string[] {
  const schedules = (plan.emulsion?.schedules ?? []).filter((one): one is PlanSchedule => !("notKnown" in one));
  return schedules.flatMap(({ phase, form: way }) => {
    const { length } = plan.weighing.lines.filter((line) => line.phase === phase);
    if (length < 2) return [];
    const { mixForPump, mixBeforehand } = words.lines.kettle;
    return [(way === "stream" ? mixForPump : mixBeforehand)({ phase })];
  });
}
