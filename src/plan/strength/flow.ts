import {
  chooseFlowCurve,
  type FlowChoice,
  type FlowModel,
  nozzleFlow,
  viscositiesInUse,
  type YieldConvention,
  yieldStresses,
} from "../../rheology/index.js";
import { attempt } from "../attempt.js";
import type { Job } from "../job.js";
import { say } from "../say.js";
import type { Nozzle } from "./job.js";
import type { PlanFlow, PlanUse } from "./plan.js";

/** How a yield stress was read, for the person who compares it with another. */
const conventions: Readonly<Record<YieldConvention, string>> = {
  "herschel-bulkley": "intercept by Herschel and Bulkley",
  bingham: "intercept by Bingham",
  casson: "intercept by Casson",
  "casson-regression": "Casson's line through the roots",
  "lowest-rate": "stress at the lowest rate read",
  "viscosity-maximum": "stress at the greatest viscosity",
};

/** What rheometer points say of the set gel: the model they bear out, its yield stress, its viscosity in use. */
export function flowByPoints(job: Job): PlanFlow | undefined {
  const { flowCurve } = job.bench;
  if (!flowCurve) return undefined;
  const { temperature, points, uses } = flowCurve;
  const choice = attempt(() => chooseFlowCurve({ points }));
  if (typeof choice === "string") return { temperature, uses: [], notKnown: choice };
  const { best } = choice;
  const inUse = viscositiesInUse({ curve: best.curve, uses }).map((use) => ({
    ...use,
    beyondReadings: use.shearRate < best.shearRateMin || use.shearRate > best.shearRateMax,
  }));
  const nozzle = job.pack?.nozzle;
  const pressed = nozzle && throughNozzle(choice, nozzle);
  return {
    temperature,
    model: modelOf(choice),
    curve: best.curve,
    ...yieldStressOfPoints(job, choice),
    ...(pressed && { nozzle: pressed.nozzle }),
    uses: [...inUse, ...(pressed ? [pressed.use] : [])],
  };
}

/** The yield stress of the points by the convention asked for, or that of the model they bear out. */
function yieldStressOfPoints(job: Job, { best }: FlowChoice): Pick<PlanFlow, "yieldStress" | "otherConventions"> {
  const { flowCurve } = job.bench;
  const modelled = "yieldStress" in best.curve ? (best.model as YieldConvention) : undefined;
  const convention = flowCurve?.yieldStressBy ?? modelled;
  if (!flowCurve || convention === undefined) return {};
  const read = yieldStresses({ points: flowCurve.points });
  const value = read.find((one) => one.convention === convention)?.yieldStress;
  const others = read.flatMap((one) =>
    one.convention !== convention && one.yieldStress !== undefined ? [one.yieldStress] : [],
  );
  return {
    ...(value !== undefined && { yieldStress: { value, by: conventions[convention] } }),
    ...(others.length > 0 && { otherConventions: { min: Math.min(...others), max: Math.max(...others) } }),
  };
}

/** The model and its parameters with their standard errors. */
function modelOf({ best, candidates }: FlowChoice): string {
  const values = best.curve as unknown as Readonly<Record<string, number>>;
  const parameters = best.parameters.map((name) => {
    const [value = Number.NaN, error = Number.NaN] = [values[name], best.standardErrors[name]];
    return `${words[name] ?? name} ${Number(value.toPrecision(3))} ± ${Number(error.toPrecision(1))}${units[name] ?? ""}`;
  });
  const weighed = candidates.length > 1 ? `, the best of ${candidates.length} by AICc` : "";
  return `${models[best.model]}${weighed}: ${parameters.join(", ")} (standard errors)`;
}

const models: Readonly<Record<FlowModel, string>> = {
  newton: "Newton",
  "power-law": "power law",
  bingham: "Bingham",
  casson: "Casson",
  "herschel-bulkley": "Herschel and Bulkley",
  carreau: "Carreau",
  "carreau-yasuda": "Carreau and Yasuda",
};

const words: Readonly<Record<string, string>> = {
  yieldStress: "yield stress",
  plasticViscosity: "plastic viscosity",
  flowIndex: "flow index",
  viscosityZero: "viscosity at rest",
  viscosityInfinite: "viscosity at high shear",
};

const units: Readonly<Record<string, string>> = {
  yieldStress: " Pa",
  viscosity: " Pa·s",
  plasticViscosity: " Pa·s",
  consistency: " Pa·sⁿ",
  viscosityZero: " Pa·s",
  viscosityInfinite: " Pa·s",
  time: " s",
};

/** How the gel is sheared in a nozzle, where its curve reaches so far. */
function throughNozzle(
  { best }: FlowChoice,
  { diameter, flowRate }: Nozzle,
): { readonly use: PlanUse; readonly nozzle: NonNullable<PlanFlow["nozzle"]> } | undefined {
  const flow = attempt(() => nozzleFlow({ curve: best.curve, diameter, flowRate }));
  if (typeof flow === "string") return undefined;
  const { shearRateWall: shearRate, viscosityWall: viscosity, pressureGradient } = flow;
  return {
    use: {
      use: `at the wall of a nozzle of ${say.millimetres(diameter)}`,
      shearRate,
      viscosity,
      beyondReadings: shearRate > best.shearRateMax || shearRate < best.shearRateMin,
    },
    nozzle: { shearRate, pressureGradient },
  };
}
