/** How this person starts the program: the command, or npm. */
export function callName(env: NodeJS.ProcessEnv): string {
  return env.npm_lifecycle_event === 'start' ? 'npm start --' : 'lampkeeper';
}
