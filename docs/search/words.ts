/** Words that carry no subject in a question. */
const silent = new Set(
  "a about above after again all also am an and any are as at be been before but by can cannot could do does doing done each either for from get gets getting give go goes going good got had has have having here how i if in into is isn it its just know let like made make makes making may me might must my myself need needs no nor not now of off ok on once one only or other our out over own please put same shall she should so some something still such take takes than that the their them then there these they thing this those to too tell try under until up use used using very want was way we well were what when where whether which while who whom why will with without won would wouldn you your yours ll re ve don doesn didn aren enough left really between per too".split(
    " ",
  ),
);

/** Signs that a keyboard lacks or a unit is spelled with, as words. */
const signs: readonly (readonly [RegExp, string])[] = [
  [/°\s*c\b|℃|\bdeg(?:rees?)?\s*c\b/gi, " celsius "],
  [/°\s*f\b|℉|\bdeg(?:rees?)?\s*f\b/gi, " fahrenheit "],
  [/(?<=\d)\s?c\b/gi, " celsius "],
  [/(?<=\d)\s?f\b/gi, " fahrenheit "],
  [/\bm?pa[\s·.*-]?s\b/gi, " pascalsecond "],
  [/\bc\.?\s?p(?:s)?\b(?!\w)/gi, " centipoise "],
  [/\bhead-?spaces?\b/gi, " head space "],
  [/\bscale-?ups?\b/gi, " scale up "],
  [/\bq\.\s?s\.?/gi, " qs "],
  [/\bg[\s-]?forces?\b|\bx\s?g\b/gi, " gforce "],
];

/** The plain words of a text, in its order: accents taken off, a name such as `additionWindow` taken apart, not MoS. */
export function wordsOf(text: string): string[] {
  const spelled = signs.reduce((whole, [sign, word]) => whole.replaceAll(sign, word), text);
  return spelled
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .replaceAll(/(?<=\p{Ll}{2})(?=\p{Lu})/gu, " ")
    .replaceAll(/['’]/g, "")
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== "");
}

const stems = new Map<string, string>();

/** The stem of a word: plural, -ing, -ed, -tion and a final e are taken off. Two words of one stem count as one. */
export function stemOf(word: string): string {
  const known = stems.get(word);
  if (known !== undefined) return known;
  const stem = shorten(word);
  stems.set(word, stem);
  return stem;
}

/** Packing is what droplets do, a pack is what is filled. */
const whole = new Set(["packing", "packed"]);

/** One spelling of what is spelled in two ways: colour and color, fibre and fiber, oxidise and oxidize. */
const oneSpelling = (word: string): string =>
  word
    .replace(/(?<=[a-z]{2}[^aeiou])our(?=s?$|ed$|ing$|less$)/, "or")
    .replace(/(?<=[a-z]{2}[bt])re(?=s?$)/, "er")
    .replace(/(?<=[a-z]{3}[iy])z(?=(?:e[sd]?|ing|ation)$)/, "s")
    .replace(/(?<=[a-z]{3})iness$/, "y");

function shorten(word: string): string {
  if (whole.has(word)) return word;
  let stem = oneSpelling(word);
  if (/(ss|us|is)$/.test(stem) === false && stem.length > 3) stem = stem.replace(/ies$/, "y").replace(/s$/, "");
  if (stem.length > 5) stem = stem.replace(/(?:ation|ating|ated|ator)$/, "at");
  // Not lotion, motion, option.
  if (stem.length > 6) stem = stem.replace(/([st])ion$/, "$1");
  if (stem.length > 5) stem = stem.replace(/ing$/, "");
  if (stem.length > 4) stem = stem.replace(/ed$/, "");
  if (stem.length > 4) stem = stem.replace(/ly$/, "");
  if (stem.length > 3) stem = stem.replace(/([bdfglmnprt])\1$/, "$1");
  if (stem.length > 3) stem = stem.replace(/e$/, "");
  return stem.replace(/y$/, "i");
}

const unitWords =
  "pounds? lbs? ozs? ounces? kgs? kilos? kilograms? mgs? grams? tonnes? tons? gallons? gals? cups? pints? quarts? ml millilitres? milliliters? litres? liters? cl inch inches foot feet mm cm metres? meters? yards? mbar bar psi mmhg kpa pascals? pa centipoise poise mpas pascalsecond cst stokes fahrenheit celsius kelvin btu kwh kw watts? joules? calories horsepower hp";
const units = new RegExp(`^(?:${unitWords.replaceAll(" ", "|")})$`);

/** Whether a word is a unit and no subject. */
export function isUnit(word: string): boolean {
  return units.test(word);
}

/** Whether a word of a question names no subject. A number alone names none, unless it is that of a standard. */
export function isSilent(word: string): boolean {
  return silent.has(word) || /^(\p{L}|\d{1,3})$/u.test(word);
}

/** Words for what all of it is about, and for amounts of anything; beside others they say little. */
const faint = new Set(
  ["gel", "product", "mixture", "paste", "stuff", "much", "many", "more", "less", "need", "needed", "oil"].map(stemOf),
);

/** Whether a stem names what everything here is about. */
export function isFaint(stem: string): boolean {
  return faint.has(stem);
}

/** The stems of a text, for the index. */
export function stemsOf(text: string): string[] {
  return wordsOf(text)
    .filter((word) => !isSilent(word))
    .map(stemOf);
}
