import { gelWithWater, stillAirCoefficient, waterTakenUpAfter } from "../../gel/index.js";
import { massOf } from "../contents.js";
import { gelOf, withOil } from "../parts/droplets.js";
import { gelOfKilogram } from "../parts/gel-of-kilogram.js";
import type { Note } from "../parts/note.js";
import type { Run } from "../state.js";
import { by, orNotKnown, stated, where } from "../unknown.js";

/** Air at rest over an opened gel [m], where nothing says how deep it is: common practice, no source. */
const usualGap = 0.015;

/** Water that one pack takes up from the room while it stands open [kg], by both laws of water activity. */
function takenUp(run: Run): { readonly min: number; readonly max: number } {
  const { charge } = gelOf(run);
  const { bench, pack, process } = run.job;
  const opened = stated(bench.inUse?.opened, "in-use-opened");
  const { relativeHumidity, for: duration, gap = usualGap } = opened;
  const area = opened.area ?? (Math.PI / 4) * stated(stated(pack, "pack").content, "pack-content").diameter ** 2;
  const mass = run.scaled.lot.delivered / stated(run.scaled.packsOfLot, "pack-packs");
  const { massGlycerin, massWater } = gelOfKilogram(charge, process.room);
  const share = massOf([...charge.outer(), ...charge.oil()]) / charge.mass;
  const { norrish, wilson } = by("water-uptake", () => {
    const coefficient = stillAirCoefficient({ gap, temperature: process.room });
    return waterTakenUpAfter({
      massGlycerin: massGlycerin * mass * share,
      massWater: massWater * mass * share,
      ...{ area, coefficient, relativeHumidity, duration },
      temperature: process.room,
    });
  });
  return { min: Math.min(norrish, wilson), max: Math.max(norrish, wilson) };
}

/** How far the indices are apart once so much water is in a pack, where it has taken some up. */
function mismatchWith(run: Run, { min, max }: { readonly min: number; readonly max: number }) {
  const gel = gelOfKilogram(gelOf(run).charge, run.job.process.room);
  const mass = run.scaled.lot.delivered / stated(run.scaled.packsOfLot, "pack-packs");
  const found = [min, max].map((water) => {
    // What is given off leaves less water behind.
    const massWater = gel.massWater + Math.min(0, water / mass);
    const massWaterAdded = Math.max(0, water / mass);
    return by("gel-with-water", () => gelWithWater({ ...gel, massWater, massWaterAdded })).mismatch;
  });
  return { min: Math.min(...found), max: Math.max(...found) };
}

/** What an opened pack takes up from the room, where it is stated how it stands there. */
export function openedNotes(run: Run): readonly Note[] {
  const { opened } = run.job.bench.inUse ?? {};
  if (!opened) return [];
  return withOil(run).map(
    (): Note => ({
      code: "water-after-opening",
      duration: opened.for,
      water: orNotKnown(() => takenUp(run)),
      ...where("mismatch", () => mismatchWith(run, takenUp(run))),
    }),
  );
}
