package daylight.app.field;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/**
 * A hand at a page: it presses what can be seen and types into what it pressed, and nothing else.
 * Every press is counted.
 */
final class Hand {
  private static final double FULL_TURN_HOURS = 12;

  private final Page page;
  private final boolean touches;
  private int presses;
  private int letters;

  private Hand(Page page, boolean touches) {
    this.page = page;
    this.touches = touches;
  }

  /** With a mouse. */
  static Hand clicking(Page page) {
    return new Hand(page, false);
  }

  /** With a finger, on a page that can be touched. */
  static Hand tapping(Page page) {
    return new Hand(page, true);
  }

  Page page() {
    return page;
  }

  /** How often something was pressed. */
  int presses() {
    return presses;
  }

  /** How many letters and figures were typed. */
  int letters() {
    return letters;
  }

  /** Presses something that is seen; where several fit, the first of them. */
  Hand press(String what) {
    Locator seen = page.locator(what + ">> visible=true").first();
    if (touches) {
      seen.tap();
    } else {
      seen.click();
    }
    presses++;
    return this;
  }

  /** Presses what bears these words. */
  Hand press(String what, String words) {
    return press(what + ":has-text(\"" + words + "\")");
  }

  /** Presses a field and types; what stood there is typed over. */
  Hand type(String field, String text) {
    press(field);
    page.keyboard().press("Control+A");
    page.keyboard().type(text);
    letters += text.length();
    return this;
  }

  /** Chooses from a list: one press to open it, one to choose. */
  Hand choose(String list, String words) {
    page.locator(list + ">> visible=true").selectOption(words);
    presses += 2;
    return this;
  }

  /** Presses an hour on the ring of a pipe. */
  Hand hour(int hour) {
    Locator ring = page.locator(".ring");
    ring.scrollIntoViewIfNeeded();
    BoundingBox box = ring.boundingBox();
    double angle = 2 * Math.PI * (hour - FULL_TURN_HOURS / 4) / FULL_TURN_HOURS;
    double r = 0.37 * box.width;
    double x = box.x + box.width / 2 + r * Math.cos(angle);
    double y = box.y + box.height / 2 + r * Math.sin(angle);
    if (touches) {
      page.touchscreen().tap(x, y);
    } else {
      page.mouse().click(x, y);
    }
    presses++;
    return this;
  }

  /** Waits until an address is shown that holds this at its end. */
  Hand arrived(String pattern) {
    Predicate<String> fits = url -> Pattern.compile(pattern + "(?:#.*)?$").matcher(url).find();
    page.waitForURL(fits);
    return this;
  }
}
