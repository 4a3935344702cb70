/**
 * In which country the yard lies, and what follows for whom to ask before digging. Start with
 * {@link yardloom.site.country.DigCalls}.
 */
package yardloom.site.country;
