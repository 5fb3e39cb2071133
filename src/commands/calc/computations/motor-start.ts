import {
  type MotorStart,
  startFromCodeLetter,
  startFromHorsepower,
  startFromNameplate,
} from '../../../physics/motor-start';
import { codeLetterRow, codeLetters } from '../../../tables/electrical/code-letters';
import { lockedRotorCurrent } from '../../../tables/electrical/locked-rotor-current';
import type { Calculation, Outcome } from '../calculation';
import { citedTables } from '../cited-table';
import type { Values } from '../values';

/** What a motor draws in the moment it starts: from its label, its code letter, or its horsepower. */
export const motorStart: Calculation = {
  name: 'motor-start',
  about: 'current and apparent power of a motor in the moment it starts, single phase',
  inputs: [
    { kind: 'number', key: 'volts', about: 'volts on the label', unit: 'V', from: 100, to: 250 },
    {
      kind: 'number',
      key: 'lra',
      about: 'locked-rotor amps on the label, the best there is',
      unit: 'A',
      from: 0.5,
      to: 1000,
      optional: true,
    },
    {
      kind: 'text',
      key: 'code-letter',
      about: 'code letter on the label, with hp',
      pattern: /^[A-Za-z]$/,
      form: 'one letter',
      optional: true,
    },
    {
      kind: 'number',
      key: 'hp',
      about: 'horsepower on the label',
      unit: 'hp',
      from: 0.05,
      to: 15,
      optional: true,
    },
  ],
  source: [
    'label first',
    ...[codeLetters, lockedRotorCurrent].map((table) => citedTables(table)),
    'four to eight times full load: common practice, no source',
  ].join('; '),
  example: 'volts=115 hp=1',
  run: startOf,
};

function startOf(values: Values): Outcome {
  const volts = values.number('volts');
  const lockedRotorAmps = values.numberOrNull('lra');
  const hp = values.numberOrNull('hp');
  const letter = values.wordOrNull('code-letter');
  if (lockedRotorAmps !== null) {
    return shown(startFromNameplate({ lockedRotorAmps, volts }), 'as on the label', volts);
  }
  if (hp === null) return { ok: false, says: 'give lra, or hp, or code-letter with hp.' };
  return letter === null ? fromTable(hp, volts) : fromLetter(letter, hp, volts);
}

function fromLetter(letter: string, hp: number, volts: number): Outcome {
  const row = codeLetterRow(letter);
  if (row === null) {
    return { ok: false, says: `"${letter}" is no code letter; I, O and Q are not used.` };
  }
  const start = startFromCodeLetter({ ...row, hp, volts });
  if (start === null) return { ok: false, says: 'letter V has no upper end; give lra instead.' };
  const band = `1000 x ${row.kvaPerHpLow} to ${row.kvaPerHpHigh} kVA/hp x ${hp} hp / ${volts} V`;
  return shown(start, band, volts);
}

function fromTable(hp: number, volts: number): Outcome {
  const row = lockedRotorCurrent.rows.find((r) => r.hp >= hp - 1e-9);
  const band = voltageBand(volts);
  if (row === undefined || band === null) {
    return {
      ok: false,
      says: 'the table holds motors up to 10 hp at 115, 208 and 230 V; give lra.',
    };
  }
  const tableAmps = row[band];
  const rounded = row.hp === hp ? '' : `, next size up ${row.hp} hp`;
  const words = `Table 430.251(A) ${tableAmps} A${rounded}, ends 4/6 and 8/6 of it`;
  return shown(startFromHorsepower({ tableAmps, volts }), words, volts);
}

function voltageBand(volts: number): 'amps115' | 'amps208' | 'amps230' | null {
  if (volts >= 110 && volts <= 127) return 'amps115';
  if (volts >= 200 && volts < 220) return 'amps208';
  return volts >= 220 && volts <= 250 ? 'amps230' : null;
}

function shown({ amps, va }: MotorStart, formula: string, volts: number): Outcome {
  const ends = (given: { low: number; high: number }, unit: string) => [
    { label: 'low', value: given.low, unit },
    { label: 'high', value: given.high, unit },
  ];
  const steps = [
    { label: 'starting current', formula, value: amps.likely, unit: 'A' },
    { label: 'apparent power', formula: `V x A, ${volts} V`, value: va.likely, unit: 'VA' },
  ];
  const results = [
    { label: 'starting current', value: amps.likely, unit: 'A' },
    ...(amps.low < amps.high ? ends(amps, 'A') : []),
    { label: 'starting apparent power', value: va.likely, unit: 'VA' },
    ...(va.low < va.high ? ends(va, 'VA') : []),
  ];
  return { ok: true, steps, results };
}
