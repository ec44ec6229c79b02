import { steadyTemperature } from "../heat/index.js";
import { attempt } from "./attempt.js";
import type { Job } from "./job.js";
import type { Moment } from "./moment.js";
import { say } from "./say.js";

/** The usual cautions for what this job does. They warn; none of them, and no figure, says that anything is safe. */
export function cautionsOf(job: Job, moments: readonly Moment[]): readonly string[] {
  const { formula } = job;
  const used = [...new Set(formula.lines.map((line) => line.material))].flatMap((key) => formula.materials[key] ?? []);
  const hottest = Math.max(...moments.map((moment) => moment.after.temperature ?? Number.NEGATIVE_INFINITY));
  const hot = moments.some((moment) => moment.after.onHeat);
  const particles = used.filter((material) => material.function === "particle" || material.function === "colourant");
  const scented = used.some((material) => material.function === "fragrance" || material.allergens.length > 0);
  const wet = used.some((material) => material.formulationWater || material.function === "water");
  return [
    ...(hot
      ? [
          `Hot oil and melts burn and can ignite${hottest > 0 ? `; this charge reaches ${say.celsius(hottest)}` : ""}. Stay well below the lowest flash point, never leave heat unattended${leftOn(job)}, keep water away, and wear eye, hand and arm protection.`,
        ]
      : []),
    ...(job.vessel.stirrer && !job.vessel.stirrer.byHand
      ? [
          "A stirrer catches hands, sleeves and scrapers: keep them out while it turns, and switch it off and lock it before anybody reaches in.",
        ]
      : []),
    ...(particles.length > 0
      ? [
          `${particles.map((material) => material.name).join(", ")}: fine dust. Extract it where it is poured and wear a dust mask.`,
        ]
      : []),
    ...(particles.length > 0 && job.pack?.nozzle?.surfaceTension !== undefined
      ? [
          "Sprayed mica and pigment can be inhaled. Whether this may be sold as a spray is for a qualified person to judge.",
        ]
      : []),
    ...(scented
      ? ["Fragrance and essential oils can sensitise. Highest levels and labelling are law and differ by place."]
      : []),
    ...(wet ? ["There is water in this product: its preservation must be challenge-tested."] : []),
    ...used.flatMap((material) => material.restrictions.map((text) => `${material.name}: ${text}`)),
    "These figures are arithmetic on the readings given. Local codes, safety data sheets and qualified people come first.",
  ];
}

/** Where a heater that is forgotten would take the charge: the temperature at which the loss holds it. */
function leftOn({ vessel, process }: Job): string {
  const { heater, loss } = vessel;
  if (!heater || !loss) return "";
  const { power, temperatureMax } = heater;
  // A law of loss that ends before: what the heater comes to is not known.
  return attempt(
    () => {
      const steady = steadyTemperature({
        heatSource: { kind: "power", power },
        heatLoss: loss.law,
        temperatureAmbient: process.temperatureRoom,
      });
      const limited = temperatureMax !== undefined && temperatureMax < steady;
      return ` (left on, this heater goes on to ${limited ? `its own ${say.celsius(temperatureMax)}` : `about ${say.celsius(steady)}`})`;
    },
    () => "",
  );
}
