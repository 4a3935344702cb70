package yardloom.program.watch;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchEvent;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import yardloom.language.compile.ScriptFiles;
import yardloom.program.output.OutputFolder;

/**
 * Tells when a script or data file in a folder or three levels below it is saved. The system
 * reports changes, so nothing runs while nothing changes.
 */
final class SavedFiles implements AutoCloseable {
  private static final int DEPTH = 3;

  /** Editors write a file in several steps. */
  private static final long QUIET_MILLIS = 60;

  private final WatchService service;
  private final Runnable saved;
  private final Thread thread = new Thread(this::run, "saved files");

  SavedFiles(Path folder, Runnable saved) throws IOException {
    this.saved = saved;
    service = folder.getFileSystem().newWatchService();
    try (Stream<Path> all = Files.walk(folder, DEPTH)) {
      for (Path each : all.filter(Files::isDirectory).filter(p -> watched(folder, p)).toList()) {
        each.register(
            service,
            StandardWatchEventKinds.ENTRY_CREATE,
            StandardWatchEventKinds.ENTRY_MODIFY,
            StandardWatchEventKinds.ENTRY_DELETE);
      }
    }
    thread.setDaemon(true);
  }

  /** Neither hidden folders nor what yardloom itself wrote. */
  private static boolean watched(Path folder, Path each) {
    return each.equals(folder)
        || !each.getFileName().toString().startsWith(".") && !OutputFolder.isOne(each);
  }

  void start() {
    thread.start();
  }

  private void run() {
    try {
      while (true) {
        boolean ours = isOurs(service.take());
        WatchKey more = service.poll(QUIET_MILLIS, TimeUnit.MILLISECONDS);
        while (more != null) {
          ours |= isOurs(more);
          more = service.poll(QUIET_MILLIS, TimeUnit.MILLISECONDS);
        }
        if (ours) {
          saved.run();
        }
      }
    } catch (InterruptedException | ClosedWatchServiceException e) {
      // The end.
    }
  }

  private static boolean isOurs(WatchKey key) {
    boolean ours = false;
    for (WatchEvent<?> event : key.pollEvents()) {
      ours |=
          event.kind() == StandardWatchEventKinds.OVERFLOW
              || ScriptFiles.mayRead(String.valueOf(event.context()));
    }
    key.reset();
    return ours;
  }

  @Override
  public void close() {
    try {
      service.close();
    } catch (IOException e) {
      // Nothing more is told all the same.
    }
  }
}
