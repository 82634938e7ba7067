package daylight.report.shots;

import java.util.Arrays;

/** A picture as a JPEG file, with its size. */
public final class Picture {
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
