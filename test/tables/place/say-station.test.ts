import { describe, expect, test } from 'vitest';
import { allStations } from '../../../src/tables/place/climate';
import { placeOf } from '../../../src/tables/place/place';
import { sayStation } from '../../../src/tables/place/say-station';
import { stateName, stateNames } from '../../../src/tables/place/state-name';
import { stationTowns } from '../../../src/tables/place/station-towns';
import { priceByState } from '../../../src/tables/prices/electricity-price';
import { sayStations } from '../../../src/words/en/place/say-place';

/** Written by hand from a map and general knowledge of the places; the left side as the published list of stations has it. */
const CHECKED: [listed: string, said: string][] = [
  ['Concordia Blosser Muni AP', 'Concordia, Kansas'],
  ['Robert Gray Aaf', 'Killeen, Texas'],
  ['England Afb', 'Alexandria, Louisiana'],
  ['Barrow W Post-w Rogers Arpt [nsa - Arm]', 'Utqiagvik, Alaska'],
  ['Saint Mary`s (awos)', "St. Mary's, Alaska"],
  ['Mcgrath Arpt', 'McGrath, Alaska'],
  ['Fairbanks/eielson A', 'Eielson Air Force Base, Alaska'],
  ['Maxwell Afb', 'Montgomery, Alabama'],
  ['Gadsen Muni (awos)', 'Gadsden, Alabama'],
  ['Memorial Fld', 'Hot Springs, Arkansas'],
  ['Davis Monthan Afb', 'Tucson, Arizona'],
  ['Jack Northrop Fld H', 'Hawthorne, California'],
  ['Beale Afb', 'Beale Air Force Base, California'],
  ['Palm Springs Thermal AP', 'Thermal, California'],
  ['Denver/centennial [golden - Nrel]', 'Golden, Colorado'],
  ['Macdill Afb', 'Tampa, Florida'],
  ['ST Petersburg Clear', 'St. Petersburg, Florida'],
  ['Hunter Aaf', 'Savannah, Georgia'],
  ['Kona Intl AT Keahol', 'Kailua-Kona, Hawaii'],
  ['Oelwen', 'Oelwein, Iowa'],
  ['LE Mars', 'Le Mars, Iowa'],
  ['Joslin Fld Magic VA [twin Falls - Uo]', 'Twin Falls, Idaho'],
  ['Central Illinois RG', 'Bloomington, Illinois'],
  ['Delaware CO Johnson', 'Muncie, Indiana'],
  ['Mcconnell Afb', 'Wichita, Kansas'],
  ['Worchester Regional Arpt', 'Worcester, Massachusetts'],
  ['Naval Air Station', 'Brunswick, Maine'],
  ['Sault Ste Marie Sanderson Fie', 'Sault Ste. Marie, Michigan'],
  ['Thief River(awos)', 'Thief River Falls, Minnesota'],
  ['FT Lnrd WD Aaf', 'Fort Leonard Wood, Missouri'],
  ['Keesler Afb', 'Biloxi, Mississippi'],
  ['O`neill/baker Field', "O'Neill, Nebraska"],
  ['Dillant Hopkins', 'Keene, New Hampshire'],
  ['Holloman Afb', 'Alamogordo, New Mexico'],
  ['Truth OR Consequences Muni AP', 'Truth or Consequences, New Mexico'],
  ['Republic', 'Farmingdale, New York'],
  ['Vance Afb', 'Enid, Oklahoma'],
  ['Willow Grove Nas', 'Willow Grove, Pennsylvania'],
  ['Mercedita', 'Ponce, Puerto Rico'],
  ['Chan Gurney Muni', 'Yankton, South Dakota'],
  ['Cox Fld', 'Paris, Texas'],
  ['Washington DC Reagan AP', 'Arlington, Virginia'],
  ['William R Fairchild', 'Port Angeles, Washington'],
  ['Wittman Rgnl', 'Oshkosh, Wisconsin'],
  ['Elkins Elkins-randolph CO Arp', 'Elkins, West Virginia'],
];

test.each(CHECKED)('%s is said as %s', (listed, said) => {
  const station = allStations().find(({ name }) => name === listed)!;
  expect(sayStation(station)).toBe(said);
});

test('the towns are those of the stations, one each', () => {
  const ids = stationTowns.rows.map(({ id }) => String(id)).sort();
  expect(ids).toEqual(
    allStations()
      .map(({ id }) => id)
      .sort(),
  );
});

describe('every label is one a household can read', () => {
  const labels = allStations().map((station) => ({ station, label: sayStation(station) }));
  const SMALL = new Set(['or', 'of', 'the']);
  const WORD =
    /^(?:St\.|Ste\.|d'Alene|[A-Z]'[A-Z][a-z]+|(?:Mc|Du)[A-Z][a-z]+|[A-Z][a-z]+(?:'s)?(?:-[A-Za-z][a-z]+)*)$/;
  const SHORTENED =
    /\b(a?a[fp]|afb|angb|nas|naa?[fs]|mca[fs]|ap|apt|ar[bp]|arpt|airp|intl?|muni|rgnl?|regl?|natl?|fld|fd|mem|co|cnty|wso|wsfo|wfo|ft|mt|awos|asos|amos|faa|ndb|univ)\b/i;
  const AIRPORT =
    /\b(airport|municipal|international(?! Falls)|regional|county|field|executive|memorial)\b/i;

  test('no word is shortened or oddly written, none is left over of an airport', () => {
    for (const { label } of labels) {
      const [town, state, ...more] = label.split(', ');
      expect(more, label).toEqual([]);
      for (const word of `${town} ${state}`.split(' ')) {
        expect(SMALL.has(word) || WORD.test(word), `${label}: ${word}`).toBe(true);
      }
      expect(label).not.toMatch(SHORTENED);
      expect(town).not.toMatch(AIRPORT);
    }
  });

  test('the state is spelled out', () => {
    const full = new Set(stateNames.rows.map(({ name }) => name));
    for (const { station, label } of labels) {
      expect(full.has(label.split(', ')[1]!), label).toBe(true);
      expect(label.endsWith(stateName(station.state))).toBe(true);
    }
  });
});

test('names of states are those of the price table, and letters that are no state stay', () => {
  for (const { state, name } of priceByState.rows) {
    if (state !== 'US') expect(stateName(state)).toBe(name);
  }
  expect(stateName('ks')).toBe('Kansas');
  expect(stateName('MIL')).toBe('MIL');
});

test('a household reads the town, the state and the distance', () => {
  expect(sayStations(placeOf({ zip: '66901' }).stations)).toMatch(
    /^Weather from a (?:mix of stations|station) near Concordia, Kansas \(\d+ miles? away/,
  );
});
