import { UsageError } from './usage-error.ts';

const ROUTES = ['rest', 'all'] as const;

/**
 * What a crawl is asked for; undefined for none.
 * @throws UsageError for another word than the two
 */
export function routeAsked(option: string | boolean | undefined): (typeof ROUTES)[number] | undefined {
  if (option === undefined) return undefined;
  const what = ROUTES.find((known) => known === option);
  if (what === undefined) {
    throw new UsageError(`--route ${option} is not known. It takes ${ROUTES.join(' or ')}.`);
  }
  return what;
}
