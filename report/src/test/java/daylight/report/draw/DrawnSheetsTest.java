package daylight.report.draw;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.report.Dense;
import daylight.report.Example;
import daylight.report.markup.Tag;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sheets on which a cursor moves are the very sheets that are printed. */
class DrawnSheetsTest {
  private static List<String> plain(List<Tag> sheets) {
    return sheets.stream().map(Tag::write).toList();
  }

  private static List<String> drawn(List<Drawn> sheets) {
    return plain(sheets.stream().map(Drawn::sheet).toList());
  }

  @Test
  void theyAreTheSame() {
    for (Subject subject : List.of(Example.usual().subject(), Dense.handout(3).subject())) {
      assertThat(drawn(PlanDrawing.drawnSheets(subject)))
          .isEqualTo(plain(PlanDrawing.sheets(subject)));
      assertThat(drawn(ProfileDrawing.drawnSheets(subject)))
          .isEqualTo(plain(ProfileDrawing.sheets(subject)));
      assertThat(drawn(StripDrawing.drawnSheets(subject)))
          .isEqualTo(plain(StripDrawing.sheets(subject)));
    }
  }
}
