import { Component, type ReactNode } from 'react';
import { strings } from '../strings.data.js';
import { Notice } from './notice.js';

interface Props {
  readonly children: ReactNode;
}

/**
 * Says so where a part of the page cannot be fetched or shown: a tab that was left open while the
 * program was built anew asks for files that are no longer there.
 */
export class ReloadNotice extends Component<Props, { readonly hasFailed: boolean }> {
  override state = { hasFailed: false };

  static getDerivedStateFromError(): { readonly hasFailed: boolean } {
    return { hasFailed: true };
  }

  override render(): ReactNode {
    if (!this.state.hasFailed) return this.props.children;
    const { notLoaded, notLoadedRemedy, reload } = strings.states;
    return (
      <Notice heading={notLoaded} remedy={notLoadedRemedy}>
        <button type="button" className="primary" onClick={() => window.location.reload()}>
          {reload}
        </button>
      </Notice>
    );
  }
}
