import { type PlotOptions, plot } from "@observablehq/plot";
import { parseHTML } from "linkedom";

/** A picture of what the library computes, before it is drawn. */
export interface Figure {
  /** Of the file, without its ending. */
  readonly name: string;
  /** What it shows, in a line. */
  readonly title: string;
  /** What somebody who cannot see it should know: the figures computed, not the looks. */
  readonly description: string;
  /** Marks and scales. Lines are told apart by their dashes and by the words beside them, never by colour. */
  readonly options: PlotOptions;
}

/** A picture of its own ground, so that it can be read where a browser does not tell an image which scheme the page has. */
const scheme = `
svg { --plot-background: #f2f4f8; background: var(--plot-background); color: #222; white-space: pre; }
@media (prefers-color-scheme: dark) { svg { --plot-background: #2b2e33; color: #f5f5f5; } }`;

/** The figure as a file of SVG that stands alone. */
export function draw({ name, title, description, options }: Figure): string {
  const { document } = parseHTML("<body></body>");
  const margins = { marginLeft: 56, marginRight: 40, marginTop: 36, marginBottom: 48 };
  const picture = plot({ width: 720, height: 420, ...margins, style: { fontSize: "13px" }, ...options, document });
  const child = (element: string, text: string, id?: string) => {
    const made = document.createElementNS("http://www.w3.org/2000/svg", element);
    made.textContent = text;
    if (id !== undefined) made.setAttribute("id", id);
    return made;
  };
  picture.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  picture.setAttribute("role", "img");
  picture.setAttribute("aria-labelledby", `${name}-title`);
  picture.setAttribute("aria-describedby", `${name}-description`);
  // The library's own style is for a picture within a page.
  picture.querySelector("style")?.remove();
  // It names its marks for itself; title and description say what they mean.
  for (const mark of picture.querySelectorAll("[aria-label]")) mark.removeAttribute("aria-label");
  picture.prepend(
    child("title", title, `${name}-title`),
    child("desc", description, `${name}-description`),
    child("style", scheme),
  );
  return `${picture.outerHTML}\n`;
}
