import type { Fill, Mark, Stroke } from './drawing';

/** Short ways to write down the marks of a drawing. */
export const text = (
  x: number,
  y: number,
  said: string,
  how: { anchor?: 'start' | 'middle' | 'end'; bold?: boolean; size?: number } = {},
): Mark => ({ kind: 'text', at: { x, y }, text: said, ...how });

export const line = (points: readonly (readonly [number, number])[], stroke: Stroke): Mark => ({
  kind: 'line',
  points: points.map(([x, y]) => ({ x, y })),
  stroke,
});

export const box = (
  [x, y, width, height]: readonly [number, number, number, number],
  fill: Fill,
  stroke: Stroke | null = 'plain',
): Mark => ({ kind: 'box', x, y, width, height, fill, stroke });

export const dot = (x: number, y: number, radius: number, fill: Fill): Mark => ({
  kind: 'dot',
  at: { x, y },
  radius,
  fill,
});
