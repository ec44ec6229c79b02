import { CalculationError } from "gelwright/error";
import { type JobDocument, type Plan, runPlan } from "gelwright/plan";
import { cylinderReading } from "gelwright/rheology";
import { convert } from "gelwright/units";
import { describe, expect, test } from "vitest";
import { changed, type Draft, exampleJob } from "../support/example.js";

const job = exampleJob();
const cylinder = { diameter: "26.66 mm", cup: "28.92 mm", length: "40 mm", endEffectFactor: 1.1 };
const geometry = { diameter: 0.02666, diameterCup: 0.02892, length: 0.04, endEffectFactor: 1.1 };

/** A shear rate and a stress of 1 that the cylinder gives at one revolution a second and 1 N·m. */
const unit = cylinderReading({ cylinder: geometry, speed: 1, torque: 1 });

/** The number of a quantity in text. */
const number = (text: string): number => Number(text.split(" ")[0]);

/** The first readings of the job with the torques and the speed that give them. */
function asTaken(change: (entry: Draft) => void = () => {}): JobDocument {
  return changed(job, ({ bench }) => {
    const [entry] = bench.viscosities;
    const { shearRate, readings } = entry;
    const rate = number(shearRate);
    entry.taken = {
      cylinder,
      speed: `${rate / unit.shearRate} rev/s`,
      readings: readings.map(({ at, viscosity }: { at: string; viscosity: string }) => {
        const [value = "", of = ""] = viscosity.split(" ");
        const stress = rate * convert(Number(value), of as "mPa·s", "Pa·s");
        return { at, torque: `${(1000 * stress) / unit.stress} mN·m` };
      }),
    };
    delete entry.readings;
    delete entry.shearRate;
    change(entry);
  });
}

const faultsOf = (document: JobDocument): readonly string[] => {
  try {
    runPlan(document);
    return [];
  } catch (error) {
    if (error instanceof CalculationError) return error.faults.map(({ path }) => path);
    throw error;
  }
};

/** All numbers of a plan but its fingerprint, rounded to nine digits. */
const rounded = ({ fingerprint: _, ...plan }: Plan): unknown =>
  JSON.parse(JSON.stringify(plan), (_key, value) => (typeof value === "number" ? Number(value.toPrecision(9)) : value));

describe("readings of a viscometer as taken", () => {
  test("give the plan that viscosities at the shear rate of the cylinder give", () => {
    expect(job.bench.viscosities?.[0]?.readings?.length).toBeGreaterThan(1);
    expect(rounded(runPlan(asTaken()))).toEqual(rounded(runPlan(job)));
  });

  test("change with the torque as the viscosity does", () => {
    const thicker = runPlan(
      asTaken((entry) => {
        for (const reading of entry.taken.readings) reading.torque = `${1.5 * number(reading.torque)} mN·m`;
      }),
    );
    const stated = runPlan(
      changed(job, ({ bench }) => {
        for (const reading of bench.viscosities[0].readings) {
          const [value = "", of = ""] = reading.viscosity.split(" ");
          reading.viscosity = `${1.5 * Number(value)} ${of}`;
        }
      }),
    );
    expect(rounded(thicker)).toEqual(rounded(stated));
    expect(rounded(thicker)).not.toEqual(rounded(runPlan(job)));
  });

  test("are one of three ways to state a viscosity, and have no shear rate of their own", () => {
    const at = "bench.viscosities[0]";
    expect(faultsOf(asTaken((entry) => Object.assign(entry, { shearRate: "10 1/s" })))).toEqual([`${at}.shearRate`]);
    expect(
      faultsOf(
        asTaken((entry) =>
          Object.assign(entry, { law: { law: "andrade", factor: "0.001 mPa·s", activationEnergy: "30 kJ/mol" } }),
        ),
      ),
    ).toEqual([at]);
    expect(faultsOf(changed(job, ({ bench }) => delete bench.viscosities[0].shearRate))).toEqual([`${at}.shearRate`]);
    expect(faultsOf(asTaken((entry) => delete entry.taken))).toEqual([at]);
  });

  test("are refused in a cup that is too wide, or narrower than the cylinder", () => {
    const inCup = (cup: string) =>
      faultsOf(asTaken((entry) => Object.assign(entry.taken, { cylinder: { ...cylinder, cup } })));
    expect(inCup("40 mm")).toEqual(["bench.viscosities[0].taken.cylinder"]);
    expect(inCup("20 mm")).toEqual(["bench.viscosities[0].taken.cylinder"]);
  });
});
