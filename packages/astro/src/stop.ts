/** An end of the build that is the site's to mend: its message says all, and a stack would only bury it. */
export function stop(message: string): Error {
  const error = new Error(message);
  error.name = 'RetareStop';
  error.stack = '';
  return error;
}
