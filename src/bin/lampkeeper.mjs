#!/usr/bin/env node
// The command. In a checkout that was not built yet it builds once; then it hands over to the bundle.
import { existsSync } from 'node:fs';

const program = new URL('../../dist/program/main.mjs', import.meta.url);
const builder = new URL('../build/build.mjs', import.meta.url);
if (!existsSync(program) && existsSync(builder)) await import(builder.href);
await import(program.href);
