import type { Plugin } from 'esbuild';

export function atFirstUse(root: string): Plugin;
