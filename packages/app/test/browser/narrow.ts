import type { Page } from 'playwright-core';

/** What does not fit the window: what scrolls sideways, controls whose text is cut off, tools under 64 px. */
export function tooNarrow(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const named = (one: Element) =>
      `${one.tagName.toLowerCase()}.${one.className} ${one.textContent?.trim().slice(0, 60)}`;
    const isShown = (one: Element) => one.getClientRects().length > 0;
    const scrollers = '.phone-center, .sheet-body, .desk-center, .desk-answer, dialog[open]';
    for (const one of [document.documentElement, ...document.querySelectorAll(scrollers)]) {
      const over = one.scrollWidth - one.clientWidth;
      if (over <= 0) continue;
      const edge = one.getBoundingClientRect().left + one.clientLeft + one.clientWidth;
      const widest = [...one.querySelectorAll('*')].filter(
        (inner) =>
          isShown(inner) &&
          inner.closest('.table-scroll') === null &&
          inner.getBoundingClientRect().right > edge + 0.5,
      );
      found.push(`scrolls sideways by ${over}: ${named(one)}: ${widest.slice(0, 3).map(named).join(' | ')}`);
    }
    for (const one of document.querySelectorAll('button, a.button, summary, .choice label, .tools *')) {
      if (!isShown(one) || one.clientWidth === 0) continue;
      if (one.scrollWidth > one.clientWidth + 1) {
        found.push(`cut off by ${one.scrollWidth - one.clientWidth}: ${named(one)}`);
      }
    }
    for (const tool of document.querySelectorAll('.tools .button')) {
      const { height } = tool.getBoundingClientRect();
      if (isShown(tool) && height < 64) found.push(`a tool of ${height} px: ${named(tool)}`);
    }
    return found;
  });
}
