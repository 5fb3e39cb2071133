import type { CodeEdition } from '../../../tables/electrical/service-load-rules';

/** What differs between the code editions for this work. Cited by content. */
const notes: Readonly<Record<CodeEdition, string>> = {
  2017: '2017: the 83 % rule for service conductors stands in 310.15(B)(7); no exterior emergency disconnect is asked.',
  2020: '2020: 3 VA/ft2 moves to 220.14(J), Table 310.12 returns, and 230.85 asks for an emergency disconnect outside; a standby generator gets a stop outside (445.18(D)).',
  2023: '2023: 220.41, 220.45, 220.57 (car chargers, from memory) and 220.70 (energy management) are new; the generator stop is 445.19(C); a home battery gets an emergency shutdown (706.15).',
  2026: '2026: Article 220 becomes Article 120, with 2 VA/ft2 for the service; we do not hold the rest of its numbers.',
};

export const sayEdition = (edition: CodeEdition): string => notes[edition];
