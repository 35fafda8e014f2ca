import {
  concat,
  distinctUntilChanged,
  exhaustMap,
  from,
  map,
  of,
  share,
  takeWhile,
  timer,
  type Observable,
} from 'rxjs';
import type { SolveReply } from '#contracts/http/solves.js';
import type { SolveRequestStore } from '#planning/ports/solve-request-store.js';
import { isFinal, type SolveRequest } from '#planning/solve-request.js';
import { solveReplyOf } from './solve-replies.js';

/** Looks at most this often, in milliseconds; workers write progress twice a second. */
const lookEvery = 500;

/**
 * Watches solve requests by looking again and again, since the embedded store cannot call. However
 * many pages watch one request, it is looked up once per turn.
 */
export class SolveWatch {
  readonly #watched = new Map<string, Observable<SolveReply>>();

  constructor(private readonly requests: SolveRequestStore) {}

  /** The request as it stands, then every change up to the final one. */
  follow(known: SolveRequest): Observable<SolveReply> {
    const first = solveReplyOf(known);
    if (isFinal(known.state)) return of(first);
    return concat(of(first), this.#shared(known.id)).pipe(
      distinctUntilChanged((a, b) => JSON.stringify(a) === JSON.stringify(b)),
    );
  }

  #shared(id: string): Observable<SolveReply> {
    const running = this.#watched.get(id);
    if (running) return running;
    const looking = timer(0, lookEvery).pipe(
      exhaustMap(() => from(this.requests.find(id))),
      takeWhile((request) => request !== null),
      map(solveReplyOf),
      takeWhile(({ state }) => !isFinal(state), true),
      share({ resetOnRefCountZero: true }),
    );
    this.#watched.set(id, looking);
    return looking;
  }
}
