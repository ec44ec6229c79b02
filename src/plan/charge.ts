import type { Material } from "../formula/index.js";
import { volumeFractionOfOil } from "../gel/index.js";
import { heatCapacityBreakpoints, heatCapacityFunction, type Part } from "../heat/index.js";
import type { FlowCurve } from "../laws/index.js";
import { type ByDose, temperatureByDose } from "./by-dose.js";
import { holdsForEmulsion, toleranceOf, wasOnBench } from "./composition.js";
import {
  type Content,
  conductivityOf,
  densityOf,
  type Ends,
  grainsOf,
  massOf,
  portionOf,
  volumeOf,
} from "./contents.js";
import { heatParts, meltingInOil } from "./heat-parts.js";
import type { Job } from "./job.js";
import { emulsionCurveOf } from "./oil-laws.js";
import { doseRead, type Near, nearestReadings, type Readings, type Shift, shifted } from "./readings.js";
import { along, assume, type Cell, cell, otherwise, stated, unknown } from "./unknown.js";

/** A law of temperature, and where it has a breakpoint [°C]. */
export interface AlongTemperature {
  readonly at: (temperature: number) => number;
  readonly breakpoints: readonly number[];
}

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

  /** Computes a figure that depends on temperature once for each temperature. */
  private onceAt<T>(name: string, temperature: number, find: (temperature: number) => T): T {
    return this.once(name, () => along(find))(temperature);
  }

  /** The same with more in it. */
  with(more: readonly Content[]): Charge {
    return new Charge(this.job, [...this.contents, ...more], this.molten, this.heated);
  }

  /** A given mass of it [kg], of the same composition. */
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

  /** Its parts as the heat kernels take them. */
  parts(): readonly Part[] {
    const meltingOf = (material: Material): Material["melting"] => this.meltingOf(material);
    return this.once("parts", () => {
      const { contents, molten, heated } = this;
      return heatParts({ contents, molten, heated, room: this.job.process.room, meltingOf });
    });
  }

  /** Where a material melts; gel former in an oil is dissolved at the dissolving temperature, however high it melts by itself. */
  meltingOf(material: Material): Material["melting"] {
    return meltingInOil(material, () => this.dissolving().temperature);
  }

  /** Whether it is stated of every gel former that has to dissolve in it how it melts. */
  meltsBy(): boolean {
    const outer = this.job.bench.emulsion?.outerPhase;
    return this.contents.every(
      ({ material, phase }) => material.function !== "gel former" || phase === outer || material.melting !== undefined,
    );
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
    const capacityAt = this.once("specificHeat", () => heatCapacityFunction({ parts: this.dissolved().parts() }));
    return capacityAt(temperature) / this.mass;
  }

  // Density and conductivity

  /** Density at a temperature [kg/m³]. */
  density(temperature: number): number {
    return this.onceAt("density", temperature, (at) => densityOf(this.contents, at));
  }

  /** Volume at a temperature [m³], between what expansion that is not stated leaves open. */
  volume(temperature: number): Ends {
    return this.onceAt("volume", temperature, (at) => volumeOf(this.contents, at));
  }

  /** Density of what particles are suspended in [kg/m³]. */
  fluidDensity(temperature: number): number {
    const fluid = this.once("fluid", () => this.contents.filter(({ material }) => !material.particle));
    return this.onceAt("fluidDensity", temperature, (at) => densityOf(fluid, at));
  }

  /** Conductivity at a temperature [W/(m·K)]. */
  conductivity(temperature: number): number {
    return this.onceAt("conductivity", temperature, (at) => conductivityOf(this.contents, at));
  }

  /** Share of the volume that is particles of any kind. */
  grains(): number {
    return this.once("grains", (): number => grainsOf(this.contents));
  }

  // Setting and dissolving

  /** Where it sets, by its dose. */
  setting(): ByDose {
    return this.once("setting", (): ByDose => this.read("setsAt"));
  }

  /** Where its gel former dissolves, by its dose. */
  dissolving(): ByDose {
    return this.once("dissolving", (): ByDose => this.read("dissolvesAt"));
  }

  /** By the bench's doses, which hold for its gel former in its oil: in another oil it sets elsewhere. */
  private read(which: "setsAt" | "dissolvesAt"): ByDose {
    if (!wasOnBench(this.job, this.shares())) unknown("not-read", { field: "bench-doses", dose: this.dose() });
    return temperatureByDose(this.job.bench, this.dose(), which);
  }

  // Flow

  /** The viscosity readings of this composition in a direction: the nearest within the bench's tolerance, and nothing else stands in for them. */
  readings(direction: Readings["direction"]): Readings {
    return this.once(`readings ${direction}`, (): Readings => {
      const nearest = this.nearestReadings(direction);
      if (nearest && nearest.apart <= toleranceOf(this.job.bench)) return nearest.reading;
      return otherwise(
        () => this.shift(direction).readings,
        () => unknown("not-read", { field: "bench-viscosities", direction, phases: this.phases(), dose: this.dose() }),
      );
    });
  }

  /** The readings of another composition, shifted with the setting temperature (on heating the dissolving one), if that is asked for and these have none of their own. */
  shift(direction: Readings["direction"]): Shift {
    return this.once(`shift ${direction}`, (): Shift => {
      const { bench, formula } = this.job;
      const nearest = this.nearestReadings(direction);
      if (!nearest || !bench.viscosityShift || nearest.apart <= toleranceOf(bench)) return unknown("nothing-there");
      const which = direction === "cooling" ? "setsAt" : "dissolvesAt";
      const own = temperatureByDose(bench, this.dose(), which);
      assume("viscosity-shifted-with-setting");
      const read = temperatureByDose(bench, doseRead(nearest.reading, formula.materials), which);
      return shifted(nearest.reading, read.temperature, own.temperature);
    });
  }

  private nearestReadings(direction: Readings["direction"]): Near | undefined {
    return nearestReadings(this.job, { shares: this.shares(), dose: this.dose() }, direction);
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
      if (!holdsForEmulsion(this.job)) unknown("not-read", { field: "emulsion-thickness" });
      return emulsionCurveOf(this.job.bench, this.oilFraction(), this.grains());
    });
  }
}
