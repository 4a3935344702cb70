package yardloom.language.value;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import yardloom.kernel.problem.PlanException;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.unit.Quantity;

/**
 * What scripts may ask of lists, maps, texts and numbers; the first parameter is the receiver.
 *
 * <p>Type variables are read by the checker: T is the receiver's element, K and V those of a map.
 */
public final class Values {
  private Values() {}

  public static Integer size(List<?> list) {
    return list.size();
  }

  public static Boolean isEmpty(List<?> list) {
    return list.isEmpty();
  }

  public static <T> T first(List<T> list) {
    return some(list).get(0);
  }

  public static <T> T last(List<T> list) {
    return some(list).get(list.size() - 1);
  }

  private static <T> List<T> some(List<T> list) {
    if (list.isEmpty()) {
      throw new PlanException(ProblemCode.OUT_OF_RANGE, "the list is empty");
    }
    return list;
  }

  public static <T> List<T> reverse(List<T> list) {
    List<T> made = new ArrayList<>(list);
    Collections.reverse(made);
    return made;
  }

  /** Sorted copy of a list of numbers, texts or quantities. */
  public static <T> List<T> sort(List<T> list) {
    List<T> made = new ArrayList<>(list);
    made.sort(Operators::order);
    return made;
  }

  public static <T> T max(List<T> list) {
    return Collections.max(some(list), Operators::order);
  }

  public static <T> T min(List<T> list) {
    return Collections.min(some(list), Operators::order);
  }

  /** The sum of a list of numbers, or of quantities of one kind. */
  @SuppressWarnings("unchecked")
  public static <T> T sum(List<T> list) {
    Object total = some(list).get(0);
    for (Object each : list.subList(1, list.size())) {
      total = add(total, each);
    }
    return (T) total;
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Object add(Object a, Object b) {
    if (a instanceof Number x && b instanceof Number y) {
      return Operators.plus(x, y);
    }
    if (a instanceof Quantity x && b instanceof Quantity y && x.getClass() == y.getClass()) {
      return x.plus(y);
    }
    throw new PlanException(
        ProblemCode.WRONG_TYPE, "cannot add " + Shown.kind(b) + " to " + Shown.kind(a));
  }

  public static Boolean contains(List<?> list, Object value) {
    return Operators.within(value, list);
  }

  public static List<Object> add(List<?> list, Object item) {
    return Operators.append(list, item);
  }

  public static String join(List<?> list, String between) {
    String made = "";
    StringBuilder all = new StringBuilder();
    for (Object each : list) {
      all.append(made).append(Shown.text(each));
      Operators.fits(all.length(), "characters in a text");
      made = between;
    }
    return all.toString();
  }

  public static Integer size(Map<?, ?> map) {
    return map.size();
  }

  public static <K> List<K> keys(Map<K, ?> map) {
    return new ArrayList<>(map.keySet());
  }

  public static <V> List<V> values(Map<?, V> map) {
    return new ArrayList<>(map.values());
  }

  public static Boolean containsKey(Map<?, ?> map, String key) {
    return map.containsKey(key);
  }

  public static <K> K getKey(Map.Entry<K, ?> entry) {
    return entry.getKey();
  }

  public static <V> V getValue(Map.Entry<?, V> entry) {
    return entry.getValue();
  }

  public static Integer size(String text) {
    return text.length();
  }

  public static Integer length(String text) {
    return text.length();
  }

  public static String toUpperCase(String text) {
    return text.toUpperCase(Locale.ROOT);
  }

  public static String toLowerCase(String text) {
    return text.toLowerCase(Locale.ROOT);
  }

  public static String capitalize(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  public static String trim(String text) {
    return text.strip();
  }

  public static Boolean contains(String text, String part) {
    return text.contains(part);
  }

  public static Boolean startsWith(String text, String part) {
    return text.startsWith(part);
  }

  public static Boolean endsWith(String text, String part) {
    return text.endsWith(part);
  }

  public static Number abs(Number value) {
    return value instanceof Integer i ? (Number) Math.absExact(i) : Math.abs(value.doubleValue());
  }

  public static Integer round(Number value) {
    return Math.toIntExact(Math.round(value.doubleValue()));
  }

  public static Integer intdiv(Integer value, Integer by) {
    if (by == 0) {
      throw new ArithmeticException("a number cannot be divided by zero");
    }
    return value / by;
  }

  public static Number mathAbs(Number value) {
    return abs(value);
  }

  public static Integer mathRound(Number value) {
    return round(value);
  }

  public static Integer mathCeil(Number value) {
    return Math.toIntExact((long) Math.ceil(value.doubleValue()));
  }

  public static Integer mathFloor(Number value) {
    return Math.toIntExact((long) Math.floor(value.doubleValue()));
  }

  public static Double mathSqrt(Number value) {
    if (value.doubleValue() < 0) {
      throw new ArithmeticException("a negative number has no square root");
    }
    return Math.sqrt(value.doubleValue());
  }

  public static Double mathPow(Number value, Number power) {
    double made = StrictMath.pow(value.doubleValue(), power.doubleValue());
    if (!Double.isFinite(made)) {
      throw new ArithmeticException("the result is no finite number");
    }
    return made;
  }

  /** Of an angle. */
  public static Double mathSin(yardloom.kernel.unit.Angle angle) {
    return StrictMath.sin(angle.radians());
  }

  public static Double mathCos(yardloom.kernel.unit.Angle angle) {
    return StrictMath.cos(angle.radians());
  }

  public static Double mathTan(yardloom.kernel.unit.Angle angle) {
    return StrictMath.tan(angle.radians());
  }

  public static Number mathMax(Number a, Number b) {
    return Operators.more(a, b) ? a : b;
  }

  public static Number mathMin(Number a, Number b) {
    return Operators.less(a, b) ? a : b;
  }
}
