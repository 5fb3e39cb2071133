import { compileSources } from './compile-sources.mjs';

/**
 * For the test runner: a source that it asks for is its compiled twin, which Node loads by itself together with all
 * that it imports. In watch mode the runner takes the sources, for what Node has loaded it keeps.
 * @returns {import('vite').Plugin}
 */
export function runCompiled() {
  /** @type {Map<string, string>} */
  let twins = new Map();
  return {
    name: 'run-compiled',
    enforce: 'pre',
    async configResolved({ root, test }) {
      if (!test.watch) twins = await compileSources(root);
    },
    load(id) {
      const twin = twins.get(id);
      return twin && `export * from ${JSON.stringify(twin)};`;
    },
  };
}
