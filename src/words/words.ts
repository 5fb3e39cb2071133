import type { english } from './en';

/**
 * Every sentence the papers are made of, as functions of codes and figures. English is the measure: a language that
 * lacks one of these, or takes something else, does not compile.
 */
export type Words = typeof english;
