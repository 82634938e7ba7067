package daylight.app;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The map of the house, and the proof that the code keeps to it. Read the two tables first. That
 * the rules can fail is shown in {@link ArchitectureRulesBiteTest}.
 */
class ArchitectureTest {
  /** Which module may know which. */
  static final Map<String, Set<String>> MODULES =
      Map.of(
          "line", Set.of(),
          "footage", Set.of("line"),
          "archive", Set.of("line"),
          "report", Set.of("line"),
          "app", Set.of("line", "footage", "archive", "report"),
          "bench", Set.of("line", "footage", "archive", "report", "app"));

  /** Which package of line may know which, in reading order. */
  static final Map<String, Set<String>> LINE =
      Map.ofEntries(
          Map.entry("measure", Set.of()),
          Map.entry("book", Set.of("measure")),
          Map.entry("counter", Set.of("measure", "book")),
          Map.entry("sonde", Set.of("measure", "book")),
          Map.entry("survey", Set.of("measure", "book")),
          Map.entry("normal", Set.of()),
          Map.entry("course", Set.of("measure", "book", "normal", "counter", "sonde", "survey")),
          Map.entry("dig", Set.of("measure", "book", "survey", "course")),
          Map.entry("fall", Set.of("measure", "book", "course")),
          Map.entry("flow", Set.of("measure", "book", "fall")),
          Map.entry("frost", Set.of("measure", "book", "course", "fall")),
          Map.entry("condition", Set.of("measure", "book", "counter", "course")),
          Map.entry(
              "cause",
              Set.of("measure", "book", "survey", "course", "fall", "condition", "proving")),
          Map.entry("urgency", Set.of("measure", "book", "survey", "course", "condition")),
          Map.entry("proving", Set.of("measure", "book", "course")),
          Map.entry("change", Set.of("measure", "book", "course", "fall", "condition")),
          Map.entry(
              "answer",
              Set.of(
                  "measure",
                  "book",
                  "counter",
                  "sonde",
                  "survey",
                  "course",
                  "dig",
                  "fall",
                  "flow",
                  "frost",
                  "condition",
                  "cause",
                  "urgency",
                  "proving",
                  "change")),
          Map.entry("trial", Set.of("measure", "book", "course", "answer")));

  /** Libraries that belong to certain rooms, by package. */
  static final List<Tenancy> LIBRARIES =
      List.of(
          Tenancy.of("java.sql..", "daylight.archive..", "daylight.report.geopackage.."),
          Tenancy.of("org.sqlite..", "daylight.archive..", "daylight.report.geopackage.."),
          Tenancy.of("org.apache.pdfbox..", "daylight.report.."),
          Tenancy.of("org.apache.fontbox..", "daylight.report.."),
          Tenancy.of("com.openhtmltopdf..", "daylight.report.."),
          Tenancy.of("org.bytedeco..", "daylight.footage.."),
          Tenancy.of("com.drew..", "daylight.footage.photo.."),
          Tenancy.of("java.awt..", "daylight.footage..", "daylight.app.."),
          Tenancy.of("org.bouncycastle..", "daylight.app.door.."),
          Tenancy.of("com.google.zxing..", "daylight.app.door.."),
          Tenancy.of("picocli..", "daylight.app..", "daylight.bench.."),
          Tenancy.of("io.javalin..", "daylight.app..", "daylight.bench.."),
          Tenancy.of("jakarta.servlet..", "daylight.app..", "daylight.bench.."),
          Tenancy.of("org.eclipse.jetty..", "daylight.app..", "daylight.bench.."));

  static final List<String> ROOMS_WITHOUT_A_NAME = List.of("util", "helper", "impl", "common");
  static final List<String> CLASSES_WITHOUT_A_NAME = List.of("Util", "Helper", "Manager", "Impl");

  private static final JavaClasses OURS =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("daylight");

  /** A library and the only packages that may use it. */
  record Tenancy(String library, List<String> tenants) {
    static Tenancy of(String library, String... tenants) {
      return new Tenancy(library, List.of(tenants));
    }

    ArchRule rule() {
      return noClasses()
          .that()
          .resideOutsideOfPackages(tenants.toArray(String[]::new))
          .should()
          .dependOnClassesThat()
          .resideInAPackage(library)
          .allowEmptyShould(true);
    }

    @Override
    public String toString() {
      return library + " only in " + String.join(", ", tenants);
    }
  }

  static List<ArchRule> purity() {
    return Purity.rules();
  }

  static ArchRule modulesKeepTheirArrows(String parent) {
    return classes().should(new Arrows(parent, MODULES));
  }

  static ArchRule packagesOfLineKeepTheirOrder(String parent) {
    return classes().should(new Arrows(parent, LINE));
  }

  static ArchRule roomsHaveNames() {
    return noClasses()
        .should()
        .resideInAnyPackage(
            ROOMS_WITHOUT_A_NAME.stream().map(name -> ".." + name + "..").toArray(String[]::new));
  }

  static ArchRule classesHaveNames() {
    return noClasses()
        .should()
        .haveNameMatching(".*(" + String.join("|", CLASSES_WITHOUT_A_NAME) + ")s?");
  }

  @Test
  void everyModuleButBenchIsSeenHere() {
    Set<String> seen = new TreeSet<>();
    OURS.forEach(one -> seen.add(one.getPackageName().split("\\.", 3)[1]));

    assertThat(seen).containsExactly("app", "archive", "footage", "line", "report");
  }

  @Test
  void modulesKeepTheirArrows() {
    modulesKeepTheirArrows("daylight").check(OURS);
  }

  @Test
  void packagesOfLineKeepTheirOrder() {
    packagesOfLineKeepTheirOrder("daylight.line").check(OURS);
  }

  @ParameterizedTest
  @MethodSource("purity")
  void theLineIsPure(ArchRule rule) {
    rule.check(OURS.that(resideInAPackage("daylight.line..")));
  }

  @ParameterizedTest
  @FieldSource("LIBRARIES")
  void librariesStayInTheirRooms(Tenancy tenancy) {
    tenancy.rule().check(OURS);
  }

  @Test
  void roomsAndClassesHaveNames() {
    roomsHaveNames().check(OURS);
    classesHaveNames().check(OURS);
  }

  @Test
  void everyPackageSaysWhatItIsAndThatNothingInItIsNull() {
    Set<String> unmarked = new TreeSet<>();
    for (JavaClass one : OURS) {
      boolean marked =
          one.getPackage()
              .tryGetPackageInfo()
              .map(info -> info.isAnnotatedWith(NullMarked.class))
              .orElse(false);
      if (!marked) {
        unmarked.add(one.getPackageName());
      }
    }

    assertThat(unmarked).isEmpty();
  }
}
