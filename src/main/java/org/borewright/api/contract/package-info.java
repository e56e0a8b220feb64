/** The contract with those who call the service, handed out by the service itself, and the pages that its refusals lead to. */
@NullMarked
package org.borewright.api.contract;

import org.jspecify.annotations.NullMarked;
