const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅕': '1/5',
  '⅙': '1/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/**
 * One spelling for what people type or paste: lower case, plain spaces, hyphens, quotes, fractions
 * and signs; a leading dollar sign is moved behind its number, where every other unit stands.
 */
export function tidyText(text: string): string {
  return (
    text
      // Before NFKC, which would turn "1½" into "11/2".
      .replace(/[¼½¾⅓⅔⅕⅙⅛⅜⅝⅞]/g, (sign) => ` ${FRACTIONS[sign]}`)
      .normalize('NFKC')
      .toLowerCase()
      .replace(/[\u2010-\u2015\u2212]/g, '-')
      .replace(/[\u2018\u2019\u2032]/g, "'")
      .replace(/[\u201c\u201d\u2033]/g, '"')
      .replace(/\u2044/g, '/')
      .replace(/[×*·]/g, 'x')
      .replace(/\s+/g, ' ')
      .replace(/\$ ?(-?[\d.,]*\d ?k?)(?![a-z\d])/g, '$1 $$')
      .trim()
      .replace(/[.,;]+$/, '')
  );
}
