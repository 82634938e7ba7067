package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import daylight.app.Job;
import daylight.archive.FieldBookReader;
import daylight.line.book.FieldBook;
import daylight.line.book.Papers;
import daylight.line.book.Pass;
import daylight.line.book.Visit;
import daylight.report.Handout;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** The command {@code demo}. */
class DemoTest {
  private static final List<String> PROPERTIES =
      List.of("house-sewer", "shop-roof-drain", "wash-down-pit");
  private static final List<String> RESULTS =
      List.of(
          "answers.json",
          "follow-ups.ics",
          "line.geojson",
          "maps/csv/band.csv",
          "maps/csv/dictionary.csv",
          "maps/csv/dig_box.csv",
          "maps/csv/finding.csv",
          "maps/csv/landmark.csv",
          "maps/csv/locate.csv",
          "maps/csv/node.csv",
          "maps/csv/notice.csv",
          "maps/csv/reach.csv",
          "maps/csv/service.csv",
          "maps/csv/station.csv",
          "maps/csv/tie.csv",
          "maps/dictionary.html",
          "maps/site.dxf",
          "maps/site.gpkg",
          "maps/site.xlsx",
          "plan.svg",
          "profile.svg",
          "report-short.pdf",
          "crew-cards.pdf",
          "report.html",
          "report.pdf",
          "results.list",
          "strip.svg");

  @TempDir private static Path folder = Path.of("");

  private static Path here = Path.of("");
  private static Said said = new Said(0, "", "");

  @BeforeAll
  static void answersTheInventedProperties() {
    here = folder.resolve("here");
    said = demo(here);
  }

  private static Said demo(Path to) {
    return Said.by("demo", "--no-open", "--to", to);
  }

  @Test
  void writesBookFootageResultsAndPicturesOfEachProperty() throws IOException {
    assertThat(said.code()).isEqualTo(ExitCode.DONE);
    assertThat(said.err().lines()).allMatch(line -> line.matches("(making|reading|taking) .*"));
    assertThat(said.out().split("An invented scenario", -1)).hasSize(4);
    for (String property : PROPERTIES) {
      List<String> files = below(here.resolve(property)).keySet().stream().toList();
      List<String> pictures = files.stream().filter(file -> file.contains("/stills/")).toList();
      assertThat(files).contains("field-book.yaml");
      assertThat(files.stream().filter(file -> file.startsWith("footage/"))).hasSize(2);
      assertThat(pictures).hasSizeGreaterThanOrEqualTo(3).allMatch(file -> file.endsWith(".jpg"));
      assertThat(files)
          .containsAll(RESULTS.stream().map(file -> "answered/" + file).toList())
          .hasSize(1 + 2 + RESULTS.size() + pictures.size());
    }
  }

  @Test
  void givesTheSameBytesAgainAndElsewhere() throws IOException {
    Path there = folder.resolve("quite/another place");
    SortedMap<String, Path> first = below(demo(there).code() == ExitCode.DONE ? there : here);
    SortedMap<String, Path> again = below(here);

    assertThat(first.keySet()).isEqualTo(again.keySet());
    for (String file : first.keySet()) {
      assertThat(first.get(file)).as(file).hasSameBinaryContentAs(again.get(file));
      assertThat(first.get(file)).isNotEqualTo(again.get(file));
    }
  }

  /**
   * By veraPDF, an independent validator: ISO 19005-2 level A and, as far as can be, ISO 14289-1.
   */
  @ParameterizedTest
  @EnumSource(
      value = PDFAFlavour.class,
      names = {"PDFA_2_A", "PDFUA_1"})
  void everyReportIsToBeArchivedAndReadAloud(PDFAFlavour flavour) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    for (Path report : reports()) {
      try (PDFAParser parser =
              Foundries.defaultInstance().createParser(Files.newInputStream(report), flavour);
          PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        ValidationResult result = validator.validate(parser);

        assertThat(result.getTestAssertions())
            .as(report.toString())
            .filteredOn(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
            .isEmpty();
        assertThat(result.isCompliant()).as(report.toString()).isTrue();
      }
    }
  }

  /** Every edition of every property. */
  private List<Path> reports() {
    return PROPERTIES.stream()
        .flatMap(
            property ->
                Stream.of("report.pdf", "report-short.pdf", "crew-cards.pdf")
                    .map(file -> here.resolve(property).resolve("answered").resolve(file)))
        .toList();
  }

  /** By pdftotext of Poppler, which takes texts as they stand in the pages. */
  @Test
  void theSectionsOfEveryReportAreReadInTheirOrder() throws Exception {
    for (Path report : reports()) {
      String read = pdftotext(report);
      List<String> sections = new ArrayList<>();
      try (PDDocument paper = Loader.loadPDF(report.toFile())) {
        for (PDOutlineItem item : paper.getDocumentCatalog().getDocumentOutline().children()) {
          sections.add(item.getTitle().replaceAll("[\\s\u00a0\u202f]+", " "));
        }
      }

      assertThat(sections).as(report.toString()).isNotEmpty();
      assertThat(read).as(report.toString()).containsSubsequence(sections);
    }
  }

  private static String pdftotext(Path pdf) throws Exception {
    Process process =
        new ProcessBuilder("pdftotext", "-enc", "UTF-8", pdf.toString(), "-")
            .redirectErrorStream(true)
            .start();
    String read = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(read).isZero();
    return read.replaceAll("[\\s\u00a0\u202f]+", " ");
  }

  @Test
  void resultsDoNotTellTheFolderTheyWereMadeIn() {
    for (String property : PROPERTIES) {
      assertThat(Books.below(here.resolve(property + "/answered")).values())
          .noneMatch(text -> text.contains(folder.toString()));
    }
  }

  /** At every moment that the book has typed, the counter is read as it was typed. */
  @ParameterizedTest
  @ValueSource(strings = {"house-sewer", "shop-roof-drain", "wash-down-pit"})
  void theCounterOfEveryFilmIsReadAsItsBookHasIt(String property) throws IOException {
    Path written = here.resolve(property).resolve("field-book.yaml");
    FieldBook book = FieldBookReader.read(written).book();
    Visit visit = Objects.requireNonNull(book).visits().getLast();
    for (Papers.Media medium : visit.papers().media()) {
      List<Pass.Anchor> anchors =
          visit.passes().stream()
              .flatMap(pass -> pass.anchors().stream())
              .filter(anchor -> anchor.media().equals(medium.label()))
              .toList();
      Said read = Said.by("counter", written.resolveSibling(medium.file()), "--csv");
      assertThat(read.code()).isEqualTo(ExitCode.DONE);
      List<String[]> rows = read.out().lines().skip(1).map(row -> row.split(",", -1)).toList();
      assertThat(rows.stream().filter(row -> row[3].equals("read")).count())
          .as(medium.file())
          .isGreaterThan((long) (0.95 * rows.size()));
      for (Pass.Anchor anchor : anchors) {
        String[] row =
            rows.stream()
                .filter(one -> Double.parseDouble(one[0]) >= anchor.seconds() - 1e-6)
                .findFirst()
                .orElseThrow();
        // Half of the coarsest last place there is, a tenth of a metre.
        assertThat(Double.parseDouble(row[1]))
            .as(medium.file() + " at " + anchor.seconds())
            .isCloseTo(anchor.counter().value(), within(0.051));
      }
    }
  }

  /** A crack noted by a moment of a recording beside which nothing was typed: 6.00 ft in. */
  @Test
  void whatWasNotedByAMomentAloneIsPlacedByTheCounterOnTheScreen() throws IOException {
    Path written = here.resolve("shop-roof-drain/field-book.yaml");
    assertThat(Files.readString(written)).contains("moment: {media: M2").doesNotContain("# film");
    Job.Outcome outcome = Job.answerWithoutFootage(written, Job.Settings.USUAL);
    assertThat(outcome).isInstanceOf(Job.Outcome.Answered.class);
    Handout handout = ((Job.Outcome.Answered) outcome).handout();

    assertThat(handout.complaints()).isEmpty();
    var crack =
        handout.line().findings().stream()
            .filter(placed -> placed.finding().label().equals("F7"))
            .findFirst()
            .orElseThrow();
    assertThat(crack.from().reach()).isEqualTo("R3");
    assertThat(crack.from().distance()).isCloseTo(6.00 * 0.3048, within(2 * crack.sd()));
    try (Stream<Path> stills = Files.list(here.resolve("shop-roof-drain/answered/stills"))) {
      assertThat(stills).anyMatch(still -> still.toString().contains("-F7-"));
    }
  }

  @Test
  void leavesAnotherBookAsItIs() throws IOException {
    Path other = folder.resolve("other");
    Path book = other.resolve("shop-roof-drain/field-book.yaml");
    Files.createDirectories(book.resolveSibling("."));
    Files.writeString(book, "daylight-book: 1\n");

    Said refused = demo(other);

    assertThat(refused.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(refused.err()).contains("another field book");
    assertThat(book).hasContent("daylight-book: 1\n");
    assertThat(book.resolveSibling("answered")).doesNotExist();
  }

  @Test
  void isNotWrittenWhereAFileStands() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "mine");
    Said refused = demo(file);
    assertThat(refused.code()).isEqualTo(ExitCode.NOT_WRITTEN);
    assertThat(refused.err()).startsWith("daylight: " + file);
    assertThat(file).hasContent("mine");
  }

  private static SortedMap<String, Path> below(Path top) throws IOException {
    SortedMap<String, Path> found = new TreeMap<>();
    try (Stream<Path> walk = Files.walk(top)) {
      walk.filter(Files::isRegularFile)
          .forEach(file -> found.put(top.relativize(file).toString().replace('\\', '/'), file));
    }
    return found;
  }
}
