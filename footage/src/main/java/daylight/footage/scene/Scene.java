package daylight.footage.scene;

import daylight.footage.Raster;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The door: paints the frames of one footage. A frame depends on its number alone, not on what was
 * painted before; one scene is for one thread at a time.
 */
public final class Scene {
  /** The recording goes on so long after the last anchor, in seconds. */
  public static final double TAIL = 2;

  private static final int MINUTE = 60;
  private static final Region NOWHERE = new Region(0, 0, 0, 0);

  private final Script script;
  private final CameraLook look;
  private final Camera camera;
  private final Raster scratch;
  private final @Nullable Burner counter;
  private final List<Burner> captions = new ArrayList<>();

  /** The scene of a script as that camera shows it. */
  public Scene(Script script, CameraLook look) {
    this.script = script;
    this.look = look;
    camera = new Camera(script, look);
    scratch = raster();
    counter = look.counter() == null ? null : new Burner(look.counter());
    for (CameraLook.Caption caption : look.captions()) {
      captions.add(new Burner(caption.lettering()));
    }
  }

  /** How many frames the footage has. */
  public long frames() {
    return (long) StrictMath.ceil((script.motion().end() + TAIL) * look.rate().perSecond());
  }

  /** A raster of the right size. */
  public Raster raster() {
    return new Raster(look.width(), look.height());
  }

  /** Paints a frame, from 0 to below {@link #frames}, and says what is true of it. */
  public FrameTruth paint(long frame, Raster onto) {
    if (onto.width() != look.width() || onto.height() != look.height()) {
      throw new IllegalArgumentException(
          "a picture of %d × %d pixels, was %d × %d"
              .formatted(look.width(), look.height(), onto.width(), onto.height()));
    }
    double seconds = look.rate().secondsOf(frame);
    camera.see(frame, seconds, onto);
    for (int i = 0; i < captions.size(); i++) {
      captions.get(i).burn(says(look.captions().get(i).says(), seconds), onto);
    }
    return burned(frame, onto);
  }

  /** What is true of a frame, without painting it. */
  public FrameTruth truth(long frame) {
    return burned(frame, scratch);
  }

  private FrameTruth burned(long frame, Raster onto) {
    double seconds = look.rate().secondsOf(frame);
    double reading = script.motion().readingAt(seconds);
    String text = counter == null ? "" : look.format().text(reading);
    Region region = counter == null ? NOWHERE : counter.burn(text, onto);
    boolean moving = script.motion().movesAt(seconds);
    return new FrameTruth(frame, seconds, reading, text, moving, region);
  }

  private String says(CameraLook.Says says, double seconds) {
    int now = script.begun() + (int) seconds;
    String clock =
        String.format(
            Locale.ROOT,
            "%02d:%02d:%02d",
            now / (MINUTE * MINUTE) % 24,
            now / MINUTE % MINUTE,
            now % MINUTE);
    return switch (says) {
      case DATE -> script.date();
      case CLOCK -> clock;
      case DATE_AND_CLOCK -> script.date() + " " + clock;
      case PLACE -> script.place();
    };
  }
}
