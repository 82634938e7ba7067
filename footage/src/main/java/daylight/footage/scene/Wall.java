package daylight.footage.scene;

import daylight.line.book.Material;
import java.util.ArrayList;
import java.util.List;

/** Paints the unrolled wall of the pipe, ring by ring: the bare pipe first, then what is on it. */
final class Wall {
  private static final int SOIL = 0x3D2F1E;
  private static final int SEED = 77;

  private final Script script;
  private final List<Mark> marks;

  Wall(Script script) {
    this.script = script;
    this.marks = marks(script);
  }

  private static List<Mark> marks(Script script) {
    List<Mark> marks = new ArrayList<>();
    for (double joint : script.joints()) {
      marks.add(new JointMark(joint, Skin.of(script.pipeAt(joint).material()).joint()));
    }
    for (Thing thing : script.things()) {
      double radius = script.pipeAt(thing.at()).radius();
      switch (thing) {
        case Thing.Crack crack -> marks.add(new CrackMark(crack, radius));
        case Thing.Opening opening -> marks.add(new OpeningMark(opening, radius));
        case Thing.Patch patch -> marks.add(new PatchMark(patch, radius));
        case Thing.Roots roots -> marks.add(new RootMark(roots));
        case Thing.Gap gap -> marks.add(new JointMark(gap.at(), gap.gap() / 2));
        case Thing.Step step -> marks.add(new JointMark(step.at(), 0.004));
        case Thing.Water _, Thing.Silt _, Thing.Plug _, Thing.Crossing _ -> {}
      }
    }
    return marks;
  }

  /** Paints the ring whose place and row are set. */
  void paint(Ring ring) {
    Script.Pipe pipe = script.pipeAt(ring.in);
    ring.radius = pipe.radius();
    bare(ring, pipe);
    for (Mark mark : marks) {
      if (mark.from() <= ring.in && ring.in <= mark.to()) {
        mark.paint(ring);
      }
    }
  }

  private void bare(Ring ring, Script.Pipe pipe) {
    Skin skin = Skin.of(pipe.material());
    int piece = piece(ring.in);
    int shift = (int) (Chance.at(SEED, piece, 1) * Cloud.SIZE);
    int lift = (int) (Chance.at(SEED, piece, 2) * Cloud.SIZE);
    float tint = (float) Chance.between(0.93, 1.05, SEED, piece, 3);
    float rib = skin.rib(ring.in);
    boolean brick = pipe.material() == Material.BRICK;
    for (int column = 0; column < Ring.COLUMNS; column++) {
      int x = column + shift;
      int y = ring.row + lift;
      ring.red[column] = 0;
      ring.green[column] = 0;
      ring.blue[column] = 0;
      ring.mix(column, skin.base(), 1);
      float blot = Cloud.COARSE.at(x, y) + 0.45f * Cloud.COARSE.at(3 * x, y / 3);
      ring.mix(column, skin.dark(), skin.blotch() * Mark.rise(-0.25, 0.75, blot));
      if (skin.lumps() > 0) {
        grow(ring, column, skin, x, y);
      }
      float grain = skin.grain() * (Cloud.FINE.at(2 * x, 2 * y) + scratch(x, y));
      ring.shade(column, tint * rib * (1 + grain + skin.blotch() * 0.12f * blot));
      soil(ring, column, skin);
      if (brick && Math.floorMod(ring.row, 75) < 8) {
        ring.mix(column, skin.accent(), 0.8f);
      }
    }
  }

  /** Long thin lines along the pipe, as things dragged through it leave. */
  private static float scratch(int x, int y) {
    return -1.6f * Mark.rise(0.52, 0.85, Cloud.FINE.at(3 * x, y / 28));
  }

  /** Lumps, lit on the side that faces the lens. */
  private static void grow(Ring ring, int column, Skin skin, int x, int y) {
    float here = lump(x, y);
    float slope = here - lump(x, y - 4);
    ring.mix(column, skin.accent(), skin.lumps() * 0.8f * Mark.rise(0.1, 0.8, here));
    ring.shade(column, Math.clamp(1 + 2.2f * skin.lumps() * slope, 0.35f, 1.7f));
  }

  private static float lump(int x, int y) {
    return Math.max(0, Cloud.COARSE.at(4 * x + 200, 4 * y) - 0.05f)
        + 0.2f * Cloud.FINE.at(2 * x, 2 * y);
  }

  /** The brown track that water leaves along the bottom. */
  private static void soil(Ring ring, int column, Skin skin) {
    float fromBottom = Math.abs(column + 0.5f - Ring.COLUMNS / 2f) / Ring.COLUMNS;
    float half = 0.095f + 0.03f * Cloud.COARSE.at(ring.row / 2, 300);
    float edge = fromBottom + 0.012f * Cloud.FINE.at(column, ring.row);
    ring.mix(column, SOIL, skin.soiled() * 0.85f * Mark.rise(half, half * 0.55, edge));
  }

  private int piece(double in) {
    int piece = 0;
    for (double joint : script.joints()) {
      if (joint <= in) {
        piece++;
      }
    }
    return piece;
  }
}
