package daylight.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ReportTest {

  @Test
  void theSameHandoutGivesTheSameBytes() throws IOException {
    Map<String, byte[]> once = Report.files(Example.usual());
    Map<String, byte[]> again = Report.files(Example.usual());

    assertThat(once.keySet()).isEqualTo(again.keySet());
    once.forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(again.get(name)));
    String out = System.getProperty("report.out");
    if (out != null) {
      for (var file : once.entrySet()) {
        Files.write(Path.of(out, file.getKey()), file.getValue());
      }
    }
  }
}
