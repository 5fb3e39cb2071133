import { vi } from 'vitest';
import { calcCommand } from '../../../src/commands/calc-command';
import { readArguments } from '../../../src/commands/read-arguments';

/** Run `lampkeeper calc` on a command line and catch what it prints. */
export async function runCalc(
  ...argv: string[]
): Promise<{ code: number; out: string; err: string }> {
  const args = readArguments(['calc', ...argv]);
  if ('wrong' in args) throw new Error(args.wrong);
  let [out, err] = ['', ''];
  const stdout = vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    out += text;
    return true;
  });
  const stderr = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    err += text;
    return true;
  });
  try {
    return { code: await calcCommand(args), out, err };
  } finally {
    stdout.mockRestore();
    stderr.mockRestore();
  }
}

interface Work {
  readonly name: string;
  readonly inputs: Record<string, { value: unknown; unit?: string; given: boolean }>;
  readonly steps: { label: string; formula: string; value: number; unit: string }[];
  readonly result: { label: string; value: number | string; unit?: string }[];
  readonly notes?: string[];
  readonly source: string;
}

/** The work of a computation as data; the inputs as typed, blanks apart. */
export async function workOf(line: string): Promise<Work> {
  const { code, out, err } = await runCalc(...line.split(' '), '--json');
  if (code !== 0) throw new Error(`exit ${code}: ${err}`);
  return JSON.parse(out);
}

/** A result whose label begins so; throws when there is none, or when it is words. */
export async function resultOf(line: string, label: string): Promise<number> {
  const { result } = await workOf(line);
  const found = result.find((one) => one.label.startsWith(label));
  if (typeof found?.value !== 'number') throw new Error(`no number "${label}" in ${line}`);
  return found.value;
}
