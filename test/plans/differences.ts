import type { Codes } from './codes-in';

/** Where two sets of codes differ: "routes.3.verdict: works, was cannot". */
export function differences(was: Codes | undefined, is: Codes | undefined, at = ''): string[] {
  if (isBranch(was) && isBranch(is) && Array.isArray(was) === Array.isArray(is)) {
    const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])];
    return keys.flatMap((key) =>
      differences(child(was, key), child(is, key), at === '' ? key : `${at}.${key}`),
    );
  }
  return JSON.stringify(was) === JSON.stringify(is)
    ? []
    : [`${at}: ${short(is)}, was ${short(was)}`];
}

type Branch = readonly Codes[] | { readonly [key: string]: Codes };

const isBranch = (codes: Codes | undefined): codes is Branch =>
  typeof codes === 'object' && codes !== null;

const child = (branch: Branch, key: string) => (branch as Record<string, Codes>)[key];

function short(codes: Codes | undefined): string {
  const text = JSON.stringify(codes) ?? 'nothing';
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
