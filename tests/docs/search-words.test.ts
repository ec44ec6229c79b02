import { expect, test } from "vitest";
import { Finder } from "../../docs/search/finder.js";
import { foundOf } from "../../docs/search/found.js";
import { textOf } from "../../docs/search/read-site.js";
import type { Section } from "../../docs/search/section.js";
import { stemOf, wordsOf } from "../../docs/search/words.js";

const section = (kind: Section["kind"], title: string, text: string, questions?: readonly string[]): Section => ({
  url: `${title}.html`,
  kind,
  title,
  in: "gelwright/room",
  text,
  ...(questions && { questions }),
});

const sections = [
  section("function", "settlingOverCooling", "How far particles settle while a melt cools.", [
    "How far does it settle?",
  ]),
  section("function", "convert", "A value in another unit of the same dimension."),
  section("property", "convert", "Converts a value in another unit."),
  section("function", "packCoolingTime", "How long a filled pack takes until its centre has set."),
  section("section", "Yield stress", "What holds a particle in a gel: its yield stress."),
];
const finder = new Finder(sections);
const first = (question: string) => finder.find(question)[0]?.section.title;

test("words of one stem count as one", () => {
  for (const words of [
    ["settle", "settles", "settling", "settled"],
    ["evaporate", "evaporation", "evaporating"],
    ["stir", "stirring", "stirred"],
    ["density", "densities"],
    ["colour", "colors"],
    ["litre", "liters"],
    ["oxidise", "oxidizing"],
    ["cloudy", "cloudiness"],
  ])
    expect(new Set(words.map(stemOf)).size, words.join()).toBe(1);
  expect(stemOf("packing")).not.toBe(stemOf("pack"));
});

test("a name is taken apart, and a unit is read as its word", () => {
  expect(wordsOf("additionTemperatureMin")).toEqual(["addition", "temperature", "min"]);
  expect(wordsOf("1200 mPa·s, 85 °F")).toEqual(["1200", "pascalsecond", "85", "fahrenheit"]);
});

test("what people type leads to what it is called here", () => {
  expect(first("my glitter sinks")).toBe("settlingOverCooling");
  expect(first("jar overnight")).toBe("packCoolingTime");
  expect(first("lb to kg")).toBe("convert");
});

test("a slip of the fingers is forgiven, and a word that is not finished", () => {
  expect(first("yeild stres")).toBe("Yield stress");
  expect(first("setl")).toBe("settlingOverCooling");
});

test("a short word that no page has may lack a letter, but is not taken for another of its length", () => {
  expect(first("setl")).toBe("settlingOverCooling");
  expect(finder.find("puck")).toEqual([]);
});

test("what the gel does counts for more than that it is the gel", () => {
  const gels = ["gelForOil", "gelWithWater", "gelOverTime"].map((name) =>
    section("function", name, "Something of a gel."),
  );
  const found = new Finder([...gels, ...sections]).find("does the gel sink");
  expect(found[0]?.section.title).toBe("settlingOverCooling");
});

test("a temperature in a question asks for what depends on it", () => {
  const at = section("function", "viscosityAt", "The viscosity at a temperature.");
  const rest = section("function", "viscosityAtRest", "The viscosity of a melt that is not stirred.");
  expect(new Finder([rest, at]).find("viscosity at 30 °C")[0]?.section.title).toBe("viscosityAt");
  expect(new Finder([rest, at]).find("viscosity 30C")[0]?.section.title).toBe("viscosityAt");
});

test("a question that a better hit answers counts for less the second time", () => {
  const settled = ["settlingAlong", "settlingThrough", "settlingWithin"].map((name) =>
    section("function", name, "How far particles settle.", ["How far does it settle?"]),
  );
  const [one, two, three] = new Finder(settled).find("does it settle").map(({ score }) => score);
  expect(two).toBeCloseTo(0.85 * (one ?? 0), 9);
  expect(three).toBeCloseTo(0.85 ** 2 * (one ?? 0), 9);
});

test("a name is found in one piece too, with a slip in it", () => {
  expect(first("settlingovercoolng")).toBe("settlingOverCooling");
});

test("a function comes before a property of the same name", () => {
  expect(finder.find("convert").map((hit) => hit.section.kind)).toEqual(["function", "property"]);
});

test("a question about nothing here finds nothing", () => {
  expect(finder.find("xylophone zzyzx")).toEqual([]);
  expect(finder.find("")).toEqual([]);
});

test("a hit shows the question that it answers, with the words marked", () => {
  const [hit] = finder.find("does mica settle");
  if (!hit) throw new Error("nothing was found");
  const shown = foundOf(hit);
  expect(shown.title.map(({ text }) => text).join("")).toBe("How far does it settle?");
  expect(shown.title.filter((piece) => piece.hit).map(({ text }) => text)).toEqual(["settle"]);
  expect(shown.excerpt.map(({ text }) => text).join("")).toContain("How far particles settle");
});

test("of a page its words are read, without tags and without the source of its equations", () => {
  expect(textOf("<p>a &lt; <code>b</code><annotation>x^2</annotation></p><svg><text>no</text></svg>")).toBe("a < b");
});
