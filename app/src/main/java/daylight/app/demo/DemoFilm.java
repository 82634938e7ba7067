package daylight.app.demo;

import daylight.footage.Raster;
import daylight.footage.codec.Film;
import daylight.footage.scene.CameraLook;
import daylight.footage.scene.FrameTruth;
import daylight.footage.scene.Scene;
import daylight.footage.scene.Script;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;

/**
 * One footage of an invented property, ready to be made.
 *
 * @param media its label in the book
 * @param file its name relative to the book
 * @param script what there is to be seen and how the camera moved
 * @param camera what recorded it
 */
public record DemoFilm(String media, String file, Script script, DemoCamera camera) {
  /** How many frames it has. */
  public long frames() {
    return scene().frames();
  }

  /** What is true of each of its frames, as comma-separated values with a header. */
  public String truth() {
    Scene scene = scene();
    StringBuilder rows = new StringBuilder(FrameTruth.HEADER).append('\n');
    for (long frame = 0; frame < scene.frames(); frame++) {
      rows.append(scene.truth(frame).row()).append('\n');
    }
    return rows.toString();
  }

  /**
   * Writes it, whole or not at all.
   *
   * @param shown told after each frame
   * @param stopped asked before each frame
   * @return whether it was written; false when it was stopped
   */
  boolean write(Path target, Runnable shown, BooleanSupplier stopped) throws IOException {
    Path folder = target.getParent();
    if (folder != null) {
      Files.createDirectories(folder);
    }
    CameraLook look = camera.look();
    Scene scene = scene();
    Raster raster = scene.raster();
    try (Film film = Film.begin(target, camera.make(), look.width(), look.height(), look.rate())) {
      for (long frame = 0; frame < scene.frames(); frame++) {
        if (stopped.getAsBoolean()) {
          return false;
        }
        scene.paint(frame, raster);
        film.add(raster);
        shown.run();
      }
      film.finish();
      return true;
    }
  }

  private Scene scene() {
    return new Scene(script, camera.look());
  }
}
