package yardloom.language.record;

import groovyjarjarasm.asm.Handle;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import groovyjarjarasm.asm.Type;
import java.lang.invoke.CallSite;
import java.lang.invoke.ConstantCallSite;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import yardloom.kernel.unit.Quantity;
import yardloom.language.bytes.Rewriting;

/**
 * Makes finished classes of a script tell a {@link Recorder} of each word and each number with a
 * unit. The classes have passed the gate before; only calls that it allowed are replaced, each by
 * one that does the same and says so.
 */
public final class Recording {
  private static final String LINK = "link";

  private static final MethodType LINKS =
      MethodType.methodType(
          CallSite.class,
          MethodHandles.Lookup.class,
          String.class,
          MethodType.class,
          MethodHandle.class,
          String.class);

  private final Recorder recorder;
  private final String units;

  /**
   * @param units the class whose methods give numbers their units
   */
  public Recording(Recorder recorder, Class<?> units) {
    this.recorder = recorder;
    this.units = Type.getInternalName(units);
  }

  /** The classes that scripts made here need besides their own. */
  public static List<Class<?>> needed() {
    return List.of(
        Recording.class,
        CallSite.class,
        MethodHandle.class,
        MethodHandles.Lookup.class,
        MethodType.class);
  }

  /** The same classes, telling. */
  public Map<String, byte[]> of(Map<String, byte[]> classes) {
    Map<String, byte[]> made = new HashMap<>();
    new TreeMap<>(classes).forEach((name, bytes) -> made.put(name, telling(bytes)));
    return made;
  }

  private byte[] telling(byte[] bytes) {
    return Rewriting.of(bytes, Calls::new);
  }

  private final class Calls extends MethodVisitor {
    Calls(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean face) {
      String key = owner + "." + name + descriptor;
      boolean unit = owner.equals(units) && descriptor.startsWith("(Ljava/lang/Number;)");
      if (opcode == Opcodes.INVOKESTATIC && (unit || recorder.isWord(key))) {
        Handle link =
            new Handle(
                Opcodes.H_INVOKESTATIC,
                Type.getInternalName(Recording.class),
                LINK,
                LINKS.toMethodDescriptorString(),
                false);
        Handle target = new Handle(Opcodes.H_INVOKESTATIC, owner, name, descriptor, face);
        super.visitInvokeDynamicInsn(name, descriptor, link, target, unit ? "" : key);
      } else {
        super.visitMethodInsn(opcode, owner, name, descriptor, face);
      }
    }
  }

  /** Links one call; the machine asks for it, with a key for a word and none for a unit. */
  public static CallSite link(
      MethodHandles.Lookup from, String name, MethodType type, MethodHandle target, String key) {
    MethodHandle teller =
        TELL.bindTo(new Told(target, key, name)).asCollector(Object[].class, type.parameterCount());
    return new ConstantCallSite(teller.asType(type));
  }

  private static final MethodHandle TELL;

  static {
    try {
      TELL =
          MethodHandles.lookup()
              .findVirtual(Told.class, "call", MethodType.methodType(Object.class, Object[].class));
    } catch (ReflectiveOperationException e) {
      throw new ExceptionInInitializerError(e);
    }
  }

  private record Told(MethodHandle target, String key, String name) {
    Object call(Object[] arguments) throws Throwable {
      Recorder recorder = Recorder.present();
      if (key.isEmpty()) {
        Object quantity = target.invokeWithArguments(arguments);
        String unit = Character.toLowerCase(name.charAt(3)) + name.substring(4);
        recorder.unit((Quantity<?>) quantity, (Number) arguments[0], unitWord(name, unit));
        return quantity;
      }
      Object begun = recorder.begin(key, arguments);
      Object result = target.invokeWithArguments(arguments);
      recorder.gave(begun, result);
      return result;
    }

    /** {@code getPa} is {@code Pa}, {@code getFt} is {@code ft}. */
    private static String unitWord(String getter, String low) {
      String plain = getter.substring(3);
      return CAPITALS.contains(plain) ? plain : low;
    }

    private static final Set<String> CAPITALS = Set.of("L", "Pa", "K");
  }
}
