import type { ScaledBatch } from "../batch/index.js";
import type { Material } from "../formula/index.js";
import type { Segment } from "../heat/index.js";
import type { ColdStep } from "./cold/step.js";
import type { Step } from "./job.js";

/** What of one material is in the vessel, by the phase it came with. */
export interface Content {
  readonly phase: string;
  readonly material: Material;
  /** Mass [kg]. */
  readonly mass: number;
}

/** The vessel between two steps. A temperature or time that cannot be known is left out and never guessed. */
export interface State {
  readonly contents: readonly Content[];
  readonly onHeat: boolean;
  /** Time since the start [s]. */
  readonly time?: number | undefined;
  /** Temperature of the charge [°C]. */
  readonly temperature?: number | undefined;
  /** Keys of the materials that have melted or dissolved and not set since. */
  readonly molten: ReadonlySet<string>;
}

/** One step that was run: the vessel before and after it, and which law gave its time and temperature. */
export interface Moment<S = Step | ColdStep> {
  readonly step: S;
  readonly before: State;
  readonly after: State;
  /** The law behind the figures, or what is missing. */
  readonly law: string;
  /** Why the step cannot be done as written, where that was found. */
  readonly obstacle?: string | undefined;
  /** What the charge went through, for what accumulates on the way; left out where that is not known. */
  readonly segments?: readonly Segment[] | undefined;
}

/** Mass in the vessel [kg]. */
export function massOf(contents: readonly Content[]): number {
  return contents.reduce((mass, content) => mass + content.mass, 0);
}

/** So much of some contents, mixed as they are; nothing of them for no mass. */
export function portionOf(contents: readonly Content[], mass: number): readonly Content[] {
  const share = mass / massOf(contents);
  return mass > 0 ? contents.map((content) => ({ ...content, mass: content.mass * share })) : [];
}

/** The phases in the vessel, each once. */
export function phasesOf(contents: readonly Content[]): readonly string[] {
  return [...new Set(contents.map((content) => content.phase))];
}

/** Share of the charge that is gel former. */
export function doseOf(contents: readonly Content[]): number {
  const mass = massOf(contents);
  return mass > 0 ? massOf(contents.filter((content) => content.material.function === "gel former")) / mass : 0;
}

/** All of some contents as dissolved: nothing of them freezes above the setting temperature. */
export function moltenOf(contents: readonly Content[]): ReadonlySet<string> {
  return new Set(contents.map(({ material }) => material.key));
}

/** What arrives in the packs: the charge less every allowance; the hair by which evaporation moves its composition is left. */
export function intoPacks(contents: readonly Content[], { lot }: ScaledBatch): readonly Content[] {
  return portionOf(contents, lot.delivered);
}
