import type { Calculation, Input } from './calculation';

/** A computation as data for programs: what it wants and where it comes from. */
export function calculationData(calculation: Calculation): object {
  const { name, about, source, example } = calculation;
  return { name, about, inputs: calculation.inputs.map(inputData), source, example };
}

function inputData(input: Input): object {
  return input.kind === 'text' ? { ...input, pattern: input.pattern.source } : input;
}
