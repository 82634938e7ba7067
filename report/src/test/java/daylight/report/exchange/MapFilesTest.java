package daylight.report.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import daylight.line.measure.Shown;
import daylight.report.data.LineFile;
import daylight.report.draw.Subject;
import daylight.report.draw.Typed;
import daylight.report.draw.Yards;
import daylight.report.map.Atlas;
import daylight.report.map.Field;
import daylight.report.map.Layer;
import daylight.report.map.Row;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What is handed over for maps, read by GDAL, PROJ, Apache POI and Commons CSV. Reference: OGC
 * 12-128r, OGC 07-147r2, RFC 4180, RFC 7946 as far as these programs keep them.
 */
class MapFilesTest {
  private static final String HOSTILE = "=1+1 \"quoted\", <b>&amp;</b> _x0041_ été 50 %% ^ \\ 🚰";

  @TempDir private Path folder = Path.of("");

  static Stream<Path> corpus() throws IOException {
    try (Stream<Path> books = Files.list(Path.of("..", "corpus"))) {
      return books.filter(book -> book.toString().endsWith(".yaml")).sorted().toList().stream();
    }
  }

  private SortedMap<String, byte[]> written(Subject subject) throws IOException {
    SortedMap<String, byte[]> files = MapFiles.of(subject);
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(Objects.requireNonNull(path.getParent()));
      Files.write(path, file.getValue());
    }
    return files;
  }

  private Path map(String name) {
    return folder.resolve("maps").resolve(name);
  }

  /** Every book of the corpus, lines of which nobody knows where they run among them. */
  @ParameterizedTest
  @MethodSource("corpus")
  void gdalReadsEveryRowWithoutAWarning(Path book) throws IOException {
    Subject subject = Typed.of(Files.readString(book));
    Atlas atlas = Atlas.of(subject);
    boolean kml = written(subject).containsKey("maps/site.kml");
    // A program started for every layer of every book would take half an hour: one for a source.
    String packed = all("site.gpkg");
    String tables = all("csv");
    String earth = kml ? all("site.kml") : "";
    String drawn = all("site.dxf");

    assertThat(kml).isEqualTo(atlas.earth().isPresent());
    for (Layer layer : Layer.values()) {
      int rows = atlas.of(layer).size();
      assertThat(packed).as(layer.id()).contains("Layer name: " + layer.id() + "\n");
      assertThat(tables).as(layer.id()).contains("Layer name: " + layer.id() + "\n");
      assertThat(count(packed, layer)).as("package: %s", layer).isEqualTo(rows);
      assertThat(count(tables, layer)).as("table: %s", layer).isEqualTo(rows);
      if (kml) {
        assertThat(count(earth, layer)).as("on earth: %s", layer).isEqualTo(rows);
      }
    }
    long placed = atlas.of(Layer.STATION).size();
    assertThat(drawn.split("Layer \\(String\\) = STATION\n", -1)).hasSize((int) placed + 1);
    assertThat(packed + drawn).doesNotContainIgnoringCase("nan ").doesNotContain("inf ");
  }

  private String all(String source) {
    return Outside.run("", "ogrinfo", "-ro", "-al", map(source).toString());
  }

  private static int count(String told, Layer layer) {
    return told.split("OGRFeature\\(" + layer.id() + "\\):", -1).length - 1;
  }

  @Test
  void theSameBookGivesTheSameBytes() {
    SortedMap<String, byte[]> once = MapFiles.of(Yards.ticketed());
    SortedMap<String, byte[]> again = MapFiles.of(Yards.ticketed());

    assertThat(once.keySet()).isEqualTo(again.keySet()).hasSize(16);
    once.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(again.get(name)));
  }

  /** The table, the dictionary and every format have the same fields in the same order. */
  @Test
  void noFormatHasAFieldThatAnotherLacks() throws IOException {
    written(tied(-80.5, 43));
    Atlas atlas = Atlas.of(tied(-80.5, 43));
    String page = Files.readString(map("dictionary.html"));
    String kml = Files.readString(map("site.kml"));
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(map("site.xlsx")))) {
      for (Layer layer : Layer.values()) {
        List<String> names = layer.fields().stream().map(Field::name).toList();
        String csv = Files.readString(map("csv/" + layer.id() + ".csv"));
        List<String> heads = List.of(csv.lines().findFirst().orElseThrow().split(",", -1));
        List<String> sheet = new ArrayList<>();
        book.getSheet(layer.id()).getRow(0).forEach(cell -> sheet.add(cell.getStringCellValue()));
        String packed =
            Outside.run("", "ogrinfo", "-ro", "-so", map("site.gpkg").toString(), layer.id());
        int begin = kml.indexOf("<Schema name=\"" + layer.id() + "\"");
        assertThat(begin).as(layer.id()).isNotNegative();
        String schema = kml.substring(begin, kml.indexOf("</Schema>", begin));

        assertThat(heads.subList(0, names.size())).isEqualTo(names);
        assertThat(heads.size() - names.size()).isEqualTo(layer.form() == Layer.Form.NONE ? 0 : 1);
        assertThat(sheet).isEqualTo(names);
        assertThat(packed.lines().filter(line -> line.matches("\\w+: (String|Real|Int|Date).*")))
            .extracting(line -> line.replaceAll(":.*", ""))
            .isEqualTo(names);
        assertThat(schema.split("SimpleField type", -1)).hasSize(names.size() + 1);
        for (Field field : layer.fields()) {
          assertThat(schema).contains("name=\"" + field.name() + "\"");
          assertThat(page).contains("<th scope=\"row\">" + field.name() + "</th>");
          assertThat(atlas.meaning(layer, field)).isNotBlank();
        }
      }
      assertThat(book.getSheet("dictionary").getLastRowNum())
          .isEqualTo(Stream.of(Layer.values()).mapToInt(one -> one.fields().size()).sum());
    }
  }

  /** A value that GDAL reads is the value of the table, in each of three formats. */
  @Test
  void valuesArriveAsTheyAre() throws IOException {
    Subject subject = tied(-80.5, 43);
    written(subject);
    for (Layer layer : List.of(Layer.STATION, Layer.LOCATE, Layer.DIG_BOX, Layer.REACH)) {
      List<Row> rows = Atlas.of(subject).of(layer);
      assertThat(rows).isNotEmpty();
      for (String file : List.of("site.gpkg", "site.kml")) {
        List<JsonNode> read = Outside.features(map(file), layer.id());
        for (int i = 0; i < rows.size(); i++) {
          for (Field field : layer.fields()) {
            JsonNode value = read.get(i).at("/properties/" + field.name());
            Object own = rows.get(i).get(field);
            switch (own) {
              case null -> assertThat(value.isNull() || value.isMissingNode()).isTrue();
              case Double number -> assertThat(value.asDouble()).isEqualTo(number);
              case Boolean yes -> assertThat(value.asBoolean()).isEqualTo(yes);
              case String text ->
                  assertThat(value.asText().replaceAll("\\s+", " "))
                      .isEqualTo(text.replaceAll("\\s+", " ").strip());
              default -> assertThat(value.asText().replace('/', '-')).isEqualTo(own.toString());
            }
          }
        }
      }
    }
  }

  /**
   * Both hemispheres, across the meridian of 180°, high in the north and on the equator. The fixes
   * of the book are PROJ's, and so is where the places of the files lie on the ground.
   */
  @ParameterizedTest
  @CsvSource({"-80.5,43", "151.2,-33.9", "179.99995,-16.8", "15.6,78.2", "-68.3,-54.8", "0,0"})
  void placesOnEarthAreThoseOfProjToAMillimetre(double longitude, double latitude)
      throws IOException {
    Subject subject = tied(longitude, latitude);
    written(subject);
    List<JsonNode> stations = Outside.features(map("site.gpkg"), "station");
    List<double[]> spots = new ArrayList<>();
    stations.forEach(one -> spots.add(pair(one.at("/geometry/coordinates"))));
    JsonNode zero =
        Outside.features(map("site.gpkg"), "landmark").getFirst().at("/geometry/coordinates");
    List<double[]> local = Outside.local(zero.get(0).asDouble(), zero.get(1).asDouble(), spots);
    double turn =
        StrictMath.toRadians(
            Atlas.of(subject).of(Layer.NOTICE).stream()
                .filter(row -> row.text("about").equals("grid_north"))
                .map(row -> (Double) Objects.requireNonNull(row.values().get("value")))
                .findFirst()
                .orElseThrow());

    assertThat(stations).hasSizeGreaterThan(30);
    for (int i = 0; i < local.size(); i++) {
      double x = stations.get(i).at("/properties/x").asDouble();
      double y = stations.get(i).at("/properties/y").asDouble();
      double east = StrictMath.cos(turn) * x + StrictMath.sin(turn) * y;
      double north = -StrictMath.sin(turn) * x + StrictMath.cos(turn) * y;
      assertThat(local.get(i)[0]).isCloseTo(east, within(0.001));
      assertThat(local.get(i)[1]).isCloseTo(north, within(0.001));
    }
    // The landmark B was put 25 m east of the origin by PROJ.
    JsonNode b = Outside.features(map("site.gpkg"), "landmark").get(1).at("/geometry/coordinates");
    double[] back = Outside.local(longitude, latitude, List.of(pair(b))).getFirst();
    assertThat(back[0]).isCloseTo(25, within(0.001));
    assertThat(back[1]).isCloseTo(0, within(0.001));
    // A reach that bears 30° from true north by its ends is said to.
    double heading = stations.getFirst().at("/properties/heading_true").asDouble();
    assertThat(heading).isCloseTo(30, within(5.0));
    kmlAgrees(stations);
  }

  private void kmlAgrees(List<JsonNode> stations) {
    List<JsonNode> folder = Outside.features(map("site.kml"), "station");
    for (int i = 0; i < stations.size(); i++) {
      double[] a = pair(stations.get(i).at("/geometry/coordinates"));
      double[] b = pair(folder.get(i).at("/geometry/coordinates"));
      assertThat(StrictMath.IEEEremainder(a[0] - b[0], 360)).isCloseTo(0, within(1e-9));
      assertThat(a[1]).isCloseTo(b[1], within(1e-9));
      assertThat(b[0]).isBetween(-180.0, 180.0);
    }
  }

  /** RFC 7946: positions within bounds, rings counter-clockwise (3.1.6), cut at 180° (3.1.9). */
  @ParameterizedTest
  @CsvSource({"-80.5,43,false", "179.99995,-16.8,true"})
  void geoJsonKeepsToItsStandard(double longitude, double latitude, boolean cut)
      throws IOException {
    JsonNode file = new ObjectMapper().readTree(LineFile.write(tied(longitude, latitude)));
    List<String> types = new ArrayList<>();
    for (JsonNode feature : file.get("features")) {
      JsonNode geometry = feature.get("geometry");
      types.add(geometry.path("type").asText());
      JsonNode coordinates = geometry.path("coordinates");
      if (geometry.path("type").asText().equals("Polygon")) {
        assertThat(area(coordinates.get(0))).isPositive();
      }
      if (geometry.path("type").asText().equals("MultiPolygon")) {
        coordinates.forEach(piece -> assertThat(area(piece.get(0))).isPositive());
      }
      numbers(coordinates, 180);
    }

    assertThat(types).contains("Point");
    assertThat(types.contains("MultiLineString")).isEqualTo(cut);
    assertThat(types.contains("MultiPolygon")).isEqualTo(cut);
    assertThat(types.contains("Polygon")).isTrue();
    Path path =
        Files.write(folder.resolve("line.geojson"), LineFile.write(tied(longitude, latitude)));
    assertThat(Outside.run("", "ogrinfo", "-ro", "-al", "-so", path.toString()))
        .contains("Feature Count: " + file.get("features").size());
  }

  private static void numbers(JsonNode node, double most) {
    node.forEach(
        one -> {
          if (one.isNumber()) {
            assertThat(Math.abs(one.asDouble())).isLessThanOrEqualTo(most);
          } else {
            numbers(one, most);
          }
        });
  }

  /** Twice the area of a closed ring, positive where it runs counter-clockwise. */
  private static double area(JsonNode ring) {
    double sum = 0;
    assertThat(ring.get(0)).isEqualTo(ring.get(ring.size() - 1));
    for (int i = 1; i < ring.size(); i++) {
      // Near the first corner, or rounding would be larger than the area.
      double x1 = ring.get(i - 1).get(0).asDouble() - ring.get(0).get(0).asDouble();
      double y1 = ring.get(i - 1).get(1).asDouble() - ring.get(0).get(1).asDouble();
      double x2 = ring.get(i).get(0).asDouble() - ring.get(0).get(0).asDouble();
      double y2 = ring.get(i).get(1).asDouble() - ring.get(0).get(1).asDouble();
      sum += x1 * y2 - x2 * y1;
    }
    return sum;
  }

  /** Quotes, line ends, signs of markup, letters beyond ASCII, and what begins like a formula. */
  @Test
  void whateverIsWrittenArrives() throws IOException {
    String yaml = HOSTILE.replace("\\", "\\\\").replace("\"", "\\\"") + "\\nsecond line";
    Subject subject = Typed.of(book(-80.5, 43, yaml));
    String text = HOSTILE + "\nsecond line";
    written(subject);
    List<CSVRecord> rows;
    try (var parser =
        CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .get()
            .parse(new StringReader(Files.readString(map("csv/landmark.csv"))))) {
      rows = parser.getRecords();
    }

    assertThat(
            Outside.features(map("site.gpkg"), "landmark")
                .getFirst()
                .at("/properties/what")
                .asText())
        .isEqualTo(text);
    assertThat(
            Outside.features(map("site.kml"), "landmark")
                .getFirst()
                .at("/properties/what")
                .asText())
        .isEqualTo(text);
    assertThat(rows.getFirst().get("what")).isEqualTo("'" + text);
    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(map("site.xlsx")))) {
      XSSFSheet sheet = book.getSheet("landmark");
      int column = Layer.LANDMARK.fields().indexOf(Layer.LANDMARK.find("what").orElseThrow());
      assertThat(sheet.getRow(1).getCell(column).getCellType()).isEqualTo(CellType.STRING);
      assertThat(sheet.getRow(1).getCell(column).getStringCellValue()).isEqualTo(text);
      assertThat(book.getProperties().getCoreProperties().getCreated().toInstant())
          .isEqualTo("2026-04-18T00:00:00Z");
    }
    String drawing = Files.readString(map("site.dxf"), DrawingText.CODE_PAGE);
    assertThat(drawing).contains("$DWGCODEPAGE\r\n3\r\nANSI_1252\r\n");
    assertThat(drawing).contains("what=" + DrawingText.escaped(text) + "\r\n");
    String drawn = Outside.run("", "ogrinfo", "-ro", "-al", map("site.dxf").toString());
    assertThat(drawn).contains("Text (String) = A =1+1 \"quoted\", <b>&amp;</b>").contains("été");
  }

  /** GDAL shows what entities carry of their own only as raw codes. */
  @Test
  void theDrawingHasPipeInItsHeightAndValuesWithItsEntities() throws IOException {
    Subject subject = Yards.ticketed();
    written(subject);
    String raw =
        Outside.run(
            "",
            "ogrinfo",
            "-ro",
            "-al",
            "--config",
            "DXF_INCLUDE_RAW_CODE_VALUES",
            "TRUE",
            map("site.dxf").toString());
    Row box = Atlas.of(subject).of(Layer.DIG_BOX).getFirst();

    assertThat(raw).contains("LINESTRING Z").contains("Layer (String) = SERVICE_GAS");
    assertThat(raw).contains("Unit of the drawing: meters");
    assertThat(raw).contains(box.text("ticket").substring(0, 40));
    String drawing = Files.readString(map("site.dxf"), DrawingText.CODE_PAGE);
    for (Field field : Layer.DIG_BOX.fields()) {
      if (box.get(field) != null) {
        assertThat(drawing).contains("1000\r\n" + field.name() + "=");
      }
    }
    assertThat(drawing.lines().mapToInt(String::length).max().orElse(0)).isLessThan(256);
  }

  /** Where a text begins and ends, a letter as wide as most typefaces of drawings have it. */
  private record Lettered(String text, double left, double right, double low) {
    private static final double HIGH = 0.22;

    boolean hits(Lettered other) {
      return left < other.right
          && other.left < right
          && Math.abs(low - other.low) < 1.2 * HIGH - 1e-6;
    }
  }

  /** As GDAL reads the texts of the drawing. */
  @ParameterizedTest
  @MethodSource("corpus")
  void noTextOfTheDrawingLiesOnAnother(Path book) throws IOException {
    Subject subject = Typed.of(Files.readString(book));
    written(subject);
    double unit = subject.words().shown() == Shown.METRES ? 1 : 0.3048;
    List<Lettered> texts = new ArrayList<>();
    for (JsonNode one : Outside.features(map("site.dxf"), "entities")) {
      String text = one.path("properties").path("Text").asText("");
      if (!text.isEmpty()) {
        double left = one.path("geometry").path("coordinates").get(0).asDouble() * unit;
        double low = one.path("geometry").path("coordinates").get(1).asDouble() * unit;
        texts.add(new Lettered(text, left, left + 0.8 * Lettered.HIGH * text.length(), low));
      }
    }

    assertThat(texts).isNotEmpty();
    for (int i = 0; i < texts.size(); i++) {
      for (Lettered other : texts.subList(i + 1, texts.size())) {
        assertThat(texts.get(i).hits(other)).as("%s on %s", texts.get(i), other).isFalse();
      }
    }
  }

  /** What nobody measured is nowhere a number, and is said. */
  @Test
  void aBookWithNothingLocatedGivesFilesThatSaySo() throws IOException {
    written(Typed.of(Files.readString(Path.of("..", "corpus", "S64-one-look.yaml"))));
    Subject nothing = Typed.one(", water: forward", "");
    SortedMap<String, byte[]> files = written(nothing);
    Atlas atlas = Atlas.of(nothing);

    assertThat(files).doesNotContainKey("maps/site.kml").hasSize(16);
    assertThat(atlas.of(Layer.REACH).getFirst().shape()).isNull();
    assertThat(atlas.of(Layer.REACH).getFirst().text("missing")).isNotBlank();
    assertThat(Outside.features(map("site.gpkg"), "reach").getFirst().get("geometry").isNull())
        .isTrue();
    Outside.run("", "ogrinfo", "-ro", "-al", map("site.dxf").toString());
    try (XSSFWorkbook book =
        new XSSFWorkbook(
            new ByteArrayInputStream(Objects.requireNonNull(files.get("maps/site.xlsx"))))) {
      assertThat(book.getNumberOfSheets()).isEqualTo(Layer.values().length + 1);
    }
  }

  /** The order to stop, that it is invented, and the ticket stand in every layer. */
  @Test
  void whoeverOpensOneTableAloneIsWarned() throws IOException {
    Subject subject = Typed.of(Files.readString(Path.of("..", "corpus", "S21-foreign-pipe.yaml")));
    written(subject);
    String stop = "Do not cut, do not jet, no flame.";

    for (Layer layer : Layer.values()) {
      if (!Atlas.of(subject).of(layer).isEmpty()) {
        assertThat(Files.readString(map("csv/" + layer.id() + ".csv"))).contains(stop);
      }
    }
    assertThat(Files.readString(map("site.dxf"), DrawingText.CODE_PAGE)).contains(stop);
    assertThat(Files.readString(map("dictionary.html"))).contains(stop);
    Row box = Atlas.of(Yards.without()).of(Layer.DIG_BOX).getFirst();
    assertThat(box.text("ticket")).isEqualTo("No ticket on record: do not dig.");
    assertThat(box.text("caution")).contains("Do not dig without a ticket");
    Row service = Atlas.of(Yards.without()).of(Layer.SERVICE).getFirst();
    assertThat(service.text("caution")).contains("how deep");
  }

  private static double[] pair(JsonNode coordinates) {
    return new double[] {coordinates.get(0).asDouble(), coordinates.get(1).asDouble()};
  }

  private static Subject tied(double longitude, double latitude) {
    return Typed.of(book(longitude, latitude, "nail"));
  }

  /** An invented drain of 24 m that bears 30°, every fix of which PROJ placed. */
  private static String book(double longitude, double latitude, String what) {
    double e = StrictMath.sin(StrictMath.toRadians(30));
    double n = StrictMath.cos(StrictMath.toRadians(30));
    List<String> labels = List.of("A", "B", "C1", "O1", "L1", "L2", "L3");
    List<double[]> places =
        List.of(
            new double[] {0, 0},
            new double[] {25, 0},
            new double[] {2, 3},
            new double[] {2 + 24 * e, 3 + 24 * n},
            new double[] {2 + 6 * e, 3 + 6 * n},
            new double[] {2 + 12 * e, 3 + 12 * n},
            new double[] {2 + 18 * e, 3 + 18 * n});
    List<double[]> fixes = Outside.onEarth(longitude, latitude, places);
    StringBuilder spots = new StringBuilder();
    for (int i = 0; i < 4; i++) {
      spots.append("    - {of: %s, %s}%n".formatted(labels.get(i), fix(fixes.get(i))));
    }
    StringBuilder locates = new StringBuilder();
    for (int i = 4; i < 7; i++) {
      locates.append(
          "    - {label: %s, cable: %s, %s, depth: 1.%d}%n"
              .formatted(labels.get(i), 6.35 * (i - 3) - 0.35 * (i - 4), fix(fixes.get(i)), i));
    }
    return """
    daylight-book: 1
    units: {distance: m, depth: m, bore: mm}
    site:
      name: Tied
      zone: UTC
      invented: yes
      landmarks:
        - {label: A, what: "%s", kind: other, base: yes}
        - {label: B, kind: cover, base: yes}
      nodes:
        - {label: C1, kind: access}
        - {label: O1, kind: outlet}
      reaches:
        - {label: R1, line: drain, from: C1, to: O1, water: forward, use: sanitary, material: pvc, bore: 100}
    visit:
      date: 2026-04-18
      kit: {sonde-behind-lens: 350 mm, sonde-above-invert: 25 mm}
      end: {cable: 24.2, why: outlet-reached, node: O1}
      sight: [{from: 0, to: 24.2, clarity: clear}]
      findings:
        - {label: F1, kind: crack, cable: 9, width: 3 mm}
      spots:
    """
            .formatted(what)
        + spots
        + "  locates:\n"
        + locates;
  }

  private static String fix(double[] position) {
    double within = StrictMath.IEEEremainder(position[0], 360);
    return String.format(
        Locale.ROOT, "gnss: {latitude: %.10f, longitude: %.10f, sd: 2 cm}", position[1], within);
  }
}
