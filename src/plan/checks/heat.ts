import type { Check, Material } from "../../formula/index.js";
import type { heatedWalls } from "../heated-wall.js";
import type { Job } from "../job.js";
import type { Moment } from "../moment.js";
import { say } from "../say.js";

/** How warm one material was at its warmest, and where. */
interface Warmest {
  readonly material: Material;
  /** Of what is known [°C]; minus infinity where nothing is. */
  readonly temperature: number;
  readonly step: number;
  /** Whether its temperature is known all the way. */
  readonly known: boolean;
}

/** Oils that are to be spared go in off the heat. An antioxidant that is charged early is right and is passed over. */
export function checkHeatSensitive(moments: readonly Moment[]): readonly Check[] {
  const toSpare = (moment: Moment): readonly Material[] =>
    moment.after.contents
      .map(({ material }) => material)
      .filter((material) => material.heatSensitive && material.function !== "antioxidant");
  const all = new Set(moments.flatMap(toSpare));
  if (all.size === 0) return [];
  const onHeat = [...all].flatMap((material) => {
    const step = moments.findIndex((moment) => moment.after.onHeat && toSpare(moment).includes(material));
    return step < 0 ? [] : [`${material.name} (step ${step + 1})`];
  });
  return [
    {
      id: "heat-sensitive-off-the-heat",
      verdict: onHeat.length === 0 ? "met" : "not met",
      statement:
        onHeat.length === 0
          ? `What is to be spared goes in off the heat: ${namesOf([...all])}.`
          : "Charge what is to be spared after the vessel is off the heat.",
      value: onHeat.length === 0 ? "none on the heat" : `on the heat: ${onHeat.join(", ")}`,
      limit: "none on the heat",
      source: "the formula's own words on each material",
    },
  ];
}

/** Every material stays at or below the highest temperature that is stated for it: at the wall while heated, and in the melt it is poured into. */
export function checkMaximumTemperatures(moments: readonly Moment[], walls: Walls): readonly Check[] {
  const found = warmestOf(moments, (moment, i) =>
    moment.step.do === "heat" ? temperatureOf(walls[i]) : warmestIn(moment),
  );
  // Where a wall is not known, the charge itself may already be too warm.
  const inCharge = new Map(warmestOf(moments, warmestIn).map((warmest) => [warmest.material.key, warmest]));
  return found.flatMap(({ material, known, ...atWall }) => {
    const limit = material.temperatureMax;
    if (limit === undefined) return [];
    const { temperature, step } = known ? atWall : (inCharge.get(material.key) ?? atWall);
    const verdict = temperature > limit ? "not met" : known ? "met" : "not known";
    return [
      {
        id: `maximum-temperature:${material.key}`,
        verdict,
        statement: {
          met: `${material.name} stays within its highest temperature.`,
          "not met": `${material.name} gets too warm in step ${step + 1}: heat less, or charge it later.`,
          "not known": `How warm ${material.name} gets is not known all the way: a temperature or the heated wall's is missing.`,
        }[verdict],
        value: Number.isFinite(temperature) ? `${say.celsius(temperature)}${known ? "" : " at least"}` : "not known",
        limit: say.celsius(limit),
        source: material.sources["limits"] ?? "stated in the formula",
      } as const,
    ];
  });
}

/** In the bulk and at the wall, every part of the charge stays well below its own flash point. */
export function checkFlashPoints(moments: readonly Moment[], walls: Walls, job: Job): readonly Check[] {
  // What is poured into a hot melt meets it before it has cooled it.
  const inBulk = flashCheck("flash-point-in-the-charge", "in the charge", job, warmestOf(moments, warmestIn));
  const heated = walls.filter((wall) => wall !== undefined);
  if (heated.length === 0) return [inBulk];
  const unknown = heated.find((wall) => typeof wall === "string");
  if (unknown !== undefined)
    return [
      inBulk,
      {
        id: "flash-point-at-the-wall",
        verdict: "not known",
        statement: `The heated wall is hotter than the charge. How hot, is not known: ${unknown}.`,
        value: "not known",
        limit: `${say.kelvins(job.process.flashPointMargin)} below each flash point`,
        source: "heat passes to the charge only from a hotter wall",
      },
    ];
  const hottest = moments.filter((moment) => moment.step.do === "heat");
  const temperatures = heated.map(temperatureOf);
  const from = heated.flatMap((wall) => (typeof wall === "string" ? [] : [wall.from]));
  const atWall = flashCheck(
    "flash-point-at-the-wall",
    "at the heated wall",
    job,
    warmestOf(hottest, (_moment, i) => temperatures[i]),
  );
  return [inBulk, { ...atWall, source: `${atWall.source}; the wall by ${[...new Set(from)].join(" and ")}` }];
}

function flashCheck(id: string, where: string, job: Job, warmest: readonly Warmest[]): Check {
  const margin = job.process.flashPointMargin;
  const burnable = warmest.filter(
    ({ material }) =>
      material.temperatureFlash !== undefined || material.function === "oil" || material.function === "fragrance",
  );
  const unstated = burnable.filter(({ material }) => material.temperatureFlash === undefined);
  const stated = burnable.flatMap((entry) =>
    entry.material.temperatureFlash === undefined || entry.temperature === Number.NEGATIVE_INFINITY
      ? []
      : [{ ...entry, room: entry.material.temperatureFlash - entry.temperature }],
  );
  const nearest = stated.sort((one, other) => one.room - other.room)[0];
  const near = stated.filter(({ room }) => room < margin);
  const isKnown = unstated.length === 0 && nearest !== undefined && burnable.every(({ known }) => known);
  const verdict = near.length > 0 ? "not met" : isKnown ? "met" : "not known";
  const statement = {
    "not met": `Too near a flash point ${where}: ${namesOf(near.map(({ material }) => material))}. Heat less, or charge it later.`,
    "not known":
      unstated.length > 0 || burnable.length === 0
        ? `No flash point is stated for ${namesOf(unstated.map(({ material }) => material)) || "anything in the vessel"}.`
        : `How warm it gets ${where} is not known all the way.`,
    met: `Nothing comes near its flash point ${where}; nearest is ${nearest?.material.name}.`,
  }[verdict];
  return {
    id,
    verdict,
    statement,
    value: nearest
      ? `${say.celsius(nearest.temperature)}, ${say.kelvins(nearest.room)} below ${say.celsius(nearest.temperature + nearest.room)}`
      : "not known",
    limit: `${say.kelvins(margin)} below each flash point`,
    source: "distance stated in the process, or 30 K: common practice, no source",
  };
}

type Walls = ReturnType<typeof heatedWalls>;

function temperatureOf(wall: Walls[number]): number | undefined {
  return typeof wall === "string" ? undefined : wall?.temperature;
}

/** The warmest that is met in the charge in one step: what is poured in meets the melt before it has cooled it. */
function warmestIn({ before, after }: Moment): number | undefined {
  if (after.temperature === undefined) return undefined;
  if (before.contents.length === 0) return after.temperature;
  return before.temperature === undefined ? undefined : Math.max(before.temperature, after.temperature);
}

function warmestOf(
  moments: readonly Moment[],
  temperatureAt: (moment: Moment, step: number) => number | undefined,
): readonly Warmest[] {
  const warmest = new Map<string, Warmest>();
  moments.forEach((moment, step) => {
    const found = temperatureAt(moment, step);
    for (const { material } of moment.after.contents) {
      const before = warmest.get(material.key) ?? {
        material,
        temperature: Number.NEGATIVE_INFINITY,
        step,
        known: true,
      };
      const known = before.known && found !== undefined;
      const warmer = found !== undefined && found > before.temperature;
      warmest.set(material.key, warmer ? { material, temperature: found, step, known } : { ...before, known });
    }
  });
  return [...warmest.values()];
}

function namesOf(materials: readonly Material[]): string {
  return [...new Set(materials.map((material) => material.name))].join(", ");
}
