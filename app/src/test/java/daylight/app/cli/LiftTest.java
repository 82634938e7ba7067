package daylight.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.classfile.ClassFile;
import java.lang.classfile.CodeBuilder;
import java.lang.classfile.TypeKind;
import java.lang.constant.ClassDesc;
import java.lang.constant.ConstantDescs;
import java.lang.constant.MethodTypeDesc;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LiftTest {
  @TempDir private Path folder = Path.of("");

  @Test
  void anOldClassIsLiftedAndDoesTheSame() throws Exception {
    Path jar =
        jar(Map.of("Sign.class", sign(49), "words.txt", "kept".getBytes(StandardCharsets.UTF_8)));

    assertThat(lift(jar)).isEqualTo(1);

    assertThat(version(jar, "Sign.class")).isEqualTo(52);
    try (JarFile file = new JarFile(jar.toFile())) {
      assertThat(file.getInputStream(file.getJarEntry("words.txt")).readAllBytes())
          .asString(StandardCharsets.UTF_8)
          .isEqualTo("kept");
    }
    try (URLClassLoader classes = new URLClassLoader(new URL[] {jar.toUri().toURL()}, null)) {
      // A branch that needs a map of the stack: the machine refuses it where there is none.
      var of = classes.loadClass("Sign").getMethod("of", int.class);
      assertThat(of.invoke(null, -7)).isEqualTo(-1);
      assertThat(of.invoke(null, 7)).isEqualTo(1);
    }
  }

  @Test
  void whatIsNewOrSignedStaysAsItIs() throws Exception {
    Path young = jar(Map.of("Sign.class", sign(61)));
    byte[] before = Files.readAllBytes(young);
    assertThat(lift(young)).isZero();
    assertThat(young).hasBinaryContent(before);

    Path signed = jar(Map.of("Sign.class", sign(49), "META-INF/ANY.SF", new byte[0]));
    before = Files.readAllBytes(signed);
    assertThat(lift(signed)).isZero();
    assertThat(signed).hasBinaryContent(before);
    try (var left = Files.list(folder)) {
      assertThat(left).containsExactly(signed);
    }
  }

  @Test
  void aJarThatStandsOnAnotherIsLiftedBesideItAndLeftAsItIsWithoutIt() throws Exception {
    Path base = jar("base.jar", Map.of("Base.class", plain("Base"), "Heir.class", heir("Heir")));
    Path jar = jar("library.jar", Map.of("Other.class", heir("Other"), "Pick.class", pick()));
    byte[] before = Files.readAllBytes(jar);

    assertThat(lift(jar)).isZero();

    assertThat(jar).hasBinaryContent(before);
    try (var left = Files.list(folder)) {
      assertThat(left).containsExactlyInAnyOrder(base, jar);
    }

    Lift.main(new String[] {folder.toString()});

    assertThat(version(jar, "Pick.class")).isEqualTo(52);
    URL[] both = {base.toUri().toURL(), jar.toUri().toURL()};
    try (URLClassLoader classes = new URLClassLoader(both, null)) {
      var of = classes.loadClass("Pick").getMethod("of", int.class);
      assertThat(of.invoke(null, 0).getClass().getName()).isEqualTo("Heir");
      assertThat(of.invoke(null, 1).getClass().getName()).isEqualTo("Other");
    }
  }

  private static int lift(Path jar) throws IOException {
    try (URLClassLoader classes = new URLClassLoader(new URL[] {jar.toUri().toURL()})) {
      return Lift.lift(jar, classes);
    }
  }

  private static int version(Path jar, String name) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      return file.getInputStream(file.getJarEntry(name)).readAllBytes()[7];
    }
  }

  private Path jar(Map<String, byte[]> files) throws IOException {
    return jar("library.jar", files);
  }

  private Path jar(String name, Map<String, byte[]> files) throws IOException {
    Path jar = folder.resolve(name);
    try (JarOutputStream to = new JarOutputStream(Files.newOutputStream(jar))) {
      for (Map.Entry<String, byte[]> file : new LinkedHashMap<>(files).entrySet()) {
        to.putNextEntry(new JarEntry(file.getKey()));
        to.write(file.getValue());
        to.closeEntry();
      }
    }
    return jar;
  }

  /** A class of the old format that anybody can make one of. */
  private static byte[] plain(String name) {
    return made(name, ConstantDescs.CD_Object);
  }

  private static byte[] heir(String name) {
    return made(name, ClassDesc.of("Base"));
  }

  private static byte[] made(String name, ClassDesc above) {
    return ClassFile.of(ClassFile.StackMapsOption.DROP_STACK_MAPS)
        .build(
            ClassDesc.of(name),
            type ->
                type.withVersion(49, 0)
                    .withFlags(ClassFile.ACC_PUBLIC)
                    .withSuperclass(above)
                    .withMethodBody(
                        ConstantDescs.INIT_NAME,
                        ConstantDescs.MTD_void,
                        ClassFile.ACC_PUBLIC,
                        code ->
                            code.aload(0)
                                .invokespecial(
                                    above, ConstantDescs.INIT_NAME, ConstantDescs.MTD_void)
                                .return_()));
  }

  /** A class whose method gives one of two heirs: what they have in common has to be known. */
  private static byte[] pick() {
    ClassDesc base = ClassDesc.of("Base");
    return ClassFile.of(ClassFile.StackMapsOption.DROP_STACK_MAPS)
        .build(
            ClassDesc.of("Pick"),
            type ->
                type.withVersion(49, 0)
                    .withFlags(ClassFile.ACC_PUBLIC)
                    .withMethodBody(
                        "of",
                        MethodTypeDesc.of(base, ConstantDescs.CD_int),
                        ClassFile.ACC_PUBLIC | ClassFile.ACC_STATIC,
                        code -> {
                          var other = code.newLabel();
                          var made = code.newLabel();
                          code.iload(0).ifne(other);
                          fresh(code, "Heir");
                          code.goto_(made).labelBinding(other);
                          fresh(code, "Other");
                          code.labelBinding(made).return_(TypeKind.REFERENCE);
                        }));
  }

  private static void fresh(CodeBuilder code, String name) {
    ClassDesc type = ClassDesc.of(name);
    code.new_(type).dup().invokespecial(type, ConstantDescs.INIT_NAME, ConstantDescs.MTD_void);
  }

  /** A class with a method that gives -1 for what is negative, else 1. */
  private static byte[] sign(int version) {
    ClassFile format =
        version < 50 ? ClassFile.of(ClassFile.StackMapsOption.DROP_STACK_MAPS) : ClassFile.of();
    return format.build(
        ClassDesc.of("Sign"),
        type ->
            type.withVersion(version, 0)
                .withFlags(ClassFile.ACC_PUBLIC)
                .withMethodBody(
                    "of",
                    MethodTypeDesc.of(ConstantDescs.CD_int, ConstantDescs.CD_int),
                    ClassFile.ACC_PUBLIC | ClassFile.ACC_STATIC,
                    code -> {
                      var positive = code.newLabel();
                      code.iload(0)
                          .ifge(positive)
                          .loadConstant(-1)
                          .return_(TypeKind.INT)
                          .labelBinding(positive)
                          .loadConstant(1)
                          .return_(TypeKind.INT);
                    }));
  }
}
