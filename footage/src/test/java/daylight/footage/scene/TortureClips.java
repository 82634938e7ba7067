package daylight.footage.scene;

import static daylight.footage.Make.H264_MP4;
import static daylight.footage.Make.MJPEG_AVI;
import static daylight.footage.Make.MPEG2_MPG;
import static daylight.footage.Make.MPEG4_AVI;

import daylight.footage.Make;
import daylight.footage.scene.Torture.Clip;
import daylight.footage.scene.Torture.Look;
import java.util.List;

/** The clips that the reader of counters is tried on. */
final class TortureClips {
  /** Rest, push, rest, push. */
  private static final Motions PUSH =
      new Motions(new double[][] {{0, 0}, {1, 0}, {6, 2.1}, {7.5, 2.1}, {12, 4.4}});

  /** Out and back again. */
  private static final Motions BACK =
      new Motions(new double[][] {{0, 2.6}, {4, 4.1}, {5, 4.1}, {9, 2.8}, {12, 3.5}});

  /** Zeroed on the way. */
  private static final Motions ZEROED =
      new Motions(new double[][] {{0, 5.2}, {4, 6.9}, {5.5, 6.9}, {5.5, 0}, {6.5, 0}, {12, 2.6}});

  private static final CounterFormat FT = CounterFormat.feet(1, 1, " ft");
  private static final CounterFormat FT3 = CounterFormat.feet(1, 3, " FT");
  private static final CounterFormat M2 = CounterFormat.metres(2, 2, " m");
  private static final CounterFormat M1 = CounterFormat.metres(1, 1, "m");
  private static final CounterFormat INCHES = CounterFormat.feetInches(2);
  private static final CounterFormat SIGNED = CounterFormat.feet(1, 4, "").withSign();
  private static final CounterFormat WHOLE = CounterFormat.feet(0, 3, " FT");

  private TortureClips() {}

  private static Clip small(
      String name, Make make, CounterFormat format, Look look, Motions way, String... tricks) {
    return new Clip(name, make, 640, 480, 25, 3, format, look, way, List.of(tricks));
  }

  private static Clip sized(
      String name, int w, int h, CounterFormat format, Look look, Motions way, String... tricks) {
    return new Clip(name, H264_MP4, w, h, 25, 3, format, look, way, List.of(tricks));
  }

  private static Look white(String face, int tall, double x, double y) {
    return new Look(face, tall, 0xF4F4F4, 1, 1, x, y);
  }

  private static Look plain(String face, int tall, int colour, double ink, double x, double y) {
    return new Look(face, tall, colour, ink, 0, x, y);
  }

  private static Look rimmed(String face, int tall, int colour, double x, double y) {
    return new Look(face, tall, colour, 1, 1, x, y);
  }

  static List<Clip> all() {
    return List.of(
        small("matrix-ft", H264_MP4, FT, white("MATRIX", 21, 0.1, 0.95), PUSH, "clock", "place"),
        small("segments-ft3", MPEG4_AVI, FT3, white("SEGMENTS", 26, 0.9, 0.95), BACK, "clock"),
        small("plain-m2", MPEG2_MPG, M2, white("PLAIN", 22, 0.5, 0.95), ZEROED, "time", "battery"),
        small("dots-inches", MJPEG_AVI, INCHES, white("DOTS", 21, 0.05, 0.9), PUSH, "place"),
        small("smooth-signed", H264_MP4, SIGNED, white("SMOOTH", 21, 0.1, 0.1), ZEROED, "gps"),
        small("thin-m1", H264_MP4, M1, white("THIN", 24, 0.1, 0.95), BACK, "clock"),
        small("leaning-ft", MPEG4_AVI, FT, white("LEANING", 24, 0.9, 0.9), PUSH, "hertz"),
        small(
            "bold-yellow", H264_MP4, FT, plain("BOLD", 26, 0xF0E020, 1, 0.1, 0.95), PUSH, "clock"),
        small(
            "slashed-green",
            H264_MP4,
            FT3,
            plain("MATRIX_SLASHED", 21, 0x40F060, 1, 0.1, 0.9),
            BACK),
        small("faint", H264_MP4, M2, plain("PLAIN", 24, 0xFFFFFF, 0.55, 0.1, 0.95), PUSH, "clock"),
        small("plex-ft", H264_MP4, FT, white("ibm-plex-mono", 22, 0.1, 0.95), PUSH, "clock"),
        small("space-m2", MPEG4_AVI, M2, white("space-mono", 22, 0.9, 0.95), BACK, "time"),
        small("oxanium-m1", H264_MP4, M1, white("oxanium", 24, 0.1, 0.95), ZEROED, "clock"),
        small("quantico-ft3", MPEG2_MPG, FT3, white("quantico", 24, 0.1, 0.9), PUSH, "rec"),
        small("pixelify-ft", H264_MP4, FT, white("pixelify", 24, 0.1, 0.9), BACK, "clock"),
        small("cutive-whole", H264_MP4, WHOLE, white("cutive", 26, 0.1, 0.95), PUSH, "clock"),
        small("b612-glare", H264_MP4, FT, white("b612", 24, 0.3, 0.9), PUSH, "glare", "clock"),
        small("plain-glare", H264_MP4, M2, white("PLAIN", 24, 0.3, 0.9), BACK, "glare"),
        small(
            "murk-share", MPEG4_AVI, FT, white("share-tech", 24, 0.1, 0.95), PUSH, "murk", "time"),
        small(
            "sometimes-m2", H264_MP4, M2, white("ibm-plex-mono", 22, 0.1, 0.9), PUSH, "sometimes"),
        small("uneven-ft", H264_MP4, FT, white("space-mono", 22, 0.1, 0.9), ZEROED, "uneven"),
        sized("hd-plex", 1280, 720, FT, white("ibm-plex-mono", 34, 0.05, 0.95), PUSH, "clock"),
        sized("full-oxanium", 1920, 1080, M2, white("oxanium", 44, 0.9, 0.95), PUSH, "clock"),
        small("as-bright", H264_MP4, FT, rimmed("SMOOTH", 22, 0x00B4B4, 0.9, 0.1), BACK, "clock"),
        small("red", H264_MP4, FT, plain("share-tech", 26, 0xFF5040, 1, 0.1, 0.95), PUSH),
        small(
            "none-clock",
            H264_MP4,
            FT,
            white("ibm-plex-mono", 22, 0.1, 0.95),
            PUSH,
            "none",
            "clock",
            "battery"),
        small(
            "none-frames",
            H264_MP4,
            FT,
            white("space-mono", 22, 0.1, 0.95),
            PUSH,
            "none",
            "frames",
            "gps"),
        small(
            "none-time",
            MPEG4_AVI,
            FT,
            white("SEGMENTS", 22, 0.1, 0.95),
            PUSH,
            "none",
            "time",
            "hertz"),
        small("none-at-all", H264_MP4, FT, white("PLAIN", 22, 0.1, 0.95), PUSH, "none"));
  }
}
