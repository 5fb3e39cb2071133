import { LARGEST_MOTOR_SHARE } from './largest-motor';

/** Amps on the two legs and the neutral. */
export interface LegCurrents {
  readonly legA: number;
  readonly neutral: number;
  readonly legB: number;
}

/** A motor load: both legs at 240 V, or 120 V loads that face each other on legs A and B (0 for none). */
export type MotorOnLegs =
  | { readonly kind: '240'; readonly amps: number }
  | {
      readonly kind: '120';
      readonly ampsA: number;
      readonly ampsB: number;
    };

/**
 * Amps a leg from a balanced base and added motors, in the way of NEC Annex D example D1(b): a 240 V motor loads both legs
 * and no neutral; of two 120 V loads that face each other the neutral carries the larger; 25 % of the largest motor is
 * added on the conductors that carry it (430.24).
 */
export function legCurrents(base: LegCurrents, motors: readonly MotorOnLegs[]): LegCurrents {
  const each = motors.map(onLegs);
  const largest = each.reduce((best, l) => (mostAmps(l) > mostAmps(best) ? l : best), NONE);
  return [...each, scaled(largest, LARGEST_MOTOR_SHARE)].reduce(plus, base);
}

const NONE: LegCurrents = { legA: 0, neutral: 0, legB: 0 };

function onLegs(motor: MotorOnLegs): LegCurrents {
  if (motor.kind === '240') return { legA: motor.amps, neutral: 0, legB: motor.amps };
  const neutral = Math.max(motor.ampsA, motor.ampsB);
  return { legA: motor.ampsA, neutral, legB: motor.ampsB };
}

const mostAmps = (l: LegCurrents) => Math.max(l.legA, l.legB);

const scaled = (l: LegCurrents, by: number): LegCurrents => ({
  legA: l.legA * by,
  neutral: l.neutral * by,
  legB: l.legB * by,
});

const plus = (a: LegCurrents, b: LegCurrents): LegCurrents => ({
  legA: a.legA + b.legA,
  neutral: a.neutral + b.neutral,
  legB: a.legB + b.legB,
});
