/** The look of role cards on paper: black on white, two to a sheet. */

export const PAPER = `
@page { size: A4; margin: 12mm; }
body { margin: 0; color: #000; background: #FFF; font: 9.5pt/1.3 Charter, "Bitstream Charter", "Sitka Text", Cambria, "DejaVu Serif", Georgia, serif; font-variant-numeric: tabular-nums; }
h2, p, ol { margin: 0; padding: 0; }
article { display: grid; grid-template-columns: 66mm 1fr; column-gap: 6mm; align-content: start; min-block-size: 133mm; box-sizing: border-box; margin-block-end: 5mm; padding: 4mm; border: 1px solid #757575; break-inside: avoid; }
header, .caution { grid-column: 1 / -1; }
header { display: flex; align-items: baseline; gap: 4mm; padding-block-end: 1.5mm; border-block-end: 3px solid #000; }
header b { font: 700 34pt/.9 system-ui, "Segoe UI", "Helvetica Neue", "DejaVu Sans", Arial, sans-serif; }
header h2 { font-size: 15pt; }
h2::first-letter { text-transform: uppercase; }
header p { margin-inline-start: auto; }
svg { display: block; inline-size: 100%; block-size: auto; margin-block: 2.5mm 1mm; }
ol { list-style: none; counter-reset: step; }
li { position: relative; counter-increment: step; padding: 1mm 0 1mm 6mm; border-block-start: 1px solid #BFBFBF; break-inside: avoid; }
li:first-child { border-block-start: 0; }
li::before { content: counter(step) "."; position: absolute; inset-inline-start: 0; font-weight: 700; }
.do { display: flex; justify-content: space-between; gap: 3mm; }
.do span { flex: none; color: #3A3A3A; }
.read { font-style: italic; }
.caution { margin-block-start: 2.5mm; padding: 1.5mm 2.5mm; border: 2px solid #000; font-size: 9pt; }
`;
