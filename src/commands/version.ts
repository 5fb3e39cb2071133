import about from '../../package.json' with { type: 'json' };

/** The version of the program, from its package file. */
export const version: string = about.version;
