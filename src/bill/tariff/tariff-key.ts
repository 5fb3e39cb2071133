/** First key of a tariff file, with the version of its form. */
export const TARIFF_KEY = 'lampkeeperTariff';
export const TARIFF_VERSION = 1;
