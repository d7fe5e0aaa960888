import type { Point } from '@undercroft/record';
import type { Grabbed } from './grabbed.ts';

/**
 * What is dragged over the plan: a copy of its drawing, the only thing that moves. The original stays where it was until
 * it is dropped, so that nothing else is painted anew.
 */
export class Ghost {
  readonly #grabbed: Grabbed;
  readonly #place: SVGGElement;
  #next: { readonly to: Point; readonly pxPerM: number } | null = null;
  #frame = 0;
  #dropped = false;

  constructor(grabbed: Grabbed, sheet: HTMLElement, place: SVGGElement) {
    this.#grabbed = grabbed;
    this.#place = place;
    const of = CSS.escape(`${grabbed.kind} ${grabbed.id}`);
    const originals = [...sheet.querySelectorAll<SVGElement>(`[data-of="${of}"]`)];
    // The copies keep the transform of the drawing that they were taken from.
    const around = document.createElementNS('http://www.w3.org/2000/svg', 'g');
    around.style.transform = sheet.style.transform;
    around.append(...originals.map((original) => original.cloneNode(true)));
    place.replaceChildren(around);
  }

  /** True from the drop until the plan was drawn anew. */
  get isDropped(): boolean {
    return this.#dropped;
  }

  /** Moves it with the next frame; a finger may come faster than frames do. */
  moveTo(to: Point, pxPerM: number): void {
    this.#next = { to, pxPerM };
    this.#frame ||= requestAnimationFrame(() => this.#show());
  }

  #show(): void {
    this.#frame = 0;
    if (this.#next === null) return;
    const { to, pxPerM } = this.#next;
    const { xM, yM } = this.#grabbed.move(to);
    this.#place.setAttribute('transform', `translate(${xM * pxPerM} ${-yM * pxPerM})`);
  }

  async drop(to: Point): Promise<void> {
    this.#dropped = true;
    if (!(await this.#grabbed.drop(to).catch(() => false))) this.end();
  }

  /** Takes the copy away. */
  end(): void {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#next = null;
    this.#place.replaceChildren();
    this.#place.removeAttribute('transform');
  }
}
