/** The page's own style: one column, no fixed widths, the reader's own font size and colours. */
export const pageStyle = `
:root { color-scheme: light dark; --line: color-mix(in srgb, CanvasText 25%, Canvas); --soft: color-mix(in srgb, CanvasText 72%, Canvas); }
body { margin: 0 auto; max-inline-size: 64rem; padding: 0 1rem 4rem; font: 100%/1.5 system-ui, sans-serif; overflow-wrap: anywhere; }
h1 { line-height: 1.2; margin-block: 1.5rem 0.5rem; }
h2 { border-block-end: 2px solid var(--line); margin-block: 2.5rem 1rem; }
h3 { margin: 0 0 0.25rem; font-size: 1.15rem; }
h3::first-letter { text-transform: uppercase; }
nav { display: flex; flex-wrap: wrap; gap: 0.25rem; }
nav[hidden] { display: none; }
nav a { min-inline-size: 2.75rem; min-block-size: 2.75rem; display: grid; place-content: center; border: 1px solid var(--line); border-radius: 0.25rem; }
.filter input { font: inherit; padding: 0.4rem 0.5rem; inline-size: min(18rem, 100%); box-sizing: border-box; }
.filter output { color: var(--soft); white-space: nowrap; }
article { padding-block: 1rem; border-block-end: 1px solid var(--line); content-visibility: auto; contain-intrinsic-block-size: auto 20rem; }
dl { margin: 0; display: grid; grid-template-columns: minmax(6.5rem, max-content) 1fr; gap: 0.15rem 1rem; }
dt { color: var(--soft); }
dd { margin: 0; min-inline-size: 0; }
dd ul { list-style: none; margin: 0; padding: 0; }
b { font-weight: 600; white-space: nowrap; }
dd b { white-space: normal; }
small { color: var(--soft); }
sup { line-height: 0; font-size: 0.75em; }
sup a { padding: 0.5em 0.3em; text-decoration: none; }
:target { background: color-mix(in srgb, Highlight 25%, Canvas); }
@media (max-width: 30rem) { dl { display: block; } dt { margin-block-start: 0.5rem; font-size: 0.875rem; } .filter output { display: block; min-block-size: 1.5em; } }
@media print { nav, .filter { display: none; } article { break-inside: avoid; } }
`.trim();
