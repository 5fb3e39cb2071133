/**
 * The one style sheet of the HTML papers: black on white, large enough to read at arm's length; on paper a sheet a page,
 * in two columns so that it fits.
 */
export const PAGE_STYLE = `
:root { color-scheme: light; }
body { font: 16px/1.4 sans-serif; color: #000; background: #fff; margin: 0 auto; max-width: 46rem; padding: 0 1rem; }
h1 { font-size: 1.6rem; margin: 1rem 0 0.5rem; }
h2 { font-size: 1.3rem; margin: 1rem 0 0.4rem; border-bottom: 2px solid #000; }
h3 { font-size: 1.1em; margin: 0.8rem 0 0.2rem; }
p, ul, ol, dl, table, figure { margin: 0.2rem 0 0.5rem; }
li { margin: 0.1rem 0; }
a { color: #000; }
.boxes { list-style: none; padding-left: 0; }
.boxes li { padding-left: 1.6em; position: relative; }
.boxes li::before { content: ""; position: absolute; left: 0; top: 0.15em; width: 0.8em; height: 0.8em; border: 1.5px solid #000; }
ol.boxes { counter-reset: step; }
ol.boxes li { counter-increment: step; padding-left: 3em; }
ol.boxes li::after { content: counter(step) "."; position: absolute; left: 1.2em; top: 0; font-weight: bold; }
.blanks > div { display: flex; gap: 0.6rem; align-items: flex-end; margin: 0.3rem 0; break-inside: avoid; }
.blanks dt { margin: 0; }
.blanks dd { margin: 0; border-bottom: 1px solid #000; flex: 1 1 6rem; min-width: 6rem; }
table { border-collapse: collapse; width: 100%; }
th, td { border: 1px solid #000; padding: 0.15rem 0.4rem; text-align: left; vertical-align: top; font-weight: normal; }
thead th { font-weight: bold; }
figure svg { width: 100%; height: auto; max-height: 26rem; }
@media print {
  @page { margin: 12mm; }
  body { font-size: 10pt; line-height: 1.2; max-width: none; padding: 0; }
  nav { display: none; }
  h1, h2, h3 { break-after: avoid; margin-top: 0.4rem; }
  p, ul, ol, dl, table, figure { margin-bottom: 0.25rem; }
  li { margin: 0; }
  li, tr, figure { break-inside: avoid; }
  figure svg { max-height: 70mm; }
  figure { break-after: avoid; }
  figure + p { break-before: avoid; }
  header { break-after: avoid; }
  section.sheet { break-before: page; }
  section.sheet:first-of-type { break-before: auto; }
  ul, ol { padding-left: 1rem; }
  .boxes { padding-left: 0; }
  .fridge .flow, .family .flow, .quote .flow { columns: 2; column-gap: 6mm; column-rule: 1px solid #000; }
  .fridge .flow { font-size: 10.2pt; }
  .fridge .flow.larger { font-size: 11pt; }
  .fridge .flow.largest { font-size: 12pt; }
  .quote .flow { font-size: 9.4pt; line-height: 1.15; }
  .quote figure svg { max-height: 44mm; }
  .quote .flow h2 { font-size: 11pt; border-bottom: 0; }
  .quote .flow :has(+ table) { column-span: all; }
  .quote .blanks { display: flex; flex-wrap: wrap; column-gap: 3mm; }
  .quote .blanks > div { flex: 1 1 40%; }
  .quote .blanks dd { min-width: 4rem; }
  th, td { padding: 0 0.3rem; }
  .flow table, .flow figure { column-span: all; }
  .blanks > div { margin: 0.15rem 0; }
}
`;
