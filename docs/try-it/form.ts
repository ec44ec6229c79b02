import type { Fault } from "gelwright/error";
import { inWords } from "../in-page/in-words.js";
import { made } from "../in-page/made.js";
import { at, parentOf, put } from "../in-page/paths.js";
import { asText } from "./as-text.js";
import { brokenAt } from "./broken.js";
import type { Context, Holder } from "./form-context.js";
import { hasLines, linesOf } from "./form-lines.js";
import { opening } from "./form-opening.js";
import { listAt, objectAt, partAt } from "./form-parts.js";
import { placeOf } from "./place.js";
import { type Schema, schemaAt } from "./schema.js";

/** The form of a job: another view of the text of its document. */
export interface Form {
  /** Shows a text, which may be that of another job than the one before. */
  readonly draw: (text: string, isAnother?: boolean) => void;
  /** Says at each field what is wrong with it. */
  readonly mark: (faults: readonly Fault[]) => void;
  /** Opens what holds a path, and goes to its field. */
  readonly goTo: (path: string) => void;
}

/** A form within a place, by the schema of a job; `changed` is given the text as the form leaves it. */
export function formIn(place: HTMLElement, schema: Schema, changed: (text: string) => void): Form {
  let text = "{}";
  let document_: unknown = {};
  let faults: readonly Fault[] = [];
  let ids = 0;
  const holders = new Map<string, Holder>();
  const opened = new Set<string>();

  const take = (next: unknown, written: string) => {
    [document_, text] = [next, written];
    changed(text);
  };
  const context: Context = {
    schema,
    document: () => document_,
    edit: (path, value) => {
      const before = at(document_, path);
      const next = put(document_, path, value);
      // What was laid out by hand stays so, as long as one value takes the place of another.
      const { start, end } = placeOf(text, path);
      const isSwap = before !== undefined && value !== undefined;
      take(next, isSwap ? text.slice(0, start) + JSON.stringify(value) + text.slice(end) : asText(next));
    },
    replace: (next) => take(next, asText(next)),
    rebuild: (next, focus) => {
      context.replace(next);
      redraw();
      goTo(focus, true);
    },
    redrawSoon,
    opened,
    hold: (path, holder) => holders.set(path, holder),
    remark: () => mark(faults),
    id: () => `entry-${++ids}`,
  };

  function redraw(): void {
    ids = 0;
    holders.clear();
    place.replaceChildren(...sections(context));
    mark(faults);
  }

  let isHeld = false;
  addEventListener("pointerdown", () => {
    isHeld = true;
  });
  addEventListener("pointerup", () => {
    isHeld = false;
  });

  /** Not while a button is held down, whose click would be lost. */
  function redrawSoon(): void {
    const entries = () => [...place.querySelectorAll<HTMLElement>("input, select, button, summary")];
    const go = () =>
      setTimeout(() => {
        const index = entries().indexOf(document.activeElement as HTMLElement);
        redraw();
        entries()[index]?.focus();
      });
    if (isHeld) addEventListener("pointerup", go, { once: true });
    else go();
  }

  const note = made("p", "fault", "The text is not valid JSON. Correct it, and the form shows the job.");

  function draw(given: string, isAnother = false): void {
    if (given === text && !isAnother) return;
    text = given;
    const broken = brokenAt(given) !== undefined;
    // While the JSON is being written beside the form, it is broken now and then: the form waits, and cannot be changed.
    place.inert = broken;
    place.classList.toggle("old", broken);
    if (broken) place.before(note);
    else note.remove();
    if (!broken) {
      document_ = JSON.parse(given);
      redraw();
    } else if (isAnother) {
      holders.clear();
      place.replaceChildren();
    }
  }

  function mark(found: readonly Fault[]): void {
    faults = found;
    for (const { fault, input, details } of holders.values()) {
      fault.textContent = "";
      input?.removeAttribute("aria-invalid");
      if (details) details.count.textContent = "";
    }
    for (const fault of found) {
      const holder = holders.get(nearest(fault.path));
      if (!holder) continue;
      holder.fault.textContent += `${holder.fault.textContent ? "; " : ""}${inWords(fault)}`;
      holder.input?.setAttribute("aria-invalid", "true");
    }
    for (const [path, { details }] of holders) {
      const within = found.filter((fault) => isWithin(fault.path, path)).length;
      if (details && within > 0) details.count.textContent = `${within} ${within === 1 ? "fault" : "faults"}`;
    }
  }

  const nearest = (path: string): string => (path === "" || holders.has(path) ? path : nearest(parentOf(path)));

  function goTo(path: string, quietly = false): void {
    for (let found = nearest(path); ; found = nearest(path)) {
      const { details, input, fault } = holders.get(found) ?? {};
      const isNew = details !== undefined && !opened.has(found);
      if (isNew) {
        opened.add(found);
        details.open();
        mark(faults);
        if (nearest(path) !== found) continue;
      }
      // A part that was just changed has its first field in focus, and a list its last button.
      const box = details?.element ?? fault?.parentElement ?? place;
      const target = input ?? box.querySelector<HTMLElement>("input, select, button, summary") ?? undefined;
      target?.focus();
      if (target instanceof HTMLInputElement) target.select();
      if (!quietly) box.scrollIntoView({ block: "center" });
      return;
    }
  }

  return { draw, mark, goTo };
}

const isWithin = (path: string, outer: string): boolean =>
  path === outer || (path.startsWith(outer) && /^[.[]/.test(path.slice(outer.length)));

/** The formula by its lines and the steps first, then the other parts of a job. */
function sections(context: Context): readonly HTMLElement[] {
  const { schema } = context;
  const document_ = context.document();
  const known = (path: string): Schema => schemaAt(schema, document_, path) ?? {};
  const lines = hasLines(document_);
  const isThere = (path: string) => at(document_, path) !== undefined;
  const section = (title: string, path: string, parts: readonly HTMLElement[]) => {
    const one = made("section");
    const fault = made("p", "fault");
    context.hold(path, { fault });
    one.append(made("h3", "", title), fault, ...parts);
    return one;
  };
  const formula = objectAt(context, known("formula"), "formula", lines ? ["phases", "materials"] : []);
  const [name, ...more] = formula;
  return [
    section("Formula", "formula", [
      ...(name ? [name] : []),
      ...(lines ? [...linesOf(context), partAt(context, known("formula.materials"), "formula.materials", false)] : []),
      ...more,
    ]),
    ...(isThere("process.steps")
      ? [section("Steps", "process.steps", listAt(context, known("process.steps"), "process.steps"))]
      : []),
    section("The rest of the job", "", [
      ...(isThere("process")
        ? [
            opening(context, "process", {
              title: "Process",
              gist: "",
              draw: () => objectAt(context, known("process"), "process", isThere("process.steps") ? ["steps"] : []),
            }),
          ]
        : []),
      ...objectAt(context, schema, "", ["formula", ...(isThere("process") ? ["process"] : [])]),
    ]),
  ];
}
