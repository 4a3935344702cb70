package yardloom.language.type;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yardloom.kernel.geom.Line;
import yardloom.kernel.geom.Point;
import yardloom.kernel.geom.Shape;
import yardloom.kernel.ground.Surface;
import yardloom.kernel.scope.Handle;
import yardloom.kernel.source.Source;
import yardloom.kernel.survey.Deed;
import yardloom.kernel.unit.Angle;
import yardloom.kernel.unit.Area;
import yardloom.kernel.unit.Flow;
import yardloom.kernel.unit.Length;
import yardloom.kernel.unit.Mass;
import yardloom.kernel.unit.Money;
import yardloom.kernel.unit.Pressure;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Temperature;
import yardloom.kernel.unit.TimeSpan;
import yardloom.kernel.unit.Volume;

/**
 * The closed list of value types that scripts may hold, and of what they may ask of them.
 *
 * <p>To let scripts use one more method of a kernel type, add its name to that type's line; to let
 * them use one more type, add a line. Everything that is not listed is refused, both when the
 * script is read and again on the finished bytes. Lists, maps, texts and numbers are served by the
 * host's own methods, see {@link HostClasses}.
 */
public final class ScriptTypes {
  private static final String[] QUANTITY = {
    "plus", "minus", "multiply", "div", "negative", "ratioTo", "max", "min"
  };

  /** Members that are doors to Java, whatever they are asked of. */
  private static final Set<String> DOORS =
      Set.of(
          "class",
          "metaClass",
          "getClass",
          "getMetaClass",
          "setMetaClass",
          "owner",
          "delegate",
          "thisObject",
          "binding",
          "properties",
          "this",
          "super",
          "call",
          "getProperty",
          "setProperty",
          "invokeMethod");

  private static final Map<Class<?>, Set<String>> METHODS = new LinkedHashMap<>();

  static {
    type(Length.class, QUANTITY);
    type(Area.class, QUANTITY);
    type(Volume.class, QUANTITY);
    type(Mass.class, QUANTITY);
    type(Angle.class, QUANTITY);
    type(Flow.class, QUANTITY);
    type(Pressure.class, QUANTITY);
    type(Temperature.class, QUANTITY);
    type(TimeSpan.class, QUANTITY);
    type(Money.class, QUANTITY);
    type(Point.class, "x", "y", "distance", "moved", "turned", "mirrored", "to");
    type(
        Line.class,
        "length",
        "points",
        "start",
        "end",
        "moved",
        "turned",
        "mirrored",
        "reversed",
        "at",
        "middle",
        "nearest",
        "part",
        "strip");
    type(
        Shape.class,
        "area",
        "perimeter",
        "heart",
        "centroid",
        "plus",
        "minus",
        "and",
        "grown",
        "shrunk",
        "moved",
        "turned",
        "mirrored",
        "parts",
        "contains",
        "covers",
        "overlaps",
        "distance",
        "isEmpty",
        "north",
        "south",
        "east",
        "west",
        "outline",
        "corners",
        "width",
        "depth",
        "rounded",
        "side",
        "nearest");
    // Held and handed on, never asked.
    type(Source.class);
    type(Deed.class, "rawArea", "adjustedArea");
    type(Surface.class, "level", "contour", "contourBearing");
    // A handle's getters exist for scripts only, so all of them are open.
    type(
        Handle.class,
        "get*",
        "side",
        "plus",
        "minus",
        "and",
        "grown",
        "shrunk",
        "moved",
        "turned",
        "mirrored",
        "nearest");
  }

  /** The names a script may write where a type stands. */
  private static final Map<String, Class<?>> NAMES = new TreeMap<>();

  static {
    METHODS.keySet().forEach(c -> NAMES.put(c.getSimpleName(), c));
    NAMES.put("int", Integer.class);
    NAMES.put("double", Double.class);
    NAMES.put("boolean", Boolean.class);
    NAMES.put("void", void.class);
    NAMES.put("Integer", Integer.class);
    NAMES.put("Double", Double.class);
    NAMES.put("Boolean", Boolean.class);
    NAMES.put("Number", Number.class);
    NAMES.put("String", String.class);
    NAMES.put("List", List.class);
    NAMES.put("Map", Map.class);
    NAMES.put("Closure", groovy.lang.Closure.class);
  }

  private ScriptTypes() {}

  private static void type(Class<?> type, String... methods) {
    METHODS.put(type, new TreeSet<>(List.of(methods)));
  }

  /** The type that scripts call {@code name}. */
  public static Optional<Class<?>> named(String name) {
    return Optional.ofNullable(NAMES.get(name));
  }

  /** The names of all types that scripts may write. */
  public static Set<String> names() {
    return NAMES.keySet();
  }

  /** The kernel types on the list. */
  public static Set<Class<?>> values() {
    return METHODS.keySet();
  }

  /** The listed names of a type as the list has them. */
  static Set<String> listed(Class<?> type) {
    return METHODS.get(type);
  }

  public static boolean isQuantity(Class<?> type) {
    return Quantity.class.isAssignableFrom(type) && METHODS.containsKey(type);
  }

  /** The listed public methods {@code name} of a listed type, in a fixed order. */
  public static List<Method> methods(Class<?> type, String name) {
    if (!allows(type, name)) {
      return List.of();
    }
    List<Method> found = new ArrayList<>();
    for (Method method : type.getMethods()) {
      if (method.getName().equals(name)
          && !Modifier.isStatic(method.getModifiers())
          && !method.isBridge()
          && method.getDeclaringClass() != Object.class) {
        found.add(method);
      }
    }
    found.sort(java.util.Comparator.comparing(Method::toGenericString));
    return found;
  }

  /** Whether a member of this name leads out of the language, whatever it is asked of. */
  public static boolean isDoor(String name) {
    return DOORS.contains(name);
  }

  /** Whether scripts may call {@code name} on {@code type}. */
  public static boolean allows(Class<?> type, String name) {
    Set<String> listed = METHODS.get(type);
    return listed != null
        && (listed.contains(name)
            || listed.contains("get*") && name.startsWith("get") && !isDoor(name));
  }

  /** What scripts may call on {@code type}, as they write it, sorted. */
  public static List<String> offers(Class<?> type) {
    TreeSet<String> names = new TreeSet<>();
    Arrays.stream(type.getMethods())
        .filter(m -> allows(type, m.getName()) && !Modifier.isStatic(m.getModifiers()))
        .forEach(m -> names.add(asProperty(m)));
    return List.copyOf(names);
  }

  private static String asProperty(Method method) {
    String name = method.getName();
    if (method.getParameterCount() == 0 && name.length() > 3 && name.startsWith("get")) {
      return Character.toLowerCase(name.charAt(3)) + name.substring(4);
    }
    return name;
  }
}
