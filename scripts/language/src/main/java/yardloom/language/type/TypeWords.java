package yardloom.language.type;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.codehaus.groovy.ast.ClassHelper;
import org.codehaus.groovy.ast.ClassNode;
import yardloom.kernel.unit.Dimension;
import yardloom.kernel.unit.TimeSpan;

/** How types are called in messages, and which fits where. */
public final class TypeWords {
  private TypeWords() {}

  /** The object form of a primitive; other types as they are, with their type arguments. */
  public static ClassNode boxed(ClassNode type) {
    return ClassHelper.isPrimitiveType(type) ? ClassHelper.getWrapper(type) : type;
  }

  public static final ClassNode ENTRY = ClassHelper.make(Map.Entry.class);

  /** The Java type behind a node, lists and maps as their interface, Object when unknown. */
  public static Class<?> classOf(ClassNode node) {
    ClassNode type = boxed(node);
    if (type.equals(ClassHelper.OBJECT_TYPE)) {
      return Object.class;
    }
    if (is(type, ClassHelper.LIST_TYPE)) {
      return List.class;
    }
    if (is(type, ClassHelper.MAP_TYPE)) {
      return Map.class;
    }
    if (is(type, ENTRY)) {
      return Map.Entry.class;
    }
    if (type.equals(ClassHelper.CLOSURE_TYPE)) {
      return groovy.lang.Closure.class;
    }
    if (type.getName().equals(Hole.class.getName())) {
      return Hole.class;
    }
    for (Class<?> known : ScriptTypes.values()) {
      if (type.getName().equals(known.getName())) {
        return known;
      }
    }
    for (Class<?> known : List.of(Integer.class, Double.class, Boolean.class, String.class)) {
      if (type.getName().equals(known.getName())) {
        return known;
      }
    }
    boolean number = type.isDerivedFrom(ClassHelper.Number_TYPE);
    return number
        ? Number.class
        : type.isResolved() && !type.isPrimaryClassNode() ? type.getTypeClass() : Object.class;
  }

  private static boolean is(ClassNode type, ClassNode wanted) {
    return type.equals(wanted) || type.implementsInterface(wanted);
  }

  public static boolean isNumber(Class<?> type) {
    return Number.class.isAssignableFrom(type);
  }

  /** Whether a value of type {@code given} may stand where {@code wanted} is needed. */
  public static boolean fits(Class<?> given, Class<?> wanted) {
    return given == Hole.class || wanted.isAssignableFrom(given) || given == Void.class;
  }

  /** "a length", "a bare number", "true or false". */
  public static String a(Class<?> type) {
    if (type == Void.class) {
      return "nothing (null)";
    } else if (isNumber(type)) {
      return "a bare number";
    } else if (type == String.class) {
      return "a text";
    } else if (type == Boolean.class) {
      return "true or false";
    } else if (type == List.class) {
      return "a list";
    } else if (type == Map.class) {
      return "a map";
    } else if (type == groovy.lang.Closure.class) {
      return "a closure";
    } else if (type == Object.class) {
      return "a value of unknown type";
    } else if (type == Comparable.class || type == java.io.Serializable.class) {
      return "a value of one of several types";
    } else if (type == TimeSpan.class) {
      return "a duration";
    }
    String word =
        type.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    return ("aeiou".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
  }

  /** "a length, such as 4.ft"; "a number". */
  public static String needed(Class<?> type) {
    if (isNumber(type)) {
      return type == Integer.class ? "a whole number without unit" : "a number without unit";
    }
    for (Dimension dimension : Dimension.values()) {
      if (a(type).endsWith(" " + dimension.word())) {
        return a(type) + ", such as " + dimension.example();
      }
    }
    return a(type);
  }
}
