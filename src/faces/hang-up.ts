/**
 * End as a program ends whose terminal was closed. Leaving in the usual way would have the runtime set a terminal back
 * that is gone, and crash over it.
 */
export function hangUp(): void {
  process.emit('exit', 129);
  process.removeAllListeners('SIGHUP');
  process.kill(process.pid, 'SIGHUP');
}
