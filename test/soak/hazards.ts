import type { Answer } from '../../src/interview/answers';
import type { RuleId } from '../../src/tables/rules';

/** A hazard any home may have: how it is told, and how a twin tells that it has none. */
export interface Hazard {
  readonly rule: RuleId;
  /** What speaks instead where nobody's life hangs on a device. */
  readonly gentler?: RuleId;
  readonly question: string;
  /** One choice; added where several may be ticked. */
  readonly choice: string;
  readonly without: Readonly<Record<string, Answer>>;
}

const hazard = (
  rule: RuleId,
  question: string,
  choice: string,
  without: Answer,
  also: Hazard['without'] = {},
): Hazard => ({ rule, question, choice, without: { ...also, [question]: without } });

const house = { 'home-kind': 'house' };
const calm = { 'now-danger': ['none'] };

/** Each needs one answer to be told, and speaks whatever else the home says. */
export const hazards: readonly Hazard[] = [
  hazard('gas-smell', 'now-danger', 'gas-smell', ['none']),
  hazard('co-signs', 'now-danger', 'unwell', ['none']),
  hazard('co-signs', 'now-danger', 'engine-near', ['none']),
  hazard('hot-panel', 'panel-signs', 'heat-or-buzz', ['none'], calm),
  hazard('hot-panel', 'panel-signs', 'burn-or-rust', ['none'], calm),
  hazard('known-bad-panel', 'panel-signs', 'known-bad-make', ['none']),
  hazard('backfeed-found', 'own-sources', 'backfeed-cord', ['none']),
  hazard('backfeed-found', 'engine-connect', 'wall-outlet', 'cords', {
    'own-sources': ['engine-portable'],
  }),
  hazard('charcoal-indoors', 'cook-without', 'charcoal-indoors', ['none']),
  hazard('oven-heat', 'heat-second', 'oven-or-grill', 'none'),
  hazard('oven-heat', 'heat-second', 'unvented', 'none'),
  hazard('fuel-in-wrong-place', 'gasoline-place', 'inside', 'detached-shed'),
  hazard('fuel-in-wrong-place', 'gasoline-place', 'attached-garage', 'detached-shed'),
  hazard('home-made-battery', 'battery-kind', 'home-made', 'lead-acid'),
  hazard('porch-carport', 'engine-stood', 'porch-carport', 'never-ran', {
    ...calm,
    ...house,
    'engine-place': 'open-20ft',
  }),
  hazard('apartment-no-engine', 'home-kind', 'apartment', 'house'),
  hazard('heart-pump', 'medical-devices', 'heart-pump', ['none']),
  hazard('ventilator-bag', 'medical-devices', 'ventilator', ['none']),
  hazard('oxygen-fire', 'medical-devices', 'oxygen-concentrator', ['none']),
  {
    ...hazard('second-source', 'second-source', 'none', ['other-place']),
    gentler: 'mask-second-way',
  },
  hazard('wildfire-go', 'hazards', 'wildfire', ['none']),
  hazard('aluminum-wiring', 'wiring-signs', 'aluminum', ['none']),
  hazard('knob-and-tube', 'wiring-signs', 'knob-tube', ['none']),
];
