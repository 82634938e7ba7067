package daylight.app;

import daylight.footage.Make;
import daylight.footage.Raster;
import daylight.footage.Rate;
import daylight.footage.codec.Film;
import daylight.footage.scene.Burner;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Motion;
import daylight.footage.scene.Typeface;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * An invented push of twenty seconds with a counter in feet burned in, and what is true of it: two
 * seconds at the entry, out to 6 ft, three seconds of rest, on to 9 ft, and back to 3 ft.
 */
public final class CountedFilm {
  /** Frames a second. */
  public static final int RATE = 10;

  /** How many frames. */
  public static final int FRAMES = 200;

  private static final double FOOT = 0.3048;
  private static final int WIDTH = 320;
  private static final int HEIGHT = 240;
  private static final CounterFormat FORMAT = CounterFormat.feet(1, 1, " ft");
  private static final Motion MOTION =
      new Motion(
          List.of(anchor(0, 0), anchor(2, 0), anchor(8, 6), anchor(11, 6), anchor(16, 9), end()));

  private static final Map<Make, byte[]> MADE = new ConcurrentHashMap<>();

  private CountedFilm() {}

  /** Where the camera is then. */
  public static Motion.Anchor anchor(double seconds, double feet) {
    return new Motion.Anchor(seconds, feet * FOOT);
  }

  private static Motion.Anchor end() {
    return anchor(20, 3);
  }

  /** What the counter shows on a frame. */
  public static String shown(int frame) {
    return FORMAT.text(MOTION.readingAt((double) frame / RATE));
  }

  /** Writes it; each make is made once. */
  public static Path write(Path file, Make make) throws IOException {
    byte[] made = MADE.get(make);
    if (made == null) {
      made = Files.readAllBytes(film(file, make));
      MADE.put(make, made);
    }
    return Files.write(file, made);
  }

  /** The same in H.264 with voices, and a place, a day and a device in its tags. */
  public static Path withVoices(Path file) throws IOException {
    Path plain = write(file.resolveSibling("plain.mp4"), Make.H264_MP4);
    Ffprobe.ffmpeg(
        "-i",
        plain.toString(),
        "-f",
        "lavfi",
        "-i",
        "sine=duration=20",
        "-map",
        "0:v",
        "-map",
        "1:a",
        "-c:v",
        "copy",
        "-c:a",
        "aac",
        "-metadata",
        "location=+59.0000+018.0000/",
        "-metadata",
        "creation_time=2026-04-18T10:02:37Z",
        "-metadata",
        "comment=Invented Camera 7",
        file.toString());
    return file;
  }

  private static Path film(Path file, Make make) throws IOException {
    return write(file, make, MOTION, FRAMES, new Burned(new Lettering.Place(0, 1), FORMAT, 0, 1));
  }

  /**
   * A figure in the picture.
   *
   * @param more metres that it shows beyond the distance
   * @param times so many times of it
   */
  public record Burned(Lettering.Place place, CounterFormat format, double more, double times) {
    String text(double metres) {
      return format.text(more + times * metres);
    }

    Burner burner() {
      return new Burner(new Lettering(Typeface.SMOOTH, 28, 0xFFFFFF, 1, 2, 0x101010, place));
    }
  }

  /** Writes another push, with figures of any kind burned in. */
  public static Path write(Path file, Make make, Motion motion, int frames, Burned... burned)
      throws IOException {
    List<Burner> burners = Arrays.stream(burned).map(Burned::burner).toList();
    Raster raster = new Raster(WIDTH, HEIGHT);
    try (Film film = Film.begin(file, make, WIDTH, HEIGHT, Rate.of(RATE))) {
      for (int frame = 0; frame < frames; frame++) {
        double in = motion.readingAt((double) frame / RATE);
        paint(raster, frame, in);
        for (int i = 0; i < burned.length; i++) {
          burners.get(i).burn(burned[i].text(in), raster);
        }
        film.add(raster);
      }
      film.finish();
    }
    return file;
  }

  /** Rings that come nearer as the camera goes in, with a grain. */
  private static void paint(Raster raster, int frame, double in) {
    int[] pixels = raster.pixels();
    long chance = 1L + frame;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double away = StrictMath.hypot(x - WIDTH / 2.0, y - HEIGHT / 2.0);
        chance = chance * 6364136223846793005L + 1442695040888963407L;
        int grain = (int) (chance >>> 60) - 8;
        double ring = StrictMath.sin(30 * in + 900 / (away + 12));
        int grey = Math.clamp((int) (90 + 40 * ring + away / 4) + grain, 16, 200);
        pixels[y * WIDTH + x] = grey << 16 | grey << 8 | grey;
      }
    }
  }
}
