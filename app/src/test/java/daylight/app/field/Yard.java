package daylight.app.field;

import daylight.app.door.Address;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A network of its own for a phone: a network namespace, joined to this machine by a pair of
 * virtual cards with addresses that nobody else has. It is made by this test and taken away again.
 * Where namespaces cannot be made (that takes root, on Linux) the phone is on this machine and uses
 * its own address in the network; that is said, and then no link can be cut.
 */
final class Yard implements AutoCloseable {
  private static final int PATIENCE = 20;

  private final String name;
  private final String machine;
  private final boolean apart;
  private final Path folder;

  Yard(Path folder) throws IOException {
    this.folder = folder;
    long self = ProcessHandle.current().pid();
    name = "dl" + self % 1_000_000;
    // Also where the test is ended from outside, nothing of it is left.
    Runtime.getRuntime().addShutdownHook(Thread.ofPlatform().unstarted(this::close));
    String net = "10.77." + (1 + self % 250) + ".";
    apart =
        done("ip", "netns", "add", name)
            && done("ip", "link", "add", name + "a", "type", "veth", "peer", "name", name + "b")
            && done("ip", "link", "set", name + "b", "netns", name)
            && done("ip", "addr", "add", net + "1/24", "dev", name + "a")
            && done("ip", "link", "set", name + "a", "up")
            && within("ip", "addr", "add", net + "2/24", "dev", name + "b")
            && within("ip", "link", "set", name + "b", "up")
            && within("ip", "link", "set", "lo", "up");
    if (apart) {
      machine = net + "1";
    } else {
      close();
      machine =
          Address.ofThisMachine().stream()
              .findFirst()
              .orElseThrow(() -> new AssertionError("this machine is in no network at all"))
              .text();
      System.err.println(
          "No network namespace could be made (it takes root and iproute2): the phone is on this"
              + " machine, at its own address "
              + machine
              + ", and its link cannot be cut.");
    }
  }

  /** The address at which the phone reaches this machine. */
  String machineText() {
    return machine;
  }

  /** Whether the phone has a network of its own, whose link can be cut. */
  boolean isApart() {
    return apart;
  }

  /** Where the phone reaches this machine. */
  Address machine() throws IOException {
    return Address.find(machine).orElseThrow(() -> new IOException("gone: " + machine));
  }

  /** Cuts the phone's link, or mends it. */
  void link(boolean up) {
    if (!within("ip", "link", "set", name + "b", up ? "up" : "down")) {
      throw new IllegalStateException("the link was not switched");
    }
  }

  /**
   * A program that runs another one on the phone.
   *
   * @param home its home folder, which holds what it trusts
   */
  Path onThePhone(Path program, Path home) throws IOException {
    String where = apart ? "ip netns exec " + name + " " : "";
    String script =
        "#!/bin/sh\nexport HOME='%s'\nexec %s'%s' \"$@\"\n".formatted(home, where, program);
    Path file = folder.resolve("on-the-phone-" + home.getFileName());
    Files.writeString(file, script, StandardCharsets.UTF_8);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwx------"));
    return file;
  }

  private boolean within(String... command) {
    List<String> all = new ArrayList<>(List.of("ip", "netns", "exec", name));
    all.addAll(List.of(command));
    return done(all.toArray(String[]::new));
  }

  /** Whether a command could be carried out. */
  static boolean done(String... command) {
    try {
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      return process.waitFor(PATIENCE, TimeUnit.SECONDS) && process.exitValue() == 0;
    } catch (IOException none) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Override
  public void close() {
    // The pair goes with the namespace that holds one of them.
    done("ip", "netns", "del", name);
    done("ip", "link", "del", name + "a");
  }
}
