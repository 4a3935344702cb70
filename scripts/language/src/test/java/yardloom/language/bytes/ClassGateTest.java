package yardloom.language.bytes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groovyjarjarasm.asm.ClassWriter;
import groovyjarjarasm.asm.Handle;
import groovyjarjarasm.asm.Label;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import groovyjarjarasm.asm.Type;
import groovyjarjarasm.asm.TypeReference;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import yardloom.kernel.vocab.Lexicon;
import yardloom.language.run.Builtins;
import yardloom.language.run.Guard;
import yardloom.language.run.PlanProgram;
import yardloom.language.type.HostClasses;
import yardloom.language.value.NumberUnits;
import yardloom.language.value.Operators;
import yardloom.language.value.Values;

/**
 * The last gate alone: bytes that no earlier gate has seen, made by hand. Each forbidden thing
 * stands beside one of its kind that is allowed, so that the gate cannot pass by refusing all.
 */
class ClassGateTest {
  private static final String PROGRAM = Type.getInternalName(PlanProgram.class);
  private static final String OPERATORS = Type.getInternalName(Operators.class);
  private static final String LIBRARY = "org/codehaus/groovy/runtime/DefaultGroovyMethods";
  private static final Allowed ALLOWED =
      new Allowed(
          Lexicon.of(List.of()),
          new HostClasses(
              Operators.class,
              Values.class,
              NumberUnits.class,
              Guard.class,
              Builtins.class,
              PlanProgram.class));

  private static Set<String> check(ClassWriter made) {
    made.visitEnd();
    return new ClassGate(ALLOWED, "plan1").check(made.toByteArray());
  }

  private static ClassWriter script(String name, String parent, String... faces) {
    ClassWriter made = new ClassWriter(0);
    made.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, name, null, parent, faces);
    return made;
  }

  private static Set<String> type(String name, String parent, String... faces) {
    return check(script(name, parent, faces));
  }

  private static Set<String> code(Consumer<MethodVisitor> body) {
    ClassWriter made = script("plan1", PROGRAM);
    MethodVisitor method = made.visitMethod(Opcodes.ACC_PUBLIC, "run", "()V", null, null);
    method.visitCode();
    body.accept(method);
    method.visitMaxs(9, 9);
    method.visitEnd();
    return check(made);
  }

  private static Set<String> call(int opcode, String owner, String name, String descriptor) {
    return code(m -> m.visitMethodInsn(opcode, owner, name, descriptor, false));
  }

  @Test
  void calls_ofListedMethods_passAndOthersDoNot() {
    String numbers = "(Ljava/lang/Number;Ljava/lang/Number;)Ljava/lang/Number;";
    assertEquals(Set.of(), call(Opcodes.INVOKESTATIC, OPERATORS, "plus", numbers));
    assertEquals(Set.of(), call(Opcodes.INVOKEVIRTUAL, "plan1$1", "anything", "()V"));
    assertEquals(Set.of(), call(Opcodes.INVOKESPECIAL, PROGRAM, "<init>", "()V"));
    assertEquals(Set.of(), call(Opcodes.INVOKESTATIC, "java/lang/Integer", "valueOf", "(I)V"));
    assertEquals(
        Set.of("call java/lang/System.exit(I)V"),
        call(Opcodes.INVOKESTATIC, "java/lang/System", "exit", "(I)V"));
    // A listed name with other types is another method.
    assertEquals(
        Set.of("call " + OPERATORS + ".plus()V"),
        call(Opcodes.INVOKESTATIC, OPERATORS, "plus", "()V"));
    assertEquals(Set.of("call plan12.run()V"), call(Opcodes.INVOKEVIRTUAL, "plan12", "run", "()V"));
    assertEquals(
        Set.of("call java/lang/Integer.getInteger()V"),
        call(Opcodes.INVOKESTATIC, "java/lang/Integer", "getInteger", "()V"));
  }

  @Test
  void calls_ofTheLibrary_areListedLoopsOnListedReceivers() {
    assertEquals(
        Set.of(),
        call(Opcodes.INVOKESTATIC, LIBRARY, "each", "(Ljava/util/List;Lgroovy/lang/Closure;)V"));
    assertEquals(
        Set.of("call " + LIBRARY + ".each(Ljava/lang/Object;)V"),
        call(Opcodes.INVOKESTATIC, LIBRARY, "each", "(Ljava/lang/Object;)V"));
    assertEquals(
        Set.of("call " + LIBRARY + ".withStream(Ljava/util/List;)V"),
        call(Opcodes.INVOKESTATIC, LIBRARY, "withStream", "(Ljava/util/List;)V"));
    assertEquals(
        Set.of("call " + LIBRARY + ".each()V"), call(Opcodes.INVOKESTATIC, LIBRARY, "each", "()V"));
  }

  @Test
  void objects_thatAreMade_areClosuresListsMapsAndSharedVariables() {
    assertEquals(Set.of(), code(m -> m.visitTypeInsn(Opcodes.NEW, "java/util/ArrayList")));
    assertEquals(Set.of(), code(m -> m.visitTypeInsn(Opcodes.NEW, "plan1$_run_closure1")));
    assertEquals(
        Set.of("new java/io/File"), code(m -> m.visitTypeInsn(Opcodes.NEW, "java/io/File")));
    assertEquals(
        Set.of("call java/io/File.<init>(Ljava/lang/String;)V"),
        call(Opcodes.INVOKESPECIAL, "java/io/File", "<init>", "(Ljava/lang/String;)V"));
    assertEquals(Set.of(), call(Opcodes.INVOKESPECIAL, "java/util/LinkedHashMap", "<init>", "()V"));
    // Only where it is made: the name alone opens nothing.
    assertEquals(
        Set.of("call java/util/LinkedHashMap.<init>()V"),
        call(Opcodes.INVOKEVIRTUAL, "java/util/LinkedHashMap", "<init>", "()V"));
  }

  @Test
  void arrays_areOfPlainObjectsOnly() {
    assertEquals(Set.of(), code(m -> m.visitTypeInsn(Opcodes.ANEWARRAY, "java/lang/Object")));
    assertEquals(
        Set.of("array of java/lang/String"),
        code(m -> m.visitTypeInsn(Opcodes.ANEWARRAY, "java/lang/String")));
    assertEquals(
        Set.of("array of primitives"), code(m -> m.visitIntInsn(Opcodes.NEWARRAY, Opcodes.T_INT)));
    assertEquals(Set.of(), code(m -> m.visitIntInsn(Opcodes.BIPUSH, Opcodes.T_INT)));
    assertEquals(
        Set.of("array [[Ljava/lang/Object;"),
        code(m -> m.visitMultiANewArrayInsn("[[Ljava/lang/Object;", 2)));
  }

  @Test
  void types_thatCodeNames_areListed() {
    assertEquals(Set.of(), code(m -> m.visitTypeInsn(Opcodes.CHECKCAST, "java/lang/Double")));
    assertEquals(
        Set.of("type java/lang/Runtime"),
        code(m -> m.visitTypeInsn(Opcodes.CHECKCAST, "java/lang/Runtime")));
    assertEquals(
        Set.of("type java/lang/Runtime"),
        code(m -> m.visitLdcInsn(Type.getObjectType("java/lang/Runtime"))));
    assertEquals(
        Set.of("type [Ljava/lang/Runtime;"),
        code(m -> m.visitTypeInsn(Opcodes.INSTANCEOF, "[Ljava/lang/Runtime;")));
    assertEquals(Set.of(), code(m -> m.visitLdcInsn("text")));
    assertEquals(Set.of(), code(m -> m.visitLdcInsn(1.5)));
  }

  @Test
  void fields_areTheScriptsOwnAndTruth() {
    String truth = "Ljava/lang/Boolean;";
    assertEquals(
        Set.of(),
        code(m -> m.visitFieldInsn(Opcodes.GETSTATIC, "java/lang/Boolean", "TRUE", truth)));
    assertEquals(Set.of(), code(m -> m.visitFieldInsn(Opcodes.GETFIELD, "plan1", "mine", truth)));
    assertEquals(
        Set.of("field java/lang/Boolean.TRUE"),
        code(m -> m.visitFieldInsn(Opcodes.PUTSTATIC, "java/lang/Boolean", "TRUE", truth)));
    assertEquals(
        Set.of("field java/lang/System.out", "type java/io/PrintStream"),
        code(
            m ->
                m.visitFieldInsn(
                    Opcodes.GETSTATIC, "java/lang/System", "out", "Ljava/io/PrintStream;")));
    assertEquals(
        Set.of("type java/io/File"),
        code(m -> m.visitFieldInsn(Opcodes.GETFIELD, "plan1", "mine", "Ljava/io/File;")));
  }

  @Test
  void dynamicCallsHandlesAndCatching_areRefused() {
    Handle door = new Handle(Opcodes.H_INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);
    assertEquals(
        Set.of("dynamic call any()V " + door),
        code(m -> m.visitInvokeDynamicInsn("any", "()V", door)));
    assertEquals(Set.of("constant groovyjarjarasm.asm.Handle"), code(m -> m.visitLdcInsn(door)));
    assertEquals(
        Set.of("catch java/lang/Throwable"),
        code(
            m -> {
              Label start = new Label();
              Label end = new Label();
              m.visitTryCatchBlock(start, end, end, "java/lang/Throwable");
              m.visitLabel(start);
              m.visitInsn(Opcodes.NOP);
              m.visitLabel(end);
            }));
  }

  @Test
  void classes_areTheScriptAndItsClosures() {
    assertEquals(Set.of(), type("plan1", PROGRAM));
    assertEquals(
        Set.of(),
        type(
            "plan1$_run_closure1",
            "groovy/lang/Closure",
            "org/codehaus/groovy/runtime/GeneratedClosure"));
    assertEquals(Set.of("class plan1 extends java/lang/Thread"), type("plan1", "java/lang/Thread"));
    assertEquals(Set.of("class plan2 extends " + PROGRAM), type("plan2", PROGRAM));
    assertEquals(
        Set.of("interface java/lang/Runnable"), type("plan1", PROGRAM, "java/lang/Runnable"));
  }

  @Test
  void annotations_areWhatTheCompilerPuts() {
    ClassWriter marked = script("plan1", PROGRAM);
    marked.visitAnnotation("Lgroovy/transform/Generated;", true);
    assertEquals(Set.of(), check(marked));
    ClassWriter evil = script("plan1", PROGRAM);
    evil.visitAnnotation("Lgroovy/lang/Grab;", true);
    assertEquals(Set.of("annotation Lgroovy/lang/Grab;"), check(evil));
    ClassWriter typed = script("plan1", PROGRAM);
    typed.visitTypeAnnotation(
        TypeReference.newSuperTypeReference(-1).getValue(), null, "Lgroovy/lang/Grab;", true);
    assertEquals(Set.of("annotation Lgroovy/lang/Grab;"), check(typed));
    assertEquals(
        Set.of("annotation Lgroovy/lang/Grab;"),
        code(m -> m.visitAnnotation("Lgroovy/lang/Grab;", true)));
  }

  @Test
  void members_haveListedTypesAndNoNativeCode() {
    ClassWriter field = script("plan1", PROGRAM);
    field.visitField(Opcodes.ACC_PRIVATE, "f", "Ljava/io/File;", null, null);
    assertEquals(Set.of("type java/io/File"), check(field));
    ClassWriter method = script("plan1", PROGRAM);
    method.visitMethod(Opcodes.ACC_ABSTRACT, "m", "(Ljava/io/File;)Ljava/lang/Thread;", null, null);
    assertEquals(Set.of("type java/io/File", "type java/lang/Thread"), check(method));
    ClassWriter foreign = script("plan1", PROGRAM);
    foreign.visitMethod(Opcodes.ACC_NATIVE, "n", "()V", null, null);
    assertEquals(Set.of("native n"), check(foreign));
  }
}
