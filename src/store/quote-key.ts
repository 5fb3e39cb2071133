/** First key of a quote file, with the version of its form. */
export const QUOTE_KEY = 'lampkeeperQuote';
export const QUOTE_VERSION = 1;
