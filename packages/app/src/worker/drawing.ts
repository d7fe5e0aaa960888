/** Loaded in the worker when something is drawn. */
export { airContours, planSvg } from '@undercroft/report';
