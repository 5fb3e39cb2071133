import type { CalibrationFinding, PartFinding } from '../../../home/bill/calibration';

/** What two or twelve bills say of heating and cooling. */
export function sayCalibration(finding: CalibrationFinding): string {
  switch (finding.code) {
    case 'no-use':
      return 'The twelve bills show no use at all, so nothing goes by them.';
    case 'not-the-weather':
      return `Your twelve months do not follow the weather of your place: they miss a fit by ${percent(finding.missShare)}, and from ${100 * finding.mostShare} % on we do not go by one. Check the order of the months, and think of months away, guests or a new car. Heating and cooling were not changed; the money follows the months as they are.`;
    case 'twelve-bills':
      return [
        `Your twelve bills come to ${whole(finding.yearKwh)} kWh a year. By the usual weather of your place that is ${finding.basePerDay.toFixed(1)} kWh a day in any weather, ${whole(finding.heatingKwh)} kWh a year that go with cold and ${whole(finding.coolingKwh)} kWh that go with heat; the months miss this by ${percent(finding.missShare)}.`,
        ...(finding.roughOver === null
          ? []
          : [
              `That is more than the ${100 * finding.roughOver} % of a good fit: the year was unusual, or something else changed.`,
            ]),
        ...finding.parts.map(sayPart),
      ].join(' ');
    case 'two-bills':
      return `${twoBills(finding)} The plan goes by your bills: ${finding.what} counts ${finding.factor.toFixed(2)} times as much as it would have.`;
    case 'two-bills-too-far':
      return `${twoBills(finding)} They are too far apart to go by the bills: check the kind and size of the ${finding.what}. Nothing was changed.`;
  }
}

const twoBills = (given: Extract<CalibrationFinding, { billedPerDay: number }>) =>
  `Your two bills show ${given.billedPerDay.toFixed(1)} kWh a day more in ${given.season} than in a mild month; we would have counted ${given.countedPerDay.toFixed(1)} kWh a day for ${given.what}.`;

function sayPart({ code, what, countedKwh, factor }: PartFinding): string {
  const counted = `We would have counted ${whole(countedKwh)} kWh a year for ${what}`;
  switch (code) {
    case 'by-the-bills':
      return `${counted}: the plan goes by your bills, and ${what} counts ${factor.toFixed(2)} times as much as it would have.`;
    case 'too-far':
      return `${counted}, too far from the bills to go by them: check the kind and size of the ${what}. Nothing was changed there.`;
    case 'too-near':
      return `${counted}; what the bills show of it is too near to that, or too small beside what they miss by, to change it.`;
    case 'little-named':
      return `The answers name little that uses power for ${what}: look for ${what === 'heating' ? 'space heaters or hot water' : 'coolers, fans or pumps'} that were not named.`;
  }
}

const percent = (share: number) => `${Math.round(100 * share)} %`;
const whole = (kwh: number) => Math.round(kwh).toLocaleString('en-US');
