import { truncated } from "../../src/packing/truncated.js";
import { keepsDigits } from "../support/extremes.js";

interface Part {
  readonly from: number;
  readonly to: number;
}

keepsDigits("packing", {
  "truncated.share": ({ from, to }: Part) => truncated(from, to).share,
  "truncated.mean": ({ from, to }: Part) => truncated(from, to).powers[0],
});
