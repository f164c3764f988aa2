/** Things below each other over pages, in order, none broken; one that is higher than a page has a page of its own. At least one page. */
export function fillPages<T extends { readonly heightMm: number }>(
  things: Iterable<T>,
  roomMm: number,
): T[][] {
  const pages: T[][] = [[]];
  let left = roomMm;
  for (const thing of things) {
    if (thing.heightMm > left && pages.at(-1)!.length > 0) {
      pages.push([]);
      left = roomMm;
    }
    pages.at(-1)!.push(thing);
    left -= thing.heightMm;
  }
  return pages;
}
