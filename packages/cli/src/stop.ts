/** A command that cannot go on because of its arguments or settings; the message says what was and was not done. */
export class Stop extends Error {
  override readonly name = 'Stop';
}
