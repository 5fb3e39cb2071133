import { PLAN_FILE_VERSION, PLAN_KEY } from '../papers/plan-file/plan-file-version';
import { planSchema } from '../papers/plan-file/plan-schema';
import { sayFaults } from '../store/home-file';
import type { PlaceIn } from '../store/place-in';
import type { CheckedFile } from './checked-file';

/** What is to be said of a plan file: its form, and where it departs from it. Plans of earlier forms are told, not refused. */
export function checkPlan(path: string, data: object, placeOf: PlaceIn): CheckedFile {
  const form = (data as Record<string, unknown>)[PLAN_KEY];
  if (!isForm(form)) {
    const fault = {
      ...placeOf([PLAN_KEY]),
      says: `this plan says form ${JSON.stringify(form)}; this program knows forms 1 to ${PLAN_FILE_VERSION}. Use the program that wrote it, or make the plan again from its home file.`,
    };
    return { kind: 'plan', ok: false, says: sayFaults(path, [fault]), faults: [fault] };
  }
  if (form < PLAN_FILE_VERSION) {
    return {
      kind: 'plan',
      ok: true,
      faults: [],
      says: `${path}: a plan of form ${form}, written by an earlier lampkeeper. To have it in form ${PLAN_FILE_VERSION}, make it again from its home file.`,
    };
  }
  const issues = planSchema.safeParse(data).error?.issues ?? [];
  if (issues.length === 0) {
    return {
      kind: 'plan',
      ok: true,
      says: `${path}: a plan of form ${form}, nothing wrong.`,
      faults: [],
    };
  }
  const faults = issues.map(({ path: at, message }) => ({
    ...placeOf(at.map((step) => (typeof step === 'number' ? step : String(step)))),
    says: `${at.join('.')}: ${message}. A plan is made from its home file: change that one, and make the plan again.`,
  }));
  return { kind: 'plan', ok: false, says: sayFaults(path, faults), faults };
}

function isForm(form: unknown): form is number {
  return Number.isInteger(form) && Number(form) >= 1 && Number(form) <= PLAN_FILE_VERSION;
}
