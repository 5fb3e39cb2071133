import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The license texts of the packages that the bundle holds parts of, as those licenses ask; `inputs` are its sources. */
export function bundledLicenses(root, inputs) {
  const folders = inputs.map(packageFolder).filter((folder) => folder !== null);
  return [...new Set(folders)]
    .sort()
    .map((folder) => licenseOf(root, folder))
    .join('\n');
}

/** node_modules/a/node_modules/@b/c/index.js is of node_modules/a/node_modules/@b/c; a source of ours is of none. */
function packageFolder(path) {
  return /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? null;
}

function licenseOf(root, folder) {
  const at = join(root, folder);
  const {
    name,
    version,
    license = 'no license named',
  } = JSON.parse(readFileSync(join(at, 'package.json'), 'utf8'));
  const file = readdirSync(at).find((one) => /^licen[cs]e/i.test(one));
  const text = file === undefined ? '' : `\n${readFileSync(join(at, file), 'utf8').trim()}\n`;
  return `${name} ${version}: ${license}\n${text}`;
}
