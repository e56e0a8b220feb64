package org.borewright.api.problem;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The kinds of problem. Each has a page of its own at the path that {@link #path()} names. */
public enum ProblemType {
    /** JSON that cannot be read at all. */
    MALFORMED_JSON(
            400,
            "The body is not JSON",
            "The body breaks off, or a comma, quote or bracket is wrong. Line and column say where reading stopped.",
            "Put the JSON right at that place and send it again."),
    /** A query parameter that says nothing sensible. */
    BAD_PARAMETER(
            400,
            "A parameter cannot be used",
            "A query parameter is unknown, given twice or outside its range.",
            "Correct or leave out the parameters named."),
    /** HTTP that cannot be understood. */
    BAD_REQUEST(
            400,
            "The request cannot be understood",
            "Something about the request as a whole is wrong, such as an escape in its path.",
            "Compare the request with the contract at /api/openapi."),
    /** A change without a key. */
    KEY_MISSING(
            400,
            "The request has no key",
            "Whatever makes or moves something is sent with a key of the sender's own, so that it can be sent again without being done twice.",
            "Send a header Idempotency-Key of 8 to 200 visible characters, new for each new request; a random UUID will do."),
    /** A version that cannot be read. */
    BAD_VERSION(
            400,
            "The version of the order cannot be read",
            "The header If-Match holds the ETag that came with the order, and nothing else: its version, a whole number in double quotes.",
            "Read the order and send its ETag as it came, as in If-Match: \"4\"."),
    /** A path that leads nowhere. */
    UNKNOWN_PATH(
            404,
            "Nothing is found at this path",
            "The service has no answer at this path.",
            "The contract at /api/openapi names every path, and /problems every refusal."),
    /** An engine that no catalogue row bears. */
    UNKNOWN_ENGINE(
            404,
            "The engine is not known",
            "No engine of the catalogue bears this code. The status is 404 for a path and 422 for the field of a request.",
            "Look the engine up at /api/engines."),
    /** A size the engine does not have. */
    UNKNOWN_SIZE(
            404,
            "The engine has no such size",
            "A size is named as on crown and box: standard, +0.25, +0.010 in. The status is 404 for a path and 422 for the field of a request.",
            "Use one of the sizes offered."),
    /** A number nothing bears. */
    UNKNOWN_PART(
            404,
            "The part number is not known",
            "No part and no box of the catalogue bears this number.",
            "Compare the number with the box or the bill: it is capital letters, digits and hyphens."),
    /** An order that there is not. */
    UNKNOWN_ORDER(404, "There is no such order", "No order bears this number.", "Look it up at /api/orders."),
    /** A quote that the order does not have. */
    UNKNOWN_QUOTE(
            404,
            "The order has no such quote",
            "Quotes are numbered within their order, from 1.",
            "Look at the quotes of the order."),
    /** A paper that the order does not have. */
    UNKNOWN_PAPER(
            404,
            "The order has no such paper",
            "Nothing that was asked about the order bears this number.",
            "Look at the papers of the order."),
    /** A hook that there is not. */
    UNKNOWN_HOOK(404, "There is no such hook", "Nobody is told of changes under this number.", "Look at /api/hooks."),
    /** A tag that no block bears. */
    UNKNOWN_BLOCK(404, "No block bears this tag", "A block is known from its first order on.", "Compare with the tag."),
    /** A gauge that the register does not have. */
    UNKNOWN_GAUGE(
            404,
            "The gauge is not in the register",
            "No gauge of the register bears this name. A request may name one that is not in it, where it states the uncertainty or resolution of it. The status is 404 for a path and 422 for the field of a request.",
            "Look the gauge up at /api/gauges, or state in the request what it is worth."),
    /** A method the path does not know. */
    WRONG_METHOD(
            405,
            "The path does not answer this method",
            "The path exists, and is asked with another method.",
            "Use one of the methods in the Allow header."),
    /** An answer in a form that is not made. */
    NOT_ACCEPTABLE(
            406,
            "The answer is not made in the form asked for",
            "The Accept header allows none of the media types the path answers in.",
            "Ask for application/json, or leave the Accept header out."),
    /** A move that the order cannot make from where it stands. */
    MOVE_NOT_ALLOWED(
            409,
            "The order cannot be moved so from where it stands",
            "An order goes from received to surveyed, quoted, accepted, confirmed, finished and released; at some places it can be declined,"
                    + " withdrawn or surveyed anew. An order for parts alone is released from accepted.",
            "Make one of the moves that are allowed."),
    /** A quote nobody can say yes to any more. */
    QUOTE_RAN_OUT(
            409,
            "The quote holds no longer",
            "A quote holds until the day it names, and as long as the holes are not surveyed anew.",
            "Quote anew; the old quote stays as it was."),
    /** Too little on the shelf. */
    STOCK_SHORT(
            409,
            "The shelf has too few",
            "Parts are put aside all or nothing. Each number of which too few are left is listed with what is left.",
            "Quote anew, or say with the yes that the customer waits for what can be had (mayWait)."),
    /** Parts that were ordered and are not here. */
    PARTS_TO_COME(
            409,
            "Parts of the order are still to come",
            "The customer waits for them; until they are here nothing is confirmed or handed out.",
            "Wait for them to arrive; then send it again with the version that the order has by then. Or withdraw the order."),
    /** A block in the shop for something else. */
    BLOCK_TAKEN(
            409,
            "The block cannot be taken in",
            "A block or barrel is in the shop for one order at a time and belongs to one engine for its whole life; no tag is that of both.",
            "Finish or withdraw the other order, or compare the tag."),
    /** A question of the bench that is not about this job. */
    OTHER_JOB(
            409,
            "The question is about another job",
            "A survey is one of the engine ordered. The pistons in hand are those of the quote accepted, by size, maker and number, and an engine is"
                    + " built as its pistons were paired before honing. Each difference is listed.",
            "Compare the order with the card; where the size is to change, survey and quote anew."),
    /** A bench that says no. */
    BENCH_HOLDS(
            409,
            "The bench is not ready",
            "An order is confirmed when every hole has its measured piston and a window to hone to, and nothing stands against it.",
            "Settle what holds and send it again."),
    /** Nothing a price could be named for. */
    NOTHING_TO_QUOTE(
            409,
            "There is nothing to quote",
            "A price is named for a way whose parts can all be had: the one that the survey names, or one that is asked for.",
            "Ask for one of the ways named; where there is none, settle what holds and survey anew."),
    /** An order that somebody changed meanwhile. */
    ORDER_CHANGED(
            412,
            "The order was changed meanwhile",
            "A change names the version of the order it is meant for, so that nobody undoes what another just did.",
            "Read the order again, look whether the change still makes sense, and send it with the new version."),
    /** A body beyond the limit. */
    BODY_TOO_LARGE(
            413,
            "The body is too large",
            "A body may be 256 KiB at the most: a hundred times what a full survey of six cylinders needs.",
            "Send one engine per request."),
    /** A body in a form that is not read. */
    WRONG_MEDIA_TYPE(
            415,
            "The body is not of a type that is read",
            "The Content-Type header names something else than JSON.",
            "Send the body as application/json."),
    /** A key that stands for something else. */
    KEY_USED(
            422,
            "The key was used for another request",
            "The same Idempotency-Key with the same request gets the same answer again; with another it is a slip.",
            "Send a new key with each new request."),
    /** A reading outside what is believed. */
    BAD_READING(
            422,
            "A reading is not believed",
            "A diameter lies below the smallest new bore less 0.10 mm, that of a piston 1 mm below that, or above the largest finish allowed"
                    + " plus 0.50 mm."
                    + " A correction is suggested where exactly one slip explains it; nothing is ever corrected by itself.",
            "Compare with the note from the bench and send what the gauge showed."),
    /** A figure that is none, or is out of its range. */
    BAD_FIGURE(
            422,
            "A figure cannot be used",
            "A figure is not a number, has too many digits or lies outside its range.",
            "Send a plain decimal number within the range named."),
    /** A date that is none, or is out of its range. */
    BAD_DATE(
            422,
            "A date cannot be used",
            "A date is a day of the calendar as year, month and day.",
            "Send it as in 2026-12-01, or leave it out for today."),
    /** A stamp that leads to no size, or to several. */
    UNCLEAR_STAMP(
            422,
            "A stamp cannot be read in one way",
            "A bare figure on a crown may mean millimetres, hundredths of them, thousandths of an inch or a number of steps. It is held against the"
                    + " sizes that pistons were made in for the engine, and only where one of them and no other can be meant is it taken.",
            "Measure a piston, and send the size as it is labelled."),
    /** A word that is not one of those allowed. */
    UNKNOWN_WORD(
            422,
            "A word is not one of those allowed",
            "The field takes one word of a short list.",
            "Use one of the words named."),
    /** Something left out. */
    MISSING_FIELD(422, "A field is missing", "The question cannot be answered without this field.", "Add the field."),
    /** Something nobody asked for. */
    UNKNOWN_FIELD(
            422,
            "A field is not known",
            "The request has a field that this service does not know. It is refused rather than passed over, for a field misspelt is a reading lost.",
            "Correct the name or leave the field out."),
    /** A field given twice. */
    REPEATED_FIELD(
            422,
            "A field is given twice",
            "The same name stands twice in one object, and nobody can tell which is meant.",
            "Leave one of them out."),
    /** A list where a figure belongs, and the like. */
    WRONG_FORM(
            422,
            "A field has the wrong form",
            "The field holds a list, an object, a text or a truth value where another of these belongs.",
            "Compare the field with the contract at /api/openapi."),
    /** Holes that are not those of the engine. */
    WRONG_CYLINDERS(
            422,
            "The cylinders are not those of the engine",
            "Every hole of the engine is named once, measured or not, by the name its maker gave it.",
            "Name each cylinder once; leave out the diameter of one that was not measured."),
    /** Pistons that cannot be told apart. */
    WRONG_PISTONS(
            422,
            "The pistons cannot be told apart",
            "Every piston in hand bears a tag of its own, and a hole names one piston by its tag, or a number.",
            "Mark each piston, and name each once."),
    /** A grid that is none. */
    BAD_GRID(
            422,
            "A grid does not hold together",
            "A grid has one row of readings per depth and one reading per axis, depths rise, axes differ, and at least one place was measured.",
            "Name each axis once, the depths from the deck down, and write null where a place could not be measured, as over a port."),
    /** A gauge that is described otherwise than in the register. */
    GAUGE_DIFFERS(
            422,
            "The register says otherwise of the gauge",
            "A request that names a gauge of the register describes it too, and not as the register does; nobody can tell which is right.",
            "Name the gauge alone to use what the register says, put the register right, or leave the name out."),
    /** A bore gauge that is said to have measured a piston, or a micrometer a hole. */
    WRONG_GAUGE(
            422,
            "The gauge does not measure such a thing",
            "A bore gauge gets into a hole and round no piston, and a micrometer the other way round: what it is said to be, or what the register"
                    + " says of its name, cannot be what the reading was taken with.",
            "Name the gauge that took the reading: a bore gauge for a hole, a micrometer for a piston. An inside micrometer is sent as a bore gauge"
                    + " with its own uncertainty."),
    /** Faults of several kinds. */
    SEVERAL_FAULTS(
            422,
            "The request has several faults",
            "Faults of different kinds were found; each is listed with its place.",
            "Correct all of them and send the request again."),
    /** A change that does not say what it is meant for. */
    VERSION_MISSING(
            428,
            "The change does not say which version of the order it is meant for",
            "The header If-Match carries the ETag that came with the order.",
            "Read the order and send its ETag as If-Match."),
    /** Our own fault. */
    UNEXPECTED_FAULT(
            500,
            "The service failed",
            "Something went wrong that is not the fault of the request. It has been logged under the id given as instance.",
            "Send the id to whoever runs the service."),
    /** Others in the way, again and again. */
    BUSY(
            503,
            "Too many change the same things at once",
            "Others were in the way for too long, or each time the change was tried; nothing of it was done.",
            "Send it again, with the same key if it had one, after the seconds that Retry-After names.");

    private final int status;
    private final String title;
    private final String meaning;
    private final String wayOut;

    ProblemType(int status, String title, String meaning, String wayOut) {
        this.status = status;
        this.title = title;
        this.meaning = meaning;
        this.wayOut = wayOut;
    }

    /** The last part of its path, such as {@code bad-reading}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The URI reference that names it and leads to its description. */
    public String path() {
        return "/problems/" + slug();
    }

    /** The status it is answered with. */
    public int status() {
        return status;
    }

    /** What it is, in few words. */
    public String title() {
        return title;
    }

    /** What it means. */
    public String meaning() {
        return meaning;
    }

    /** What to do. */
    public String wayOut() {
        return wayOut;
    }

    /** The type of a slug; empty when there is none such. */
    public static Optional<ProblemType> of(String slug) {
        return Arrays.stream(values()).filter(type -> type.slug().equals(slug)).findFirst();
    }
}
