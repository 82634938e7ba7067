package daylight.app.door;

import java.io.IOException;
import java.net.BindException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The door of the room: opens and shuts, gives out codes, knows who joined. */
public final class Doorkeeper {
  /** How often it is looked whether a pass runs out. */
  private static final Duration ROUND = Duration.ofHours(1);

  private final Path archive;
  private final InstantSource clock;
  private final Register register;
  private final Codes codes;
  private @Nullable Authority authority;
  private Door door = new Door();
  private volatile @Nullable Open open;
  private @Nullable Thread rounds;

  private Doorkeeper(
      Path archive, InstantSource clock, Register register, @Nullable Authority authority) {
    this.archive = archive;
    this.clock = clock;
    this.register = register;
    this.codes = new Codes(clock);
    this.authority = authority;
  }

  /**
   * Where the door is open.
   *
   * @param secure whether its connections are
   * @param passUntil when its pass runs out; null where it shows none
   * @param moved whether the port is another than that which phones know
   */
  public record Open(
      Address address, int port, boolean secure, @Nullable Instant passUntil, boolean moved) {
    /** Where its pages begin, with a secure connection where it has one. */
    public String origin() {
      return (secure ? "https://" : "http://") + host();
    }

    /** The same over a plain connection. */
    public String plainOrigin() {
      return "http://" + host();
    }

    private String host() {
      return address.text() + ":" + port;
    }

    /** Whether this machine still has that address. */
    public boolean isThere() {
      return Address.find(address.text()).isPresent();
    }

    /** Whether something that came in at that place came in by this door. */
    boolean isAt(String local, int localPort) {
      return address.text().equals(local) && port == localPort;
    }
  }

  /**
   * That of the archive in a folder.
   *
   * @throws IOException where what is kept there cannot be read
   */
  public static Doorkeeper of(Path archive, InstantSource clock) throws IOException {
    return new Doorkeeper(archive, clock, Register.of(archive), Authority.of(archive).orElse(null));
  }

  /** The door that it keeps. */
  public synchronized void at(Door which) {
    door = which;
  }

  /** Where it is open; empty while it is shut. */
  public Optional<Open> open() {
    return Optional.ofNullable(open);
  }

  /** Whether what came in at that place of this machine came in by the open door. */
  public boolean isOpenAt(String local, int port) {
    Open now = open;
    return now != null && now.isAt(local, port);
  }

  /**
   * Opens the door at an address, and nowhere else. It takes the port that it had before, for what
   * waits in a phone waits for that; only where somebody else has it, another.
   *
   * @param secure whether by secure connections, for which there must be an {@link Authority}
   * @throws IOException where it cannot be opened there; it is shut then
   */
  public synchronized Open open(Address address, boolean secure) throws IOException {
    shut();
    Pass pass = null;
    if (secure) {
      if (authority == null) {
        throw new IOException("no certificate authority was made");
      }
      pass = authority.pass(address.at(), clock.instant());
    }
    int known = register.port();
    int port;
    boolean moved = false;
    try {
      port = door.open(address.at(), known, pass);
    } catch (BindException taken) {
      if (known == 0) {
        throw taken;
      }
      port = door.open(address.at(), 0, pass);
      moved = true;
    }
    if (!moved) {
      register.port(port);
    }
    Open now = new Open(address, port, secure, pass == null ? null : pass.until(), moved);
    open = now;
    if (secure) {
      rounds = Thread.ofVirtual().start(() -> goRound(address));
    }
    return now;
  }

  /** Shuts the door; no code is good any more. */
  public synchronized void shut() throws IOException {
    open = null;
    codes.end();
    if (rounds != null) {
      rounds.interrupt();
      rounds = null;
    }
    door.shut();
  }

  private void goRound(Address address) {
    try {
      while (true) {
        Thread.sleep(ROUND);
        renew(address);
      }
    } catch (InterruptedException shut) {
      Thread.currentThread().interrupt();
    }
  }

  /** Shows a new pass where the old one runs out soon. */
  synchronized void renew(Address address) {
    Open now = open;
    if (now == null || authority == null || !now.secure() || !now.address().equals(address)) {
      return;
    }
    try {
      Pass pass = authority.pass(address.at(), clock.instant());
      if (!pass.until().equals(now.passUntil())) {
        door.renew(pass);
        open = new Open(address, now.port(), true, pass.until(), now.moved());
      }
    } catch (IOException full) {
      // The old one is good for weeks yet, and the next round tries again.
      return;
    }
  }

  /** The archive's own authority; empty where none was made. */
  public synchronized Optional<Authority> authority() {
    return Optional.ofNullable(authority);
  }

  /** The same, made where there is none. */
  public synchronized Authority makeAuthority() throws IOException {
    if (authority == null) {
      authority = Authority.make(archive, clock.instant());
    }
    return authority;
  }

  /** A new code, while the door is open. */
  public Optional<Codes.Code> code() {
    return open == null ? Optional.empty() : Optional.of(codes.fresh());
  }

  /** The newest code that is good still. */
  public Optional<Codes.Code> goodCode() {
    return codes.good();
  }

  /**
   * Lets a phone join.
   *
   * @param typed the code as it was typed
   * @param from the address that it comes from
   * @param number of the phone's new key
   * @throws IOException where it cannot be written down; the code stays good
   */
  public Tried join(String typed, String from, String number, String name, boolean secure)
      throws IOException {
    Tried tried = codes.use(typed, from);
    if (tried instanceof Tried.Good) {
      Instant now = now();
      try {
        register.join(new Phone(number, name, secure, now, now, null));
      } catch (IOException full) {
        codes.giveBack(typed);
        throw full;
      }
    }
    return tried;
  }

  /**
   * The phone of a key, which is seen by this; empty where none has it, or where it joined over the
   * other kind of connection.
   */
  public Optional<Phone> knock(String number, boolean secure) {
    Optional<Phone> phone = register.find(number).filter(one -> one.secure() == secure);
    phone.filter(Phone::isJoined).ifPresent(one -> register.seen(number, now()));
    return phone;
  }

  /** All phones, those that were taken off the list as well. */
  public List<Phone> phones() {
    return register.all();
  }

  /**
   * Takes a phone off the list.
   *
   * @throws IOException where that cannot be written down; it is so until the program ends
   */
  public void revoke(String number) throws IOException {
    register.revoke(number, now());
  }

  private Instant now() {
    return clock.instant().truncatedTo(ChronoUnit.SECONDS);
  }
}
