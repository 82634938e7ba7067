package daylight.report.paper;

import com.openhtmltopdf.extend.FSStream;
import com.openhtmltopdf.extend.FSStreamFactory;
import daylight.report.page.Edition;
import daylight.report.shots.Photo;
import daylight.report.shots.Picture;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Gives the page setter the pictures that a page names: hundreds of them would else lie as text in
 * the page, in what was read of it, and in what was made of that.
 */
final class Beside implements FSStreamFactory {
  private final Map<String, Picture> pictures = new HashMap<>();

  Beside(Edition edition) {
    Shots shots = edition.subject().shots();
    shots.stills().stream().map(Still::picture).forEach(this::put);
    shots.photos().stream().map(Photo::picture).forEach(this::put);
    Picture logo = edition.sender().logo();
    if (logo != null) {
      put(logo);
    }
  }

  private void put(Picture picture) {
    pictures.put(picture.beside(), picture);
  }

  @Override
  public FSStream getUrl(String address) {
    Picture picture = Objects.requireNonNull(pictures.get(address), address);
    return new FSStream() {
      @Override
      public InputStream getStream() {
        return picture.open();
      }

      @Override
      public Reader getReader() {
        return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
      }
    };
  }
}
