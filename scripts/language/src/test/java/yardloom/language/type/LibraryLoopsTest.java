package yardloom.language.type;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Method;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.codehaus.groovy.runtime.DefaultGroovyMethods;
import org.junit.jupiter.api.Test;

class LibraryLoopsTest {
  private static boolean allows(Method method) {
    return method.getParameterCount() > 0
        && LibraryLoops.allows(
            method.getDeclaringClass().getName(),
            method.getName(),
            method.getParameterTypes()[0].getName());
  }

  /**
   * Of over a thousand methods of Groovy's library, these; a receiver must be what loops go over.
   */
  @Test
  void methodsOfTheLibrary_thatAreAllowed_areLoops() {
    TreeSet<String> names = new TreeSet<>();
    Stream.of(DefaultGroovyMethods.class.getMethods())
        .filter(LibraryLoopsTest::allows)
        .forEach(m -> names.add(m.getName()));
    assertEquals(
        "[any, collect, downto, each, eachWithIndex, every, find, findAll, times, upto]",
        names.toString());
  }

  @Test
  void sameName_elsewhereOrOnAnotherReceiver_isRefused() {
    String library = DefaultGroovyMethods.class.getName();
    assertTrue(LibraryLoops.allows(library, "each", "java.lang.Iterable"));
    assertFalse(LibraryLoops.allows(library, "each", "java.lang.Object"));
    assertFalse(LibraryLoops.allows(library, "execute", "java.util.List"));
    assertFalse(LibraryLoops.allows("java.util.List", "each", "java.lang.Iterable"));
  }

  @Test
  void whatIsOffered_isAllowed() {
    for (Class<?> type : List.of(List.class, Map.class, Integer.class)) {
      assertFalse(LibraryLoops.offers(type).isEmpty());
      assertTrue(LibraryLoops.offers(type).stream().allMatch(LibraryLoops::isNamed));
    }
    assertEquals(List.of(), LibraryLoops.offers(String.class));
  }
}
