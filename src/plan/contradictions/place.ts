import { roofDoubt } from '../../home/solar/roof';
import { type Check, said } from './contradiction';

export const apartmentWith: Check = (home, answers) => {
  if (!said(home, 'home-kind', 'apartment')) return null;
  const own = home.facts.has('own-sources', 'engine-standby', 'solar', 'home-battery');
  const well = ['well', 'shallow-pump'].includes(String(answers['water-source']));
  if (!own && !well) return null;
  return {
    id: 'apartment-with',
    asks: 'Is it an apartment? A well, a standby generator, a roof or a fixed battery of your own points to a house.',
    answers: [
      'The home is an apartment.',
      well
        ? 'Water comes from a well of its own.'
        : 'It has a standby generator, solar panels or a home battery of its own.',
    ],
    questions: ['home-kind', well ? 'water-source' : 'own-sources'],
  };
};

export const batteryBelowFlood: Check = (home) => {
  if (!said(home, 'flood-history', 'inside') || !said(home, 'battery-place', 'basement'))
    return null;
  return {
    id: 'battery-below-flood',
    asks: 'Is there a place above the highest water? A flooded battery can burn days later.',
    answers: [
      'The battery would go in the basement.',
      'Water has been in the garage, the basement or the home.',
    ],
    questions: ['battery-place', 'flood-history'],
  };
};

export const roofOverHome: Check = (home) => {
  if (roofDoubt(home.facts) === null) return null;
  return {
    id: 'roof-over-home',
    asks: 'Is the roof measured again? One side of it cannot be that much larger than the home.',
    answers: [
      `The sunny side of the roof is ${home.facts.number('roof-area')} sq ft.`,
      `The home is ${home.facts.number('home-area')} sq ft inside.`,
    ],
    questions: ['roof-area', 'home-area'],
  };
};
