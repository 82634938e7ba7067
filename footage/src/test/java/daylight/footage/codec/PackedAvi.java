package daylight.footage.codec;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rewrites an AVI whose frames are predicted from both sides the way old recorders packed it: a
 * frame and the one shown before it share a chunk, and a chunk with an empty picture follows, so
 * that chunks and pictures are as many. Nothing written today does that, yet such files are about.
 * The index at the end of the file is left away, which readers rebuild.
 *
 * <p>Only for one frame predicted from both sides at a time: I, P B, P B … in order of decoding.
 */
final class PackedAvi {
  private static final int HEAD = 8;
  private static final int B_PICTURE = 2;
  private static final byte[] START_OF_PICTURE = {0, 0, 1, (byte) 0xB6};
  // The encoder of the mark is what makes readers expect packing; the p says that it is packed.
  private static final byte[] MARK =
      "\0\0\1\u00b2DivX503b1393p".getBytes(StandardCharsets.ISO_8859_1);
  // A picture of the kind P that is not coded.
  private static final byte[] EMPTY_PICTURE = {0, 0, 1, (byte) 0xB6, 0x40, 0, 0};

  private PackedAvi() {}

  static void write(Path plain, Path packed) throws IOException {
    ByteBuffer file = ByteBuffer.wrap(Files.readAllBytes(plain)).order(ByteOrder.LITTLE_ENDIAN);
    int list = find(file.array(), "movi".getBytes(StandardCharsets.ISO_8859_1), 0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(file.array(), 0, list + 4);
    for (byte[] chunk : packed(chunks(file, list))) {
      out.write("00dc".getBytes(StandardCharsets.ISO_8859_1));
      out.write(little(chunk.length));
      out.write(chunk);
      out.write(new byte[chunk.length % 2]);
    }
    byte[] bytes = out.toByteArray();
    ByteBuffer sizes = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
    sizes.putInt(4, bytes.length - HEAD);
    sizes.putInt(list - 4, bytes.length - list);
    Files.write(packed, bytes);
  }

  private static List<byte[]> chunks(ByteBuffer file, int list) {
    List<byte[]> chunks = new ArrayList<>();
    int at = list + 4;
    while (file.get(at) == '0') {
      int size = file.getInt(at + 4);
      byte[] chunk = new byte[size];
      file.get(at + HEAD, chunk);
      chunks.add(chunk);
      at += HEAD + size + size % 2;
    }
    return chunks;
  }

  private static List<byte[]> packed(List<byte[]> chunks) throws IOException {
    List<byte[]> packed = new ArrayList<>();
    for (byte[] chunk : chunks) {
      int picture = find(chunk, START_OF_PICTURE, 0);
      boolean betweenOthers = (chunk[picture + 4] & 0xFF) >> 6 == B_PICTURE;
      if (betweenOthers) {
        ByteArrayOutputStream both = new ByteArrayOutputStream();
        both.write(packed.removeLast());
        both.write(chunk);
        packed.add(both.toByteArray());
        packed.add(EMPTY_PICTURE);
      } else {
        packed.add(packed.isEmpty() ? marked(chunk, picture) : chunk);
      }
    }
    return packed;
  }

  private static byte[] marked(byte[] chunk, int at) throws IOException {
    ByteArrayOutputStream marked = new ByteArrayOutputStream();
    marked.write(chunk, 0, at);
    marked.write(MARK);
    marked.write(chunk, at, chunk.length - at);
    return marked.toByteArray();
  }

  private static byte[] little(int number) {
    return ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(number).array();
  }

  private static int find(byte[] in, byte[] what, int from) {
    for (int at = from; at <= in.length - what.length; at++) {
      if (Arrays.equals(in, at, at + what.length, what, 0, what.length)) {
        return at;
      }
    }
    throw new IllegalArgumentException("not there");
  }
}
