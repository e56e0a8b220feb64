/** The service over HTTP: {@code match} answers which parts and work an engine needs, {@code lookup} what the catalogue holds. */
@NullMarked
package org.borewright.api;

import org.jspecify.annotations.NullMarked;
