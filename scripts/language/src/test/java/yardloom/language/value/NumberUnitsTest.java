package yardloom.language.value;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yardloom.kernel.unit.Quantity;
import yardloom.kernel.unit.Unit;

class NumberUnitsTest {
  private static String getter(Unit unit) {
    return "get" + Character.toUpperCase(unit.word().charAt(0)) + unit.word().substring(1);
  }

  @Test
  void getters_ofNumberUnits_areExactlyTheUnitWords() {
    Set<String> offered =
        Arrays.stream(NumberUnits.class.getDeclaredMethods())
            .filter(m -> Modifier.isPublic(m.getModifiers()))
            .map(Method::getName)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> wanted =
        Arrays.stream(Unit.values())
            .map(NumberUnitsTest::getter)
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(wanted, offered);
    assertEquals(Unit.values().length, wanted.size(), "two unit words share a getter");
  }

  /** The value a script writes is the value the unit says: 2.5 of it, to and from SI. */
  @ParameterizedTest
  @EnumSource(Unit.class)
  void literal_inEachUnit_hasTheUnitsDimensionAndValue(Unit unit) throws Exception {
    Quantity<?> made =
        (Quantity<?>) NumberUnits.class.getMethod(getter(unit), Number.class).invoke(null, 2.5);
    assertEquals(unit.dimension(), made.dimension());
    assertEquals(2.5, made.in(unit), 1e-9);
  }
}
