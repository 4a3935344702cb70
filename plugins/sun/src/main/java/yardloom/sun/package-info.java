/** Sun: where, when and how much. Start with {@link yardloom.sun.SunPlugin}. */
package yardloom.sun;
