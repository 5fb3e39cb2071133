import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * What packages make as soon as they are loaded and most runs never use, such as the width of letters beyond ASCII:
 * 17 ms of processor time in every run. The program makes it at first use instead.
 */
const SEGMENTER = [
  'const segmenter = new Intl.Segmenter();',
  'let made; const segmenter = { segment: (text) => (made ??= new Intl.Segmenter()).segment(text) };',
];
const EMOJI = [
  'const rgiEmojiRegex = /^\\p{RGI_Emoji}$/v;',
  'let rgi; const rgiEmojiRegex = { test: (text) => (rgi ??= /^\\p{RGI_Emoji}$/v).test(text) };',
];
/** The layout of the screen stands in the program as text. Fetched, as from a server, it loads all that Node speaks to servers with. */
const LAYOUT = [
  'return w||"function"!=typeof fetch?Promise.resolve()',
  'return !0?Promise.resolve()',
];

const CHANGED = {
  'string-width/index.js': [SEGMENTER, EMOJI],
  'ink/node_modules/wrap-ansi/node_modules/string-width/index.js': [SEGMENTER],
  'yoga-layout/dist/binaries/yoga-wasm-base64-esm.js': [LAYOUT],
};

/** For the bundler. A package that says it otherwise after an update stops the build, so that it is looked at again. */
export function atFirstUse(root) {
  const changes = new Map(
    Object.entries(CHANGED).map(([file, changed]) => [join(root, 'node_modules', file), changed]),
  );
  return {
    name: 'at-first-use',
    setup(build) {
      build.onLoad(
        { filter: /[\\/](string-width[\\/]index|yoga-wasm-base64-esm)\.js$/ },
        ({ path }) => {
          const changed = changes.get(path);
          return changed && { contents: changedText(path, changed), loader: 'js' };
        },
      );
    },
  };
}

function changedText(path, changed) {
  return changed.reduce(
    (text, [now, then]) => {
      if (!text.includes(now)) throw new Error(`${path} no longer says: ${now}`);
      return text.replace(now, () => then);
    },
    readFileSync(path, 'utf8'),
  );
}
