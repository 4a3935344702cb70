/**
 * Where the yard is, as a driver finds it, and whom to call. Start with {@link
 * yardloom.site.contact.ContactWords}.
 */
package yardloom.site.contact;
