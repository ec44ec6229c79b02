import { fraction, positive, record, refuse, result } from "../guards.js";
import { atmosphere } from "../laws/atmosphere.js";
import * as known from "./known.js";

/** A liquid with gas in it, before a vacuum is drawn. */
export interface Foam {
  /** Height of the liquid with its gas in a straight-walled vessel, before the vacuum [m], above 0. */
  readonly level: number;
  /** Volume of gas per volume of the whole, before the vacuum, 0 or more and below 1. */
  readonly volumeFractionGas: number;
  /** Absolute pressure before the vacuum [Pa], above 0; default 101 325 Pa. */
  readonly pressureBefore?: number;
}

function checked(input: Foam): { readonly height: number; readonly gas: number; readonly before: number } {
  const { level, volumeFractionGas, pressureBefore = atmosphere } = record(input, "input");
  const height = positive(level, "level");
  const gas = fraction(volumeFractionGas, "volumeFractionGas");
  if (gas === 1) refuse("input", "volumeFractionGas", gas, "a fraction below 1");
  return { height, gas, before: positive(pressureBefore, "pressureBefore") };
}

/**
 * How high a liquid with gas in it stands under vacuum, while the bubbles have grown and none has burst.
 *
 * $$h = h_0\left(1 - \varphi + \varphi\,\frac{p_0}{p}\right)$$
 *
 * Gas that comes out of solution and vapour come on top of this. The density before the vacuum, over that of the liquid
 * without gas, gives 1 − φ.
 *
 * @param input - The foam (`level` [m], `volumeFractionGas`, `pressureBefore` [Pa]) and the absolute `pressure` [Pa],
 *   above 0.
 * @returns Height [m].
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition (Boyle's law)
 * @example
 * ```ts
 * import { foamHead } from "gelwright/particles";
 * foamHead({ level: 0.4, volumeFractionGas: 0.05, pressure: 5000 }); // => 0.7853
 * ```
 */
export function foamHead(input: Foam & { readonly pressure: number }): number {
  record(input, "input", known.foamHead);
  const { height, gas, before } = checked(input);
  return result(height * (1 - gas + (gas * before) / positive(input.pressure, "pressure")), "height");
}

/**
 * The strongest vacuum before a liquid with gas in it reaches the rim; the inverse of `foamHead`.
 *
 * $$p = \frac{\varphi\,p_0}{h/h_0 - 1 + \varphi}$$
 *
 * @param input - The foam (`level` [m], `volumeFractionGas`, `pressureBefore` [Pa]) and `levelMax`, the height up
 *   to which it may rise [m], above that without its gas.
 * @returns Absolute pressure [Pa], 0 where there is no gas.
 * @throws CalculationError `input` where an argument is out of range.
 * @source definition (Boyle's law)
 * @example
 * ```ts
 * import { pressureForFoamHead } from "gelwright/particles";
 * pressureForFoamHead({ level: 0.4, volumeFractionGas: 0.05, levelMax: 0.6 }); // => 9211.36363636364
 * ```
 */
export function pressureForFoamHead(input: Foam & { readonly levelMax: number }): number {
  record(input, "input", known.pressureForFoamHead);
  const { height, gas, before } = checked(input);
  const room = positive(input.levelMax, "levelMax") / height - 1 + gas;
  if (!(room > 0))
    refuse("input", "levelMax", input.levelMax, `more than ${height * (1 - gas)} m, the liquid by itself`);
  return result((gas * before) / room, "pressure");
}
