/**
 * A picture as plain data: what stands where in a fixed view box. It knows nothing of SVG or of a terminal.
 * Lengths are view box units, origin at the top left.
 */
export interface Drawing {
  /** Goes into the ids of the SVG, so that several stand on one page: letters and hyphens. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** What the picture is, in a few words; read aloud first. */
  readonly title: string;
  /** What it shows, in one or two sentences, for who cannot see it. */
  readonly description: string;
  readonly marks: readonly Mark[];
}

/** Ways to fill an area that stay apart in black and white and on a copier. */
export type Fill = 'none' | 'light' | 'dark' | 'hatch' | 'dots';

/** Ways to draw a line that stay apart without color. */
export type Stroke = 'thin' | 'plain' | 'thick' | 'dashed' | 'dotted';

export type Mark =
  | {
      readonly kind: 'box';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly fill: Fill;
      readonly stroke?: Stroke | null;
    }
  | { readonly kind: 'line'; readonly points: readonly Point[]; readonly stroke: Stroke }
  | { readonly kind: 'dot'; readonly at: Point; readonly radius: number; readonly fill: Fill }
  | {
      readonly kind: 'text';
      readonly at: Point;
      readonly text: string;
      readonly anchor?: 'start' | 'middle' | 'end';
      readonly bold?: boolean;
      readonly size?: number;
    };

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Size of lettering where a mark names none, view box units. */
export const TEXT_SIZE = 13;
