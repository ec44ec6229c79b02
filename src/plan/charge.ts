import { conductivityOfMixture, densityOfMixture, type Material } from "../formula/index.js";
import { densityGlycerinWater, dissolvingTemperature, temperatureAtDose, volumeFractionOfOil } from "../gel/index.js";
import { heatCapacityBreakpoints, heatCapacityFunction, type Part } from "../heat/index.js";
import { conductivityAt, densityAt, type FlowCurve, specificHeatAt } from "../laws/index.js";
import { flowCurveAtOil } from "../mixing/index.js";
import { kriegerDoughertyViscosity } from "../rheology/index.js";
import type { Basis } from "./figure.js";
import type { Job } from "./job.js";
import { doseKey, oilLawsOf, type Readings, readingsOf } from "./setting.js";
import { by, type Cell, cell, stated, unknown } from "./unknown.js";

/** What of one material is in the vessel, by the phase that it came with. */
export interface Content {
  readonly phase: string;
  readonly material: Material;
  /** Mass [kg]. */
  readonly mass: number;
}

/** A temperature by the dose of gel former, and how it was found. */
export interface ByDose {
  readonly temperature: number;
  readonly basis: Basis;
  readonly by: "measured" | "between" | "ideal";
}

/** A law of temperature, and where it has a breakpoint [°C]. */
export interface AlongTemperature {
  readonly at: (temperature: number) => number;
  readonly breakpoints: readonly number[];
}

/** Just outside the measured doses, one this near to a dose counts as that dose: evaporation and weighing move it by as much. */
const sameDose = 0.02;

/** What lacks a density or a conductivity may be a twentieth of the mass: a gram of pigment does not decide how a jar of oil conducts. */
const knownMin = 0.95;

/** A law of specific heat that ends no further than this from the room is continued to it [K]: common practice, no source. */
const near = 10;

/** By volume, packed grains of one size in disorder: common practice, no source. */
const packedGrains = 0.64;

/** How far the share of a material may be from the bench's, unless the bench states it: common practice, no source. */
const usualTolerance = 0.005;

/**
 * What is in the vessel or in a pack, with everything that follows from its composition. Each figure is computed in one
 * place, when it is first asked for, and remembered; one that is not known ends the evaluation that asked.
 */
export class Charge {
  readonly job: Job;
  readonly contents: readonly Content[];
  /** Keys of the materials that have melted or dissolved and not set since. */
  readonly molten: ReadonlySet<string>;
  /** Whether it was ever warmed by more than stirring. */
  readonly heated: boolean;
  /** [kg]. */
  readonly mass: number;

  private readonly found: Map<string, Cell<unknown>> = new Map();

  /** Of some contents in a job. */
  constructor(job: Job, contents: readonly Content[], molten: ReadonlySet<string> = new Set(), heated = false) {
    this.job = job;
    this.contents = contents;
    this.molten = molten;
    this.heated = heated;
    this.mass = massOf(contents);
  }

  /** Finds a figure when it is first asked for, and remembers it. */
  private once<T>(name: string, find: () => T): T {
    const there = this.found.get(name);
    if (there) return there() as T;
    const own = cell(find);
    this.found.set(name, own);
    return own();
  }

  /** The same with more in it. */
  with(more: readonly Content[]): Charge {
    return new Charge(this.job, [...this.contents, ...more], this.molten, this.heated);
  }

  /** So much of it, mixed as it is. */
  portion(mass: number): Charge {
    return new Charge(this.job, portionOf(this.contents, mass), this.molten, this.heated);
  }

  /** The same in another state of its materials. */
  as(molten: ReadonlySet<string>, heated: boolean = this.heated): Charge {
    return new Charge(this.job, this.contents, molten, heated);
  }

  /** The same with everything dissolved. */
  dissolved(): Charge {
    return this.once("dissolved", (): Charge => this.as(new Set(this.contents.map(({ material }) => material.key))));
  }

  /** The phases in it, each once. */
  phases(): readonly string[] {
    return this.once("phases", (): readonly string[] => [...new Set(this.contents.map(({ phase }) => phase))]);
  }

  /** Share that is gel former which melts into the oil [0 to 1]; the outer phase of an emulsion is none. */
  dose(): number {
    return this.once("dose", (): number => {
      const outer = this.job.bench.emulsion?.outerPhase;
      const former = this.contents.filter(
        ({ material, phase }) => material.function === "gel former" && phase !== outer,
      );
      return this.mass > 0 ? massOf(former) / this.mass : 0;
    });
  }

  /** Share of each material. */
  shares(): ReadonlyMap<string, number> {
    return this.once("shares", (): ReadonlyMap<string, number> => {
      const shares = new Map<string, number>();
      for (const { material, mass } of this.contents)
        shares.set(material.key, (shares.get(material.key) ?? 0) + mass / this.mass);
      return shares;
    });
  }

  // Heat

  /**
   * Its parts as the heat kernels take them: what is solid melts on the way up; what has dissolved does not freeze above
   * the setting temperature. What has one specific heat at all temperatures is one part.
   */
  parts(): readonly Part[] {
    return this.once("parts", (): readonly Part[] => {
      const parts: Part[] = [];
      let mass = 0;
      let capacity = 0;
      for (const { material, mass: own } of this.contents) {
        const { key, melting } = material;
        const specificHeat = this.heated ? specificHeatOf(material) : inTheRoom(material, this.job.process.room);
        if (melting && !this.molten.has(key))
          parts.push({
            mass: own,
            specificHeat: { law: "melting", solid: specificHeat, liquid: specificHeat, ...melting },
          });
        else if (specificHeat.law === "constant") {
          mass += own;
          capacity += own * specificHeat.specificHeat;
        } else parts.push({ mass: own, specificHeat });
      }
      return mass > 0 ? [{ mass, specificHeat: capacity / mass }, ...parts] : parts;
    });
  }

  /** The same with the wall of the vessel, if that is stated to warm along. */
  partsWithWall(): readonly Part[] {
    return this.once("partsWithWall", (): readonly Part[] => {
      const { wall } = this.job.vessel;
      if (!wall) return this.parts();
      const { mass, specificHeat } = wall;
      return [{ mass, specificHeat }, ...this.parts()];
    });
  }

  /** Heat capacity with the wall [J/K]. */
  heatCapacity(): AlongTemperature {
    return this.once("heatCapacity", (): AlongTemperature => {
      const parts = this.partsWithWall();
      return { at: heatCapacityFunction({ parts }), breakpoints: heatCapacityBreakpoints({ parts }) };
    });
  }

  /** Specific heat of the whole, melted, at a temperature [J/(kg·K)]. */
  specificHeat(temperature: number): number {
    return heatCapacityFunction({ parts: this.dissolved().parts() })(temperature) / this.mass;
  }

  // Density and conductivity

  /** Density at a temperature [kg/m³]. */
  density(temperature: number): number {
    return densityOf(this.contents, temperature);
  }

  /** Density of what particles are suspended in [kg/m³]. */
  fluidDensity(temperature: number): number {
    return densityOf(
      this.contents.filter(({ material }) => !material.particle),
      temperature,
    );
  }

  /** Conductivity at a temperature [W/(m·K)]. */
  conductivity(temperature: number): number {
    const parts = this.contents.flatMap(({ material: { conductivity: law, density }, mass }) =>
      law && density
        ? [
            {
              mass,
              density: densityAt({ law: density, temperature }),
              conductivity: conductivityAt({ law, temperature }),
            },
          ]
        : [],
    );
    if (massOf(parts) < knownMin * this.mass) lacking(this.contents, "conductivity");
    return conductivityOfMixture({ parts });
  }

  /** Share of the volume that is particles of any kind. */
  grains(): number {
    return this.once("grains", (): number => {
      const volumeOf = ({ material, mass }: Content): number =>
        mass /
        (material.particle?.density ??
          densityAt({ law: stated(material.density, "material-density", { of: material.key }), temperature: 20 }));
      const sum = (of: readonly Content[]): number => of.reduce((total, one) => total + volumeOf(one), 0);
      const particles = this.contents.filter(({ material }) => material.particle);
      return particles.length === 0 ? 0 : sum(particles) / sum(this.contents);
    });
  }

  // Setting and dissolving

  /** Where it sets, by its dose. */
  setting(): ByDose {
    return this.once("setting", (): ByDose => this.byDose("setsAt"));
  }

  /** Where its gel former dissolves, by its dose. */
  dissolving(): ByDose {
    return this.once("dissolving", (): ByDose => this.byDose("dissolvesAt"));
  }

  private byDose(which: "setsAt" | "dissolvesAt"): ByDose {
    const { doses = [], idealSolubility, source } = this.job.bench;
    const dose = this.dose();
    if (dose === 0) unknown("nothing-there", { field: "bench-doses" });
    const points = doses.map((point) => ({ dose: point.gelFormer, temperature: point[which] }));
    const basis: Basis = { kind: "reading", key: "bench-doses", source };
    const inside = !points.every((point) => point.dose > dose) && !points.every((point) => point.dose < dose);
    const same = points.find((point) => Math.abs(point.dose / dose - 1) <= sameDose)?.temperature;
    if (inside) {
      const temperature = by("setting-line", () => temperatureAtDose({ dose, points }));
      return { temperature, basis, by: temperature === same ? "measured" : "between" };
    }
    if (same !== undefined) return { temperature: same, basis, by: "measured" };
    if (!idealSolubility || which === "setsAt") return unknown("not-read", { field: "bench-doses", dose });
    const { meltingPoint: temperatureMelting, ...pair } = idealSolubility;
    const temperature = by("ideal-solubility", () =>
      dissolvingTemperature({ ...pair, temperatureMelting, massFractionGelFormer: dose }),
    );
    return { temperature, basis: { kind: "law", key: "ideal-solubility" }, by: "ideal" };
  }

  // Flow

  /** The viscosity readings of this composition in a direction: the nearest within the bench's tolerance, and nothing else stands in for them. */
  readings(direction: Readings["direction"]): Readings {
    const { tolerance = usualTolerance } = this.job.bench;
    const near = readingsOf(this.job)
      .filter((reading) => reading.direction === direction)
      .map((reading) => ({ reading, apart: this.apart(reading.shares) }))
      .filter(({ apart }) => apart <= tolerance)
      .sort((one, other) => one.apart - other.apart)[0];
    return (
      near?.reading ??
      unknown("not-read", { field: "bench-viscosities", direction, phases: this.phases(), dose: this.dose() })
    );
  }

  /** Largest difference in the share of any material from a composition. */
  private apart(shares: ReadonlyMap<string, number>): number {
    const own = this.shares();
    const dose = shares.get(doseKey);
    let largest = dose === undefined ? 0 : Math.abs(dose - this.dose());
    for (const key of new Set([...own.keys(), ...shares.keys()])) {
      // A reading that states its own dose is not of the bench's formula: there its dose counts.
      if (key === doseKey || dose !== undefined) continue;
      largest = Math.max(largest, Math.abs((own.get(key) ?? 0) - (shares.get(key) ?? 0)));
    }
    return largest;
  }

  // Emulsion

  /** Whether it holds the outer phase of an emulsion. */
  isEmulsion(): boolean {
    return this.once("isEmulsion", (): boolean => {
      const outer = this.job.bench.emulsion?.outerPhase;
      return outer !== undefined && this.contents.some(({ phase }) => phase === outer);
    });
  }

  /** The outer phase of an emulsion, particles aside. */
  outer(): readonly Content[] {
    return this.once("outer", (): readonly Content[] => {
      const { outerPhase } = stated(this.job.bench.emulsion, "bench-emulsion");
      return this.contents.filter(({ phase, material }) => phase === outerPhase && !material.particle);
    });
  }

  /** The oil that has gone into it: everything of other phases, particles aside, whichever step charged it. */
  oil(): readonly Content[] {
    return this.once("oil", (): readonly Content[] => {
      const { outerPhase } = stated(this.job.bench.emulsion, "bench-emulsion");
      return this.contents.filter(({ phase, material }) => phase !== outerPhase && !material.particle);
    });
  }

  /** Densities of both phases at the room's temperature [kg/m³]. */
  phaseDensities(): { readonly densityGelFormer: number; readonly densityOil: number } {
    return this.once("phaseDensities", () => ({
      densityGelFormer: densityOf(this.outer(), this.job.process.room),
      densityOil: densityOf(this.oil(), this.job.process.room),
    }));
  }

  /** Volume fraction of oil in oil and outer phase. */
  oilFraction(): number {
    return this.once("oilFraction", (): number => {
      const oil = massOf(this.oil());
      if (oil === 0) return 0;
      const massFractionOil = oil / (oil + massOf(this.outer()));
      return volumeFractionOfOil({ massFractionOil, ...this.phaseDensities() });
    });
  }

  /** The flow curve of an emulsion, by the bench's readings along the oil fraction, at the room's temperature; particles thicken it. */
  emulsionCurve(): FlowCurve {
    return this.once("emulsionCurve", (): FlowCurve => {
      const { viscosity, flowIndex, yieldStress } = oilLawsOf(this.job.bench);
      if (viscosity.length < 2) unknown("not-stated", { field: "emulsion-thickness" });
      const shearRate = stated(this.job.bench.emulsion?.thickness?.shearRate, "emulsion-thickness-shear-rate");
      if (flowIndex.length < 2) unknown("not-stated", { field: "emulsion-thickness-flow-index" });
      // One yield stress is a point and no line.
      const yields = yieldStress.length > 1 ? { yieldStress } : {};
      const curve = by(
        "flow-curve-along-oil",
        () =>
          flowCurveAtOil({
            volumeFractionOil: this.oilFraction(),
            readings: { shearRate, viscosity, flowIndex, ...yields },
          }),
        { field: "emulsion-thickness" },
      );
      const volumeFraction = this.grains();
      if (volumeFraction === 0) return curve;
      const factor = by("suspension-viscosity", () =>
        kriegerDoughertyViscosity({ volumeFraction, volumeFractionPacked: packedGrains }),
      );
      const consistency = curve.consistency * factor;
      // Of a yield stress that is more than particles make of it: a wall that moves then, moves.
      return curve.law === "power-law"
        ? { ...curve, consistency }
        : { ...curve, consistency, yieldStress: curve.yieldStress * factor };
    });
  }
}

/** Mass [kg]. */
export function massOf(parts: readonly { readonly mass: number }[]): number {
  return parts.reduce((sum, { mass }) => sum + mass, 0);
}

/** So much of some contents, mixed as they are; nothing of them for no mass. */
export function portionOf(contents: readonly Content[], mass: number): readonly Content[] {
  const share = mass / massOf(contents);
  return mass > 0 ? contents.map((content) => ({ ...content, mass: content.mass * share })) : [];
}

/** Whether something counts as glycerin in an outer phase. */
export function isGlycerin({ material }: Content): boolean {
  return material.propertiesOf === "glycerin";
}

/** Whether something counts as water in an outer phase. */
export function isWater({ material }: Content): boolean {
  return material.propertiesOf === "water" || material.function === "water" || material.formulationWater;
}

/** Density of some contents at a temperature [kg/m³]: volumes add up, but glycerin and water, which contract, go by their table. */
export function densityOf(contents: readonly Content[], temperature: number): number {
  const glycerin = massOf(contents.filter(isGlycerin));
  const water = massOf(contents.filter(isWater));
  const pair = glycerin > 0 && water > 0 && temperature >= 15 && temperature <= 30;
  const parts: { readonly mass: number; readonly density: number }[] = pair
    ? [
        {
          mass: glycerin + water,
          density: densityGlycerinWater({ massFractionGlycerin: glycerin / (glycerin + water), temperature }),
        },
      ]
    : [];
  for (const content of contents) {
    if (pair && (isGlycerin(content) || isWater(content))) continue;
    const { density: law } = content.material;
    if (law) parts.push({ mass: content.mass, density: densityAt({ law, temperature, beyond: "extend" }) });
  }
  const whole = massOf(contents);
  if (whole === 0) unknown("nothing-there");
  if (massOf(parts) < knownMin * whole) lacking(contents, "density");
  return densityOfMixture({ parts });
}

/** Names the heaviest material that lacks a property. */
function lacking(contents: readonly Content[], property: "density" | "conductivity"): never {
  const [heaviest] = contents
    .filter(({ material }) => !material[property] || !material.density)
    .sort((one, other) => other.mass - one.mass);
  const without = heaviest?.material.density ? property : "density";
  return unknown("not-stated", { field: `material-${without}`, ...(heaviest && { of: heaviest.material.key }) });
}

function specificHeatOf({ specificHeat, key }: Material): NonNullable<Material["specificHeat"]> {
  return stated(specificHeat, "material-specific-heat", { of: key });
}

/** The specific heat at the room's temperature, of what is only ever stirred there. */
function inTheRoom(material: Material, room: number): NonNullable<Material["specificHeat"]> {
  const law = specificHeatOf(material);
  if (law.law !== "polynomial") return law;
  const { temperatureMin = room, temperatureMax = room } = law;
  if (room < temperatureMin - near || room > temperatureMax + near) return law;
  return { law: "constant", specificHeat: specificHeatAt({ law, temperature: room, beyond: "extend" }) };
}
