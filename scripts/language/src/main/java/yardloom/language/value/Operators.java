package yardloom.language.value;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Quantity;
import yardloom.language.limit.Meter;

/**
 * What the signs of the language do with numbers, texts, lists and maps.
 *
 * <p>Whole numbers are 32-bit and refuse to overflow; all other numbers are doubles, so that no
 * calculation can grow without end. Lists hold at most 100,000 items, texts 100,000 characters.
 */
public final class Operators {
  static final int MOST = 100_000;

  private Operators() {}

  private static boolean whole(Number a, Number b) {
    return a instanceof Integer && b instanceof Integer;
  }

  private static Number exact(long value) {
    if (value != (int) value) {
      throw new ArithmeticException(
          "whole numbers go up to 2,147,483,647; got " + value + "; write a decimal, such as 3e9");
    }
    return (int) value;
  }

  private static Double finite(double value) {
    if (!Double.isFinite(value)) {
      throw new ArithmeticException("the result is no finite number");
    }
    return value;
  }

  public static Number plus(Number a, Number b) {
    return whole(a, b)
        ? exact((long) a.intValue() + b.intValue())
        : finite(a.doubleValue() + b.doubleValue());
  }

  public static Number minus(Number a, Number b) {
    return whole(a, b)
        ? exact((long) a.intValue() - b.intValue())
        : finite(a.doubleValue() - b.doubleValue());
  }

  public static Number multiply(Number a, Number b) {
    return whole(a, b)
        ? exact((long) a.intValue() * b.intValue())
        : finite(a.doubleValue() * b.doubleValue());
  }

  public static Double div(Number a, Number b) {
    if (b.doubleValue() == 0) {
      throw new ArithmeticException("a number cannot be divided by zero");
    }
    return finite(a.doubleValue() / b.doubleValue());
  }

  public static Number mod(Number a, Number b) {
    if (b.doubleValue() == 0) {
      throw new ArithmeticException("a number cannot be divided by zero");
    }
    return whole(a, b)
        ? (Number) (a.intValue() % b.intValue())
        : finite(a.doubleValue() % b.doubleValue());
  }

  public static Number negative(Number a) {
    return a instanceof Integer i ? exact(-(long) i) : finite(-a.doubleValue());
  }

  public static Double decimal(Number a) {
    return a.doubleValue();
  }

  public static Double ratio(Object a, Object b) {
    return ratioOf((Quantity<?>) a, (Quantity<?>) b);
  }

  private static double ratioOf(Quantity<?> a, Quantity<?> b) {
    if (b.si() == 0) {
      throw new ArithmeticException("a " + b.dimension().word() + " cannot be divided by zero");
    }
    return a.si() / b.si();
  }

  /** Whether a condition holds: not null, not zero, not empty. */
  public static boolean truth(Object value) {
    if (value instanceof Boolean b) {
      return b;
    } else if (value instanceof Number n) {
      return n.doubleValue() != 0;
    } else if (value instanceof String s) {
      return !s.isEmpty();
    } else if (value instanceof Collection<?> c) {
      return !c.isEmpty();
    } else if (value instanceof Map<?, ?> m) {
      return !m.isEmpty();
    }
    return value != null;
  }

  public static Boolean same(Object a, Object b) {
    if (a instanceof Number x && b instanceof Number y) {
      return x.doubleValue() == y.doubleValue();
    }
    boolean containers = a instanceof Collection || a instanceof Map;
    return a == b || a != null && b != null && !containers && a.equals(b);
  }

  public static Boolean differ(Object a, Object b) {
    return !same(a, b);
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  public static Integer order(Object a, Object b) {
    if (a instanceof Number x && b instanceof Number y) {
      return Double.compare(x.doubleValue(), y.doubleValue());
    }
    if (a == null || b == null || a.getClass() != b.getClass() || !(a instanceof Comparable)) {
      throw new PlanException(
          ProblemCode.WRONG_TYPE, "cannot compare " + Shown.kind(a) + " with " + Shown.kind(b));
    }
    return ((Comparable) a).compareTo(b);
  }

  public static Boolean less(Object a, Object b) {
    return order(a, b) < 0;
  }

  public static Boolean more(Object a, Object b) {
    return order(a, b) > 0;
  }

  public static Boolean atMost(Object a, Object b) {
    return order(a, b) <= 0;
  }

  public static Boolean atLeast(Object a, Object b) {
    return order(a, b) >= 0;
  }

  public static Boolean within(Object value, List<?> list) {
    for (Object each : list) {
      if (same(value, each)) {
        return true;
      }
    }
    return false;
  }

  /** A text with a value behind it. */
  public static String join(Object a, Object b) {
    String left = Shown.text(a);
    String right = Shown.text(b);
    fits(left.length() + (long) right.length(), "characters in a text");
    Meter.present().grow(left.length() + right.length());
    return left + right;
  }

  static void fits(long size, String what) {
    if (size > MOST) {
      throw new PlanException(ProblemCode.LIMIT, "more than 100,000 " + what);
    }
  }

  public static List<Object> both(List<?> a, List<?> b) {
    fits((long) a.size() + b.size(), "items in a list");
    Meter.present().hold(a.size() + b.size());
    List<Object> made = new ArrayList<>(a);
    made.addAll(b);
    return made;
  }

  public static List<Object> with(List<?> a, Object item) {
    return both(a, java.util.Collections.singletonList(item));
  }

  @SuppressWarnings("unchecked")
  public static List<Object> append(List<?> list, Object item) {
    if (item == list) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a list cannot hold itself");
    }
    fits(list.size() + 1L, "items in a list");
    changeable(list).add(item);
    return (List<Object>) list;
  }

  @SuppressWarnings("unchecked")
  private static List<Object> changeable(List<?> list) {
    if (!(list instanceof ArrayList)) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE, "this list cannot be changed; make a new one with `+`");
    }
    return (List<Object>) list;
  }

  /** The item at an index from 0, or from -1 counting from the end. */
  public static Object at(List<?> list, Integer index) {
    return list.get(index(index, list.size(), "items"));
  }

  private static int index(int index, int size, String what) {
    int real = index < 0 ? size + index : index;
    if (real < 0 || real >= size) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "there is no place " + index + " among " + size + " " + what + "; the first is 0");
    }
    return real;
  }

  public static List<Object> slice(List<?> list, List<?> indices) {
    List<Object> made = new ArrayList<>();
    for (Object each : indices) {
      made.add(at(list, place(each)));
    }
    Meter.present().hold(made.size());
    return made;
  }

  private static Integer place(Object value) {
    if (value instanceof Integer i) {
      return i;
    }
    throw new PlanException(
        ProblemCode.WRONG_TYPE, "a place in a list is a whole number; got " + Shown.kind(value));
  }

  public static Object set(List<?> list, Integer index, Object item) {
    if (item == list) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a list cannot hold itself");
    }
    changeable(list).set(index(index, list.size(), "items"), item);
    return item;
  }

  public static Object get(Map<?, ?> map, String key) {
    return map.get(key);
  }

  @SuppressWarnings("unchecked")
  public static Object put(Map<?, ?> map, String key, Object value) {
    if (value == map) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "a map cannot hold itself");
    }
    fits(map.size() + 1L, "entries in a map");
    ((Map<Object, Object>) map).put(key, value);
    return value;
  }

  public static String letter(String text, Integer index) {
    int real = index(index, text.length(), "letters");
    if (Character.isSurrogate(text.charAt(real))) {
      throw new PlanException(
          ProblemCode.OUT_OF_RANGE,
          "place " + index + " of this text holds half a sign, such as of an emoji");
    }
    return text.substring(real, real + 1);
  }

  public static String letters(String text, List<?> indices) {
    StringBuilder made = new StringBuilder();
    indices.forEach(i -> made.append(letter(text, place(i))));
    return made.toString();
  }

  /** Upwards only: {@code 1..0} is empty. */
  public static List<Integer> range(Integer from, Integer to, Boolean inclusive) {
    long size = Math.max(0, (long) to - from + (inclusive ? 1 : 0));
    fits(size, "numbers in a range");
    Meter.present().hold((int) size);
    List<Integer> made = new ArrayList<>((int) size);
    for (int i = 0; i < size; i++) {
      made.add(from + i);
    }
    return made;
  }

  /** A copy to go through, so that a loop may change the list it goes through. */
  public static List<Object> items(List<?> list) {
    return new ArrayList<>(list);
  }

  public static List<Map.Entry<?, ?>> entries(Map<?, ?> map) {
    return new ArrayList<>(map.entrySet());
  }
}
