package daylight.app.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Sends files: asked for again they are only sent when they changed, recordings part by part. */
public final class Sent {
  private Sent() {}

  /** Bytes that the browser may keep, if it asks each time whether they are still the same. */
  public static void kept(Context reply, String type, byte[] bytes) {
    String tag = "\"" + digest(bytes) + "\"";
    reply.header("Cache-Control", "no-cache").header("ETag", tag);
    if (tag.equals(reply.header("If-None-Match"))) {
      reply.status(304);
    } else {
      reply.contentType(type).result(bytes);
    }
  }

  /** A recording, or the part of it that is asked for (RFC 9110, sections 13.1.5 and 14). */
  public static void part(Context reply, Path recording) throws IOException {
    part(reply, recording, Types.of(recording.toString()));
  }

  /** The same of a file whose name does not say what it is. */
  public static void part(Context reply, Path recording, String type) throws IOException {
    try (FileChannel file = FileChannel.open(recording, StandardOpenOption.READ)) {
      long size = file.size();
      long written = Files.getLastModifiedTime(recording).toMillis();
      String tag = "\"" + Long.toHexString(written) + "-" + Long.toHexString(size) + "\"";
      reply
          .header("Cache-Control", "no-cache")
          .header("ETag", tag)
          .header("Accept-Ranges", "bytes");
      String wanted = reply.header("Range");
      String unless = reply.header("If-Range");
      ByteRange range =
          wanted == null || (unless != null && !unless.equals(tag))
              ? new ByteRange.Whole()
              : ByteRange.of(wanted, size);
      switch (range) {
        case ByteRange.Whole() -> write(reply, type, file, new ByteRange.Part(0, size - 1));
        case ByteRange.Outside() -> reply.status(416).header("Content-Range", "bytes */" + size);
        case ByteRange.Part part -> {
          reply.status(206);
          reply.header("Content-Range", "bytes " + part.first() + "-" + part.last() + "/" + size);
          write(reply, type, file, part);
        }
      }
    }
  }

  private static void write(Context reply, String type, FileChannel file, ByteRange.Part part)
      throws IOException {
    reply.contentType(type);
    reply.res().setContentLengthLong(part.length());
    if (reply.method().equals(HandlerType.HEAD)) {
      return;
    }
    WritableByteChannel out = Channels.newChannel(reply.outputStream());
    long at = part.first();
    while (at <= part.last()) {
      long moved = file.transferTo(at, part.last() - at + 1, out);
      if (moved <= 0) {
        throw new IOException("the recording became shorter while it was sent");
      }
      at += moved;
    }
  }

  private static String digest(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(hash, 0, 12);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
