package yardloom.language.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groovyjarjarasm.asm.ClassWriter;
import groovyjarjarasm.asm.MethodVisitor;
import groovyjarjarasm.asm.Opcodes;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yardloom.kernel.plan.Plan;
import yardloom.kernel.problem.PlanException;
import yardloom.language.compile.CompileCache;
import yardloom.language.compile.ScriptStore;
import yardloom.language.compile.SourceFile;
import yardloom.language.limit.RunLimits;

class CompileCacheTest {
  @TempDir Path folder;

  private final Kept kept = new Kept();

  private static final class Kept implements ScriptStore {
    private final Map<String, byte[]> files = new TreeMap<>();
    private int written;

    @Override
    public Optional<byte[]> get(String key) {
      return Optional.ofNullable(files.get(key));
    }

    @Override
    public void put(String key, byte[] bytes) {
      files.put(key, bytes);
      written++;
    }
  }

  private Plan run(String text) throws IOException {
    return run(text, "build 1");
  }

  private Plan run(String text, String stamp) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.groovy"), text);
    return runner(stamp).run(file, Map.of());
  }

  private PlanRunner runner(String stamp) {
    return new PlanRunner(
        TestWords.lexicon(),
        RunLimits.standard(),
        (s, w) -> Optional.empty(),
        new CompileCache(kept, stamp));
  }

  private String onlyKey() {
    assertEquals(1, kept.files.size());
    return kept.files.keySet().iterator().next();
  }

  @Test
  void sameScriptAgain_isTakenFromTheStore() throws IOException {
    run("note 'one'\n");
    String one = onlyKey();
    kept.files.clear();
    run("note 'other'\n");
    byte[] other = kept.files.get(onlyKey());
    kept.files.clear();
    // Proof that nothing is compiled: what lies under the first script's key is drawn.
    kept.files.put(one, other);
    assertEquals("other", run("note 'one'\n").parameters().get("note 1"));
    assertEquals(2, kept.written);
  }

  @Test
  void otherTextOrBuild_isCompiledAnew() throws IOException {
    run("note 'one'\n");
    assertEquals("two", run("note 'two'\n").parameters().get("note 1"));
    run("note 'one'\n", "build 2");
    assertEquals(3, kept.written);
    run("note 'one'\n", "build 2");
    assertEquals(3, kept.written);
  }

  @Test
  void changedIncludeOrData_isSeen() throws IOException {
    Files.writeString(
        folder.resolve("part.groovy"), "def w = param('w', 1.m, 'width')\nnote \"$w\"\n");
    Files.writeString(folder.resolve("data.txt"), "old");
    String plan = "include 'part'\nnote fileText('data.txt')\n";
    assertEquals("old", run(plan).parameters().get("note 2"));
    Files.writeString(folder.resolve("data.txt"), "new");
    Files.writeString(
        folder.resolve("part.groovy"), "\n\n\ndef q = param('q', 7.m, 'width')\nnote \"$q\"\n");
    Plan again = run(plan);
    assertEquals("new", again.parameters().get("note 2"));
    assertEquals("7 m", again.parameters().get("note 5"));
    Files.delete(folder.resolve("part.groovy"));
    PlanException gone = assertThrows(PlanException.class, () -> run(plan));
    assertEquals(1, gone.problems().get(0).place().line());
  }

  /** Names of all files a plan is read from, whether it is compiled or taken from the store. */
  @Test
  void sources_areThePlanItsIncludesAndItsData() throws IOException {
    Files.writeString(folder.resolve("part.groovy"), "note 'p'\n");
    Files.writeString(folder.resolve("data.txt"), "old");
    Path plan =
        Files.writeString(
            folder.resolve("plan.groovy"), "include 'part'\nnote fileText('data.txt')\n");
    for (int i = 0; i < 2; i++) {
      List<SourceFile> sources = runner("build 1").read(plan, Map.of()).sources();
      assertEquals(
          List.of("data.txt", "part.groovy", "plan.groovy"),
          sources.stream().map(f -> Path.of(f.real()).getFileName().toString()).sorted().toList());
      assertTrue(sources.stream().allMatch(SourceFile::isUnchanged));
      for (String each : List.of("data.txt", "part.groovy", "plan.groovy")) {
        String text = Files.readString(folder.resolve(each));
        Files.writeString(folder.resolve(each), text + " ");
        assertEquals(1, sources.stream().filter(f -> !f.isUnchanged()).count());
        Files.delete(folder.resolve(each));
        assertEquals(1, sources.stream().filter(f -> !f.isUnchanged()).count());
        Files.writeString(folder.resolve(each), text);
      }
    }
  }

  @Test
  void scriptWithProblems_isNotKept() {
    assertThrows(PlanException.class, () -> run("nonsense 'x'\n"));
    assertEquals(Map.of(), kept.files);
  }

  /** A class that would halt the machine. */
  private static byte[] evil() {
    ClassWriter writer = new ClassWriter(0);
    String parent = PlanProgram.class.getName().replace('.', '/');
    writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, "plan0", null, parent, null);
    MethodVisitor init = writer.visitMethod(Opcodes.ACC_PUBLIC, "<init>", "()V", null, null);
    init.visitCode();
    init.visitInsn(Opcodes.ICONST_0);
    init.visitMethodInsn(Opcodes.INVOKESTATIC, "java/lang/System", "exit", "(I)V", false);
    init.visitVarInsn(Opcodes.ALOAD, 0);
    init.visitMethodInsn(Opcodes.INVOKESPECIAL, parent, "<init>", "()V", false);
    init.visitInsn(Opcodes.RETURN);
    init.visitMaxs(1, 1);
    init.visitEnd();
    writer.visitEnd();
    return writer.toByteArray();
  }

  @Test
  void storedClassThatNamesWhatScriptsMayNot_isNotRun() throws IOException {
    run("note 'one'\n");
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeInt(0x594c5331);
    out.writeUTF("plan0");
    out.writeInt(0);
    out.writeInt(0);
    out.writeInt(1);
    out.writeUTF("plan0");
    out.writeInt(evil().length);
    out.write(evil());
    kept.files.put(onlyKey(), bytes.toByteArray());
    assertEquals("one", run("note 'one'\n").parameters().get("note 1"));
    assertEquals(2, kept.written);
  }

  @Test
  void storedBytes_changedAnywhere_giveThePlanOrAProblem() throws IOException {
    run("note 'one'\n");
    String key = onlyKey();
    byte[] good = kept.files.get(key).clone();
    for (int i = 0; i < good.length; i += 7) {
      byte[] bad = good.clone();
      bad[i] ^= (byte) (1 + i % 255);
      kept.files.put(key, bad);
      try {
        assertTrue(run("note 'one'\n").parameters().size() <= 1);
      } catch (PlanException e) {
        assertTrue(e.problems().size() >= 1);
      }
    }
    kept.files.put(key, java.util.Arrays.copyOf(good, good.length / 2));
    assertEquals("one", run("note 'one'\n").parameters().get("note 1"));
  }
}
