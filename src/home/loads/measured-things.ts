import type { ChoiceId, QuestionId } from '#compiled/question-ids.js';
import type { LoadId } from './load-id';

export type MeasuredThing = Exclude<ChoiceId<'measured'>, 'none'>;

/** The loads that a thing measured stands for, and the questions that hold what was read of it. */
export interface ReadOf {
  readonly loads: readonly LoadId[];
  readonly watts: QuestionId;
  readonly start?: QuestionId;
  readonly day?: QuestionId;
}

/** A thing that is off in every outage is not asked for: no plan carries it. */
export const measuredThings: Readonly<Record<MeasuredThing, ReadOf>> = {
  fridge: {
    loads: ['fridge'],
    watts: 'measured-fridge',
    start: 'measured-fridge-start',
    day: 'measured-fridge-day',
  },
  freezer: {
    loads: ['freezer-chest'],
    watts: 'measured-freezer',
    start: 'measured-freezer-start',
    day: 'measured-freezer-day',
  },
  furnace: {
    loads: ['furnace-gas', 'furnace-oil', 'boiler', 'pellet-stove'],
    watts: 'measured-furnace',
    start: 'measured-furnace-start',
  },
  'heat-pump': {
    loads: ['heat-pump'],
    watts: 'measured-heat-pump',
    start: 'measured-heat-pump-start',
  },
  'central-ac': {
    loads: ['central-ac'],
    watts: 'measured-central-ac',
    start: 'measured-central-ac-start',
  },
  'room-cooler': {
    loads: ['room-ac', 'evaporative-cooler'],
    watts: 'measured-room-cooler',
    start: 'measured-room-cooler-start',
  },
  'mini-split': { loads: ['mini-split'], watts: 'measured-mini-split' },
  well: { loads: ['well'], watts: 'measured-well', start: 'measured-well-start' },
  sump: { loads: ['sump'], watts: 'measured-sump', start: 'measured-sump-start' },
  waste: { loads: ['waste'], watts: 'measured-waste', start: 'measured-waste-start' },
  'heat-tape': { loads: ['heat-tape'], watts: 'measured-heat-tape' },
  'water-heater': { loads: ['water-heater'], watts: 'measured-water-heater' },
  internet: {
    loads: ['modem-router', 'fixed-wireless', 'satellite-internet'],
    watts: 'measured-internet',
  },
  lights: { loads: ['lights-led'], watts: 'measured-lights' },
  laptop: { loads: ['laptop'], watts: 'measured-laptop' },
  desktop: { loads: ['desktop'], watts: 'measured-desktop' },
  microwave: { loads: ['microwave'], watts: 'measured-microwave' },
  washer: { loads: ['washer'], watts: 'measured-washer' },
  dishwasher: { loads: ['dishwasher'], watts: 'measured-dishwasher' },
  dehumidifier: {
    loads: ['dehumidifier'],
    watts: 'measured-dehumidifier',
    start: 'measured-dehumidifier-start',
    day: 'measured-dehumidifier-day',
  },
  aquarium: { loads: ['aquarium'], watts: 'measured-aquarium' },
  'radon-fan': { loads: ['radon-fan'], watts: 'measured-radon-fan' },
  'garage-door': { loads: ['garage-door'], watts: 'measured-garage-door' },
  'stair-lift': { loads: ['stairlift'], watts: 'measured-stair-lift' },
  'always-on': { loads: ['house-standby'], watts: 'measured-always-on' },
  oxygen: { loads: ['oxygen-concentrator'], watts: 'measured-oxygen' },
  ventilator: { loads: ['ventilator'], watts: 'measured-ventilator' },
  cpap: { loads: ['cpap'], watts: 'measured-cpap' },
  dialysis: { loads: ['dialysis'], watts: 'measured-dialysis' },
  'other-devices': { loads: ['other-medical'], watts: 'measured-other-devices' },
};

const byLoad: ReadonlyMap<LoadId, ReadOf> = new Map(
  Object.values(measuredThings).flatMap((of) => of.loads.map((load) => [load, of] as const)),
);

/** What may have been read of a load; undefined for one that nobody is asked to measure. */
export const readOf = (load: LoadId): ReadOf | undefined => byLoad.get(load);
