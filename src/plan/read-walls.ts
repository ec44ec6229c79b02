import { aboveZero, type Draft, type Findings, join } from "../formula/document.js";
import type { Vessel } from "./job.js";
import type { VesselDocument } from "./vessel-document.js";

/** The walls through which a vessel is heated and cooled. What is stated has a source; what is not is found later. */
export function readWalls(
  { heater, heatedWall, jacket }: Draft<VesselDocument>,
  findings: Findings,
): Pick<Vessel, "heatedWall" | "jacket"> {
  const inWall = (key: string): string => join("vessel.heatedWall", key);
  const inJacket = (key: string): string => join("vessel.jacket", key);
  const coefficient = (text: string | undefined, path: string): number | undefined =>
    findings.optional(text, "heatTransferCoefficient", path, aboveZero);
  if (heater?.temperatureMax !== undefined && !heatedWall)
    findings.note(
      "vessel.heater.temperatureMax",
      heater.temperatureMax,
      "a heatedWall beside it, through which the heat passes",
    );
  if (heatedWall?.coefficient !== undefined && heatedWall.source === undefined)
    findings.note(inWall("source"), "nothing", "where the coefficient comes from");
  if (jacket) {
    const { conductance, area, insideCoefficient, outsideCoefficient, source } = jacket;
    if (conductance === undefined && (area === undefined || outsideCoefficient === undefined))
      findings.note("vessel.jacket", "no conductance", "a conductance, or area and outsideCoefficient to find it from");
    if ((insideCoefficient ?? outsideCoefficient) !== undefined && source === undefined)
      findings.note(inJacket("source"), "nothing", "where the coefficients come from");
  }
  return {
    heatedWall: heatedWall && {
      area: findings.quantity(heatedWall.area, "area", inWall("area"), aboveZero),
      coefficient: coefficient(heatedWall.coefficient, inWall("coefficient")),
      source: heatedWall.source,
    },
    jacket: jacket && {
      temperature: findings.quantity(jacket.coolant, "temperature", inJacket("coolant")),
      conductance: findings.optional(jacket.conductance, "thermalConductance", inJacket("conductance"), aboveZero),
      capacityFlow: findings.optional(jacket.capacityFlow, "thermalConductance", inJacket("capacityFlow"), aboveZero),
      area: findings.optional(jacket.area, "area", inJacket("area"), aboveZero),
      coefficient: coefficient(jacket.insideCoefficient, inJacket("insideCoefficient")),
      outsideCoefficient: coefficient(jacket.outsideCoefficient, inJacket("outsideCoefficient")),
      source: jacket.source,
    },
  };
}
