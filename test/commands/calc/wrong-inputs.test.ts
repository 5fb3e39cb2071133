import { describe, expect, test } from 'vitest';
import { runCalc } from './run-calc';

describe('wrong usage is said in a sentence, with exit 2 and nothing on stdout', () => {
  test.each([
    ['no-such', 'There is no computation "no-such".'],
    ['constructor', 'There is no computation "constructor".'],
    ['pump-power gpm=10', 'pump-power also needs head.'],
    ['pump-power gpm=10 head=84 hed=3', 'pump-power has no input "hed".'],
    ['pump-power gpm=many head=84', 'gpm: "many" is not a number of gpm.'],
    ['pump-power gpm= head=84', 'gpm: "" is not a number of gpm.'],
    ['pump-power gpm=10 head=12 V', 'head: "12 V" is not a number of ft.'],
    ['pump-power gpm=10-12 head=84', 'gpm: "10-12" is not a number of gpm.'],
    ['pump-power gpm=10 head=0', 'head must be from 1 ft to 2,000 ft, not 0 ft.'],
    ['pump-power gpm=10 head=84 gpm=11', 'gpm is given twice.'],
    ['transfer-time time=0.6 s', 'time: "0.6 s" is not a number of ms.'],
    ['sun-position lat=91', 'lat must be from -90 deg to 90 deg, not 91 deg.'],
    ['roof-yield zip=8020 panels=3', 'zip: write it as five digits, not "8020".'],
    ['pump-power ten', '"ten" is not key=value.'],
    ['pump-power =10', '"=10" is not key=value.'],
    ['pump-power gpm=10 head=84 pump-efficiency=0.55', 'pump-efficiency must be from 1% to 100%'],
    ['busbar busbar=200 main=200 position=left', 'position must be opposite-end or'],
    ['motor-start volts=115 hp=1 code-letter=GG', 'code-letter: write it as one letter'],
    [
      'service-load method=standard area=1500 kitchen-circuits=2.5',
      'kitchen-circuits must be a whole',
    ],
    ['service-load method=standard area=1500 cooking=range', 'cooking: "range" is not a name with'],
  ])('%s', async (line, says) => {
    const { code, out, err } = await runCalc(...line.split(' '));
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
  });
});

describe('a computation without a valid result says why, with exit 1', () => {
  test.each([
    ['battery-runtime usable=5 load=0 idle=0', 'nothing is drawn'],
    ['motor-start volts=230 hp=1 code-letter=V', 'no upper end'],
    ['motor-start volts=230 hp=1 code-letter=O', 'no code letter'],
    ['motor-start volts=230', 'give lra, or hp'],
    ['motor-start volts=115 hp=15', 'up to 10 hp'],
    ['wire-drop size=14 metal=aluminum amps=10 distance=10 volts=120', 'no aluminum in size 14'],
    ['wire-size breaker=25 amps=20 distance=5000 volts=120 most-drop=1', 'no wire in the table'],
    ['wire-size breaker=40 amps=40 distance=20 volts=240', 'needs 50 A or more'],
    ['wire-size breaker=30 amps=40 distance=20 volts=240 continuous=no', 'needs 40 A or more'],
    [
      'wire-size use=dwelling-service breaker=60 amps=40 distance=20 volts=240',
      'holds from 100 A to 400 A',
    ],
    [
      'generator-fuel rated=5 load=6 fuel=gasoline generator=portable',
      'more than the generator is rated',
    ],
    ['generator-fuel rated=5 load=2 fuel=diesel generator=portable', 'does not burn diesel'],
    ['busbar busbar=125 main=200', 'larger than the busbar'],
    ['service-load method=optional area=1500 edition=2026', '2026 edition'],
  ])('%s', async (line, says) => {
    const { code, out, err } = await runCalc(...line.split(' '));
    expect([code, out]).toEqual([1, '']);
    expect(err).toContain(says);
  });
});
