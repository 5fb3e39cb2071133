import type { FloorQuestion } from '../../../plan/sureness/floor-of-answers';

/** What a question decides without which nothing is advised; the rest is in the question file. */
export const sayDecides: Readonly<Record<FloorQuestion, string>> = {
  'must-run': 'Decides how much power and energy is needed at all',
  'heat-main': 'Decides whether heat can be kept on, and by what',
  'home-zip': 'Decides cold, heat and sun, and what the law asks',
  'home-kind': 'Decides which sources are allowed and safe here',
  'engine-place': 'Decides whether a generator is possible here',
  'battery-place': 'Decides whether a fixed battery is possible here',
};
