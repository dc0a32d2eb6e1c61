package soapstone.web;

import java.util.List;
import soapstone.page.Pages;
import soapstone.page.Reader;
import soapstone.page.Reference;
import soapstone.page.TroubleView;
import soapstone.source.Message;

/** One table from what went wrong to status and page. No page tells what the machine inside is. */
final class TroublePages {

    private static final int BROKEN = 500;
    private static final int NOT_FOUND = 404;
    private static final int AWAY = 503;
    /** Seconds after which it is worth trying again. */
    private static final long SOON = 10;

    private final Desk desk;
    private final Pages pages;

    TroublePages(Desk desk, Pages pages) {
        this.desk = desk;
        this.pages = pages;
    }

    Reply of(Throwable failure, String path, Reader reader) {
        if (failure instanceof Trouble trouble) {
            Reply reply = page(reader, trouble.status(), trouble.says(), path);
            return trouble.seconds() == 0 ? reply : reply.retryAfter(trouble.seconds());
        }
        if (failure instanceof Desk.NoDraw) {
            return page(reader, NOT_FOUND, List.of(Message.of("trouble.no-draw")), path);
        }
        return page(reader, BROKEN, List.of(Trouble.usual(BROKEN)), path);
    }

    /** A fault of our own: nothing of it but a reference, under which the log has the rest. */
    Reply broken(Reader reader, String reference) {
        return page(reader, BROKEN, List.of(Trouble.usual(BROKEN), Message.of("trouble.reference", reference)), "");
    }

    /** The records cannot be reached. What was sent is still in the form of the page before. */
    Reply outOfReach(Reader reader) {
        TroubleView view = new TroubleView(AWAY, "trouble.out-of-reach", List.of(Message.of("trouble.out-of-reach-says")), List.of());
        return new Reply(AWAY, Reply.HTML, SafeHeaders.NO_STORE, "", List.of(), "", SOON, pages.trouble(reader, view).bytes());
    }

    /** For a status that was found before a page of ours was asked. */
    Reply of(int status, Reader reader) {
        int known = reader.words().has("trouble." + status) ? status : status < BROKEN ? 400 : BROKEN;
        Reply reply = page(reader, known, List.of(Trouble.usual(known)), "");
        return new Reply(status, reply.type(), reply.cache(), "", reply.body());
    }

    private Reply page(Reader reader, int status, List<Message> says, String path) {
        List<Reference> near = status == NOT_FOUND ? near(path) : List.of();
        return new Reply(status, Reply.HTML, SafeHeaders.NO_STORE, "", pages.trouble(reader, new TroubleView(status, "trouble." + status, says, near)).bytes());
    }

    /** Near names are a kindness: when they cannot be had, the page stands without them. */
    private List<Reference> near(String path) {
        try {
            return NearPages.to(path, desk.contents());
        } catch (RuntimeException e) {
            return List.of();
        }
    }
}
