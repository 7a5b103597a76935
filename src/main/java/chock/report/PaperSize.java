package chock.report;

/** The sheets a paper is laid out for. */
public enum PaperSize { A4, LETTER }
