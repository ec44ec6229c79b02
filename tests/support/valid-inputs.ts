import type { ValidInputs } from "./fuzz.js";

/** The argument lists that the functions of a room take: the front door says `naturalOrigin`, the folder is `natural-origin`. */
export async function validInputsOf(room: string): Promise<ValidInputs> {
  const folder = room.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  const file = new URL(`../${folder}/valid-inputs.ts`, import.meta.url);
  return ((await import(file.href)) as { validInputs: ValidInputs }).validInputs;
}
