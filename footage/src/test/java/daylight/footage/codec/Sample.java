package daylight.footage.codec;

import daylight.footage.Make;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Films of every kind that is written here, and of kinds that only the program can write. */
enum Sample {
  H264_MP4(Make.H264_MP4),
  MPEG4_AVI(Make.MPEG4_AVI),
  MPEG4_B_AVI(Make.MPEG4_B_AVI),
  MPEG2_MPG(Make.MPEG2_MPG),
  MPEG2_TS(Make.MPEG2_TS),
  MJPEG_AVI(Make.MJPEG_AVI),
  MJPEG_MOV(Make.MJPEG_MOV),
  VP8_WEBM(Make.VP8_WEBM),
  VP9_WEBM(Make.VP9_WEBM),
  VARIABLE_MP4(Make.H264_MP4),
  H264_IN_TS(Make.H264_MP4, "h264.ts", 4, "-c copy"),
  H264_CUT_MP4(Make.H264_MP4, "cut.mp4", 2.68, "-c copy"),
  H264_CUT_TS(Make.H264_MP4, "cut.ts", 3, "-c copy"),
  H264_FRAGMENTED(Make.H264_MP4, "parts.mp4", 4, "-c copy -movflags frag_keyframe+empty_moov"),
  H264_MKV(Make.H264_MP4, "h264.mkv", 4, "-c copy"),
  H264_FLV(Make.H264_MP4, "h264.flv", 4, "-c copy"),
  MPEG2_BARE(Make.MPEG2_MPG, "bare.m2v", 4, "-c copy"),
  MPEG4_B_MP4(Make.MPEG4_AVI, "b.mp4", 4, "-c:v mpeg4 -q:v 3 -bf 2"),
  MPEG4_B_MKV(Make.MPEG4_AVI, "b.mkv", 4, "-c:v mpeg4 -q:v 3 -bf 2"),
  MPEG4_PACKED_AVI(Make.MPEG4_AVI, "packed.avi", 4, "-c:v mpeg4 -q:v 3 -bf 1 -b_strategy 0 -g 24"),
  MPEG2_FIELDS(
      Make.MPEG4_AVI, "fields.mpg", 4, "-c:v mpeg2video -q:v 3 -bf 2 -flags +ildct+ilme -f vob"),
  MPEG2_CUT_TS(Make.MPEG2_TS, "middle.ts", 2.92, "-c copy"),
  MPEG1_MPG(Make.MPEG4_AVI, "one.mpg", 4, "-c:v mpeg1video -q:v 3 -bf 2"),
  WMV(Make.MPEG4_AVI, "old.wmv", 4, "-c:v wmv2 -q:v 3"),
  AV1_MP4(Make.MPEG4_AVI, "new.mp4", 4, "-c:v libsvtav1 -crf 30 -preset 10"),
  VP8_HIDDEN_WEBM(
      Make.MPEG4_AVI,
      "hidden.webm",
      4,
      "-c:v libvpx -auto-alt-ref 1 -lag-in-frames 16 -b:v 300k -cpu-used 8"),
  VP9_HIDDEN_WEBM(
      Make.MPEG4_AVI,
      "hidden9.webm",
      4,
      "-c:v libvpx-vp9 -auto-alt-ref 1 -lag-in-frames 16 -b:v 300k -cpu-used 8"),
  WITH_SOUND(
      Make.H264_MP4,
      "sound.mp4",
      4,
      "-f lavfi -i sine=duration=4 -c:v copy -c:a aac -map 0:v -map 1:a");

  private final Make make;
  private final String name;
  private final double seconds;
  private final String by;

  Sample(Make make) {
    this(make, "", 4, "");
  }

  Sample(Make make, String name, double seconds, String by) {
    this.make = make;
    this.name = name;
    this.seconds = seconds;
    this.by = by;
  }

  /** How long it is. */
  double seconds() {
    return this == VARIABLE_MP4 ? times().getLast() + 0.04 : seconds;
  }

  /** The film in that folder, written if it is not there yet. */
  Path in(Path folder) throws IOException {
    Path film = folder.resolve(name() + "." + make.extension());
    if (by.isEmpty()) {
      TestFilm recipe = TestFilm.of(make);
      return Files.exists(film)
          ? film
          : (this == VARIABLE_MP4 ? recipe.times(times()) : recipe).write(film);
    }
    Path made = folder.resolve(name);
    if (!Files.exists(made)) {
      TestFilm.of(make).write(film);
      List<String> arguments = new ArrayList<>();
      if (this == H264_CUT_MP4) {
        // Not at a key: the container then hides frames that are needed only for decoding.
        arguments.addAll(List.of("-ss", "1.32"));
      }
      arguments.addAll(List.of("-i", film.toString()));
      arguments.addAll(List.of(by.split(" ")));
      arguments.add(made.toString());
      Program.ffmpeg(arguments.toArray(String[]::new));
      if (this == MPEG4_PACKED_AVI) {
        PackedAvi.write(made, made);
      }
      if (this == MPEG2_CUT_TS || this == H264_CUT_TS) {
        cutHead(made);
      }
    }
    return made;
  }

  /** Without its first fifth, as where a recorder was switched on late. */
  private static void cutHead(Path stream) throws IOException {
    byte[] all = Files.readAllBytes(stream);
    int packet = 188;
    int from = all.length / 5 / packet * packet;
    Files.write(stream, Arrays.copyOfRange(all, from, all.length));
  }

  private static List<Double> times() {
    return IntStream.range(0, 80).mapToObj(n -> n * 0.05 + (n % 5 == 0 ? 0.02 : 0)).toList();
  }
}
