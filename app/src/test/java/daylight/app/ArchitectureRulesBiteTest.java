package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.EvaluationResult;
import daylight.app.ArchitectureTest.Tenancy;
import daylight.app.fixtures.Impure;
import daylight.app.fixtures.Pure;
import daylight.app.fixtures.helper.SundryManager;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of {@link ArchitectureTest}, held against classes that break it on purpose. */
class ArchitectureRulesBiteTest {
  private static final String FIXTURES = "daylight.app.fixtures";
  private static final JavaClasses WRONG = new ClassFileImporter().importPackages(FIXTURES);

  static Stream<Class<?>> impure() {
    return Arrays.stream(Impure.class.getDeclaredClasses());
  }

  @ParameterizedTest
  @MethodSource("impure")
  void everyImpurityIsSeen(Class<?> impure) {
    JavaClasses one = new ClassFileImporter().importClasses(impure);

    assertThat(Purity.rules())
        .anySatisfy(rule -> assertThat(rule.evaluate(one).hasViolation()).isTrue());
  }

  @Test
  void everyPurityRuleSeesAnImpurity() {
    assertThat(Purity.rules()).allSatisfy(ArchitectureRulesBiteTest::bites);
  }

  @Test
  void exactMathematicsAndStatedLanguageArePure() {
    JavaClasses pure = new ClassFileImporter().importClasses(Pure.class);

    assertThat(Purity.rules())
        .allSatisfy(rule -> assertThat(rule.evaluate(pure).hasViolation()).isFalse());
  }

  @Test
  void lineMayNotKnowFootage() {
    assertThat(complaints(ArchitectureTest.modulesKeepTheirArrows(FIXTURES)))
        .anyMatch(said -> said.startsWith("line may not know footage"));
  }

  @Test
  void sondeAndSurveyMayNotSeeEachOther() {
    assertThat(complaints(ArchitectureTest.packagesOfLineKeepTheirOrder(FIXTURES + ".line")))
        .anyMatch(said -> said.startsWith("survey may not know sonde"))
        .noneMatch(said -> said.startsWith("sonde may not know"));
  }

  @Test
  void aRoomThatNobodyDecidedOnIsRefused() {
    assertThat(complaints(ArchitectureTest.packagesOfLineKeepTheirOrder(FIXTURES + ".line")))
        .anyMatch(said -> said.endsWith("attic: not in the table"));
  }

  @Test
  void aLibraryOutsideItsRoomIsSeen() {
    bites(Tenancy.of("java.sql..", "daylight.archive..").rule());
  }

  @Test
  void roomsAndClassesWithoutANameAreSeen() {
    assertThat(SundryManager.class).isNotNull();
    bites(ArchitectureTest.roomsHaveNames());
    bites(ArchitectureTest.classesHaveNames());
  }

  private static void bites(ArchRule rule) {
    assertThat(rule.evaluate(WRONG).hasViolation()).as(rule.getDescription()).isTrue();
  }

  private static List<String> complaints(ArchRule rule) {
    EvaluationResult result = rule.evaluate(WRONG);
    return result.getFailureReport().getDetails();
  }
}
