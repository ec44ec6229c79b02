import { type Entry, fields, quantity } from "../../formula/entry.js";
import type { Read } from "../../formula/read-type.js";
import type { Work } from "../state.js";
import type { SpeedFrom } from "../step-documents.js";
import { type Cell, known } from "../unknown.js";

/** What reads one. */
export const speedFrom: Entry<SpeedFrom> = fields<SpeedFrom>({
  fromOil: quantity("volumeFraction", { min: 0, below: 1 }),
  speed: quantity("rotationalSpeed", { above: 0 }),
});

/** The speed at which what meets so much oil is stirred in; undefined where nothing stirs. */
export type SpeedAt = (volumeFractionOil: number) => Cell<number> | undefined;

/** The step's speed, or the one of its speeds that holds from so much oil on. */
export function speedsBy({ speeds }: { readonly speeds?: readonly Read<SpeedFrom>[] }, { speed }: Work): SpeedAt {
  if (!speeds || !speed) return () => speed;
  return (oil) => {
    const from = speeds.filter(({ fromOil }) => fromOil <= oil * (1 + slack)).at(-1);
    return from ? known(from.speed) : speed;
  };
}

/** Oil fractions carry the noise of doubles. */
const slack = 1e-12;
