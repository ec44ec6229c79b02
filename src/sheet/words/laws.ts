import type { LawCode } from "../../plan/index.js";
import type { Each, Words } from "./types.js";

/** A law by its name, and its published source with how that was read if not first-hand. */
interface Law {
  readonly name: string;
  readonly source?: string;
}

const table: Each<LawCode, Law> = {
  "mass-balance": { name: "mass balance over what is weighed and the stated allowances" },
  "iso-16128-2": {
    name: "natural-origin content with formulation water",
    source: "ISO 16128-2 (2017, from memory), indices as the formula states them",
  },
  "mixing-temperature": {
    name: "mixing temperature by calorimetry",
    source: "OpenStax University Physics 2, section 1.4",
  },
  "heat-balance": { name: "heat balance of the vessel", source: "Bergman and others 2011, section 5.3, from memory" },
  "heater-power": { name: "constant heater power" },
  "heater-limited-by-its-temperature": { name: "heater limited by its own temperature" },
  "newton-cooling": { name: "Newton's law of cooling", source: "OpenStax Calculus 2, section 4.3" },
  "convection-and-radiation": {
    name: "natural convection and radiation from side and top",
    source: "Churchill and Chu 1975, Lloyd and Moran 1974, read second-hand",
  },
  jacket: {
    name: "heat flow through the jacket",
    source: "Perry's Chemical Engineers' Handbook 2008, section 11, from memory",
  },
  "held-as-stated": { name: "kept at the temperature that the process states" },
  "held-by-the-heater": { name: "held at its temperature by the heater" },
  "stirred-wall": {
    name: "correlation for a wall that a stirrer sweeps",
    source: "Penney 2004; Coker 2001 for a paddle; read second-hand",
  },
  "wall-temperature": { name: "temperature of the heated wall from heater power and heat-transfer coefficient" },
  "heat-of-stirring": { name: "heat of stirring from the shaft power" },
  "power-number": {
    name: "power number of the stirrer",
    source:
      "Furukawa and others 2012, read second-hand; shear rate of Metzner and Otto 1957, abstract read; constants of a kind between sources that differ",
  },
  "motor-margin": { name: "a quarter more power and torque than needed", source: "common practice, no source" },
  "blend-time": {
    name: "blend time of Grenville and Nienow",
    source: "ranges from Grenville 1992; Handbook of Industrial Mixing 2004, read second-hand; measured with baffles",
  },
  "revolutions-to-blend": { name: "revolutions to blend, as stated for the stirrer" },
  cavern: { name: "cavern that the stirrer moves", source: "Elson and others 1986, from memory" },
  vortex: {
    name: "upper bound of the vortex",
    source:
      "forced vortex within a free one, no baffles, Nagata 1975, from memory; no vortex below Re 300, Ludwig 1995",
  },
  level: { name: "level from volume and shape of the vessel" },
  "setting-line": { name: "between readings by dose", source: "form of Eldridge and Ferry 1954, from memory" },
  "ideal-solubility": { name: "ideal solubility", source: "Schröder 1893, from memory" },
  viscosity: { name: "viscosity between readings" },
  "temperature-at-viscosity": { name: "temperature at which the viscosity readings reach the viscosity asked for" },
  "flow-curve-along-oil": {
    name: "flow curve between readings along the oil fraction",
    source: "common practice, no source",
  },
  "suspension-viscosity": { name: "viscosity of a suspension", source: "Krieger and Dougherty 1959, from memory" },
  "flow-curve-fit": {
    name: "flow curve fitted to rheometer points",
    source: "least squares; the model by its information criterion, Burnham and Anderson 2002, from memory",
  },
  "dose-response": {
    name: "strength as a power of the dose above a threshold, fitted to trials",
    source: "common practice, no source",
  },
  "sphere-drag": { name: "drag of a sphere", source: "Cheng 2009, read second-hand" },
  "grain-drag": { name: "drag of a grain", source: "Ganser 1993, read second-hand" },
  "flake-drag": { name: "drag of a thin flake that sinks edge on", source: "Happel and Brenner 1965, from memory" },
  settling: {
    name: "hindered settling over the cooling of vessel and pack",
    source: "Richardson and Zaki 1954, read second-hand",
  },
  "window-for-adding": {
    name: "hindered settling over the cooling of the vessel",
    source: "Richardson and Zaki 1954, read second-hand",
  },
  "yield-stress-to-hold": {
    name: "yield stress that holds a particle",
    source:
      "Beris and others 1985, read second-hand, with the spread of published experiments, from memory; for a flake, shear on both faces",
  },
  "bubble-rise": {
    name: "bubble rise",
    source: "Stokes 1851; Hadamard 1911 and Rybczyński 1911 for a mobile surface; from memory",
  },
  "bubble-held": {
    name: "yield stress that holds a bubble",
    source: "Beris and others 1985, read second-hand, with the spread of published experiments, from memory",
  },
  "foam-head": { name: "Boyle's law for the stated air content, no bubble burst" },
  boiling: { name: "vapour pressure and mole fraction", source: "Raoult's law" },
  "pack-conduction": {
    name: "conduction in the pack",
    source: "Bergman and others 2011, sections 5.5, 5.6 and 5.8, from memory",
  },
  "pack-lump": { name: "the pack's own cooling curve" },
  shrinkage: { name: "shrinkage by density", source: "conservation of mass" },
  "drained-film": { name: "draining of a film on a vertical wall", source: "Jeffreys 1930, from memory" },
  "film-that-stays": {
    name: "thickest film that its yield stress holds on a wall",
    source: "Fox and others 2011, problem 8.46, read second-hand",
  },
  "nozzle-flow": { name: "flow through a nozzle", source: "Rabinowitsch 1929 after Steffe 1996, from memory" },
  ohnesorge: { name: "Ohnesorge number", source: "Ohnesorge 1936, read second-hand" },
  evaporation: {
    name: "evaporation through a film of air",
    source: "Bergman and others 2011, sections 6.7 and 7, from memory",
  },
  "thermal-exposure": {
    name: "time at a reference temperature that has the same effect, by the stated ageing kinetics",
  },
  oxidisability: { name: "Cox value", source: "Fatemi and Hammond 1980, from memory" },
  "addition-schedule": { name: "additions as a share of what is in the vessel, scaled from the bench" },
  "incorporation-time": {
    name: "incorporation times of the bench, scaled to this vessel",
    source: "common practice, no source",
  },
  "packed-droplets": { name: "packed droplets", source: "Princen and Kiss 1986 and 1989, from memory" },
  "droplets-in-shear": {
    name: "droplet breakup in shear",
    source:
      "curve of Grace 1982, from memory; constants of de Bruijn 1989, read second-hand; Jansen and others 2001, abstract",
  },
  "surfactant-coverage": { name: "surfactant on the surface of the droplets, from the area that it covers" },
  "refractive-index": {
    name: "refractive index of the mixture",
    source:
      "glycerin and water by the table of the Glycerine Producers' Association 1963, read second-hand; mixtures by Lorentz and Lorenz 1880, from memory",
  },
  "glycerin-for-index-match": {
    name: "share of glycerin that matches the oil's refractive index",
    source: "table of the Glycerine Producers' Association 1963, read second-hand",
  },
  "water-activity": {
    name: "water activity of glycerin and water",
    source: "Zhang, Grace and Sun 2022, read second-hand; its band of 0.03 by formulas from memory",
  },
  "scale-up": { name: "scale-up rules of stirring", source: "Handbook of Industrial Mixing 2004, from memory" },
  "fill-mass": {
    name: "mass by the density at 20 °C",
    source: "Directive 76/211/EEC, Annex I 2.2, for the temperature",
  },
  "tolerable-error": { name: "tolerable error by the table in the documents" },
  "batch-test": { name: "test of the batch by the table in the documents" },
  "target-fill": {
    name: "mean fill at which the stated share of batches fails the test",
    source: "packs normally distributed about the mean",
  },
  expansion: { name: "expansion by density", source: "conservation of mass" },
  "head-space": {
    name: "room that the product leaves in the pack",
    source: "three standard deviations to the largest fill, common practice, no source",
  },
  "packs-from-batch": { name: "whole packs of the fill that is aimed at" },
  "test-plan": { name: "samples by pulls and reserve" },
  "equivalent-storage": {
    name: "time at the temperature of use that ages as much, by the stated kinetics",
    source: "chemical change alone, one mechanism, the same air, water and light",
  },
  "ingredient-order": { name: "order of ingredients by weight when added, by the rule of the documents or the EU's" },
  "fragrance-allergens": { name: "fragrance allergens summed over all materials, by the list of the documents" },
  microplastics: { name: "restrictions of particles by the table of the documents" },
  "claim-figure": { name: "figure to be claimed, rounded down" },
  "certified-shares": { name: "shares by the classes of certification standards" },
  "daily-exposure": { name: "daily exposure by type of product" },
  "systemic-exposure": { name: "systemic exposure dose and margin as arithmetic" },
  "ingredient-limits": { name: "largest shares by the table of the documents" },
  "lot-order": { name: "durations of the steps; packs at rest need no operator" },
  "gel-with-water": {
    name: "water in a gel of packed droplets",
    source: "index by the table of the Glycerine Producers' Association 1963, read second-hand",
  },
  "film-runs-off": {
    name: "strength of packed droplets against the weight of a film",
    source: "Princen and Kiss 1989, from memory; Mason and others 1995, abstract",
  },
  "capillary-reach": { name: "capillary pull against the yield stress", source: "Bertola 2006, abstract" },
  turbidity: {
    name: "scattering by droplets in two pictures",
    source: "Bohren and Huffman 1983, Debye and Bueche 1949, from memory",
  },
  "required-hlb": { name: "HLB by mass of what is mixed", source: "common practice, no source" },
  "induction-time": {
    name: "induction time at another temperature",
    source: "Tan and others 2001, read in the abstract",
  },
  "water-uptake": {
    name: "diffusion of water vapour through still air",
    source: "Bergman and others 2011, section 6.7",
  },
};

function each(write: (law: Law) => string): Each<LawCode, string> {
  return Object.fromEntries(Object.entries(table).map(([code, law]) => [code, write(law)])) as Each<LawCode, string>;
}

/** Each law by its name alone, for a reason within a sentence. */
export const lawNames: Words["lawNames"] = each(({ name }) => name);

/** Each law with its published source. */
export const laws: Words["laws"] = each(({ name, source }) => (source === undefined ? name : `${name} (${source})`));
