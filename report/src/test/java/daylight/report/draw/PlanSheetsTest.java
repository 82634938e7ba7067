package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.line.book.Place;
import daylight.line.measure.Shown;
import daylight.line.survey.PlanPoint;
import daylight.report.Example;
import daylight.report.cut.Cutter;
import daylight.report.cut.Part;
import daylight.report.markup.Tag;
import daylight.report.words.Language;
import daylight.report.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

/** Plans of lines that are too long for one sheet, as they were drawn. */
class PlanSheetsTest {
  private static final Pattern MATCH = Pattern.compile("Match line (.+) – see sheet (\\d+)");

  /** Lines from a house's to a street's, bent, forked and with more than there is room for. */
  static Stream<Subject> yards() {
    return Stream.of(
            DenseYard.subject(1, 30, 40),
            DenseYard.subject(2, 150, 60),
            DenseYard.subject(3, 600, 120),
            DenseYard.subject(4, 2000, 200))
        .flatMap(yard -> Stream.of(yard, inFeet(yard), yard.turned(PlanTurn.ALONG)));
  }

  private static Subject inFeet(Subject s) {
    return new Subject(
        s.book(),
        s.line(),
        s.answers(),
        s.rules(),
        s.codes(),
        s.shots(),
        s.complaints(),
        Words.of(Language.EN, Shown.FEET_INCHES),
        PlanTurn.NORTH_UP);
  }

  private static Stream<Subject> longOnes() {
    return yards().filter(PlanSheets::isLong);
  }

  @Test
  void whatCanBeReadOnOneSheetIsOnOne() {
    Subject house = Example.usual().subject();
    Subject yard = DenseYard.subject(1, 30, 40);

    assertThat(PlanSheets.isLong(house)).isFalse();
    assertThat(written(PlanSheets.of(house))).isEqualTo(written(PlanDrawing.sheets(house)));
    assertThat(PlanSheets.isLong(yard)).isFalse();
    assertThat(longOnes()).hasSize(9);
  }

  /** 86.1 ft along the wall, typed without its point: no sheet would hold what lies between. */
  @Test
  @Timeout(60)
  void aMistypedPlaceLeavesThePlanWhole() throws IOException {
    String book = Files.readString(Path.of("..", "corpus", "S23-pumped.yaml"));
    String mistyped = book.replaceFirst("(label: L2, .*?along: )[0-9.]+", "$1861");
    Subject subject = Typed.of(mistyped);

    assertThat(mistyped).isNotEqualTo(book);
    assertThat(PlanSheets.isLong(subject)).isTrue();
    assertThat(PlanSheets.parts(subject)).isEmpty();
    assertThat(written(PlanSheets.of(subject))).isEqualTo(written(PlanDrawing.sheets(subject)));
  }

  /** Where a sheet ends the next one begins, and both say so in the same words. */
  @ParameterizedTest
  @MethodSource("longOnes")
  void matchLinesAgree(Subject subject) {
    List<Part> parts = PlanSheets.parts(subject);
    List<Tag> sheets = PlanSheets.of(subject);

    assertThat(parts).hasSizeGreaterThan(1);
    int told = 0;
    for (Part part : parts) {
      Set<String> said = matches(sheet(sheets, part.number()));
      assertThat(said).hasSameSizeAs(part.matches());
      for (Part.Match match : part.matches()) {
        String there = subject.distance(match.place());
        assertThat(said).contains(there + " > " + match.other());
        assertThat(matches(sheet(sheets, match.other()))).contains(there + " > " + part.number());
        boolean next = match.place().equals(part.to()) && match.other() == part.number() + 1;
        if (next) {
          assertThat(parts.get(part.number()).from()).isEqualTo(part.to());
          told++;
        }
      }
    }
    assertThat(told).isPositive();
  }

  /** One after the other they hold all of the main route, from its beginning to its end. */
  @ParameterizedTest
  @MethodSource("longOnes")
  void nothingIsLeftOutBetweenThem(Subject subject) {
    double at = 0;
    for (Part part : PlanSheets.parts(subject)) {
      if (part.from() == null || part.to() == null) {
        continue;
      }
      var from = subject.route().station(part.from());
      var to = subject.route().station(part.to());
      if (from.isPresent() && to.isPresent()) {
        assertThat(from.getAsDouble()).isCloseTo(at, within(1e-6));
        at = to.getAsDouble();
      }
    }
    assertThat(at).isCloseTo(subject.route().samples().getLast().distance(), within(1e-6));
  }

  /** Nothing that the whole plan names is lost, and of what lies in an overlap nothing is once. */
  @ParameterizedTest
  @MethodSource("longOnes")
  void allThatStandsOnTheWholeStandsOnTheSheets(Subject subject) {
    List<Tag> sheets = PlanSheets.of(subject);
    String whole = said(List.of(PlanDrawing.draw(subject)));
    String all = said(sheets);

    List<String> named = named(subject).stream().filter(whole::contains).toList();
    assertThat(named).hasSizeGreaterThan(50);
    assertThat(named).allSatisfy(name -> assertThat(all).contains(name));
    List<Part> parts = PlanSheets.parts(subject);
    int twice = 0;
    for (var placed : Captions.drawn(subject)) {
      for (Part part : parts) {
        for (Part.Match match : part.matches()) {
          boolean near =
              match.place().reach().equals(placed.from().reach())
                  && Math.abs(match.place().distance() - placed.from().distance())
                      < Cutter.OVERLAP - 0.5;
          if (near) {
            assertThat(rings(sheet(sheets, part.number()), placed.from())).isNotEmpty();
            assertThat(rings(sheet(sheets, match.other()), placed.from())).isNotEmpty();
            twice++;
          }
        }
      }
    }
    assertThat(twice).isGreaterThanOrEqualTo(subject.route().length() > 300 ? 2 : 0);
  }

  /** What is measured on the paper with a ruler, times the scale, is what lies on the ground. */
  @ParameterizedTest
  @MethodSource("longOnes")
  void theScaleIsTrue(Subject subject) {
    double n = subject.words().shown() == Shown.METRES ? 500 : 480;
    List<Tag> sheets = PlanSheets.of(subject);
    for (Part part : PlanSheets.parts(subject)) {
      AsDrawn sheet = new AsDrawn(sheet(sheets, part.number()));
      List<Place> rings = new ArrayList<>();
      for (var placed : Captions.drawn(subject)) {
        if (!Captions.isStop(subject, placed) && !circles(sheet, placed.from()).isEmpty()) {
          rings.add(placed.from());
        }
      }
      for (int i = 0; i < rings.size(); i++) {
        Place one = rings.get(i);
        Place other = rings.get((i + rings.size() / 2) % rings.size());
        double ground = spot(subject, one).distanceTo(spot(subject, other));
        if (ground > 15) {
          Element a = circles(sheet, one).getFirst();
          Element b = circles(sheet, other).getFirst();
          double points =
              Math.hypot(
                  AsDrawn.number(a, "cx") - AsDrawn.number(b, "cx"),
                  AsDrawn.number(a, "cy") - AsDrawn.number(b, "cy"));
          double paper = points * 0.0254 / 72;
          assertThat(paper * n / ground).isCloseTo(1, within(0.001));
        }
      }
      assertThat(LabelOverlaps.words(sheet(sheets, part.number())))
          .anyMatch(words -> words.contains("1:" + (int) n));
    }
  }

  @ParameterizedTest
  @MethodSource("longOnes")
  void nothingLiesOnAnythingElse(Subject subject) {
    for (Tag sheet : PlanSheets.of(subject)) {
      assertThat(Clashes.of(sheet)).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("longOnes")
  void theKeyPlanNumbersEverySheet(Subject subject) {
    List<Tag> sheets = PlanSheets.of(subject);
    List<Part> parts = PlanSheets.parts(subject);
    List<String> words = LabelOverlaps.words(sheets.getFirst());

    assertThat(words).contains(subject.book().site().name() + ": key plan");
    int every = parts.size() > 30 ? 5 : 1;
    for (int i = 0; i < parts.size(); i += every) {
      assertThat(words).contains(Integer.toString(i + 1));
    }
    assertThat(sheets.stream().flatMap(sheet -> sheet.value("data-bookmark").stream()))
        .containsExactlyElementsOf(
            Stream.concat(
                    Stream.of("Key plan"), parts.stream().map(part -> "Sheet " + part.number()))
                .toList());
    Set<String> ids = new HashSet<>();
    Pattern id = Pattern.compile(" id=\"([^\"]+)\"");
    sheets.forEach(
        sheet ->
            id.matcher(sheet.write())
                .results()
                .forEach(found -> assertThat(ids.add(found.group(1))).isTrue()));
  }

  private static PlanPoint spot(Subject subject, Place place) {
    return Between.spot(subject.line().findRun(place.reach()).orElseThrow(), place.distance());
  }

  private static Tag sheet(List<Tag> sheets, int number) {
    String name = "Sheet " + number;
    return sheets.stream()
        .filter(sheet -> sheet.value("data-bookmark").filter(name::equals).isPresent())
        .findFirst()
        .orElseThrow();
  }

  private static List<Element> circles(AsDrawn sheet, Place place) {
    return rings(sheet, place).stream()
        .filter(ring -> ring.getTagName().equals("circle") && ring.hasAttribute("cx"))
        .filter(ring -> ring.getAttribute("r").equals("2.1"))
        .toList();
  }

  private static List<Element> rings(Tag sheet, Place place) {
    return rings(new AsDrawn(sheet), place);
  }

  private static List<Element> rings(AsDrawn sheet, Place place) {
    return sheet
        .all("g")
        .filter(group -> group.getAttribute("data-place").equals(place.reach()))
        .filter(group -> group.hasAttribute("data-distance"))
        .filter(
            group -> Math.abs(AsDrawn.number(group, "data-distance") - place.distance()) <= 0.0051)
        .flatMap(group -> Stream.concat(AsDrawn.in(group, "circle"), AsDrawn.in(group, "path")))
        .toList();
  }

  /** Distances and sheets of its match lines. */
  private static Set<String> matches(Tag sheet) {
    return LabelOverlaps.words(sheet).stream()
        .flatMap(words -> MATCH.matcher(words).results())
        .map(found -> found.group(1) + " > " + found.group(2))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** What a plan has to name. */
  private static Set<String> named(Subject subject) {
    Set<String> named = new TreeSet<>();
    Captions.drawn(subject)
        .forEach(placed -> named.add(Captions.finding(subject, subject.route(), placed)));
    subject.line().locates().stream()
        .filter(fit -> fit.spot() != null)
        .forEach(fit -> named.add(Located.label(subject, fit)));
    subject.book().site().nodes().forEach(node -> named.add(Captions.node(subject, node.label())));
    PlanDrawing.shownPoints(subject).keySet().forEach(label -> named.add(" " + label + " "));
    named.addAll(List.of("gas U1", "electric U2", "property line"));
    return named;
  }

  private static String said(List<Tag> sheets) {
    return sheets.stream()
        .flatMap(sheet -> LabelOverlaps.words(sheet).stream())
        .collect(Collectors.joining(" "));
  }

  private static String written(List<Tag> sheets) {
    return sheets.stream().map(Tag::write).collect(Collectors.joining("\n"));
  }
}
