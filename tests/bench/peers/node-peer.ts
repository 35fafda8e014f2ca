/**
 * A solver of this ecosystem, once through on a model, as a process of its own so that its time and memory can
 * be told: `node node-peer.js highs|glpk.js MODEL SECONDS`. It prints a JSON line for each moment.
 */
import { readFileSync } from 'node:fs';
import { deserialize } from 'node:v8';
import loadGlpk from 'glpk.js/node';
import loadHighs from 'highs';
import type { Model } from '#mip/model.js';
import { writeMps } from '#mip/write-mps.js';
import { printLine } from '../print-line.js';
import { glpkModel } from './glpk-model.js';
import type { PeerLine } from './node-peers.js';

const [which, path = '', seconds = '0'] = process.argv.slice(2);
const model = deserialize(readFileSync(path)) as Model;
const tell: (line: PeerLine) => void = printLine;
if (which === 'highs') await withHighs();
else await withGlpk();

/** Default options, but for the time and a gap of zero. */
async function withHighs(): Promise<void> {
  const highs = await loadHighs();
  const sign = model.sense === 'maximize' ? -1 : 1;
  const finite = (value: number | undefined) =>
    value !== undefined && Math.abs(value) < 1e30 ? sign * value : undefined;
  highs.withModel({ format: 'mps', data: writeMps(model) }, (native) => {
    native.options.set({ output_flag: false, time_limit: Number(seconds), mip_rel_gap: 0 });
    const { mipImprovingSolution, mipInterrupt } = highs.constants.callbackType;
    let bound: number | undefined;
    native.run({
      [mipImprovingSolution]({ data }) {
        tell({ objective: finite(data.objective_function_value) });
      },
      [mipInterrupt]({ data }) {
        const now = finite(data.mip_dual_bound);
        if (now !== bound) tell({ bound: (bound = now) });
      },
    });
    const status = native.getModelStatus();
    const { optimal, infeasible } = highs.constants.modelStatus;
    const has = Number(native.info.get('primal_solution_status')) === 2;
    tell({
      ended: status === optimal ? 'optimal' : status === infeasible ? 'infeasible' : 'stopped',
      objective: has ? finite(native.getObjectiveValue()) : undefined,
      bound: finite(Number(native.info.get('mip_dual_bound'))),
    });
  });
}

async function withGlpk(): Promise<void> {
  const glpk = await loadGlpk();
  const { result } = glpk.solve(glpkModel(glpk, model), {
    tmlim: Number(seconds),
    msglev: glpk.GLP_MSG_OFF,
  });
  const optimal = result.status === glpk.GLP_OPT;
  const found = optimal || result.status === glpk.GLP_FEAS;
  tell({
    ended: optimal ? 'optimal' : result.status === glpk.GLP_NOFEAS ? 'infeasible' : 'stopped',
    objective: found ? result.z : undefined,
    bound: optimal ? result.z : undefined,
  });
}
