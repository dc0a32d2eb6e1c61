package soapstone.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import soapstone.page.SchoolTimes;
import soapstone.page.SheetView;
import soapstone.page.Words;
import soapstone.paper.Key;
import soapstone.paper.KeySheet;
import soapstone.paper.Packet;
import soapstone.paper.PacketSheet;
import soapstone.paper.Press;
import soapstone.paper.Strip;
import soapstone.paper.Strips;
import soapstone.school.Assignment;
import soapstone.school.Attempt;
import soapstone.school.Member;
import soapstone.school.Printed;
import soapstone.school.Problem;
import soapstone.school.RoomAnswer;
import soapstone.school.School;
import soapstone.school.SchoolClass;
import soapstone.school.Scores;
import soapstone.school.Sheet;
import soapstone.school.SlipMap;
import soapstone.school.Terms;

/**
 * Makes what was asked for on paper out of what the school keeps. The same sheets, marks and choices make the same file.
 */
final class PrintWork {

    private final School school;
    private final WorkDesk work;
    private final PaperDesk paper;
    private final MarksDesk marks;
    private final SchoolClass in;
    private final Assignment assignment;
    private final PrintChoices choices;
    /** In the language of the class, since students read it. */
    private final Words words;
    private final Instant now;

    PrintWork(School school, Desk desk, OwnClasses.Work of, PrintChoices choices, Instant now) {
        this.school = school;
        this.in = of.in();
        this.assignment = of.assignment();
        this.choices = choices;
        this.words = Words.of(in.settings().language());
        this.work = desk.work().in(in.settings().language());
        this.paper = desk.paper().in(in.settings().language());
        this.marks = desk.marks();
        this.now = now;
    }

    /** A sheet and whose it is. */
    record Owned(Sheet sheet, Optional<Member> member) {

        String seat() {
            return member.map(Member::seat).orElse("");
        }

        String name() {
            return member.map(m -> m.person().shown()).orElse("");
        }

        String who() {
            return (seat() + " " + name()).strip();
        }
    }

    /** Those who sit in the class, by seat, and after them the spare sheets. */
    static List<Owned> sheets(School school, SchoolClass in, Assignment assignment, int spares) {
        Map<Long, Member> members = new LinkedHashMap<>();
        school.classes().members(in.id()).stream().filter(m -> m.state() == Member.State.IN).forEach(m -> members.put(m.person().id(), m));
        List<Owned> all = new ArrayList<>(school.sheets().all(assignment.id()).stream().filter(s -> members.containsKey(s.person()))
                .map(s -> new Owned(s, Optional.of(members.get(s.person())))).sorted(Comparator.comparing((Owned o) -> o.member().orElseThrow(), Member.BY_SEAT)).toList());
        school.spares().all(assignment.id()).stream().limit(spares).forEach(s -> all.add(new Owned(SheetDealer.asSheet(s), Optional.empty())));
        return all;
    }

    private List<Owned> sheets() {
        return sheets(school, in, assignment, choices.spares());
    }

    /** How many pieces it has. */
    int total() {
        return sheets().size();
    }

    /** @param pages how many the file has */
    record Made(byte[] file, int pages) {}

    /**
     * Makes the file.
     *
     * @param goOn is told how many pieces are done, and says whether to go on
     * @return empty when it was ended
     */
    Optional<Made> make(IntPredicate goOn) {
        try (Press press = new Press(title(), assignment.made())) {
            boolean whole = switch (choices.kind()) {
                case PACKET -> packet(press, goOn);
                case KEY -> key(press, goOn);
                case FOLDED -> pieces(press, goOn, keys(reader()).folded(assignment.title(), keySheets(assignment)), sheets().size());
                case STRIPS -> strips(press, goOn);
            };
            return whole ? Optional.of(new Made(press.bytes(), press.pages())) : Optional.empty();
        }
    }

    private String title() {
        return assignment.title() + ", " + in.name();
    }

    private String day() {
        return SchoolTimes.day(assignment.opens(), words.language());
    }

    private Words reader() {
        return Words.of(choices.reader());
    }

    private boolean packet(Press press, IntPredicate goOn) {
        Packet packet = new Packet(words, choices.packet());
        int done = 0;
        for (Owned owned : sheets()) {
            packet.add(press, printed(owned));
            if (!goOn.test(++done)) {
                return false;
            }
        }
        if (done == 0) {
            packet.add(press, new PacketSheet("", "", assignment.title(), in.name(), day(), "", List.of()));
        }
        return true;
    }

    private PacketSheet printed(Owned owned) {
        List<PacketSheet.Problem> problems = new ArrayList<>();
        for (Problem p : owned.sheet().problems()) {
            paper.asked(piece(p)).ifPresent(a -> problems.add(new PacketSheet.Problem(p.place(), Printed.points(p.points()), a.sheet(),
                    choices.packet().formulas() ? a.formulas() : List.of())));
        }
        return new PacketSheet(owned.sheet().number(), choices.packet().names() ? owned.who() : "", assignment.title(), in.name(), day(), in.settings().conventions(), problems);
    }

    private WorkDesk.Piece piece(Problem problem) {
        return new WorkDesk.Piece(problem, in.settings(), school.sheets());
    }

    private Key keys(Words language) {
        return new Key(language, choices.packet().size());
    }

    private boolean key(Press press, IntPredicate goOn) {
        Optional<Key.Before> before = assignment.after().flatMap(school.assignments()::find).map(a -> new Key.Before(a.title(), keySheets(a)));
        press.add(keys(reader()).markup(new Key.Of(assignment.title(), in.name(), SchoolTimes.day(assignment.opens(), choices.reader()), keySheets(assignment), before, made())));
        return goOn.test(total());
    }

    /** How many of the class had made each mistake in these exercises before this was given: the key stays as it is while marks come in. */
    private Map<KeySheet.Made, Integer> made() {
        Set<Long> assignments = school.assignments().of(in.id()).stream().map(Assignment::id).collect(Collectors.toSet());
        Set<String> exercises = sheets().stream().flatMap(o -> o.sheet().problems().stream()).map(Problem::exercise).collect(Collectors.toSet());
        List<RoomAnswer> answers = RoomAnswers.of(school.book().ofAssignments(assignments, exercises), marks);
        SlipMap map = SlipMap.of(answers, RoomAnswers.names(school.classes().members(in.id())),
                a -> a.assignment() != assignment.id() && a.at().isBefore(assignment.opens()));
        return map.slips().stream().collect(Collectors.toMap(r -> new KeySheet.Made(r.exercise(), r.name()), r -> r.students().size()));
    }

    private List<KeySheet> keySheets(Assignment of) {
        List<KeySheet> all = new ArrayList<>();
        for (Owned owned : sheets(school, in, of, of == assignment ? choices.spares() : 0)) {
            List<KeySheet.Problem> problems = owned.sheet().problems().stream().flatMap(p -> paper.key(piece(p)).stream()).toList();
            all.add(new KeySheet(owned.sheet().number(), owned.seat(), owned.name(), problems));
        }
        return all;
    }

    private static boolean pieces(Press press, IntPredicate goOn, List<String> pieces, int total) {
        int done = 0;
        for (String piece : pieces) {
            press.add(piece);
            if (!goOn.test(++done * total / pieces.size())) {
                return false;
            }
        }
        return true;
    }

    private boolean strips(Press press, IntPredicate goOn) {
        List<Strip> strips = sheets().stream().filter(o -> o.member().isPresent()).map(this::strip).filter(s -> !s.problems().isEmpty()).toList();
        List<String> pieces = new Strips(words, choices.packet().size(), choices.toAPage()).markup(title(), strips);
        return pieces(press, goOn, pieces.isEmpty() ? List.of(new Strips(words, choices.packet().size(), choices.toAPage()).none(title())) : pieces, total());
    }

    private Strip strip(Owned owned) {
        Terms terms = Terms.of(assignment, in, owned.member().orElseThrow(), school.assignments().givenTo(assignment.id()));
        OwnSheet own = OwnSheet.of(school, owned.sheet(), terms);
        List<Strip.Problem> problems = new ArrayList<>();
        for (Problem problem : owned.sheet().problems()) {
            newest(own, problem.place()).ifPresent(attempt -> marked(own, attempt).ifPresent(m -> problems.add(m)));
        }
        Scores.Score score = owned.sheet().problems().stream().map(p -> own.score(p.place())).reduce(Scores.Score.NONE, Scores.Score::plus);
        return new Strip(owned.sheet().number(), owned.who(), assignment.title(), MarkRows.points(score), problems);
    }

    private static Optional<Attempt> newest(OwnSheet own, int place) {
        return own.rounds(place).stream().flatMap(r -> own.work(r).attempts().stream()).max(Comparator.comparing(Attempt::handedIn).thenComparingLong(Attempt::id));
    }

    private Optional<Strip.Problem> marked(OwnSheet own, Attempt attempt) {
        Problem round = own.rounds().stream().filter(p -> p.id() == attempt.problem()).findFirst().orElseThrow();
        Map<String, String> typed = new LinkedHashMap<>();
        own.work(round).marks(attempt).forEach(c -> typed.put(c.mark().letter(), c.mark().typed()));
        Optional<SheetView> sheet = work.handedIn(piece(round), typed, Assignment.Shows.LINES);
        List<String> changed = new WorkPages(work, words, now).changed(own.work(round), attempt).stream().map(c -> c.letter() + ": " + words.say(c.says()) + " " + c.reason()).toList();
        return sheet.map(s -> new Strip.Problem(round.place(), s, changed));
    }
}
