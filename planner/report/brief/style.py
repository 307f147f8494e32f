"""Style sheet of the brief: a phone, a desk's screen, and one sheet of A4."""

from planner.report.style import FONT, INK, MIST, RULE, SLATE, STRAW

LETTERS = ", ".join((FONT, "'Liberation Sans'", "Helvetica", "Roboto", "'DejaVu Sans Condensed'", "sans-serif"))
STYLE = f"""
* {{ box-sizing: border-box; }}
body {{ font: 16px/1.4 {LETTERS}; color: {INK}; background: #fff; max-width: 60rem;
  margin: 0 auto; padding: 0.75rem; overflow-wrap: anywhere; -webkit-text-size-adjust: 100%; }}
h1, h2, p, figure, ul {{ margin: 0; padding: 0; }}
h1 {{ font-size: 1.4rem; line-height: 1.2; color: {SLATE}; }}
h2, figcaption, caption {{ font-size: 1rem; font-weight: bold; color: {SLATE}; line-height: 1.25; text-align: left;
  margin: 0 0 0.25rem; }}
section {{ margin: 0 0 1rem; }}
section p + p {{ margin-top: 0.35rem; }}
.under, .note {{ color: {SLATE}; font-size: 0.9rem; }}
#verdict {{ background: {STRAW}; border: 1px solid {RULE}; border-left: 0.4rem solid {SLATE};
  padding: 0.5rem 0.75rem; }}
p.verdict {{ font-size: 1.2rem; font-weight: bold; line-height: 1.25; }}
table {{ border-collapse: collapse; width: 100%; font-size: 0.9rem; }}
th {{ background: {MIST}; text-align: left; vertical-align: bottom; }}
th, td {{ border-bottom: 1px solid {RULE}; padding: 0.2rem 0.4rem; vertical-align: top; }}
td.number, th.number {{ text-align: right; }}
tr.best td, tr.total td, tr.strong td:first-child {{ font-weight: bold; }}
tr.best td {{ background: {STRAW}; }}
tr.sub td {{ font-style: italic; }}
.tiles {{ display: grid; grid-template-columns: repeat(3, 1fr); gap: 0.5rem; }}
.tiles > div {{ border: 1px solid {RULE}; padding: 0.4rem 0.5rem; }}
.tiles p + p {{ margin: 0; }}
.large {{ font-size: 1.35rem; font-weight: bold; line-height: 1.2; color: {SLATE}; }}
#words .body {{ columns: 3 14rem; column-gap: 1rem; }}
#words h2 {{ break-after: avoid; }}
#words p {{ break-inside: avoid; }}
#words .body > div + div {{ margin-top: 0.75rem; }}
#charts .body {{ display: grid; grid-template-columns: repeat(auto-fit, minmax(15rem, 1fr)); gap: 1rem;
  align-items: start; }}
.chart > svg {{ display: block; width: 100%; height: auto; }}
.chart > svg text {{ font: 11px {LETTERS}; fill: {INK}; }}
.key {{ list-style: none; display: flex; flex-wrap: wrap; gap: 0.1rem 0.75rem; font-size: 0.8rem; line-height: 1.3; }}
.key .swatch {{ display: inline-block; width: 1.5em; height: 0.8em; margin-right: 0.3em; vertical-align: -0.05em; }}
#facts .body > div + div {{ margin-top: 1rem; }}
#cautions {{ font-size: 0.95rem; }}
#cautions .body p {{ padding-left: 0.9em; text-indent: -0.9em; }}
#cautions .body p::before {{ content: "\\25AA\\00A0\\00A0"; }}
@media screen and (max-width: 40rem) {{
  thead {{ position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }}
  .tiles {{ grid-template-columns: 1fr; }}
  .cards table, .cards tbody {{ display: block; }}
  .cards tr {{ display: grid; grid-template-columns: 1fr 1fr; gap: 0.2rem 0.75rem; border: 1px solid {RULE};
    padding: 0.4rem 0.5rem; margin-bottom: 0.5rem; }}
  .cards tr.best {{ background: {STRAW}; }}
  .cards td, .cards td.number {{ border: 0; padding: 0; text-align: left; }}
  .cards td:first-child, .cards td:last-child:nth-child(even), .cards td.long {{ grid-column: 1 / -1; }}
  .cards td:first-child {{ font-weight: bold; font-size: 1rem; }}
  .cards td:not(:first-child)::before {{ content: attr(data-label); display: block; font-size: 0.8rem;
    font-weight: normal; color: {SLATE}; line-height: 1.2; }}
}}
@page {{ size: A4; margin: 6mm 7mm; }}
@media print {{
  * {{ print-color-adjust: exact; -webkit-print-color-adjust: exact; }}
  body {{ font-size: 8pt; line-height: 1.2; max-width: none; padding: 0; overflow-wrap: break-word; }}
  section {{ margin: 0 0 1.2mm; }}
  section p + p {{ margin-top: 0.3mm; }}
  h1 {{ font-size: 12pt; }}
  h2, figcaption, caption {{ font-size: 8.5pt; margin-bottom: 0.4mm; }}
  table, .under, .note, .key {{ font-size: 8pt; }}
  th, td {{ padding: 0.2mm 1mm; }}
  td:first-child {{ min-width: 36mm; }}
  #head {{ display: flex; gap: 4mm; align-items: baseline; }}
  #verdict {{ padding: 0.8mm 2mm; }}
  p.verdict {{ font-size: 10pt; }}
  .tiles {{ gap: 2mm; }}
  .tiles > div {{ padding: 0.3mm 1.5mm; }}
  .large {{ font-size: 12pt; }}
  #options h2 {{ display: none; }}
  #words .body {{ columns: 3; column-gap: 3mm; }}
  #words .body > div + div {{ margin-top: 0.8mm; }}
  #charts, #charts .body {{ display: block; margin: 0; }}
  .chart {{ float: right; width: 32.3%; margin: 0 0 1.4mm 1.55%; }}
  .chart:first-child:nth-last-child(3) {{ float: left; margin-left: 0; }}
  .chart:first-child:nth-last-child(2) {{ float: left; margin-left: 0; width: 48%; }}
  .chart:first-child:nth-last-child(2) + .chart {{ width: 48%; }}
  .chart:first-child:nth-last-child(2) > svg, .chart:first-child:nth-last-child(2) + .chart > svg {{ width: 72%; }}
  .key {{ gap: 0 2mm; line-height: 1.15; }}
  #facts {{ clear: right; margin-left: 33.85%; }}
  #charts:has(.chart:nth-child(2):last-child) + #facts {{ clear: both; margin-left: 0; }}
  #facts .body > div + div {{ margin-top: 1mm; }}
  #facts td:first-child {{ min-width: 0; }}
  #facts p, #facts h2 {{ display: inline; }}
  #facts h2 {{ margin-right: 1mm; }}
  #cautions {{ clear: both; margin: 0; font-size: 7.5pt; line-height: 1.12; break-inside: avoid; }}
  #cautions h2, #cautions .under {{ display: inline; font-size: 8pt; }}
  #cautions .body {{ columns: 3; column-gap: 3mm; }}
  #cautions .body p {{ margin-top: 0; }}
  .dense #cautions .body p {{ display: inline; padding: 0; }}
  .dense #cautions .body p::before {{ content: "\\25A0\\00A0"; }}
  figure, tr {{ break-inside: avoid; }}
}}
"""
"""No rule fetches anything."""
