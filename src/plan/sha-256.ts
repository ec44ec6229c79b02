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

let constants: { readonly start: Int32Array; readonly round: Int32Array } | undefined;

/** What the hash starts from, by square roots, and a constant for each round, by cube roots. */
function known(): NonNullable<typeof constants> {
  constants ??= {
    start: Int32Array.from(primes(8), (prime) => fractionOfRoot(prime, 2)),
    round: Int32Array.from(primes(rounds), (prime) => fractionOfRoot(prime, 3)),
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
  const blocks = padded(text);
  const { start, round } = known();
  const state = Int32Array.from(start);
  const words = new Int32Array(rounds);
  for (let at = 0; at < blocks.byteLength; at += 64) {
    for (let i = 0; i < 16; i++) words[i] = blocks.getInt32(at + 4 * i);
    compress(state, words, round);
  }
  return [...state].map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/** The bytes of a text, a bit behind them, then zeros, then their length in bits, up to whole blocks. */
function padded(text: string): DataView {
  // No letter takes more than three bytes for each of its code units.
  const bytes = new Uint8Array(3 * text.length + 72);
  const length = writeUtf8(text, bytes);
  bytes[length] = 0x80;
  const view = new DataView(bytes.buffer, 0, 64 * Math.ceil((length + 9) / 64));
  const bits = 8 * length;
  view.setUint32(view.byteLength - 8, Math.floor(bits / wordMax));
  view.setUint32(view.byteLength - 4, bits % wordMax);
  return view;
}

/** Writes the bytes of a text, and tells how many; half a pair of surrogates counts as the sign for what cannot be read. */
function writeUtf8(text: string, bytes: Uint8Array): number {
  let length = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) as number;
    const point = code >= 0xd800 && code <= 0xdfff ? 0xfffd : code;
    const following = point < 0x80 ? 0 : point < 0x800 ? 1 : point < 0x10000 ? 2 : 3;
    bytes[length++] = following === 0 ? point : ((0xff00 >> (following + 1)) & 0xff) | (point >> (6 * following));
    for (let k = following - 1; k >= 0; k--) bytes[length++] = 0x80 | ((point >> (6 * k)) & 0x3f);
  }
  return length;
}

/** Works one block, the first sixteen of the words, into the state. */
function compress(state: Int32Array, words: Int32Array, round: Int32Array): void {
  for (let i = 16; i < rounds; i++) {
    const one = words[i - 15] as number;
    const other = words[i - 2] as number;
    const small = turned(one, 7) ^ turned(one, 18) ^ (one >>> 3);
    const large = turned(other, 17) ^ turned(other, 19) ^ (other >>> 10);
    words[i] = (words[i - 16] as number) + small + (words[i - 7] as number) + large;
  }
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let i = 0; i < rounds; i++) {
    const chosen = (e & f) ^ (~e & g);
    const mixed = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const first = (h + mixed + chosen + (round[i] as number) + (words[i] as number)) | 0;
    const majority = (a & b) ^ (a & c) ^ (b & c);
    const second = ((turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)) + majority) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + first) | 0;
    d = c;
    c = b;
    b = a;
    a = (first + second) | 0;
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i] = (state[i] as number) + word;
  });
}
