package yardloom.language.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ScriptTypesTest {
  private static final Set<Class<?>> PLAIN =
      Set.of(
          String.class,
          Boolean.class,
          Integer.class,
          Double.class,
          Number.class,
          boolean.class,
          int.class,
          double.class);

  private static boolean closed(Type type) {
    if (type instanceof ParameterizedType list) {
      return list.getRawType() == List.class && closed(list.getActualTypeArguments()[0]);
    }
    return type instanceof TypeVariable<?>
        || PLAIN.contains(type)
        || ScriptTypes.values().contains(type);
  }

  /** What a listed method gives or takes is listed too: no way leads out of the list. */
  @Test
  void listedMethods_ofListedTypes_giveAndTakeListedTypesOnly() {
    List<String> open = new ArrayList<>();
    for (Class<?> type : ScriptTypes.values()) {
      for (Method method : type.getMethods()) {
        if (!ScriptTypes.allows(type, method.getName())
            || Modifier.isStatic(method.getModifiers())
            || method.isBridge()) {
          continue;
        }
        boolean fine = closed(method.getGenericReturnType());
        for (Class<?> parameter : method.getParameterTypes()) {
          fine &= closed(parameter) || parameter == yardloom.kernel.unit.Quantity.class;
        }
        if (!fine) {
          open.add(method.toString());
        }
      }
    }
    assertEquals(List.of(), open);
  }

  /** A name on the list that no method bears would be offered and then refused. */
  @Test
  void listedNames_ofListedTypes_areMethods() {
    List<String> missing = new ArrayList<>();
    for (Class<?> type : ScriptTypes.values()) {
      for (String name : ScriptTypes.listed(type)) {
        if (!name.endsWith("*") && ScriptTypes.methods(type, name).isEmpty()) {
          missing.add(type.getSimpleName() + "." + name);
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void doors_toJava_areOnNoList() {
    for (Class<?> type : ScriptTypes.values()) {
      for (String door :
          List.of("getClass", "wait", "notify", "hashCode", "toString", "jts", "getMetaClass")) {
        assertTrue(!ScriptTypes.allows(type, door), type + "." + door);
      }
    }
  }

  @Test
  void typeNames_ofScripts_meanListedOrPlainTypes() {
    for (String name : ScriptTypes.names()) {
      Class<?> type = ScriptTypes.named(name).orElseThrow();
      boolean known =
          closed(type)
              || type == List.class
              || type == Map.class
              || type == void.class
              || type == groovy.lang.Closure.class;
      assertTrue(known, name);
    }
  }
}
