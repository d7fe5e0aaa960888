import type { ReactNode } from 'react';
import { commonTexts } from '../text/common.ts';
import { useTexts } from '../text/texts.ts';
import './why.css';

/** Opens what a figure rests on: the source, who measured the inputs and when, and the steps. */
export function Why({ about, children }: { readonly about: string; readonly children: ReactNode }) {
  const say = useTexts(commonTexts);
  return (
    <details className="why">
      <summary>
        {say('why')} <span className="hidden-text">{about}</span>
      </summary>
      <div>{children}</div>
    </details>
  );
}
