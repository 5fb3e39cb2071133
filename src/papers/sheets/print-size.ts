/**
 * How large the sheet for the night is printed, by how much stands on it: as large as still fits one page, measured in a
 * browser on letter and A4 for ten demo homes and nine made up by chance. What is longer keeps the plain size and runs on.
 */
export function printSize(html: string): 'largest' | 'larger' | 'plain' {
  const letters = html
    .replace(/<[^>]+>/g, ' ')
    .replace(/\s+/g, ' ')
    .trim().length;
  if (letters <= LARGEST_LETTERS) return 'largest';
  return letters <= LARGER_LETTERS ? 'larger' : 'plain';
}

/** At 12 pt 2,600 letters fitted and 2,770 did not; at 11 pt 3,020 did and 3,200 did not. */
const LARGEST_LETTERS = 2560;
const LARGER_LETTERS = 2950;
