package daylight.report.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScriptTest {
  private static String joined(String first, String second) {
    Map<String, String> modules = Map.of("first.js", first, "second.js", second);
    return Script.of("first.js", name -> Objects.requireNonNull(modules.get(name)));
  }

  @Test
  void whatIsImportedComesFirst() {
    assertThat(
            joined(
                "// Says it.\nimport { told } from './second.js';\n\nsay(told);\n",
                "export const told = 'it';\n"))
        .isEqualTo("const told = 'it';\n// Says it.\n\nsay(told);\n");
  }

  @Test
  void whatIsImportedTwiceStandsOnce() {
    String second = "export class A {}\nexport function b() {}\n";
    assertThat(
            joined(
                "import { A } from './second.js';\nimport { b } from './second.js';\nb(A);\n",
                second))
        .isEqualTo("class A {}\nfunction b() {}\nb(A);\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "import told from './second.js';",
        "import * as all from './second.js';",
        "import { told as said } from './second.js';",
        "import { other } from './second.js';",
        "export default told;",
        "export { told };",
        "import { told } from './second.js';\nconst told = 1;",
        "import { told } from './second.js';\nfunction told() {}",
        "const end = '</script>';",
        "const end = a[b[0]]>1;",
      })
  void whatCannotBeOneScriptIsRefused(String first) {
    assertThatThrownBy(() -> joined(first, "export const told = 'it';\n"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("first.js");
  }

  @Test
  void ourModulesAreOneScript() {
    String script = CursorPanel.script();

    assertThat(script)
        .contains("class Table {", "class View {", "class Cursor {")
        .doesNotContainPattern("(?m)^(import|export)\\b");
    assertThat(script.indexOf("class Table")).isLessThan(script.indexOf("class Cursor"));
    assertThat(CursorPanel.script()).isEqualTo(script);
  }
}
