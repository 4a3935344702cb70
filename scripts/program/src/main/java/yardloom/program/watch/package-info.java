/**
 * A plan that is drawn again whenever its files are saved, shown on a page of this machine only.
 * Start with {@link yardloom.program.watch.Watching}; {@code WatchServer} answers the browser.
 */
package yardloom.program.watch;
