package soapstone.desk;

import java.util.List;
import java.util.Optional;
import soapstone.page.Answer;
import soapstone.page.AnswersView;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.ShopReader;
import soapstone.source.Message;

/** The page on how answers may be written: every example is read by the reader itself. */
final class Spelling {

    private static final String INCH = "quantity:in:us";

    private record Examples(String title, String reads, List<String> typed) {}

    private static final List<Examples> GROUPS = List.of(
            new Examples("spelling.inches", INCH, List.of("41 3/8", "41-3/8\"", "41⅜", "5/8", "41.375", ".125", "3' 5-3/8\"", "3 ft 5 3/8 in", "1051 mm")),
            new Examples("spelling.millimeters", "quantity:mm:metric", List.of("1051", "1051 mm", "105.1 cm", "1.051 m", "41 3/8 in")),
            new Examples("spelling.weights", "quantity:lb:us", List.of("1,250", "1250 lb", "3 lb 4 oz")),
            new Examples("spelling.volumes", "quantity:gal:us", List.of("12 1/2", "12.5 gal", "47.3 L")),
            new Examples("spelling.angles", "quantity:deg:us", List.of("22.5", "22° 30'", "22 deg 30 min")),
            new Examples("spelling.counts", "count:1:us", List.of("9", "9 holes")),
            new Examples("spelling.lists", "list:in:us", List.of("1 1/2; 9 1/4; 17")),
            new Examples("spelling.points", "point:in:us", List.of("4 1/4, 2 1/2", "(4.25, -2.5)")),
            new Examples("spelling.again", INCH, List.of("31/2", "3 15", "7 3/", "1,5", "3 in mm", "12 lb")));

    AnswersView view() {
        List<AnswersView.Group> groups = GROUPS.stream().map(g -> new AnswersView.Group(Message.of(g.title()),
                g.typed().stream().map(t -> new AnswersView.Example(t, answer(g.reads(), t))).toList())).toList();
        List<AnswersView.Way> ways = List.of(way(INCH, "spelling.way-inches", "in"), way("quantity:mm:metric", "spelling.way-millimeters", "mm"),
                way("quantity:lb:us", "spelling.way-pounds", "lb"), way("quantity:gal:us", "spelling.way-gallons", "gal"),
                way("quantity:deg:us", "spelling.way-angle", "°"), way("count:1:us", "spelling.way-count", ""), way("list:in:us", "spelling.way-list", "in"));
        return new AnswersView(groups, ways, Optional.empty());
    }

    private static AnswersView.Way way(String reads, String label, String unit) {
        return new AnswersView.Way(reads, Message.of(label), unit);
    }

    private static Answer answer(String reads, String typed) {
        ReadAs as = Ways.parse(reads).orElseThrow();
        Reading reading = ShopReader.read(typed, as);
        return reading instanceof Reading.Again again ? Answer.askedAgain(typed, again.why()) : Answer.read(typed, Boxes.understood(reading));
    }
}
