//! How every sheet looks: black on white, no hue, on A4 and letter alike.
//!
//! The running head is the head of a table round the sheet: every browser repeats that on each page. The number of the page stands in
//! a margin box, which Chromium prints and Firefox 153 leaves to its own foot. A head that is fixed to the page was tried: Chromium
//! draws it into the foot of the page before, Firefox on the first page alone.

/// The style of every sheet. No heading, and no row alone, stands at the foot of a page; no row, point or picture is torn.
pub(super) const STYLE: &str = "
@page { margin: 10mm 14mm 15mm; @bottom-right { content: counter(page) ' / ' counter(pages); font: 700 9pt 'Liberation Sans', Arial, Helvetica, sans-serif; } }
* { box-sizing: border-box; }
body { font: 10pt/1.35 'Liberation Sans', Arial, Helvetica, sans-serif; color: #000; background: #fff; margin: 0 auto; padding: 1rem; max-width: 190mm; }
h1 { font-size: 18pt; margin: 0; }
h2 { font-size: 13pt; margin: 1.2em 0 .3em; border-bottom: 2px solid #000; }
h3 { font-size: 11pt; margin: .9em 0 .2em; }
h1, h2, h3, h2 + p:has(+ .scroll), h3 + p:has(+ .scroll) { break-after: avoid; }
p { margin: .3em 0; orphans: 3; widows: 3; }
.rows { border-collapse: collapse; width: 100%; margin: .3em 0 .8em; font-size: 9pt; font-variant-numeric: tabular-nums; }
.rows th, .rows td { border: 1px solid #000; padding: .15em .4em; text-align: left; vertical-align: top; }
.rows th { font-weight: 700; border-bottom-width: 2px; }
.rows .n { text-align: right; }
.rows td.n, .rows td.s { white-space: nowrap; }
.rows th.w { width: 30%; }
.rows tr, .rows thead { break-inside: avoid; }
.rows thead, .rows thead tr, .rows tbody tr:nth-child(-n+2):not(:last-child), .rows tbody tr:nth-last-child(2), .rows tbody tr:nth-last-child(3) { break-after: avoid; }
ul { margin: .3em 0; padding-left: 1.3em; }
li { break-inside: avoid; }
li:first-child:not(:last-child), li:nth-last-child(2) { break-after: avoid; }
.answer { border: 3px solid #000; padding: .6em .8em; font-size: 12pt; break-inside: avoid; }
.head { font-family: 'Liberation Mono', 'DejaVu Sans Mono', monospace; overflow-wrap: anywhere; }
.foot { margin-top: 1.5em; border-top: 2px solid #000; padding-top: .4em; font-size: 9pt; break-inside: avoid; }
.photos { display: grid; grid-template-columns: 1fr 1fr; gap: 4mm; margin: .4em 0 .8em; }
.photos figure { margin: 0; break-inside: avoid; font-size: 9pt; }
.photos img { display: block; max-width: 100%; max-height: 50mm; border: 1px solid #000; }
.photos .head { font-size: 6pt; }
.owed { border: 2px dashed #000; padding: .6em; margin: 0; font-weight: 700; }
svg { width: 100%; height: auto; display: block; break-inside: avoid; }
.cards { display: grid; grid-template-columns: repeat(4, 1fr); gap: 3mm; }
.card { border: 2px solid #000; padding: 2mm; break-inside: avoid; font-size: 9pt; }
.card svg { height: 36mm; }
.card h3 { margin: 0; font-size: 13pt; }
.page { border-collapse: collapse; width: 100%; }
.page > * > tr > td { padding: 0 .5mm; border: 0; vertical-align: top; text-align: left; }
.run { border-bottom: 1px solid #000; margin-bottom: 2mm; font-size: 8pt; font-weight: 400; display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 4mm; }
.run .head { font-size: 6.5pt; }
@media screen {
  .page, .page > tbody, .page > tbody > tr, .page > tbody > tr > td { display: block; }
  .page > thead { display: none; }
  .scroll { overflow-x: auto; }
}
@media screen and (max-width: 40rem) {
  .cards, .photos { grid-template-columns: 1fr 1fr; }
}
@media print {
  body { padding: 0; max-width: none; }
  .page + .page { break-before: page; }
}
";
