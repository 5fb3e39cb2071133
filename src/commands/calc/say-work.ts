import type { Calculation, Outcome, Result, Step } from './calculation';
import type { Understood } from './gather-values';
import { sayGiven, sayValue } from './say-value';
import type { Value } from './values';

type Done = Extract<Outcome, { ok: true }>;

/** The whole work for people: inputs as understood, each step, the result and its source. */
export function sayWork(
  calculation: Calculation,
  understood: readonly Understood[],
  done: Done,
): string {
  const parts = [
    `${calculation.name}: ${calculation.about}`,
    `Inputs\n${understood.map(inputLine).join('\n')}`,
    ...(done.steps.length > 0 ? [`Steps\n${done.steps.map(stepLine).join('\n')}`] : []),
    `Result\n${done.results.map(resultLine).join('\n')}`,
    ...(done.notes ?? []).map((note) => `Note: ${note}`),
    `Source: ${calculation.source}`,
  ];
  return `${parts.join('\n')}\n`;
}

function inputLine({ input, value, given }: Understood): string {
  const unit = 'unit' in input ? input.unit : '';
  const assumed = given ? '' : ' (assumed)';
  return `  ${input.key} = ${sayInput(value, unit)}${assumed}  ${input.about}`;
}

function sayInput(value: Value, unit: string): string {
  if (typeof value === 'number') return sayGiven(value, unit);
  if (typeof value === 'string') return value;
  return value.map((one) => `${one.name} ${sayGiven(one.value, unit)}`).join('; ');
}

function stepLine({ label, formula, value, unit }: Step): string {
  return `  ${label} = ${formula} = ${sayValue(value, unit)}`;
}

function resultLine({ label, value, unit = '' }: Result): string {
  return `  ${label}: ${typeof value === 'number' ? sayValue(value, unit) : value}`;
}

/** The same as data. */
export function workData(
  calculation: Calculation,
  understood: readonly Understood[],
  done: Done,
): object {
  const inputs = understood.map(({ input, value, given }) => [
    input.key,
    { value, ...('unit' in input ? { unit: input.unit } : {}), given },
  ]);
  return {
    name: calculation.name,
    inputs: Object.fromEntries(inputs),
    steps: done.steps,
    result: done.results,
    ...(done.notes ? { notes: done.notes } : {}),
    source: calculation.source,
  };
}
