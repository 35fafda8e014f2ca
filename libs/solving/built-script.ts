/** The built script of a thread: sources cannot run in one, so tests use the build as well. */
export function builtScript(name: string): URL {
  const here = import.meta.url;
  const built = here.endsWith('.ts') ? here.replace('/libs/solving/', '/dist/libs/solving/') : here;
  return new URL(`./${name}`, built);
}
