import type { Interview } from '../../src/interview/questions/question';
import type { Context } from '../../src/interview/state';

const because = 'Made up for the tests.';
const common = { why: 'We ask because the plan changes with it.', find: 'Look on the label.' };

/** An invented interview with one question of every kind and every kind of condition. */
export const smallInterview: Interview = {
  topics: [
    { id: 'now', title: 'Right now' },
    { id: 'water', title: 'Water and waste' },
    { id: 'goal', title: 'What you want to ride out' },
  ],
  dangers: {
    question: 'now-danger',
    dangers: [
      {
        id: 'gas',
        rank: 1,
        leaveNow: true,
        forbids: ['switch'],
        steps: ['leave', 'touch-nothing', 'call-gas'],
      },
      { id: 'wet', rank: 2, leaveNow: false, forbids: [], steps: ['off-panel', 'main-off'] },
    ],
    steps: [
      {
        id: 'leave',
        part: 'away',
        does: [],
        say: 'Leave the house now and take everyone with you.',
      },
      { id: 'touch-nothing', part: 'away', does: [], say: 'Touch no switch.' },
      { id: 'call-gas', part: 'call', does: [], say: 'Call the gas company from outside.' },
      { id: 'off-panel', part: 'away', does: [], say: 'Keep away from the panel.' },
      { id: 'main-off', part: 'off', does: ['switch'], say: 'Switch off what stands in the wet.' },
    ],
  },
  tonight: [],
  walk: {
    panel: [],
    furnace: [],
    well: ['well-watts'],
    kitchen: [],
    outdoors: [],
    papers: ['home-zip'],
  },
  readBack: {},
  private: { name: ['home-name'], people: [], place: ['home-zip'], money: [] },
  sureOf: ['now-danger', 'goal-hours'],
  medicalWords: ['oxygen'],
  street: ['home-zip'],
  opening: ['now-danger', 'home-name'],
  mattersMost: ['goal-hours'],
  tariff: [],
  retired: [],
  questions: [
    {
      ...common,
      id: 'now-danger',
      topic: 'now',
      kind: 'choices',
      ask: 'Is anything wrong in your home right now?',
      hint: 'Tick all that are true',
      says: 'Wrong right now',
      safety: true,
      choices: [
        {
          id: 'gas',
          label: 'I smell gas',
        },
        { id: 'wet', label: 'Water near the panel' },
        { id: 'none', label: 'None of these', alone: true },
      ],
      unsure: { assume: null, because },
    },
    {
      ...common,
      id: 'home-name',
      topic: 'now',
      kind: 'name',
      ask: 'What shall we call this home?',
      hint: 'A short word for the files, for example oak-house',
      says: 'Name of the home',
      unsure: { assume: null, because },
    },
    {
      ...common,
      id: 'water-source',
      topic: 'water',
      kind: 'choice',
      ask: 'Where does your water come from?',
      hint: 'A water bill means town water',
      says: 'Water source',
      choices: [
        { id: 'town', label: 'Town water' },
        { id: 'well', label: 'A well with a pump' },
      ],
      unsure: { assume: 'well', because },
    },
    {
      ...common,
      id: 'well-watts',
      topic: 'water',
      kind: 'number',
      ask: 'How many watts does the well pump use?',
      hint: 'Watts stand on the label of the pump or its control box',
      says: 'Well pump power',
      unit: 'W',
      volts: 240,
      possible: [100, 8000],
      usual: [400, 3000],
      unsure: { assume: 1000, low: 600, high: 2000, because },
      when: { q: 'water-source', is: 'well' },
    },
    {
      ...common,
      id: 'waste',
      topic: 'water',
      kind: 'choices',
      ask: 'Which of these move water out of the home?',
      hint: 'Tick all that you have',
      says: 'Pumps for waste',
      choices: [
        { id: 'sump', label: 'A sump pump' },
        { id: 'septic', label: 'A septic pump', when: { q: 'water-source', is: 'well' } },
        { id: 'none', label: 'Neither', alone: true },
      ],
      unsure: { assume: ['sump'], because },
    },
    {
      ...common,
      id: 'home-zip',
      topic: 'goal',
      kind: 'zip',
      ask: 'What is your ZIP code?',
      hint: 'Five digits, for example 48911',
      says: 'ZIP code',
      unsure: { assume: null, because },
    },
    {
      ...common,
      id: 'goal-hours',
      topic: 'goal',
      kind: 'number',
      ask: 'How long should the home run without the grid?',
      hint: 'Hours or days, for example 36 or 3 days',
      says: 'Time to ride out',
      unit: 'h',
      possible: [1, 720],
      usual: [2, 336],
      unsure: { assume: 24, low: 8, high: 72, because },
    },
  ],
};

/** A talk about it whose next question is the one worth most. */
export const guidedContext: Context = {
  interview: smallInterview,
  short: false,
  guided: true,
  nameProblem: () => null,
  spareName: () => 'home-1',
};
