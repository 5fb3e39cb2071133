import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import diffuse from '#compiled/tables/climate-diffuse.js';
import spread from '#compiled/tables/climate-spread.js';
import stations from '#compiled/tables/climate-stations.js';
import { readCsv } from '../../src/build/read-csv';
import { asLines, rowAt } from '../../src/tables/lines-table';
import { allStations } from '../../src/tables/place/climate';

const read = (name: string) =>
  readCsv(readFileSync(`src/tables/data/place/${name}.csv`, 'utf8'), `${name}.csv`);

test.each([stations, diffuse, spread])(
  'every row of $name reads as it stands in its file',
  (table) => {
    const rows = read(table.name);
    expect(rows.length).toBeGreaterThan(1000);
    expect(table.lines.length).toBe(rows.length);
    // -0 is written 0.
    const plain = (row: object) =>
      Object.fromEntries(Object.entries(row).map(([key, value]) => [key, value === 0 ? 0 : value]));
    expect(rows.map((_, at) => rowAt(table, at))).toEqual(rows.map(plain));
  },
);

test('each station has the name and the place of its row', () => {
  const rows = read('climate-stations');
  expect(
    allStations().map(({ id, name, state, latDeg, lonDeg, elevationM, utcOffsetH }) =>
      [id, name, state, latDeg, lonDeg, elevationM, utcOffsetH].join(),
    ),
  ).toEqual(
    rows.map((row) =>
      [row.id, row.name, row.state, row.lat, row.lon, row.elevation_m, row.utc_offset_h].join(),
    ),
  );
});

test('what cannot be told apart in a line is refused when it is built', () => {
  expect(() => asLines([{ a: 'one\ttwo' }])).toThrow('column a cannot be kept as lines');
  expect(() => asLines([{ a: 'one' }, { a: 2 }])).toThrow('column a cannot be kept as lines');
  expect(() => asLines([{ a: '' }])).toThrow('column a cannot be kept as lines');
  const { columns, words, lines } = asLines([{ a: 'one', b: null, c: -0.5 }]);
  expect(rowAt({ ...stations, columns, words, lines }, 0)).toEqual({ a: 'one', b: null, c: -0.5 });
  expect(() => rowAt(stations, 5000)).toThrow('no row 5000');
});
