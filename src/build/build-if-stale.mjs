import { isStale } from './stale.mjs';

if (isStale()) await import('./build.mjs');
