package soapstone.bank;

import java.util.HashSet;
import java.util.Set;
import soapstone.exercise.Given;
import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.source.Issues;

/** Every given that is not hidden stands in the story or in a note, in both unit systems, and no hidden one does. */
final class GivensAreTold implements Rule {

    @Override
    public void look(Draft draft, Issues issues) {
        Set<String> found = new HashSet<>();
        look(draft, draft.exercise().us(), "", found, issues);
        look(draft, draft.exercise().metric(), " of a metric draw", found, issues);
    }

    /** What is told of a US draw is not told again of a metric one. */
    private void look(Draft draft, Model model, String where, Set<String> found, Issues issues) {
        Set<Integer> told = new HashSet<>();
        model.story().parts().stream().map(Template.Part::slot).forEach(told::add);
        model.notes().forEach(n -> n.parts().stream().map(Template.Part::slot).forEach(told::add));
        for (Given given : model.givens()) {
            boolean derived = given.choice() instanceof Given.Derived;
            if (!given.hidden() && !derived && !told.contains(given.slot()) && found.add(given.name())) {
                issues.add("told", draft.root().place("story"), "the given '" + given.name() + "' stands neither in the story nor in a note" + where,
                        "Write {" + given.name() + "} there, or hidden: true");
            }
            if (given.hidden() && told.contains(given.slot()) && found.add(given.name())) {
                issues.add("told", draft.root().place("story"), "the hidden given '" + given.name() + "' is told" + where, "Take it out of story and notes");
            }
        }
        model.asks().stream().filter(a -> told.contains(a.slot()) && found.add(a.name())).forEach(a -> issues.add("told", draft.root().place("story"),
                "the asked '" + a.name() + "' is told" + where, "Take it out of story and notes"));
    }
}
