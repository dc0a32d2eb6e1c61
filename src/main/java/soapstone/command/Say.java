package soapstone.command;

import java.util.ArrayList;
import java.util.List;
import soapstone.exercise.Slip;
import soapstone.expression.Frame;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.Marked;
import soapstone.page.Words;
import soapstone.source.Message;
import soapstone.variant.Shown;

/** English sentences for what the engine found. */
final class Say {

    private static final Words ENGLISH = Words.of("en");

    private Say() {}

    static String message(Message message) {
        return Json.plain(ENGLISH.say(message));
    }

    /** The verdict, and then what the bank says of the slips that fit. */
    static String mark(Marked marked, AskMark mark) {
        List<String> sentences = new ArrayList<>();
        sentences.add(message(mark.say()));
        if (mark.counts() || mark.fits().stream().anyMatch(f -> !f.slips().isEmpty() && f.say() == null)) {
            mark.fits().forEach(f -> sentences.add(fit(marked, f)));
        }
        return String.join(" ", sentences.stream().filter(s -> !s.isEmpty()).distinct().toList());
    }

    /** What there is to say of one thing that fits, with the numbers that it gives. */
    static String fit(Marked marked, Fit fit) {
        if (fit.say() != null) {
            return message(fit.say());
        }
        // On carried values the numbers are those of the student, so that they match what stands on the paper.
        Frame theirs = marked.run(fit.carried() ? fit.change().over(marked.typed()) : fit.change());
        List<String> says = new ArrayList<>();
        for (Slip slip : fit.slips()) {
            says.add(Json.plain(Shown.text(marked.variant().model(), slip.say(), marked.variant().right(), theirs)));
        }
        return String.join(" ", says);
    }
}
