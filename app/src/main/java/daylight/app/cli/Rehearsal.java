package daylight.app.cli;

import daylight.app.field.FieldPages;
import daylight.app.web.Workspace;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.footage.scene.Burner;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Typeface;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * A run of what users run, on next to nothing: the launcher does it once after building and lets
 * the Java machine keep what it loaded and learnt, so that every later start is quicker.
 */
final class Rehearsal {
  private static final int SECONDS = 8;
  private static final int RATE = 10;
  private static final int WIDTH = 320;
  private static final int HEIGHT = 240;

  private Rehearsal() {}

  /**
   * Runs it.
   *
   * @param words a folder of its own to write into, and the file of a field book; without a book
   *     only what is run on recordings by themselves, which starts the quicker for it: everything
   *     learnt is brought at every start
   */
  public static void main(String[] words) throws IOException {
    Path folder = Path.of(words[0]);
    String film = film(folder.resolve("film.mp4")).toString();
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    int worst = Main.run(nowhere, nowhere, "counter", "--csv", film);
    if (words.length > 1) {
      String answered = folder.resolve("answered").toString();
      worst = Math.max(worst, Main.run(nowhere, nowhere, "leaving", words[1]));
      worst = Math.max(worst, Main.run(nowhere, nowhere, "answer", words[1], "-o", answered));
      serve(folder.resolve("archive"));
    }
    System.exit(worst > ExitCode.SOMETHING_OPEN ? worst : ExitCode.DONE);
  }

  /** The pages of an archive are served, and the first of them is asked for. */
  private static void serve(Path folder) throws IOException {
    if (!(Archive.open(folder) instanceof ArchiveOpening.Opened(Archive archive))) {
      return;
    }
    try (Workspace.Running running =
            Workspace.serve(List.of(), 0, false, FieldPages.of(archive)::addTo);
        InputStream page = running.address().toURL().openStream()) {
      page.transferTo(OutputStream.nullOutputStream());
    } finally {
      archive.close();
    }
  }

  /** A counter that turns before a grey that gets lighter. */
  private static Path film(Path target) throws IOException {
    CounterFormat format = CounterFormat.feet(1, 1, " ft");
    Burner burner =
        new Burner(
            new Lettering(
                Typeface.SMOOTH, 28, 0xFFFFFF, 1, 2, 0x101010, new Lettering.Place(0.05, 0.95)));
    Raster raster = new Raster(WIDTH, HEIGHT);
    try (Film film = Film.begin(target, Make.H264_MP4, WIDTH, HEIGHT, Rate.of(RATE))) {
      for (int frame = 0; frame < SECONDS * RATE; frame++) {
        Arrays.fill(raster.pixels(), (60 + frame) * 0x010101);
        burner.burn(format.text(3 + 0.1 * frame / RATE), raster);
        film.add(raster);
      }
      film.finish();
    }
    return target;
  }
}
