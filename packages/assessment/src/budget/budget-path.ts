/** Water along one path [kg/day]; positive wets the air of the space. */
export interface BudgetPath {
  readonly key: string;
  readonly title: string;
  readonly kgPerDay: number;
  readonly low: number;
  readonly high: number;
  readonly assumed: boolean;
}
