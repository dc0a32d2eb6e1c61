package soapstone.school;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import soapstone.mark.Verdict;
import soapstone.source.Message;

/**
 * What an instructor wants to know before the class comes in, about one assignment.
 *
 * @param handedIn  who handed in every problem
 * @param stillOpen who began and has not handed in every problem
 * @param notBegun  who has typed nothing and handed in nothing
 * @param commonest the two families that most students made, each with how it went afterwards
 */
public record Morning(List<Name> handedIn, List<Name> stillOpen, List<Name> notBegun, List<Mistake> commonest) {

    private static final int MOST_MISTAKES = 2;

    public Morning {
        handedIn = List.copyOf(handedIn);
        stillOpen = List.copyOf(stillOpen);
        notBegun = List.copyOf(notBegun);
        commonest = List.copyOf(commonest);
    }

    /** A student by number and name. */
    public record Name(long person, String shown) {}

    /**
     * How far a student is.
     *
     * @param problems on the sheet; 0 while there is no sheet
     * @param handedIn problems with at least one attempt
     * @param typed    whether anything is typed that was not handed in
     * @param excused  need not do it, and is named nowhere
     */
    public record Progress(long person, String name, int problems, int handedIn, boolean typed, boolean excused) {

        boolean isDone() {
            return problems > 0 && handedIn >= problems;
        }

        boolean isBegun() {
            return handedIn > 0 || typed;
        }
    }

    /** How it went when the same was asked with other numbers. */
    public enum Afterwards {
        /** The same mistake was made. */
        AGAIN,
        RIGHT,
        /** Wrong, but not in this way, or left blank. */
        OTHERWISE,
        NOT_TRIED;

        public Message word() {
            return Message.of(switch (this) {
                case AGAIN -> "school.afterwards-again";
                case RIGHT -> "school.afterwards-right";
                case OTHERWISE -> "school.afterwards-otherwise";
                case NOT_TRIED -> "school.afterwards-not-tried";
            });
        }
    }

    /** A mistake, and how it went with each who made it. */
    public record Mistake(SlipMap.Row row, Map<Afterwards, List<Name>> afterwards) {

        public List<Name> who(Afterwards how) {
            return afterwards.getOrDefault(how, List.of());
        }
    }

    /**
     * Looks at a class.
     *
     * @param progress   of every student of the class, in the order in which they are told
     * @param answers    of the class, also to other assignments: drills and make-ups show how it went afterwards
     * @param assignment that is looked at
     */
    public static Morning of(List<Progress> progress, Collection<RoomAnswer> answers, long assignment) {
        List<Progress> expected = progress.stream().filter(p -> !p.excused()).toList();
        Map<Long, String> names = new LinkedHashMap<>();
        progress.forEach(p -> names.put(p.person(), p.name()));
        SlipMap map = SlipMap.of(answers, names, SlipMap.assignment(assignment));
        List<Mistake> commonest = map.families().stream().limit(MOST_MISTAKES).map(row -> new Mistake(row, afterwards(row, answers))).toList();
        return new Morning(names(expected.stream().filter(Progress::isDone).toList()),
                names(expected.stream().filter(p -> p.isBegun() && !p.isDone()).toList()),
                names(expected.stream().filter(p -> !p.isBegun() && !p.isDone()).toList()), commonest);
    }

    private static List<Name> names(List<Progress> some) {
        return some.stream().map(p -> new Name(p.person(), p.name())).toList();
    }

    private static Map<Afterwards, List<Name>> afterwards(SlipMap.Row row, Collection<RoomAnswer> answers) {
        Map<Afterwards, List<Name>> all = new LinkedHashMap<>();
        for (Afterwards how : Afterwards.values()) {
            all.put(how, new ArrayList<>());
        }
        row.students().forEach(s -> all.get(afterwards(row.name(), s, answers)).add(new Name(s.person(), s.name())));
        all.replaceAll((how, names) -> List.copyOf(names));
        return all;
    }

    /** The newest hand-in counts that came after the first mistake: of the same exercise with another draw, or of another one of its skill. */
    private static Afterwards afterwards(String family, SlipMap.Student student, Collection<RoomAnswer> answers) {
        RoomAnswer first = student.answers().get(0);
        String firstDraw = draw(first);
        Set<String> asks = student.answers().stream().map(Morning::ask).collect(Collectors.toSet());
        List<RoomAnswer> later = answers.stream().filter(a -> a.person() == student.person() && a.at().isAfter(first.at()))
                .filter(a -> a.skill().equals(first.skill()) && !draw(a).equals(firstDraw))
                .filter(a -> !a.exercise().equals(first.exercise()) || asks.contains(ask(a))).toList();
        Optional<Instant> newest = later.stream().map(RoomAnswer::at).max(Comparator.naturalOrder());
        return newest.map(at -> judge(family, later.stream().filter(a -> a.at().equals(at)).toList())).orElse(Afterwards.NOT_TRIED);
    }

    private static String draw(RoomAnswer answer) {
        return answer.exercise() + " " + answer.seed();
    }

    private static String ask(RoomAnswer answer) {
        return answer.exercise() + " " + answer.mark().ask();
    }

    private static Afterwards judge(String family, List<RoomAnswer> answers) {
        if (answers.stream().anyMatch(a -> a.isNamed() && a.mark().families().contains(family))) {
            return Afterwards.AGAIN;
        }
        boolean right = answers.stream().map(a -> a.mark().verdict()).allMatch(v -> v.isRight() || v == Verdict.CARRIED);
        return right ? Afterwards.RIGHT : Afterwards.OTHERWISE;
    }
}
