export type { AirNetwork, AirZone, NetworkFan, NetworkInput, NetworkOpening } from './network.ts';
export { createNetwork } from './network.ts';
export type { NetworkConditions, NetworkState } from './network-state.ts';
export { createNetworkState } from './network-state.ts';
export { solveNetwork, solveNetworkByBrackets } from './solve-network.ts';
