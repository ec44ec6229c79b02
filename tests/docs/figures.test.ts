import { readdirSync, readFileSync } from "node:fs";
import { DOMParser } from "linkedom";
import { expect, test } from "vitest";
import { draw } from "../../docs/plots/figure.js";
import { figures } from "../../docs/plots/figures.js";
import { measuredSection } from "../../docs/proof/measured.js";
import { root } from "../support/rooms.js";

const drawn = figures().map((figure) => {
  const svg = draw(figure);
  const document = new DOMParser().parseFromString(svg, "image/svg+xml");
  return { ...figure, svg, elements: [...document.querySelectorAll("svg, svg *")] };
});

const attributes = drawn.flatMap(({ name, elements }) =>
  elements.flatMap((element) =>
    [...element.attributes].map(({ name: attribute, value }) => ({ name, attribute, value })),
  ),
);

test("every figure says in a title and a description what it shows, and belongs to both", () => {
  expect(drawn).toHaveLength(21);
  for (const { name, title, description, elements } of drawn) {
    const [svg, first, second] = elements;
    expect([first?.tagName, first?.textContent, first?.id]).toEqual(["title", title, `${name}-title`]);
    expect([second?.tagName, second?.textContent, second?.id]).toEqual(["desc", description, `${name}-description`]);
    expect(svg?.getAttribute("role")).toBe("img");
    expect(svg?.getAttribute("aria-labelledby")).toBe(first?.id);
    expect(svg?.getAttribute("aria-describedby")).toBe(second?.id);
    expect(description).toMatch(/\d/);
    expect(`${title} ${description}`).not.toMatch(/NaN|undefined|Infinity|null/);
  }
});

test("every element that a figure opens is closed, so that it stands alone as a file", () => {
  for (const { svg } of drawn) {
    const open: string[] = [];
    for (const [, end, name, single] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/gi)) {
      if (end) expect(open.pop()).toBe(name);
      else if (!single) open.push(name ?? "");
    }
    expect(open).toEqual([]);
    expect(svg).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    expect(svg.replaceAll(/&(amp|lt|gt|quot|#\d+);/g, "")).not.toContain("&");
  }
});

test("every coordinate is a number", () => {
  const geometry = attributes.filter(({ attribute }) =>
    /^(d|transform|viewBox|width|height|r|[cd]?[xy][12]?|points)$/.test(attribute),
  );
  expect(geometry.length).toBeGreaterThan(100);
  for (const { value } of geometry) expect(value).toMatch(/^[-\d.,\s()a-z]+$/i);
  for (const { value } of geometry) expect(value).not.toMatch(/NaN|Infinity|undefined|null/);
  for (const { value } of geometry.filter(({ attribute }) => attribute === "d"))
    expect(value).toMatch(/^M(-?\d+(\.\d+)?(e-?\d+)?[,\s]?|[LCQHVZ])+$/);
});

test("words and points stand within the picture", () => {
  for (const { name, elements } of drawn) {
    const [, , width = 0, height = 0] = (elements[0]?.getAttribute("viewBox") ?? "").split(" ").map(Number);
    const places = elements.flatMap((element) => {
      const [, x, y] = /^translate\((-?[\d.]+),(-?[\d.]+)\)/.exec(element.getAttribute("transform") ?? "") ?? [];
      if (element.tagName === "circle") return [[element.getAttribute("cx"), element.getAttribute("cy")].map(Number)];
      return element.tagName === "text" && x !== undefined ? [[Number(x), Number(y)]] : [];
    });
    expect(places.length).toBeGreaterThan(8);
    for (const [x, y] of places) {
      expect(x, name).toBeGreaterThanOrEqual(0);
      expect(x, name).toBeLessThanOrEqual(width);
      expect(y, name).toBeGreaterThanOrEqual(0);
      expect(y, name).toBeLessThanOrEqual(height);
    }
  }
});

test("lines are told apart without colour, and follow a light or a dark page", () => {
  for (const { svg } of drawn) expect(svg).toContain("@media (prefers-color-scheme: dark)");
  const colours = new Set(
    attributes
      .filter(({ attribute }) => attribute === "fill" || attribute === "stroke")
      .map(({ value }) => value.replaceAll(" ", "")),
  );
  expect([...colours].sort()).toEqual(["currentColor", "none", "var(--plot-background)"]);
  for (const { name, elements } of drawn) {
    const dashes = new Set(elements.map((element) => element.getAttribute("stroke-dasharray")));
    expect(dashes.size, name).toBeGreaterThan(1);
  }
});

test("a figure loads nothing from anywhere", () => {
  for (const { attribute, value } of attributes) {
    expect(attribute).not.toMatch(/href|src/);
    if (attribute !== "xmlns") expect(value).not.toMatch(/url\(|\/\//);
  }
  for (const { svg } of drawn) expect(svg).not.toMatch(/@import|url\(|<(script|image|use|foreignObject)/i);
});

test("every figure stands on one page, under its title, and no page asks for another", () => {
  const picture = /!\[(.*?)\]\((.*?)\)/g;
  const guides = readdirSync(`${root}docs`)
    .filter((name) => name.endsWith(".md"))
    .flatMap((name) => [...readFileSync(`${root}docs/${name}`, "utf8").matchAll(picture)])
    .map(([, words, path]) => ({ words, path }));
  // The page Verification is written beside the figures.
  const made = [...measuredSection().join("\n").matchAll(picture)].map(([, words, path]) => ({
    words,
    path: `pages/${path}`,
  }));
  const asked = [...guides, ...made];
  const wanted = drawn.map(({ name, title }) => ({ words: title, path: `pages/${name}.svg` }));
  const byPath = (one: { path?: string | undefined }, other: { path?: string | undefined }) =>
    (one.path ?? "").localeCompare(other.path ?? "", "en");
  expect(asked.sort(byPath)).toEqual(wanted.sort(byPath));
});

/** Times as spoken in a description, in minutes. */
function minutesIn(text: string): number[] {
  return [...text.matchAll(/(?:(\d+) h)? ?(?:(\d+) min)?/g)]
    .filter(([all]) => /\d/.test(all))
    .map(([, hours = "0", minutes = "0"]) => 60 * Number(hours) + Number(minutes));
}

test("the window for adding is the one that the guide to particles reckons", () => {
  const guide = readFileSync(`${root}docs/particles.md`, "utf8");
  const said = drawn.find(({ name }) => name === "window-for-adding")?.description ?? "";
  const reckoned = [...guide.matchAll(/"([\d.]+) to ([\d.]+) °C, (\d+) to (\d+) min"/g)].map((match) =>
    match.slice(1).map(Number),
  );
  expect(reckoned).toHaveLength(3);
  const drawnAs = [...said.matchAll(/from ([\d.]+) °C after (.*?) to ([\d.]+) °C after (.*?)[;.]/g)].map(
    ([, warmest, open = "", coldest, closed = ""]) => [
      Number(warmest),
      Number(coldest),
      ...minutesIn(open),
      ...minutesIn(closed),
    ],
  );
  expect(drawnAs).toEqual(reckoned);
});

test("the cooling curves grow apart by about the cube root of the mass, as bodies of one shape and loss do", () => {
  const said = drawn.find(({ name }) => name === "cooling-at-scales")?.description ?? "";
  const [small = 0, middle = 0, large = 0] = [...said.matchAll(/: (\d.*?) to the addition/g)].flatMap(([, text = ""]) =>
    minutesIn(text),
  );
  const guide = readFileSync(`${root}docs/heat.md`, "utf8");
  expect(guide).toContain(`says ${middle} minutes`);
  expect(guide).toContain(`duration: ${small} * 60`);
  expect(middle / small / Math.cbrt(160)).toBeGreaterThan(1);
  expect(middle / small / Math.cbrt(160)).toBeLessThan(1.35);
  expect(large / middle / Math.cbrt(10)).toBeGreaterThan(1);
  expect(large / middle / Math.cbrt(10)).toBeLessThan(1.1);
});
