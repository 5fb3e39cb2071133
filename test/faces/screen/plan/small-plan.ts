import { glyphsFor } from '../../../../src/faces/screen/glyphs';
import type { Line } from '../../../../src/faces/screen/line';
import {
  measurePlan,
  type PlanParts,
  planColumns,
} from '../../../../src/faces/screen/plan/measure-plan';
import { planFrame } from '../../../../src/faces/screen/plan/plan-frame';
import { type Left, onPlanKey } from '../../../../src/faces/screen/plan/plan-keys';
import { type LaidOut, layOut } from '../../../../src/faces/screen/plan/plan-lines';
import { PLAN_START, type PlanState } from '../../../../src/faces/screen/plan/plan-state';
import type { Size } from '../../../../src/faces/screen/watch-size';
import type { Key } from '../../../../src/interview/keys/key';

const long = (about: string) =>
  Array.from({ length: 60 }, (_, i) => `${about} sentence ${i + 1}.`).join(' ');

/** An invented plan: a front page and five sections, the last one short. */
export const MARKDOWN = `# Plan: oak-house

- The job: keep the lamps on.

${long('Front')}

# The details

## The job

${long('Job')}

## What it carries

| Load | Watts |
|---|---|
| Lamp | 10 W |
| Refrigerator | 150 W |

${long('Load')}

## Cautions

- Keep the generator outdoors.

${long('Caution')}

## Next steps

${long('Step')} Ask for transfer equipment.

## How sure

Not very sure.
`;

const made = new Map<string, LaidOut>();

/** Laid out once a width: every key asks for it. */
function laidOut(markdown: string, columns: number): LaidOut {
  const of = `${columns} ${markdown}`;
  const plan = made.get(of) ?? layOut(markdown, columns);
  made.set(of, plan);
  return plan;
}

/** A reader of that plan in a window: keys go in, a state or how they left comes out. */
export class Reader {
  state: PlanState = PLAN_START;
  left: Left | null = null;

  constructor(
    public size: Size,
    private readonly markdown = MARKDOWN,
    private readonly beside: PlanParts['beside'] = [],
  ) {}

  press(...keys: readonly Key[]): this {
    for (const key of keys) {
      if (this.left !== null) break;
      const next = onPlanKey(this.state, key, measurePlan(this.parts()).shown);
      if (typeof next === 'string') this.left = next;
      else this.state = next;
    }
    return this;
  }

  type(text: string): this {
    return this.press(...[...text].map((one): Key => ({ name: 'text', text: one })));
  }

  key(name: Exclude<Key['name'], 'text'>, times = 1): this {
    return this.press(...Array.from({ length: times }, (): Key => ({ name })));
  }

  frame() {
    return planFrame(this.parts());
  }

  lines(): string[] {
    return this.frame().lines.map(bare);
  }

  text(): string {
    return this.lines().join('\n');
  }

  private parts(): PlanParts {
    const plan = laidOut(this.markdown, planColumns(this.size));
    const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
    return {
      name: 'oak-house',
      plan,
      state: this.state,
      size: this.size,
      glyphs,
      beside: this.beside,
    };
  }
}

function bare(line: Line): string {
  return line
    .map(({ text }) => text)
    .join('')
    .replace(/\x1b\[[0-9;]*m/g, '');
}
