/** A signed share: `+2.6 %`, `−1 %`, `0 %`. */
export function signedPercent(share: number): string {
  const rounded = Math.abs(share * 100).toFixed(1);
  const text = rounded.replace(/\.0$/, '');
  if (text === '0') return '0 %';
  return `${share < 0 ? '−' : '+'}${text} %`;
}
