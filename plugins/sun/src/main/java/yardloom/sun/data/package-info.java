/** Tables that the sun plugin ships. Start with {@link yardloom.sun.data.LightSchemes}. */
package yardloom.sun.data;
