package daylight.report.shots;

import daylight.report.markup.Embedded;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;

/** A picture as a JPEG file, with its size. */
public final class Picture implements Embedded {
  /** What the address of a picture beside a page begins with. */
  public static final String PROTOCOL = "picture";

  private final int width;
  private final int height;
  private final byte[] jpeg;

  /** A picture of that many pixels; the bytes are copied. */
  public Picture(int width, int height, byte[] jpeg) {
    if (width <= 0 || height <= 0) {
      throw new IllegalArgumentException("a picture has pixels, was " + width + " × " + height);
    }
    this.width = width;
    this.height = height;
    this.jpeg = jpeg.clone();
  }

  /** Pixels across. */
  public int width() {
    return width;
  }

  /** Pixels down. */
  public int height() {
    return height;
  }

  /** The file. */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  @Override
  public String inPage() {
    return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
  }

  @Override
  public String beside() {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(jpeg);
      return PROTOCOL + ":" + HexFormat.of().formatHex(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** How long the file is, bytes. */
  public int length() {
    return jpeg.length;
  }

  /** The file to be read. */
  public InputStream open() {
    return new ByteArrayInputStream(jpeg);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Picture picture && Arrays.equals(jpeg, picture.jpeg);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(jpeg);
  }

  @Override
  public String toString() {
    return width + " × " + height + ", " + jpeg.length + " bytes";
  }
}
