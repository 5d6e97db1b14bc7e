/** Two shares as percentages, with as many digits as tell them apart, three at most. */
export function percentWords(one: number, other: number): [string, string] {
  for (let digits = 0; ; digits++) {
    const [first, second] = [(one * 100).toFixed(digits), (other * 100).toFixed(digits)];
    if (first !== second || digits === 3) return [`${first} %`, `${second} %`];
  }
}

/** A signed share: `+2.6 %`, `−1 %`, `0 %`. */
export function signedPercent(share: number): string {
  const rounded = Math.abs(share * 100).toFixed(1);
  const text = rounded.replace(/\.0$/, '');
  if (text === '0') return '0 %';
  return `${share < 0 ? '−' : '+'}${text} %`;
}
