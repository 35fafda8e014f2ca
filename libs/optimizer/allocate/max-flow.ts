/**
 * Largest flow in a network with whole capacities, so that the flow is whole too
 * (Dinic 1970; integrality: Ford and Fulkerson 1956).
 *
 * Flow already sent stays sent: a later call with more room only adds to it, and what a source has
 * given is never taken back. Capacities up to 2^53.
 */
export class FlowNetwork {
  private readonly heads: number[][];
  private readonly to: number[] = [];
  private readonly room: number[] = [];

  constructor(nodes: number) {
    this.heads = Array.from({ length: nodes }, () => []);
  }

  /** Adds a node and returns its number. */
  addNode(): number {
    return this.heads.push([]) - 1;
  }

  /** Adds an edge and returns its number. */
  addEdge(from: number, to: number, capacity: number): number {
    const edge = this.to.length;
    this.to.push(to, from);
    this.room.push(capacity, 0);
    this.heads[from]?.push(edge);
    this.heads[to]?.push(edge + 1);
    return edge;
  }

  /** Flow on an edge. */
  flow(edge: number): number {
    return this.room[edge + 1] ?? 0;
  }

  /** Room left on an edge. */
  roomLeft(edge: number): number {
    return this.room[edge] ?? 0;
  }

  /** Gives an edge more room. */
  widen(edge: number, by: number): void {
    this.room[edge] = (this.room[edge] ?? 0) + by;
  }

  /** Sends as much as fits from `source` to `sink`, on top of what is sent; returns what was added. */
  send(source: number, sink: number): number {
    let added = 0;
    for (;;) {
      const level = this.levels(source);
      if ((level[sink] ?? -1) < 0) return added;
      const next = new Int32Array(this.heads.length);
      for (;;) {
        const pushed = this.push({ level, next, sink }, source, Infinity);
        if (pushed === 0) break;
        added += pushed;
      }
    }
  }

  /** Steps from `source` to each node over edges with room left; -1 where none leads there. */
  levels(source: number): Int32Array {
    const level = new Int32Array(this.heads.length).fill(-1);
    level[source] = 0;
    const queue = [source];
    for (const node of queue) {
      for (const edge of this.heads[node] ?? []) {
        const to = this.to[edge] ?? 0;
        if ((this.room[edge] ?? 0) <= 0 || (level[to] ?? 0) >= 0) continue;
        level[to] = (level[node] ?? 0) + 1;
        queue.push(to);
      }
    }
    return level;
  }

  private push(
    walk: { level: Int32Array; next: Int32Array; sink: number },
    node: number,
    most: number,
  ): number {
    if (node === walk.sink) return most;
    const edges = this.heads[node] ?? [];
    for (; (walk.next[node] ?? 0) < edges.length; walk.next[node] = (walk.next[node] ?? 0) + 1) {
      const edge = edges[walk.next[node] ?? 0] ?? 0;
      const to = this.to[edge] ?? 0;
      const room = this.room[edge] ?? 0;
      if (room <= 0 || walk.level[to] !== (walk.level[node] ?? 0) + 1) continue;
      const pushed = this.push(walk, to, Math.min(most, room));
      if (pushed === 0) continue;
      this.room[edge] = room - pushed;
      this.room[edge ^ 1] = (this.room[edge ^ 1] ?? 0) + pushed;
      return pushed;
    }
    return 0;
  }
}
