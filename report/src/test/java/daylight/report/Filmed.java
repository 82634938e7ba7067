package daylight.report;

import daylight.line.course.PlacedFinding;
import daylight.report.draw.Captions;
import daylight.report.draw.Subject;
import daylight.report.page.Edition;
import daylight.report.page.OwnersReport;
import daylight.report.page.Paper;
import daylight.report.shots.Picture;
import daylight.report.shots.Reel;
import daylight.report.shots.Shots;
import daylight.report.shots.Still;
import daylight.report.words.Words;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/** The same properties with pictures, which show nothing but grain. */
public final class Filmed {
  private Filmed() {}

  /** With a small picture of every finding of the visit, or without any. */
  public static Handout on(Paper paper, Handout handout, boolean filmed) {
    return filmed ? with(paper, handout, 64, 48) : with(paper, handout, Shots.NONE);
  }

  /** With a picture of so many pixels of every finding. */
  public static Handout with(Paper paper, Handout handout, int width, int height) {
    List<Still> stills = new ArrayList<>();
    for (PlacedFinding placed : Captions.findings(subject(handout))) {
      String label = placed.finding().label();
      Picture picture = new Picture(width, height, grain(stills.size(), width, height));
      stills.add(new Still("stills/" + label + ".jpg", label, "V1", 31.5 * stills.size(), picture));
    }
    List<Reel> reels =
        List.of(
            new Reel("V1", "footage/push.mp4", "P1", 754.2, 640, 480, "H.264", true),
            new Reel("V2", "footage/second push.mp4", null, 3754.2, 704, 576, "MPEG-2", false));
    return with(paper, handout, new Shots(reels, stills));
  }

  /** The owner's report of a handout. */
  public static OwnersReport report(Handout handout) {
    return OwnersReport.of(subject(handout));
  }

  /** The same for paper. */
  public static Edition edition(Handout handout) {
    return report(handout).edition();
  }

  private static Subject subject(Handout handout) {
    return new Subject(
        handout.book(),
        handout.line(),
        handout.answers(),
        handout.rules(),
        handout.shots(),
        handout.complaints(),
        Words.of(handout.language(), handout.shown()));
  }

  private static Handout with(Paper paper, Handout handout, Shots shots) {
    return new Handout(
        handout.book(),
        handout.line(),
        handout.answers(),
        handout.rules(),
        shots,
        handout.complaints(),
        handout.language(),
        handout.shown(),
        paper);
  }

  private static byte[] grain(int seed, int width, int height) {
    SplittableRandom random = new SplittableRandom(seed);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        image.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(image, "jpg", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
