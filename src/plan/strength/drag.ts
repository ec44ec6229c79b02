import type { Material } from "../../formula/index.js";
import { type DragLaw, flakeOfVolume } from "../../particles/index.js";

type Particle = NonNullable<Material["particle"]>;

/** Up to here a flake is thin enough for the disc without a rim; a spheroid of the same volume and width from here on. */
const thinnest = 0.1;
/** Thickness of a spheroid over that of the disc of equal width and volume; from its inverse on it is a ball. */
const lens = 1.5;

/** How the melt resists a particle, and what to call it. A flake is taken edge on, as it sinks fastest. */
export function dragOf({ diameter, thickness, sphericity }: Particle): {
  readonly law: DragLaw;
  readonly name: string;
} {
  if (sphericity !== undefined) return { law: { law: "ganser", sphericity }, name: "Ganser's drag of a grain" };
  if (thickness === undefined) return sphere;
  const { aspectRatio } = flakeOfVolume({ diameter, thickness });
  const orientation = "edgewise";
  if (aspectRatio <= thinnest)
    return { law: { law: "disc", aspectRatio, orientation }, name: "drag of a thin flake that sinks edge on" };
  return lens * aspectRatio > 1
    ? sphere
    : {
        law: { law: "spheroid", aspectRatio: lens * aspectRatio, orientation },
        name: "drag of a flake that sinks edge on",
      };
}

const sphere = { law: { law: "cheng" }, name: "Cheng's drag of a sphere" } as const;
