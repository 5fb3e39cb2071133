import { COMMANDS, EVERYWHERE, type OptionName, optionTable } from '../command-table';
import { rows, wordsAfter } from './words-after';

/** Completion for fish: one line for each command, word and option. */
export function fishCompletion(): string {
  const none = `not __fish_seen_subcommand_from ${COMMANDS.join(' ')}`;
  const lines = rows.flatMap(([name, row]) => {
    const seen = `__fish_seen_subcommand_from ${name}`;
    const { words, files } = wordsAfter(row);
    // Without a command the options of an interview hold.
    const where = name === 'interview' ? `${seen}; or ${none}` : seen;
    return [
      line(none, `-a ${name} -d '${quoted(row.says)}'`),
      ...(words.length > 0 ? [line(seen, `-a '${words.join(' ')}'`)] : []),
      ...(files ? [line(where, `-k -a '(__fish_complete_suffix .yaml)'`)] : []),
      ...row.options.map((option) => line(where, optionOf(option))),
    ];
  });
  return `# Completion of lampkeeper for fish.
complete -c lampkeeper -f
${lines.join('\n')}
${EVERYWHERE.map((option) => `complete -c lampkeeper ${optionOf(option)}`).join('\n')}
`;
}

const line = (condition: string, rest: string) =>
  `complete -c lampkeeper -n '${condition}' ${rest}`;

function optionOf(name: OptionName): string {
  const { value, letter, says } = optionTable[name];
  const taken =
    value === null
      ? ''
      : value.takes === 'folder'
        ? " -x -a '(__fish_complete_directories)'"
        : ' -r';
  return `-l ${name}${letter === undefined ? '' : ` -s ${letter}`}${taken}${value?.takes === 'file' ? ' -F' : ''} -d '${quoted(says)}'`;
}

const quoted = (text: string) => text.replaceAll('\\', '\\\\').replaceAll("'", "\\'");
