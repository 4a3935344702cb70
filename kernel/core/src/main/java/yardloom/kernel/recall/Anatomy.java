package yardloom.kernel.recall;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import yardloom.kernel.plan.Attributes;

/**
 * How values of a class are looked into: as a whole, or field by field.
 *
 * @param whole whether {@code equals} says all and no script place lies inside
 * @param hidden whether it is code made at run time or a holder of others, which may hold anything
 * @param fields those that are not static and not transient, those of classes above first
 */
record Anatomy(boolean whole, boolean hidden, List<Field> fields) {
  /** Classes of libraries that are values, by the beginnings of their names. */
  private static final List<String> VALUES =
      List.of(
          "java.lang.",
          "java.math.",
          "java.time.",
          "java.util.BitSet",
          "java.util.Currency",
          "java.util.Locale",
          "java.util.OptionalDouble",
          "java.util.OptionalInt",
          "org.locationtech.jts.geom.");

  private static final ClassValue<Anatomy> KNOWN =
      new ClassValue<>() {
        @Override
        protected Anatomy computeValue(Class<?> type) {
          return made(type);
        }
      };

  static Anatomy of(Class<?> type) {
    return KNOWN.get(type);
  }

  private static Anatomy made(Class<?> type) {
    String name = type.getName();
    boolean value = VALUES.stream().anyMatch(name::startsWith);
    if (type.isHidden() || !value && name.startsWith("java.")) {
      return new Anatomy(false, true, List.of());
    }
    if (value || Enum.class.isAssignableFrom(type) || isWhole(type)) {
      return new Anatomy(true, false, List.of());
    }
    return new Anatomy(false, false, fields(type));
  }

  /** Attributes are told alike by their owners' places too, and are looked into all the same. */
  private static boolean isWhole(Class<?> type) {
    return !type.isRecord() && type != Attributes.class && saysEqual(type);
  }

  private static boolean saysEqual(Class<?> type) {
    return Stream.<Class<?>>iterate(type, c -> c != Object.class, Class::getSuperclass)
        .flatMap(c -> Stream.of(c.getDeclaredMethods()))
        .anyMatch(m -> m.getName().equals("equals") && m.getParameterCount() == 1);
  }

  private static List<Field> fields(Class<?> type) {
    List<Field> fields = new ArrayList<>();
    for (Class<?> c = type; c != null && c != Object.class; c = c.getSuperclass()) {
      List<Field> own = new ArrayList<>();
      for (Field field : c.getDeclaredFields()) {
        int modifiers = field.getModifiers();
        if (!Modifier.isStatic(modifiers) && !Modifier.isTransient(modifiers)) {
          field.setAccessible(true);
          own.add(field);
        }
      }
      fields.addAll(0, own);
    }
    return List.copyOf(fields);
  }

  /** What {@code field} of {@code value} holds. */
  static Object in(Field field, Object value) {
    try {
      return field.get(value);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException("the field was opened", e);
    }
  }

  /**
   * A record of the same class with these components.
   *
   * @throws ReflectiveOperationException if the record refuses them
   */
  static Object record(Class<?> type, Object[] components) throws ReflectiveOperationException {
    Class<?>[] types =
        Stream.of(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    Constructor<?> canonical = type.getDeclaredConstructor(types);
    canonical.setAccessible(true);
    return canonical.newInstance(components);
  }
}
