package org.borewright.api.order.answer;

import java.util.List;
import org.borewright.order.OrderHold;
import org.borewright.order.desk.OrderBench;

/**
 * What the bench said of an order, in short.
 *
 * @param verdict of the pistons before honing, or of the holes after it
 * @param says that in one sentence
 * @param holds what stands in the way, each with its way out; none where nothing does
 * @param paper the number under which question and whole answer are kept
 */
public record JudgementAnswer(String verdict, String says, List<OrderHold> holds, long paper) {

    /** What was said. */
    public static JudgementAnswer of(OrderBench.Benched benched) {
        return new JudgementAnswer(
                benched.verdict().verdict(),
                benched.verdict().paper().says(),
                benched.verdict().holds(),
                benched.paper());
    }
}
