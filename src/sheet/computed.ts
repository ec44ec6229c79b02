import type { Block } from "./blocks.js";
import type { Written } from "./render.js";
import { version } from "./version.js";

/** At the foot of whatever is filed: by what and from which documents it was computed, and what there is to say of it. */
export function computedFrom(fingerprint: string, { words: { lines } }: Written, remark?: string): Block {
  const computed = lines.batch.computed({ library: `gelwright ${version}`, fingerprint: shortOf(fingerprint) });
  return { kind: "text", text: remark === undefined ? computed : `${computed} ${remark}`, isSmall: true };
}

/** So many digits tell documents apart and can be compared by eye. */
export function shortOf(fingerprint: string): string {
  return (fingerprint.slice(0, 16).match(/.{1,4}/g) ?? []).join(" ");
}
