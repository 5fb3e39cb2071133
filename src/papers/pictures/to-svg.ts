import { visible } from '../../quantity/visible';
import { type Drawing, type Fill, type Mark, type Point, type Stroke, TEXT_SIZE } from './drawing';

/**
 * A drawing as one SVG element: no script, no style sheet, no link, black on white, one decimal at most, and the
 * same bytes for the same drawing. Title and description come first, for readers that speak.
 */
export function toSvg(drawing: Drawing): string {
  const { id, width, height } = drawing;
  const fills = new Set(drawing.marks.flatMap((mark) => ('fill' in mark ? [mark.fill] : [])));
  const patterns = (['hatch', 'dots'] as const).filter((fill) => fills.has(fill));
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="${id}-title ${id}-desc"`,
    ` viewBox="0 0 ${decimal(width)} ${decimal(height)}" font-family="sans-serif" font-size="${TEXT_SIZE}">\n`,
    `<title id="${id}-title">${escaped(drawing.title)}</title>\n`,
    `<desc id="${id}-desc">${escaped(drawing.description)}</desc>\n`,
    patterns.length > 0 ? `<defs>${patterns.map((one) => pattern(id, one)).join('')}</defs>\n` : '',
    ...drawing.marks.map((mark) => `${element(id, mark)}\n`),
    '</svg>',
  ].join('');
}

function element(id: string, mark: Mark): string {
  switch (mark.kind) {
    case 'box':
      return `<rect x="${decimal(mark.x)}" y="${decimal(mark.y)}" width="${decimal(mark.width)}" height="${decimal(mark.height)}" fill="${paint(id, mark.fill)}"${mark.stroke ? ` ${pen(mark.stroke)}` : ''}/>`;
    case 'line':
      return `<polyline points="${mark.points.map(pair).join(' ')}" fill="none" ${pen(mark.stroke)}/>`;
    case 'dot':
      return `<circle cx="${decimal(mark.at.x)}" cy="${decimal(mark.at.y)}" r="${decimal(mark.radius)}" fill="${paint(id, mark.fill)}" ${pen('plain')}/>`;
    case 'text': {
      const anchor =
        mark.anchor === undefined || mark.anchor === 'start' ? '' : ` text-anchor="${mark.anchor}"`;
      const weight = mark.bold ? ' font-weight="bold"' : '';
      const size = mark.size === undefined ? '' : ` font-size="${decimal(mark.size)}"`;
      return `<text x="${decimal(mark.at.x)}" y="${decimal(mark.at.y)}"${anchor}${weight}${size}>${escaped(mark.text)}</text>`;
    }
  }
}

const pair = ({ x, y }: Point) => `${decimal(x)},${decimal(y)}`;

function paint(id: string, fill: Fill): string {
  const plain = { none: 'none', light: '#ddd', dark: '#333' } as const;
  return fill === 'hatch' || fill === 'dots' ? `url(#${id}-${fill})` : plain[fill];
}

function pen(stroke: Stroke): string {
  const width = { thin: 0.5, plain: 1, thick: 2.5, dashed: 1.5, dotted: 1.5 }[stroke];
  const dash =
    stroke === 'dashed'
      ? ' stroke-dasharray="7 4"'
      : stroke === 'dotted'
        ? ' stroke-dasharray="1.5 3"'
        : '';
  return `stroke="#000" stroke-width="${width}"${dash}`;
}

function pattern(id: string, fill: 'hatch' | 'dots'): string {
  const inside =
    fill === 'hatch'
      ? '<path d="M0 6L6 0" stroke="#000" stroke-width="0.8"/>'
      : '<circle cx="3" cy="3" r="0.9" fill="#000"/>';
  return `<pattern id="${id}-${fill}" width="6" height="6" patternUnits="userSpaceOnUse">${inside}</pattern>`;
}

/** A number with one decimal at most, and no minus before zero. */
export function decimal(value: number): string {
  const rounded = Math.round(value * 10) / 10;
  return String(rounded === 0 ? 0 : rounded);
}

function escaped(text: string): string {
  return visible(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');
}
