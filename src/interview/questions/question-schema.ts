import * as z from 'zod';

/** A field holds 300 letters (text-field.ts). */
const LONGEST_TEXT = 280;

const ids = z.union([z.string(), z.array(z.string()).min(1)]);

const condition: z.ZodType<unknown> = z.lazy(() =>
  z.union([
    z.strictObject({ q: z.string(), is: ids }),
    z.strictObject({ q: z.string(), isNot: ids }),
    z.strictObject({ q: z.string(), has: ids }),
    z.strictObject({ q: z.string(), hasNot: ids }),
    z.strictObject({ q: z.string(), lacks: ids }),
    z.strictObject({ q: z.string(), atLeast: z.number() }),
    z.strictObject({ q: z.string(), below: z.number() }),
    z.strictObject({ q: z.string(), unsure: z.boolean() }),
    z.strictObject({ all: z.array(condition).min(1) }),
    z.strictObject({ any: z.array(condition).min(1) }),
  ]),
);

const choice = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  label: z.string().min(2).max(110),
  when: condition.optional(),
  alone: z.boolean().optional(),
  actNow: z.string().optional(),
});

const span = z.tuple([z.number(), z.number()]).refine(([lo, hi]) => lo < hi, 'low before high');

/** What a file in `questions/en` must hold. Checked when the program is built. */
export const questionFileSchema = z
  .strictObject({
    ask: z.string().min(8).max(180),
    hint: z.string().min(8).max(140),
    why: z.string().min(10).max(420),
    find: z.string().min(10).max(520),
    says: z.string().min(2).max(48),
    kind: z.enum(['choice', 'choices', 'number', 'numbers', 'zip', 'name', 'text']),
    choices: z.array(choice).min(2).optional(),
    unit: z.string().optional(),
    count: z.number().int().min(2).max(24).optional(),
    longest: z.number().int().min(20).max(LONGEST_TEXT).optional(),
    volts: z.number().optional(),
    decimals: z.boolean().optional(),
    possible: span.optional(),
    usual: span.optional(),
    nameplate: z.boolean().optional(),
    safety: z.boolean().optional(),
    optional: z.boolean().optional(),
    unsure: z.strictObject({
      assume: z.union([z.string(), z.array(z.string()), z.number(), z.null()]),
      low: z.number().optional(),
      high: z.number().optional(),
      because: z.string().min(8).max(220),
    }),
    when: condition.optional(),
  })
  .superRefine((q, ctx) => {
    const needs = (ok: boolean, message: string) => {
      if (!ok) ctx.addIssue({ code: 'custom', message });
    };
    const isList = q.kind === 'choice' || q.kind === 'choices';
    needs(isList === (q.choices !== undefined), 'choices belong to kind choice or choices');
    const isNumber = q.kind === 'number';
    const isSeveral = q.kind === 'numbers';
    const hasUnit = isNumber || isSeveral;
    needs(hasUnit === (q.unit !== undefined), 'a unit belongs to kind number or numbers');
    needs(hasUnit === (q.possible !== undefined), 'a possible range belongs to them too');
    needs(isSeveral === (q.count !== undefined), 'a count belongs to kind numbers');
    const isText = q.kind === 'text';
    needs(isText === (q.longest !== undefined), 'the longest text belongs to kind text');
    needs(!isText || q.unsure.assume === null, 'a text may not be assumed');
    needs(!isText || q.safety !== true, 'nothing is read out of a text, so no safety hangs on it');
    needs(!isSeveral || q.unsure.assume === null, 'several numbers may not be assumed');
    const { assume, low, high } = q.unsure;
    const known = new Set(q.choices?.map((c) => c.id));
    if (q.kind === 'choice' && assume !== null) {
      needs(typeof assume === 'string' && known.has(assume), 'assume must name a choice');
    }
    if (q.kind === 'choices' && assume !== null) {
      needs(
        Array.isArray(assume) && assume.every((id) => known.has(id)),
        'assume: list of choices',
      );
    }
    if (isNumber && assume !== null) {
      needs(typeof assume === 'number', 'assume must be a number');
      needs(low !== undefined && high !== undefined, 'an assumed number needs low and high');
      needs(
        Number(low) <= Number(assume) && Number(assume) <= Number(high),
        'low <= assume <= high',
      );
    }
  });

export const orderFileSchema = z.strictObject({
  topics: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z-]+$/),
        title: z.string().min(3),
        questions: z.array(z.string()).min(1),
      }),
    )
    .min(1),
  opening: z.array(z.string()).min(1),
  readBack: z.record(z.string(), z.array(z.string()).min(1)),
  private: z.strictObject({
    name: z.array(z.string()),
    people: z.array(z.string()),
    place: z.array(z.string()),
    money: z.array(z.string()),
  }),
  sureOf: z.array(z.string()).min(1),
  medicalWords: z.array(z.string().min(3)).min(1),
  street: z.array(z.string()).min(1),
  mattersMost: z.array(z.string()).min(1),
  tariff: z.array(z.string()).min(1),
  retired: z.array(z.string()),
});

const names = z.array(z.string().regex(/^[a-z0-9-]+$/));

const place = z.array(z.string()).min(1);

/** What `questions/walk.yaml` must hold. */
export const walkFileSchema = z.strictObject({
  panel: place,
  furnace: place,
  well: place,
  kitchen: place,
  outdoors: place,
  papers: place,
});

/** What `questions/en/tonight.yaml` must hold. */
export const tonightFileSchema = z.strictObject({
  parts: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z-]+$/),
        title: z.string().min(3).max(40),
        source: z.string().min(8),
        lines: z.array(z.strictObject({ does: names, say: z.string().min(8).max(170) })).min(1),
      }),
    )
    .min(1),
});

/** What `questions/en/dangers.yaml` must hold. */
export const dangersFileSchema = z.strictObject({
  question: z.string(),
  dangers: z
    .array(
      z.strictObject({
        id: z.string(),
        rank: z.number().int().min(1),
        leaveNow: z.boolean(),
        forbids: names,
        steps: names.min(1),
      }),
    )
    .min(1),
  steps: z.array(
    z.strictObject({
      id: z.string(),
      part: z.enum(['away', 'call', 'off', 'rest']),
      does: names,
      with: names.optional(),
      without: names.optional(),
      say: z.string().min(8).max(140),
    }),
  ),
});
