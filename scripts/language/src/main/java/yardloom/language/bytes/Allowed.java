package yardloom.language.bytes;

import groovy.transform.stc.FirstParam;
import groovy.transform.stc.FromString;
import groovy.transform.stc.MapEntryOrKeyValue;
import groovy.transform.stc.SecondParam;
import groovy.transform.stc.SimpleType;
import groovyjarjarasm.asm.Type;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yardloom.kernel.vocab.Lexicon;
import yardloom.kernel.vocab.Scope;
import yardloom.kernel.vocab.Word;
import yardloom.language.type.HostClasses;
import yardloom.language.type.ScriptTypes;

/** The classes and methods that finished bytes may name, gathered from types, words and host. */
public final class Allowed {
  private final Set<String> calls = new HashSet<>();
  private final Map<String, Class<?>> classes = new HashMap<>();
  private final String program;

  public Allowed(Lexicon lexicon, HostClasses host) {
    program = Type.getInternalName(host.program());
    add(host.program());
    for (Class<?> type :
        List.of(host.operators(), host.values(), host.units(), host.guard(), host.builtins())) {
      add(type);
      for (Method method : type.getMethods()) {
        if (Modifier.isStatic(method.getModifiers())) {
          call(method);
        }
      }
    }
    for (Class<?> type : ScriptTypes.values()) {
      add(type);
      for (Method method : type.getMethods()) {
        if (ScriptTypes.allows(type, method.getName())
            && method.getDeclaringClass() != Object.class) {
          call(method);
          // The compiler names the receiver's own type where the method is inherited.
          calls.add(
              Type.getInternalName(type)
                  + "."
                  + method.getName()
                  + Type.getMethodDescriptor(method));
        }
      }
    }
    for (Word word : lexicon.all()) {
      call(word.method());
      for (Class<?> type : word.method().getParameterTypes()) {
        add(type);
      }
      word.inner().ifPresent(this::add);
    }
    add(yardloom.kernel.scope.PlanScope.class);
    add(Scope.class);
    for (Class<?> type :
        List.of(
            Object.class,
            String.class,
            Integer.class,
            Double.class,
            Boolean.class,
            Number.class,
            List.class,
            Map.class,
            Map.Entry.class,
            java.util.ArrayList.class,
            java.util.Iterator.class,
            Iterable.class,
            java.util.Collection.class,
            Void.class,
            Class.class,
            Comparable.class,
            yardloom.kernel.unit.Quantity.class,
            java.util.function.Consumer.class,
            java.util.LinkedHashMap.class,
            groovy.lang.Closure.class,
            groovy.lang.GroovyObject.class,
            groovy.lang.MetaClass.class,
            groovy.lang.Reference.class,
            groovy.transform.Generated.class,
            groovy.transform.Internal.class,
            java.beans.Transient.class,
            org.codehaus.groovy.runtime.GeneratedClosure.class,
            org.codehaus.groovy.runtime.ScriptBytecodeAdapter.class,
            org.codehaus.groovy.runtime.DefaultGroovyMethods.class,
            org.codehaus.groovy.reflection.ClassInfo.class,
            org.codehaus.groovy.runtime.typehandling.ShortTypeHandling.class)) {
      add(type);
    }
  }

  private void add(Class<?> type) {
    if (!type.isPrimitive()) {
      classes.put(type.getName(), type);
    }
  }

  private void call(Method method) {
    add(method.getDeclaringClass());
    if (!method.getReturnType().isArray()) {
      add(method.getReturnType());
    }
    calls.add(
        Type.getInternalName(method.getDeclaringClass())
            + "."
            + method.getName()
            + Type.getMethodDescriptor(method));
  }

  String program() {
    return program;
  }

  boolean call(String owner, String name, String descriptor) {
    return calls.contains(owner + "." + name + descriptor);
  }

  boolean type(String internal) {
    return classes.containsKey(internal.replace('/', '.'));
  }

  /** What the compiler is shown: the same, and how Groovy's library types closures. */
  public Map<String, Class<?>> compilerClasses() {
    Map<String, Class<?>> all = new HashMap<>(classes);
    for (Class<?> hint :
        List.of(
            FirstParam.class,
            SecondParam.class,
            FromString.class,
            MapEntryOrKeyValue.class,
            SimpleType.class)) {
      all.put(hint.getName(), hint);
      for (Class<?> inner : hint.getDeclaredClasses()) {
        all.put(inner.getName(), inner);
      }
    }
    return all;
  }

  /** What the class loader shows. */
  public Map<String, Class<?>> classes() {
    return Collections.unmodifiableMap(classes);
  }
}
