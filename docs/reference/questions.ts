import { readFileSync } from "node:fs";
import { docs } from "../theme/documents.js";

/** A row of the page of questions: what is asked, and the functions that answer it, in their order. */
export interface Row {
  /** The heading under which it stands. */
  readonly subject: string;
  readonly question: string;
  readonly names: readonly string[];
}

/** The rows of the page of questions. */
export function questionRows(): readonly Row[] {
  const parts = readFileSync(`${docs}guides/questions.md`, "utf8").split(/^## /m).slice(1);
  return parts.flatMap((part) => {
    const subject = part.slice(0, part.indexOf("\n"));
    return [...part.matchAll(/^\| (.+?) \| (.+?) \|$/gm)]
      .filter(([, question]) => question !== "question" && !/^-+$/.test(question ?? ""))
      .map(([, question = "", answer = ""]) => ({
        subject,
        question: question.replaceAll(/[*`]/g, ""),
        names: [...answer.matchAll(/`(\w+)`/g)].map(([, name = ""]) => name),
      }));
  });
}
