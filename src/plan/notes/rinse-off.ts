import { gelWithWater, waterUntilFlowing, waterUntilMilky } from "../../gel/index.js";
import { yieldStressForFilm } from "../../rheology/index.js";
import type { Charge } from "../charge.js";
import { gelOf, tensionOf, withOil } from "../parts/droplets.js";
import { gelOfKilogram } from "../parts/gel-of-kilogram.js";
import type { DilutedGel, Note } from "../parts/note.js";
import type { Run } from "../state.js";
import { by, orNotKnown, otherwise, stated, where } from "../unknown.js";

/** A film that half of the light passes straight still counts as clear: common practice, no source. */
const usualTransmittanceMin = 0.5;

/** Water by mass of the gel for which the gel is given: none, then a splash to as much again. */
const amounts: readonly number[] = [0, 0.02, 0.05, 0.1, 0.2, 0.5, 1];

function alongWater(charge: Charge, temperature: number): readonly DilutedGel[] {
  const gel = gelOfKilogram(charge, temperature);
  const tension = where("interfacialTension", () => tensionOf(charge.job));
  return amounts.map((water): DilutedGel => {
    const plain = { ...gel, massWaterAdded: water };
    const found = otherwise(
      () => by("gel-with-water", () => gelWithWater({ ...plain, ...tension })),
      // With more oil than the law of packed droplets was measured with there is no strength, and all else.
      () => by("gel-with-water", () => gelWithWater(plain)),
    );
    const { refractiveIndexOuter, mismatch, volumeFractionOil, turbidity, yieldStress } = found;
    return {
      water,
      refractiveIndexOuter,
      mismatch,
      volumeFractionOil,
      turbidity,
      ...(yieldStress && { yieldStress }),
    };
  });
}

/** What water makes of the gel of an emulsion, on skin or under the tap. */
export function rinseOffNotes(run: Run): readonly Note[] {
  return withOil(run).map((): Note => {
    const { charge } = gelOf(run);
    const { bench, process } = run.job;
    const temperature = process.room;
    const { film, transmittanceMin = usualTransmittanceMin } = bench.inUse ?? {};
    const depth = (): number => stated(film, "in-use-film");
    return {
      code: "rinse-off",
      ...(film !== undefined && { filmThickness: film }),
      untilMilky: orNotKnown(() => milky({ ...gelOfKilogram(charge, temperature), depth: depth(), transmittanceMin })),
      untilFlowing: orNotKnown(() => {
        const thickness = depth();
        const interfacialTension = tensionOf(run.job);
        const density = charge.density(temperature);
        // What pulls at the film is its own weight on an upright wall.
        const stress = by("film-runs-off", () => yieldStressForFilm({ thickness, density }));
        const { oil: _, mismatchUncertainty: __, ...gel } = gelOfKilogram(charge, temperature);
        return by("film-runs-off", () => waterUntilFlowing({ ...gel, interfacialTension, stress }));
      }),
      along: orNotKnown(() => alongWater(charge, temperature)),
    };
  });
}

function milky(input: Parameters<typeof waterUntilMilky>[0]): ReturnType<typeof waterUntilMilky> {
  return by("gel-with-water", () => waterUntilMilky(input));
}
