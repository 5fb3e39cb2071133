import type { Mark } from './drawing';
import { line, text } from './marks';
import { scaleOf } from './scale';

/** Where the field of a chart lies in its view box. */
export interface Field {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly { readonly at: number; readonly says: string }[];
  readonly name: string;
}

/** Axes of a chart: thin lines across at each mark of the upright axis, names at the ends. */
export function frame(field: Field, across: Axis, up: Axis) {
  const x = scaleOf(across, { from: field.left, to: field.right });
  const y = scaleOf(up, { from: field.bottom, to: field.top });
  const marks: Mark[] = [
    ...up.ticks.flatMap(({ at, says }) => [
      line(
        [
          [field.left, y(at)],
          [field.right, y(at)],
        ],
        'thin',
      ),
      text(field.left - 6, y(at) + 4, says, { anchor: 'end' }),
    ]),
    line(
      [
        [field.left, field.top],
        [field.left, field.bottom],
        [field.right, field.bottom],
      ],
      'plain',
    ),
    ...across.ticks.flatMap(({ at, says }) => [
      line(
        [
          [x(at), field.bottom],
          [x(at), field.bottom + 4],
        ],
        'plain',
      ),
      text(x(at), field.bottom + 18, says, { anchor: 'middle' }),
    ]),
    text(field.left - 6, field.top - 12, up.name, { anchor: 'start', bold: true }),
    text(field.right, field.bottom + 36, across.name, { anchor: 'end', bold: true }),
  ];
  return { x, y, marks };
}
