import { COMMANDS, commandRow, type OptionName, optionsOf, optionTable } from '../command-table';
import { wordsAfter } from './words-after';

/** Completion for bash by its own `complete` and `compgen`: commands and homes first, then what belongs to the command. */
export function bashCompletion(): string {
  const cases = COMMANDS.map((name) => {
    const flags = optionsOf(name).map((option) => `--${option}`);
    const { words, files } = wordsAfter(commandRow(name));
    const more = files ? ' $(compgen -f -- "$word")' : '';
    return `    ${name}) options="${flags.join(' ')}"; words="${words.join(' ')}"${more === '' ? '' : '; files=1'} ;;`;
  });
  const taking = (takes: readonly string[]) =>
    (Object.keys(optionTable) as OptionName[])
      .filter((name) => takes.includes(optionTable[name].value?.takes ?? ''))
      .map((name) => `--${name}`)
      .join('|');
  return `# Completion of lampkeeper for bash.
_lampkeeper() {
  local word="\${COMP_WORDS[COMP_CWORD]}" before="\${COMP_WORDS[COMP_CWORD-1]}"
  local command="" options="" words="" files="" one
  COMPREPLY=()
  case "$before" in
    ${taking(['file'])}) COMPREPLY=($(compgen -f -- "$word")); return ;;
    ${taking(['folder'])}) COMPREPLY=($(compgen -d -- "$word")); return ;;
    ${taking(['day'])}) return ;;
  esac
  for one in "\${COMP_WORDS[@]:1:COMP_CWORD-1}"; do
    case "$one" in ${COMMANDS.join('|')}) command="$one"; break ;; esac
  done
  case "$command" in
    "") options="${optionsOf('interview')
      .map((one) => `--${one}`)
      .join(' ')}"; words="${COMMANDS.join(' ')}"; files=1 ;;
${cases.join('\n')}
  esac
  if [[ "$word" == -* ]]; then
    COMPREPLY=($(compgen -W "$options" -- "$word"))
  else
    COMPREPLY=($(compgen -W "$words" -- "$word"))
    [[ -n "$files" ]] && COMPREPLY+=($(compgen -f -X '!*.yaml' -- "$word") $(compgen -d -- "$word"))
  fi
}
complete -o filenames -F _lampkeeper lampkeeper
`;
}
