package yardloom.language.bytes;

import groovyjarjarasm.asm.ClassReader;
import groovyjarjarasm.asm.ClassVisitor;
import groovyjarjarasm.asm.ClassWriter;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import java.util.function.UnaryOperator;

/** The same class with every method passed through a visitor. */
public final class Rewriting {
  private Rewriting() {}

  /**
   * The bytes of the class.
   *
   * @param method gives the visitor that hands on to the one it is given
   */
  public static byte[] of(byte[] bytes, UnaryOperator<MethodVisitor> method) {
    ClassWriter writer = new ClassWriter(0);
    new ClassReader(bytes)
        .accept(
            new ClassVisitor(Opcodes.ASM9, writer) {
              @Override
              public MethodVisitor visitMethod(
                  int access, String name, String descriptor, String generic, String[] thrown) {
                return method.apply(super.visitMethod(access, name, descriptor, generic, thrown));
              }
            },
            0);
    return writer.toByteArray();
  }
}
