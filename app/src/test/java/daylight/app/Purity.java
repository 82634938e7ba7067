package daylight.app;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * What the line room may not use, so that the same book gives the same bits at any time on any
 * machine. Each rule speaks of whatever classes it is checked on; the caller picks them.
 */
final class Purity {
  /** Those of java.lang.Math that may differ by a last digit between platforms. */
  private static final Set<String> INEXACT =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp",
          "expm1", "log", "log10", "log1p", "pow", "hypot", "cbrt");

  private static final Set<String> PARALLEL =
      Set.of("parallel", "parallelStream", "parallelSort", "parallelPrefix", "parallelSetAll");

  private static final Set<String> RANDOM_CLASSES =
      Set.of("java.util.Random", "java.util.SplittableRandom", "java.security.SecureRandom");

  private static final Set<String> MACHINE_CLASSES =
      Set.of("java.lang.Runtime", "java.lang.Thread", "java.lang.ProcessBuilder");

  /** Methods that take the machine's language where no other is given, by number of parameters. */
  private static final Set<String> LOCALE_BY_DEFAULT =
      Set.of(
          "java.lang.String.format/2",
          "java.lang.String.formatted/1",
          "java.lang.String.toLowerCase/0",
          "java.lang.String.toUpperCase/0",
          "java.text.DecimalFormat.<init>/1",
          "java.text.NumberFormat.getInstance/0",
          "java.text.NumberFormat.getNumberInstance/0",
          "java.text.NumberFormat.getPercentInstance/0",
          "java.time.format.DateTimeFormatter.ofPattern/1",
          "java.util.Locale.getDefault/0");

  private Purity() {}

  static List<ArchRule> rules() {
    return List.of(
        noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                "java.io..",
                "java.nio.file..",
                "java.nio.channels..",
                "java.net..",
                "java.sql..",
                "java.awt..",
                "java.util.logging..",
                "java.util.concurrent..",
                "java.util.random..")
            .because("it touches neither the world outside nor other threads"),
        never("read the clock", Purity::readsClock),
        never("draw by chance", Purity::drawsByChance),
        never("ask the machine", Purity::asksMachine),
        never("take the machine's language", Purity::takesLocale),
        never("add up in parallel", t -> isOf(t, "java.util.") && PARALLEL.contains(t.getName())),
        never("use Math where StrictMath is exact", Purity::isInexact));
  }

  private static ArchRule never(String what, Predicate<AccessTarget> bad) {
    return noClasses()
        .should()
        .accessTargetWhere(describe(what, (JavaAccess<?> access) -> bad.test(access.getTarget())));
  }

  private static boolean readsClock(AccessTarget target) {
    return (isOf(target, "java.time.") && target.getName().equals("now"))
        || owner(target).equals("java.time.Clock")
        || owner(target).equals("java.util.Date")
        || owner(target).equals("java.util.Calendar");
  }

  private static boolean drawsByChance(AccessTarget target) {
    return RANDOM_CLASSES.contains(owner(target))
        || isMethod(target, "java.lang.Math", "random")
        || isMethod(target, "java.util.UUID", "randomUUID")
        || signature(target).equals("java.util.Collections.shuffle/1");
  }

  private static boolean asksMachine(AccessTarget target) {
    return MACHINE_CLASSES.contains(owner(target))
        || isMethod(target, "java.time.ZoneId", "systemDefault")
        || isMethod(target, "java.util.TimeZone", "getDefault")
        || (owner(target).equals("java.lang.System") && !target.getName().equals("arraycopy"));
  }

  private static boolean takesLocale(AccessTarget target) {
    return LOCALE_BY_DEFAULT.contains(signature(target));
  }

  private static boolean isInexact(AccessTarget target) {
    return owner(target).equals("java.lang.Math") && INEXACT.contains(target.getName());
  }

  private static boolean isOf(AccessTarget target, String packagePrefix) {
    return owner(target).startsWith(packagePrefix);
  }

  private static boolean isMethod(AccessTarget target, String owner, String name) {
    return owner(target).equals(owner) && target.getName().equals(name);
  }

  private static String owner(AccessTarget target) {
    return target.getOwner().getFullName();
  }

  private static String signature(AccessTarget target) {
    int parameters =
        target instanceof CodeUnitAccessTarget code ? code.getRawParameterTypes().size() : 0;
    return owner(target) + "." + target.getName() + "/" + parameters;
  }
}
