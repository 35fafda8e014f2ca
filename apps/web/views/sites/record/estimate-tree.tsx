import { useState, type ReactNode } from 'react';
import type { EstimateNode } from '../../../api.js';
import { capitalized, withUnit } from '../../../format/numbers.js';
import { strings } from '../../../strings.data.js';

const words = strings.record;

/** Numbers that open to the numbers they were made of, down to the defaults and their sources. */
export function EstimateTree({ nodes }: { readonly nodes: readonly EstimateNode[] }): ReactNode {
  return (
    <ul className="estimate-tree">
      {nodes.map((node, index) => (
        <li key={`${node.name} ${index}`}>
          <Node node={node} />
        </li>
      ))}
    </ul>
  );
}

function Node({ node }: { readonly node: EstimateNode }): ReactNode {
  const [wasOpened, setOpened] = useState(false);
  const value = node.value === null ? words.unknown : withUnit(node.value, node.unit);
  return (
    <details onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary>
        <span>{capitalized(node.name)}:</span> <strong>{value}</strong>
      </summary>
      {wasOpened && (
        <div className="estimate-inner">
          {node.formula !== '' && <p>{words.formula(node.formula)}</p>}
          {node.source !== '' && <p className="quiet">{words.source(node.source)}</p>}
          {node.inputs.length > 0 && <EstimateTree nodes={node.inputs} />}
        </div>
      )}
    </details>
  );
}
