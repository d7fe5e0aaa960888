import { expect, it } from 'vitest';
import { hrefOf, parseRoute, type Route } from '../../src/shell/route.ts';

it.each<Route>([
  { screen: 'jobs' },
  { screen: 'settings' },
  { screen: 'calculators' },
  { screen: 'calculators', name: 'pipe-fall' },
  { screen: 'job', id: 'a1_B-2', question: 'space' },
  { screen: 'job', id: 'x', question: 'faults', place: 'wall 3/north %' },
])('gives the route %j back from its address', (route) => {
  expect(parseRoute(hrefOf(route))).toEqual(route);
});

it.each([
  ['', { screen: 'jobs' }],
  ['#/nowhere', { screen: 'jobs' }],
  ['#/job/', { screen: 'jobs' }],
  ['#/job/abc', { screen: 'job', id: 'abc', question: 'space' }],
  ['#/job/abc/unheard-of', { screen: 'job', id: 'abc', question: 'space' }],
  ['#/job/abc/faults/%E0%A4%A', { screen: 'job', id: 'abc', question: 'faults', place: '%E0%A4%A' }],
])('reads the foreign address "%s"', (hash, route) => {
  expect(parseRoute(hash)).toEqual(route);
});
