package yardloom.language.word;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import yardloom.kernel.vocab.Scope;

/** What is visible where: variables and the block each line stands in. */
public final class Names {
  /** A block: its type and the variable that holds it in the rewritten script. */
  public record Block(Class<? extends Scope> type, String variable) {}

  private static final class Frame {
    final Map<String, Class<?>> variables = new HashMap<>();

    /** Set when the frame is a block of a word. */
    Block block;

    /** A helper sees nothing outside it. */
    boolean closed;
  }

  private final Deque<Frame> frames = new ArrayDeque<>();
  private final Set<String> ever = new HashSet<>();
  private int blocks;

  void open() {
    frames.push(new Frame());
  }

  void openHelper() {
    open();
    frames.peek().closed = true;
  }

  Block openBlock(Class<? extends Scope> type) {
    open();
    frames.peek().block = new Block(type, "s$" + blocks++);
    return frames.peek().block;
  }

  /** Opens a block that was opened before, under the same variable. */
  void reopen(Block block) {
    open();
    frames.peek().block = block;
  }

  void close() {
    frames.pop();
  }

  void declare(String name) {
    declare(name, null);
  }

  /** {@code type} is the declared type, null if there is none. */
  void declare(String name, Class<?> type) {
    frames.peek().variables.put(name, type);
    ever.add(name);
  }

  /** The declared type of a visible variable, null if it has none. */
  Class<?> typeOf(String name) {
    for (Frame frame : frames) {
      if (frame.variables.containsKey(name)) {
        return frame.variables.get(name);
      }
    }
    return null;
  }

  boolean knows(String name) {
    for (Frame frame : frames) {
      if (frame.variables.containsKey(name)) {
        return true;
      }
      if (frame.closed) {
        return false;
      }
    }
    return false;
  }

  /** Whether we are in a helper, and the script has a variable of that name elsewhere. */
  boolean hiddenByHelper(String name) {
    return !knows(name) && ever.contains(name) && frames.stream().anyMatch(f -> f.closed);
  }

  Set<String> visible() {
    Set<String> names = new TreeSet<>();
    for (Frame frame : frames) {
      names.addAll(frame.variables.keySet());
      if (frame.closed) {
        break;
      }
    }
    return names;
  }

  Block innermost() {
    return blocks().next();
  }

  /** The blocks around the present line, innermost first. */
  Iterator<Block> blocks() {
    return frames.stream().filter(f -> f.block != null).map(f -> f.block).iterator();
  }
}
