import { roofDoubt } from '../../home/solar/roof';
import { type Check, said } from './contradiction';

export const apartmentWith: Check = (home, answers) => {
  if (!said(home, 'home-kind', 'apartment')) return null;
  const own = home.facts.has('own-sources', 'engine-standby', 'solar', 'home-battery');
  const well = ['well', 'shallow-pump'].includes(String(answers['water-source']));
  if (!own && !well) return null;
  return {
    id: 'apartment-with',
    what: well ? 'well' : 'own-sources',
    questions: ['home-kind', well ? 'water-source' : 'own-sources'],
  };
};

export const batteryBelowFlood: Check = (home) => {
  if (!said(home, 'flood-history', 'inside') || !said(home, 'battery-place', 'basement'))
    return null;
  return {
    id: 'battery-below-flood',
    questions: ['battery-place', 'flood-history'],
  };
};

export const roofOverHome: Check = (home) => {
  if (roofDoubt(home.facts) === null) return null;
  return {
    id: 'roof-over-home',
    roofSqFt: home.facts.number('roof-area')!,
    homeSqFt: home.facts.number('home-area')!,
    questions: ['roof-area', 'home-area'],
  };
};
