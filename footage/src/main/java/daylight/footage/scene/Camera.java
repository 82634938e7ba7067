package daylight.footage.scene;

import daylight.footage.Raster;
import java.util.List;

/** What the lens sees of the pipe, without anything burned in. */
final class Camera {
  private static final double BEHIND = 1.5;
  private static final int RIM = 0xA88462;
  private static final int LEAVES = 0x7E9A55;
  private static final int SKY = 0xE8F2FF;

  /** Light too little to tell one wall from another. */
  private static final float UNSEEN = 0.012f;

  private final Script script;
  private final Lens lens;
  private final View view;
  private final Field field;
  private final Unrolled wall;
  private final Bottom bottom;
  private final Pond pond;
  private final Strands strands;
  private final Bodies bodies;
  private final Haze haze;
  private final Darkroom darkroom;
  private List<Tunnel.Hoop> traced = List.of();

  /** Where the lens was when the field was painted; not a number where it must be painted anew. */
  private double seen = Double.NaN;

  Camera(Script script, CameraLook look) {
    this.script = script;
    lens = new Lens(look.width(), look.height());
    view = new View(lens);
    field = new Field(lens);
    double widest = script.pipes().stream().mapToDouble(Script.Pipe::radius).max().orElse(0);
    double ahead = Tunnel.REACH * widest + 0.5;
    wall =
        new Unrolled(
            new Wall(script),
            script.odometer().in(script.motion().least()) - BEHIND,
            script.odometer().in(script.motion().most()) + ahead);
    bottom = new Bottom(script);
    pond = new Pond(lens, view, field, wall, bottom);
    strands = new Strands(lens, field);
    bodies = new Bodies(lens, view, field);
    haze = new Haze(script, bottom, lens, field);
    darkroom = new Darkroom(lens, field, look.grain());
  }

  void see(long frame, double seconds, Raster onto) {
    double in = script.lensAt(seconds);
    double radius = script.pipeAt(in).radius();
    double end = in + Tunnel.REACH * radius;
    boolean wet = bottom.any(in, end);
    boolean changing = wet || haze.thickness(in) > 0;
    if (changing || in != seen) {
      paint(in, radius, seconds);
    }
    seen = changing ? Double.NaN : in;
    darkroom.develop((int) frame, sway(in, 17), sway(in, 213), onto);
  }

  /** The light at the lens when it is so far in, before it is developed. */
  Field paintedAt(double in, double seconds) {
    paint(in, script.pipeAt(in).radius(), seconds);
    seen = Double.NaN;
    return field;
  }

  private void paint(double in, double radius, double seconds) {
    double eye = Tunnel.eye(script, in);
    double end = in + Tunnel.REACH * radius;
    look(in, radius);
    wall.moveTo(in);
    shade(in, radius);
    if (bottom.any(in, end)) {
      pond.lay(new Pond.Moment(in, radius, eye, seconds, bottom.still(in, end)));
      traced = List.of();
    }
    stand(in, radius, eye, end);
    haze.veil(in, seconds);
    glare(in, radius);
  }

  /** Traces the pipe ahead, unless nothing about it has changed. */
  private void look(double in, double radius) {
    List<Tunnel.Hoop> hoops = Tunnel.ahead(script, in);
    if (!hoops.equals(traced)) {
      view.trace(hoops, radius);
      traced = hoops;
    }
  }

  private void shade(double in, double radius) {
    float near = (float) (1.9 * radius);
    float middle = (float) (4.2 * radius);
    float distant = (float) (9 * radius);
    float open = (float) (script.mouth().at() - in);
    boolean daylight = script.mouth().into() == Script.Into.DAYLIGHT;
    for (int pixel = 0; pixel < view.depth.length; pixel++) {
      float ahead = view.ahead[pixel];
      field.far[pixel] = view.depth[pixel] * lens.length[pixel];
      if (daylight && ahead > open) {
        outside(pixel);
      } else if (view.kind[pixel] == View.WALL && (daylight || view.light[pixel] > UNSEEN)) {
        float deep = view.depth[pixel];
        int level = deep < near ? 0 : deep < middle ? 1 : deep < distant ? 2 : 3;
        float day = daylight ? daylight(ahead - open, (float) radius) : 0;
        field.set(pixel, wall.at(in + ahead, view.turn[pixel], level), view.light[pixel] + day);
      } else if (view.kind[pixel] == View.RIM) {
        rim(pixel);
      } else {
        field.set(pixel, 0, 0);
      }
    }
  }

  /** The broken edge of a pipe that sits askew, seen from in front. */
  private void rim(int pixel) {
    float x = lens.right[pixel] * view.depth[pixel] * 2500;
    float y = lens.up[pixel] * view.depth[pixel] * 2500;
    float mottled = 1 + 0.35f * Cloud.COARSE.between(x, y) + 0.2f * Cloud.FINE.between(x, y);
    field.set(pixel, RIM, 0.85f * view.light[pixel] * mottled);
  }

  /** Light that falls in at the end, on the wall so far before it (negative metres). */
  private static float daylight(float before, float radius) {
    float far = -before / radius;
    return 0.9f / (1 + 0.6f * far * far);
  }

  private void outside(int pixel) {
    float up = lens.up[pixel];
    float side = Cloud.COARSE.between(lens.right[pixel] * 300 + 40, up * 300);
    float leaf = Cloud.COARSE.between(lens.right[pixel] * 420, up * 420 + 99);
    float sky = Mark.rise(-0.1, 0.35, up + 0.35f * side);
    field.set(pixel, LEAVES, 2.0f + 0.8f * leaf);
    field.cover(pixel, SKY, 3.2f, sky);
    field.far[pixel] = 0;
  }

  private void stand(double in, double radius, double eye, double end) {
    for (Thing thing : script.things()) {
      boolean seen = thing.at() < end && thing.to() > in;
      if (seen && thing instanceof Thing.Roots roots) {
        strands.draw(roots, in, radius, eye);
      } else if (seen && (thing instanceof Thing.Plug || thing instanceof Thing.Crossing)) {
        bodies.draw(thing, in, radius, eye);
      }
    }
  }

  /** The veil that bright daylight throws over the lens as the end comes near. */
  private void glare(double in, double radius) {
    if (script.mouth().into() == Script.Into.DAYLIGHT) {
      double far = Math.max(0, script.mouth().at() - in) / radius;
      float veil = (float) (0.22 / (1 + 0.25 * far * far));
      for (int pixel = 0; veil > 0.002 && pixel < field.red.length; pixel++) {
        field.red[pixel] += 0.92f * veil;
        field.green[pixel] += 0.97f * veil;
        field.blue[pixel] += veil;
      }
    }
  }

  /** How far the picture sways as the head slides on, in pixels of the field. */
  private static double sway(double in, int lane) {
    return Math.clamp(3.2 * Cloud.COARSE.between((float) (in * 260), lane), -2.9, 2.9);
  }
}
