/** The whole shelf at this moment, for whoever keeps it: what lies there, what is put aside, what is short. */
@NullMarked
package org.borewright.api.shelf;

import org.jspecify.annotations.NullMarked;
