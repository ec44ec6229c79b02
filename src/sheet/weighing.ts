import { minOf } from "../numeric/extremes.js";
import type { PlanSchedule, WeighingLine } from "../plan/index.js";
import { type Block, form, list, section } from "./blocks.js";
import type { Sheet } from "./render.js";
import type { Table } from "./table.js";

/** What to weigh, with room for the lots of the materials and for two signatures, and what to make ready of it. */
export function weighing(sheet: Sheet): readonly Block[] {
  return section(sheet.words.labels.weighTitle, [
    form(weighingTable(sheet)),
    total(sheet),
    ...list([...premixes(sheet), ...wettings(sheet), ...mixedBeforehand(sheet)]),
  ]);
}

function weighingTable({ plan, words, say }: Sheet): Table {
  const { phase, material, weigh, balance, rightBetween, lotOfMaterial, weighed, by, checkedBy } = words.labels;
  const { portions: inPortions } = words.lines.batch;
  const toWeigh = ({ mass, portions, increment }: WeighingLine): string => {
    const whole = say.weighed(mass, increment);
    // Where one weighing would be too much for the balance.
    return portions.length > 1
      ? inPortions({ whole, portions: portions.map((portion) => say.weighed(portion, increment)) })
      : whole;
  };
  // Both ends in the unit of the mass: 0.995 to 1.005 kg, not 995 g to 1.005 kg.
  const accepted = ({ mass, increment, tolerance: { min, max } }: WeighingLine): string =>
    say.range(say.weighed(min, increment, mass), say.weighed(max, increment, mass));
  return {
    columns: [phase, material, weigh, balance, rightBetween, lotOfMaterial, weighed, by, checkedBy],
    rows: plan.weighing.lines.map((line) => [
      line.phase,
      say.material(line.material),
      toWeigh(line),
      line.balance,
      accepted(line),
      ...["", "", "", ""],
    ]),
  };
}

/** What the lines add up to, on the finest of the balances. */
function total({ plan, words, say }: Sheet): Block {
  const { lines, total: whole, totalTarget: mass, onGrid } = plan.weighing;
  const finest = minOf(lines.map(({ increment }) => increment));
  const { total: toWeigh, totalWouldDo } = words.lines.batch;
  const [weighed, needed] = [say.weighed(whole, finest), say.weighed(mass, finest)];
  return {
    kind: "text",
    strong: toWeigh({ total: weighed }),
    // Rounded to the balance, the mass needed may read the same as the total: it is then said once.
    text: onGrid || needed === weighed ? "" : totalWouldDo({ mass: needed }),
  };
}

/** Premixes, in the order in which they can be made, with what is weighed into each. */
function premixes({ plan, words, say }: Sheet): readonly string[] {
  const { lines, premixes: made } = plan.weighing;
  const nameOf = (key: string): string => made.find(({ premix }) => premix === key)?.name ?? key;
  return made.map(({ name, phase, lines: own, premixes: inside, total: whole }) => {
    const increments = own.flatMap(({ material }) =>
      lines.filter((line) => line.phase === phase && line.material === material).map(({ increment }) => increment),
    );
    const finest = minOf(increments);
    const weighed = (mass: number): string =>
      Number.isFinite(finest) ? say.weighed(mass, finest) : say.kilograms(mass);
    const named = (what: string, mass: number): string =>
      words.lines.kettle.massOf({ material: what, mass: weighed(mass) });
    const materials = [
      ...own.map(({ material, mass }) => named(say.material(material), mass)),
      ...inside.map(({ premix, mass }) => named(nameOf(premix), mass)),
    ];
    return words.lines.kettle.premixBeforehand({ name, phase, materials, total: weighed(whole) });
  });
}

/** Particles that are wetted before they go in, with oil that is weighed already. */
function wettings({ plan, words, say }: Sheet): readonly string[] {
  return plan.particles.flatMap(({ material, wettingOil: mass }) =>
    mass === undefined ? [] : [words.lines.kettle.wetBeforehand({ material: say.material(material), mass }, say)],
  );
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
