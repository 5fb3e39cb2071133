/** Words of the household in quotes, with nothing in them that a reader of Markdown would obey. */
export function inQuotes(told: string): string {
  const plain = told.replace(/[\\<>[\]&~@]|(?<=:)\/\/|(?<=www)\./g, '\\$&').replaceAll('"', "'");
  return `"${plain}"`;
}
