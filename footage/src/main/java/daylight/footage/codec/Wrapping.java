package daylight.footage.codec;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The containers that are read, with the library's name of each and the endings of their files. A
 * format that is not listed is refused as no video: playlists that lead to other files, pictures
 * and texts are among what the library would take for a recording.
 */
enum Wrapping {
  MP4("MP4", "mov,mp4,m4a,3gp,3g2,mj2", "mp4 m4v mov qt 3gp 3g2"),
  QUICKTIME("QuickTime", "mov,mp4,m4a,3gp,3g2,mj2", "mov qt mp4 m4v"),
  MATROSKA("Matroska", "matroska,webm", "mkv"),
  WEBM("WebM", "matroska,webm", "webm mkv"),
  AVI("AVI", "avi", "avi divx"),
  PROGRAM_STREAM("MPEG program stream", "mpeg", "mpg mpeg vob m2p mod dat"),
  TRANSPORT_STREAM("MPEG transport stream", "mpegts", "ts m2ts mts m2t tod trp"),
  ASF("Windows Media", "asf", "wmv asf"),
  FLASH("Flash video", "flv", "flv"),
  MXF("MXF", "mxf", "mxf"),
  DV("DV", "dv", "dv dif"),
  OGG("Ogg", "ogg", "ogv ogg"),
  IVF("IVF", "ivf", "ivf"),
  REAL("RealMedia", "rm", "rm rmvb"),
  BARE_MPEG_VIDEO("MPEG video", "mpegvideo", "m2v m1v mpv"),
  BARE_MPEG4("MPEG-4 video", "m4v", "m4v cmp"),
  BARE_H264("H.264 video", "h264", "h264 264 avc"),
  BARE_H265("H.265 video", "hevc", "h265 265 hevc"),
  WAV("WAV", "wav", "wav"),
  MP3("MP3", "mp3", "mp3"),
  AAC("AAC", "aac", "aac"),
  AC3("AC-3", "ac3", "ac3"),
  FLAC("FLAC", "flac", "flac");

  private static final int LOOKED_AT = 4096;

  private final String words;
  private final String demuxer;
  private final String endings;

  Wrapping(String words, String demuxer, String endings) {
    this.words = words;
    this.demuxer = demuxer;
    this.endings = endings;
  }

  /** Which one it is, by the library's name and the first bytes; empty if it is not read. */
  static Optional<Wrapping> of(String demuxer, byte[] start) {
    String beginning =
        new String(start, 0, Math.min(start.length, LOOKED_AT), StandardCharsets.ISO_8859_1);
    if (demuxer.equals(MP4.demuxer)) {
      boolean apple = beginning.startsWith("ftypqt  ", 4) || !beginning.startsWith("ftyp", 4);
      return Optional.of(apple ? QUICKTIME : MP4);
    }
    if (demuxer.equals(WEBM.demuxer)) {
      return Optional.of(beginning.contains("webm") ? WEBM : MATROSKA);
    }
    return Arrays.stream(values()).filter(one -> one.demuxer.equals(demuxer)).findFirst();
  }

  /** In plain words. */
  String words() {
    return words;
  }

  /** Whether names of such files end like that, in lower case. */
  boolean isEndedBy(String ending) {
    return List.of(endings.split(" ")).contains(ending);
  }

  /** Whether a name ends as for another container than this. */
  boolean contradicts(String ending) {
    return !isEndedBy(ending) && Arrays.stream(values()).anyMatch(one -> one.isEndedBy(ending));
  }

  /** Whether it tells the time of every frame, so that they need not be decoded to be counted. */
  boolean tellsTimes() {
    return switch (this) {
      case MP4, QUICKTIME, MATROSKA, WEBM -> true;
      default -> false;
    };
  }

  /** Whether places in it are found by time; otherwise by bytes. */
  boolean seeksByTime() {
    return switch (this) {
      case MP4, QUICKTIME, MATROSKA, WEBM, AVI, ASF, FLASH, MXF, DV, IVF -> true;
      default -> false;
    };
  }
}
