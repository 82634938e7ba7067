package daylight.footage.codec;

import org.jspecify.annotations.Nullable;

/**
 * Which part of a recording is copied packet by packet.
 *
 * @param from the frame that it begins with; null for the whole recording
 * @param sound whether sound goes along
 */
record Excerpt(@Nullable Key from, boolean sound) {
  /** All of it. */
  static final Excerpt WHOLE = new Excerpt(null, true);
}
