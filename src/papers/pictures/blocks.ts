/** Which signs a terminal picture is made of: eighths of a block where the terminal has them, else plain ASCII. */
export type Signs = 'blocks' | 'ascii';

const EIGHTHS_UP = [' ', '▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];
const EIGHTHS_ACROSS = ['', '▏', '▎', '▍', '▌', '▋', '▊', '▉'];

/** A bar lying down, `share` (0 to 1) of `cells` characters long, padded to all of them. */
export function barAcross(share: number, cells: number, signs: Signs): string {
  const clipped = clip(share);
  if (signs === 'ascii') {
    const full = Math.round(clipped * cells);
    return '#'.repeat(full).padEnd(cells);
  }
  const eighths = Math.round(clipped * cells * 8);
  return ('█'.repeat(Math.floor(eighths / 8)) + EIGHTHS_ACROSS[eighths % 8]).padEnd(cells);
}

/** Standing bars side by side, one character each, `rows` lines high, the top line first. Shares 0 to 1. */
export function barsUp(shares: readonly number[], rows: number, signs: Signs): string[] {
  return Array.from({ length: rows }, (_, row) => {
    const below = rows - 1 - row;
    return shares.map((share) => cell(clip(share) * rows - below, signs)).join('');
  });
}

function cell(part: number, signs: Signs): string {
  if (signs === 'ascii') return part >= 0.75 ? '#' : part >= 0.25 ? '.' : ' ';
  return EIGHTHS_UP[Math.round(Math.min(1, Math.max(0, part)) * 8)]!;
}

const clip = (share: number) => (Number.isFinite(share) ? Math.min(1, Math.max(0, share)) : 0);
