/**
 * What client and builder need: one page in short, one sheet in full. Start with {@link
 * yardloom.work.client.ClientSheet}.
 */
package yardloom.work.client;
