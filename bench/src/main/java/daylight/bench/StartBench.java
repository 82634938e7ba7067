package daylight.bench;

import daylight.archive.Folders;
import daylight.archive.store.Archive;
import daylight.archive.store.ArchiveOpening;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;

/**
 * From the start of a whole process to the first byte of its first page: {@code daylight open} on
 * an archive, as a person starts it, beside a bare server of the same library with the same options
 * of the Java machine; in turns. Of the bare server twice: as it is, and with what the Java machine
 * learnt in a run of it before, as Daylight has it. Read ratios, not times.
 *
 * <p>Arguments: pairs (11 if none), visits in the archive (10 000 if none).
 */
public final class StartBench {
  private static final String LAUNCHER = Path.of("daylight").toAbsolutePath().toString();
  private static final long PATIENCE = 60_000_000_000L;

  private StartBench() {}

  /** Runs it. */
  public static void main(String[] words) throws Exception {
    int pairs = words.length > 0 ? Integer.parseInt(words[0]) : 11;
    int visits = words.length > 1 ? Integer.parseInt(words[1]) : 10_000;
    Path folder = Files.createTempDirectory("start-bench");
    try {
      Path archive = folder.resolve("archive");
      if (!(Archive.open(archive) instanceof ArchiveOpening.Opened(Archive opened))) {
        throw new IllegalStateException("no archive could be begun");
      }
      FilledArchive.fill(opened, visits);
      opened.close();
      measure(folder, archive, pairs);
    } finally {
      Folders.delete(folder);
    }
  }

  private static void measure(Path folder, Path archive, int pairs) throws Exception {
    Path learnt = folder.resolve("bare.aot");
    List<String> rehearsal = bare("-XX:AOTCacheOutput=" + learnt);
    rehearsal.addAll(List.of("0", "once"));
    finish(new ProcessBuilder(rehearsal));
    double[] ours = new double[pairs];
    double[] bare = new double[pairs];
    double[] quick = new double[pairs];
    for (int i = -1; i < pairs; i++) {
      int at = Math.max(i, 0);
      ours[at] = first(ours(archive), "/sites");
      bare[at] = first(bare(), "/");
      quick[at] = first(bare("-XX:AOTCache=" + learnt), "/");
    }
    System.out.printf(
        Locale.ROOT,
        "first page: ours %.2f s, bare %.2f s, bare with what was learnt %.2f s;"
            + " ratio %.2f (%.2f to %.2f), beside the latter %.2f (%.2f to %.2f)%n",
        median(ours),
        median(bare),
        median(quick),
        median(ratios(ours, bare)),
        least(ratios(ours, bare)),
        most(ratios(ours, bare)),
        median(ratios(ours, quick)),
        least(ratios(ours, quick)),
        most(ratios(ours, quick)));
  }

  private static List<String> bare(String... options) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "--enable-native-access=ALL-UNNAMED"));
    command.addAll(List.of(options));
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path"), BareServer.class.getName()));
    return command;
  }

  private static List<String> ours(Path archive) {
    return new ArrayList<>(List.of(LAUNCHER, "open", "--archive", archive.toString(), "--port"));
  }

  private static void finish(ProcessBuilder builder) throws Exception {
    Process process = builder.redirectErrorStream(true).start();
    process.getInputStream().transferTo(OutputStream.nullOutputStream());
    if (process.waitFor() != 0) {
      throw new IllegalStateException("exit " + process.exitValue() + ": " + builder.command());
    }
  }

  private static int free() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  /**
   * Seconds until the first byte of a page came; the process is ended then.
   *
   * @param command to which the port is added
   */
  private static double first(List<String> command, String path) throws Exception {
    int port = free();
    command.add(String.valueOf(port));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
    builder.redirectError(ProcessBuilder.Redirect.DISCARD);
    long begun = System.nanoTime();
    Process process = builder.start();
    try {
      while (true) {
        if (answered(port, path)) {
          return (System.nanoTime() - begun) / 1e9;
        }
        if (!process.isAlive() || System.nanoTime() - begun > PATIENCE) {
          throw new IllegalStateException("never answered: " + command);
        }
        Thread.sleep(2);
      }
    } finally {
      process.descendants().forEach(ProcessHandle::destroy);
      process.destroy();
      if (!process.waitFor(20, TimeUnit.SECONDS)) {
        process.destroyForcibly();
      }
    }
  }

  private static boolean answered(int port, String path) {
    try (Socket socket = new Socket()) {
      socket.connect(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 1000);
      socket.setSoTimeout(30_000);
      String request =
          "GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + port + "\r\nConnection: close\r\n\r\n";
      socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
      InputStream in = socket.getInputStream();
      byte[] status = in.readNBytes("HTTP/1.1 200".length());
      return new String(status, StandardCharsets.US_ASCII).equals("HTTP/1.1 200");
    } catch (IOException notYet) {
      return false;
    }
  }

  private static double[] ratios(double[] a, double[] b) {
    double[] ratios = new double[a.length];
    for (int i = 0; i < a.length; i++) {
      ratios[i] = a[i] / b[i];
    }
    return ratios;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }

  private static double least(double[] values) {
    return Arrays.stream(values).min().orElse(0);
  }

  private static double most(double[] values) {
    return Arrays.stream(values).max().orElse(0);
  }
}
