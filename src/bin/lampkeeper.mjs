#!/usr/bin/env node
// The command. Builds once when an install could not, then hands over to the bundle.
import { existsSync } from 'node:fs';

const program = new URL('../../dist/program/main.mjs', import.meta.url);
if (!existsSync(program)) await import('../build/build.mjs');
await import(program.href);
