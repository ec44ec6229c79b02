import { result } from "../guards.js";
import { type CompiledFlowCurve, compileFlowCurve } from "../laws/compile-flow-curve.js";
import type { FlowCurve } from "../laws/flow-curve.js";
import { integrate } from "../numeric/quadrature.js";

/** ∫₀ˢ (c + s)ᵐ (s/S)ᵖ ds up to S, for a whole m: a sum of terms that are all positive, so that nothing cancels. */
function binomial(c: number, m: number, s: number, p: number): number {
  let sum = 0;
  let choose = 1;
  for (let j = 0; j <= m; j += 1) {
    sum += (choose * c ** (m - j) * s ** (j + 1)) / (j + p + 1);
    choose = (choose * (m - j)) / (j + 1);
  }
  return sum;
}

/** The moment of a curve without a closed form, by parts and in the logarithm of the rate. */
function byQuadrature({ stressOf }: CompiledFlowCurve, rate: number, order: number): number {
  const top = stressOf(rate);
  const [rest] = integrate(
    // Forty e-foldings down, nothing is left that a double would see.
    [-40, 0],
    (log, values) => {
      const share = Math.exp(log);
      values[0] = share * (stressOf(rate * share) / top) ** (order + 1);
    },
    1,
    "flow",
  );
  return (rate * (1 - (rest as number))) / (order + 1);
}

/**
 * The mean of a shear rate over a stress that grows from nothing to the wall's, weighted by a power of the stress:
 *
 * $$M_k = \frac{1}{\tau_w^{k+1}} \int_0^{\tau_w} \tau^k\,\dot\gamma(\tau)\,d\tau$$
 *
 * M₀ gives the surface velocity of a film, M₁ its flow, M₂ that of a tube.
 */
export function flowMoment(curve: FlowCurve, rate: number, order: 0 | 1 | 2): number {
  const compiled = compileFlowCurve(curve, "curve");
  if (!(rate > 0)) return 0;
  if (curve.law === "carreau-yasuda") return result(byQuadrature(compiled, rate, order), "flow");
  const top = compiled.stressOf(rate);
  const still = compiled.yieldStress / top;
  // Stresses are taken in parts of that at the wall and rates likewise, so that nothing overflows.
  if (curve.law === "casson")
    return result(
      2 * rate * binomial(Math.sqrt(still), 2 * order + 1, Math.sqrt((curve.plasticViscosity * rate) / top), 2),
      "flow",
    );
  if (curve.law === "newton") return result(rate * binomial(0, order, 1, 1), "flow");
  const viscous = curve.law === "bingham" ? curve.plasticViscosity * rate : curve.consistency * rate ** curve.flowIndex;
  const index = curve.law === "bingham" ? 1 : curve.flowIndex;
  return result(rate * binomial(still, order, viscous / top, 1 / index), "flow");
}
