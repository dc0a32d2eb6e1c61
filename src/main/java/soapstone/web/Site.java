package soapstone.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.LongSupplier;
import soapstone.page.Address;
import soapstone.page.Answer;
import soapstone.page.AnswersView;
import soapstone.page.Page;
import soapstone.page.Pages;
import soapstone.page.SheetKey;
import soapstone.page.SheetView;
import soapstone.quantity.UnitSystem;

/** The guest's site: which page stands at which address. */
final class Site {

    private static final ObjectMapper JSON = new ObjectMapper();

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final LongSupplier seeds;

    Site(Desk desk, Pages pages, Assets assets, LongSupplier seeds) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.seeds = seeds;
    }

    Routes routes() {
        return new Routes()
                .get("/", v -> page(pages.front(v.reader(), desk(v).front())))
                .get("/units", v -> page(pages.units(v.reader(), desk.units())))
                .get("/units/{unit}", v -> page(desk.unit(v.part("unit")), u -> pages.unit(v.reader(), u)))
                .get("/exercises/{unit}/{id}", this::exercise)
                .ask("/exercises/{unit}/{id}", this::answer)
                .get("/lessons", v -> page(pages.lessons(v.reader(), desk.lessons())))
                .get("/lessons/{id}", v -> page(desk(v).lesson(v.part("id")), l -> pages.lesson(v.reader(), l)))
                .get("/formulas", v -> page(pages.formulas(v.reader(), desk.formulas())))
                .get("/formulas/{name}", v -> page(desk.formula(v.part("name")), f -> pages.formula(v.reader(), f)))
                .get("/bench/formula/{name}", this::formulaBench)
                .ask("/bench/formula/{name}", this::formulaBench)
                .get("/bench/{unit}/{id}", this::bench)
                .ask("/bench/{unit}/{id}", this::bench)
                .get("/tables", v -> page(pages.tables(v.reader(), desk.tables())))
                .get("/tables/{name}", v -> page(desk.table(v.part("name")), t -> pages.table(v.reader(), t)))
                .get("/figures", v -> page(pages.figureKinds(v.reader(), desk(v).figureKinds())))
                .get("/figures/{kind}", v -> page(desk(v).figureKind(v.part("kind")), k -> pages.figureKind(v.reader(), k)))
                .get("/cautions", v -> page(pages.cautions(v.reader(), desk.cautions())))
                .get("/answers", v -> page(pages.answers(v.reader(), desk.answers())))
                .ask("/answers", this::tryAnswer)
                .ask("/read-answer", this::readAnswer)
                .get("/about", v -> page(pages.about(v.reader(), desk.about())))
                .get("/site/{hash}/{name}", assets::file);
    }

    /** With drawings in the language of the page. */
    private Desk desk(Visit v) {
        return desk.in(v.reader().words().language());
    }

    private static Reply page(Page html) {
        return Reply.page(html);
    }

    private static <V> Reply page(Optional<V> view, Function<V, Page> html) {
        return Reply.page(html.apply(view.orElseThrow(() -> Trouble.of(404))));
    }

    /** Without a sheet number: draws a fresh one and goes to it. */
    private Reply exercise(Visit v) {
        if (v.hasSeed()) {
            return sheet(v, desk(v).sheet(v.part("unit"), v.part("id"), v.key()));
        }
        UnitSystem units = v.units();
        String fingerprint = desk.fingerprint(v.part("unit"), v.part("id"), units).orElseThrow(() -> Trouble.of(404));
        SheetKey fresh = new SheetKey(seeds.getAsLong(), units, fingerprint);
        return Reply.goTo(Address.sheet(v.part("unit"), v.part("id"), fresh));
    }

    /** Nothing is marked that was not read back as it stands. */
    private Reply answer(Visit v) {
        boolean mark = v.form().text("action").equals("mark") && v.wasReadBack();
        return sheet(v, mark
                ? desk(v).mark(v.part("unit"), v.part("id"), v.key(), v.typed())
                : desk(v).read(v.part("unit"), v.part("id"), v.key(), v.typed()));
    }

    private Reply sheet(Visit v, Optional<SheetView> view) {
        return page(view, sheet -> pages.sheet(v.reader(), sheet));
    }

    private Reply bench(Visit v) {
        return page(desk(v).bench(v.part("unit"), v.part("id"), v.units(), v.typed()), b -> pages.bench(v.reader(), b));
    }

    private Reply formulaBench(Visit v) {
        return page(desk(v).formulaBench(v.part("name"), v.units(), v.typed()), b -> pages.bench(v.reader(), b));
    }

    private Reply tryAnswer(Visit v) {
        String reads = v.form().text("way");
        Answer answer = desk.reading(reads, v.form().text("typed")).orElseThrow(() -> Trouble.of(400));
        AnswersView view = desk.answers();
        AnswersView tried = new AnswersView(view.groups(), view.ways(), Optional.of(new AnswersView.Tried(reads, answer)));
        return page(pages.answers(v.reader(), tried));
    }

    /** For the script: how a text reads. */
    private Reply readAnswer(Visit v) {
        Answer answer = desk.reading(v.form().text("reads"), v.form().text("typed"))
                .orElseThrow(() -> Trouble.of(400));
        Map<String, String> json = new LinkedHashMap<>();
        json.put("state", answer.state().name());
        json.put("text", pages.reading(v.reader().words(), answer, v.form().get("marking").isPresent()));
        try {
            return Reply.json(JSON.writeValueAsString(json));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("texts make JSON", e);
        }
    }
}
