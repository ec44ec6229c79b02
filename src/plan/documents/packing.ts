import { type Draft, type Findings, join } from "../../formula/document.js";
import {
  type Entries,
  type Entry,
  fields,
  listOf,
  maybe,
  orNull,
  plain,
  quantity,
  text,
  truth,
  whole,
  word,
} from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import {
  type BatchTest,
  type BatchTestTable,
  batchTestFor,
  type ErrorTable,
  type LegalGrade,
} from "../../packing/index.js";
import type { Quantity } from "../../units/index.js";

/** What a pack states and holds: its label, its volume, how it is filled, and where it is stored. */
export interface PackFigures {
  /** What its label states: a mass, or a volume at 20 °C. One of the two. */
  readonly nominal?: { readonly mass?: Quantity<"mass">; readonly volume?: Quantity<"volume"> };
  /** Volume up to the brim. */
  readonly brimCapacity?: Quantity<"volume">;
  /** The empty pack with its closure. */
  readonly tare?: {
    readonly mass: Quantity<"mass">;
    /** Standard deviation from pack to pack; default none. */
    readonly spread?: Quantity<"mass">;
  };
  /** Standard deviation of the content from pack to pack. */
  readonly fillSpread?: Quantity<"mass">;
  /** The hottest product that the pack stands being filled with. */
  readonly temperatureMax?: Quantity<"temperature">;
  /** The mean that the filler is set to; default the target by `averageQuantity`. */
  readonly fillTarget?: Quantity<"mass">;
  /** Packs of which the mean is taken while they are filled; default five (common practice, no source). */
  readonly sampleSize?: number;
  /** At which it is closed, and down to which it cools before it is capped; default the room's temperature for head space and pressure, and 5 K above it for capping (common practice, no source). */
  readonly closingTemperature?: Quantity<"temperature">;
  /** The hottest that it is stored. */
  readonly storageTemperatureMax?: Quantity<"temperature">;
  /** Head space that has to be left there, of the volume up to the brim; default none. */
  readonly headSpaceMin?: Quantity<"volumeFraction">;
  /** The rules on its quantity that hold where it is sold. */
  readonly averageQuantity?: AverageQuantityDocument;
}

/** Rules on the average quantity, which differ by place and date: tables that the caller has read; there is no default. */
export interface AverageQuantityDocument {
  /** How far short a single pack may be, in g or mL, as the law prints it. */
  readonly tolerableErrors: ErrorTable;
  /** How an inspector tests a batch, by its number of packs. */
  readonly batchTests: BatchTestTable;
  /** Share of batches that may fail the test [above 0 to below 0.5]. */
  readonly shareRejectedMax: number;
  /** Share of packs that may be short by more than one tolerable error; asked only if it is stated. */
  readonly shareBeyondOneMax?: number;
  /** Share of packs that may be short by more than two; stated together with the other, or neither. */
  readonly shareBeyondTwoMax?: number;
}

const above = { above: 0 } as const;
const share = plain({ above: 0, max: 0.5 });
const source = {
  jurisdiction: text,
  act: text,
  date: text,
  grade: word<LegalGrade>("first-hand", "second-hand", "from memory"),
  source: text,
};

const errors = fields<ErrorTable>({
  ...source,
  nominalMin: plain(above),
  rows: listOf(
    fields<ErrorTable["rows"][number]>({
      nominalMax: orNull(plain(above)),
      errorRelative: maybe("property", plain({ above: 0, max: 1 })),
      error: maybe("property", plain(above)),
      roundUpTo: maybe("property", plain(above)),
    }),
    1,
  ),
  roundUpTo: maybe("property", plain(above)),
});

const tests = fields<BatchTestTable>({
  ...source,
  rows: listOf(
    fields<BatchTestTable["rows"][number]>({
      packsMin: whole(1),
      packsMax: orNull(whole(1)),
      test: fields<BatchTest>({
        sampleSize: whole(1),
        defectivesMax: whole(0),
        second: maybe(
          "identity",
          fields<NonNullable<BatchTest["second"]>>({
            rejectedFrom: whole(1),
            sampleSize: whole(1),
            defectivesMax: whole(0),
          }),
        ),
        mean: fields<BatchTest["mean"]>({ sampleSize: whole(1), factor: plain({ min: 0 }) }),
        noneBeyondTwo: truth,
      }),
    }),
    1,
  ),
});

const averageQuantity: Entry<AverageQuantityDocument> = fields<AverageQuantityDocument>({
  tolerableErrors: errors,
  batchTests: tests,
  shareRejectedMax: share,
  shareBeyondOneMax: maybe("wish", share),
  shareBeyondTwoMax: maybe("wish", share),
});

/** Reads what a pack states and holds. */
export const packFigures: Entries<PackFigures> = {
  nominal: maybe(
    "wish",
    fields<NonNullable<PackFigures["nominal"]>>({
      mass: maybe("wish", quantity("mass", above)),
      volume: maybe("wish", quantity("volume", above)),
    }),
  ),
  brimCapacity: maybe("property", quantity("volume", above)),
  temperatureMax: maybe("wish", quantity("temperature")),
  tare: maybe(
    "property",
    fields<NonNullable<PackFigures["tare"]>>({
      mass: quantity("mass", above),
      spread: maybe("reading", quantity("mass", { min: 0 })),
    }),
  ),
  fillSpread: maybe("reading", quantity("mass", { min: 0 })),
  fillTarget: maybe("wish", quantity("mass", above)),
  sampleSize: maybe("wish", whole(1)),
  closingTemperature: maybe("process", quantity("temperature")),
  storageTemperatureMax: maybe("property", quantity("temperature")),
  headSpaceMin: maybe("wish", quantity("volumeFraction", { min: 0, below: 1 })),
  averageQuantity: maybe("property", averageQuantity),
};

/** What of a pack needs several fields. */
export function checkPack(draft: Draft<Read<PackFigures>>, path: string, findings: Findings): void {
  const at = (...keys: (string | number)[]): string => keys.reduce<string>(join, path);
  const { nominal, averageQuantity } = draft;
  const stated = [nominal?.mass, nominal?.volume].filter((one) => one !== undefined).length;
  if (nominal && stated !== 1 && !findings.holds(at("nominal")))
    findings.note(at("nominal"), stated === 0 ? "neither" : "both", "a mass or a volume");
  if (!averageQuantity || findings.holds(at("averageQuantity"))) return;
  const { tolerableErrors, batchTests, shareBeyondOneMax, shareBeyondTwoMax } = averageQuantity as Read<
    NonNullable<PackFigures["averageQuantity"]>
  >;
  if ((shareBeyondOneMax === undefined) !== (shareBeyondTwoMax === undefined))
    findings.note(at("averageQuantity"), "one of the two", "shareBeyondOneMax and shareBeyondTwoMax, or neither");
  tolerableErrors.rows.forEach(({ error, errorRelative }, i) => {
    if ((error === undefined) === (errorRelative === undefined))
      findings.note(
        at("averageQuantity", "tolerableErrors", "rows", i),
        error === undefined ? "neither" : "both",
        "errorRelative or error",
      );
  });
  batchTests.rows.forEach((row, i) => {
    const table = { ...batchTests, rows: [row] };
    findings.attempt(
      () => batchTestFor({ table, packs: row.packsMin }),
      at("averageQuantity", "batchTests", "rows", i),
    );
  });
}
