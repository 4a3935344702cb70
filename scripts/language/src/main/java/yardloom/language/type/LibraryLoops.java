package yardloom.language.type;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.codehaus.groovy.ast.MethodNode;
import org.codehaus.groovy.runtime.DefaultGroovyMethods;

/**
 * The loops of Groovy's library that scripts may call: the only methods of it, and the only list of
 * them. Groovy's own checker resolves them, because it infers the parameters of their closures.
 */
public final class LibraryLoops {
  private static final List<String> OF_CONTAINERS =
      List.of("each", "collect", "findAll", "find", "any", "every", "eachWithIndex");
  private static final List<String> OF_NUMBERS = List.of("times", "upto", "downto");
  private static final Set<String> RECEIVERS =
      Set.of(
          "java.lang.Iterable",
          "java.util.Collection",
          "java.util.List",
          "java.util.Map",
          "java.lang.Number");

  private LibraryLoops() {}

  /** Whether a loop has this name. */
  public static boolean isNamed(String name) {
    return OF_CONTAINERS.contains(name) || OF_NUMBERS.contains(name);
  }

  /**
   * Whether a call is one of a listed loop on a listed receiver.
   *
   * @param owner name of the class that the method stands in
   * @param receiver name of the type of its first parameter
   */
  public static boolean allows(String owner, String name, String receiver) {
    return owner.equals(DefaultGroovyMethods.class.getName())
        && isNamed(name)
        && RECEIVERS.contains(receiver);
  }

  /** The same of a method that the compiler chose. */
  public static boolean allows(MethodNode method) {
    return allows(
        method.getDeclaringClass().getName(),
        method.getName(),
        method.getParameters()[0].getType().getName());
  }

  /** The loops to name where a value of this type was asked for something else. */
  public static List<String> offers(Class<?> type) {
    if (type == List.class || type == Map.class) {
      return OF_CONTAINERS.subList(0, OF_CONTAINERS.size() - 1);
    }
    return TypeWords.isNumber(type) ? OF_NUMBERS : List.of();
  }
}
