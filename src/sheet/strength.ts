import type { NotKnown, PlanFlow, PlanGelPoint, PlanParticle } from "../plan/index.js";
import { airSection } from "./air.js";
import { type Block, list, section, table } from "./blocks.js";
import { particleLine } from "./particles.js";
import { restsOn, type Sheet, whyNot } from "./render.js";
import { type Grade, type Graded, graded, gradeOf, type Table } from "./table.js";

/** When to add particles, and what holds them: only what the documents say something about. */
export function particlesOf(sheet: Sheet): readonly Block[] {
  const { labels } = sheet.words;
  const told = sheet.plan.particles.filter(hasMore);
  const isWindowAsked = told.some(({ window, windowNotKnown }) => window || windowNotKnown);
  return section(
    isWindowAsked ? labels.whenToAddParticles : labels.particles,
    list(told.map((particle) => particleLine(sheet, particle))),
  );
}

/** What the set gel will be like. */
export function gelOf(sheet: Sheet): readonly Block[] {
  const { plan, words } = sheet;
  const gel = [
    ...gelPointsOf(sheet),
    ...yieldStressThatCounts(sheet),
    ...graded("interpolated", yieldStressOfPoints(sheet)),
    ...graded("predicted", trialsOf(sheet)),
    ...graded("interpolated", flowOf(sheet)),
    ...graded("predicted", filmOf(sheet)),
  ];
  const uses = plan.flow && !("notKnown" in plan.flow) ? useTable(sheet, plan.flow) : undefined;
  return section(words.labels.gel, [...list(gel), ...(uses && uses.rows.length > 0 ? [table(uses)] : [])]);
}

/** Whether its air leaves. */
export function airOf(sheet: Sheet): readonly Block[] {
  return section(sheet.words.labels.air, list(airSection(sheet)));
}

/** Whether there is more to say of a particle than what the checks say. */
function hasMore(of: PlanParticle): boolean {
  const { window, windowNotKnown, settles, massFractionBeyond, largestSuspended, wettingOil } = of;
  return [window, windowNotKnown, settles, massFractionBeyond, largestSuspended, wettingOil].some(
    (part) => part !== undefined,
  );
}

/** How the temperature at which a gel sets or dissolves is come by. */
const gradeByWay: { readonly [Way in PlanGelPoint["by"]]: Grade } = {
  measured: "measured",
  between: "interpolated",
  ideal: "predicted",
};

/** Setting and dissolving in one sentence, if they rest on the same. */
function gelPointsOf(sheet: Sheet): readonly Graded[] {
  const { words, say } = sheet;
  const { gelPoint, gelPointOnLine, gelPoints, gelPointKinds, gelPointWays } = words.lines.gel;
  const told = ({ what: kind, temperature, line }: PlanGelPoint): string => {
    const what = gelPointKinds[kind];
    return line
      ? gelPointOnLine({ what, temperature, min: line.min, max: line.max }, say)
      : gelPoint({ what, temperature }, say);
  };
  const bases = ({ basis, by }: PlanGelPoint): string => `${restsOn(sheet, [basis])}, ${gelPointWays[by]}`;
  const points = sheet.plan.gelPoints;
  return [...new Set(points.map(bases))].flatMap((basis) => {
    const same = points.filter((point) => bases(point) === basis);
    const [{ dose, by }] = same as unknown as readonly [PlanGelPoint];
    return graded(gradeByWay[by], [gelPoints({ dose, points: same.map(told), basis }, say)]);
  });
}

/** The yield stress that counts. */
function yieldStressThatCounts(sheet: Sheet): readonly Graded[] {
  const { plan, words, say } = sheet;
  if (!plan.yieldStress) return [];
  const { min, value, max, basis: bases, assumptions } = plan.yieldStress;
  const basis = restsOn(sheet, bases, assumptions);
  const { yieldStress, yieldStressBetween } = words.lines.gel;
  const told = min === max ? yieldStress({ value, basis }, say) : yieldStressBetween({ min, value, max, basis }, say);
  return graded(gradeOf(bases), [told]);
}

function yieldStressOfPoints({ plan: { flow }, words, say }: Sheet): readonly string[] {
  if (!flow || "notKnown" in flow || !flow.yieldStress) return [];
  const { yieldStressOfPoints: alone, yieldStressBeside, conventions } = words.lines.gel;
  const { value } = flow.yieldStress;
  const convention = conventions[flow.yieldStress.convention];
  const { otherConventions: others } = flow;
  return [others ? yieldStressBeside({ value, convention, ...others }, say) : alone({ value, convention }, say)];
}

function trialsOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  if (!plan.strength) return [];
  const { of, dose, expected, target, doseTarget } = plan.strength;
  const lines = words.lines.gel;
  const kind = lines.strengthKinds[of];
  const why = ({ notKnown }: NotKnown): string => whyNot(sheet, notKnown);
  return [
    "notKnown" in expected
      ? lines.expectedNotKnown({ kind, reason: why(expected) })
      : lines.expected({ kind, dose, ...expected }, say),
    ...(target === undefined || !doseTarget
      ? []
      : [
          "notKnown" in doseTarget
            ? lines.doseNotKnown({ target, reason: why(doseTarget) }, say)
            : lines.doseForTarget({ target, ...doseTarget }, say),
        ]),
  ];
}

function flowOf(sheet: Sheet): readonly string[] {
  const { plan, words, say } = sheet;
  const { flow } = plan;
  const lines = words.lines.gel;
  if (!flow) return [];
  if ("notKnown" in flow) return [lines.flowNotKnown({ reason: whyNot(sheet, flow.notKnown) })];
  const { temperature, candidates, nozzle } = flow;
  const model = lines.models[flow.model];
  const parameters = Object.entries(flow.parameters).map(([key, value]) => {
    const { name = key, unit = "" } = lines.parameters[key] ?? {};
    return lines.parameter({ name, value, unit }, say);
  });
  const fitted =
    candidates > 1 ? lines.modelOfSeveral({ model, candidates, parameters }, say) : lines.model({ model, parameters });
  return [lines.flow({ temperature, model: fitted }, say), ...(nozzle ? [lines.nozzle(nozzle, say)] : [])];
}

function filmOf({ plan: { films }, words, say }: Sheet): readonly string[] {
  const { thicknessMax: thickness } = films;
  return thickness === undefined ? [] : [words.lines.gel.filmThatStays({ thickness }, say)];
}

function useTable({ words, say }: Sheet, { uses, nozzle }: Exclude<PlanFlow, NotKnown>): Table {
  const { inUse, shearRate, viscosity, throughTheNozzle } = words.labels;
  const rows = [
    ...uses.map(({ use, usual, ...figures }) => ({
      name: use ?? say.given(usual, (code) => words.uses[code]),
      ...figures,
    })),
    ...(nozzle ? [{ name: throughTheNozzle, ...nozzle }] : []),
  ];
  return {
    columns: [inUse, shearRate, viscosity],
    rows: rows.map((row) => [
      row.name,
      say.shearRate(row.shearRate, 2),
      row.beyondReadings
        ? { text: words.lines.gel.viscosityBeyond(row, say), grade: "predicted" }
        : { text: say.pascalSeconds(row.viscosity, 2), grade: "interpolated" },
    ]),
  };
}
