/** Holds the sources to the layout and the form that DEVELOPERS.md describes. */
package org.borewright.architecture;
