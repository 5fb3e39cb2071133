/** Share added for the largest motor: its conductors are counted at 125 %. NEC 220.50 and 430.24. */
export const LARGEST_MOTOR_SHARE = 0.25;

/** What is added for the largest of these motors, VA or A as they come: a quarter of it; 0 without a motor. */
export function largestMotorExtra(motors: readonly number[]): number {
  return LARGEST_MOTOR_SHARE * Math.max(0, ...motors);
}
