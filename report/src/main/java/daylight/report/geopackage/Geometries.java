package daylight.report.geopackage;

import daylight.report.map.Frame;
import daylight.report.map.Shape;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A shape as the standard's binary form: its header (clause 2.1.3), then well-known binary with the
 * codes of ISO 13249-3, in which a code with z is larger by 1000.
 */
final class Geometries {
  private static final int HEADER = 8;
  private static final int POINT = 1;
  private static final int LINE = 2;
  private static final int POLYGON = 3;
  private static final int WITH_Z = 1000;

  /** Little-endian, with or without the bounds in plan. */
  private static final int BARE = 1;

  private static final int BOUNDED = 3;

  private final Frame frame;
  private final int srs;

  Geometries(Frame frame, int srs) {
    this.frame = frame;
    this.srs = srs;
  }

  byte @Nullable [] of(@Nullable Shape shape) {
    return switch (shape) {
      case null -> null;
      case Shape.Dot dot -> {
        Double z = dot.height();
        ByteBuffer out = header(null, 1 + 4 + (z == null ? 16 : 24));
        code(out, POINT, z != null);
        point(out, frame.at(dot.at()), z);
        yield written(out);
      }
      case Shape.Way way -> {
        List<Frame.At> points = frame.at(way.points());
        boolean high = !way.heights().isEmpty();
        ByteBuffer out = header(points, 1 + 4 + 4 + points.size() * (high ? 24 : 16));
        code(out, LINE, high);
        out.putInt(points.size());
        for (int i = 0; i < points.size(); i++) {
          point(out, points.get(i), high ? way.heights().get(i) : null);
        }
        yield written(out);
      }
      case Shape.Area area -> {
        List<List<Frame.At>> rings = area.rings().stream().map(frame::at).toList();
        int points = rings.stream().mapToInt(List::size).sum();
        ByteBuffer out = header(rings.getFirst(), 1 + 4 + 4 + 4 * rings.size() + 16 * points);
        code(out, POLYGON, false);
        out.putInt(rings.size());
        for (List<Frame.At> ring : rings) {
          out.putInt(ring.size());
          ring.forEach(at -> point(out, at, null));
        }
        yield written(out);
      }
    };
  }

  private static byte[] written(ByteBuffer out) {
    byte[] bytes = new byte[out.position()];
    out.flip().get(bytes);
    return bytes;
  }

  private ByteBuffer header(@Nullable List<Frame.At> bounded, int rest) {
    int bounds = bounded == null ? 0 : 32;
    ByteBuffer out = ByteBuffer.allocate(HEADER + bounds + rest).order(ByteOrder.LITTLE_ENDIAN);
    out.put((byte) 'G').put((byte) 'P').put((byte) 0);
    out.put((byte) (bounded == null ? BARE : BOUNDED)).putInt(srs);
    if (bounded != null) {
      Bounds of = Bounds.of(bounded);
      out.putDouble(of.left()).putDouble(of.right()).putDouble(of.bottom()).putDouble(of.top());
    }
    return out;
  }

  private static void code(ByteBuffer out, int code, boolean high) {
    out.put((byte) 1).putInt(high ? code + WITH_Z : code);
  }

  private static void point(ByteBuffer out, Frame.At at, @Nullable Double z) {
    out.putDouble(at.x()).putDouble(at.y());
    if (z != null) {
      out.putDouble(z);
    }
  }
}
