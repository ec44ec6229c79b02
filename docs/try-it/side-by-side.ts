import { element } from "../in-page/element.js";
import { watchWidths } from "../in-page/fit.js";
import { brokenAt } from "./broken.js";
import { ask } from "./client.js";
import type { Jobs } from "./jobs.js";

/** Several jobs of the page in one table. */
export interface SideBySide {
  /** Lists the jobs that there are, and puts those that are ticked beside one another as they stand now. */
  readonly update: () => Promise<void>;
}

export function sideBySide(all: Jobs): SideBySide {
  const list = element("beside-jobs", HTMLElement);
  const output = element("beside", HTMLElement);
  const said = element("beside-status", HTMLElement);
  const ticked = new Set<string>();
  let turn = 0;

  function draw(): void {
    const names = all.names();
    for (const name of ticked) if (!names.includes(name)) ticked.delete(name);
    const drawn = [...list.querySelectorAll("label")].map(({ textContent }) => textContent?.trim());
    if (drawn.join("\n") === names.join("\n")) return;
    list.replaceChildren(
      ...names.map((name) => {
        const label = document.createElement("label");
        const tick = document.createElement("input");
        tick.type = "checkbox";
        tick.checked = ticked.has(name);
        tick.addEventListener("change", () => {
          if (tick.checked) ticked.add(name);
          else ticked.delete(name);
          void update();
        });
        label.append(tick, ` ${name}`);
        return label;
      }),
    );
  }

  async function update(): Promise<void> {
    draw();
    const mine = ++turn;
    const names = all.names().filter((name) => ticked.has(name));
    const broken = names.filter((name) => brokenAt(all.text(name)));
    if (names.length < 2 || broken.length > 0) return tell(broken, names.length === 1 ? "Tick another one." : "");
    const beside = await ask({ beside: names.map((name) => ({ name, document: JSON.parse(all.text(name)) })) });
    if (mine !== turn) return;
    if ("faulty" in beside) return tell(beside.faulty);
    output.innerHTML = beside.html;
    watchWidths(output);
    said.textContent = "";
  }

  function tell(faulty: readonly string[], otherwise = ""): void {
    output.replaceChildren();
    said.textContent = faulty.length > 0 ? `There are faults in: ${faulty.join("; ")}.` : otherwise;
  }

  return { update };
}
