import type { Calculation, Input } from './calculation';
import { sayGiven } from './say-value';

/** The inputs of a computation with units, ranges and what is assumed, one a line. */
export function sayInputs(calculation: Calculation): string {
  const width = Math.max(...calculation.inputs.map((input) => input.key.length));
  return calculation.inputs
    .map((input) => `  ${input.key.padEnd(width)}  ${input.about}; ${sayForm(input)}`)
    .join('\n');
}

function sayForm(input: Input): string {
  const otherwise = sayAssumed(input);
  return `${sayKind(input)}${otherwise === '' ? '' : ` (${otherwise})`}`;
}

function sayKind(input: Input): string {
  switch (input.kind) {
    case 'number':
      return `${sayGiven(input.from, '')} to ${sayGiven(input.to, input.unit)}`;
    case 'choice':
      return input.choices.join(' or ');
    case 'text':
      return input.form;
    case 'list':
      return `"name ${input.unit}; name ${input.unit}"`;
  }
}

function sayAssumed(input: Input): string {
  if ('assumed' in input && input.assumed !== undefined) {
    const { assumed } = input;
    const unit = input.kind === 'number' ? input.unit : '';
    return `${typeof assumed === 'number' ? sayGiven(assumed, unit) : assumed} unless given`;
  }
  return input.optional ? 'may be left out' : '';
}

/** Everything about a computation but its work: for somebody who wants to use it. */
export function sayHelp(calculation: Calculation): string {
  return [
    `${calculation.name}: ${calculation.about}`,
    sayInputs(calculation),
    `  Source: ${calculation.source}`,
    `  Try: lampkeeper calc ${calculation.name} ${calculation.example}`,
  ].join('\n');
}
