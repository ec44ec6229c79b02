/** The library by its front door: rooms, and in them functions and values. */
export type Rooms = Readonly<Record<string, unknown>>;

/** What stands at a place of the library: `mixing.impellerConstants["helical ribbon"].laminarPowerConstant`. */
function lookUp(rooms: Rooms, place: string): unknown {
  return [...place.matchAll(/(\w+)|\["([^"]+)"\]/g)].reduce<unknown>((at, [, word, quoted]) => {
    const found = (at as Rooms | undefined)?.[word ?? quoted ?? ""];
    if (found === undefined) throw new Error(`the library ships no ${place}`);
    return found;
  }, rooms);
}

/** A call of the library, or a value that it ships: then without inputs. */
export interface Called {
  readonly id: string;
  /** Its place in the library. */
  readonly call: string;
  readonly inputs?: unknown;
  /** Where a function that is the result is evaluated. */
  readonly at?: number;
}

/** What a call gives, or the value itself; of a function that it gives, the value at a place. */
export function resultOf(rooms: Rooms, called: Called): unknown {
  const result = ofCall(rooms, called);
  return called.at === undefined ? result : (result as (at: number) => unknown)(called.at);
}

function ofCall(rooms: Rooms, { id, call, inputs }: Called): unknown {
  const called = lookUp(rooms, call);
  if (inputs === undefined) {
    if (typeof called === "function") throw new Error(`${id}: ${call} takes inputs`);
    return called;
  }
  if (typeof called !== "function") throw new Error(`${id}: no public function ${call}`);
  const given = taken(rooms, inputs);
  return (called as (...args: unknown[]) => unknown)(...(Array.isArray(given) ? given : [given]));
}

/** The inputs, with what the library ships in its place. */
function taken(rooms: Rooms, value: unknown): unknown {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map((one) => taken(rooms, one));
  const entries = Object.entries(value);
  const [first] = entries;
  if (entries.length === 1 && first?.[0] === "from") return lookUp(rooms, String(first[1]));
  return Object.fromEntries(entries.map(([key, one]) => [key, taken(rooms, one)]));
}
