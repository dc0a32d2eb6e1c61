package soapstone.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import soapstone.bank.Bank;
import soapstone.exercise.Ask;
import soapstone.exercise.Exercise;
import soapstone.exercise.Model;
import soapstone.expression.FormulaBody;
import soapstone.mark.AskMark;
import soapstone.mark.MarkRules;
import soapstone.mark.Marker;
import soapstone.mark.Typed;
import soapstone.proof.Written;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;
import soapstone.variant.Variant;

/**
 * One ask of one exercise, marked by the marker and by Java that was written out for it: the same answers, the same
 * verdicts. Each begins from a drawn variant, in which the right lines are worked.
 */
final class Trial {

    private final Exercise exercise;
    private final Ask ask;
    private final PlainMarking plain;
    private final List<Round> rounds = new ArrayList<>();

    /** A draw with its answers, each typed and as bare numbers. */
    private record Round(Variant variant, double[] numbers, double[][] lists, boolean[] sense, List<List<Typed>> typed, List<PlainAnswer> answers) {}

    /** An answer on which both do not agree. */
    record Difference(String exercise, String ask, long seed, String answer, PlainMark marker, PlainMark plain) {}

    Trial(Exercise exercise, Ask ask, Bank bank, InMemory compiler, int seeds) {
        this.exercise = exercise;
        this.ask = ask;
        Model model = exercise.model(UnitSystem.US);
        Map<String, FormulaBody> bodies = new java.util.HashMap<>();
        bank.formulas().forEach((name, formula) -> bodies.put(name, formula.body()));
        String name = "Plain_" + exercise.id().replaceAll("[^a-z0-9]", "_") + "_" + ask.letter();
        this.plain = compiler.make(name, PlainJava.source(name, model, ask, bodies, bank.tables()));
        Drawer drawer = new Drawer(exercise, UnitSystem.US);
        for (long seed = 1; seed <= seeds; seed++) {
            drawer.draw(seed).ifPresent(v -> rounds.add(round(v)));
        }
    }

    private Round round(Variant variant) {
        Model model = variant.model();
        int slots = model.program().slots().size();
        double[] numbers = new double[slots];
        double[][] lists = new double[slots][];
        for (int i = 0; i < slots; i++) {
            numbers[i] = variant.right().number(i);
            lists[i] = variant.right().list(i);
        }
        boolean[] sense = new boolean[model.slips().size()];
        for (int i = 0; i < sense.length; i++) {
            sense[i] = model.slips().get(i).makesSense(variant.right());
        }
        List<Typed> mixed = new Answers(variant, ask).mixed();
        return new Round(variant, numbers, lists, sense, mixed.stream().map(t -> alone(model, ask, t)).toList(), mixed.stream().map(PlainAnswer::of).toList());
    }

    /** The answer with all other asks left blank. */
    private static List<Typed> alone(Model model, Ask ask, Typed answer) {
        return model.asks().stream().map(a -> a == ask ? answer : Written.read(model, a, "")).toList();
    }

    static AskMark mark(Variant variant, Ask ask, Typed typed) {
        return new Marker(variant, MarkRules.USUAL).mark(alone(variant.model(), ask, typed)).asks().get(variant.model().asks().indexOf(ask));
    }

    Exercise exercise() {
        return exercise;
    }

    Ask ask() {
        return ask;
    }

    int answers() {
        return rounds.stream().mapToInt(r -> r.answers().size()).sum();
    }

    List<Difference> differences() {
        List<Difference> differences = new ArrayList<>();
        int at = exercise.model(UnitSystem.US).asks().indexOf(ask);
        for (Round round : rounds) {
            plain.take(round.numbers(), round.lists(), round.sense());
            for (int i = 0; i < round.answers().size(); i++) {
                PlainMark marker = PlainVerdict.of(round.variant(), new Marker(round.variant(), MarkRules.USUAL).mark(round.typed().get(i)).asks().get(at));
                PlainMark written = plain.mark(round.answers().get(i));
                if (!marker.equals(written)) {
                    differences.add(new Difference(exercise.id(), ask.name(), round.variant().seed(), round.typed().get(i).get(at).text(), marker, written));
                }
            }
        }
        return differences;
    }

    /** Marks all answers once with the marker; the sum keeps the work from being left out. */
    double marker() {
        double sum = 0;
        for (Round round : rounds) {
            for (List<Typed> typed : round.typed()) {
                sum += new Marker(round.variant(), MarkRules.USUAL).mark(typed).points();
            }
        }
        return sum;
    }

    /** Marks all answers once with the written-out Java. Everyone has numbers of their own, so they come with each answer. */
    double plain() {
        double sum = 0;
        for (Round round : rounds) {
            for (PlainAnswer answer : round.answers()) {
                plain.take(round.numbers(), round.lists(), round.sense());
                sum += plain.mark(answer).tier();
            }
        }
        return sum;
    }
}
