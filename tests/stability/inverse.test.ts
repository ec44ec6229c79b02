import fc from "fast-check";
import { centrifugeSpeed, equivalentStorage, relativeCentrifugalForce, storageFor } from "gelwright/stability";
import { between } from "../support/between.js";
import { undoes } from "../support/undoes.js";

undoes(
  "centrifugeSpeed",
  "relativeCentrifugalForce",
  fc.tuple(between(1, 500), between(0.02, 0.5)),
  ([speed, radius]) => [
    centrifugeSpeed({ relativeCentrifugalForce: relativeCentrifugalForce({ speed, radius }), radius }),
    speed,
  ],
);

const kinetics = fc.oneof(
  between(1.5, 4).map((q10) => ({ law: "q10", q10 }) as const),
  between(4e4, 1.5e5).map((activationEnergy) => ({ law: "arrhenius", activationEnergy }) as const),
);

undoes(
  "storageFor",
  "equivalentStorage",
  fc.tuple(kinetics, between(30, 55), between(1e5, 1e8)),
  ([law, temperature, duration]) => {
    const store = { kinetics: law, temperature, temperatureReference: 25 };
    const stands = equivalentStorage({ ...store, duration });
    const durationReference = stands.known ? stands.duration.value : Number.NaN;
    const again = storageFor({ ...store, durationReference });
    return [again.known ? again.duration.value : Number.NaN, duration];
  },
);
