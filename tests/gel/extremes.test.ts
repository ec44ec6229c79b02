import { mieEfficiency } from "../../src/gel/mie.js";
import { keepsDigits } from "../support/extremes.js";

keepsDigits("gel", {
  mieEfficiency: ({ size, ratio }: { readonly size: number; readonly ratio: number }) => mieEfficiency(size, ratio),
});
