package soapstone.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import soapstone.exercise.Model;
import soapstone.expression.Type;
import soapstone.expression.Value;
import soapstone.figure.FigureArgument;
import soapstone.figure.FigureKind;
import soapstone.figure.FigureKinds;
import soapstone.source.Near;

/** What does not fit between the figure that an exercise names and the kinds that can be drawn. */
final class FigureFaults {

    private FigureFaults() {}

    static List<String> of(Model model) {
        List<String> faults = new ArrayList<>();
        model.figure().ifPresent(plan -> look(plan, faults));
        return faults;
    }

    private static void look(Model.FigurePlan plan, List<String> faults) {
        Optional<FigureKind> kind = FigureKinds.kind(plan.kind());
        if (kind.isEmpty()) {
            faults.add("figure: unknown kind '" + plan.kind() + "'. "
                    + Near.suggest(plan.kind(), FigureKinds.kinds().stream().map(FigureKind::name).toList()));
            return;
        }
        List<String> names = kind.get().arguments().stream().map(FigureArgument::name).toList();
        plan.with().keySet().stream().filter(n -> !names.contains(n))
                .forEach(n -> faults.add("figure: '" + plan.kind() + "' takes no '" + n + "'. " + Near.suggest(n, names)));
        for (FigureArgument argument : kind.get().arguments()) {
            Value value = plan.with().get(argument.name());
            if (value == null) {
                if (!argument.optional()) {
                    faults.add("figure: '" + plan.kind() + "' needs '" + argument.name() + "'");
                }
            } else if (!fits(argument, value.type())) {
                faults.add("figure: '" + argument.name() + "' of '" + plan.kind() + "' is " + (argument.list() ? "a list, " : "") + argument.dimension()
                        + ", here it gets " + value.type());
            }
        }
    }

    private static boolean fits(FigureArgument argument, Type type) {
        return type.dimension().equals(argument.dimension()) && (argument.list() ? type.isList() : type.isAmount());
    }
}
