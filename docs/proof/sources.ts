import { readFileSync } from "node:fs";
import type { Quality } from "../../tests/support/check.js";
import { docs } from "../theme/documents.js";

/** A source as the bibliography has it. */
interface Source {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  readonly where: string;
  readonly read: string;
  readonly quality: Quality;
}

/** The bibliography, by key. */
export const sources: Readonly<Record<string, Source>> = JSON.parse(readFileSync(`${docs}bibliography.json`, "utf8"));
