import type { Contradiction } from '../../plan/contradictions/contradiction';
import type { Electrical } from '../../plan/electrical/electrical';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { namedLoads } from './named-load';
import type { PlanData } from './plan-schema';
import { said } from './said';

/** A value as the plan file holds it: null as words, nothing read-only. */
type Plain<T> = T extends null
  ? 'not known'
  : T extends object
    ? { -readonly [Key in keyof T]: Plain<T[Key]> }
    : T;

/** The electrical half as plain data; what is not known says so instead of standing empty. */
export function electricalData(
  { electrical, home }: Pick<Plan, 'electrical' | 'home'>,
  words: Words,
): PlanData['electrical'] {
  const say = words.forElectrician;
  return plain({
    service: electrical.service.map((fact) => ({
      code: fact.what,
      ...say.serviceFact(fact),
      known: fact.how,
    })),
    toSettle: toSettleData(electrical.toSettle, words),
    loadCalculation: loadCalculationData(electrical.loadCalculation, words),
    metered: meteredData(electrical.metered, words),
    starting: electrical.starting.map((one) => ({
      ...one,
      starting: namedLoads(words, home, one.starting),
      order: namedLoads(words, home, one.order),
      keepApart: one.keepApart.map((pair) => namedLoads(words, home, pair)),
      limit: { code: one.limit.code, says: say.startLimit(one.limit) },
      cure: { code: one.cure.code, says: say.cure(home, one.cure) },
    })),
    panelFit: {
      ...electrical.panelFit,
      ways: electrical.panelFit.ways.map(({ way, sections, ...rest }) => ({
        code: way,
        way: say.busbarWay(way),
        sections: {
          edition2017: say.codeSection(sections.edition2017),
          edition2020: say.codeSection(sections.edition2020),
          edition2023: say.codeSection(sections.edition2023),
        },
        ...rest,
      })),
      traps: said(electrical.panelFit.traps, say.panelTrap),
      notes: said(electrical.panelFit.notes, say.panelNote),
    },
    waysOut: electrical.waysOut.map(({ way, ...prices }) => ({
      code: way,
      ...say.wayOut(way),
      ...prices,
    })),
    connections: electrical.connections.map((one) => ({
      code: one.way,
      way: say.connectionName(one.way),
      fits: one.fits,
      against: one.against ?? 'nothing',
      says: say.connection(one),
      capacity: { code: one.capacity.code, says: say.capacity(one.capacity) },
    })),
    transferPoints: said(electrical.transferPoints, (point) => say.transferPoint(home, point)),
    solarRow: said(electrical.solarRow, say.solarRow),
    wires: electrical.wires.map(({ run, lengthFrom, sizes, ...figures }) => ({
      code: run,
      run: say.wireRun(run),
      ...figures,
      lengthFrom: say.lengthFrom(lengthFrom),
      sizes: sizes.map((size) => ({ ...size, because: say.wireBecause(size.because) })),
    })),
    editionNotes: electrical.editionNotes.map((edition) => ({
      edition,
      says: say.edition(edition),
    })),
    siting: electrical.siting.map((point) => ({
      verdict: point.verdict,
      code: point.code,
      says: say.siting(point),
      cite: words.cite(point.cite),
    })),
    scope: scopeData(electrical.scope, words),
    highEnd: electrical.highEnd.map((short) => ({
      ...short,
      measure: namedLoads(words, home, short.measure),
      offFirst: namedLoads(words, home, short.offFirst),
      says: words.highEnd(home, short),
    })),
  });
}

function scopeData(scope: Electrical['scope'], words: Words) {
  const say = words.forElectrician;
  const coded = <Code extends string>(codes: readonly Code[], says: (code: Code) => string) =>
    codes.map((code) => ({ code, says: says(code) }));
  return {
    purpose: say.purpose(scope.purpose),
    circuits: scope.circuits.map((one) => {
      const { name, watts, startVa, how } = say.circuit(one);
      const { volts, rank, known } = one;
      return { name, volts, watts, startVa, rank, how, known };
    }),
    requirements: said(scope.requirements, say.requirement),
    quotePoints: coded(scope.quotePoints, say.quotePoint),
    siteQuestions: coded(scope.siteQuestions, say.siteQuestion),
    householdMay: say.householdMay,
    confirmLocally: say.confirmLocally,
  };
}

function loadCalculationData(given: Electrical['loadCalculation'], words: Words) {
  const say = words.forElectrician;
  return {
    verdict: given.verdict,
    code: given.finding.code,
    says: say.loadCalculation(given),
    editions: given.editions.map(({ note, sums, ...edition }) => ({
      ...edition,
      sums: sums.map(({ method, notes, lines, ...sum }) => ({
        code: method,
        method: say.loadMethod(method),
        lines: lines.map(({ is, ...line }) => ({
          code: is.code,
          label: say.loadLine(is),
          ...line,
        })),
        ...sum,
        notes: notes.map((code) => ({ code, says: say.loadNote(code) })),
      })),
      note: { code: note.code, says: say.editionNote(note) },
    })),
    assumptions: said(given.assumptions, say.dwellingAssumption),
  };
}

function meteredData(metered: Electrical['metered'], words: Words) {
  const done = metered.kind === 'done';
  return {
    kind: metered.kind,
    code: done ? metered.verdict : metered.why,
    says: words.forElectrician.metered(metered),
    amps: done ? metered.amps : null,
    carefulAmps: done ? metered.carefulAmps : null,
  };
}

function plain<T>(value: T): Plain<T> {
  return plainOf(value) as Plain<T>;
}

function plainOf(value: unknown): unknown {
  if (value === null) return 'not known';
  if (typeof value === 'number') return round(value);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(plainOf);
  const entries = Object.entries(value as object).map(([key, one]) => [key, plainOf(one)]);
  return Object.fromEntries(entries);
}

function round(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`the plan cannot hold ${value}`);
  return value === 0 ? 0 : Number(value.toPrecision(4));
}

/** Answers that do not fit together, with what is asked. */
export function toSettleData(all: readonly Contradiction[], words: Words) {
  return all.map((one) => {
    const { asks, answers } = words.contradiction(one);
    return { id: one.id, asks, answers: [...answers], questions: [...one.questions] };
  });
}
