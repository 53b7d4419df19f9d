"""What a page must show at any size: nothing cut off, nothing small, nothing pale."""

from typing import Any

from axe_core_python.sync_playwright import Axe
from playwright.sync_api import Page

LEAST_TEXT_PX = 17
LEAST_TARGET_PX = 48
SHOWN = """
  const shown = e => { const s = getComputedStyle(e), r = e.getBoundingClientRect();
    return s.visibility !== 'hidden' && s.display !== 'none' && r.width > 1 && r.height > 1 && s.clipPath === 'none'
      && e.checkVisibility(); };
  const told = e => e.tagName.toLowerCase() + '.' + (e.getAttribute('class') || '') + ' ' +
    (e.getAttribute('name') || '') + ' "' + (e.textContent || '').trim().slice(0, 40) + '"';
"""
SMALL_TEXT = """least => {""" + SHOWN + """
  const found = [];
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const e = node.parentElement;
    if (!node.data.trim() || e.closest('svg') || !shown(e)) continue;
    const size = parseFloat(getComputedStyle(e).fontSize);
    if (size < least) found.push(size + ' px: ' + told(e));
  }
  return found;
}"""
SMALL_TARGETS = """least => {""" + SHOWN + """
  const found = [];
  for (const e of document.querySelectorAll('a[href], button, input, select, textarea, summary, label')) {
    if (e.type === 'hidden' || !shown(e)) continue;
    if (e.tagName === 'LABEL' && !e.querySelector('input')) continue;
    const area = (e.matches('input[type=checkbox], input[type=radio], input[type=file]') && e.closest('label')) || e;
    const box = area.getBoundingClientRect();
    if (box.height < least - 0.5 || box.width < least - 0.5)
      found.push(Math.round(box.width) + '×' + Math.round(box.height) + ' px: ' + told(e));
  }
  return found;
}"""
AXE = {
    "runOnly": {"type": "tag", "values": ["wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa"]},
    "rules": {"color-contrast-enhanced": {"enabled": True}},
}


def faults_of(page: Page, width: int = 390) -> list[str]:
    """Everything that is wrong with this page, in words."""
    return [*too_wide(page), *small_text(page), *small_targets(page), *barriers(page, width)]


def too_wide(page: Page) -> list[str]:
    wide, room = page.evaluate("[document.documentElement.scrollWidth, document.documentElement.clientWidth]")
    return [f"{page.url} scrolls sideways: {wide} px in {room} px"] if wide > room else []


def small_text(page: Page) -> list[str]:
    return [f"{page.url} text of {found}" for found in page.evaluate(SMALL_TEXT, LEAST_TEXT_PX)]


def small_targets(page: Page) -> list[str]:
    return [f"{page.url} target of {found}" for found in page.evaluate(SMALL_TARGETS, LEAST_TARGET_PX)]


def barriers(page: Page, width: int) -> list[str]:
    """axe with AAA contrast, the window as high as the page: a sticky dock would count as covering what is under it."""
    high = page.evaluate("document.documentElement.scrollHeight")
    before = page.viewport_size
    page.set_viewport_size({"width": width, "height": max(844, high)})
    page.evaluate(Axe().axe_script)
    result: dict[str, Any] = page.evaluate("options => axe.run(document, options)", AXE)
    if before is not None:
        page.set_viewport_size(before)

    return [
        f"{page.url} {violation['id']}: {node['target']} {node['failureSummary']}"
        for violation in result["violations"]
        for node in violation["nodes"]
    ]
