export const median = (values) => [...values].sort((a, b) => a - b)[values.length >> 1];

export const milliseconds = (value) => `${value.toFixed(1)} ms`;

export async function timed(action) {
  const start = performance.now();
  const value = await action();
  return { value, took: performance.now() - start };
}

/** One line of the report; `wanted` is the bound that the project asks for, where there is one. */
export function report(what, figure, wanted = null) {
  console.log(`${what.padEnd(58)} ${figure}${wanted ? `   (wanted: ${wanted})` : ''}`);
}
