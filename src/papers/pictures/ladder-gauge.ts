import { barAcross } from './blocks';
import { folded } from './folded';
import { box, line, text } from './marks';
import type { Picture } from './picture';

/** A rung: at this level these go off. */
export interface Rung {
  /** Level of charge or fuel, %; 100 is "from the start". */
  readonly atPercent: number;
  /** What the level reads on the device: "70%", "6.3 gal". */
  readonly reads: string;
  readonly off: readonly string[];
}

export interface LadderWords {
  readonly title: string;
  readonly description: string;
  readonly nothing: string;
  readonly head: readonly string[];
}

const TOP = 40;
const TALL = 300;

/** The gauge of battery or tank, with what goes off at each level beside it. */
export function ladderPicture(rungs: readonly Rung[], words: LadderWords): Picture {
  const down = [...rungs].sort((a, b) => b.atPercent - a.atPercent);
  const at = (percent: number) => TOP + ((100 - percent) / 100) * TALL;
  const says = (rung: Rung) => (rung.off.length === 0 ? words.nothing : rung.off.join(', '));
  let free = 0;
  const beside = down.flatMap((rung) => {
    const lines = folded(`${rung.reads}: ${says(rung)}`, 78);
    const y = Math.max(at(rung.atPercent) + 4, free);
    free = y + lines.length * 16 + 6;
    return [
      line(
        [
          [40, at(rung.atPercent)],
          [110, at(rung.atPercent)],
          [130, y - 4],
        ],
        'thin',
      ),
      ...lines.map((said, i) => text(136, y + i * 16, said)),
    ];
  });
  return {
    drawing: {
      id: 'ladder',
      width: 720,
      height: Math.max(TOP + TALL + 20, free + 10),
      title: words.title,
      description: words.description,
      marks: [
        box([40, TOP, 50, TALL], 'none', 'thick'),
        box([55, TOP - 10, 20, 10], 'none', 'plain'),
        ...beside,
      ],
    },
    inTerminal: (width, signs) => {
      const reads = Math.max(0, ...down.map((rung) => rung.reads.length));
      const gauge = 10;
      const rest = Math.max(12, width - reads - gauge - 3);
      return [
        words.title.slice(0, width),
        ...down.flatMap((rung) =>
          folded(says(rung), rest).map((said, i) =>
            (i === 0
              ? `${rung.reads.padStart(reads)} ${barAcross(rung.atPercent / 100, gauge, signs)}  ${said}`
              : `${' '.repeat(reads + gauge + 3)}${said}`
            ).trimEnd(),
          ),
        ),
      ];
    },
    table: { head: words.head, rows: down.map((rung) => [rung.reads, says(rung)]) },
  };
}
