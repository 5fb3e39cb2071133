/** Told to the program as its argument: it holds one sitting after another. */
export const AGAIN = 'again';

/**
 * One sitting; or, where the program was told so, one after another: after each, Enter begins the next and any other
 * line ends the program. The page is wiped between them and nothing else is, so what one sitting leaves behind meets
 * the next, and what it leaves open keeps the program from ending.
 */
export async function sittingAfterSitting(sit: () => Promise<void>): Promise<void> {
  do await sit();
  while (process.argv.includes(AGAIN) && (await nextLine()) === '');
}

async function nextLine(): Promise<string> {
  const { stdin } = process;
  const line = await new Promise<string>((resolve) => {
    stdin.once('data', (text) => resolve(String(text).trim()));
    stdin.resume();
  });
  stdin.pause();
  // The terminal may have been given another size while nobody sat there: the program hears of it first.
  await new Promise((resolve) => setImmediate(resolve));
  process.stdout.write('\x1b[2J\x1b[H');
  return line;
}
