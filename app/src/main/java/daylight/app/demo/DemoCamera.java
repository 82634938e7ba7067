package daylight.app.demo;

import daylight.footage.Make;
import daylight.footage.Rate;
import daylight.footage.scene.CameraLook;
import daylight.footage.scene.CounterFormat;
import daylight.footage.scene.Lettering;
import daylight.footage.scene.Typeface;
import java.util.List;
import java.util.Optional;

/**
 * A camera of the invented crews: what its recorder writes and how it burns its counter in. None is
 * after a camera that exists.
 *
 * @param make what the recorder writes
 * @param look what its pictures look like
 */
public record DemoCamera(Make make, CameraLook look) {
  /** Decimal feet in white with a dark border, lower left. */
  private static final DemoCamera MP4 =
      new DemoCamera(
          Make.H264_MP4,
          new CameraLook(
              640,
              480,
              new Rate(25, 2),
              1.4,
              CounterFormat.feet(1, 1, " ft"),
              new Lettering(Typeface.SMOOTH, 28, 0xFFFFFF, 1, 2, 0x101010, at(0, 1)),
              List.of(
                  caption(CameraLook.Says.PLACE, Typeface.SMOOTH, 16, 0xFFFFFF, 1, at(0, 0)),
                  caption(CameraLook.Says.CLOCK, Typeface.SMOOTH, 16, 0xFFFFFF, 1, at(1, 0)))));

  /** Feet and inches in yellow strokes, upper right. */
  private static final DemoCamera AVI =
      new DemoCamera(
          Make.MPEG4_AVI,
          new CameraLook(
              640,
              480,
              Rate.of(15),
              1.6,
              CounterFormat.feetInches(2),
              new Lettering(Typeface.PLAIN, 30, 0xFFE650, 1, 1, 0x202010, at(1, 0)),
              List.of(
                  caption(
                      CameraLook.Says.DATE_AND_CLOCK, Typeface.PLAIN, 16, 0xFFE650, 1, at(0, 1)))));

  /** Feet and inches in square dots, lower right, on a picture of a television's size. */
  private static final DemoCamera MPG =
      new DemoCamera(
          Make.MPEG2_MPG,
          new CameraLook(
              704,
              480,
              Rate.of(25),
              1.8,
              CounterFormat.feetInches(1),
              new Lettering(Typeface.MATRIX_SLASHED, 28, 0xF4F4F4, 1, 2, 0x181818, at(1, 1)),
              List.of(
                  caption(CameraLook.Says.DATE, Typeface.MATRIX, 14, 0xF4F4F4, 1, at(0, 1)),
                  caption(CameraLook.Says.PLACE, Typeface.MATRIX, 14, 0xF4F4F4, 1, at(0, 0)))));

  /** Metres in green bars, upper left. */
  private static final DemoCamera MOV =
      new DemoCamera(
          Make.MJPEG_MOV,
          new CameraLook(
              640,
              480,
              new Rate(25, 2),
              1.3,
              CounterFormat.metres(2, 2, " m"),
              new Lettering(Typeface.SEGMENTS, 32, 0x7CFF9A, 1, 1, 0x06200C, at(0, 0)),
              List.of(
                  caption(
                      CameraLook.Says.DATE_AND_CLOCK, Typeface.PLAIN, 16, 0xE8E8E8, 1, at(1, 1)))));

  /** Metres in thin strokes without a border, low in contrast, lower middle. */
  private static final DemoCamera WEBM =
      new DemoCamera(
          Make.VP8_WEBM,
          new CameraLook(
              640,
              480,
              new Rate(25, 2),
              1.3,
              CounterFormat.metres(1, 1, "m").withSign(),
              new Lettering(Typeface.LEANING, 34, 0xFFFFFF, 0.85, 0, 0, at(0.5, 1)),
              List.of(
                  caption(CameraLook.Says.CLOCK, Typeface.LEANING, 18, 0xFFFFFF, 0, at(1, 0)))));

  private static final List<DemoCamera> ALL = List.of(MP4, AVI, MPG, MOV, WEBM);

  private static Lettering.Place at(double across, double down) {
    return new Lettering.Place(across, down);
  }

  private static CameraLook.Caption caption(
      CameraLook.Says says,
      Typeface face,
      int height,
      int colour,
      int border,
      Lettering.Place place) {
    return new CameraLook.Caption(
        says, new Lettering(face, height, colour, 0.9, border, 0x101010, place));
  }

  /** The camera that writes files of that name; empty where none does. */
  static Optional<DemoCamera> of(String file) {
    return ALL.stream().filter(camera -> file.endsWith("." + camera.make.extension())).findFirst();
  }
}
