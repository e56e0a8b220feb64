package org.borewright.page.bench.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.borewright.page.bench.paper.Answer;

/**
 * Pistons joined to the holes they go into, as both lie on the bench.
 *
 * @param width of the picture
 * @param holes in the order of the maker
 * @param pistons in the order they were entered
 * @param joins from piston to hole
 * @param says the same in words
 */
public record Pairing(
        int width, List<Pairing.Spot> holes, List<Pairing.Spot> pistons, List<Pairing.Join> joins, String says) {

    private static final int APART = 110;

    /** Copies the lists. */
    public Pairing {
        holes = List.copyOf(holes);
        pistons = List.copyOf(pistons);
        joins = List.copyOf(joins);
    }

    /**
     * A hole or a piston.
     *
     * @param name or tag
     * @param x its middle
     * @param joined whether it is paired
     */
    public record Spot(String name, int x, boolean joined) {}

    /**
     * A piston in its hole.
     *
     * @param piston the middle of the piston
     * @param hole the middle of the hole
     */
    public record Join(int piston, int hole) {}

    /** The pairing of an answer of the bench. */
    public static Pairing of(Answer plan) {
        List<String> holes = texts(plan, "holes", "cylinder");
        List<String> tags = texts(plan, "pistons", "tag");
        List<Join> joins = new ArrayList<>();
        List<String> said = new ArrayList<>();
        List<String> joined = new ArrayList<>();
        for (Answer hole : plan.at("holes").items()) {
            String name = hole.at("cylinder").text().orElseThrow();
            String tag = hole.at("tag").text().orElse("");
            if (tags.contains(tag)) {
                joins.add(new Join(middle(tags.indexOf(tag)), middle(holes.indexOf(name))));
                joined.add(tag);
            }
            said.add("hole " + name + ": " + (tag.isEmpty() ? "no piston yet" : "piston " + tag));
        }
        return new Pairing(
                APART * Math.max(holes.size(), tags.size()),
                holes.stream()
                        .map(name -> new Spot(
                                name,
                                middle(holes.indexOf(name)),
                                joins.stream().anyMatch(join -> join.hole() == middle(holes.indexOf(name)))))
                        .toList(),
                tags.stream()
                        .map(tag -> new Spot(tag, middle(tags.indexOf(tag)), joined.contains(tag)))
                        .toList(),
                joins,
                said.stream().collect(Collectors.joining(", ")));
    }

    private static int middle(int index) {
        return APART / 2 + index * APART;
    }

    private static List<String> texts(Answer plan, String list, String member) {
        return plan.at(list).items().stream()
                .flatMap(item -> item.at(member).text().stream())
                .toList();
    }
}
