import { record } from "../guards.js";
import { maxOf, minOf } from "../numeric/extremes.js";
import type { AdditionRow, PlanSchedule, PlanSeries } from "../plan/index.js";
import type { Block } from "./blocks.js";
import { type Axis, type Line, type Region, roundTicks, svgOf, timeTicks } from "./chart.js";
import type { Sheet } from "./render.js";
import { soundlyOf } from "./sound.js";

/** The course of the batch as drawings: temperature with the windows for adding, or additions and torque. */
export function courseFigures(sheet: Sheet): readonly Block[] {
  const { plan, series } = sheet;
  const isHeated = plan.timeline.some(({ step }) => step.do === "heat");
  const schedules = (plan.emulsion?.schedules ?? []).filter((one): one is PlanSchedule => !("notKnown" in one));
  return [
    ...(series === undefined
      ? []
      : soundlyOf(record(series, "series"), "series", (sound) => (isHeated ? temperatures(sheet, sound) : []))),
    ...schedules.flatMap((of) => additions(sheet, of)),
  ];
}

function timeAxis({ words, say }: Sheet, min: number, max: number): Axis {
  return { label: words.labels.time, min, max, ticks: timeTicks(min, max), write: say.clock };
}

/** Temperature against time until the last pack is full, with the temperatures at which particles may go in. */
function temperatures(sheet: Sheet, { times, temperatures: read }: PlanSeries): readonly Block[] {
  const { plan, words, say } = sheet;
  const { courseOfTemperature, setting } = words.lines.figures;
  const points = times.flatMap((time, i) => {
    const temperature = read[i];
    return temperature === null || temperature === undefined ? [] : [[time, temperature] as const];
  });
  const end = maxOf(points.map(([time]) => time));
  if (points.length < 2 || !(end > 0)) return [];
  const all = points.map(([, temperature]) => temperature);
  const ticks = roundTicks(minOf(all) - 5, maxOf(all) + 5);
  const y: Axis = {
    label: words.labels.temperature,
    min: minOf(all) - 5,
    max: maxOf(all) + 5,
    ticks,
    write: (value) => say.celsius(value, 0),
  };
  const sets = plan.gelPoints.find(({ what }) => what === "sets")?.temperature;
  const isSettingShown = sets !== undefined && sets > y.min && sets < y.max;
  const lines: readonly Line[] = [
    { points },
    ...(isSettingShown
      ? [{ points: [[0, sets] as const, [end, sets] as const], isDashed: true, label: setting() }]
      : []),
  ];
  const stretches = plan.timeline.flatMap(({ number, timeStart: from, timeEnd: to, inPacks, step }) =>
    from === undefined || to === undefined || (inPacks && step.do !== "fill")
      ? []
      : [{ from, to, label: String(number) }],
  );
  const caption = courseOfTemperature({ hasWindows: windows(sheet, end).length > 0 });
  const x = timeAxis(sheet, 0, end);
  const svg = svgOf({ title: caption, x, y, lines, regions: windows(sheet, end), stretches });
  return [{ kind: "figure", svg, caption }];
}

/** When and at which temperature each particle may go in. */
function windows({ plan, say }: Sheet, end: number): readonly Region[] {
  return plan.particles.flatMap(({ material, window, step = plan.timeline.length }) => {
    if (!window?.isOpen) return [];
    const off = plan.timeline.filter((one) => one.step.do === "take off the heat" && one.number < step).at(-1)?.timeEnd;
    const { temperatureMax: top, temperatureMin: foot, timeMin, timeMax } = window;
    const from = off === undefined || timeMin === undefined ? 0 : Math.min(off + timeMin, end);
    const to = off === undefined || timeMax === undefined ? end : Math.min(off + timeMax, end);
    const corners = [
      [from, top],
      [to, top],
      [to, foot],
      [from, foot],
    ] as const;
    return [{ corners, label: say.material(material) }];
  });
}

/** Oil in the vessel, and torque with its band, against time; against the number of the addition where times are not known. */
function additions(sheet: Sheet, of: PlanSchedule): readonly Block[] {
  const { plan, words, say } = sheet;
  const { courseOfOil, courseOfTorque } = words.lines.figures;
  const { rows, phase } = of;
  if (rows.length < 2) return [];
  const begins = plan.timeline[of.step - 1]?.timeStart;
  const ends = rows.map(({ timeEnd, timeStart }) => timeEnd ?? timeStart);
  const isTimed = begins !== undefined && ends.every((time) => time !== undefined);
  const at = (i: number): number => (isTimed ? begins + (ends[i] as number) : i + 1);
  const start = isTimed ? begins : 0;
  const last = at(rows.length - 1);
  const numbers: Axis = {
    label: words.labels.number,
    min: 0,
    max: last,
    ticks: roundTicks(0, last, 10).filter(Number.isInteger),
    write: String,
  };
  const x = isTimed ? timeAxis(sheet, start, last) : numbers;
  const draw = (caption: string, y: Axis, lines: readonly Line[], regions: readonly Region[]): Block => ({
    kind: "figure",
    svg: svgOf({ title: caption, x, y, lines, regions }),
    caption,
  });
  const oil = rows.map((row, i) => [at(i), row.massOil] as const);
  const { massOil, mass } = rows[0] as AdditionRow;
  const first = massOil - mass;
  const torque = torqueOf(rows, at);
  return [
    draw(
      courseOfOil({ phase }),
      upright(words.labels.oilIn, [first, ...oil.map(([, mass]) => mass)], (value) => say.kilograms(value)),
      [{ points: [[start, first] as const, ...oil] }],
      [],
    ),
    ...(torque.points.length < 2
      ? []
      : [
          draw(
            courseOfTorque({ phase }),
            upright(words.labels.torque, [0, ...torque.all], (value) => say.newtonMetres(value)),
            [{ points: torque.points }],
            torque.band,
          ),
        ]),
  ];
}

/** An axis over all values. */
function upright(label: string, values: readonly number[], write: Axis["write"]): Axis {
  const [min, max] = [minOf(values), maxOf(values)];
  const from0: Axis["write"] = (value) => (value === 0 ? "0" : write(value));
  return { label, min, max: max > min ? max : min + 1, ticks: roundTicks(min, max), write: from0 };
}

/** The torque along the additions, with the region in which it lies. */
function torqueOf(rows: readonly AdditionRow[], at: (i: number) => number) {
  const known = rows.flatMap(({ torque, torqueMin: min, torqueMax: max }, i) =>
    torque === undefined ? [] : [{ x: at(i), torque, min: min ?? torque, max: max ?? torque }],
  );
  const upper = known.map(({ x, max }) => [x, max] as const);
  const lower = known.map(({ x, min }) => [x, min] as const).reverse();
  return {
    points: known.map(({ x, torque }) => [x, torque] as const),
    all: known.flatMap(({ min, max }) => [min, max]),
    band: known.some(({ min, max }) => max > min) ? [{ corners: [...upper, ...lower] }] : [],
  };
}
