package daylight.app;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Map;
import java.util.Set;

/**
 * A table of packages and what each may know, as a condition on classes. The packages are the
 * children of one parent; whatever lies deeper belongs to its child. A child that the table does
 * not name is refused: a new room is a decision.
 */
final class Arrows extends ArchCondition<JavaClass> {
  private final String parent;
  private final Map<String, Set<String>> mayKnow;

  Arrows(String parent, Map<String, Set<String>> mayKnow) {
    super("know only what the table of " + parent + " allows");
    this.parent = parent + ".";
    this.mayKnow = Map.copyOf(mayKnow);
  }

  @Override
  public void check(JavaClass origin, ConditionEvents events) {
    String from = child(origin.getPackageName());
    if (from.isEmpty()) {
      return;
    }
    Set<String> known = mayKnow.get(from);
    if (known == null) {
      refuse(origin, events, origin.getName() + " lies in " + parent + from + ": not in the table");
      return;
    }
    for (Dependency dependency : origin.getDirectDependenciesFromSelf()) {
      String to = child(dependency.getTargetClass().getBaseComponentType().getPackageName());
      if (!to.isEmpty() && !to.equals(from) && !known.contains(to)) {
        refuse(origin, events, from + " may not know " + to + ": " + dependency.getDescription());
      }
    }
  }

  private String child(String packageName) {
    if (!packageName.startsWith(parent)) {
      return "";
    }
    String below = packageName.substring(parent.length());
    int dot = below.indexOf('.');
    return dot < 0 ? below : below.substring(0, dot);
  }

  private static void refuse(JavaClass origin, ConditionEvents events, String why) {
    events.add(SimpleConditionEvent.violated(origin, why));
  }
}
