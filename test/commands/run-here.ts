import { runLine } from '../../src/commands/run-line';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/**
 * Carry out one command line in this process, in a folder, with what it prints caught: what a plan takes is half of
 * what it takes in a program of its own, which loads and warms up anew. Standard input, signals and the built bundle
 * want a real one: `run-program.ts`.
 */
export async function runHere(
  folder: string,
  words: readonly string[],
  env: Readonly<Record<string, string>> = {},
): Promise<Ran> {
  const caught = { stdout: '', stderr: '' };
  const before = { folder: process.cwd(), env: { ...process.env } };
  const writes = { stdout: process.stdout.write, stderr: process.stderr.write };
  for (const name of ['stdout', 'stderr'] as const)
    process[name].write = (piece: string | Uint8Array) => {
      caught[name] += typeof piece === 'string' ? piece : new TextDecoder().decode(piece);
      return true;
    };
  Object.assign(process.env, { npm_lifecycle_event: '' }, env);
  process.chdir(folder);
  try {
    const code = await runLine(words);
    return { code, out: caught.stdout, err: caught.stderr };
  } finally {
    process.chdir(before.folder);
    for (const name of Object.keys(process.env))
      if (!(name in before.env)) delete process.env[name];
    Object.assign(process.env, before.env);
    process.stdout.write = writes.stdout;
    process.stderr.write = writes.stderr;
  }
}
