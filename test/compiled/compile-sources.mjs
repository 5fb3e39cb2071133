import { createHash } from 'node:crypto';
import {
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { transform, version } from 'esbuild';

const ROOMS = ['src', 'test'];
const OUT = 'dist/tests';

/**
 * Compiles each source of `src` and `test` that changed since it was last compiled into a module of its own under
 * `dist/tests`, which Node loads as it is.
 * @param {string} root the absolute path of the folder that holds these
 * @returns {Promise<Map<string, string>>} the absolute path of each source, and of its compiled twin
 */
export async function compileSources(root) {
  const sources = ROOMS.flatMap((room) => sourcesUnder(join(root, room)));
  const twins = new Map(sources.map((source) => [source, twinOf(root, source)]));
  const manifest = join(root, OUT, 'manifest.json');
  const known = readManifest(manifest);
  // What a path in an import stands for hangs on which sources there are: another set is compiled anew.
  const rules = rulesOf(sources);
  const before = known.rules === rules ? known.states : {};
  const states = Object.fromEntries(sources.map((source) => [source, stateOf(source)]));
  const changed = sources.filter((source) => before[source] !== states[source]);
  await Promise.all(changed.map((source) => compileOne(root, source, twins)));
  for (const source of Object.keys(known.states).filter((one) => !twins.has(one)))
    for (const end of ['', '.map']) rmSync(twinOf(root, source) + end, { force: true });
  if (changed.length > 0) replace(manifest, JSON.stringify({ rules, states }));
  return twins;
}

const twinOf = (root, source) => join(root, OUT, relative(root, source)).replace(/\.tsx?$/, '.js');

function sourcesUnder(folder) {
  return readdirSync(folder, { recursive: true })
    .filter((name) => /\.tsx?$/.test(name))
    .map((name) => join(folder, name));
}

function readManifest(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'));
  } catch {
    return { rules: '', states: {} };
  }
}

function rulesOf(sources) {
  const hash = createHash('sha256').update(readFileSync(fileURLToPath(import.meta.url)));
  return hash.update([version, ...sources.toSorted()].join('\n')).digest('hex');
}

function stateOf(source) {
  const { mtimeMs, size } = statSync(source);
  return `${mtimeMs} ${size}`;
}

async function compileOne(root, source, twins) {
  const text = readFileSync(source, 'utf8');
  refuseMocks(source, text);
  const to = twins.get(source);
  const { code, map } = await transform(text, {
    loader: source.endsWith('x') ? 'tsx' : 'ts',
    sourcefile: relative(dirname(to), source),
    sourcemap: 'external',
    // The first that names the kind of a file beside its import, and the first the runner takes.
    target: 'node20.19',
    format: 'esm',
    jsx: 'automatic',
    define: source.startsWith(join(root, 'test/')) ? whereItStood(source) : {},
  });
  mkdirSync(dirname(to), { recursive: true });
  replace(`${to}.map`, map);
  replace(to, `${withPaths(code, source, twins)}//# sourceMappingURL=${basename(to)}.map\n`);
}

/** The runner moves these above the imports, which it cannot in a module that Node loads by itself. */
function refuseMocks(source, text) {
  const mock = /\bvi\.(mock|doMock|hoisted|unmock|resetModules|importActual)\(/.exec(text);
  if (mock) throw new Error(`${source}: ${mock[0]}) works on no module here: see "How tests run"`);
}

/** A test reads files beside itself; it is to find them from where it is written. */
const whereItStood = (source) => ({
  'import.meta.url': JSON.stringify(pathToFileURL(source).href),
  'import.meta.dirname': JSON.stringify(dirname(source)),
  'import.meta.filename': JSON.stringify(source),
});

/** An import as esbuild prints it, of a path that begins with a dot. */
const IMPORT = /(^(?:import|export|\})(?:[^"\n]* from)? |\bimport\()"(\.[^"]*)"/gm;

function withPaths(code, source, twins) {
  return code.replace(IMPORT, (_, start, path) => {
    const asked = resolve(dirname(source), path);
    const tried = [asked, `${asked}.ts`, `${asked}.tsx`, join(asked, 'index.ts')];
    const found = tried.find((one) => twins.has(one));
    const from = relative(dirname(twins.get(source)), twins.get(found) ?? asked);
    return `${start}${JSON.stringify(from.startsWith('.') ? from : `./${from}`)}`;
  });
}

/** Another run beside this one never reads half a file. */
function replace(path, text) {
  const beside = `${path}.${process.pid}`;
  writeFileSync(beside, text);
  renameSync(beside, path);
}
