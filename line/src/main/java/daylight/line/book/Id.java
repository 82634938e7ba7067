package daylight.line.book;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.UUID;

/**
 * Who an entry is: an identity for good, made where the entry is written, and a short label for
 * people (L3, T12). Merging goes by the identity, never by the label.
 *
 * @param uuid the identity
 * @param label what people call it; not blank
 */
public record Id(UUID uuid, String label) implements Comparable<Id> {
  /** The name space of every identity that Daylight derives; itself an arbitrary constant. */
  private static final UUID NAME_SPACE = UUID.fromString("5b1f7a52-2f0c-5d6e-9a44-6d61796c6974");

  public Id {
    if (label.isBlank()) {
      throw new IllegalArgumentException("label must not be blank");
    }
  }

  /**
   * The identity of an entry that a book leaves without one: a name-based UUID (version 5, RFC
   * 9562) of the site, the kind of entry and its label, so that reading a book twice gives the same
   * identities.
   */
  public static Id derived(UUID site, String kind, String label) {
    return new Id(version5(site, kind + "/" + label), label);
  }

  /** The identity of a site that a book leaves without one, from its name and address. */
  public static Id ofSite(String name, String address) {
    return new Id(version5(NAME_SPACE, "site/" + name + "/" + address), name);
  }

  private static UUID version5(UUID space, String name) {
    byte[] hash;
    try {
      MessageDigest sha1 = MessageDigest.getInstance("SHA-1");
      sha1.update(bytes(space.getMostSignificantBits()));
      sha1.update(bytes(space.getLeastSignificantBits()));
      hash = sha1.digest(name.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-1", e);
    }
    long most = (number(hash, 0) & ~0xF000L) | 0x5000L;
    long least = (number(hash, 8) & 0x3FFFFFFFFFFFFFFFL) | 0x8000000000000000L;
    return new UUID(most, least);
  }

  private static byte[] bytes(long number) {
    byte[] bytes = new byte[8];
    for (int i = 0; i < 8; i++) {
      bytes[i] = (byte) (number >>> (56 - 8 * i));
    }
    return bytes;
  }

  private static long number(byte[] bytes, int from) {
    long number = 0;
    for (int i = 0; i < 8; i++) {
      number = (number << 8) | (bytes[from + i] & 0xFF);
    }
    return number;
  }

  /** By label, then by identity. */
  @Override
  public int compareTo(Id other) {
    int byLabel = label.compareTo(other.label);
    return byLabel != 0 ? byLabel : uuid.compareTo(other.uuid);
  }
}
