import type { TransferTime } from '../../routes/transfer-time';

/** Time without power when the grid fails, to stand after a colon. */
export function sayTransferTime({ code, seconds }: TransferTime): string {
  switch (code) {
    case 'by-itself':
      return 'from no blink to a few seconds, by itself';
    case 'by-itself-then-generator':
      return 'from no blink to a few seconds, by itself; the generator is started by hand later';
    case 'ready-at-device':
      return 'none to a few seconds, if it stands ready at the device';
    case 'starts-itself':
      return `${span(seconds)}, by itself`;
    case 'plugged-in':
      return 'a few minutes, until somebody plugs things in';
    case 'started-by-hand':
      return `${span(seconds)}, and somebody must be home to start it`;
    case 'switched-over-by-hand':
      return `${span(seconds)}, and somebody must be home to start it and switch over`;
    case 'vehicle-by-hand':
      return `${span(seconds)}, by hand, if it is at home`;
    case 'stays-dark':
      return 'the house stays dark';
    case 'not-worked-out':
      return 'not worked out';
  }
}

/** "10 to 30 seconds", "5 to 30 minutes". */
function span(seconds: TransferTime['seconds']): string {
  if (seconds === null) return 'as long as the grid is out';
  const { low, high } = seconds;
  return high >= 120 ? `${low / 60} to ${high / 60} minutes` : `${low} to ${high} seconds`;
}
