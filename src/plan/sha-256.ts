/** As many rounds as there are constants. */
const rounds = 64;
const wordMax = 2 ** 32;

/** The first primes, by which the constants of the algorithm are defined. */
function primes(count: number): readonly number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime !== 0)) found.push(n);
  return found;
}

/** The first 32 bits behind the point of a root of a whole number, exactly: the largest r with rⁿ ≤ prime · 2³²ⁿ, without what is before the point. */
function fractionOfRoot(prime: number, degree: 2 | 3): number {
  const target = BigInt(prime) << BigInt(32 * degree);
  let [low, high] = [0n, 1n << 40n];
  while (high - low > 1n) {
    const middle = (low + high) / 2n;
    if (middle ** BigInt(degree) <= target) low = middle;
    else high = middle;
  }
  return Number(low & 0xffffffffn);
}

let constants: { readonly start: readonly number[]; readonly round: readonly number[] } | undefined;

/** What the hash starts from, by square roots, and a constant for each round, by cube roots. */
function known(): NonNullable<typeof constants> {
  constants ??= {
    start: primes(8).map((prime) => fractionOfRoot(prime, 2)),
    round: primes(rounds).map((prime) => fractionOfRoot(prime, 3)),
  };
  return constants;
}

const turned = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/**
 * The hash SHA-256 of a text, which counts as UTF-8.
 *
 * @returns 64 hexadecimal digits.
 * @source fips-180-4 sections 4.2.2, 5.1.1, 5.3.3 and 6.2, from memory; held by its published vectors
 */
export function sha256(text: string): string {
  const bytes = padded(utf8(text));
  const { start, round } = known();
  const state = Uint32Array.from(start);
  for (let at = 0; at < bytes.byteLength; at += 64) compress(state, new DataView(bytes.buffer, at, 64), round);
  return [...state].map((word) => word.toString(16).padStart(8, "0")).join("");
}

/** The bytes of a text; half a pair of surrogates counts as the sign for what cannot be read. */
function utf8(text: string): readonly number[] {
  return [...text].flatMap((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code;
    const rest = (shift: number): number => 0x80 | ((point >> shift) & 0x3f);
    if (point < 0x80) return [point];
    if (point < 0x800) return [0xc0 | (point >> 6), rest(0)];
    if (point < 0x10000) return [0xe0 | (point >> 12), rest(6), rest(0)];
    return [0xf0 | (point >> 18), rest(12), rest(6), rest(0)];
  });
}

/** A bit behind the text, then zeros, then its length in bits, up to whole blocks. */
function padded(text: readonly number[]): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(64 * Math.ceil((text.length + 9) / 64));
  bytes.set(text);
  bytes[text.length] = 0x80;
  const view = new DataView(bytes.buffer);
  const bits = 8 * text.length;
  view.setUint32(bytes.length - 8, Math.floor(bits / wordMax));
  view.setUint32(bytes.length - 4, bits % wordMax);
  return bytes;
}

/** Works one block of 64 bytes into the state. */
function compress(state: Uint32Array, block: DataView, round: readonly number[]): void {
  const words = new Uint32Array(rounds);
  for (let i = 0; i < rounds; i++) {
    const [one = 0, other = 0] = [words[i - 15], words[i - 2]];
    const small = turned(one, 7) ^ turned(one, 18) ^ (one >>> 3);
    const large = turned(other, 17) ^ turned(other, 19) ^ (other >>> 10);
    words[i] = i < 16 ? block.getUint32(4 * i) : (words[i - 16] ?? 0) + small + (words[i - 7] ?? 0) + large;
  }
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let i = 0; i < rounds; i++) {
    const chosen = (e & f) ^ (~e & g);
    const first = (h + (turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)) + chosen + (round[i] ?? 0) + (words[i] ?? 0)) | 0;
    const majority = (a & b) ^ (a & c) ^ (b & c);
    const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + majority) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + first) | 0, c, b, a, (first + second) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i] = (state[i] ?? 0) + word;
  });
}
