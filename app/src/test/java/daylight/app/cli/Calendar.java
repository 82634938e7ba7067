package daylight.app.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;

/** Calendars read by a reader that is not ours, the npm package ical.js. */
final class Calendar {
  private static final Npm READER = new Npm("ical", "read.mjs");

  private Calendar() {}

  /** What is in a file: its version, its name and its events. */
  static JsonNode read(Path file) throws IOException {
    return READER.read(file);
  }
}
