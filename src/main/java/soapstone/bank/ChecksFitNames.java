package soapstone.bank;

import java.util.List;
import java.util.Optional;
import soapstone.exercise.Check;
import soapstone.expression.Program;
import soapstone.expression.Type;
import soapstone.quantity.Quantity;
import soapstone.source.Issues;
import soapstone.source.Near;

/** A check speaks of names of the exercise, in units that fit them. */
final class ChecksFitNames implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        Program program = draft.exercise().us().program();
        for (Check check : draft.exercise().checks()) {
            check.given().forEach((name, item) -> look(program, check, name, item, issues));
            check.expect().forEach((name, item) -> look(program, check, name, item, issues));
        }
    }

    private void look(Program program, Check check, String name, Check.Item item, Issues issues) {
        int slot = program.find(name);
        if (slot < 0) {
            List<String> known = program.slots().stream().map(Program.Slot::name).toList();
            issues.add("check", check.place(), "the check speaks of '" + name + "', which is no given and no line", Near.suggest(name, known));
            return;
        }
        fit(program.slot(slot).type(), name, item).ifPresent(found -> issues.add("check", check.place(), found, ""));
    }

    /** What does not fit between a name's type and a value, or empty. */
    static Optional<String> fit(Type type, String name, Check.Item item) {
        if (type.isLabel() != (item.label() != null)) {
            return Optional.of("'" + name + "' is " + type + ", the check says " + item.text());
        }
        for (Quantity q : item.amounts()) {
            if (!q.unit().dimension().equals(type.dimension())) {
                return Optional.of("'" + name + "' is " + type + ", the check says " + item.text());
            }
        }
        return item.isList() != type.isList() ? Optional.of("'" + name + "' is " + type + ", the check says " + item.text()) : Optional.empty();
    }
}
