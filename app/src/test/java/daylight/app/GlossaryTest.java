package daylight.app;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The glossary names types that exist. */
class GlossaryTest {
  private static final Pattern ROW = Pattern.compile("(?m)^\\|[^|]*\\| `(\\w+)` \\|");

  @Test
  void everyTypeOfTheGlossaryExists() throws IOException {
    Set<String> types =
        new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("daylight.line", "daylight.archive")
                .stream()
                .map(JavaClass::getSimpleName)
                .collect(Collectors.toSet());
    List<String> named =
        ROW.matcher(Files.readString(SourceTree.ofThisProject().file("GLOSSARY.md")))
            .results()
            .map(row -> row.group(1))
            .toList();

    assertThat(named).hasSizeGreaterThan(20);
    assertThat(types).containsAll(named);
  }
}
