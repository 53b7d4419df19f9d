"""The measures themselves: each finds what it is there for."""

from playwright.sync_api import Page

from tests.browser.measure import barriers, small_targets, small_text, too_wide

HEAD = "<meta name=viewport content='width=device-width'><title>Bad</title>"
START = f"<!doctype html><html lang=en>{HEAD}<body><main><h1>Bad</h1>"


def test_a_page_that_is_too_wide_is_found(page: Page) -> None:
    page.set_content(START + "<p><svg width=800 height=8></svg>")
    assert too_wide(page)


def test_small_text_is_found_and_hidden_text_is_not(page: Page) -> None:
    page.set_content(START + "<style>p,h1{font-size:17px}</style><p>Fine<p hidden><small>hidden</small>")
    assert not small_text(page)
    page.set_content(START + "<style>p{font-size:16px}</style><p>Too small")
    assert small_text(page)


def test_small_targets_are_found(page: Page) -> None:
    page.set_content(START + "<style>button{width:60px;height:40px}</style><button>Stop</button>")
    assert small_targets(page)


def test_pale_text_is_found_that_only_the_stricter_contrast_refuses(page: Page) -> None:
    page.set_content(START + "<style>body{background:#fff}p{color:#707070;font-size:18px}</style><p>Pale")
    assert any("color-contrast-enhanced" in fault for fault in barriers(page, 390))
