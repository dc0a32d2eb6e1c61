package soapstone.proof;

import java.util.ArrayList;
import java.util.List;
import soapstone.bank.Bank;
import soapstone.exercise.Exercise;
import soapstone.exercise.Formula;
import soapstone.quantity.UnitSystem;

/** Proves a bank: every published check, then many draws of every exercise. */
public final class Proof {

    private Proof() {}

    public static List<CheckRun> checks(Bank bank) {
        List<CheckRun> runs = new ArrayList<>();
        for (Formula formula : bank.formulas().values()) {
            formula.checks().forEach(c -> runs.add(CheckRun.of(formula, c)));
        }
        for (Exercise exercise : bank.exercises().values()) {
            exercise.checks().forEach(c -> runs.add(CheckRun.of(exercise, c)));
        }
        return runs;
    }

    public static List<DrawStudy> draws(Bank bank, int draws) {
        List<DrawStudy> studies = new ArrayList<>();
        for (Exercise exercise : bank.exercises().values()) {
            for (UnitSystem system : UnitSystem.values()) {
                studies.add(DrawStudy.of(exercise, system, draws));
            }
        }
        return studies;
    }
}
