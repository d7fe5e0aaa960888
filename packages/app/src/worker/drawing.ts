/** Loaded in the worker when a plan is drawn. */
export { planSvg } from '@undercroft/report';
