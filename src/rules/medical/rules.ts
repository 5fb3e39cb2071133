import type { Rule } from '../rule';
import { leavingPoint } from './leaving-point';
import { listIsNotice } from './list-is-notice';
import { secondSource } from './second-source';

/** Health devices and medicine, in printing order. */
export const medicalRules: readonly Rule[] = [secondSource, leavingPoint, listIsNotice];
