import { aboveZero, type Draft, type Findings, join } from "./document.js";
import type { ParticleDocument } from "./material-document.js";
import type { Particle } from "./types.js";

/** Second pass over the particles of a material. */
export function readParticle(draft: Draft<ParticleDocument>, at: string, findings: Findings): Particle {
  const { sphericity, sizes } = draft;
  const diameter = findings.quantity(draft.diameter, "length", join(at, "diameter"), aboveZero);
  const thickness = findings.optional(draft.thickness, "length", join(at, "thickness"), aboveZero);
  // As thick as wide, a disc is this much of the diameter of its sphere.
  if (thickness !== undefined && thickness > diameter * Math.cbrt(2 / 3))
    findings.note(join(at, "thickness"), draft.thickness, `at most 0.87 of the diameter, ${draft.diameter}`);
  if (thickness !== undefined && sphericity !== undefined)
    findings.note(join(at, "sphericity"), sphericity, "a flake's thickness or a grain's sphericity, not both");
  return {
    diameter,
    density: findings.quantity(draft.density, "density", join(at, "density"), aboveZero),
    thickness,
    sphericity,
    sizes: sizes && readSizes(sizes, join(at, "sizes"), findings),
    oilAbsorption: findings.optional(draft.oilAbsorption, "massFraction", join(at, "oilAbsorption"), aboveZero),
  };
}

function readSizes(
  draft: Draft<NonNullable<ParticleDocument["sizes"]>>,
  at: string,
  findings: Findings,
): Particle["sizes"] {
  const sizes = draft.map((size, i) => ({
    diameter: findings.quantity(size?.diameter, "length", join(join(at, i), "diameter"), aboveZero),
    massFraction: findings.quantity(size?.share, "massFraction", join(join(at, i), "share"), 0),
  }));
  const whole = sizes.reduce((sum, { massFraction }) => sum + massFraction, 0);
  if (Math.abs(whole - 1) > 1e-3) findings.note(at, `shares of ${whole * 100} % in all`, "shares that add up to 100 %");
  return sizes;
}
