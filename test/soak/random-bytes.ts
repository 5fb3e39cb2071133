type Random = () => number;

/** Keys as terminals send them, whole and broken off. */
const SEQUENCES = [
  ...['\x1b', '\x1b[A', '\x1b[B', '\x1b[C', '\x1b[D', '\x1b[5~', '\x1b[6~', '\x1b[H', '\x1b[F'],
  ...[
    '\x1bOA',
    '\x1bOP',
    '\x1b[200~',
    '\x1b[201~',
    '\x1b[200~abc\r\n12\x1b[201~',
    '\x1b[',
    '\x1b[',
  ],
  ...['\x1b[1;5C', '\x1b[<0;10;10M', '\x1b[M !!', '\x1b]0;title\x07', '\x1bP', '\x1b[99999999999A'],
  ...['\r', '\r', '\r', '\n', '\t', ' ', '\x7f', '\x08', '\x01', '\x05', '\x15', '\x17', '\x0b'],
  ...['\x13', '?', 'y', 'n', 'N', 'q', 'j', 'k', '\x00', '\x04', '\x0c', '\x12', '\x1c'],
];
const WORDS = [
  '12',
  '48911',
  '3.5 kW',
  '24 h',
  'oak',
  '1e999',
  'é',
  '家',
  '👨‍👩‍👧',
  '\u202e',
  '-',
  '$1,200',
];

/** A chunk of what could come from a keyboard: keys, words, sequences broken off, and plain noise. */
export function randomBytes(random: Random, { suspend }: { readonly suspend: boolean }): Buffer {
  const parts = Array.from({ length: 1 + Math.floor(12 * random()) }, () => {
    const chance = random();
    if (chance < 0.5) return Buffer.from(pick(SEQUENCES, random), 'utf8');
    if (chance < 0.75) return Buffer.from(pick(WORDS, random), 'utf8');
    if (chance < 0.78) return Buffer.from(pick(WORDS, random).repeat(200), 'utf8');
    if (chance < 0.8 && suspend) return Buffer.from('\x1a');
    return Buffer.from(Array.from({ length: 1 + Math.floor(8 * random()) }, () => 256 * random()));
  });
  const bytes = Buffer.concat(parts);
  const cut = random() < 0.2 ? bytes.subarray(0, Math.ceil(bytes.length * random())) : bytes;
  // Ctrl+C ends a stream, and stands at its end; where nothing may stop us, neither may Ctrl+Z.
  return Buffer.from(cut.filter((byte) => byte !== 0x03 && (suspend || byte !== 0x1a)));
}

function pick<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}
