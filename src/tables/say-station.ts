/** Words that station lists shorten, spelled out. */
const SPELLED: Readonly<Record<string, string>> = {
  ap: 'Airport',
  arp: 'Airport',
  arpt: 'Airport',
  int: 'International',
  intl: 'International',
  rgnl: 'Regional',
  regl: 'Regional',
  muni: 'Municipal',
  fld: 'Field',
  mem: 'Memorial',
  co: 'County',
  'co.': 'County',
  afb: 'Air Force Base',
  nas: 'Naval Air Station',
  st: 'St.',
};

/** "Elkins Elkins-randolph CO Arp" as a person would write it: "Elkins Elkins-Randolph County Airport". Notes in brackets are left out. */
export function sayStation(listed: string): string {
  const words = listed.replace(/\s*[[(].*[\])]$/, '').split(' ');
  return words.map((word) => SPELLED[word.toLowerCase()] ?? capitals(word)).join(' ');
}

const capitals = (word: string) =>
  word.replace(
    /(^|[-/])([a-z])/g,
    (_, before: string, letter: string) => before + letter.toUpperCase(),
  );
