/** How plugins join in. Read {@link yardloom.kernel.spi.YardPlugin} first. */
package yardloom.kernel.spi;
