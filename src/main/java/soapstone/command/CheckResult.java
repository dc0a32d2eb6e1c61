package soapstone.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.bank.Bank;
import soapstone.bank.BankFiles;
import soapstone.bank.BankReader;
import soapstone.exercise.Exercise;
import soapstone.files.AllCores;
import soapstone.lesson.CourseReader;
import soapstone.proof.CheckRun;
import soapstone.proof.DrawStudy;
import soapstone.proof.FalseNames;
import soapstone.proof.Proof;
import soapstone.quantity.UnitSystem;
import soapstone.source.Issue;

/**
 * What was found out about a bank.
 *
 * @param bank    what could be read of it
 * @param issues  in the texts of bank and lessons
 * @param runs    the published checks
 * @param studies of each exercise in each unit system; empty when none were wanted
 * @param names   how often random answers to an ask are named; empty likewise
 * @param lessons how many there are; -1 when they were not looked at
 */
record CheckResult(Bank bank, List<Issue> issues, List<CheckRun> runs, List<DrawStudy> studies, List<FalseNames> names, int lessons) {

    /** Random answers are many and cheap: a fifth of the draws with some answers each settles a share to a percent or so. */
    private static final int DRAWS_PER_NAMING = 5;
    private static final int ANSWERS_PER_NAMING = 25;

    static CheckResult of(BankOptions options, int draws) {
        BankFiles files = options.files();
        BankReader.Result read = BankReader.read(files, new AllCores());
        Bank bank = read.bank().orElseGet(() -> BankReader.partial(files));
        List<Issue> issues = new ArrayList<>(read.issues().all());
        int lessons = -1;
        // Lessons name exercises and formulas: with some of them unread, every such name would seem to be wrong.
        if (read.bank().isPresent() && options.hasLessons()) {
            CourseReader.Result course = CourseReader.read(options.lessonFiles(), bank);
            issues.addAll(course.issues().all());
            lessons = course.course().map(c -> c.lessons().size()).orElse(0);
        }
        List<CheckRun> runs = Proof.checks(bank);
        List<DrawStudy> studies = draws == 0 ? List.of() : Proof.draws(bank, draws);
        return new CheckResult(bank, issues, runs, studies, draws == 0 ? List.of() : names(bank, draws), lessons);
    }

    private static List<FalseNames> names(Bank bank, int draws) {
        List<FalseNames> names = new ArrayList<>();
        for (Exercise exercise : bank.exercises().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                names.addAll(FalseNames.of(exercise, system, Math.max(1, draws / DRAWS_PER_NAMING), ANSWERS_PER_NAMING));
            }
        }
        return names;
    }

    List<CheckRun> failed() {
        return runs.stream().filter(r -> !r.passes()).toList();
    }

    List<DrawStudy> unfair() {
        return studies.stream().filter(s -> !s.faults().isEmpty()).toList();
    }

    boolean isGood() {
        return issues.isEmpty() && failed().isEmpty() && unfair().isEmpty();
    }

    List<FalseNames> names(DrawStudy study) {
        return names.stream().filter(n -> n.exercise().equals(study.exercise()) && n.system() == study.system()).toList();
    }

    /** A failed check as an issue at its place in the file. */
    static Issue issue(CheckRun run) {
        String what = run.check().misprint() ? "is marked as a misprint, but the working gives what was printed: " : "";
        return new Issue("published check", run.check().place(), run.owner() + " " + what + run.told(), run.check().source());
    }

    /** Share of random answers that were named: of quantities, or of counts; a count has too few values to tell by. */
    Optional<Double> falseShare(boolean counts) {
        List<FalseNames> of = names.stream().filter(n -> counts == (n.kind() == soapstone.exercise.Ask.Kind.COUNT)).toList();
        int answers = of.stream().mapToInt(FalseNames::answers).sum();
        int named = of.stream().mapToInt(FalseNames::named).sum();
        return answers == 0 ? Optional.empty() : Optional.of(named / (double) answers);
    }
}
