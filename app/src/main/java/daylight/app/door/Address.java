package daylight.app.door;

import java.net.Inet4Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An address at which other machines of a network can reach this one: IPv4, as phones in the
 * network of a truck or a house have it.
 *
 * @param network what this machine calls its link to that network
 */
public record Address(InetAddress at, String network) {
  /** First address and length of the blocks that belong to no one (`rfc-1918` and its kin). */
  static final List<Block> PRIVATE =
      List.of(
          new Block("10.0.0.0", 8),
          new Block("172.16.0.0", 12),
          new Block("192.168.0.0", 16),
          new Block("100.64.0.0", 10),
          new Block("169.254.0.0", 16));

  /** A block of addresses. */
  record Block(String first, int bits) {
    boolean holds(InetAddress at) {
      return ((number(at) ^ number(InetAddress.ofLiteral(first))) & mask()) == 0;
    }

    int mask() {
      return -1 << (Integer.SIZE - bits);
    }

    private static int number(InetAddress at) {
      int number = 0;
      for (byte one : at.getAddress()) {
        number = (number << 8) | (one & 0xff);
      }
      return number;
    }
  }

  /** All of this machine as they are now, those of private networks first. */
  public static List<Address> ofThisMachine() {
    try {
      return NetworkInterface.networkInterfaces()
          .filter(Address::isUp)
          .flatMap(
              link ->
                  link.inetAddresses()
                      .filter(Inet4Address.class::isInstance)
                      .filter(at -> !at.isLoopbackAddress() && !at.isMulticastAddress())
                      .map(at -> new Address(at, link.getDisplayName())))
          .sorted(
              Comparator.comparing((Address one) -> !one.isPrivate()).thenComparing(Address::text))
          .toList();
    } catch (SocketException none) {
      return List.of();
    }
  }

  private static boolean isUp(NetworkInterface link) {
    try {
      return link.isUp() && !link.isLoopback();
    } catch (SocketException gone) {
      return false;
    }
  }

  /** The one that is written so; empty where this machine has it not, or no longer. */
  public static Optional<Address> find(String text) {
    return ofThisMachine().stream().filter(one -> one.text().equals(text)).findFirst();
  }

  /** As it stands in an address of a page. */
  public String text() {
    return at.getHostAddress();
  }

  /** Whether it means a machine in a network of one's own, and not one of the whole world. */
  public boolean isPrivate() {
    return isPrivate(at);
  }

  static boolean isPrivate(InetAddress at) {
    return at instanceof Inet4Address && PRIVATE.stream().anyMatch(block -> block.holds(at));
  }
}
