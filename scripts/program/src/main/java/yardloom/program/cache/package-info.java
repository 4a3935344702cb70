/**
 * Compiled plan scripts that are kept from run to run in the user's cache folder. Start with {@link
 * yardloom.program.cache.CacheFolder}.
 */
package yardloom.program.cache;
