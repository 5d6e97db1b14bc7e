/** Where a command writes. */
export interface Output {
  out(text: string): void;
  err(text: string): void;
  /** Whether colours are shown. */
  color: boolean;
  /** The folder that paths are relative to. */
  cwd: string;
}

/** The process's own streams. */
export const processOutput: Output = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  color: process.stdout.isTTY === true && process.env.NO_COLOR === undefined,
  cwd: process.cwd(),
};
