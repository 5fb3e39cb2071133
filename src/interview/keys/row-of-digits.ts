/** The row, from 0, that digits typed one after another name, and the digits that stand; null where no row has that number. */
export function rowOfDigits(
  before: string,
  digit: string,
  count: number,
): { readonly row: number; readonly digits: string } | null {
  const both = Number(before + digit);
  const number = both <= count ? both : Number(digit);
  return number < 1 || number > count ? null : { row: number - 1, digits: String(number) };
}
