import { possibleIf } from '../../advice/possible-if';
import { type Trial, trials } from '../../advice/trial';
import type { Tariff } from '../../bill/tariff/tariff';
import { widthsOf } from '../../home/build-home';
import { Facts } from '../../home/facts';
import { seasonsOf } from '../../home/goal-seasons';
import type { Load, Season, Site } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { wasTold } from '../../home/loads/load-told';
import { loadsOfHome } from '../../home/loads/loads-of-home';
import { siteOf } from '../../home/site';
import type { Answers } from '../../interview/answers';
import { NOT_SURE } from '../../interview/answers';
import { besideTariff } from '../../interview/beside-tariff';
import type { Interview } from '../../interview/questions/question';
import { resolve } from '../../interview/questions/resolve';
import { answersToSettle } from '../sureness/answers-to-settle';
import type { Draft, DraftLoad } from './draft';
import { glanceOf } from './glance';

/**
 * A scale for the draft beside the question: what the answers given so far add up to. Only answers that were
 * given, or given as "not sure", count. The climate is looked up once for each ZIP code.
 * @param tried trials of this interview that are remembered elsewhere too
 */
export function draftMaker(
  whole: Interview,
  ownTariff: Tariff | null = null,
  tried: ((answers: Answers) => Trial) | null = null,
): (answers: Answers) => Draft {
  const interview = besideTariff(whole, ownTariff !== null);
  const trialOf = tried ?? trials(interview, ANY_DAY);
  const widths = widthsOf(interview);
  const sites = new Map<string, Site>();
  return (answers) => {
    // Once what must run is told, the pane counts as the plan does: what is not answered counts as "not sure".
    const missing = answers['must-run'] === undefined ? 'leave' : 'assume';
    const facts = new Facts(resolve(interview.questions, answers, missing));
    const site = siteAt(facts, sites, missing);
    const { loads } = loadsOfHome(facts, widths, site);
    const must = loads.filter((load) => mustNow(facts, load));
    const season = seasonShown(facts, must);
    const demand = must.length > 0 ? demandOf(must, seasonsOf(facts)) : null;
    const ranked = missing === 'assume';
    return {
      ranked,
      loads: loads.map((load) => draftLoad(facts, load)),
      runningWatts: demand?.runningWatts ?? null,
      startVa: demand?.startVa ?? null,
      kwhPerDay: demand?.kwhPerDay[season] ?? null,
      season,
      unsureCount: Object.values(answers).filter((answer) => answer === NOT_SURE).length,
      glance: glanceOf(trialOf(answers), ({ home, routes }, advised) =>
        possibleIf({ interview, answers, asOf: ANY_DAY, widths, home, routes, advised }),
      ),
      // No age counts here, so neither does the day.
      toSettle: answersToSettle(interview, answers, ANY_DAY, ownTariff),
    };
  };
}

/** No age of a figure counts beside a question, so neither does the day. */
const ANY_DAY = '2026-01-01';

function draftLoad(facts: Facts, load: Load): DraftLoad {
  const { id, called, rank, runningWatts } = load;
  return { id, called, rank, runningWatts, told: wasTold(facts, load) };
}

/** Until the ranking is asked, every load that may run in an outage counts; then only what must. */
function mustNow(facts: Facts, load: Load): boolean {
  if (load.offInOutage) return false;
  return facts.applies('must-run') ? load.rank === 'must' : true;
}

/**
 * The place, once its ZIP code was told, or where the plan would have to assume one too; looked up once for each code
 * and height.
 */
function siteAt(facts: Facts, sites: Map<string, Site>, missing: 'leave' | 'assume'): Site | null {
  const zip = facts.value('home-zip');
  if (typeof zip !== 'string' && missing === 'leave') return null;
  const key = `${zip} ${String(facts.value('home-elevation'))}`;
  const site = sites.get(key) ?? siteOf(facts);
  sites.set(key, site);
  return site;
}

/** The season whose day asks most among those wished for. */
function seasonShown(facts: Facts, must: readonly Load[]): Season {
  const energy = (season: Season) => must.reduce((sum, l) => sum + l.kwhPerDay[season].value, 0);
  return seasonsOf(facts).reduce((a, b) => (energy(b) > energy(a) ? b : a));
}
