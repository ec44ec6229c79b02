import { button, made } from "../in-page/made.js";
import { at, parentOf, put } from "../in-page/paths.js";
import type { Context } from "./form-context.js";

interface Opening {
  readonly title: string;
  readonly hint?: string;
  readonly optional?: boolean;
  /** In place of what the part says in short. */
  readonly gist?: string;
  /** Whether the fields of its path stand elsewhere, and their faults with them. */
  readonly isAside?: boolean;
  readonly draw: () => readonly HTMLElement[];
}

/** A part that is drawn as it is opened; closed it says in short what it holds, and how many faults. */
export function opening(
  context: Context,
  path: string,
  { title, hint = "", optional, gist, isAside, draw }: Opening,
): HTMLElement {
  const element = made("details", "part");
  const summary = made("summary", "", title);
  const count = made("span", "fault");
  summary.append(" ", made("span", "gist", gist ?? gistOf(at(context.document(), path))), " ", count);
  const fault = made("p", "fault");
  const body = made("div", "body");
  element.append(summary, fault, body);
  let isDrawn = false;
  const drawOnce = () => {
    if (isDrawn) return;
    isDrawn = true;
    if (hint !== "") body.append(made("p", "hint", hint));
    body.append(...draw());
    if (optional)
      body.append(
        button(`Remove ${title.toLowerCase()}`, () =>
          context.rebuild(put(context.document(), path, undefined), parentOf(path)),
        ),
      );
  };
  const open = () => {
    drawOnce();
    element.open = true;
  };
  if (context.opened.has(path)) open();
  element.addEventListener("toggle", () => {
    if (element.open === context.opened.has(path)) return;
    if (!element.open) context.opened.delete(path);
    else {
      context.opened.add(path);
      drawOnce();
      context.remark();
    }
  });
  if (!isAside) context.hold(path, { fault, details: { element, count, open } });
  return element;
}

/** What a part says in short: its first figures and words. */
function gistOf(value: unknown): string {
  const words: string[] = [];
  const walk = (inner: unknown): void => {
    if (words.length > 5 || inner === undefined || inner === null) return;
    if (typeof inner !== "object") words.push(String(inner));
    else for (const [key, one] of Object.entries(inner)) if (key !== "version") walk(one);
  };
  walk(value);
  const all = words.join(", ");
  return all.length > 70 ? `${all.slice(0, 68)}…` : all;
}
