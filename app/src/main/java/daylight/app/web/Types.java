package daylight.app.web;

import java.util.Locale;
import java.util.Map;

/** Media types by the ending of a file's name. */
public final class Types {
  /** A page. */
  public static final String HTML = "text/html; charset=utf-8";

  /** What nobody should guess at. */
  public static final String BYTES = "application/octet-stream";

  private static final Map<String, String> BY_ENDING =
      Map.ofEntries(
          Map.entry("html", HTML),
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("woff2", "font/woff2"),
          Map.entry("svg", "image/svg+xml"),
          Map.entry("jpg", "image/jpeg"),
          Map.entry("png", "image/png"),
          Map.entry("pdf", "application/pdf"),
          Map.entry("vtt", "text/vtt; charset=utf-8"),
          Map.entry("ics", "text/calendar; charset=utf-8"),
          Map.entry("json", "application/json"),
          Map.entry("geojson", "application/geo+json"),
          Map.entry("gpkg", "application/geopackage+sqlite3"),
          Map.entry("kml", "application/vnd.google-earth.kml+xml"),
          Map.entry("dxf", "image/vnd.dxf"),
          Map.entry("csv", "text/csv; charset=utf-8"),
          Map.entry("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
          Map.entry("mp4", "video/mp4"),
          Map.entry("m4v", "video/mp4"),
          Map.entry("webm", "video/webm"),
          Map.entry("weba", "audio/webm"),
          Map.entry("m4a", "audio/mp4"),
          Map.entry("ogg", "audio/ogg"),
          Map.entry("crt", "application/x-x509-ca-cert"));

  private Types() {}

  /** The type of a file of that name; {@link #BYTES} where its ending says none. */
  public static String of(String name) {
    return BY_ENDING.getOrDefault(ending(name), BYTES);
  }

  /** What follows the last dot, in small letters; nothing where there is no dot. */
  static String ending(String name) {
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
