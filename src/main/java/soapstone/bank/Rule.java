package soapstone.bank;

import soapstone.source.Issues;

/** Looks at the text of one exercise for something that reads well to a program and badly in a classroom. */
interface Rule {

    void look(Draft draft, Issues issues);
}
