package daylight.app.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.classfile.ClassFile;
import java.lang.classfile.ClassFileVersion;
import java.lang.classfile.ClassHierarchyResolver;
import java.lang.classfile.ClassModel;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;

/**
 * Rewrites the classes of libraries that are in a format older than Java 6 into a later one: the
 * Java machine does not keep what it learnt of older ones, and checks each of them anew at every
 * start. What they do stays the same. The launcher does it once after building.
 */
final class Lift {
  /** The oldest version of the format of which anything is kept: that of Java 6. */
  private static final int KEPT = ClassFile.JAVA_6_VERSION;

  private static final int WRITTEN = ClassFile.JAVA_8_VERSION;

  private Lift() {}

  /**
   * Lifts what lies in a folder.
   *
   * @param words the folder
   */
  public static void main(String[] words) throws IOException {
    List<Path> jars;
    try (Stream<Path> files = Files.list(Path.of(words[0]))) {
      jars = files.filter(file -> file.toString().endsWith(".jar")).toList();
    }
    URL[] all = new URL[jars.size()];
    for (int i = 0; i < all.length; i++) {
      all[i] = jars.get(i).toUri().toURL();
    }
    try (URLClassLoader classes = new URLClassLoader(all)) {
      for (Path jar : jars) {
        lift(jar, classes);
      }
    }
  }

  /**
   * Lifts a jar; one that is signed, has no old classes, or stands on a class that is not there,
   * stays as it is.
   *
   * @param classes its own and those it stands on
   * @return how many classes were rewritten
   */
  static int lift(Path jar, ClassLoader classes) throws IOException {
    Path whole = jar.resolveSibling(jar.getFileName() + ".lifted");
    try {
      int lifted = lift(jar, whole, classes);
      if (lifted > 0) {
        Files.move(whole, jar, StandardCopyOption.REPLACE_EXISTING);
      }
      return lifted;
    } catch (IllegalArgumentException standsOnAnother) {
      // What two classes have in common is not known where one is missing. The jar works as it was.
      return 0;
    } finally {
      Files.deleteIfExists(whole);
    }
  }

  private static int lift(Path jar, Path whole, ClassLoader classes) throws IOException {
    int lifted = 0;
    try (JarFile from = new JarFile(jar.toFile())) {
      List<JarEntry> entries = Collections.list(from.entries());
      if (signed(entries) || !old(from, entries)) {
        return 0;
      }
      ClassFile format =
          ClassFile.of(
              ClassFile.StackMapsOption.GENERATE_STACK_MAPS,
              // Code is taken over as it is, without the maps it has to have, where the pool is.
              ClassFile.ConstantPoolSharingOption.NEW_POOL,
              ClassFile.ClassHierarchyResolverOption.of(
                  ClassHierarchyResolver.ofResourceParsing(classes)));
      try (OutputStream file = Files.newOutputStream(whole);
          JarOutputStream to = new JarOutputStream(file)) {
        for (JarEntry entry : entries) {
          byte[] bytes = from.getInputStream(entry).readAllBytes();
          if (old(entry, bytes)) {
            bytes = lifted(format, bytes);
            lifted++;
          }
          JarEntry same = new JarEntry(entry.getName());
          same.setTime(entry.getTime());
          to.putNextEntry(same);
          to.write(bytes);
          to.closeEntry();
        }
      }
    }
    return lifted;
  }

  private static boolean signed(List<JarEntry> entries) {
    return entries.stream().anyMatch(entry -> entry.getName().matches("META-INF/[^/]+\\.SF"));
  }

  private static boolean old(JarFile jar, List<JarEntry> entries) throws IOException {
    for (JarEntry entry : entries) {
      if (entry.getName().endsWith(".class")
          && old(entry, jar.getInputStream(entry).readNBytes(8))) {
        return true;
      }
    }
    return false;
  }

  /** Bytes 6 and 7 of a class are the version of its format. */
  private static boolean old(JarEntry entry, byte[] bytes) {
    return entry.getName().endsWith(".class")
        && bytes.length >= 8
        && (((bytes[6] & 255) << 8) | (bytes[7] & 255)) < KEPT;
  }

  private static byte[] lifted(ClassFile format, byte[] bytes) {
    ClassModel model = format.parse(bytes);
    return format.transformClass(
        model,
        (builder, element) -> {
          if (element instanceof ClassFileVersion) {
            builder.withVersion(WRITTEN, 0);
          } else {
            builder.with(element);
          }
        });
  }
}
