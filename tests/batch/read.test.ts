import { type BatchDocument, readBatch } from "gelwright/batch";
import { CalculationError } from "gelwright/error";
import { expect, test } from "vitest";

const document: BatchDocument = {
  version: 1,
  target: { packs: 2500, fillVolume: "15 mL" },
  density: "915 kg/m³",
  allowances: [
    { kind: "share", name: "evaporation", share: "20 %", materials: ["water"], source: "weighed on the bench" },
    { kind: "film", name: "kettle" },
    { kind: "mass", name: "samples", mass: "150 g" },
  ],
  balances: [
    { name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "50 g" },
    { name: "floor", increment: "20 g", capacity: "150 kg", minimumWeight: "2 kg" },
  ],
};

/** The faults of a document, as path and what was expected there. */
function faultsOf(broken: unknown): string[] {
  try {
    readBatch(broken);
    return [];
  } catch (error) {
    if (!(error instanceof CalculationError) || error.code !== "document") throw error;
    return error.faults.map(({ path, expected }) => `${path}: ${expected}`);
  }
}

test("a batch is read into the units of the kernels, with the usual tolerance where none is written", () => {
  expect(readBatch(document)).toEqual({
    target: { volume: 0.0375 },
    packs: 2500,
    density: 915,
    allowances: [
      {
        kind: "share",
        name: "evaporation",
        fraction: 0.2,
        materials: ["water"],
        phases: undefined,
        source: "weighed on the bench",
      },
      { kind: "film", name: "kettle", thickness: undefined, source: undefined },
      { kind: "mass", name: "samples", mass: 0.15, materials: undefined, phases: undefined, source: undefined },
    ],
    balances: [
      { name: "bench", increment: 0.001, capacity: 6, minimumWeight: 0.05 },
      { name: "floor", increment: 0.02, capacity: 150, minimumWeight: 2 },
    ],
    tare: 0,
    tolerance: 0.005,
  });
});

test("a batch without allowances has none", () => {
  const { allowances, ...plain } = document;
  expect(readBatch(plain)).toEqual({ ...readBatch(document), allowances: [] });
});

test("every fault is named at once, with its place", () => {
  const broken = {
    version: 2,
    target: { mass: "40 kg", volume: "40 L" },
    density: "915 kg",
    allowances: [
      { kind: "share", name: "film", share: "120 %" },
      { kind: "mass", name: "samples", mass: "-150 g" },
      { kind: "leak", name: "gasket" },
    ],
    balances: [
      { name: "bench", increment: "1 g", capacity: "6 kg", minimumWeight: "1 g" },
      { name: "floor", increment: "20 g", capacity: "1 kg", minimumWeight: "2,5 kg" },
      { name: "fine", increment: "1 mg", capacity: "200 g" },
    ],
    weighingTolerance: "0.5",
  };
  expect(faultsOf(broken).map((fault) => fault.split(": ")[0])).toEqual([
    "version",
    "density",
    "allowances[0].share",
    "allowances[1].mass",
    "allowances[2].kind",
    "balances[1].minimumWeight",
    "balances[2].minimumWeight",
    "weighingTolerance",
    "balances[0].minimumWeight",
    "target",
  ]);
});

test("what is no object where one stands is one fault, of the balances and the losses alike", () => {
  const paths = (change: object) => faultsOf({ ...document, ...change }).map((fault) => fault.split(": ")[0]);
  expect(paths({ balances: [5, document.balances[0]] })).toEqual(["balances[0]"]);
  expect(paths({ allowances: [null, document.allowances?.[0]] })).toEqual(["allowances[0]"]);
});

test("a target says one thing", () => {
  const one = "target: mass, or volume, or packs with fillMass, or packs with fillVolume";
  for (const target of [{}, { packs: 12 }, { fillMass: "12 g" }, { mass: "1 kg", packs: 12 }])
    expect(faultsOf({ ...document, target })).toEqual([one]);
  const fault = (target: object) => {
    try {
      return readBatch({ ...document, target });
    } catch (error) {
      const [{ found, rule } = {}] = (error as CalculationError).faults;
      return [found, rule];
    }
  };
  expect(fault({})).toEqual(["nothing", "missing"]);
  expect(fault({ mass: "1 kg", packs: 12 })).toEqual(["mass and packs", "contradiction"]);
  expect(faultsOf({ ...document, target: { packs: 2.5, fillMass: "12 g" } })).toHaveLength(1);
  expect(readBatch({ ...document, target: { packs: 4, fillMass: "12.5 g" } }).target).toEqual({ mass: 0.05 });
});
