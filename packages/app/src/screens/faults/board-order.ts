const ORDERS = ['severity', 'part', 'subject'] as const;

/** How the findings are grouped. */
export type Order = (typeof ORDERS)[number];

const KEY = 'undercroft.board-order';

/** The order that was last chosen on this device; by severity where none was. */
export function keptOrder(): Order {
  try {
    const kept = localStorage.getItem(KEY);
    return ORDERS.find((one) => one === kept) ?? 'severity';
  } catch {
    return 'severity';
  }
}

/** Keeps the order for the next time. Where the device refuses it holds for this time only. */
export function keepOrder(order: Order): void {
  try {
    localStorage.setItem(KEY, order);
  } catch {
    // A board in its usual order is no loss.
  }
}
