import { Component, type ReactNode } from 'react';
import { Button } from '../parts/button.tsx';
import { Notice } from '../parts/notice.tsx';
import { currentSettings } from '../settings/settings.ts';
import { commonTexts } from '../text/common.ts';
import { sayIn } from '../text/texts.ts';

/** Where a screen fails, says so in its place and leaves the rest of the app alone. */
export class Boundary extends Component<
  { readonly children: ReactNode },
  { readonly reason: string | null }
> {
  override state = { reason: null };

  static getDerivedStateFromError(error: unknown) {
    return { reason: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    const { reason } = this.state;
    if (reason === null) return this.props.children;
    const say = sayIn(currentSettings().language, commonTexts);
    return (
      <div className="page">
        <Notice
          kind="wrong"
          actions={<Button onPress={() => this.setState({ reason: null })}>{say('retry')}</Button>}
        >
          <p>{say('failedScreen')}</p>
          <p className="soft">{reason}</p>
        </Notice>
      </div>
    );
  }
}
