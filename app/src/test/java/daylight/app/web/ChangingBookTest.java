package daylight.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import daylight.app.Job;
import daylight.footage.Make;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A page is as its files are when it is asked for. */
class ChangingBookTest {
  @TempDir private Path folder = Path.of("");

  private static Workspace.Running serve(Path... books) {
    return Workspace.serve(
        java.util.Arrays.stream(books).map(book -> new Opened(book, Job.Settings.USUAL)).toList(),
        0,
        false);
  }

  @Test
  void onePropertyAloneIsShownAtOnce() {
    Path book = Filmed.unfilmed(folder.resolve("shop"), "media: []");
    try (Workspace.Running running = serve(folder.resolve("shop"))) {
      HttpResponse<byte[]> reply = Asked.get(running, "/");

      assertThat(reply.statusCode()).isEqualTo(302);
      assertThat(Asked.header(reply, "Location")).endsWith("/property/shop/");
      assertThat(book).exists();
    }
  }

  @Test
  void booksOfOneNameHaveAddressesOfTheirOwn() {
    Path one = Filmed.unfilmed(folder.resolve("a/shop"), "media: []");
    Path other = Filmed.unfilmed(folder.resolve("b/shop"), "media: []");
    try (Workspace.Running running = serve(one, other)) {
      assertThat(Asked.text(Asked.get(running, "/")))
          .contains("/property/shop/", "/property/shop-2/");
      assertThat(Asked.get(running, "/property/shop-2/").statusCode()).isEqualTo(200);
    }
  }

  @Test
  void aBookThatChangesIsAnsweredAnew() throws IOException {
    Path book = Filmed.unfilmed(folder.resolve("shop"), "media: []");
    String text = Files.readString(book);
    try (Workspace.Running running = serve(book)) {
      assertThat(page(running)).contains("<h1>Corner shop");

      Files.writeString(book, text.replace("name: Corner shop", "name: Second shop"));
      assertThat(page(running)).contains("<h1>Second shop");

      Files.writeString(book, text.replace("name: Corner shop", "nome: Corner shop"));
      assertThat(page(running)).contains("must be mended").contains("nome");

      Files.delete(book);
      assertThat(page(running)).contains("there is no such file");

      Files.writeString(book, text);
      assertThat(page(running)).contains("<h1>Corner shop");
    }
  }

  @Test
  void aBookThatStaysIsAnsweredOnce() {
    Path book = Filmed.unfilmed(folder.resolve("shop"), "media: []");
    Property property = Filmed.property("shop", book);

    assertThat(property.read()).isSameAs(property.read());
  }

  /** The reader refuses such a link; this one is laid after the book was read. */
  @Test
  void aRecordingThatALinkLeadsElsewhereIsNotShown() throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.mp4"), "not of this book");
    Path shop = folder.resolve("shop");
    Path book =
        Filmed.unfilmed(shop, "media: [{label: M1, kind: footage, file: film.mp4, pass: P1}]");
    Property property = Filmed.property("shop", book);
    Reading.Answered read = (Reading.Answered) property.read();
    Files.createSymbolicLink(shop.resolve("film.mp4"), secret);

    assertThat(read.media()).hasSize(1);
    assertThat(Recording.of(property, read)).isEmpty();
    Files.delete(shop.resolve("film.mp4"));
    Files.copy(secret, shop.resolve("film.mp4"));
    assertThat(Recording.of(property, read)).hasSize(1);
  }

  @Test
  void aRecordingThatAppearsIsSeen() throws IOException {
    Path shop = folder.resolve("shop");
    Path book =
        Filmed.unfilmed(shop, "media: [{label: M1, kind: footage, file: film.mp4, pass: P1}]");
    try (Workspace.Running running = serve(book)) {
      assertThat(page(running)).contains("is not there").doesNotContain("<video");

      Filmed.record(shop.resolve("film.mp4"), Make.H264_MP4);
      assertThat(page(running)).doesNotContain("is not there").contains("<video");

      Files.write(shop.resolve("film.mp4"), new byte[] {0});
      assertThat(page(running)).contains("not a video").doesNotContain("<video");
    }
  }

  /** The page, as soon as it no longer says that footage is being looked at. */
  private static String page(Workspace.Running running) {
    HttpResponse<byte[]> reply = Asked.get(running, "/property/shop/");
    for (int i = 0; i < 60 && reply.statusCode() == 202; i++) {
      reply = Asked.get(running, "/property/shop/");
    }
    return Asked.text(reply);
  }
}
