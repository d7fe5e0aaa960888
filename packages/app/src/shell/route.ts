import { useSyncExternalStore } from 'react';
import { isQuestionKey, type QuestionKey } from './question-keys.ts';

/** Where a person is. The address carries it, so that a link opens the same view, also without a network. */
export type Route =
  | { readonly screen: 'jobs' }
  | { readonly screen: 'settings' }
  | { readonly screen: 'help' }
  | { readonly screen: 'calculators'; readonly name?: string }
  | {
      readonly screen: 'job';
      readonly id: string;
      readonly question: QuestionKey;
      /** The item in view, such as a criterion or a reading. */
      readonly place?: string;
    };

/** The route of an address such as `#/job/abc/faults/wall-3`. What is no address of ours is the list of jobs. */
export function parseRoute(hash: string): Route {
  const [screen, ...parts] = hash
    .replace(/^#?\/?/, '')
    .split('/')
    .map(decoded);
  if (screen === 'settings' || screen === 'help') return { screen };
  if (screen === 'calculators') return parts[0] ? { screen, name: parts[0] } : { screen };
  if (screen === 'job' && parts[0]) {
    const [id, question, place] = parts;
    const route = { screen, id, question: isQuestionKey(question) ? question : 'space' } as const;
    return place ? { ...route, place } : route;
  }
  return { screen: 'jobs' };
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

/** The address of a route, for a link. */
export function hrefOf(route: Route): string {
  const parts: (string | undefined)[] =
    route.screen === 'jobs'
      ? []
      : route.screen === 'job'
        ? ['job', route.id, route.question, route.place]
        : route.screen === 'calculators'
          ? ['calculators', route.name]
          : [route.screen];
  return `#/${parts
    .filter((part) => part !== undefined)
    .map(encodeURIComponent)
    .join('/')}`;
}

export function go(route: Route): void {
  location.hash = hrefOf(route);
}

/** The route in the address bar. */
export function useRoute(): Route {
  const hash = useSyncExternalStore(
    (changed) => {
      addEventListener('hashchange', changed);
      return () => removeEventListener('hashchange', changed);
    },
    () => location.hash,
  );
  return parseRoute(hash);
}
