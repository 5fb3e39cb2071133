import { EVERYWHERE, type OptionName, optionTable, type Takes } from '../command-table';
import { rows, wordsAfter } from './words-after';

/** Completion for zsh by `_arguments`, which shows what each option does. */
export function zshCompletion(): string {
  const commands = rows.map(([name, { says }]) => `    '${name}:${quoted(says)}'`);
  const cases = rows.map(([name, row]) => {
    const { words, files } = wordsAfter(row);
    const homes = files ? [`'1:home:_files -g "*.yaml"'`] : [];
    const rest = words.length > 0 ? [`'${files ? '*' : '1'}:what:(${words.join(' ')})'`] : [];
    const all = [...[...row.options, ...EVERYWHERE].map(optionSpec), ...homes, ...rest];
    return `    ${name}) _arguments ${all.join(' ')} ;;`;
  });
  return `#compdef lampkeeper
# Completion of lampkeeper for zsh.
_lampkeeper() {
  local -a commands
  commands=(
${commands.join('\n')}
  )
  if (( CURRENT == 2 )) && [[ "$words[2]" != -* ]]; then
    _describe command commands
    _files -g "*.yaml"
    return
  fi
  local command="$words[2]"
  if (( \${+commands[(r)$command:*]} )); then
    shift words
    (( CURRENT-- ))
  else
    command=interview
  fi
  case "$command" in
${cases.join('\n')}
  esac
}
compdef _lampkeeper lampkeeper
`;
}

function optionSpec(name: OptionName): string {
  const { value, says } = optionTable[name];
  const taken = value === null ? '' : `:${value.name}:${actions[value.takes]}`;
  return `'--${name}[${quoted(says)}]${taken}'`;
}

const actions: Readonly<Record<Takes, string>> = {
  home: '_files -g "*.yaml"',
  file: '_files',
  folder: '_directories',
  day: '',
  choice: '',
  words: '',
  nothing: '',
};

/** Safe within single quotes and brackets. */
const quoted = (text: string) => text.replaceAll("'", "'\\''").replace(/[[\]:]/g, '\\$&');
