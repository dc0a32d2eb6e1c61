package soapstone.bank;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import soapstone.exercise.Ask;
import soapstone.exercise.Convention;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.expression.Type;
import soapstone.source.Issues;
import soapstone.source.Near;
import soapstone.source.Place;

/** A convention that is named is one of the bank's, of the same kind of quantity, and may be set to what the exercise draws or asks for. */
final class ConventionsFit implements Rule {

    private static final String RULE = "convention";

    @Override
    public void look(Draft draft, Issues issues) {
        draft.book().conventions().ifPresent(known -> {
            new Look(draft, known, draft.exercise().us(), issues).look();
            new Look(draft, known, draft.exercise().metric(), issues).look();
        });
    }

    /** A look at one unit system. */
    private record Look(Draft draft, Map<String, Convention> known, Model model, Issues issues) {

        void look() {
            for (Given given : model.givens()) {
                if (!given.convention().isEmpty()) {
                    named(given.convention(), given.slot(), draft.convention(given.name())).ifPresent(c -> given(given, c));
                }
            }
            for (Ask ask : model.asks()) {
                if (!ask.convention().isEmpty()) {
                    named(ask.convention(), ask.slot(), draft.ask(ask.name())).ifPresent(c -> ask(ask, c));
                }
            }
        }

        private Optional<Convention> named(String name, int slot, Place place) {
            Convention convention = known.get(name);
            if (convention == null) {
                issues.add(RULE, place, "unknown convention '" + name + "'", Near.suggest(name, known.keySet()));
                return Optional.empty();
            }
            Type type = model.program().slot(slot).type();
            boolean fits = (type.isAmount() || type.isList()) && type.dimension().equals(convention.dimension());
            if (!fits) {
                issues.add(RULE, place, "'" + name + "' is " + convention.dimension() + ", the value is " + type, "A convention of the same kind");
            }
            return Optional.of(convention).filter(c -> fits);
        }

        private void given(Given given, Convention convention) {
            boolean fits;
            if (given.choice() instanceof Given.Range range) {
                fits = takes(convention, range.value(0)) && takes(convention, range.value(range.size() - 1));
            } else if (given.choice() instanceof Given.Pick pick) {
                fits = Arrays.stream(pick.values()).allMatch(v -> takes(convention, v));
            } else {
                issues.add(RULE, draft.convention(given.name()), "'" + given.name() + "' is worked out, so no shop can set it", "pick or from/to/step");
                return;
            }
            if (!fits) {
                issues.add(RULE, draft.convention(given.name()), "in a " + model.system().word() + " draw '" + given.name()
                        + "' can be what no shop may set '" + convention.name() + "' to", "Values that the convention allows");
            }
        }

        private boolean takes(Convention convention, double base) {
            return convention.allowed(model.system()).takes(base, model.system());
        }

        private void ask(Ask ask, Convention convention) {
            if (convention.allowed(model.system()).picks().isEmpty() || !takes(convention, ask.to())) {
                issues.add(RULE, draft.ask(ask.name()), "in a " + model.system().word() + " draw '" + ask.name()
                        + "' is rounded to none of the picks of '" + convention.name() + "'", "to: one of them");
            }
        }
    }
}
