package soapstone.bank;

import soapstone.exercise.Model;
import soapstone.exercise.Template;
import soapstone.source.Issues;

/** A story that a reader of few words can take in at once. */
final class StoryIsShort implements Rule {

    private static final int MOST_WORDS = 75;

    @Override
    public void look(Draft draft, Issues issues) {
        look(draft, draft.exercise().us(), issues);
        look(draft, draft.exercise().metric(), issues);
    }

    private void look(Draft draft, Model model, Issues issues) {
        int words = 0;
        for (Template.Part part : model.story().parts()) {
            words += part.isText() ? part.text().trim().split("\\s+").length : 1;
        }
        if (words > MOST_WORDS) {
            issues.add("story", draft.root().place("story"), "the story has about " + words + " words", "At most " + MOST_WORDS + "; put conventions into notes");
        }
    }
}
