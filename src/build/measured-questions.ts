import { z } from 'zod';

const span = z.tuple([z.number(), z.number()]).refine(([lo, hi]) => lo < hi, 'low before high');
const reading = z.strictObject({ possible: span, usual: span });

const said = z.strictObject({
  ask: z.string(),
  hint: z.string(),
  why: z.string(),
  find: z.string(),
  says: z.string(),
  because: z.string(),
});

/** What `questions/en/measured-things.yaml` must hold. */
export const measuredFileSchema = z.strictObject({
  words: z.strictObject({ watts: said, start: said, day: said }),
  things: z
    .array(
      z.strictObject({
        id: z.string().regex(/^[a-z-]+$/),
        name: z.string().min(3),
        volts: z.number().optional(),
        watts: reading,
        start: reading.optional(),
        day: reading.optional(),
      }),
    )
    .min(1),
});

type MeasuredFile = z.infer<typeof measuredFileSchema>;
type Thing = MeasuredFile['things'][number];

/** The question that names what was measured; the others hang on it. */
export const MEASURED = 'measured';

/**
 * The questions of each thing that may be measured, by id, as a question file would hold them.
 * @param gate the question whose choices are the things
 */
export function measuredQuestions(
  { words, things }: MeasuredFile,
  gate: { choices?: readonly { id: string; when?: unknown }[] | undefined },
): Map<string, unknown> {
  const made = new Map<string, unknown>();
  for (const thing of things) {
    const { id, volts, watts, start, day } = thing;
    const amps = volts === undefined ? {} : { volts };
    const ticked = { q: MEASURED, has: id };
    // What is no longer there is not asked for, though it is still ticked.
    const there = gate.choices?.find((choice) => choice.id === id)?.when;
    const when = there === undefined ? ticked : { all: [there, ticked] };
    const put = (end: string, of: keyof typeof words, at: typeof watts, rest: object) =>
      made.set(`${MEASURED}-${id}${end}`, {
        ...filled(words[of], thing),
        kind: 'number',
        ...at,
        ...rest,
        when,
      });
    put('', 'watts', watts, { unit: 'W', ...amps });
    if (start !== undefined) put('-start', 'start', start, { unit: 'W', ...amps });
    if (day !== undefined) put('-day', 'day', day, { unit: 'kWh', decimals: true });
  }
  return made;
}

/** The words of a reading with the name of the thing and an example out of what is usual. */
function filled({ because, ...words }: z.infer<typeof said>, { name, watts, day }: Thing) {
  const of = {
    name,
    example: `${middle(watts.usual)} W`,
    exampleDay: `${middle(day?.usual ?? [1, 2])} kWh`,
  };
  const put = (text: string) =>
    text.replace(/\{(\w+)\}/g, (_, key: string) => of[key as keyof typeof of]);
  return {
    ...Object.fromEntries(Object.entries(words).map(([key, text]) => [key, put(text)])),
    unsure: { assume: null, because },
  };
}

/** About the middle by ratio, in two digits. */
const middle = ([low, high]: readonly [number, number]) =>
  Number(Math.sqrt(low * high).toPrecision(2));
