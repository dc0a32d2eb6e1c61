package soapstone.paper;

import soapstone.page.Pages;
import soapstone.page.Reader;
import soapstone.page.Words;

/** Templates for paper, in one language. */
record Printing(Words words) {

    /** Templates are read once for all. */
    private static final Pages PAGES = new Pages("", false);

    /** The markup of a view. */
    String markup(String template, Record view) {
        return PAGES.show(Reader.guest(words), template, view).toString();
    }
}
