package daylight.app.web;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;

/**
 * What was sent along with a request that is refused. Where a connection is closed on what nobody
 * read, the answer is lost on its way, and whoever asked never hears why.
 */
public final class Unread {
  /** More than this is not listened to, whatever becomes of the answer. */
  private static final int MOST = 4 << 20;

  private static final int PIECE = 1 << 16;

  /** Nor for longer: whoever sends drop by drop would keep a thread of ours for himself. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private Unread() {}

  /** Lets it pass by, as it came: nothing of it is unpacked or kept. */
  public static void pass(Context request) {
    byte[] piece = new byte[PIECE];
    long begun = System.nanoTime();
    try {
      InputStream in = request.req().getInputStream();
      int read = in.read(piece);
      for (int all = 0; read >= 0 && all < MOST && lasts(begun); all += read) {
        read = in.read(piece);
      }
    } catch (IOException gone) {
      // Whoever asked hung up, and hears nothing more.
    }
  }

  private static boolean lasts(long begun) {
    return System.nanoTime() - begun < PATIENCE.toNanos();
  }
}
