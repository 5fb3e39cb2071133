/**
 * What a terminal or an editor would obey or hide rather than show: control characters and escapes, marks that turn
 * the direction of writing, letters of no width, halves of letters.
 */
const UNSEEN =
  /[\u0000-\u001f\u007f-\u009f\u00ad\u061c\u180e\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb]|[\u{e0000}-\u{e007f}]|\p{Surrogate}/gu;

/** Text with everything unseen in it made visible as `<U+202E>`; the ends of lines stay. */
export function visible(text: string): string {
  return text.replace(UNSEEN, (letter) => (letter === '\n' ? letter : named(letter)));
}

/** The same for a text that must stay on its line. */
export function visibleLine(text: string): string {
  return text.replace(UNSEEN, named);
}

/** One sign for each, for a place where columns are counted. */
export function masked(text: string): string {
  return text.replace(UNSEEN, '\ufffd');
}

function named(letter: string): string {
  return `<U+${letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}>`;
}
