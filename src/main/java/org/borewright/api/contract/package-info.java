/** The contract with those who call the service, handed out by the service itself. */
@NullMarked
package org.borewright.api.contract;

import org.jspecify.annotations.NullMarked;
