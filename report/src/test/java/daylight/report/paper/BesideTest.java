package daylight.report.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import daylight.report.Example;
import daylight.report.Filmed;
import daylight.report.Handout;
import daylight.report.markup.Tag;
import daylight.report.page.Edition;
import daylight.report.page.OwnersReport;
import daylight.report.page.Paper;
import daylight.report.shots.Picture;
import daylight.report.shots.Still;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

/** Pictures that a page for paper only names, and one for a screen brings along. */
class BesideTest {
  private final Handout handout = Filmed.on(Paper.LETTER, Example.usual(), true);
  private final Edition edition = OwnersReport.of(handout.subject(), handout.sender()).edition();

  @Test
  void aPageForPaperNamesItsPicturesAndOneForAScreenHasThem() {
    assertThat(handout.shots().stills()).isNotEmpty();
    for (Still still : handout.shots().stills()) {
      assertThat(edition.main().naming())
          .contains(still.picture().beside())
          .doesNotContain("data:image/jpeg");
      assertThat(edition.main().write()).contains(still.picture().inPage());
    }
  }

  @Test
  void whatItNamesIsFoundWithTheSameBytesAndNothingElseIs() throws Exception {
    Beside beside = new Beside(edition);
    for (Still still : handout.shots().stills()) {
      try (InputStream in = beside.getUrl(still.picture().beside()).getStream()) {
        assertThat(in.readAllBytes()).isEqualTo(still.picture().jpeg());
      }
    }
    assertThatThrownBy(() -> beside.getUrl("picture:none")).hasMessageContaining("picture:none");
  }

  @Test
  void anotherContentHasAnotherName() {
    Picture one = new Picture(1, 1, new byte[] {1});
    Picture other = new Picture(1, 1, new byte[] {2});

    assertThat(one.beside()).isNotEqualTo(other.beside());
    assertThat(one.beside()).isEqualTo(new Picture(1, 1, new byte[] {1}).beside());
    assertThat(Tag.of("img").with("src", one).value("src")).contains(one.inPage());
  }
}
