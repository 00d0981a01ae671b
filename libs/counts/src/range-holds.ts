import { isWithin, type Wanted } from './deviation.ts';
import { meets } from './meets.ts';
import type { Node } from './node.ts';

/** Whether a dimension's range holds a whole count that meets what is asked of it. `below`: the rib that lies below it. */
export function rangeHolds(node: Node, wanted: Wanted, below: number): boolean {
  const least = Math.ceil((wanted.low - below) / node.pitch - 1e-6);
  const most = Math.floor((wanted.high - below) / node.pitch + 1e-6);
  for (let count = least; count <= most; count += 1)
    if (meets(count, node) && isWithin(count * node.pitch + below, wanted)) return true;
  return false;
}
