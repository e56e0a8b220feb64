package org.borewright.catalog;

/**
 * Work the shop does.
 *
 * @param code such as {@code bore}
 * @param name in words
 * @param when the jobs that need it
 * @param per what its price is for
 * @param price for one
 * @param days it adds to the job
 */
public record ShopOperation(String code, String name, When when, Per per, Money price, int days) {

    /** The jobs that need an operation. */
    public enum When {
        /** Every rebuild. */
        ALWAYS("always"),
        /** When holes are bored or honed that want a torque plate on. */
        PLATE("plate"),
        /** When the holes are bored. */
        BORE("bore"),
        /** When the holes are honed, after the bar or alone. */
        HONE("hone"),
        /** When the holes of a two-stroke are bored: its ports are chamfered again. */
        PORTS("ports"),
        /** When the deck is skimmed. */
        SKIM("skim");

        private final String label;

        When(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }

    /** What a price is for. */
    public enum Per {
        /** Each hole. */
        HOLE("hole"),
        /** The engine. */
        ENGINE("engine");

        private final String label;

        Per(String label) {
            this.label = label;
        }

        /** The word as typed and shown. */
        public String label() {
            return label;
        }
    }
}
