/** What a match answers of each hole. */
@NullMarked
package org.borewright.api.match.answer.hole;

import org.jspecify.annotations.NullMarked;
