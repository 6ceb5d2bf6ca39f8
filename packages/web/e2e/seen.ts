import type { Page } from '@playwright/test';

/** What hands and eyes meet on the painted page; measured there, by its computed styles. */

/** Everything that can be pressed and is in sight, with its size where that is below `least` CSS px either way. */
export function smallTargets(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate((floor) => {
    const pressed = document.querySelectorAll<HTMLElement>(
      'button, summary, select, input, textarea, a[href], [role="button"]',
    );
    return [...pressed].flatMap((element) => {
      if (!element.checkVisibility({ checkOpacity: false, checkVisibilityCSS: true })) return [];
      const target = element.closest('label') ?? element;
      const { width, height } = target.getBoundingClientRect();
      if (width === 0 || (width >= floor && height >= floor)) return [];
      const name = element.getAttribute('aria-label') ?? element.textContent ?? element.id;
      return [`${element.tagName} "${name.trim()}": ${width.toFixed(0)} x ${height.toFixed(0)}`];
    });
  }, least);
}

/**
 * Texts with a digit in them whose contrast against what lies behind is below `least`, by the formula of WCAG 2.2, "contrast
 * ratio" and "relative luminance". Behind a text is the background of the nearest element that has one; on a drawing, the last
 * filled shape painted before it that holds its middle.
 */
export function faintNumbers(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate((floor) => {
    type Colour = readonly [number, number, number, number];
    const colourOf = (text: string): Colour => {
      const [r = 0, g = 0, b = 0, a = 1] = (text.match(/[\d.]+/g) ?? []).map(Number);
      return text === 'none' ? [0, 0, 0, 0] : [r, g, b, a];
    };
    const luminance = ([r, g, b]: Colour): number => {
      const [red = 0, green = 0, blue = 0] = [r, g, b].map((channel) => {
        const share = channel / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
    };
    const contrast = (a: Colour, b: Colour): number => {
      const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
      return (light + 0.05) / (dark + 0.05);
    };
    const groundOf = (element: Element): Colour => {
      for (let here: Element | null = element; here !== null; here = here.parentElement) {
        const colour = colourOf(getComputedStyle(here).backgroundColor);
        if (colour[3] > 0) return colour;
      }
      throw new Error('the page has no ground');
    };
    const shapeBehind = (text: SVGTextElement): Colour | null => {
      const { left, right, top, bottom } = text.getBoundingClientRect();
      const [x, y] = [(left + right) / 2, (top + bottom) / 2];
      let found: Colour | null = null;
      for (const shape of text.ownerSVGElement?.querySelectorAll<SVGGeometryElement>('rect, circle, path') ??
        []) {
        if (text.compareDocumentPosition(shape) & Node.DOCUMENT_POSITION_FOLLOWING) continue;
        const style = getComputedStyle(shape);
        const fill = colourOf(style.fill);
        if (fill[3] === 0 || Number(style.opacity) < 1 || Number(style.fillOpacity) < 1) continue;
        const at = shape.getScreenCTM()?.inverse();
        if (at && shape.isPointInFill(new DOMPoint(x, y).matrixTransform(at))) found = fill;
      }
      return found;
    };
    const faint: string[] = [];
    let seen = 0;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const element = node.parentElement;
      const text = node.textContent ?? '';
      if (element === null || !/\d/.test(text) || !element.checkVisibility({ checkVisibilityCSS: true }))
        continue;
      if (element.closest('.spoken, script, style, option, :disabled') !== null) continue;
      seen += 1;
      const drawn = element instanceof SVGTextElement;
      const style = getComputedStyle(element);
      const ink = colourOf(drawn ? style.fill : style.color);
      const behind = (drawn ? shapeBehind(element) : null) ?? groundOf(element);
      const ratio = contrast(ink, behind);
      if (ratio < floor)
        faint.push(`"${text.trim()}": ${ratio.toFixed(1)}, ${ink.join()} on ${behind.join()}`);
    }
    if (seen < 20) throw new Error(`only ${seen} numbers were seen`);
    return faint;
  }, least);
}

/** Elements whose own words do not fit them and are cut off; not words that are said and never shown, clipped away whole. */
export function cutWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body *')].flatMap((element) => {
      if (element instanceof SVGElement) return [];
      const text = [...element.childNodes].some(
        (node) => node.nodeType === Node.TEXT_NODE && (node.textContent ?? '').trim() !== '',
      );
      if (!text || !element.checkVisibility({ checkVisibilityCSS: true })) return [];
      for (let here: HTMLElement | null = element; here !== null; here = here.parentElement) {
        const { overflowX, overflowY, clipPath } = getComputedStyle(here);
        if (clipPath === 'inset(50%)') return [];
        const cutsX = overflowX === 'hidden' || overflowX === 'clip';
        const cutsY = overflowY === 'hidden' || overflowY === 'clip';
        const tooWide = cutsX && here.scrollWidth > here.clientWidth + 1;
        const tooHigh = cutsY && here.scrollHeight > here.clientHeight + 1;
        if (tooWide || tooHigh) return [`${here.className}: "${(element.textContent ?? '').trim()}"`];
      }
      return [];
    }),
  );
}
