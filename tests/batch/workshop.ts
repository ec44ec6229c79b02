import type { AllowanceDocument, BalanceDocument } from "gelwright/batch";

/** Losses of every kind, in the order of the process. */
export const allowances: readonly AllowanceDocument[] = [
  { kind: "share", name: "evaporation", share: "3 %", materials: ["ester"] },
  { kind: "mass", name: "sample of the melt", mass: "20 g", phases: ["melt"] },
  { kind: "film", name: "kettle" },
  { kind: "mass", name: "hold-up of the filler", mass: "350 g" },
];

export const balances: readonly BalanceDocument[] = [
  { name: "fine", increment: "0.1 g", capacity: "600 g", minimumWeight: "1 g" },
  { name: "bench", increment: "1 g", capacity: "12 kg", minimumWeight: "200 g" },
  { name: "floor", increment: "20 g", capacity: "150 kg", minimumWeight: "5 kg" },
];
