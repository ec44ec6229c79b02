import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { rooms, root } from "../tests/support/rooms.js";
import { table } from "./table.js";

/** Rooms that read documents. The others compute: they are kernel rooms. */
export const documentRooms: readonly string[] = ["formula", "batch", "plan", "sheet"];

/** What was aimed at, in bytes, for each kind of thing. */
const aims = { function: 1500, kernelRoom: 3000, documentRoom: 8000, whole: 40_000 };

/**
 * Where the aim was missed: the budget that holds instead, and what the weight is spent on. About half a kilobyte of each
 * is the names of its arguments and the refusal of any other, and a third of one is the error, which crosses to another
 * thread as data and comes back.
 */
const restated: Readonly<Record<string, { readonly bytes: number; readonly why: string }>> = {
  "heaviest function of natural-origin": { bytes: 2700, why: "faults that carry their rule and numbers" },
  "heaviest function of units": { bytes: 6650, why: "the tables of all units and the engine, 1.8 kB" },
  "heaviest function of laws": { bytes: 4000, why: "every kind of law, since data says which is meant" },
  "heaviest function of transient": {
    bytes: 6050,
    why: "quadrature that checks itself, the root finder, and the loss laws",
  },
  "heaviest function of exposure": { bytes: 7950, why: "shares read as text, with the units, 5.5 kB" },
  "heaviest function of labelling": { bytes: 9400, why: "amounts read as text, with the units, 5.5 kB" },
  "heaviest function of gel": { bytes: 5500, why: "the table of glycerin and water, Mie's series and the root finder" },
  "heaviest function of heat": { bytes: 8950, why: "a segment, the loss laws and the specific-heat laws" },
  "heaviest function of mixing": {
    bytes: 7400,
    why: "the power curves and constants of all impellers as ranges, the flow curves, a root finder",
  },
  "heaviest function of oils": { bytes: 3500, why: "the limits of a standard against a certificate, row by row" },
  "heaviest function of particles": { bytes: 9850, why: "the laws and a segment" },
  "heaviest function of rheology": { bytes: 6750, why: "all flow-curve laws and their fit" },
  "heaviest function of stability": { bytes: 4850, why: "least squares, the F distribution and a root finder" },
  "heaviest function of packing": { bytes: 4900, why: "the normal distribution, quadrature and a root finder" },
  "formula, alone": { bytes: 2000, why: "the words of every function, against a slip in one" },
  "exposure, alone": { bytes: 2350, why: "the words of every function, against a slip in one" },
  "room natural-origin": { bytes: 4050, why: "the words of every function, against a slip in one" },
  "units, alone": { bytes: 1850, why: "the words of the function, and the error as data" },
  "batch, alone": { bytes: 2800, why: "faults that carry their rule and numbers" },
  "room units": {
    bytes: 7500,
    why: "as its heaviest function; a fault carries its rule, its numbers and the nearest unit",
  },
  "room laws": {
    bytes: 9850,
    why: "bands, viscosity, flow curves, losses, vapour pressures and properties, several kinds of each",
  },
  "room transient": { bytes: 6150, why: "as its heaviest function" },
  "room gel": {
    bytes: 14_550,
    why: "packed droplets, clarity, dose-response, moisture and rinse-off beside the ratio",
  },
  "room heat": {
    bytes: 23_000,
    why: "conduction, jackets, walls, evaporation and exposure over the laws and a segment",
  },
  "room mixing": {
    bytes: 15_500,
    why: "power with its bands, blending, caverns, vessels and scale-up on curves given as data, and additions of oil",
  },
  "room oils": { bytes: 14_150, why: "the reference oils, 4.3 kB, which an app takes one by one" },
  "room particles": { bytes: 14_350, why: "drag, bubbles and settling over the laws and a segment" },
  "room rheology": { bytes: 15_300, why: "fits of all models; an app that only evaluates takes gelwright/laws" },
  "room exposure": {
    bytes: 9500,
    why: "the units, 5.5 kB, for limits as text; an app that takes doses alone pays 1 kB",
  },
  "room labelling": { bytes: 12_100, why: "the units, 5.5 kB, and six questions of a label" },
  "room stability": { bytes: 9500, why: "regression, two-sample test and colour beside storage and plans" },
  "room packing": { bytes: 10_500, why: "the tables of law, 1.3 kB, and targets for the tests of batches" },
  "room formula": { bytes: 17_700, why: "the units, 6.7 kB, and the validator with the entries of its documents" },
  "room batch": { bytes: 23_550, why: "the room formula, whose documents it scales" },
  "room plan": {
    bytes: 160_500,
    why: "every room below it; the entries of all documents, the step table, the questions and what they rest on; packs, stability, label, exposure, sweeps and what to measure next brought 26 kB; the words of every function against a slip, parts, premixes, rates of filling, use of the gel and walls as bounds 19 kB more",
  },
  "room sheet": {
    bytes: 69_000,
    why: "its English: a sentence for every answer, reason, remedy, mark and step of a plan; the part for the kettle, the sheet as HTML with drawings, the record of changes",
  },
  everything: {
    bytes: 257_000,
    why: "seventeen rooms, for both routes, and the words of the sheet; the aim was set for the hot route's first slice, which weighed 43 kB",
  },
};

/** What a user's bundle pays for something, dependencies included, minified and gzipped. */
export interface Size {
  readonly what: string;
  readonly bytes: number;
  readonly aim: number;
}

/** What may not be exceeded: the aim, or what it was restated as. */
export function budgetOf({ what, aim }: Size): number {
  return restated[what.split(":")[0] ?? ""]?.bytes ?? aim;
}

async function gzipped(code: string): Promise<number> {
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: root },
    bundle: true,
    minify: true,
    format: "esm",
    write: false,
    logLevel: "error",
    tsconfigRaw: "{}",
  });
  return outputFiles.reduce((sum, file) => sum + gzipSync(file.contents, { level: 9 }).length, 0);
}

/** The public function of a room that weighs most by itself. */
async function heaviestFunction(room: string): Promise<Size[]> {
  const members = (await import(`${root}dist/${room}/index.js`)) as Record<string, unknown>;
  const names = Object.keys(members).filter((name) => typeof members[name] === "function");
  const sizes = await Promise.all(
    names.map(async (name) => ({
      what: `heaviest function of ${room}: ${name}`,
      bytes: await gzipped(`export { ${name} } from "./dist/${room}/index.js";`),
      aim: aims.function,
    })),
  );
  return sizes.sort((a, b) => b.bytes - a.bytes).slice(0, 1);
}

/** Functions that read no text, in rooms that do: they must not pay for what reading needs. */
const bystanders = [
  ["formula", "densityOfMixture"],
  ["batch", "chargeFor"],
  ["units", "massOfVolume"],
  ["exposure", "aggregateExposure"],
] as const;

async function bystander([room, name]: readonly [string, string]): Promise<Size> {
  const bytes = await gzipped(`export { ${name} } from "./dist/${room}/index.js";`);
  return { what: `${room}, alone: ${name}`, bytes, aim: aims.function };
}

async function roomSize(room: string): Promise<Size> {
  const aim = documentRooms.includes(room) ? aims.documentRoom : aims.kernelRoom;
  return { what: `room ${room}`, bytes: await gzipped(`export * from "./dist/${room}/index.js";`), aim };
}

/** The heaviest function of every kernel room, every room, and all of it. */
export async function sizes(): Promise<Size[]> {
  const kernelRooms = rooms.filter((room) => !documentRooms.includes(room));
  return [
    ...(await Promise.all(kernelRooms.map(heaviestFunction))).flat(),
    ...(await Promise.all(bystanders.map(bystander))),
    ...(await Promise.all(rooms.map(roomSize))),
    { what: "everything", bytes: await gzipped('export * from "./dist/index.js";'), aim: aims.whole },
  ];
}

/** The sizes as a table, and below it why some budgets are not what was aimed at. */
export function sizeTable(all: readonly Size[]): string {
  const kilo = (bytes: number) => (bytes / 1000).toFixed(2);
  const rows = all.map((size) => [size.what, kilo(size.bytes), kilo(size.aim), kilo(budgetOf(size))]);
  const notes = Object.entries(restated).map(([what, { why }]) => `- ${what}: ${why}`);
  const head = ["bundled, minified, gzipped", "kB", "aim", "budget"];
  return [table(head, rows), "", "Where the budget is not the aim:", ...notes].join("\n");
}
