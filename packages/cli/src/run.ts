import { Command, CommanderError } from 'commander';
import { checkCommand } from './commands/check.js';
import { draftCommand } from './commands/draft.js';
import { larderCommand } from './commands/larder.js';
import { readCommand } from './commands/read.js';
import { type Output, processOutput } from './output.js';
import { Stop } from './stop.js';

/** Every command, in the order of the help. */
const commands = [checkCommand, readCommand, larderCommand, draftCommand] as const;

/** Exit codes: nothing wrong, errors found, bad settings or usage. */
export const exitCodes = { fine: 0, errors: 1, usage: 2 } as const;

/**
 * Runs the `retare` command.
 *
 * @param args What stands behind the command's name.
 * @returns The exit code.
 */
export async function run(args: readonly string[], output: Output = processOutput): Promise<number> {
  let code: number = exitCodes.fine;
  const program = new Command('retare')
    .description('Re-authors recipes for every reader’s kitchen, and checks that they can be cooked there.')
    .exitOverride()
    .configureOutput({ writeOut: output.out, writeErr: output.err })
    .showHelpAfterError('Run `retare --help` for what there is.');
  for (const make of commands) {
    const command = make(output, (result) => {
      code = result;
    });
    program.addCommand(command.exitOverride().configureOutput({ writeOut: output.out, writeErr: output.err }));
  }
  try {
    await program.parseAsync([...args], { from: 'user' });
    return code;
  } catch (error) {
    if (error instanceof Stop) {
      output.err(`${error.message}\n`);
      return exitCodes.usage;
    }
    // Help and version are asked for, everything else is a slip in the command.
    if (error instanceof CommanderError) return error.exitCode === 0 ? exitCodes.fine : exitCodes.usage;
    throw error;
  }
}
