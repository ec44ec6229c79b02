import type { Plan, PlanSeries } from "gelwright/plan";
import { formatQuantity } from "gelwright/units";
import type { Dot, Level, Panel, PanelArea } from "../in-page/panel.js";

const minute = 60;
const short = (value: number, unit: "°C" | "min" | "mm" | "kg") =>
  formatQuantity(value, unit, { significantDigits: 3 });

/** The plots of a plan, as far as it knows what they show. */
export function panelsOf(plan: Plan, series: PlanSeries): readonly Panel[] {
  return [...cooling(plan, series), ...additions(plan), ...settling(plan)];
}

/** Temperature against time, with where it sets and when particles may go in. */
function cooling({ timeline, gelPoints, particles, names }: Plan, { times, temperatures }: PlanSeries): Panel[] {
  const known = temperatures.flatMap((temperature) => (temperature === null ? [] : [temperature]));
  if (known.length < 2 || Math.max(...known) - Math.min(...known) < 1) return [];
  const heatOff = timeline.find(({ step }) => step.do === "take off the heat")?.timeEnd;
  const first = times[0] ?? 0;
  const last = times.at(-1) ?? 0;
  const areas = particles.flatMap(({ material, window }): PanelArea[] => {
    if (!window?.isOpen) return [];
    const { timeMin, timeMax, temperatureMin, temperatureMax } = window;
    const from = heatOff === undefined || timeMin === undefined ? first : heatOff + timeMin;
    const to = heatOff === undefined || timeMax === undefined ? last : heatOff + timeMax;
    const name = names.materials[material] ?? material;
    return [{ name, x: [from / minute, to / minute], y: [temperatureMin, temperatureMax] }];
  });
  const levels = gelPoints.map(
    ({ what, temperature }): Level => ({ name: `the gel ${what} at ${short(temperature, "°C")}`, y: temperature }),
  );
  const windows = areas.map(
    ({ name, y: [low, high], x: [from, to] }) =>
      `${name} may go in from ${short(high, "°C")} after ${short(from, "min")} to ${short(low, "°C")} after ${short(to, "min")}`,
  );
  const highest = `Up to ${short(Math.max(...known), "°C")}, the last pack full after ${short(last / minute, "min")}`;
  return [
    {
      title: "Temperature of the charge",
      description: `${[highest, ...levels.map(({ name }) => name), ...windows].join("; ")}.`,
      x: { label: "time (min)" },
      y: { label: "temperature (°C)" },
      lines: [{ points: times.map((time, i) => [time / minute, temperatures[i] ?? null]) }],
      areas,
      levels,
    },
  ];
}

/** The additions of oil, and the torque of the stirrer after each. */
function additions({ emulsion }: Plan): Panel[] {
  return (emulsion?.schedules ?? []).flatMap((schedule): Panel[] => {
    if (!("rows" in schedule)) return [];
    const { rows, phase } = schedule;
    const x = { label: "time since the first addition (min)", zero: true };
    const bars = rows.flatMap(({ mass, timeStart, timeEnd }) =>
      timeStart === undefined || timeEnd === undefined
        ? []
        : [{ x: [timeStart / minute, timeEnd / minute] as const, y: mass }],
    );
    const torques = rows.flatMap(({ torque, timeEnd }) =>
      torque === undefined || timeEnd === undefined ? [] : [[timeEnd / minute, torque] as const],
    );
    const masses = bars.map(({ y }) => y);
    return [
      ...(bars.length > 1
        ? [
            {
              title: `Additions of phase ${phase}`,
              description: `${bars.length} additions of ${short(Math.min(...masses), "kg")} to ${short(Math.max(...masses), "kg")}, each as wide as the time until the next.`,
              x,
              y: { label: "mass (kg)", zero: true },
              bars,
            },
          ]
        : []),
      ...(torques.length > 1
        ? [
            {
              title: `Torque of the stirrer while phase ${phase} goes in`,
              description: `From ${torques[0]?.[1].toPrecision(3)} N·m after the first addition to ${torques.at(-1)?.[1].toPrecision(3)} N·m after the last.`,
              x,
              y: { label: "torque (N·m)", zero: true },
              lines: [{ points: torques }],
            },
          ]
        : []),
    ];
  });
}

/** How far the largest particles settle, beside what is allowed. */
function settling({ particles, names, answers }: Plan): Panel[] {
  const dots = particles.flatMap(({ material, settles, settlesFirst }): Dot[] => {
    const name = names.materials[material] ?? material;
    const ways = [
      [settles?.inVessel, "in the vessel"],
      [settles?.inPack, "in the last pack"],
      [settlesFirst?.inPack, "in the first pack"],
    ] as const;
    return ways.flatMap(([distance, where]) =>
      distance === undefined || distance <= 0
        ? []
        : [{ x: name, y: 1000 * distance, name: `${where}: ${short(1000 * distance, "mm")}` }],
    );
  });
  if (dots.length === 0) return [];
  const limit = answers.find(({ id }) => id === "particles-settle")?.limit?.max?.value;
  const levels = limit === undefined ? [] : [{ name: `allowed: ${short(1000 * limit, "mm")}`, y: 1000 * limit }];
  return [
    {
      title: "How far the largest particles settle",
      description: `${[...dots.map(({ x, name }) => `${x} ${name}`), ...levels.map(({ name }) => name)].join("; ")}.`,
      x: { label: "", names: [...new Set(dots.map(({ x }) => String(x)))] },
      y: { label: "distance (mm)", log: true },
      dots,
      levels,
    },
  ];
}
