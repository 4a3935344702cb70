package yardloom.language.word;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.codehaus.groovy.ast.ASTNode;
import org.codehaus.groovy.ast.expr.ClosureExpression;
import org.codehaus.groovy.ast.expr.ConstantExpression;
import org.codehaus.groovy.ast.expr.Expression;
import org.codehaus.groovy.ast.expr.MapEntryExpression;
import org.codehaus.groovy.ast.expr.MapExpression;
import org.codehaus.groovy.ast.expr.MethodCallExpression;
import org.codehaus.groovy.ast.expr.NamedArgumentListExpression;
import org.codehaus.groovy.ast.expr.PropertyExpression;
import org.codehaus.groovy.ast.expr.TupleExpression;
import yardloom.kernel.problem.Nearest;
import yardloom.kernel.problem.ProblemCode;
import yardloom.kernel.vocab.Word;
import yardloom.language.text.Report;
import yardloom.language.text.SourceText;

/** Sorts what stands after a word into values, named options and block. */
final class Arguments {
  /** One option as written. */
  record Named(String name, Expression key, Expression value) {}

  /** The arguments of one call; a trailing closure is also the last of {@code positional}. */
  record Given(List<Expression> positional, List<Named> named, List<ClosureExpression> block) {}

  static final String BRACKETS =
      "a word with a block has its values in brackets, as in bed('herbs', rect(…)) { … }";

  private final Report report;
  private final SourceText source;

  Arguments(Report report, SourceText source) {
    this.report = report;
    this.source = source;
  }

  Given read(MethodCallExpression raw) {
    List<Expression> positional = new ArrayList<>();
    List<Named> named = new ArrayList<>();
    List<ClosureExpression> block = new ArrayList<>();
    List<Expression> all = new ArrayList<>();
    if (raw.getArguments() instanceof TupleExpression tuple) {
      all.addAll(tuple.getExpressions());
    } else {
      all.add(raw.getArguments());
    }
    for (int i = 0; i < all.size(); i++) {
      Expression e = all.get(i);
      if (e instanceof NamedArgumentListExpression
          || i == 0 && e instanceof MapExpression map && isNamed(map)) {
        ((MapExpression) e).getMapEntryExpressions().forEach(entry -> addNamed(named, entry));
      } else {
        positional.add(e);
      }
    }
    if (!positional.isEmpty()
        && positional.get(positional.size() - 1).getClass() == ClosureExpression.class) {
      block.add((ClosureExpression) positional.get(positional.size() - 1));
    }
    return new Given(positional, named, block);
  }

  /** A map literal has its own bracket before its first key; named options have not. */
  private boolean isNamed(MapExpression map) {
    if (map.getMapEntryExpressions().isEmpty()) {
      return false;
    }
    Expression key = map.getMapEntryExpressions().get(0).getKeyExpression();
    return source.before(key.getLineNumber(), key.getColumnNumber()) != '[';
  }

  private void addNamed(List<Named> named, MapEntryExpression entry) {
    Expression key = entry.getKeyExpression();
    if (key instanceof ConstantExpression c && c.getValue() instanceof String name) {
      named.add(new Named(name, key, entry.getValueExpression()));
    } else {
      report.add(ProblemCode.FORBIDDEN, key, "the name of an option is a plain name");
    }
  }

  /** Whether the "property" stands apart, with no dot before it: a comma was forgotten. */
  boolean isApart(PropertyExpression raw) {
    return isApart(raw.getProperty());
  }

  /** The same of a call: {@code bed 'a' rect(…)} parses as {@code bed.a(…)}. */
  boolean isApart(MethodCallExpression raw) {
    return raw.getMethod().getLineNumber() > 0 && isApart(raw.getMethod());
  }

  /**
   * Whether a block stands behind the last value of a word without brackets, as in {@code bed 'a',
   * use: 'annual' { }}: Groovy takes it for a call of that value.
   */
  boolean isBlockOfValue(MethodCallExpression raw, Given given) {
    int line = raw.getMethod().getLineNumber();
    int column = raw.getMethod().getColumnNumber();
    return raw.isImplicitThis()
        && given.block().size() == 1
        && given.positional().size() == 1
        && (isValue(source.before(line, column)) || source.isQuote(line, column));
  }

  private static boolean isValue(char before) {
    return before == ',' || before == ':';
  }

  SourceText source() {
    return source;
  }

  private boolean isApart(Expression name) {
    return source.before(name.getLineNumber(), name.getColumnNumber()) != '.';
  }

  /** Puts arguments into the order of a word's parameters. */
  static final class Matcher {
    private final Report report;
    private final Rewriter rewriter;

    Matcher(Report report, Rewriter rewriter) {
      this.report = report;
      this.rewriter = rewriter;
    }

    /** {@code bed 'a', rect(…) { }}: the block was meant for the word in front. */
    private String wordBefore(ASTNode raw) {
      SourceText source = rewriter.calls().source();
      return isValue(source.before(raw.getLineNumber(), raw.getColumnNumber()))
          ? "; " + BRACKETS
          : "";
    }

    /** One expression for each parameter, null where an option is left out. */
    List<Expression> match(ASTNode raw, Word word, Given given) {
      List<Expression> positional = new ArrayList<>(given.positional());
      boolean takesBlock = word.inner().isPresent() && !given.block().isEmpty();
      if (!given.block().isEmpty()) {
        positional.remove(positional.size() - 1);
        if (!takesBlock) {
          report.add(
              ProblemCode.MISPLACED_WORD,
              given.block().get(0),
              "`" + word.name() + "` takes no block" + wordBefore(raw));
        }
      }
      checkNames(word, given);
      List<Expression> ordered = new ArrayList<>();
      int next = 0;
      for (Word.Parameter p : word.parameters()) {
        if (p.named()) {
          ordered.add(option(raw, word, p, given));
        } else if (next < positional.size()) {
          ordered.add(checked(p, word, positional.get(next++)));
        } else {
          ordered.add(byName(raw, word, p, given));
        }
      }
      if (next < positional.size()) {
        tooMany(word, positional.get(next));
      }
      for (; next < positional.size(); next++) {
        rewriter.expressions().translate(positional.get(next));
      }
      return ordered;
    }

    private void checkNames(Word word, Given given) {
      Set<String> seen = new HashSet<>();
      List<String> known = word.parameters().stream().map(Word.Parameter::name).toList();
      for (Named named : given.named()) {
        if (!known.contains(named.name())) {
          List<String> options = word.options().stream().map(Word.Parameter::name).toList();
          report.add(
              ProblemCode.UNKNOWN_WORD,
              named.key(),
              "`"
                  + word.name()
                  + "` has no option `"
                  + named.name()
                  + "`."
                  + Nearest.hint(named.name(), known)
                  + (options.isEmpty()
                      ? " It has none"
                      : " It has: " + String.join(", ", options)));
          rewriter.expressions().translate(named.value());
        } else if (!seen.add(named.name())) {
          report.add(
              ProblemCode.DUPLICATE,
              named.key(),
              "the option `" + named.name() + "` is given twice");
        }
      }
    }

    private Expression option(ASTNode raw, Word word, Word.Parameter p, Given given) {
      for (Named named : given.named()) {
        if (named.name().equals(p.name())) {
          return checked(p, word, named.value());
        }
      }
      if (p.required()) {
        report.add(
            ProblemCode.MISSING_OPTION,
            raw,
            "`" + word.name() + "`: missing option `" + p.name() + "` (" + p.help() + ")");
      }
      return null;
    }

    /** An argument given by its name is accepted too: it says no less. */
    private Expression byName(ASTNode raw, Word word, Word.Parameter p, Given given) {
      for (Named named : given.named()) {
        if (named.name().equals(p.name())) {
          return checked(p, word, named.value());
        }
      }
      report.add(
          ProblemCode.MISSING_OPTION,
          raw,
          "`"
              + word.name()
              + "`: missing "
              + p.name()
              + " ("
              + p.help()
              + "). Write "
              + word.signature());
      return null;
    }

    private void tooMany(Word word, Expression extra) {
      int wanted = word.arguments().size();
      String options =
          word.options().isEmpty()
              ? ""
              : "; the rest goes by name: "
                  + String.join(", ", word.options().stream().map(Word.Parameter::name).toList());
      report.add(
          ProblemCode.WRONG_TYPE,
          extra,
          "`"
              + word.name()
              + "` takes "
              + wanted
              + (wanted == 1 ? " value" : " values")
              + " by position"
              + options);
    }

    private Expression checked(Word.Parameter p, Word word, Expression raw) {
      if (!p.choices().isEmpty()
          && raw instanceof ConstantExpression c
          && c.getValue() instanceof String text
          && !p.choices().contains(text)) {
        report.add(
            ProblemCode.UNKNOWN_WORD,
            raw,
            "`"
                + word.name()
                + "`: "
                + p.name()
                + " cannot be '"
                + text
                + "'."
                + Nearest.hint(text, p.choices())
                + " It can be: "
                + String.join(", ", p.choices()));
      }
      return rewriter.expressions().translate(raw);
    }
  }
}
