package daylight.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Geolocation;
import com.microsoft.playwright.options.WaitForSelectorState;
import daylight.app.web.Window;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/**
 * Phones that join the machine over a network of their own, in real browsers: 390 by 844, by touch.
 * What out of reach means is that the link is down.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class JoinSightTest {
  private static final Path PICTURES = Path.of("target/field-pages");
  private static final int WIDE = 390;
  private static final int HIGH = 844;

  /** What one touches and is lower than 44 px, or 24 px where a label is touched as well. */
  private static final String TOO_SMALL =
      """
      [...document.querySelectorAll('a, button, summary, main input:not([type=hidden])')]
        .filter((one) => one.offsetParent !== null)
        .filter((one) => one.getBoundingClientRect().height
          < (['checkbox', 'radio'].includes(one.type) ? 24 : 44))
        .map((one) => one.outerHTML)
      """;

  private static final String SAME = "[data-act='taken.same']";

  @TempDir private Path folder = Path.of("");
  private int archives;
  private Yard yard;
  private Served served;
  private Window laptop;
  private UUID book = new UUID(0, 0);
  private String walk = "";

  @BeforeAll
  void network(@TempDir Path scripts) throws IOException {
    yard = new Yard(scripts);
    laptop = new Window();
    Files.createDirectories(PICTURES);
  }

  @AfterAll
  void noNetwork() {
    laptop.close();
    yard.close();
  }

  @BeforeEach
  void open() throws IOException {
    served = new Served(folder.resolve("archive-" + ++archives));
    book = served.site("14 Elder Row (invented)", "It backs up.");
    walk = Archived.lastVisit(served, "/site/" + book) + "/walk";
  }

  @AfterEach
  void close() {
    served.close();
  }

  /** Phones of the yard; what they trust beside what every browser does lies in their home. */
  private Window phones(byte[]... trusted) throws IOException {
    Path home = Files.createDirectories(folder.resolve("home-" + archives));
    for (byte[] authority : trusted) {
      Path store = Files.createDirectories(home.resolve(".pki/nssdb"));
      Path certificate = Files.write(home.resolve("authority.crt"), authority);
      String database = "sql:" + store;
      assertThat(Yard.done("certutil", "-d", database, "-N", "--empty-password"))
          .as("certutil tells a browser what to trust; where it is missing: ./check --install")
          .isTrue();
      assertThat(
              Yard.done(
                  "certutil",
                  "-d",
                  database,
                  "-A",
                  "-n",
                  "archive",
                  "-t",
                  "C,,",
                  "-i",
                  certificate.toString()))
          .isTrue();
    }
    return new Window(yard.onThePhone(Window.chromium(), home), List.of());
  }

  private void cut(List<Page> phones) {
    if (yard.isApart()) {
      yard.link(false);
    } else {
      phones.forEach(page -> page.context().setOffline(true));
    }
  }

  private void mend(List<Page> phones) {
    if (yard.isApart()) {
      yard.link(true);
    } else {
      phones.forEach(page -> page.context().setOffline(false));
    }
  }

  /** Joins as a person does, with the code typed by hand. */
  private Page joined(Window phones, String origin, String name) {
    Page page = phones.phone(WIDE, HIGH);
    page.navigate(origin + "/");
    page.locator("#code").fill(served.code());
    page.locator("#name").fill(name);
    page.locator("main button[type=submit]").tap();
    page.waitForURL("**/sites");
    page.navigate(origin + walk);
    page.locator("#person").fill("Kim");
    page.locator("main button[type=submit]").tap();
    page.locator("#over").waitFor();
    kept(page);
    return page;
  }

  private static void kept(Page page) {
    page.locator("#reach.kept").waitFor();
  }

  private static void locate(Page page, int number) {
    page.locator("#over").tap();
    fill(page, "cable", 10 + 5 * number);
    fill(page, "along", 8);
    fill(page, "out", 4 + 5 * number);
    fill(page, "depth", 3);
    page.locator("#keep").tap();
    page.locator("#locate")
        .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.HIDDEN));
  }

  private static void fill(Page page, String field, int number) {
    page.locator("#w-" + field).fill(Integer.toString(number));
  }

  private List<String> cables() {
    return BookNow.of(served.archive(), book)
        .orElseThrow()
        .in("locates")
        .map(row -> row.text("cable").orElse(""))
        .toList();
  }

  private static String[] feet(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(i -> (10 + 5 * i) + " ft")
        .toArray(String[]::new);
  }

  @Test
  void overAPlainConnectionTenSpotsOutOfReachAreTenAndThePageSaysWhatItCannot() throws IOException {
    String origin = served.open(yard.machineText(), false);
    try (Window phones = phones();
        Page page = joined(phones, origin, "Kim’s phone")) {
      assertThat(page.evaluate("window.isSecureContext")).isEqualTo(false);
      assertThat(page.locator("#insecure").isVisible()).isTrue();
      assertThat(page.locator("#insecure").textContent()).contains("do not load it again");
      cut(List.of(page));
      for (int i = 1; i <= 10; i++) {
        locate(page, i);
      }
      page.locator("#reach.unsent").waitFor();
      assertThat(cables()).isEmpty();
      page.screenshot(
          new Page.ScreenshotOptions().setPath(PICTURES.resolve("join-walk-plain-390.png")));
      mend(List.of(page));
      kept(page);

      assertThat(cables()).containsExactly(feet(10));
      assertThat(phones.asked()).allMatch(url -> url.startsWith(origin));
    }
  }

  @Test
  void overASecureConnectionThePageIsLoadedAgainTwiceOutOfReachAndAFixIsTaken() throws IOException {
    if (!yard.machine().isPrivate()) {
      System.err.println("No private address here: no secure connection can be looked at.");
      return;
    }
    served.form("/phones/secure", served.hidden("/phones"));
    String origin = served.open(yard.machineText(), true);
    byte[] authority;
    try (Visitor visitor = new Visitor(origin.replace("https:", "http:"))) {
      authority = visitor.bytes("/join/daylight.crt").body();
    }
    try (Window phones = phones(authority);
        Page page = joined(phones, origin, "Kim’s phone")) {
      assertThat(page.evaluate("window.isSecureContext")).isEqualTo(true);
      assertThat(page.locator("#insecure").isVisible()).isFalse();
      Window.until(page, "navigator.serviceWorker.controller !== null");
      Window.until(page, "async () => (await caches.match(location.href)) !== undefined");
      BrowserContext context = page.context();
      context.grantPermissions(List.of("geolocation"));
      context.setGeolocation(new Geolocation(45.0, -93.0).setAccuracy(5));
      cut(List.of(page));
      for (int i = 1; i <= 10; i++) {
        locate(page, i);
        if (i == 4 || i == 8) {
          page.reload();
          page.locator("#over").waitFor();
        }
      }
      page.locator("#over").tap();
      fill(page, "cable", 65);
      page.evaluate("document.querySelectorAll('details').forEach(one => { one.open = true; })");
      page.locator("#gnss").tap();
      page.locator("#gnss-told >> text=45.0").or(page.locator("#gnss-told:not(:empty)")).waitFor();
      page.locator("#keep").tap();
      assertThat(cables()).isEmpty();
      mend(List.of(page));
      kept(page);

      assertThat(cables()).containsExactly(feet(11));
      assertThat(
              BookNow.of(served.archive(), book)
                  .orElseThrow()
                  .in("locates")
                  .toList()
                  .getLast()
                  .text("gnss", "latitude")
                  .orElse(""))
          .startsWith("45.0");
    }
  }

  @Test
  void twoPhonesOutOfReachAtOnceLoseNothing() throws IOException {
    String origin = served.open(yard.machineText(), false);
    try (Window phones = phones();
        Page one = joined(phones, origin, "One");
        Page other = joined(phones, origin, "Other")) {
      cut(List.of(one, other));
      for (int i = 1; i <= 5; i++) {
        locate(one, i);
        locate(other, 5 + i);
      }
      mend(List.of(one, other));
      // Both named the two ends of the wall at their back; who came second is asked about them.
      for (int i = 0; i < 2; i++) {
        for (int tries = 0; tries < 300 && count(one, other) == 0; tries++) {
          one.waitForTimeout(100);
        }
        Page asked = one.locator(SAME).count() > 0 ? one : other;
        asked.locator(SAME).first().tap();
      }
      kept(one);
      kept(other);

      assertThat(cables()).containsExactlyInAnyOrder(feet(10));
      assertThat(
              BookNow.of(served.archive(), book)
                  .orElseThrow()
                  .in("locates")
                  .map(BookNow.Row::label))
          .doesNotHaveDuplicates()
          .hasSize(10);
    }
  }

  private static int count(Page one, Page other) {
    return one.locator(SAME).count() + other.locator(SAME).count();
  }

  @Test
  void aPhoneThatIsTakenOffTheListSaysSoAndWhatWaitsThereArrivesWhenItJoinsAgain()
      throws IOException {
    String origin = served.open(yard.machineText(), false);
    try (Window phones = phones();
        Page page = joined(phones, origin, "Lost")) {
      locate(page, 1);
      kept(page);
      served.revoke("Lost");
      locate(page, 2);
      page.locator("#reach >> text=taken off the list").waitFor();
      page.screenshot(
          new Page.ScreenshotOptions().setPath(PICTURES.resolve("join-revoked-walk-390.png")));
      assertThat(cables()).containsExactly("15 ft");
      page.navigate(origin + walk);
      assertThat(page.locator("main").textContent()).contains("taken off the list", "stays here");
      assertThat(Window.violations(page)).isEmpty();
      page.screenshot(
          new Page.ScreenshotOptions().setPath(PICTURES.resolve("join-revoked-390.png")));
      page.locator("main a.button").tap();
      page.locator("#code").fill(served.code());
      page.locator("#name").fill("Found");
      page.locator("main button[type=submit]").tap();
      page.waitForURL("**/sites");
      page.navigate(origin + walk);
      page.locator("#over").waitFor();
      kept(page);

      assertThat(cables()).containsExactly("15 ft", "20 ft");
    }
  }

  @Test
  void theQrCodeLeadsWhereItSaysAndThePageShowsWhoJoined() throws IOException, ReaderException {
    served.form("/phones/secure", served.hidden("/phones"));
    try (Page page = laptop.page(1366, 900);
        Window phones = phones()) {
      page.navigate(served.address().resolve("/sites").toString());
      page.locator("main >> text=Phones").click();
      page.locator("#how-plain").check();
      page.locator("input[value='" + yard.machineText() + "']").check();
      page.locator("#door button").click();
      page.locator("#code button").click();
      String origin = page.locator("#door strong").textContent();
      String code = page.locator("p.code").textContent().replace(" ", "");
      page.locator("button[value=basement]").click();
      String scanned = scanned(page.locator("svg.square").first());
      assertThat(scanned).isEqualTo(origin + "/join?code=" + code);
      page.locator("button[value=sun]").click();
      assertThat(scanned(page.locator("svg.square").first())).isEqualTo(scanned);

      Page phone = phones.phone(WIDE, HIGH);
      phone.navigate(scanned);
      assertThat(phone.locator("#code").inputValue()).isEqualTo(code);
      looked(phone, "join-390");
      phone.locator("#name").fill("Phone of the truck");
      phone.locator("main button[type=submit]").tap();
      phone.waitForURL("**/sites");
      page.locator("#joined >> text=Phone of the truck").waitFor();
      page.locator("#code >> text=Make a code").waitFor();
      looked(page, "phones-joined-1366");
      page.locator("#joined button").click();
      page.locator("#joined >> text=No phone has joined yet").waitFor();
      phone.reload();
      assertThat(phone.locator("main").textContent()).contains("taken off the list");
    }
  }

  /** What a camera reads in a picture on the screen. */
  private static String scanned(Locator square) throws IOException, ReaderException {
    BufferedImage seen = ImageIO.read(new ByteArrayInputStream(square.screenshot()));
    int wide = seen.getWidth();
    int high = seen.getHeight();
    int[] pixels = seen.getRGB(0, 0, wide, high, null, 0, wide);
    try {
      return new QRCodeReader()
          .decode(new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(wide, high, pixels))))
          .getText();
    } catch (NotFoundException e) {
      throw new AssertionError("no code is seen in the picture", e);
    }
  }

  /** Every state of the pages, at both widths, in every light and in French. */
  @Test
  void thePagesFitAndEverybodyCanReadThem() throws IOException {
    state("phones-shut", WIDE, "paper");
    served.form("/phones/secure", served.hidden("/phones"));
    state("phones-made", 1366, "basement");
    String origin = served.open(yard.machineText(), yard.machine().isPrivate());
    served.code();
    try (Visitor visitor = new Visitor(origin.replace("https:", "http:"))) {
      if (yard.machine().isPrivate()) {
        visitors(origin, visitor.bytes("/join/daylight.crt").body());
      }
    }
    state("phones-open", WIDE, "paper", "basement", "sun", "fr");
    state("phones-open", 1366, "basement");
  }

  private void visitors(String origin, byte[] authority) throws IOException {
    try (Window phones = phones(authority)) {
      for (String at : List.of("/join", "/join/secure", "/sites")) {
        try (Page page = phones.phone(WIDE, HIGH)) {
          page.navigate(origin + at);
          page.screenshot(
              new Page.ScreenshotOptions()
                  .setFullPage(true)
                  .setPath(PICTURES.resolve("stranger" + at.replace('/', '-') + "-390.png")));
          page.locator("button[value=fr]").click();
          page.locator("button[value=basement]").click();
          looked(page, "stranger" + at.replace('/', '-') + "-390-french");
        }
      }
      try (Page page = joined(phones, origin, "Kim’s phone")) {
        assertThat(page.locator("nav").first().textContent()).contains("Sites");
      }
    }
  }

  private void state(String name, int width, String... switches) {
    try (Page page = laptop.page(width, HIGH)) {
      page.navigate(served.address().resolve("/phones").toString());
      for (String one : switches) {
        page.locator("button[value=" + one + "]").click();
        looked(page, name + "-" + width + "-" + one);
      }
    }
  }

  private static void looked(Page page, String name) {
    assertThat(page.evaluate("document.documentElement.scrollWidth"))
        .as(name)
        .isEqualTo(page.viewportSize().width);
    page.screenshot(
        new Page.ScreenshotOptions().setFullPage(true).setPath(PICTURES.resolve(name + ".png")));
    assertThat(Window.violations(page)).as(name).isEmpty();
    assertThat(page.evaluate(TOO_SMALL)).as(name).isEqualTo(List.of());
  }
}
