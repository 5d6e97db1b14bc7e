/** Two shares as percentages, with as many digits as tell them apart, three at most: `14 %` and `10 %`, `10.4 %` and `10 %`. */
export function percentWords(one: number, other: number): [string, string] {
  for (let digits = 0; ; digits++) {
    const [first, second] = [one, other].map((share) => Number((share * 100).toFixed(digits)));
    if (first !== second || digits === 3) return [`${first} %`, `${second} %`];
  }
}
