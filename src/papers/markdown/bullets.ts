/** A list whose items hold no inline marks, so that every reader prints it plainly. */
export function bullets(items: readonly string[]): string {
  return items.map((item) => `- ${item.replace(/[*_`|]/g, '')}`).join('\n');
}

/** A titled list; `none` stands where it would be empty. */
export function titledList(title: string, items: readonly string[], none = 'Nothing.'): string[] {
  return [title, items.length > 0 ? bullets(items) : none];
}
