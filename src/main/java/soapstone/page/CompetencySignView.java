package soapstone.page;

/**
 * The page to sign a competency on, or to withdraw a signature.
 *
 * @param signer   under whose name the entry will stand
 * @param withdraw whether a signature stands, so that only a withdrawal can follow
 */
public record CompetencySignView(CompetencyRecord record, CompetencyRecord.Code code, String signer, boolean withdraw, FormView form) {}
