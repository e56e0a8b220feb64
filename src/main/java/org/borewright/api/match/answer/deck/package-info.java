/** What an answer says of deck and gaskets. */
@NullMarked
package org.borewright.api.match.answer.deck;

import org.jspecify.annotations.NullMarked;
