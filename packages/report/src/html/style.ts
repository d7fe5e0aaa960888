import { type ColorName, GROUNDS, type GroundName } from '../look/tokens.ts';
import { base64 } from './base64.ts';

const property = (name: string) => `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

/** The custom property that holds a color on the page. */
export const colorProperty = (name: ColorName): string => `var(${property(name)})`;

function properties(ground: GroundName): string {
  return Object.entries(GROUNDS[ground])
    .map(([name, value]) => `${property(name)}:${value}`)
    .join(';');
}

/** A font face whose bytes are in the page. */
export function fontFace(family: string, weight: number, bytes: Uint8Array): string {
  return `@font-face{font-family:'${family}';font-weight:${weight};font-display:swap;src:url(data:font/ttf;base64,${base64(bytes)}) format('truetype')}`;
}

/** Families by face, with what stands in where the page's own cannot load. */
export const FAMILIES = {
  text: "'Undercroft Text',system-ui,sans-serif",
  figures: "'Undercroft Figures',system-ui,sans-serif",
} as const;

/** The look of the page: rules, alignment and space on an 8 px grid; two grounds; one column on a phone. */
export function pageStyle(): string {
  return `
:root{color-scheme:light dark;${properties('daylight')}}
@media (prefers-color-scheme:dark){:root{${properties('under')}}}
*{box-sizing:border-box}
html{font:400 1rem/1.5 ${FAMILIES.text};background:var(--page);color:var(--ink);-webkit-text-size-adjust:100%;text-size-adjust:100%}
body{margin:0 auto;padding:0 1rem 4rem;max-width:64rem;overflow-wrap:break-word}
a{color:var(--accent);text-underline-offset:.2em}
:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
.skip{position:absolute;left:-100vw}
.skip:focus{position:static}
header{border-bottom:1px solid var(--ink);padding:2.5rem 0 1rem;margin-bottom:1.5rem}
h1,h2,h3{line-height:1.2;text-wrap:balance;margin:0}
h1{font-size:clamp(1.75rem,1.2rem + 2.4vw,2.5rem);font-weight:700}
h2{font-size:1.75rem;font-weight:700;border-top:1px solid var(--ink);padding-top:1rem;margin:3.5rem 0 1rem}
h3{font-size:1.25rem;font-weight:700;margin:2.5rem 0 .5rem}
section:first-of-type h2{margin-top:0}
p{margin:0 0 1rem;max-width:44rem}
header p{margin:.5rem 0 0}
p.lead{font-size:1.25rem;line-height:1.4;max-width:48rem}
p.note,figcaption,caption{font-size:.875rem;color:var(--soft)}
nav{margin:0 0 2.5rem;font-size:.875rem}
nav h2{font-size:.875rem;border:0;margin:0 0 .5rem;padding:0;color:var(--soft)}
nav ol{list-style:none;margin:0;padding:0;columns:16rem;column-gap:2rem}
nav li{break-inside:avoid}
nav a{display:block;padding:.25rem 0;color:var(--ink)}
.soft{color:var(--soft)}
.figure{font-family:${FAMILIES.figures};font-weight:400;font-variant-numeric:tabular-nums}
strong{font-weight:700}
.assumed{text-decoration:underline dashed;text-decoration-thickness:1px;text-underline-offset:.25em}
.mark{width:1.05em;height:1.05em;vertical-align:-.16em;margin-right:.35em;flex:none}
.tally{display:flex;flex-wrap:wrap;gap:.5rem 3rem;list-style:none;margin:0 0 1rem;padding:0}
.tally li{display:flex;align-items:baseline;gap:.5rem}
.tally .mark{width:1.6rem;height:1.6rem;align-self:center;margin:0}
.tally .count{font:400 2.5rem/1.1 ${FAMILIES.figures};font-variant-numeric:tabular-nums}
table{border-collapse:collapse;width:100%;margin:0 0 1.5rem;border-top:1px solid var(--ink);border-bottom:1px solid var(--ink);font-size:.9375rem;line-height:1.4}
caption{text-align:left;padding:0 0 .5rem}
th,td{text-align:left;vertical-align:top;padding:.625rem 1rem .625rem 0;font-weight:400}
th:last-child,td:last-child{padding-right:0}
thead th{font-size:.875rem;color:var(--soft);border-bottom:1px solid var(--rule);padding-top:.375rem;padding-bottom:.375rem;vertical-align:bottom}
.end{text-align:right}
.end .figure{white-space:nowrap}
td p,th p{margin:0 0 .25rem}
td p:last-child,th p:last-child{margin-bottom:0}
figure{margin:1.5rem 0 2rem}
figure svg{display:block;width:100%;height:auto}
figcaption{margin-top:.5rem;max-width:44rem}
.sheet{background:var(--sheet);border-top:1px solid var(--ink);border-bottom:1px solid var(--ink);overflow-x:auto;padding:.5rem}
.sheet svg{min-width:44rem}
.only-narrow{display:none}
.gallery{list-style:none;margin:0 0 1.5rem;padding:0;display:grid;grid-template-columns:repeat(auto-fill,minmax(min(28rem,100%),1fr));gap:1.5rem 2rem}
.gallery li{display:grid;grid-template-columns:minmax(0,1.35fr) minmax(0,1fr);gap:.75rem;align-items:start;font-size:.875rem;line-height:1.4}
.gallery img{display:block;width:100%;height:auto;border:1px solid var(--rule)}
.gallery svg{display:block;width:100%;max-width:10rem;height:auto;margin-bottom:.5rem}
.gallery p{margin:0 0 .25rem}
.gallery .no-picture{display:grid;place-items:center;min-height:8rem;border:1px dashed var(--soft);color:var(--soft)}
ul.sources{margin:0;padding-left:1.125rem;font-size:.875rem;max-width:52rem}
ul.sources li{margin:0 0 .375rem}
footer{margin-top:3.5rem;border-top:1px solid var(--ink);padding-top:1rem;font-size:.875rem;color:var(--soft)}
@media (max-width:46rem){
.only-wide{display:none}.only-narrow{display:block}
table:not(.plain),table:not(.plain)>tbody,table:not(.plain) tbody tr,table:not(.plain) tbody td,table:not(.plain) tbody th{display:block}
table:not(.plain)>thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
table:not(.plain){border-top:0}
table:not(.plain)>caption{display:block;border-bottom:1px solid var(--ink)}
table:not(.plain) tbody tr{padding:.75rem 0}
table:not(.plain) tbody tr+tr{border-top:1px solid var(--rule)}
table:not(.plain) tbody td,table:not(.plain) tbody th{padding:.125rem 0;text-align:left}
table:not(.plain) td[data-head]::before{content:attr(data-head);display:block;font-size:.8125rem;color:var(--soft);margin-top:.375rem}
table:not(.plain) td.short[data-head]::before{display:inline-block;width:7rem;margin:0}
table:not(.plain) td.short p{display:inline-block;margin:0 .75rem 0 0}
table.plain th{padding-right:.75rem}
}
@page{size:letter;margin:18mm}
@media print{
:root{${properties('paper')}}
html{font-size:10pt;background:none}
body{max-width:none;padding:0}
nav,.skip{display:none}
h2,h3,caption,thead{break-after:avoid}
tr,figure,.gallery li{break-inside:avoid}
.sheet{overflow:visible;border:0;padding:0}
.sheet svg{min-width:0}
}
`.trim();
}
