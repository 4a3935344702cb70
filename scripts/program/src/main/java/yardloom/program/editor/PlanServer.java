package yardloom.program.editor;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SaveOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/**
 * Answers an editor by the Language Server Protocol 3.17: words, options and choices to complete,
 * help on what the pointer is on, problems while one types and findings when one saves.
 *
 * <p>It never writes a file. What is read and run is what {@code check} would read and run, within
 * the same limits.
 */
public final class PlanServer implements LanguageServer, TextDocumentService {
  /** Only scripts that say one of these are looked through; an editor may open any Groovy file. */
  private static final Pattern PLAN = Pattern.compile("(?m)^\\s*plan\\b");

  private static final Pattern REGION = Pattern.compile("(?m)^\\s*region\\b");

  /** As long as a pause between keys. */
  private static final long PAUSE_MS = 300;

  private final PlanHelp help;
  private final Reader reader;
  private final String version;
  private final Map<String, OpenScript> open = new ConcurrentHashMap<>();
  private final Map<String, List<Remark>> saved = new ConcurrentHashMap<>();
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          work -> {
            Thread thread = new Thread(work, "editor-remarks");
            thread.setDaemon(true);
            return thread;
          });
  private LanguageClient client;
  private boolean isShutDown;

  /** Reads plans for their remarks; gives them, never throws for a wrong plan. */
  public interface Reader {
    /** What is wrong with a script as it is written; nothing of it runs. */
    List<Remark> written(Path file, String text);

    /** What is wrong with a plan as it was saved, and what is found in it. */
    List<Remark> saved(Path file);
  }

  public PlanServer(PlanHelp help, Reader reader, String version) {
    this.help = help;
    this.reader = reader;
    this.version = version;
  }

  /** Sets where remarks go. */
  public void connect(LanguageClient editor) {
    this.client = editor;
  }

  /** Whether the editor said that it is done, as it should before it leaves. */
  public boolean isShutDown() {
    return isShutDown;
  }

  @Override
  public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
    TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
    sync.setOpenClose(true);
    sync.setChange(TextDocumentSyncKind.Full);
    sync.setSave(new SaveOptions(false));
    ServerCapabilities can = new ServerCapabilities();
    can.setTextDocumentSync(sync);
    can.setCompletionProvider(new CompletionOptions(false, List.of(".", "'", "\"")));
    can.setHoverProvider(true);
    return CompletableFuture.completedFuture(
        new InitializeResult(can, new ServerInfo("yardloom", version)));
  }

  @Override
  public CompletableFuture<Object> shutdown() {
    isShutDown = true;
    worker.shutdown();
    return CompletableFuture.completedFuture(null);
  }

  @Override
  public void exit() {
    // Whoever started the server sees the streams end.
  }

  @Override
  public TextDocumentService getTextDocumentService() {
    return this;
  }

  @Override
  public WorkspaceService getWorkspaceService() {
    return new WorkspaceService() {
      @Override
      public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to set.
      }

      @Override
      public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        // None are asked for.
      }
    };
  }

  @Override
  public void didOpen(DidOpenTextDocumentParams params) {
    String uri = params.getTextDocument().getUri();
    open.put(
        uri,
        new OpenScript(params.getTextDocument().getText(), params.getTextDocument().getVersion()));
    remarksOfSaved(uri);
  }

  @Override
  public void didChange(DidChangeTextDocumentParams params) {
    String uri = params.getTextDocument().getUri();
    if (params.getContentChanges().isEmpty()) {
      return;
    }
    int last = params.getContentChanges().size() - 1;
    Integer number = params.getTextDocument().getVersion();
    OpenScript script =
        new OpenScript(params.getContentChanges().get(last).getText(), number == null ? 0 : number);
    open.put(uri, script);
    if (says(PLAN, script) || says(REGION, script)) {
      later(
          uri,
          PAUSE_MS,
          file -> {
            List<Remark> wrong = reader.written(file, script.text());
            return wrong.isEmpty() ? saved.getOrDefault(uri, List.of()) : wrong;
          });
    }
  }

  @Override
  public void didSave(DidSaveTextDocumentParams params) {
    remarksOfSaved(params.getTextDocument().getUri());
  }

  @Override
  public void didClose(DidCloseTextDocumentParams params) {
    String uri = params.getTextDocument().getUri();
    open.remove(uri);
    saved.remove(uri);
    client.publishDiagnostics(new PublishDiagnosticsParams(uri, List.of()));
  }

  private static boolean says(Pattern word, OpenScript script) {
    return word.matcher(script.text()).find();
  }

  /** A regional file is no plan by itself: it is compiled, and run by the plan that includes it. */
  private void remarksOfSaved(String uri) {
    OpenScript script = open.get(uri);
    if (script != null && says(PLAN, script)) {
      later(
          uri,
          0,
          file -> {
            saved.put(uri, reader.saved(file));
            return saved.get(uri);
          });
    } else if (script != null && says(REGION, script)) {
      later(uri, 0, file -> reader.written(file, script.text()));
    }
  }

  /** What looks for remarks of a file. */
  private interface Look {
    List<Remark> at(Path file);
  }

  /** Looks for remarks unless the script has changed again until then. */
  private void later(String uri, long pauseMs, Look look) {
    Optional<Path> file = file(uri);
    OpenScript script = open.get(uri);
    if (file.isEmpty() || worker.isShutdown()) {
      return;
    }
    Runnable work =
        () -> {
          if (open.get(uri) == script) {
            List<Remark> remarks = look.at(file.get());
            OpenScript now = open.get(uri);
            if (now != null) {
              client.publishDiagnostics(marks(uri, now, remarks));
            }
          }
        };
    worker.schedule(work, pauseMs, TimeUnit.MILLISECONDS);
  }

  private static PublishDiagnosticsParams marks(
      String uri, OpenScript script, List<Remark> remarks) {
    List<Diagnostic> marks =
        remarks.stream()
            .map(
                r ->
                    new Diagnostic(
                        script.range(r.line(), r.column()),
                        r.text(),
                        severity(r.weight()),
                        "yardloom",
                        r.code()))
            .toList();
    return new PublishDiagnosticsParams(uri, marks, script.version());
  }

  private static DiagnosticSeverity severity(Remark.Weight weight) {
    return switch (weight) {
      case ERROR -> DiagnosticSeverity.Error;
      case WARNING -> DiagnosticSeverity.Warning;
      case NOTE -> DiagnosticSeverity.Information;
    };
  }

  /** The file behind an address; none if it was never saved or is no file. */
  private static Optional<Path> file(String uri) {
    try {
      Path file = Path.of(new URI(uri));
      return Files.isRegularFile(file) ? Optional.of(file) : Optional.empty();
    } catch (java.net.URISyntaxException
        | IllegalArgumentException
        | FileSystemNotFoundException e) {
      return Optional.empty();
    }
  }

  @Override
  public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(
      CompletionParams params) {
    return answer(
        () -> {
          OpenScript script = open.get(params.getTextDocument().getUri());
          if (script == null) {
            return Either.forLeft(List.of());
          }
          int at = script.offset(params.getPosition());
          PlanHelp.Suggestions found = help.suggestions(script.text(), at);
          Range place = new Range(script.position(found.start()), script.position(at));
          return Either.forLeft(found.all().stream().map(s -> item(s, place)).toList());
        });
  }

  private static CompletionItem item(Suggestion suggestion, Range place) {
    CompletionItem item = new CompletionItem(suggestion.label());
    item.setKind(
        switch (suggestion.kind()) {
          case WORD -> CompletionItemKind.Function;
          case OPTION -> CompletionItemKind.Property;
          case CHOICE -> CompletionItemKind.EnumMember;
          case ROW -> CompletionItemKind.Value;
          case UNIT -> CompletionItemKind.Unit;
          case NAME -> CompletionItemKind.Variable;
        });
    item.setDetail(suggestion.detail());
    if (!suggestion.help().isEmpty()) {
      item.setDocumentation(new MarkupContent(MarkupKind.MARKDOWN, suggestion.help()));
    }
    item.setFilterText(suggestion.label());
    item.setTextEdit(Either.forLeft(new TextEdit(place, suggestion.insert())));
    return item;
  }

  @Override
  public CompletableFuture<Hover> hover(HoverParams params) {
    return answer(
        () -> {
          OpenScript script = open.get(params.getTextDocument().getUri());
          return script == null
              ? null
              : help.explanation(script.text(), script.offset(params.getPosition()))
                  .map(text -> new Hover(new MarkupContent(MarkupKind.MARKDOWN, text)))
                  .orElse(null);
        });
  }

  private static <T> CompletableFuture<T> answer(Supplier<T> work) {
    return CompletableFuture.completedFuture(work.get());
  }
}
