// `prepare` only helps: the first start would build anyway. A failure here must not stop an install.
try {
  await import('./build-if-stale.mjs');
} catch (problem) {
  console.error(
    `The program was not built yet: ${problem.message}. It will be at the first start.`,
  );
}
