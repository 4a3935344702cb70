package yardloom.language.typed;

import groovyjarjarasm.asm.Handle;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import groovyjarjarasm.asm.Type;
import yardloom.language.bytes.Rewriting;

/**
 * Replaces Groovy's dynamic casts by the machine's own.
 *
 * <p>Groovy casts the value of a variable that a closure shares by a dynamic call that may convert,
 * even by calling constructors. The rewritten script never needs that: what a variable holds is
 * what it says. Other dynamic calls are left for the class gate to refuse.
 */
public final class PlainCasts {
  private PlainCasts() {}

  public static byte[] in(byte[] bytes) {
    return Rewriting.of(bytes, Casts::new);
  }

  private static final class Casts extends MethodVisitor {
    Casts(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      Type[] from = Type.getArgumentTypes(descriptor);
      Type to = Type.getReturnType(descriptor);
      boolean object = to.getSort() == Type.OBJECT;
      if (name.equals("cast") && object && from.length == 1 && from[0].getSort() == Type.OBJECT) {
        super.visitTypeInsn(Opcodes.CHECKCAST, to.getInternalName());
      } else {
        super.visitInvokeDynamicInsn(name, descriptor, bootstrap, arguments);
      }
    }
  }
}
