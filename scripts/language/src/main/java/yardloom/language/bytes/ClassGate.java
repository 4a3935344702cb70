package yardloom.language.bytes;

import groovyjarjarasm.asm.AnnotationVisitor;
import groovyjarjarasm.asm.Attribute;
import groovyjarjarasm.asm.ClassReader;
import groovyjarjarasm.asm.ClassVisitor;
import groovyjarjarasm.asm.FieldVisitor;
import groovyjarjarasm.asm.Handle;
import groovyjarjarasm.asm.Label;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import groovyjarjarasm.asm.Type;
import java.util.Set;
import java.util.TreeSet;
import yardloom.language.type.LibraryLoops;

/**
 * Reads the finished bytes of a compiled script and refuses every call, field, type, constant,
 * superclass and annotation that is not on the list. This is the gate that counts: whatever the
 * earlier ones let slip, the bytes cannot name it.
 */
public final class ClassGate {
  private static final int API = Opcodes.ASM9;
  private static final String CLOSURE = "groovy/lang/Closure";

  /** What the static compiler itself adds to a class or closure. */
  private static final Set<String> BOILERPLATE =
      Set.of(
          "org/codehaus/groovy/runtime/ScriptBytecodeAdapter.initMetaClass",
          "org/codehaus/groovy/runtime/ScriptBytecodeAdapter.createList",
          "org/codehaus/groovy/runtime/ScriptBytecodeAdapter.createMap",
          "org/codehaus/groovy/reflection/ClassInfo.getClassInfo",
          "org/codehaus/groovy/reflection/ClassInfo.getMetaClass",
          "groovy/lang/GroovyObject.getMetaClass",
          "groovy/lang/Closure.<init>",
          "groovy/lang/Closure.call",
          // A closure inside a closure hands on the script's object, which has nothing but run().
          "groovy/lang/Closure.getThisObject",
          "groovy/lang/Reference.get",
          "groovy/lang/Reference.set",
          "java/lang/Object.getClass",
          "java/lang/Integer.valueOf",
          "java/lang/Integer.intValue",
          "java/lang/Double.valueOf",
          "java/lang/Double.doubleValue",
          "java/lang/Double.intValue",
          "java/lang/Integer.doubleValue",
          "java/lang/Number.intValue",
          "java/lang/Number.doubleValue",
          "java/lang/Boolean.valueOf",
          "java/lang/Boolean.booleanValue",
          "java/util/List.iterator",
          "java/lang/Iterable.iterator",
          "java/util/Iterator.hasNext",
          "java/util/Iterator.next",
          "java/util/ArrayList.add",
          "org/codehaus/groovy/runtime/typehandling/ShortTypeHandling.castToString");

  /** What a script may make: its closures' shared variables, its maps and its lists. */
  private static final Set<String> MADE =
      Set.of("groovy/lang/Reference", "java/util/LinkedHashMap", "java/util/ArrayList");

  private static final Set<String> INTERFACES =
      Set.of("groovy/lang/GroovyObject", "org/codehaus/groovy/runtime/GeneratedClosure");

  private static final Set<String> ANNOTATIONS =
      Set.of(
          "Lgroovy/transform/Generated;", "Lgroovy/transform/Internal;", "Ljava/beans/Transient;");

  private final Allowed allowed;
  private final String prefix;
  private final Set<String> faults = new TreeSet<>();

  public ClassGate(Allowed allowed, String prefix) {
    this.allowed = allowed;
    this.prefix = prefix;
  }

  /** What in the bytes is not allowed; empty if all is well. */
  public Set<String> check(byte[] bytes) {
    new ClassReader(bytes).accept(new Shell(), 0);
    return faults;
  }

  private boolean own(String internal) {
    return internal.equals(prefix) || internal.startsWith(prefix + "$");
  }

  private void type(String internal) {
    String element = internal.replaceFirst("^\\[+L?", "").replaceFirst(";$", "");
    if (!own(element) && !allowed.type(element) && element.length() > 1) {
      faults.add("type " + internal);
    }
  }

  private void descriptor(String descriptor) {
    Type type = Type.getType(descriptor);
    if (type.getSort() == Type.METHOD) {
      for (Type argument : type.getArgumentTypes()) {
        type(argument.getInternalName());
      }
      type(type.getReturnType().getInternalName());
    } else {
      type(type.getInternalName());
    }
  }

  private void call(int opcode, String owner, String name, String descriptor) {
    if (own(owner)) {
      return;
    }
    if (BOILERPLATE.contains(owner + "." + name)) {
      return;
    }
    Type[] arguments = Type.getArgumentTypes(descriptor);
    if (arguments.length > 0
        && LibraryLoops.allows(owner.replace('/', '.'), name, arguments[0].getClassName())) {
      return;
    }
    boolean init = name.equals("<init>") && opcode == Opcodes.INVOKESPECIAL;
    boolean makes = init && (MADE.contains(owner) || owner.equals(allowed.program()));
    if (!makes && !allowed.call(owner, name, descriptor)) {
      faults.add("call " + owner + "." + name + descriptor);
    }
  }

  private void annotation(String descriptor) {
    if (!ANNOTATIONS.contains(descriptor)) {
      faults.add("annotation " + descriptor);
    }
  }

  private final class Shell extends ClassVisitor {
    Shell() {
      super(API);
    }

    @Override
    public void visit(
        int version, int access, String name, String signature, String parent, String[] faces) {
      if (!own(name) || !parent.equals(CLOSURE) && !parent.equals(allowed.program())) {
        faults.add("class " + name + " extends " + parent);
      }
      for (String face : faces) {
        if (!INTERFACES.contains(face)) {
          faults.add("interface " + face);
        }
      }
    }

    @Override
    public AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
      annotation(descriptor);
      return null;
    }

    @Override
    public AnnotationVisitor visitTypeAnnotation(
        int ref, groovyjarjarasm.asm.TypePath path, String descriptor, boolean visible) {
      annotation(descriptor);
      return null;
    }

    @Override
    public void visitAttribute(Attribute attribute) {
      faults.add("attribute " + attribute.type);
    }

    @Override
    public FieldVisitor visitField(
        int access, String name, String descriptor, String signature, Object value) {
      descriptor(descriptor);
      return null;
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String descriptor, String signature, String[] exceptions) {
      if ((access & Opcodes.ACC_NATIVE) != 0) {
        faults.add("native " + name);
      }
      descriptor(descriptor);
      return new Code();
    }
  }

  private final class Code extends MethodVisitor {
    Code() {
      super(API);
    }

    @Override
    public AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
      annotation(descriptor);
      return null;
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
      if (opcode == Opcodes.NEW) {
        if (!own(type) && !MADE.contains(type)) {
          faults.add("new " + type);
        }
      } else if (opcode == Opcodes.ANEWARRAY) {
        if (!type.equals("java/lang/Object")) {
          faults.add("array of " + type);
        }
      } else {
        type(type);
      }
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
      boolean truth = owner.equals("java/lang/Boolean") && opcode == Opcodes.GETSTATIC;
      if (!own(owner) && !truth) {
        faults.add("field " + owner + "." + name);
      }
      descriptor(descriptor);
    }

    @Override
    public void visitMethodInsn(
        int opcode, String owner, String name, String descriptor, boolean face) {
      call(opcode, owner, name, descriptor);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String descriptor, Handle bootstrap, Object... arguments) {
      faults.add("dynamic call " + name + descriptor + " " + bootstrap);
    }

    @Override
    public void visitLdcInsn(Object value) {
      if (value instanceof Type constant) {
        type(constant.getInternalName());
      } else if (!(value instanceof String) && !(value instanceof Number)) {
        faults.add("constant " + value.getClass().getName());
      }
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
      faults.add("array " + descriptor);
    }

    @Override
    public void visitIntInsn(int opcode, int operand) {
      if (opcode == Opcodes.NEWARRAY) {
        faults.add("array of primitives");
      }
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
      // A script that could catch would go on after its limits are used up.
      faults.add("catch " + type);
    }

    @Override
    public void visitAttribute(Attribute attribute) {
      faults.add("attribute " + attribute.type);
    }
  }
}
